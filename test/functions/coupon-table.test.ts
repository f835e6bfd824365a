/** Coupons line by line: each row is COUPON_EFFICIENCY's and MELT_SECTION's, a row that cannot be says why. */

import { standsApart } from "../../src/shop/judged";
import { expectNear, number, refusal, table } from "../bead";
import { MEMORY } from "../evidence";

type Cell = number | string | boolean;

const [MEASURED, OWN, PREDICTED, LOW, HIGH, REMARK] = [0, 1, 2, 3, 4, 5];
const NOTHING: Cell[] = ["", "", "", "", "", ""];
const COUPONS = [
  [1, 0.065, 46, 9.4, 5.1, 0.18, 0.15],
  [1.5, 0.065, 50, 9.5, 5, 0.2, 0.175],
  [2, 0.083, 66, 9.6, 4.4, 0.22, 0.2],
  [0.75, 0.049, 38, 9.2, 6.2, 0.15, 0.13],
] as const;

function rowsOf(coupons: readonly (readonly unknown[])[], ...more: unknown[]): Cell[][] {
  return table("COUPON_TABLE", coupons, ...more);
}

/** Travel where the metal of a tube passes on the average. */
function atMeanRadius([od, wall, , , travel]: readonly [
  number,
  number,
  number,
  number,
  number,
  ...number[],
]): number {
  return travel * (1 - wall / od);
}

describe("each row", () => {
  const found = rowsOf(COUPONS);
  const own = found.map((row) => Number(row[OWN]));

  test("its efficiency is COUPON_EFFICIENCY's of that coupon at the mean radius", () => {
    COUPONS.forEach((coupon, i) => {
      const [, wall, amps, volts, , face, root] = coupon;
      const width = (face + root) / 2;
      const alone = table("COUPON_EFFICIENCY", wall, amps, volts, atMeanRadius(coupon), width)[0];
      expectNear(own[i] ?? NaN, Number(alone?.[0]));
      expectNear(Number(found[i]?.[MEASURED]), width);
    });
  });

  test("what is predicted is MELT_WIDTH's at the mean of all, the band at the ends of SHOP_FACTOR's next", () => {
    const fit =
      table(
        "SHOP_FACTOR",
        1,
        own.map((one) => [one]),
        "same",
      )[0] ?? [];
    COUPONS.forEach((coupon, i) => {
      const [, wall, amps, volts] = coupon;
      const at = (efficiency: unknown): number =>
        number("MELT_WIDTH", wall, amps, atMeanRadius(coupon), null, volts, efficiency);
      expectNear(Number(found[i]?.[PREDICTED]), at(fit[0]), 1e-9);
      expectNear(Number(found[i]?.[LOW]), at(fit[3]), 1e-9);
      expectNear(Number(found[i]?.[HIGH]), at(fit[4]), 1e-9);
      expect(found[i]?.[REMARK]).toBe("");
    });
  });

  test("a root of 0 is none, as a host may hand a blank cell over as 0", () => {
    const [blank, null_, zero] = ["", null, 0].map((root) => rowsOf([[1, 0.065, 50, 9.4, 5, 0.19, root]]));
    expect(null_).toEqual(blank);
    expect(zero).toEqual(blank);
  });

  test("without a root the face counts alone, and what is predicted is a face", () => {
    const [row = []] = rowsOf([[1, 0.065, 50, 9.4, 5, 0.19, ""]]);
    expect(row[MEASURED]).toBe(0.19);
    expectNear(Number(row[PREDICTED]), 0.19, 1e-9);
    expect([row[LOW], row[HIGH], row[REMARK]]).toEqual(["", "", ""]);
    // Six columns are the same.
    expect(rowsOf([[1, 0.065, 50, 9.4, 5, 0.19]])).toEqual([row]);
  });

  test("the model's own welds give their efficiency and their width back, whatever the tube", () => {
    const coupons = COUPONS.map((coupon) => {
      const [od, wall, amps, volts, travel] = coupon;
      const section = table("MELT_SECTION", wall, amps, atMeanRadius(coupon), null, volts, 0.74)[0] ?? [];
      return [od, wall, amps, volts, travel, section[0], section[1]];
    });
    for (const row of rowsOf(coupons)) {
      expectNear(Number(row[OWN]), 0.74, 1e-9);
      for (const column of [PREDICTED, LOW, HIGH])
        expectNear(Number(row[column]), Number(row[MEASURED]), 1e-8);
    }
  });
});

test("coupons that differ so much that the weakest next arc would give nothing: a band from 0", () => {
  const [row = []] = rowsOf([
    [1, 0.065, 50, 9.4, 5, 0.1],
    [1, 0.065, 50, 9.4, 5, 0.22],
  ]);
  expect(row[LOW]).toBe(0);
  expect(Number(row[HIGH])).toBeGreaterThan(0.22);
});

