import fc from "fast-check";

import { rootBetween } from "../../../src/numerics/root";
import { RUNS } from "../../arbitrary-cells";

test("a root at either end is that end", () => {
  expect(rootBetween((x) => x - 2, 2, 5)).toBe(2);
  expect(rootBetween((x) => x - 5, 2, 5)).toBe(5);
});

test.each([
  ["cos x = x", (x: number) => Math.cos(x) - x, 0, 1, 0.739_085_133_215_160_6],
  ["x³ = 2", (x: number) => x ** 3 - 2, 0, 2, Math.cbrt(2)],
  ["e^x = 1e6, from far off", (x: number) => Math.exp(x) - 1e6, -100, 100, Math.log(1e6)],
  [
    "a step that false position alone would creep up to",
    (x: number) => Math.atan(1e6 * (x - 0.3)),
    -50,
    1,
    0.3,
  ],
])("%s", (_, f, from, to, root) => {
  expect(Math.abs(rootBetween(f, from, to) - root)).toBeLessThan(1e-12);
});

test(`whichever end comes first, and whether the function rises or falls (${RUNS})`, () => {
  fc.assert(
    fc.property(
      fc.double({ min: -10, max: 10, noNaN: true }),
      fc.integer({ min: 0, max: 4 }),
      fc.constantFrom(1, -1),
      (root, power, sign) => {
        const f = (x: number): number => sign * ((x - root) * (1 + Math.abs(x - root) ** power));
        for (const [from, to] of [
          [root - 3, root + 5],
          [root + 5, root - 3],
        ] as const) {
          expect(Math.abs(rootBetween(f, from, to) - root)).toBeLessThan(1e-12 * Math.max(1, Math.abs(root)));
        }
      },
    ),
  );
});

/** How often the function is asked, the two ends included. */
function asked(f: (x: number) => number, from: number, to: number): number {
  let count = 0;
  rootBetween(
    (x) => {
      count += 1;
      return f(x);
    },
    from,
    to,
  );
  return count;
}

/** Bisection alone asks 49 to 55 times here; what is allowed is what the method needs and a step or two. */
test.each([
  ["a root at the first end", (x: number) => x - 2, 2, 5, 2],
  ["cos x = x", (x: number) => Math.cos(x) - x, 0, 1, 9],
  ["x³ = 2", (x: number) => x ** 3 - 2, 0, 2, 14],
  ["x⁹ = 0.1, flat for half the way", (x: number) => x ** 9 - 0.1, 0, 2, 26],
  ["e^x = 1e6, from far off", (x: number) => Math.exp(x) - 1e6, -100, 100, 35],
  ["1/x = 1000, steep at one end", (x: number) => 1 / x - 1000, 1e-5, 10, 9],
  ["a jump at a million", (x: number) => (x < 1_000_000.3 ? -1 : 1), 0, 2e6, 44],
  ["a jump between ends of 1e300", (x: number) => (x < 1 ? -1 : 1), -1e300, 1e300, 130],
  ["no number anywhere, two hundred steps and no more", () => NaN, 0, 1, 202],
])("%s is found with few questions", (_, f, from, to, most) => {
  expect(asked(f, from, to)).toBeLessThanOrEqual(most);
});
