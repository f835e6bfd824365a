/** Against every subset of small sets, told apart in whole hundredths of a millimeter. */

import fc from "fast-check";

import { COMMON_LEAVES, COMMON_TOLERANCE, feelerStack } from "../../../src/gap/feeler";
import { LENGTH, si } from "../../../src/quantity";
import { RUNS, SETTINGS } from "../../arbitrary-cells";
import { bead, refusal, table } from "../../bead";
import { BY_HAND, COMMON_PRACTICE, INDEPENDENT, evidence } from "../../evidence";

const HUNDREDTH = 1e-5; // m

/** Whether a is the better of two stacks, each thickest first: fewer leaves, then nearer, then thicker first. */
function better(a: readonly number[], b: readonly number[] | undefined, gap: number): boolean {
  if (b === undefined) return true;
  if (a.length !== b.length) return a.length < b.length;
  const [awayA, awayB] = [away(a, gap), away(b, gap)];
  if (awayA !== awayB) return awayA < awayB;
  const place = a.findIndex((leaf, i) => leaf !== b[i]);
  return place >= 0 && (a[place] ?? 0) > (b[place] ?? 0);
}

function away(stack: readonly number[], gap: number): number {
  return Math.abs(stack.reduce((sum, leaf) => sum + leaf, 0) - gap);
}

/** The best of all subsets, none omitted. */
function bestOfAll(gap: number, leaves: readonly number[], tolerance: number): number[] | undefined {
  let best: number[] | undefined;
  for (let pick = 1; pick < 2 ** leaves.length; pick += 1) {
    const stack = leaves.filter((_, i) => (pick >> i) & 1).sort((a, b) => b - a);
    if (away(stack, gap) <= tolerance && better(stack, best, gap)) best = stack;
  }
  return best;
}

const leafSet = fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 9 });

describe(evidence("FEELER_STACK", INDEPENDENT, "search of every subset of small sets of leaves"), () => {
  test(`the best of all subsets, or none (${RUNS})`, () => {
    let stacked = 0;
    let refused = 0;
    fc.assert(
      fc.property(
        leafSet,
        fc.integer({ min: 1, max: 200 }),
        fc.integer({ min: 0, max: 5 }),
        (leaves, gap, tolerance) => {
          const best = bestOfAll(gap, leaves, tolerance);
          const search = (): number[] =>
            feelerStack(
              si(gap * HUNDREDTH, LENGTH),
              leaves.map((leaf) => si(leaf * HUNDREDTH, LENGTH)),
              si(tolerance * HUNDREDTH, LENGTH),
            ).map((leaf) => Math.round(leaf / HUNDREDTH));
          if (best === undefined) {
            refused += 1;
            expect(search).toThrow("gap refused");
          } else {
            stacked += 1;
            expect(search()).toEqual(best);
          }
        },
      ),
    );
    expect(stacked).toBeGreaterThan(SETTINGS.numRuns / 20);
    expect(refused).toBeGreaterThan(SETTINGS.numRuns / 20);
  });
});

test(`a stack uses no leaf twice and is thickest first, whatever the set (${RUNS})`, () => {
  const gap = fc.integer({ min: 5, max: 300 }).map((hundredths) => si(hundredths * HUNDREDTH, LENGTH));
  fc.assert(
    fc.property(gap, fc.constantFrom(COMMON_LEAVES.US, COMMON_LEAVES.SI), (wanted, leaves) => {
      const stack = feelerStack(wanted, leaves, si(0.000_05, LENGTH));
      expect(stack).toEqual([...stack].sort((a, b) => b - a));
      for (const leaf of stack) {
        expect(stack.filter((one) => one === leaf).length).toBeLessThanOrEqual(
          leaves.filter((one) => one === leaf).length,
        );
      }
      expect(Math.abs(stack.reduce((sum, leaf) => sum + leaf, 0) - wanted)).toBeLessThan(0.000_05 + 1e-9);
    }),
  );
});

