/** The formulas as a host has them: of the script that the build makes. Run from their sources they are slower. */

import { readFileSync } from "node:fs";
import path from "node:path";
import vm from "node:vm";

import { bundle } from "../../build/bundle";
import type { CellFunction } from "../../build/cell-host";
import { cellHost } from "../../build/cell-host";
import { root } from "../../build/project";
import { bundles } from "../../build/webpack";

const FOLDER = path.join(root, ".cache", "bench");
export const SCRIPT = path.join(FOLDER, "functions.js");

let loaded: ReadonlyMap<string, CellFunction> | undefined;

/** Makes the script as the build does, without touching dist/. Before the first formula is asked for. */
export async function bundleFormulas(): Promise<void> {
  await bundle(bundles("production", FOLDER).functions);
}

/** A formula that there has to be. */
export function formulaOf(id: string): CellFunction {
  loaded ??= load();
  const formula = loaded.get(id);
  if (formula === undefined) throw new Error(`no formula ${id}`);
  return formula;
}

function load(): ReadonlyMap<string, CellFunction> {
  const { CustomFunctions, associated } = cellHost();
  Object.assign(globalThis, { CustomFunctions });
  vm.runInThisContext(readFileSync(SCRIPT, "utf8"), { filename: SCRIPT });
  return associated;
}
