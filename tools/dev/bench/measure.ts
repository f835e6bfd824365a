import { Bench } from "tinybench";

export type Row = Readonly<Record<string, string | number>>;
export type Call = () => unknown;

export interface Effort {
  readonly time: number;
  readonly warmupTime: number;
}

/** Median milliseconds of each call, measured one after the other. */
export async function medians(
  calls: readonly (readonly [name: string, call: Call])[],
  settings: Effort,
): Promise<number[]> {
  const bench = new Bench({ ...settings });
  for (const [name, call] of calls) {
    bench.add(name, () => {
      call();
    });
  }
  await bench.run();
  return bench.tasks.map(({ name, result }) => {
    if (result.state !== "completed") throw new Error(`${name}: ${result.state}`);
    return result.latency.p50;
  });
}

/**
 * Median milliseconds of calls that take long enough to be disturbed: in turns, so that whatever else the machine does
 * falls on all of them, and of the process's own time, garbage collection and all. The first round only warms up.
 */
export function mediansInTurns(calls: readonly Call[], rounds: number): number[] {
  const times = calls.map((): number[] => []);
  for (let round = 0; round <= rounds; round += 1) {
    for (const [i, call] of calls.entries()) {
      const start = process.cpuUsage();
      call();
      const { user, system } = process.cpuUsage(start);
      if (round > 0) times[i]?.push((user + system) / 1000);
    }
  }
  return times.map(median);
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? NaN;
}

/** Three digits are more than any of these numbers is good for. */
export function short(value: number): number {
  return Number(value.toPrecision(3));
}
