/** The two patterns of output against a shop played event by event, and the laws that both obey. */

import fc from "fast-check";

import { number } from "../../bead";
import { BY_HAND, INDEPENDENT, evidence } from "../../evidence";

type Draw = (mean: number) => number;

/** Park and Miller's multiplicative generator (48271, 2³¹ − 1), so that a run of the shop is the same every time. */
function uniform(start: number): () => number {
  const modulus = 2 ** 31 - 1;
  let state = start;
  return () => {
    state = (state * 48_271) % modulus;
    return state / modulus;
  };
}

/**
 * Joints a second of a shop that is played: heads call when their run ends, the operator goes to the one that has
 * called longest, the walk to the next head comes after each service. Nothing of the calculation is in it.
 */
function played(
  heads: number,
  load: number,
  machine: number,
  walk: number,
  joints: number,
  draw: Draw,
): number {
  const calls = Array.from({ length: heads }, () => draw(machine));
  let free = 0;
  const warm = joints / 10;
  let started = 0;
  for (let joint = 0; joint < joints; joint += 1) {
    const first = calls.indexOf(Math.min(...calls));
    const begins = Math.max(free, calls[first] ?? 0);
    const ends = begins + draw(load);
    // At one head there is nowhere to go.
    free = heads === 1 ? ends : ends + draw(walk);
    calls[first] = ends + draw(machine);
    if (joint === warm) started = begins;
  }
  return (joints - warm) / (free - started);
}

const always: Draw = (mean) => mean;
const exponential =
  (random: () => number): Draw =>
  (mean) =>
    -mean * Math.log(1 - random());
/** Times that scatter by half their mean either way: between the two patterns. */
const scattered =
  (random: () => number): Draw =>
  (mean) =>
    mean * (0.5 + random());

const output = (pattern: string, heads: number, load: number, machine: number, walk = 0): number =>
  number("CREW_OUTPUT", heads, load, machine, 1, 1, pattern, walk) / 3600;

/** Load, machine and walk of an invented shop, s, from few heads to more than one operator can serve. */
const SHOPS: [heads: number, load: number, machine: number, walk: number][] = [
  [1, 120, 600, 0],
  [1, 60, 30, 90],
  [3, 120, 600, 0],
  [5, 100, 600, 20],
  [6, 120, 600, 0],
  [10, 90, 600, 10],
];

describe(evidence("CREW_OUTPUT", INDEPENDENT, "a shop played event by event, invented times"), () => {
  test.each(SHOPS)("%d heads, load %d, machine %d, walk %d: steady times", (heads, load, machine, walk) => {
    // All heads call at once at first; after that the pattern repeats and only the ends of the count are off.
    const shop = played(heads, load, machine, walk, 20_000, always);
    expect(Math.abs(shop / output("steady", heads, load, machine, walk) - 1)).toBeLessThan(1e-3);
  });

  test.each(SHOPS.filter(([, , , walk]) => walk === 0))(
    "%d heads, load %d, machine %d, walk %d: exponential times",
    (heads, load, machine, walk) => {
      // 200 000 joints leave about 0.3 % of chance.
      const shop = played(heads, load, machine, walk, 200_000, exponential(uniform(7)));
      expect(Math.abs(shop / output("random", heads, load, machine, walk) - 1)).toBeLessThan(0.01);
    },
  );

  test.each(SHOPS.filter(([heads]) => heads > 1))(
    "%d heads, load %d, machine %d, walk %d: times that scatter somewhat lie between the two",
    (heads, load, machine, walk) => {
      const shop = played(heads, load, machine, walk, 100_000, scattered(uniform(11)));
      expect(shop).toBeLessThan(output("steady", heads, load, machine, walk) * 1.003);
      expect(shop).toBeGreaterThan(output("random", heads, load, machine, walk));
    },
  );
});

const seconds = fc.double({ min: 0, max: 1e5, noNaN: true });
const machineSeconds = fc.double({ min: 0.1, max: 1e5, noNaN: true });
const headCount = fc.integer({ min: 1, max: 1000 });
/** Sums of up to a thousand heads may round; a real fall would be far larger. */
const ROUNDING = 1e-12;

describe("laws of output", () => {
  test.each(["steady", "random"])("another head never costs joints: %s", (pattern) => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 999 }),
        seconds,
        machineSeconds,
        seconds,
        (heads, load, machine, walk) => {
          const [few, more] = [heads, heads + 1].map((n) => output(pattern, n, load, machine, walk));
          expect(more).toBeGreaterThanOrEqual((few ?? NaN) * (1 - ROUNDING));
        },
      ),
    );
  });

  test("scatter never gains joints: random is at most steady", () => {
    fc.assert(
      fc.property(headCount, seconds, machineSeconds, seconds, (heads, load, machine, walk) => {
        const steady = output("steady", heads, load, machine, walk);
        expect(output("random", heads, load, machine, walk)).toBeLessThanOrEqual(steady * (1 + ROUNDING));
      }),
    );
  });

  test.each(["steady", "random"])("one head with no handling puts out a joint a cycle: %s", (pattern) => {
    fc.assert(
      fc.property(machineSeconds, (machine) => {
        expect(output(pattern, 1, 0, machine) * machine).toBeCloseTo(1, 12);
      }),
    );
  });

  test("one head makes load + machine a cycle, scattered or not, however far the next would be", () => {
    fc.assert(
      fc.property(seconds, machineSeconds, seconds, (load, machine, walk) => {
        const cycles = ["steady", "random"].map(
          (pattern) => output(pattern, 1, load, machine, walk) * (load + machine),
        );
        cycles.forEach((joints) => {
          expect(joints).toBeCloseTo(1, 12);
        });
      }),
    );
  });

  test("a thousand heads on one operator come to one joint per service, scattered or not", () => {
    expect(output("steady", 1000, 60, 600) * 60).toBeCloseTo(1, 12);
    expect(output("random", 1000, 60, 600) * 60).toBeCloseTo(1, 12);
  });

  test("as many heads as CREW_HEADS run without waiting, one more does not", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 1, max: 20_000 }), (load, machine) => {
        const heads = number("CREW_HEADS", load, machine);
        fc.pre(heads < 1000);
        const each = (n: number): number => (output("steady", n, load, machine) / n) * (load + machine);
        expect(each(heads)).toBeCloseTo(1, 9);
        expect(each(heads + 1)).toBeLessThan(1 - 1e-6);
      }),
    );
  });

  test("output goes with hours and availability", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 24, noNaN: true }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (hours, availability) => {
          const joints = number("CREW_OUTPUT", 3, 120, 600, hours, availability);
          expect(joints / (output("steady", 3, 120, 600) * 3600 * hours * availability)).toBeCloseTo(1, 12);
        },
      ),
    );
  });
});

describe(evidence("CREW_HEADS", BY_HAND, "(load + machine)/load, a whole number"), () => {
  // In floating point (0.3 + 0.6)/0.3 and (0.1 + 0.7)/0.1 come out a hair under 3 and 8.
  test.each([
    [0.3, 0.6, 3],
    [0.1, 0.7, 8],
  ])("load %d, machine %d: %d heads, not lost to rounding", (load, machine, heads) => {
    expect(number("CREW_HEADS", load, machine)).toBe(heads);
  });
});
