import { Bench } from "tinybench";

/** @typedef {Record<string, string | number>} Row */

/**
 * Median milliseconds of each call, measured one after the other.
 * @param {[name: string, call: () => unknown][]} calls
 * @param {{ time: number, iterations?: number, warmupTime?: number, warmupIterations?: number }} settings
 * @returns {Promise<number[]>}
 */
export async function medians(calls, settings) {
  const bench = new Bench({ ...settings });
  for (const [name, call] of calls) bench.add(name, () => void call());
  await bench.run();
  return bench.tasks.map(({ name, result }) => {
    if (result.state !== "completed") throw new Error(`${name}: ${result.state}`);
    return result.latency.p50;
  });
}

/**
 * Median milliseconds of calls that take long enough to be disturbed: in turns, so that whatever else the machine does
 * falls on all of them. The first round only warms up.
 * @param {readonly (() => unknown)[]} calls
 * @param {number} rounds
 * @returns {number[]}
 */
export function mediansInTurns(calls, rounds) {
  /** @type {number[][]} */
  const times = calls.map(() => []);
  for (let round = 0; round <= rounds; round += 1) {
    for (const [i, call] of calls.entries()) {
      const start = performance.now();
      call();
      if (round > 0) times[i]?.push(performance.now() - start);
    }
  }
  return times.map(median);
}

/** @param {readonly number[]} values */
export function median(values) {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? NaN;
}

/** Three digits are more than any of these numbers is good for. @param {number} value */
export function short(value) {
  return Number(value.toPrecision(3));
}
