/** A shop's own coupons: what the model made comes back, and what cannot be is named by its row. */

import fc from "fast-check";

import { DESIGNATIONS } from "../../src/metal/material";
import { RUNS } from "../arbitrary-cells";
import { expectNear, number, refusal, table } from "../bead";

type Side = "mean" | "face" | "root";
const SIDES: readonly Side[] = ["mean", "face", "root"];

function efficiency(...cells: unknown[]): (number | string | boolean)[] {
  return table("COUPON_EFFICIENCY", ...cells)[0] ?? [];
}

/** What the model melts, by MELT_SECTION. */
function widthOf(side: Side, cells: readonly unknown[]): number {
  const [face = NaN, root = NaN] = (table("MELT_SECTION", ...cells)[0] ?? []).map(Number);
  return { mean: (face + root) / 2, face, root }[side];
}

const column = (values: readonly unknown[]): unknown[][] => values.map((value) => [value]);

describe("coupons that the model made give their efficiency back", () => {
  test(`each by itself, to 1e-9 (${RUNS})`, () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.8, max: 3, noNaN: true }),
        fc.double({ min: 0.55, max: 0.95, noNaN: true }),
        fc.double({ min: 1.05, max: 1.6, noNaN: true }),
        fc.constantFrom(...DESIGNATIONS),
        fc.constantFrom(...SIDES),
        fc.constantFrom(null, 3, 5),
        (wall, share, over, metal, side, arcSize) => {
          const speed = number("TRAVEL_SUGGEST", wall, null, metal, "SI");
          const through = number("AMPS_THROUGH", wall, speed, 0, metal, 10, share, null, arcSize, "SI");
          const amps = over * through;
          const width = widthOf(side, [wall, amps, speed, metal, 10, share, null, arcSize, "SI"]);
          const [found, ...intervals] = efficiency(
            wall,
            amps,
            10,
            speed,
            width,
            side,
            metal,
            arcSize,
            null,
            "SI",
          );
          expectNear(Number(found), share, 1e-9);
          expect(intervals).toEqual(["", "", "", "", 1]);
        },
      ),
    );
  });

  test("an arc gives the tube all of its power at most", () => {
    const coupon = (amps: number): unknown[] => [0.065, amps, 9.4, 5, 0.18];
    // The same bead from more amps is a smaller share of them.
    const whole = 50 * Number(efficiency(...coupon(50))[0]);
    expectNear(Number(efficiency(...coupon(whole / 0.995))[0]), 0.995, 1e-9);
    expect(efficiency(...coupon(whole * (1 - 5e-10)))[0]).toBe(1);
    expect(refusal("COUPON_EFFICIENCY", ...coupon(whole / 1.005))).toMatch(
      /^#N\/A width = 0\.18 in: takes 1\.005 of the arc's power; must be between 0\.001 and 1/,
    );
  });

  test("a list of them, of different tubes and currents", () => {
    const walls = [0.049, 0.065, 0.083, 0.109];
    const amps = [42, 55, 68, 95];
    const speeds = [6, 5, 4.5, 4];
    const widths = walls.map((wall, i) => widthOf("mean", [wall, amps[i], speeds[i], null, 9.5, 0.72]));
    const found = efficiency(column(walls), column(amps), 9.5, column(speeds), column(widths)).map(Number);
    for (const value of found.slice(0, 5)) expectNear(value, 0.72, 1e-9);
    expect(found[5]).toBe(4);
  });

  test("coupons of 0.75 and 0.81: mean 0.78, intervals by the t of one degree of freedom", () => {
    const widths = [0.75, 0.81].map((share) => widthOf("face", [0.065, 52, 5, null, 9.4, share]));
    const found = efficiency(0.065, 52, 9.4, 5, column(widths), "face").map(Number);
    // By hand: deviation 0.03·√2, t = tan(0.475·π); t·s/√2 and t·s·√1.5.
    const t = Math.tan(0.475 * Math.PI);
    const expected = [0.78, 0.78 - 0.03 * t, 0.78 + 0.03 * t, 0.78 - 0.03 * Math.sqrt(3) * t];
    expected.forEach((value, i) => {
      expect(Math.abs((found[i] ?? NaN) - value)).toBeLessThan(1e-8);
    });
  });
});

