/** Heads that several operators share: against the chain of states, a shop played event by event, and the laws. */

import fc from "fast-check";

import { expectNear, number } from "../../bead";
import { evidence, INDEPENDENT } from "../../evidence";

const output = (
  pattern: string,
  operators: number,
  heads: number,
  load: number,
  machine: number,
  walk = 0,
): number => number("CREW_OUTPUT", heads, load, machine, 1, 1, pattern, walk, operators) / 3600;

/**
 * Joints a second of the chain itself: the balance of every state, heads that stand n = 0 … N, solved by elimination
 * with the largest pivot. Nothing of the calculation's ratios is in it.
 */
function ofChain(operators: number, heads: number, service: number, run: number): number {
  const size = heads + 1;
  const flow = (from: number, to: number): number => {
    if (to === from + 1) return (heads - from) / run;
    return to === from - 1 ? Math.min(from, operators) / service : 0;
  };
  // Row i: what flows into state i less what flows out of it is 0; the last row: all chances are 1.
  const rows = Array.from({ length: size }, (_, i) =>
    Array.from({ length: size + 1 }, (__, j) => {
      if (i === heads) return 1;
      if (j === size) return 0;
      return j === i ? -flow(i, i + 1) - flow(i, i - 1) : flow(j, i);
    }),
  );
  for (let column = 0; column < size; column += 1) {
    const below = rows.slice(column);
    const largest = Math.max(...below.map((row) => Math.abs(row[column] ?? 0)));
    const pivot = column + below.findIndex((row) => Math.abs(row[column] ?? 0) === largest);
    const [one = [], other = []] = [rows[column], rows[pivot]];
    rows[column] = other;
    rows[pivot] = one;
    rows.forEach((row, i) => {
      if (i === column) return;
      const factor = (row[column] ?? 0) / (other[column] ?? 1);
      row.forEach((value, j) => {
        row[j] = value - factor * (other[j] ?? 0);
      });
    });
  }
  const chances = rows.map((row, i) => (row[size] ?? 0) / (row[i] ?? 1));
  return chances.reduce((sum, chance, n) => sum + (chance * (heads - n)) / run, 0);
}

describe(
  evidence("CREW_OUTPUT", INDEPENDENT, "the balance of every state of the queue, solved by elimination"),
  () => {
    test.each([
      [1, 6, 120, 600],
      [2, 3, 100, 100],
      [2, 5, 180, 262],
      [3, 4, 180, 262],
      [3, 20, 60, 600],
      [5, 40, 120, 600],
      [10, 30, 30, 1000],
      [7, 25, 900, 60],
    ])("%d operators, %d heads, load %d, machine %d", (operators, heads, load, machine) => {
      expectNear(
        output("random", operators, heads, load, machine),
        ofChain(operators, heads, load, machine),
        1e-11,
      );
    });
  },
);

/** Park and Miller's generator, so that a run of the shop is the same every time. */
function uniform(start: number): () => number {
  const modulus = 2 ** 31 - 1;
  let state = start;
  return () => {
    state = (state * 48_271) % modulus;
    return state / modulus;
  };
}

type Draw = (mean: number) => number;

/** Joints a second of a shop played: whoever is free first goes to the head that has called longest. */
function played(shop: readonly number[], joints: number, draw: Draw): number {
  const [operators = 1, heads = 1, load = 0, machine = 1, walk = 0] = shop;
  const calls = Array.from({ length: heads }, () => draw(machine));
  const free = Array.from({ length: operators }, () => 0);
  const warm = joints / 10;
  let [started, ended] = [0, 0];
  for (let joint = 0; joint < joints; joint += 1) {
    const head = calls.indexOf(Math.min(...calls));
    const operator = free.indexOf(Math.min(...free));
    const begins = Math.max(free[operator] ?? 0, calls[head] ?? 0);
    const ends = begins + draw(load);
    free[operator] = ends + draw(walk);
    calls[head] = ends + draw(machine);
    if (joint === warm) started = begins;
    ended = begins;
  }
  return (joints - warm) / (ended - started);
}

/** Operators, heads, load, machine, walk of an invented shop, s. */
const SHOPS = [
  [2, 3, 120, 600, 0],
  [2, 9, 120, 600, 0],
  [3, 4, 180, 262, 15],
  [3, 8, 180, 262, 15],
  [4, 30, 60, 300, 10],
] as const;

describe(evidence("CREW_OUTPUT", INDEPENDENT, "a shop of several operators played event by event"), () => {
  test.each(SHOPS)("%d operators, %d heads, load %d, machine %d, walk %d: steady times", (...shop) => {
    // Only the ends of the count are off: one round in 20 000 joints.
    expect(Math.abs(played(shop, 20_000, (mean) => mean) / output("steady", ...shop) - 1)).toBeLessThan(3e-3);
  });

  test.each(SHOPS.filter(([, , , , walk]) => walk === 0))(
    "%d operators, %d heads, load %d, machine %d, walk %d: exponential times",
    (...shop) => {
      const random = uniform(7);
      const shown = played(shop, 200_000, (mean) => -mean * Math.log(1 - random()));
      // 200 000 joints leave about 0.3 % of chance.
      expect(Math.abs(shown / output("random", ...shop) - 1)).toBeLessThan(0.01);
    },
  );

  test.each(SHOPS)(
    "%d operators, %d heads, load %d, machine %d, walk %d: some scatter lies between",
    (...shop) => {
      const random = uniform(11);
      const shown = played(shop, 100_000, (mean) => mean * (0.5 + random()));
      expect(shown).toBeLessThan(output("steady", ...shop) * 1.003);
      expect(shown).toBeGreaterThan(output("random", ...shop));
    },
  );
});

