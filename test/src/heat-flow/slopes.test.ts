/** Slopes that the searches follow are those of the values: central differences, third order in their step. */

import type { ArcPlate } from "../../../src/heat-flow/arc-plate";
import { effectiveMetal } from "../../../src/heat-flow/effective";
import { movingArc, riseAt, weightsAt } from "../../../src/heat-flow/moving-arc";
import { roundRing } from "../../../src/heat-flow/ring-images";
import { ringHistory, ringRise } from "../../../src/heat-flow/ring-rise";
import { numbersOf } from "./tube-runs";

const PLATE: ArcPlate = {
  metal: effectiveMetal(numbersOf("316L")),
  wall: 0.0016,
  spread: 0.001,
  speed: 0.003,
};

function slope(value: (x: number) => number, at: number, step: number): number {
  return (value(at + step) - value(at - step)) / (2 * step);
}

function expectSame(told: number, found: number, within: number): void {
  expect(Math.abs(told / found - 1)).toBeLessThan(within);
}

describe.each([0, 0.5, 1])("a moving arc, depth %p of the wall", (part) => {
  const arc = movingArc(PLATE);
  const weights = weightsAt(arc, part);
  const at = (ahead: number, square: number): ReturnType<typeof riseAt> =>
    riseAt(arc, weights, ahead, square);

  test.each([
    [0.0005, 1e-7],
    [-0.001, 2e-6],
    [-0.004, 9e-6],
  ])("ξ %p m, u %p m²", (ahead, square) => {
    const told = at(ahead, square);
    const [x, u] = [1e-6, 1e-4 * square];
    expectSame(
      told.byAhead,
      slope((one) => at(one, square).value, ahead, x),
      1e-5,
    );
    expectSame(
      told.byAheadTwice,
      slope((one) => at(one, square).byAhead, ahead, x),
      1e-5,
    );
    expectSame(
      told.bySquare,
      slope((one) => at(ahead, one).value, square, u),
      1e-5,
    );
    expectSame(
      told.bySquareAndAhead,
      slope((one) => at(ahead, one).byAhead, square, u),
      1e-5,
    );
  });
});

describe("a ring, in the second of two powers", () => {
  const pass = {
    plate: PLATE,
    circumference: 0.03,
    dwell: 2,
    steps: [
      { from: 0, power: 300 },
      { from: 6, power: 250 },
    ],
    end: 14,
  };
  // The nodes stay where they are, as in the search for a crest.
  const history = ringHistory(pass, 14);
  const at = (along: number, square: number, time: number): ReturnType<typeof ringRise> =>
    ringRise(history, history.mean, along, square, time);

  test.each([
    [0.005, 1e-6, 4.7],
    [0.012, 4e-6, 8.3],
    [0.001, 1e-5, 12.9],
  ])("x %p m, u %p m², %p s", (along, square, time) => {
    const told = at(along, square, time);
    expectSame(
      told.byTime,
      slope((one) => at(along, square, one).value, time, 1e-6),
      1e-4,
    );
    expectSame(
      told.byTimeTwice,
      slope((one) => at(along, square, one).byTime, time, 1e-6),
      1e-4,
    );
    expectSame(
      told.byAlong,
      slope((one) => at(one, square, time).value, along, 1e-7),
      1e-5,
    );
    expectSame(
      told.bySquare,
      slope((one) => at(along, one, time).value, square, 1e-4 * square),
      1e-5,
    );
  });
});

describe("the bell round a ring: images and waves are the same sum (Poisson's formula)", () => {
  const into = new Float64Array(3);
  const bell = (x: number, square: number, variance: number): [number, number, number] => {
    roundRing(1, x, square, variance, into);
    return [into[0] ?? NaN, into[1] ?? NaN, into[2] ?? NaN];
  };
  // Forty images either way are the whole sum to the last digit while s is under two turns.
  const images = (x: number, square: number, variance: number): number =>
    Array.from({ length: 81 }, (_, n) => Math.exp(-((x + n - 40) ** 2 + square) / (2 * variance))).reduce(
      (sum, one) => sum + one,
    );

  test.each([0.0004, 0.02, 0.0899, 0.0901, 0.0905, 0.2, 1])("s² = %p of the turn's square", (variance) => {
    for (const x of [-0.9, -0.26, 0.013, 0.4]) {
      for (const square of [0, 0.01]) {
        const [sum, along, curve] = bell(x, square, variance);
        // What is left out is under e^−25 of a bell's height.
        const height = Math.exp(-square / (2 * variance));
        expect(Math.abs(sum - images(x, square, variance)) / height).toBeLessThan(1e-10);
        const found = slope((one) => images(one, square, variance), x, 1e-5);
        expect(Math.abs(along - found) / (height / Math.sqrt(variance))).toBeLessThan(1e-6);
        const bent = slope((one) => bell(one, square, variance)[1], x, 1e-5);
        expect(Math.abs(curve - bent) / (height / variance)).toBeLessThan(1e-6);
      }
    }
  });
});
