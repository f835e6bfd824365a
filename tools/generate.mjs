/** Writes what the sources import from generated/: help.json, functions.json and associate.ts. Files that are right are left alone. */

import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";

import { readMetadata } from "./metadata.mjs";
import { DEVELOPMENT_URL, generated } from "./project.mjs";

export async function generate(url = DEVELOPMENT_URL) {
  const metadata = await readMetadata(`${url}/help.html`);
  if (metadata.errors.length > 0) {
    throw new Error(`The comments in functions/ are not right:\n  ${metadata.errors.join("\n  ")}`);
  }
  mkdirSync(generated, { recursive: true });
  writeIfChanged(path.join(generated, "help.json"), `${JSON.stringify(metadata.help, null, 1)}\n`);
  writeIfChanged(
    path.join(generated, "functions.json"),
    `${JSON.stringify(metadata.functionsJson, null, 1)}\n`,
  );
  writeIfChanged(path.join(generated, "associate.ts"), metadata.associateTs);
  return metadata;
}

/** @param {string} file @param {string} text */
function writeIfChanged(file, text) {
  if (existsSync(file) && readFileSync(file, "utf8") === text) return;
  writeFileSync(file, text);
}
