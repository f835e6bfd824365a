/** Runs webpack to its end, and tells whose packages are in what it made. */

import type { Configuration, Stats, StatsModule } from "webpack";
import webpack from "webpack";

/** All that stands in the bundle's files, each module by itself: those joined into one, styles, fonts and templates. */
const EVERY_MODULE = {
  all: false,
  modules: true,
  nestedModules: true,
  runtimeModules: true,
  cachedModules: true,
  dependentModules: true,
  modulesSpace: Infinity,
  nestedModulesSpace: Infinity,
};

/** The names of the packages in the bundle, sorted. */
export async function bundle(configuration: Configuration): Promise<string[]> {
  const compiler = webpack(configuration);
  const stats = await new Promise<Stats | undefined>((resolve, reject) => {
    compiler.run((problem, result) => {
      if (problem === null) resolve(result);
      else reject(problem);
    });
  });
  const packages = stats === undefined ? [] : packagesOf(stats.toJson(EVERY_MODULE).modules ?? []);
  await new Promise((resolve) => {
    compiler.close(resolve);
  });
  if (stats === undefined || stats.hasErrors())
    throw new Error(stats?.toString({ all: false, errors: true }) ?? "webpack told nothing");
  return packages;
}

function packagesOf(modules: readonly StatsModule[]): string[] {
  const names = modules.flatMap(({ moduleType, nameForCondition, modules: nested = [] }) => {
    // What loads the other modules is code of webpack's own.
    if (moduleType === "runtime") return ["webpack"];
    const file = nameForCondition?.replaceAll("\\", "/") ?? "";
    const name = /.*\/node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(file)?.[1];
    return [...(name === undefined ? [] : [name]), ...packagesOf(nested)];
  });
  return [...new Set(names)].sort();
}
