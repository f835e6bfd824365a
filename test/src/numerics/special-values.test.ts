/** The special functions against mpmath to 25 digits; docs/special-functions.md shows how near each comes. */

import { evidence, REFERENCE_LIBRARY } from "../../evidence";
import type { SpecialName } from "../../../tools/docs/ulps";
import { missesOf } from "../../../tools/docs/ulps";

function expectNearAll(name: SpecialName, relative: number): void {
  const misses = missesOf(name);
  expect(misses.length).toBeGreaterThan(40);
  for (const { ulps } of misses) expect(ulps * 2 ** -52).toBeLessThan(relative);
}

describe(
  evidence(
    "PURGE_CHANGES PURGE_TIME PURGE_FLOW PURGE_OXYGEN",
    REFERENCE_LIBRARY,
    "mpmath-1.3.0",
    "incomplete gamma function",
  ),
  () => {
    test("the chance of fewer events than n", () => {
      expectNearAll("poissonTail", 1e-13);
    });
  },
);

// Ingredients of the heat flow: they say nothing of a formula's result. Terms under 1e-10 are left out on purpose.
test("heat through the wall", () => {
  expectNearAll("throughWall", 1e-10);
});

test("a bell around a ring", () => {
  expectNearAll("roundRing", 1e-10);
});

test("the incomplete beta function and its quantile", () => {
  // The smallest is 1e-236: its logarithm is as near as a double of that size can be.
  expectNearAll("betaRegularized", 3e-13);
  expectNearAll("betaQuantile", 1e-13);
});

test("Student's t", () => {
  expectNearAll("tQuantile", 2e-14);
});