describe(evidence("FEELER_STACK", BY_HAND, "sums of a few leaves and the order of choice"), () => {
  test.each([
    ["one leaf before two that are nearer", [0.05, [[0.049, 0.03, 0.02]], 0.001], [0.049]],
    ["of two that are as near, the thicker first", [0.05, [[0.03, 0.02, 0.04, 0.01]], 0], [0.04, 0.01]],
    ["the nearest of those with as few", [0.05, [[0.048, 0.0505]], 0.002], [0.0505]],
    ["above and below as near: the thicker", [0.05, [[0.049, 0.051]], 0.001], [0.051]],
    [
      "below and above as near: the thicker first",
      [0.05, [[0.04, 0.03, 0.022, 0.008]], 0.002],
      [0.04, 0.008],
    ],
    ["one leaf after two that are nearer", [0.05, [[0.051, 0.03, 0.02]], 0.001], [0.051]],
    [
      "two leaves before three with a thicker one",
      [0.01, [[0.006, 0.005, 0.005, 0.003, 0.001]], 0],
      [0.005, 0.005],
    ],
    [
      "two leaves before four with a thicker one",
      [0.01, [[0.006, 0.005, 0.005, 0.002, 0.001, 0.001]], 0],
      [0.005, 0.005],
    ],
    ["of one first leaf, the thicker second", [0.01, [[0.006, 0.005, 0.003]], 0.001], [0.006, 0.005]],
    ["two leaves of one thickness are two leaves", [0.02, [[0.01, 0.01]], 0], [0.01, 0.01]],
    ["blank cells are no leaves", [0.02, [[0.01], [null], [""], [0.01]], 0], [0.01, 0.01]],
  ])("%s", (_, cells, leaves) => {
    const column = table("FEELER_STACK", ...cells).map(([leaf]) => leaf as number);
    expect(column).toHaveLength(leaves.length);
    column.forEach((leaf, i) => {
      expect(leaf).toBeCloseTo(leaves[i] ?? NaN, 12);
    });
  });

  test("a leaf is not used twice", () => {
    expect(refusal("FEELER_STACK", 0.02, [[0.01]], 0)).toBe(
      "#N/A gap = 0.02 in: no stack of these leaves comes within 0 in of it",
    );
  });

  test("the edge of the tolerance is inside, just beyond is not", () => {
    expect(bead("FEELER_STACK", 1.05, [[1]], 0.05, "SI")).toEqual([[1]]);
    expect(refusal("FEELER_STACK", 1.0502, [[1]], 0.05, "SI")).toMatch(/^#N\/A gap = 1.0502 mm: /);
  });
});

describe("the default sets", () => {
  describe(evidence("FEELER_STACK", COMMON_PRACTICE, "leaf sets in inches and millimeters"), () => {
    test("32 inch leaves from 0.0015 to 0.035 in, and half a thousandth", () => {
      const inches = COMMON_LEAVES.US.map((leaf) => leaf / 0.0254);
      expect(inches).toHaveLength(32);
      expect(Math.min(...inches)).toBeCloseTo(0.0015, 12);
      expect(Math.max(...inches)).toBeCloseTo(0.035, 12);
      expect(new Set(inches.map((leaf) => leaf.toFixed(4))).size).toBe(31);
      expect(COMMON_TOLERANCE.US / 0.0254).toBeCloseTo(0.0005, 12);
    });

    test("20 metric leaves, 0.05 to 1.00 mm by 0.05 mm, and half a step", () => {
      COMMON_LEAVES.SI.forEach((leaf, i) => {
        expect(leaf * 1000).toBeCloseTo(0.05 * (i + 1), 12);
      });
      expect(COMMON_LEAVES.SI).toHaveLength(20);
      expect(COMMON_TOLERANCE.SI * 1000).toBeCloseTo(0.025, 12);
    });

    test("the formula takes the set of its units: 0.043 in from inch leaves, 1.1 mm from metric ones", () => {
      // By hand: no leaf is 0.043 in; of the pairs 0.035 + 0.008 is the one with the thickest leaf.
      expect(table("FEELER_STACK", 0.043).map(([leaf]) => (leaf as number).toFixed(4))).toEqual([
        "0.0350",
        "0.0080",
      ]);
      // 1.1 mm: 1.00 + 0.10.
      expect(
        table("FEELER_STACK", 1.1, null, null, "SI").map(([leaf]) => (leaf as number).toFixed(2)),
      ).toEqual(["1.00", "0.10"]);
    });
  });

  test("given leaves and tolerance, inch and metric agree", () => {
    const inch = table("FEELER_STACK", 0.05, [[0.03, 0.021, 0.008]], 0.002, "US");
    const metric = table("FEELER_STACK", 1.27, [[0.762, 0.5334, 0.2032]], 0.0508, "SI");
    expect(inch.map(([leaf]) => ((leaf as number) * 25.4).toFixed(9))).toEqual(
      metric.map(([leaf]) => (leaf as number).toFixed(9)),
    );
  });
});
