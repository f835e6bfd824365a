/** Runs of an independent nonlinear 3-D solution taken as coupons: their power went into the tube, so it is all of it. */

import { powerOfMean, readyPlate } from "../../../src/heat-flow/melt";
import { POWER_OF_SIDE } from "../../../src/shop/coupon";
import type { Place } from "../heat-flow/tube-runs";
import { passOf, percentile95, placesOf, riseOf, STAINLESS, WIDTH_RUNS } from "../heat-flow/tube-runs";

/** Late in the first quarter of tubes from 20 mm, where the bead is as wide as it gets and no heat has come around. */
const PLACES = WIDTH_RUNS.filter(({ metal, od }) => od >= 20 && STAINLESS.some((name) => name === metal))
  .flatMap((run) => placesOf(run, 1))
  .filter(({ deg }) => deg >= 50 && deg < 90);

function efficiencyAt({ run, face, root }: Place, side: "mean" | "face"): number {
  const width = (side === "face" ? face : (face + root) / 2) / 1000;
  const power = POWER_OF_SIDE[side](readyPlate(passOf(run).plate), riseOf(run), width);
  return power / (run.power[0] ?? NaN);
}

describe("runs of the independent solution as coupons: efficiency 1", () => {
  test("by the mean width, 95 of 100 within 4 %", () => {
    expect(PLACES.length).toBeGreaterThan(200);
    expect(percentile95(PLACES.map((place) => efficiencyAt(place, "mean") - 1))).toBeLessThan(0.04);
  });

  test("by the face alone, 95 of 100 within 5 %", () => {
    expect(percentile95(PLACES.map((place) => efficiencyAt(place, "face") - 1))).toBeLessThan(0.05);
  });

  test("of all of them together, within 2 %", () => {
    const all = PLACES.map((place) => efficiencyAt(place, "mean"));
    expect(Math.abs(all.reduce((sum, each) => sum + each, 0) / all.length - 1)).toBeLessThan(0.02);
  });
});

test("the mean is told by the same power as AMPS_MELT", () => {
  expect(POWER_OF_SIDE.mean).toBe(powerOfMean);
});
