import fc from "fast-check";

import {
  AIR_PPM,
  COMMON_TARGET_PPM,
  leakOxygen,
  oxygenAfter,
  purgeChanges,
  purgeFlow,
  purgeOxygen,
  purgeTime,
  purgeVolume,
} from "../../../src/purge/purge";
import { decades, RUNS } from "../../arbitrary-cells";
import { expectNear, number } from "../../bead";
import { BY_HAND, COMMON_PRACTICE, evidence } from "../../evidence";

const cells = fc.oneof(fc.constant(1), fc.integer({ min: 1, max: 20 }), fc.integer({ min: 1, max: 1000 }));
/** A target and a supply some way under it. */
const target = fc
  .tuple(decades(0.01, 200_000), fc.double({ min: 0, max: 0.9, noNaN: true }))
  .map(([ppm, share]) => ({ ppm, supply: ppm * share }));
const bore = decades(1e-3, 1);
const length = decades(1e-2, 100);
const flow = decades(1e-6, 1e-2);

test("air is 209 500 ppm oxygen (20.95 % of dry air)", () => {
  expect(AIR_PPM).toBe(209_500);
});

describe(
  evidence("PURGE_CHANGES PURGE_TIME PURGE_FLOW", COMMON_PRACTICE, "50 ppm of oxygen as the target"),
  () => {
    test("unless another is given", () => {
      expect(COMMON_TARGET_PPM).toBe(50);
    });
  },
);

describe(`laws (${RUNS})`, () => {
  test("the oxygen after the changes that a target needs is the target", () => {
    fc.assert(
      fc.property(target, cells, ({ ppm, supply }, n) => {
        const back = oxygenAfter(purgeChanges(ppm, supply, n), supply, n);
        // Up to a thousand cells: the last bit of n moves the oxygen by n·cells of its own last bits.
        expectNear(back, ppm, n <= 20 ? 1e-12 : 1e-10);
      }),
    );
  });

  test("the changes that the oxygen after some changes needs are those changes", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 8, noNaN: true }), cells, (changes, n) => {
        const ppm = oxygenAfter(changes, 0, n);
        // Beyond that many cells nothing is left to tell one target from another.
        fc.pre(ppm > 1e-250);
        expectNear(purgeChanges(ppm, 0, n), changes, 1e-11);
      }),
    );
  });

  test("for one cell the changes are the logarithm of the fall", () => {
    fc.assert(
      fc.property(target, ({ ppm, supply }) => {
        expectNear(purgeChanges(ppm, supply, 1), Math.log((AIR_PPM - supply) / (ppm - supply)), 1e-11);
      }),
    );
  });

  test("cells in series never need more changes, below one part in ten of air", () => {
    fc.assert(
      fc.property(decades(0.01, 20_000), fc.integer({ min: 1, max: 999 }), (ppm, n) => {
        expect(purgeChanges(ppm, 0, n + 1)).toBeLessThan(purgeChanges(ppm, 0, n));
        expect(purgeChanges(ppm, 0, n)).toBeGreaterThan(1);
      }),
    );
  });

  test("a lower target or more oxygen in the supply needs more", () => {
    fc.assert(
      fc.property(target, cells, ({ ppm, supply }, n) => {
        const changes = purgeChanges(ppm, supply, n);
        expect(purgeChanges((ppm + supply) / 2, supply, n)).toBeGreaterThan(changes);
        expect(purgeChanges(ppm, (ppm + supply) / 2, n)).toBeGreaterThan(changes);
      }),
    );
  });

  test("time × flow is changes × volume, and the flow for that time is the flow", () => {
    fc.assert(
      fc.property(bore, length, flow, target, cells, (d, l, q, { ppm, supply }, n) => {
        const seconds = purgeTime(d, l, q, ppm, supply, n);
        expectNear(seconds * q, purgeChanges(ppm, supply, n) * (Math.PI / 4) * d * d * l);
        expectNear(purgeFlow(d, l, seconds, ppm, supply, n), q);
        expectNear(purgeOxygen(d, l, q, seconds, supply, n), ppm, 1e-10);
      }),
    );
  });

  test("twice the flow, half the time; twice the length, twice the time", () => {
    fc.assert(
      fc.property(bore, length, flow, (d, l, q) => {
        const seconds = purgeTime(d, l, q, 50, 0, 1);
        expectNear(purgeTime(d, l, 2 * q, 50, 0, 1), seconds / 2);
        expectNear(purgeTime(d, 2 * l, q, 50, 0, 1), 2 * seconds);
        expectNear(purgeTime(2 * d, l, q, 50, 0, 1), 4 * seconds);
      }),
    );
  });

  test("a leak leaves what makes oxygen in equal oxygen out", () => {
    fc.assert(
      fc.property(flow, flow, (q, leak) => {
        expectNear(leakOxygen(q, leak) * (q + leak), AIR_PPM * leak);
      }),
    );
  });
});

test("no leak leaves nothing, and no time leaves air", () => {
  expect(leakOxygen(1, 0)).toBe(0);
  expect(purgeOxygen(0.05, 1, 1e-4, 0, 0, 1)).toBe(AIR_PPM);
  expect(purgeOxygen(0.05, 1, 1e-4, 0, 0, 7)).toBe(AIR_PPM);
});

test("a purge without end leaves the oxygen of the supply", () => {
  expect(oxygenAfter(1e6, 5, 1)).toBe(5);
  expect(oxygenAfter(1e6, 5, 1000)).toBe(5);
});

test("just under air needs next to nothing", () => {
  expect(purgeChanges(AIR_PPM * (1 - 1e-9), 0, 1)).toBeCloseTo(1e-9, 15);
});

describe(evidence("PURGE_CHANGES", BY_HAND, "ln(209 495/1e-6), a millionth of a ppm over the supply"), () => {
  test("just over the supply is still reached", () => {
    // ln(209 495/1e-6), by hand 12.25246 + 13.81551 = 26.06797.
    expect(purgeChanges(5.000001, 5, 1)).toBeCloseTo(26.06797, 4);
  });
});

describe(evidence("PURGE_VOLUME", BY_HAND, "a bore of 2 mm by 1/π mm, π/4·4·1/π"), () => {
  test("one cubic millimetre", () => {
    expectNear(purgeVolume(0.002, 0.001 / Math.PI), 1e-9);
  });
});

test("the formulas default to 50 ppm, a pure supply and one cell", () => {
  expect(number("PURGE_CHANGES")).toBe(number("PURGE_CHANGES", 50, 0, 1));
  expect(number("PURGE_TIME", 2, 12, 20)).toBe(number("PURGE_TIME", 2, 12, 20, 50, 0, 1, "US"));
  expect(number("PURGE_FLOW", 2, 12, 20)).toBe(number("PURGE_FLOW", 2, 12, 20, 50, 0, 1, "US"));
  expect(number("PURGE_OXYGEN", 2, 12, 20, 9)).toBe(number("PURGE_OXYGEN", 2, 12, 20, 9, 0, 1, "US"));
});
