/** Rows of thick coupons, which no tube of the trade has. */

import { coveredWall } from "../../../src/qualification/wall";
import { LENGTH, si, toBase } from "../../../src/quantity";
import { expectNear } from "../../bead";

/** QW-451.1 of 2017, in inches and in millimeters. */
test.each([
  ["US", 1.49, 3 / 16, 2.98],
  ["US", 1.5, 3 / 16, 8],
  ["US", 6, 3 / 16, 8],
  ["US", 6.05, 3 / 16, 1.33 * 6.05],
  ["US", 7, 3 / 16, 1.33 * 7],
  ["SI", 37.9, 5, 75.8],
  ["SI", 38, 5, 200],
  ["SI", 150, 5, 200],
  ["SI", 151, 5, 1.33 * 151],
] as const)("%s: %d covers %d to %d", (units, coupon, least, most) => {
  const found = coveredWall(toBase(coupon, LENGTH, units), "ASME IX", units);
  expectNear(Number(found.least), toBase(least, LENGTH, units));
  expectNear(Number(found.most), toBase(most, LENGTH, units));
});

test("no wall is refused", () => {
  expect(() => coveredWall(si(0, LENGTH), "ASME IX", "US")).toThrow("couponWall refused");
});