describe("a list as people paste it", () => {
  const found = rowsOf(COUPONS);
  const [FIRST, SECOND] = COUPONS;

  test("a header has the headings beside it, blank rows stay blank", () => {
    expect(
      rowsOf([
        ["OD, in", "wall", "amps", "volts", "travel, in/min", "face", "root"],
        ...COUPONS,
        Array.from({ length: 7 }, () => null),
      ]),
    ).toEqual([
      ["measured, in", "efficiency", "predicted, in", "next low, in", "next high, in", "remark"],
      ...found,
      NOTHING,
    ]);
    expect(rowsOf([["od", "wall", "amps", "volts", "travel", "face"]], null, null, null, "SI")[0]?.[0]).toBe(
      "measured, mm",
    );
  });

  test.each([
    ["no amps", [1, 0.065, "", 9.4, 5, 0.18, 0.15], "amps: needs a number (A)"],
    ["text", [1, 0.065, "45 A", 9.4, 5, 0.18, 0.15], "amps: must be a number (A)"],
    [
      "a decimal comma",
      ["1,5", 0.065, 45, 9.4, 5, 0.18, 0.15],
      "od: contains a comma (decimal or thousands separator?); type 1.5 or 1500",
    ],
    [
      "a date for a width",
      [1, 0.065, 45, 9.4, 5, 46_024, 0.15],
      "face: looks like a size that the sheet turned into a date; type it as 0 1/2, '1/2 or 0.5",
    ],
    ["no face", [1, 0.065, 45, 9.4, 5, 0, 0.15], "face: must be above 0"],
    ["a negative root", [1, 0.065, 45, 9.4, 5, 0.18, -0.1], "root: must be 0 or more"],
    ["a rod", [0.2, 0.1, 45, 9.4, 5, 0.18, 0.15], "wall: must be less than half of od, 0.1 in"],
    [
      "millimeters beside inches",
      [25.4, 0.065, 45, 9.4, 5, 0.18, 0.15],
      'od: no tube of this trade has such an outside diameter (maximum 20 in); for millimeters give "SI"',
    ],
    [
      "two systems in one row",
      [15, 0.065, 45, 9.4, 5, 0.18, 0.15],
      "wall: no tube of this trade has so thin a wall for its od (maximum 200 walls); check the units of both",
    ],
  ])("%s: told in its row, counted nowhere", (_, cells, says) => {
    expect(rowsOf([...COUPONS, cells])).toEqual([...found, [...NOTHING.slice(0, REMARK), says]]);
  });

  test("a coupon beyond the arc's power is named and counts nowhere", () => {
    const [row = []] = rowsOf([[1, 0.065, 20, 9.4, 5, 0.2, 0.18]]);
    expect(row.slice(0, REMARK)).toEqual(NOTHING.slice(0, REMARK));
    expect(row[REMARK]).toMatch(/^width: takes [\d.]+ of the arc's power; must be between 0\.001 and 1/);
    expect(rowsOf([FIRST, [1, 0.065, 20, 9.4, 5, 0.2, 0.18], SECOND])[0]).toEqual(rowsOf([FIRST, SECOND])[0]);
  });

  test.each([
    [
      "nothing",
      [null],
      "#VALUE! coupons = blank: needs rows of od, wall, amps, volts, travel, face and, if measured, root",
    ],
    [
      "too few columns",
      [[[1, 0.065, 45]]],
      "#VALUE! coupons = 3 columns: must be 6 or 7 columns: od, wall, amps, volts, travel, face and, if measured, root",
    ],
    [
      "confidence in percent",
      [COUPONS, null, null, 95],
      "#VALUE! confidence = 95: must be between 0.5 and 0.9999",
    ],
    [
      "too many",
      [Array.from({ length: 1001 }, () => FIRST)],
      "#VALUE! coupons = 1001 rows: must be at most 1000 rows; take the list in parts",
    ],
  ])("%s is refused as a whole", (_, cells, says) => {
    expect(refusal("COUPON_TABLE", ...cells)).toBe(says);
  });
});

/** Two-sided limits of Grubbs' test at 5 %, as handbooks print them, from memory; to a unit of the last digit, since tables differ by one. */
describe(`outliers: Grubbs' limits, ${MEMORY}`, () => {
  test.each([
    [4, 1.481],
    [5, 1.715],
    [6, 1.887],
    [8, 2.126],
    [10, 2.29],
    [20, 2.709],
  ])("%d coupons: %d deviations", (n, limit) => {
    // One value apart and the others around 0, half of them at ±a: its distance in deviations goes with a.
    const apartBy = (deviations: number): boolean => {
      const others = Array.from(
        { length: n - 1 },
        (_, i) => ((i % 2) * 2 - 1) * (n % 2 === 0 && i === n - 2 ? 0 : 1),
      );
      const of = (x: number): number => {
        const all = [...others, x];
        const mean = all.reduce((sum, one) => sum + one, 0) / n;
        return (x - mean) / Math.sqrt(all.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (n - 1));
      };
      let [low, high] = [0, 1e6];
      for (let i = 0; i < 200; i += 1) {
        const middle = (low + high) / 2;
        if (of(middle) < deviations) low = middle;
        else high = middle;
      }
      return standsApart(high, [...others, high], 0.95);
    };
    expect(apartBy(limit + 0.001)).toBe(true);
    expect(apartBy(limit - 0.001)).toBe(false);
  });

  test("of three nobody can say which one it is", () => {
    expect(standsApart(9, [1, 1.0001, 9], 0.95)).toBe(false);
  });

  test("a coupon measured wrong is named, the others are not", () => {
    const good = [0.18, 0.181, 0.179, 0.1805, 0.1795, 0.1802];
    const found = rowsOf([...good, 0.23].map((face) => [1, 0.065, 50, 9.4, 5, face]));
    expect(found.map((row) => row[REMARK])).toEqual([
      ...good.map(() => ""),
      "outlier: stands apart from the other coupons",
    ]);
  });
});
