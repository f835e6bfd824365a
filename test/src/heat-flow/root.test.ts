import fc from "fast-check";

import { rootBetween } from "../../../src/heat-flow/root";
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
