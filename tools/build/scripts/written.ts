/** dist/scripts/: the formulas for other spreadsheets, one file to paste for each, from functions.js and the records. */

import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";

import { tellRecords } from "../generate";
import { googleSheetsScript } from "./google-sheets";
import { javascriptMacrosScript } from "./javascript-macros";

export const SCRIPTS = {
  "google-sheets.js": googleSheetsScript,
  "javascript-macros.js": javascriptMacrosScript,
} as const;

/**
 * In front of each: a browser that shows the file of a host that says no encoding reads ft³ and ° as they are, and so does whoever
 * copies them. The language takes the sign for a space.
 */
const READ_AS_UTF_8 = "\uFEFF";

/** Into the folder where functions.js lies. */
export function writeScripts(folder: string): void {
  const functionsScript = readFileSync(path.join(folder, "functions.js"), "utf8");
  mkdirSync(path.join(folder, "scripts"), { recursive: true });
  for (const [file, made] of Object.entries(SCRIPTS)) {
    writeFileSync(path.join(folder, "scripts", file), READ_AS_UTF_8 + made(functionsScript, tellRecords()));
  }
}