describe("how the cells may come", () => {
  const widths = [0.145, 0.172, 0.19];
  const plain = efficiency(0.065, column([45, 50, 55]), 9.4, 5, column(widths));

  test("as a row, with blank rows between, with zeros for them, as numbers in fractions of an inch", () => {
    expect(efficiency(0.065, [[45, 50, 55]], 9.4, 5, [widths])).toEqual(plain);
    expect(
      efficiency(
        0.065,
        column(["", 45, null, 50, 55, ""]),
        9.4,
        5,
        column([null, 0.145, "", 0.172, 0.19, null]),
      ),
    ).toEqual(plain);
    expect(efficiency(0.065, column([0, 45, 50, 55]), 9.4, 5, column([0, ...widths]))).toEqual(plain);
    expect(
      efficiency("0.065 in", column([45, 50, 55]), 9.4, 5, column(widths.map((w) => `${String(w)}"`))),
    ).toEqual(plain);
  });

  test("a cell for all and the same cell on every row are the same", () => {
    expect(
      efficiency(
        column([0.065, 0.065, 0.065]),
        column([45, 50, 55]),
        column([9.4, 9.4, 9.4]),
        5,
        column(widths),
      ),
    ).toEqual(plain);
  });

  test.each([
    [
      "a blank beside a filled cell",
      [0.065, column([45, ""]), 9.4, 5, column([0.145, 0.17])],
      "#VALUE! amps = blank: row 2: needs a number (A)",
    ],
    [
      "text",
      [0.065, column([45, "abc"]), 9.4, 5, column([0.145, 0.17])],
      '#VALUE! amps = "abc": row 2: must be a number (A)',
    ],
    [
      "a negative width",
      [0.065, 45, 9.4, 5, column([0.145, -0.17])],
      "#VALUE! width = -0.17 in: row 2: must be above 0",
    ],
    [
      "a zero beside a filled cell",
      [0.065, column([45, 0]), 9.4, 5, column([0.145, 0.17])],
      "#VALUE! amps = 0 A: row 2: must be above 0",
    ],
    [
      "a size in the other units",
      [column([0.065, 1.65]), 45, 9.4, 5, column([0.145, 0.17])],
      '#VALUE! wall = 1.65 in: row 2: no tube of this trade has such a wall (maximum 1 in); for millimeters give "SI"',
    ],
    [
      "unequal lengths",
      [0.065, column([45, 50]), 9.4, 5, column([0.145, 0.17, 0.19])],
      "#VALUE! width = 3 cells: must be one cell or as many as amps, 2",
    ],
    [
      "a block of cells",
      [
        0.065,
        [
          [45, 50],
          [45, 50],
        ],
        9.4,
        5,
        0.145,
      ],
      "#VALUE! amps = a range: takes one column or one row, not 2 × 2 cells",
    ],
    [
      "nothing but blanks",
      [0.065, column(["", ""]), 9.4, 5, column(["", ""])],
      "#VALUE! wall = blank: needs a number or a range of them",
    ],
    ["one blank cell", [0.065, null, 9.4, 5, 0.145], "#VALUE! amps = blank: needs a number (A)"],
    [
      "confidence in percent",
      [0.065, 45, 9.4, 5, 0.145, "mean", null, null, 95],
      "#VALUE! confidence = 95: must be between 0.5 and 0.9999",
    ],
    [
      "another side",
      [0.065, 45, 9.4, 5, 0.145, "back"],
      '#VALUE! side = "back": must be one of mean, face, root',
    ],
  ])("%s", (_, cells, says) => {
    expect(refusal("COUPON_EFFICIENCY", ...cells)).toBe(says);
  });

  test("a bead beyond the arc's power", () => {
    const part = number("AMPS_MELT", 0.065, 5, 0.2, null, 9.4, 1) / 30;
    expect(refusal("COUPON_EFFICIENCY", 0.065, column([45, 30]), 9.4, 5, column([0.145, 0.2]))).toBe(
      `#N/A width = 0.2 in: row 2: takes ${String(Number(part.toPrecision(6)))} of the arc's power; must be between 0.001 and 1: check width, amps, volts, wall and travel`,
    );
  });

  test("too many", () => {
    const many = column(Array.from({ length: 1001 }, () => 45));
    expect(refusal("COUPON_EFFICIENCY", 0.065, many, 9.4, 5, 0.145)).toBe(
      "#VALUE! amps = a range: must have at most 1000 filled rows",
    );
  });

  test("a whole column that is blank below costs no more than its filled cells", () => {
    const tail: unknown[][] = Array.from({ length: 200_000 }, () => [""]);
    expect(
      efficiency(0.065, [...column([45, 50, 55]), ...tail], 9.4, 5, [...column(widths), ...tail]),
    ).toEqual(plain);
  });
});

test.each([
  [
    "a measured value of 0",
    [
      [[4], [5]],
      [[3], [0]],
    ],
    "#VALUE! measured = 0: row 2: must be between 1e-9 and 1000000000",
  ],
  ["a negative prediction", [-4, 3], "#VALUE! predicted = -4: must be between 1e-9 and 1000000000"],
  ["a value too large", [1, 1e10], "#VALUE! measured = 10000000000: must be between 1e-9 and 1000000000"],
  [
    "more rows than a list of coupons has",
    [column(Array.from({ length: 100_001 }, () => 1)), 1],
    "#VALUE! predicted = a range: must have at most 100000 filled rows",
  ],
  ["another spread", [4, 3, "sloping"], '#VALUE! spread = "sloping": must be one of percent, same, growing'],
])("SHOP_FACTOR refuses %s", (_, cells, says) => {
  expect(refusal("SHOP_FACTOR", ...cells)).toBe(says);
});

test("SHOP_FACTOR answers as many rows as it may have", () => {
  const most = column(Array.from({ length: 100_000 }, () => 4));
  const [factor, , , , , count] = table("SHOP_FACTOR", most, 3)[0] ?? [];
  expect([factor, count]).toEqual([expect.closeTo(0.75, 12), 100_000]);
});
