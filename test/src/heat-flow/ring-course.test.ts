/** The course of the power between its points: both rules are exact for a cubic. */

import type { Course } from "../../../src/heat-flow/ring-course";
import { meanPower, powerAt } from "../../../src/heat-flow/ring-course";

const STEP = 0.25;
const cubic = (t: number): number => 1 - 0.4 * t + 0.3 * t * t - 0.05 * t ** 3;
const integral = (t: number): number => t - 0.2 * t * t + 0.1 * t ** 3 - 0.0125 * t ** 4;
const COURSE: Course = { step: STEP, powers: Float64Array.from({ length: 24 }, (_, i) => cubic(i * STEP)) };

test.each([0, 0.1, 0.25, 0.33, 2.49, 5])("a cubic at %p s", (time) => {
  expect(Math.abs(powerAt(COURSE, time) - cubic(time))).toBeLessThan(1e-12);
});

test.each([
  [0, 0.1],
  [0, 5],
  [0.25, 0.5],
  [0.3, 1.25],
  [1.6, 4.9],
])("its mean from %p to %p s", (from, to) => {
  const mean = (integral(to) - integral(from)) / (to - from);
  expect(Math.abs(meanPower(COURSE, from, to) - mean)).toBeLessThan(1e-12);
});

test("a jump at a point of the grid is no cubic: the mean is of the stretches between points", () => {
  const { powers } = COURSE;
  const kinked: Course = {
    step: STEP,
    powers: powers.map((power, i) => (i > 8 ? power + 0.2 * (i - 8) : power)),
  };
  // Points 8 and 9 span one stretch: however the course runs in it, whole stretches add up to those around it.
  const [all, first, rest] = [
    [0, 4],
    [0, 2.25],
    [2.25, 4],
  ].map(([from = 0, to = 0]) => meanPower(kinked, from, to) * (to - from));
  expect(Math.abs((all ?? NaN) - (first ?? NaN) - (rest ?? NaN))).toBeLessThan(1e-12);
});
