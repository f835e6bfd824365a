/** What the coupon covers on the procedure sheet: wall, diameter and heat input of this joint against each rule's limits. */

import { procedure } from "../../taskpane/sheets/procedure";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

let sheet: OpenSheet;
beforeAll(async () => {
  sheet = await openSheet(procedure, "US");
});

const check = (): unknown => sheet.value("check_qualified");
const range = (what: string): unknown[] => [
  sheet.value(`covered_${what}_least`),
  sheet.value(`covered_${what}_most`),
];

test("as inserted: QW-451.1, 1/16 in to 2t for a coupon of 0.065 in; QW-452.3, 0.5 in and more for one of 0.5 in", () => {
  expect(range("wall")).toEqual([1 / 16, 0.13]);
  expect(range("od")).toEqual([0.5, ""]);
  expect(range("heat")).toEqual(["", 8]);
  expect(sheet.value("covered")).toBe("covered: wall and diameter");
  expect(check()).toBe("✓ holds");
});

test.each([
  // 2t of a coupon of 0.0325 in is 0.065 in: at the limit, and just above it.
  ["0.0325", "ASME IX", /^✓/],
  [
    "0.0324",
    "ASME IX",
    /^▲ Wall of this tube is not covered by the coupon: 0.065 is not from 0.0324 to 0.0648$/,
  ],
  // From 1/16 in for a coupon of 1/16 in to 3/8 in; 3/16 in above that.
  ["0.375", "ASME IX", /^✓/],
  ["0.376", "ASME IX", /not from 0.1875 to 0.752$/],
  // 1.3t by ISO 15614-1 (memory).
  ["0.05", "ISO 15614-1", /^✓/],
  ["0.0499", "ISO 15614-1", /^▲ Wall/],
])("coupon wall %s in by %s", (wall, rule, told) => {
  sheet.having({ coupon_wall: wall, coupon_od: "2", wall_rule: rule }, () => {
    expect(check()).toMatch(told);
  });
});

test("a tube under the covered diameter is not covered, and the row says so", () => {
  sheet.having({ od: "0.4375" }, () => {
    expect(sheet.value("covered")).toBe("not covered: see the checks");
    expect(check()).toBe("▲ Diameter of this tube is not covered by the coupon: 0.4375 is not from 0.5 up");
  });
});

test("the heat input: no more than the coupon's, and by ISO 15614-1 no less than three quarters of it", () => {
  const heat = Number(sheet.value("heat"));
  const coupon = (of: number): string => String(of);
  sheet.having({ coupon_heat: coupon(heat) }, () => {
    expect(check()).toBe("✓ holds");
  });
  sheet.having({ coupon_heat: coupon(heat * 0.999) }, () => {
    expect(check()).toMatch(/^▲ Heat input is not covered by the coupon: 5\.\d+ is not from 0 to 5\.\d+$/);
  });
  const least = Math.min(...[0, 1, 2, 3, 4].map((row) => Number(sheet.beside("sectors", 7, row))));
  sheet.having({ heat_rule: "ISO 15614-1", coupon_heat: coupon((least / 0.75) * 0.999) }, () => {
    expect(check()).toBe("✓ holds");
  });
  sheet.having({ heat_rule: "ISO 15614-1", coupon_heat: coupon((least / 0.75) * 1.001) }, () => {
    expect(check()).toMatch(/^▲ The smallest heat input is not covered by the coupon/);
  });
});

test("a program with more heat than the coupon's", () => {
  const heat = Number(sheet.value("heat"));
  sheet.having({ set_second: "75", coupon_heat: String(heat * 1.01) }, () => {
    expect(check()).toMatch(/^▲ The heat input of your own program is not covered/);
  });
});

test("a coupon that is not there, or is no tube", () => {
  for (const name of ["coupon_wall", "coupon_od", "coupon_heat"]) {
    sheet.having({ [name]: "" }, () => {
      expect(check()).toMatch(/^▲/);
      expect(sheet.holds()).toBe(false);
    });
  }
  sheet.having({ coupon_od: "0.13" }, () => {
    expect(check()).toBe("▲ the wall of the coupon leaves no bore in its diameter");
  });
});

test.each([
  ["od", "NPS 1"],
  ["wall", "see WPS"],
  ["od", ""],
])("%s typed as %j leaves nothing to compare, and that is what is said", (name, typed) => {
  sheet.having({ [name]: typed }, () => {
    expect(check()).toBe("▲ no tube or no heat input to judge");
  });
});

test("in millimeters the rule has its own limits: 1.5 mm for the wall", async () => {
  const si = await openSheet(procedure, "SI");
  expect(si.value("covered_wall_least")).toBeCloseTo(1.5, 12);
  expect(si.value("covered_wall_most")).toBeCloseTo(3.3, 12);
  expect(si.value("covered_od_least")).toBeCloseTo(12.7, 12);
  expect(si.holds()).toBe(true);
});
