/** Tries the scripts for other spreadsheets as they were built: what they may not hold, and the example of each formula. */

import { readFileSync } from "node:fs";
import path from "node:path";

import { disagreement } from "../../docs/stated-result";
import type { Example } from "../built";
import type { CellFunction } from "../cell-host";
import { scriptErrors } from "../safe-script";
import { googleSheetsFunctions, javascriptMacrosFunctions } from "./loaded";
import type { SCRIPTS } from "./written";

const LOADED: Readonly<Record<keyof typeof SCRIPTS, (script: string) => ReadonlyMap<string, CellFunction>>> =
  {
    "google-sheets.js": googleSheetsFunctions,
    "javascript-macros.js": javascriptMacrosFunctions,
  };

/** What is wrong with the scripts of a build; empty when nothing is. */
export function scriptsErrors(dist: string, formulas: readonly Example[]): string[] {
  return Object.entries(LOADED).flatMap(([file, loaded]) => {
    const script = readFileSync(path.join(dist, "scripts", file), "utf8");
    const functions = loaded(script);
    const wrong = formulas.flatMap((formula) => exampleErrors(formula, functions.get(formula.id)));
    return [...scriptErrors(file, script), ...wrong.map((what) => `${file}: ${what}`)];
  });
}

function exampleErrors({ id, example }: Example, called: CellFunction | undefined): string[] {
  if (called === undefined) return [`${id} is not in it`];
  try {
    const wrong = disagreement(called(...example.args), example.gives);
    return wrong === undefined ? [] : [`${id}: its example ${wrong}`];
  } catch (problem) {
    return [`${id}: its example does not run (${(problem as Error).message})`];
  }
}
