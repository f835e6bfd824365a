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

/** @param {readonly number[]} values */
export function median(values) {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? NaN;
}

/** Three digits are more than any of these numbers is good for. @param {number} value */
export function short(value) {
  return Number(value.toPrecision(3));
}
