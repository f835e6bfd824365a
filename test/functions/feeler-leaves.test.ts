/** FEELER_STACK gives back the numbers of the leaves as they stand in their cells, so that a sheet finds them there. */

import fc from "fast-check";

import { bead, table } from "../bead";

/** A tenth of a micrometer, to which leaves are told apart. */
const GRAIN = { US: 0.0001 / 25.4, SI: 0.0001 } as const;

test("any leaves of a person's own, each to the last bit", () => {
  const leaf = fc.double({ min: 0.01, max: 1, noNaN: true });
  fc.assert(
    fc.property(
      fc.array(leaf, { minLength: 1, maxLength: 8 }),
      fc.constantFrom("US", "SI"),
      (drawn, units) => {
        const own = units === "US" ? drawn.map((thickness) => thickness / 25) : drawn;
        const gap = own.reduce((sum, thickness) => sum + thickness, 0);
        fc.pre(gap < (units === "US" ? 0.39 : 10));
        // All of them and no other stack: within rounding of the grains the sum is that of all leaves.
        const tolerance = own.length * GRAIN[units];
        const stack = table("FEELER_STACK", gap, [own], tolerance, units).flat();
        for (const given of stack) expect(own).toContain(given);
      },
    ),
  );
});

test.each([
  [0.1 + 0.2, 0.3],
  [1 / 3, 0.3333],
  [0.7 - 0.1, 0.6],
])("a leaf of %d stays that", (leaf, gap) => {
  expect(bead("FEELER_STACK", gap, [[leaf]], 0.001, "SI")).toEqual([[leaf]]);
});

test("leaves as text: a plain number is itself, a size the decimal a person would type", () => {
  expect(bead("FEELER_STACK", 0.03, [["0.03"]])).toEqual([[0.03]]);
  expect(bead("FEELER_STACK", 0.03125, [["1/32"]])).toEqual([[0.03125]]);
  expect(bead("FEELER_STACK", 0.5, [["0.5 mm"]], null, "SI")).toEqual([[0.5]]);
  expect(bead("FEELER_STACK", 1.651, [["0.065 in"]], null, "SI")).toEqual([[1.651]]);
});

test("the common sets give the decimals they are engraved with", () => {
  // No tolerance: each gap that is a leaf is that leaf. Thousandths, the set of 32 of common practice, from memory.
  const upTo10 = [1.5, 2, 2.5, 3, 4, 5, 6, 7, 8, 9, 10];
  const beyond = [11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26, 28, 30, 32, 35];
  for (const thousandths of [...upTo10, ...beyond]) {
    expect(bead("FEELER_STACK", thousandths / 1000, null, 0)).toEqual([[thousandths / 1000]]);
  }
  // What the set has no leaf for takes two: 27 and 29, and nothing is thicker than the last.
  for (const thousandths of [27, 29, 36]) {
    expect(table("FEELER_STACK", thousandths / 1000, null, 0)).toHaveLength(2);
  }
  for (let i = 1; i <= 20; i += 1) {
    expect(bead("FEELER_STACK", i / 20, null, 0, "SI")).toEqual([[i / 20]]);
  }
});

test("a whole column of leaves, mostly blank", () => {
  const column = Array.from({ length: 1_048_576 }, (_, i): unknown[] => [
    [0.02, 0.0225, null, 0.03][i] ?? null,
  ]);
  expect(bead("FEELER_STACK", 0.0425, column)).toEqual([[0.0225], [0.02]]);
});
