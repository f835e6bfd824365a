/** NIST's certified data of a line through the origin, all eleven and all three rows. */

import { expectNear, expectPrinted, table } from "../bead";
import { BY_HAND, PUBLISHED, evidence } from "../evidence";

const NO_INT_1 = {
  x: [60, 61, 62, 63, 64, 65, 66, 67, 68, 69, 70],
  y: [130, 131, 132, 133, 134, 135, 136, 137, 138, 139, 140],
  slope: 2.07438016528926,
  sdSlope: 0.0165289256198347,
  residualSd: 3.56753034006338,
  // Student's t of every handbook, 10 degrees of freedom.
  t: 2.228138851986274,
};
const NO_INT_2 = {
  x: [4, 5, 6],
  y: [3, 4, 4],
  slope: 0.727272727272727,
  sdSlope: 0.0420827318078432,
  residualSd: 0.369274472937998,
  // Closed form for two degrees of freedom: 0.95·√(2/(1 − 0.95²)).
  t: 0.95 * Math.sqrt(2 / (1 - 0.95 * 0.95)),
};

const column = (values: readonly number[]): number[][] => values.map((value) => [value]);

function fit(x: readonly number[], y: readonly number[], ...more: unknown[]): (number | string | boolean)[] {
  return table("SHOP_FACTOR", column(x), column(y), ...more)[0] ?? [];
}

describe(
  evidence("SHOP_FACTOR", PUBLISHED, "nist-strd", "NoInt1 and NoInt2, slope and its deviation"),
  () => {
    test.each([
      ["NoInt1", NO_INT_1],
      ["NoInt2", NO_INT_2],
    ])("%s", (_, { x, y, slope, sdSlope, residualSd, t }) => {
      const [factor, low, high, nextLow, nextHigh, count] = fit(x, y, "same").map(Number);
      expectNear(factor ?? NaN, slope);
      expectNear(((high ?? NaN) - (low ?? NaN)) / 2, t * sdSlope);
      expectNear(((high ?? NaN) + (low ?? NaN)) / 2, slope);
      // The next one at the mean x: t·√(residual variance + x̄²·variance of the slope), over x̄.
      const middle = x.reduce((sum, value) => sum + value, 0) / x.length;
      expectNear(
        ((nextHigh ?? NaN) - (nextLow ?? NaN)) / 2,
        t * Math.sqrt((residualSd / middle) ** 2 + sdSlope ** 2),
      );
      expect(count).toBe(x.length);
    });
  },
);

describe(evidence("SHOP_FACTOR", BY_HAND, "sums and ratios of NoInt2 written out"), () => {
  const t = NO_INT_2.t;

  test("growing: the ratio of the sums, 11/15", () => {
    const [factor, low, , nextLow] = fit(NO_INT_2.x, NO_INT_2.y, "growing").map(Number);
    expectNear(factor ?? NaN, 11 / 15);
    // Misses 3 − 44/15, 4 − 55/15, 4 − 66/15 are 1/15, 5/15 and −6/15; over x: (1/4 + 25/5 + 36/6)/225, two to spare.
    const variance = (1 / 4 + 5 + 6) / 225 / 2;
    expectNear(11 / 15 - (low ?? NaN), t * Math.sqrt(variance / 15));
    expectNear(11 / 15 - (nextLow ?? NaN), t * Math.sqrt(variance * (1 / 5 + 1 / 15)));
  });

  test("percent: the mean of 3/4, 4/5 and 2/3", () => {
    const [factor, low, , nextLow] = fit(NO_INT_2.x, NO_INT_2.y).map(Number);
    expectNear(factor ?? NaN, 133 / 180);
    // Off the mean by 2/180, 11/180 and −13/180.
    const deviation = Math.sqrt((4 + 121 + 169) / 2) / 180;
    expectNear(133 / 180 - (low ?? NaN), (t * deviation) / Math.sqrt(3));
    expectNear(133 / 180 - (nextLow ?? NaN), t * deviation * Math.sqrt(4 / 3));
    expectPrinted(deviation, "0.06735753");
  });
});
