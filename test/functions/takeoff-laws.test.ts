/** Laws of the list, and what a long one costs. */

import fc from "fast-check";

import { RUNS } from "../arbitrary-cells";
import { expectNear, number } from "../bead";
import type { Row, Terms } from "./takeoff-rows";
import { GOOD, MACHINE, PURGE, REMARK, SPEED, SUMMED, takeoff, TIME } from "./takeoff-rows";

const line = fc.tuple(
  fc.integer({ min: 1, max: 500 }),
  fc.double({ min: 0.1, max: 12, noNaN: true }),
  fc.double({ min: -0.01, max: 0.5, noNaN: true }),
  fc.constantFrom("316L", "304L", 2205, "CS", "TI-2", "", null, "zinc"),
);
const list = fc.array(line, { minLength: 1, maxLength: 30 });
const upTo = (max: number): fc.Arbitrary<number> => fc.double({ min: 0, max, noNaN: true });
const terms = fc.record({
  handlingSeconds: upTo(600),
  torchFlow: upTo(60),
  purgeFlow: fc.oneof(fc.constant(0), fc.double({ min: 0.01, max: 60, noNaN: true })),
  purgeSeconds: fc.option(upTo(900)),
  overlap: upTo(90),
  damSpacing: fc.option(fc.double({ min: 1, max: 300, noNaN: true })),
  ppm: fc.double({ min: 20, max: 1000, noNaN: true }),
  supplyPpm: upTo(15),
});

function isCounted(row: Row): boolean {
  return row[REMARK] === "";
}

describe(`laws of the list (${RUNS})`, () => {
  test("a list is the sum of its lines, and says how many of them", () => {
    fc.assert(
      fc.property(list, terms, (joints, given) => {
        const { lines, sums } = takeoff(joints, given);
        const alone = joints.map((one) => takeoff([one], given));
        expect(lines).toEqual(alone.map((one) => one.lines[0]));
        for (const column of SUMMED) {
          expectNear(
            sums[column] as number,
            alone.reduce((sum, one) => sum + (one.sums[column] as number), 0),
          );
        }
        const counted = lines.filter(isCounted).length;
        const plural = joints.length === 1 ? "line" : "lines";
        expect(sums[REMARK]).toBe(`${String(counted)} of ${String(joints.length)} ${plural} counted`);
      }),
    );
  });

  test("in any order the sums are the same and every line keeps its numbers", () => {
    fc.assert(
      fc.property(
        list,
        terms,
        fc.array(fc.nat(), { minLength: 30, maxLength: 30 }),
        (joints, given, draws) => {
          const order = joints.map((_, i) => ({ i, key: draws[i] ?? 0 })).sort((a, b) => a.key - b.key);
          const before = takeoff(joints, given);
          const after = takeoff(
            order.map(({ i }) => joints[i] ?? []),
            given,
          );
          expect(after.lines).toEqual(order.map(({ i }) => before.lines[i]));
          for (const column of SUMMED)
            expectNear(after.sums[column] as number, before.sums[column] as number);
          expect(after.sums[REMARK]).toBe(before.sums[REMARK]);
        },
      ),
    );
  });

  test("the same list in inches and in millimeters takes the same time and gas", () => {
    // 1 in = 25.4 mm; 1 ft³ = 28.316846592 L; 1 ft³/h = 28.316846592/60 L/min (NIST SP 811).
    const CUBIC_FOOT = 28.316846592;
    const factors = [1, 25.4, 1, 1, 1, CUBIC_FOOT, CUBIC_FOOT, CUBIC_FOOT];
    fc.assert(
      fc.property(list, terms, (joints, given) => {
        const us = takeoff(joints, given);
        const si = takeoff(
          joints.map(([quantity, od, wall, material]) => [quantity, od * 25.4, wall * 25.4, material]),
          {
            ...given,
            torchFlow: (given.torchFlow * CUBIC_FOOT) / 60,
            purgeFlow: (given.purgeFlow * CUBIC_FOOT) / 60,
            damSpacing: given.damSpacing === null ? null : given.damSpacing * 25.4,
            units: "SI",
          },
        );
        [...us.lines, us.sums].forEach((row, r) => {
          const same = [...si.lines, si.sums][r] ?? [];
          factors.forEach((factor, column) => {
            const [value, expected] = [row[column], same[column]];
            if (typeof value === "number") expectNear(value * factor, expected as number);
            else expect(expected).toBe("");
          });
        });
        expect(us.sums[REMARK]).toBe(si.sums[REMARK]);
      }),
    );
  });

  test("a line takes what the single formulas say: dwell, downslope and purge included", () => {
    fc.assert(
      fc.property(line, terms, ([quantity, od, wall, material], given) => {
        // Thinner walls belong to no such diameter.
        fc.pre(wall > 0.005 && wall < 0.49 * od && od < 200 * wall && material !== "zinc");
        const { handlingSeconds, torchFlow, purgeFlow, purgeSeconds, overlap, damSpacing, ppm, supplyPpm } =
          given;
        const speed = number("TRAVEL_SUGGEST", wall, null, material);
        const dwell = number("START_DWELL", wall, speed, null, material);
        const downslope = (3 * (1 / 25.4 + 2 * wall) * 60) / speed;
        const machine = number("CYCLE_TIME", od, speed, 30, dwell, overlap, downslope, 15);
        const sweeps = purgeSeconds === null && damSpacing !== null && purgeFlow > 0;
        const purge = sweeps
          ? number("PURGE_TIME", od - 2 * wall, damSpacing, purgeFlow, ppm, supplyPpm)
          : (purgeSeconds ?? 0);
        const arcGas = quantity * number("GAS_JOINT", torchFlow, machine);
        const purgeGas = quantity * number("GAS_JOINT", 0, 0, purgeFlow, purge + machine);
        const [row = []] = takeoff([[quantity, od, wall, material]], given).lines;
        const hours = (quantity * (machine + handlingSeconds)) / 3600;
        const expected = [quantity, speed, machine, purge, hours, arcGas, purgeGas, arcGas + purgeGas];
        // A list takes its dwell from a table, good to 1e-4 as its own test holds; with a minute of gas beside it, 1e-5.
        expected.forEach((value, column) => {
          expectNear(row[column] as number, value, 1e-5);
        });
        expect([SPEED, MACHINE, PURGE, TIME].every((column) => typeof row[column] === "number")).toBe(true);
      }),
    );
  });

  test("any range, header and blanks and all, gives a row for every row and one more", () => {
    const anyRow = fc.tuple(...[0, 1, 2].map(() => fc.oneof(fc.double(), fc.string(), fc.constant(null))));
    fc.assert(
      fc.property(fc.array(anyRow, { maxLength: 20 }), (rows) => {
        const { lines } = takeoff([...rows, GOOD]);
        expect(lines).toHaveLength(rows.length + 1);
      }),
    );
  });
});

