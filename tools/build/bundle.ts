/** Runs webpack to its end. */

import type { Configuration, Stats } from "webpack";
import webpack from "webpack";

export async function bundle(configuration: Configuration): Promise<void> {
  const compiler = webpack(configuration);
  const stats = await new Promise<Stats | undefined>((resolve, reject) => {
    compiler.run((problem, result) => {
      if (problem === null) resolve(result);
      else reject(problem);
    });
  });
  await new Promise((resolve) => {
    compiler.close(resolve);
  });
  if (stats === undefined || stats.hasErrors())
    throw new Error(stats?.toString({ all: false, errors: true }) ?? "webpack told nothing");
}
