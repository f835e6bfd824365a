/**
 * Counts the work of a call without a clock: how often V8 entered the blocks of functions/ and src/. Import this before
 * the formulas, since only what is compiled after counting began is counted block by block. What the engine does by
 * itself (a sort's comparisons count, its shuffling does not) stays out.
 */

import { Session } from "node:inspector";

const session = new Session();
session.connect();
session.post("Profiler.enable");
session.post("Profiler.startPreciseCoverage", { callCount: true, detailed: true });

const OURS = /\/(?:functions|src)\/[^?]+\.ts$/;

/** Blocks entered since the last time this was asked. */
function entered(): number {
  let blocks: number | undefined;
  session.post("Profiler.takePreciseCoverage", (problem, coverage) => {
    if (problem !== null) return;
    const ours = coverage.result.filter(({ url }) => OURS.test(url) && !url.includes("/test/"));
    // The counters that a measurement of coverage puts into the code are none of its work.
    const counted = ours.flatMap(({ functions }) =>
      functions.filter((one) => !one.functionName.startsWith("cov_")),
    );
    const ranges = counted.flatMap((one) => one.ranges);
    blocks = ranges.reduce((sum, { count }) => sum + count, 0);
  });
  if (blocks === undefined) throw new Error("V8 gave no coverage");
  return blocks;
}

/** Blocks that calls enter together, whether they answer or refuse. */
export function workOf(...calls: readonly (() => unknown)[]): number {
  entered();
  for (const call of calls) {
    try {
      call();
    } catch (problem) {
      if (!(problem instanceof CustomFunctions.Error)) throw problem;
    }
  }
  return entered();
}

/** Counting slows down whatever else runs in this process. */
export function stopCounting(): void {
  session.post("Profiler.stopPreciseCoverage");
  session.disconnect();
}