describe("long lists", () => {
  /** Reads of single cells that a list costs. */
  function cellsRead(length: number): number {
    let reads = 0;
    const row = (): unknown[] =>
      new Proxy([...GOOD, "CS"], {
        get: (target, key): unknown => {
          if (typeof key === "string" && /^\d+$/.test(key)) reads += 1;
          return Reflect.get(target, key) as unknown;
        },
      });
    takeoff(Array.from({ length }, row));
    return reads;
  }

  test("another thousand lines read as many cells more as the thousand before", () => {
    const [few = NaN, more = NaN, most = NaN] = [1000, 2000, 3000].map(cellsRead);
    expect(most - more).toBe(more - few);
    expect(more - few).toBeGreaterThanOrEqual(4000);
  });

  test("100 000 lines are answered, a thousandth of them omitted", () => {
    const joints = Array.from({ length: 100_000 }, (_, i) => [8, 1, i % 1000 === 0 ? 0.5 : 0.065]);
    const { lines, sums } = takeoff(joints, { handlingSeconds: 300 });
    const hours = takeoff([GOOD], { handlingSeconds: 300 }).sums[TIME] as number;
    expect(lines).toHaveLength(100_000);
    expect(lines.filter((row) => !isCounted(row))).toHaveLength(100);
    // Adding up so many numbers may round off a little.
    expectNear(sums[TIME] as number, 99_900 * hours, 1e-10);
    expect(sums[REMARK]).toBe("99900 of 100000 lines counted");
  });
});

test("the terms of a list are all optional", () => {
  const none: Terms = {};
  expect(takeoff([GOOD], none).sums[REMARK]).toBe("1 of 1 line counted");
});