const seconds = fc.double({ min: 0, max: 1e5, noNaN: true });
const machineSeconds = fc.double({ min: 0.1, max: 1e5, noNaN: true });
const few = fc.integer({ min: 1, max: 12 });
const PATTERNS = ["steady", "random"] as const;
/** Sums of up to a thousand heads may round; a real fall would be far larger. */
const ROUNDING = 1e-12;

describe("laws of shared heads", () => {
  test.each(PATTERNS)("another operator never costs joints, nor does another head: %s", (pattern) => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 200 }),
        fc.integer({ min: 1, max: 200 }),
        seconds,
        machineSeconds,
        seconds,
        (operators, heads, load, machine, walk) => {
          const joints = (c: number, n: number): number => output(pattern, c, n, load, machine, walk);
          const now = joints(operators, heads) * (1 - ROUNDING);
          expect(joints(operators + 1, heads)).toBeGreaterThanOrEqual(now);
          expect(joints(operators, heads + 1)).toBeGreaterThanOrEqual(now);
        },
      ),
    );
  });

  test.each(PATTERNS)(
    "shared heads make at least what the same heads fixed to operators make: %s",
    (pattern) => {
      fc.assert(
        fc.property(
          fc.array(few, { minLength: 1, maxLength: 6 }),
          seconds,
          machineSeconds,
          seconds,
          (split, ...work) => {
            const fixed = split.reduce((sum, heads) => sum + output(pattern, 1, heads, ...work), 0);
            const heads = split.reduce((sum, one) => sum + one, 0);
            expect(output(pattern, split.length, heads, ...work)).toBeGreaterThanOrEqual(
              fixed * (1 - ROUNDING),
            );
          },
        ),
      );
    },
  );

  test("at random, no number of operators who stay at one head makes more", () => {
    // Written out for every number of them, each rest without walks that do not pay: the chain itself.
    fc.assert(
      fc.property(
        few,
        few,
        fc.integer({ min: 1, max: 300 }),
        fc.integer({ min: 1, max: 300 }),
        fc.integer({ min: 1, max: 400 }),
        (operators, more, load, machine, walk) => {
          const heads = operators + more;
          const arrangements = Array.from({ length: operators + 1 }, (_, staying) => {
            const alone = staying / (load + machine);
            const going = operators - staying;
            return going === 0 ? alone : alone + ofChain(going, heads - staying, load + walk, machine);
          });
          expectNear(
            output("random", operators, heads, load, machine, walk),
            Math.max(...arrangements),
            1e-9,
          );
        },
      ),
      { numRuns: 60 },
    );
  });

  test("scatter never gains joints: random is at most steady", () => {
    fc.assert(
      fc.property(few, few, seconds, machineSeconds, seconds, (operators, heads, load, machine, walk) => {
        const shop = [operators, heads, load, machine, walk] as const;
        expect(output("random", ...shop)).toBeLessThanOrEqual(output("steady", ...shop) * (1 + ROUNDING));
      }),
    );
  });

  test.each(PATTERNS)("an operator a head: a joint a cycle each, whatever the walk: %s", (pattern) => {
    fc.assert(
      fc.property(few, few, seconds, machineSeconds, seconds, (heads, spare, load, machine, walk) => {
        const joints = output(pattern, heads + spare - 1, heads, load, machine, walk) * (load + machine);
        expectNear(joints, heads);
      }),
    );
  });

  test.each(PATTERNS)("ten thousand heads: each operator a joint a service: %s", (pattern) => {
    for (const operators of [1, 2, 30, 500]) {
      expectNear(output(pattern, operators, 10_000, 60, 600) * 60, operators);
    }
  });

  test("heads that hardly ever call run all the time, with thousands of them", () => {
    // Service of 1 µs in a run of 600 s: 10 000 heads ask for 17 µs a second.
    expectNear(output("random", 3, 10_000, 1e-6, 600) * (600 + 1e-6), 10_000, 1e-9);
    expectNear(output("random", 3, 10_000, 0, 600) * 600, 10_000);
  });

  test("with a machine that hardly runs operators never rest", () => {
    expectNear(output("random", 3, 10_000, 60, 1e-9) * 60, 3);
    expectNear(output("random", 3, 4, 60, 1e-300) * 60, 3);
  });

  test("with every other number as it is, twice the heads and operators make at least twice the joints", () => {
    fc.assert(
      fc.property(few, few, seconds, machineSeconds, (operators, heads, load, machine) => {
        const [one, two] = [1, 2].map((times) =>
          output("random", times * operators, times * heads, load, machine),
        );
        expect(two).toBeGreaterThanOrEqual(2 * (one ?? NaN) * (1 - ROUNDING));
      }),
    );
  });
});
