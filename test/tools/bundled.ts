/**
 * Runs webpack with the settings of the build and prints, for each bundle, every file in it: what webpack's own graph
 * holds, without the words that the build takes from its report.
 */

import { mkdtempSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";

import type { Compilation, Configuration, Module } from "webpack";
import webpack from "webpack";

import { bundles } from "../../tools/build/webpack";

const folder = mkdtempSync(path.join(os.tmpdir(), "ringbead-"));
const files: Record<string, string[]> = {};
const settings: Record<string, Configuration> = { ...bundles("production", folder) };
for (const [name, one] of Object.entries(settings)) {
  const compiler = webpack({ ...one, devtool: false, optimization: { minimize: false } });
  const compilation = await new Promise<Compilation>((resolve, reject) => {
    compiler.run((problem, stats) => {
      if (problem === null && stats !== undefined) resolve(stats.compilation);
      else reject(problem ?? new Error("no stats"));
    });
  });
  files[name] = [...compilation.chunks].flatMap((chunk) =>
    [...compilation.chunkGraph.getChunkModulesIterable(chunk)].flatMap(filesOf),
  );
  await new Promise((resolve) => {
    compiler.close(resolve);
  });
}
rmSync(folder, { recursive: true });
console.log(JSON.stringify(files));

/** The file of a module, or those of the modules that were joined into it. */
function filesOf(module: Module): string[] {
  const joined = "modules" in module ? (module.modules as readonly Module[]) : [];
  return [module.nameForCondition() ?? module.identifier(), ...joined.flatMap(filesOf)];
}
