/** Against closed forms; special-values.test.ts compares more of it with a reference library. */

import fc from "fast-check";

import { betaQuantile, betaRegularized } from "../../../src/numerics/beta";
import { tQuantile } from "../../../src/numerics/student-t";
import { decades, RUNS } from "../../arbitrary-cells";
import { expectNear, expectPrinted } from "../../bead";

const share = fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true });
const shape = decades(0.1, 1e5);

test("it runs from 0 to 1", () => {
  expect(betaRegularized(2, 3, 0)).toBe(0);
  expect(betaRegularized(2, 3, 1)).toBe(1);
  expect(betaQuantile(0, 2, 3)).toBe(0);
  expect(betaQuantile(1, 2, 3)).toBe(1);
});

test(`one of the shapes is 1: x^a, and 1 − (1 − x)^b (${RUNS})`, () => {
  fc.assert(
    fc.property(share, decades(0.1, 1e3), (x, a) => {
      expectNear(betaRegularized(a, 1, x), x ** a, 1e-12);
      expectNear(betaRegularized(1, a, x), -Math.expm1(a * Math.log1p(-x)), 1e-12);
      expectNear(betaQuantile(x, a, 1), x ** (1 / a), 1e-12);
    }),
  );
});

test("whole numbers: the sum over a binomial distribution", () => {
  // I_0.3(2, 3): at least 2 of 4 at 0.3 each: 6·0.09·0.49 + 4·0.027·0.7 + 0.0081.
  expectNear(betaRegularized(2, 3, 0.3), 0.2646 + 0.0756 + 0.0081);
});

test(`what is above and what is below is everything, and the quantile undoes it (${RUNS})`, () => {
  fc.assert(
    fc.property(share, shape, shape, (chance, a, b) => {
      const x = betaQuantile(chance, a, b);
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(1);
      // Where x or 1 − x has lost its digits, neither can the chance have them.
      fc.pre(Math.min(x, 1 - x) > 1e-4);
      expectNear(betaRegularized(a, b, x), chance, 1e-8);
      expectNear(betaRegularized(b, a, 1 - x), 1 - chance, 1e-8);
    }),
  );
});

test("a quantile beyond the numbers is 0 or 1", () => {
  // 1e-10^(1/0.01) = 1e-1000.
  expect(betaQuantile(1e-10, 0.01, 1)).toBe(0);
  expect(betaQuantile(1 - 1e-10, 1, 0.01)).toBe(1);
});

describe("Student's t", () => {
  test("one degree of freedom is a tangent, two and four are closed as well", () => {
    for (const chance of [0.001, 0.025, 0.3, 0.6, 0.9, 0.975, 0.9995]) {
      const d = chance - 0.5;
      expectNear(tQuantile(chance, 1), Math.tan(Math.PI * d), 1e-13);
      expectNear(tQuantile(chance, 2), (2 * d * Math.SQRT2) / Math.sqrt(1 - 4 * d * d), 1e-13);
      const alpha = Math.sqrt(4 * chance * (1 - chance));
      const q = Math.cos(Math.acos(alpha) / 3) / alpha;
      expectNear(tQuantile(chance, 4), Math.sign(d) * 2 * Math.sqrt(q - 1), 1e-13);
    }
  });

  test("its middle is 0, and beside it the sign is that of the side", () => {
    expect(tQuantile(0.5, 7)).toBe(0);
    expectNear(tQuantile(0.502, 1), Math.tan(0.002 * Math.PI), 1e-12);
    expectNear(tQuantile(0.498, 1), -Math.tan(0.002 * Math.PI), 1e-12);
  });

  // From memory: the table that every handbook of statistics prints, 95 % on both sides.
  test.each([
    [1, "12.706"],
    [2, "4.303"],
    [3, "3.182"],
    [4, "2.776"],
    [5, "2.571"],
    [6, "2.447"],
    [8, "2.306"],
    [10, "2.228"],
    [15, "2.131"],
    [20, "2.086"],
    [30, "2.042"],
    [60, "2.000"],
    [120, "1.980"],
    [1e9, "1.960"],
  ])("%d degrees of freedom", (freedom, printed) => {
    expectPrinted(tQuantile(0.975, freedom), printed);
    expectPrinted(-tQuantile(0.025, freedom), printed);
  });
});
