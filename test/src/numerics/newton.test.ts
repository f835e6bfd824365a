import fc from "fast-check";

import type { Point } from "../../../src/numerics/newton";
import { fallingRoot } from "../../../src/numerics/newton";
import { RUNS } from "../../arbitrary-cells";

test.each([
  [
    "cos x = x",
    (x: number) => ({ value: Math.cos(x) - x, slope: -Math.sin(x) - 1 }),
    0,
    1,
    0.739_085_133_215_160_6,
  ],
  ["x³ = 2", (x: number) => ({ value: 2 - x ** 3, slope: -3 * x * x }), 0, 2, Math.cbrt(2)],
  [
    "a step whose ends lead nowhere",
    (x: number) => ({ value: Math.atan(1e3 * (0.3 - x)), slope: -1e3 / (1 + (1e3 * (0.3 - x)) ** 2) }),
    -50,
    1,
    0.3,
  ],
])("%s", (_, f, from, to, root) => {
  for (const part of [0, 0.1, 0.5, 0.9, 1]) {
    const found = fallingRoot(f, from, to, from + part * (to - from));
    expect(Math.abs(found - root)).toBeLessThan(1e-10);
  }
});

test("an end beyond which the root lies", () => {
  const line = (root: number) => (x: number) => ({ value: root - x, slope: -1 });
  for (const guess of [2, 3, 5]) {
    expect(fallingRoot(line(1), 2, 5, guess)).toBe(2);
    expect(fallingRoot(line(2), 2, 5, guess)).toBe(2);
    expect(fallingRoot(line(5), 2, 5, guess)).toBe(5);
    expect(fallingRoot(line(6), 2, 5, guess)).toBe(5);
  }
});

test("an end is not asked for unless a step leads there", () => {
  const asked: number[] = [];
  const f = (x: number): Point => {
    asked.push(x);
    return { value: 1 - x, slope: -1 };
  };
  expect(fallingRoot(f, 0, 2, 0.9)).toBe(1);
  expect(asked).not.toContain(0);
  expect(asked).not.toContain(2);
});

test(`wherever it is first looked for (${RUNS})`, () => {
  fc.assert(
    fc.property(
      fc.double({ min: -10, max: 10, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.integer({ min: 0, max: 4 }),
      (root, part, power) => {
        const f = (x: number): Point => {
          const away = Math.abs(x - root);
          return { value: (root - x) * (1 + away ** power), slope: -1 - (power + 1) * away ** power };
        };
        const found = fallingRoot(f, root - 3, root + 5, root - 3 + 8 * part);
        expect(Math.abs(found - root)).toBeLessThan(1e-9);
      },
    ),
  );
});

test("a slope that says nothing: the bracket is halved until no more steps are taken", () => {
  const step = (x: number): { value: number; slope: number } => ({ value: x < 0.3 ? 1 : -1, slope: -1e-300 });
  expect(fallingRoot(step, 0, 1, 0.5)).toBeCloseTo(0.3, 12);
});
