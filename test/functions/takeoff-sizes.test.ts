/** A list of joints added up by size and metal, against the sums of TAKEOFF's own lines. */

import * as fc from "fast-check";

import { byName, refusal, table } from "../bead";
import { BY_HAND, evidence } from "../evidence";
import type { Terms } from "./takeoff-rows";
import { ARC_GAS, GAS, GOOD, JOINTS, PURGE_GAS, takeoff, TIME } from "./takeoff-rows";

type Row = readonly (number | string | boolean)[];

function sizes(joints: unknown, terms: Terms & { most?: unknown } = {}): Row[] {
  return table("TAKEOFF_SIZES", ...byName("TAKEOFF_SIZES", { ...terms, joints }));
}

const TERMS: Terms = {
  handlingSeconds: 300,
  torchFlow: 20,
  purgeFlow: 15,
  damSpacing: 24,
  purgeAtLeast: 45,
  purgeWaited: 0.5,
};
const LIST = [
  ["joints", "od", "wall", "metal"],
  [8, "2", 0.065, "316L"],
  [25, 1, 0.083, "2205"],
  ["", "", "", ""],
  [4, "50.8 mm", "0.065", "SS316L"],
  [3, 2, 0.065, "304L"],
  [2, "1 1/2 in", 0.065, ""],
  [5, "1-1/2", 0.065, "316L"],
];

describe(evidence("TAKEOFF_SIZES", BY_HAND, "TAKEOFF's lines added up by hand"), () => {
  const { lines } = takeoff(LIST, TERMS);
  const line = (row: number): number[] =>
    [JOINTS, TIME, ARC_GAS, PURGE_GAS, GAS].map((column) => Number(lines[row]?.[column]));
  const plus = (a: number, b: number): number[] => line(a).map((value, i) => value + (line(b)[i] ?? NaN));
  const expected = [
    [2, 0.065, "316L", ...plus(1, 4)],
    [1, 0.083, "2205", ...line(2)],
    [2, 0.065, "304L", ...line(5)],
    [1.5, 0.065, "316L", ...plus(6, 7)],
  ];

  test("however a size or a metal is written, in the order of the list", () => {
    const rows = sizes(LIST, TERMS);
    expect(rows.map((row) => row[2])).toEqual(expected.map((row) => row[2]));
    rows.forEach((row, r) => {
      row.forEach((value, c) => {
        if (c !== 2) expect(Number(value)).toBeCloseTo(Number(expected[r]?.[c]), 9);
      });
    });
    expect(rows[0]?.[3]).toBe(12);
  });

  test("with rows for two, the second adds up all others", () => {
    const rows = sizes(LIST, { ...TERMS, most: 2 });
    expect(rows.map((row) => row.slice(0, 3))).toEqual([
      [2, 0.065, "316L"],
      ["", "", "other sizes"],
    ]);
    [3, 4, 5, 6, 7].forEach((c) => {
      const others = [1, 2, 3].reduce((sum, r) => sum + Number(expected[r]?.[c]), 0);
      expect(Number(rows[1]?.[c])).toBeCloseTo(others, 9);
    });
    // As many rows as sizes need no others; one row is all joints.
    expect(sizes(LIST, { ...TERMS, most: 4 })).toEqual(sizes(LIST, TERMS));
    expect(sizes(LIST, { ...TERMS, most: 1 })[0]?.slice(2, 4)).toEqual(["other sizes", 47]);
  });
});

function words(said: string): Row {
  return ["", "", said, "", "", "", "", ""];
}

test("lines that are not counted are told in a row of their own, without numbers", () => {
  const rows = sizes([GOOD, [1, 1, 9], ["two", 1, 0.065]]);
  expect(rows.map((row) => row[2])).toEqual(["316L", "2 lines not counted"]);
  expect(rows[1]).toEqual(words("2 lines not counted"));
  expect(sizes([[1, 1, 9]])).toEqual([words("1 line not counted")]);
  expect(sizes([["joints", "od", "wall"]])).toEqual([words("no lines to count")]);
});

test("a number of rows that is none is refused", () => {
  for (const [most, told] of [
    [0, "most = 0: must be a whole number from 1 to 200000"],
    [1.5, "most = 1.5: must be a whole number from 1 to 200000"],
    [-3, "most = -3: must be a whole number from 1 to 200000"],
  ] as const) {
    expect(refusal("TAKEOFF_SIZES", ...byName("TAKEOFF_SIZES", { joints: [GOOD], most }))).toContain(told);
  }
});

test("whatever the list and the rows, the sizes add up to TAKEOFF's totals", () => {
  const joint = fc.tuple(
    fc.integer({ min: 1, max: 500 }),
    fc.constantFrom(0.5, 1, "1-1/2", 2, 3),
    fc.constantFrom(0.049, 0.065, 0.083),
    fc.constantFrom("316L", "304L", ""),
  );
  fc.assert(
    fc.property(
      fc.array(joint, { minLength: 1, maxLength: 40 }),
      fc.integer({ min: 1, max: 9 }),
      (list, most) => {
        const rows = sizes(list, { ...TERMS, most });
        const { sums } = takeoff(list, TERMS);
        expect(rows.length).toBeLessThanOrEqual(most);
        [JOINTS, TIME, ARC_GAS, PURGE_GAS, GAS].forEach((column, c) => {
          const sum = rows.reduce((total, row) => total + Number(row[c + 3]), 0);
          expect(Math.abs(sum / Number(sums[column]) - 1)).toBeLessThan(1e-12);
        });
      },
    ),
  );
});
