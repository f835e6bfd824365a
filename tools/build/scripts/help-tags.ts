/** The comments of a script: the help of each formula in JSDoc, as the records tell it, and the license. */

import { readFileSync } from "node:fs";
import path from "node:path";

import type { FormulaHelp, ParameterHelp } from "../../../functions/help-text";
import { root } from "../project";
import { scriptName } from "./inside";

export type Tagged = Pick<FormulaHelp, "id" | "meaning" | "parameters" | "returns">;

/** Between the signs of a comment that a host reads as help. */
export function comment(lines: readonly string[]): string {
  return ["/**", ...lines.map((line) => (line === "" ? " *" : ` * ${line}`)), " */"].join("\n");
}

/** Help speaks of other formulas by the names that they have in a script. */
export function told(text: string): string {
  return text.replace(/\bBEAD\.([A-Z][A-Z0-9_]*)/g, (_, id: string) => scriptName(id));
}

/** A line of an argument: its type, its name, and its help. */
export function parameterTag({ name, description }: ParameterHelp, type: string, shown = name): string {
  return `@param {${type}} ${shown} ${told(description)}`;
}

/** The license as it stands in the project, in a comment that no host reads as help. */
export function license(): string {
  const lines = readFileSync(path.join(root, "LICENSE"), "utf8").trim().split("\n");
  return lines.map((line) => `// ${line}`.trim()).join("\n");
}
