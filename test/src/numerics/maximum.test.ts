import fc from "fast-check";

import { maximumBetween } from "../../../src/numerics/maximum";
import { RUNS } from "../../arbitrary-cells";

test.each([
  ["sin x", Math.sin, 0, 3, Math.PI / 2, 1],
  ["x·e^−x", (x: number) => x * Math.exp(-x), 0, 20, 1, 1 / Math.E],
  ["a kink, which no parabola fits", (x: number) => -Math.abs(x - 0.3), -1, 5, 0.3, 0],
  ["the maximum at the lower end", (x: number) => -x, 2, 3, 2, -2],
  ["the maximum at the upper end", (x: number) => x, 2, 3, 3, 3],
])("%s", (_, f, from, to, at, value) => {
  const top = maximumBetween(f, from, to, 1e-7);
  expect(Math.abs(top.at - at)).toBeLessThan(3e-7);
  expect(Math.abs(top.value - value)).toBeLessThan(3e-7);
  expect(top.value).toBe(f(top.at));
});

test(`hills of any place, width and steepness, with the value good to the square (${RUNS})`, () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1, max: 1, noNaN: true }),
      fc.double({ min: 0.1, max: 10, noNaN: true }),
      fc.double({ min: 1.5, max: 4, noNaN: true }),
      (place, width, power) => {
        const hill = (x: number): number => -(Math.abs((x - place) / width) ** power);
        const top = maximumBetween(hill, -3, 2, 1e-4);
        expect(Math.abs(top.at - place)).toBeLessThan(3e-4);
      },
    ),
  );
});

test("a smooth hill takes few looks: golden section alone would take 27", () => {
  let looks = 0;
  const f = (x: number): number => {
    looks += 1;
    return Math.exp(-x * x) + 0.1 * x;
  };
  maximumBetween(f, -1, 2, 1e-5);
  expect(looks).toBeLessThan(20);
});

test("a plain is as high everywhere: it ends, and says so", () => {
  const top = maximumBetween(() => 4, 0, 1, 1e-6);
  expect(top.value).toBe(4);
});
