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
import { ANY_FLOW, COUNT, FLOW, LENGTH, OXYGEN, si, TIME } from "../../../src/quantity";

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
        const back = oxygenAfter(purgeChanges(si(ppm, OXYGEN), si(supply, OXYGEN), n), supply, n);
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
        expectNear(purgeChanges(si(ppm, OXYGEN), si(0, OXYGEN), n), changes, 1e-11);
      }),
    );
  });

  test("for one cell the changes are the logarithm of the fall", () => {
    fc.assert(
      fc.property(target, ({ ppm, supply }) => {
        expectNear(
          purgeChanges(si(ppm, OXYGEN), si(supply, OXYGEN), 1),
          Math.log((AIR_PPM - supply) / (ppm - supply)),
          1e-11,
        );
      }),
    );
  });

  test("cells in series never need more changes, below one part in ten of air", () => {
    fc.assert(
      fc.property(decades(0.01, 20_000), fc.integer({ min: 1, max: 999 }), (ppm, n) => {
        expect(purgeChanges(si(ppm, OXYGEN), si(0, OXYGEN), n + 1)).toBeLessThan(
          purgeChanges(si(ppm, OXYGEN), si(0, OXYGEN), n),
        );
        expect(purgeChanges(si(ppm, OXYGEN), si(0, OXYGEN), n)).toBeGreaterThan(1);
      }),
    );
  });

  test("a lower target or more oxygen in the supply needs more", () => {
    fc.assert(
      fc.property(target, cells, ({ ppm, supply }, n) => {
        const changes = purgeChanges(si(ppm, OXYGEN), si(supply, OXYGEN), n);
        expect(purgeChanges(si((ppm + supply) / 2, OXYGEN), si(supply, OXYGEN), n)).toBeGreaterThan(changes);
        expect(purgeChanges(si(ppm, OXYGEN), si((ppm + supply) / 2, OXYGEN), n)).toBeGreaterThan(changes);
      }),
    );
  });

  test("time × flow is changes × volume, and the flow for that time is the flow", () => {
    fc.assert(
      fc.property(bore, length, flow, target, cells, (d, l, q, { ppm, supply }, n) => {
        const seconds = purgeTime(
          si(d, LENGTH),
          si(l, LENGTH),
          si(q, FLOW),
          si(ppm, OXYGEN),
          si(supply, OXYGEN),
          si(n, COUNT),
        );
        expectNear(
          seconds * q,
          purgeChanges(si(ppm, OXYGEN), si(supply, OXYGEN), n) * (Math.PI / 4) * d * d * l,
        );
        expectNear(
          purgeFlow(si(d, LENGTH), si(l, LENGTH), seconds, si(ppm, OXYGEN), si(supply, OXYGEN), si(n, COUNT)),
          q,
        );
        expectNear(
          purgeOxygen(si(d, LENGTH), si(l, LENGTH), si(q, FLOW), seconds, si(supply, OXYGEN), si(n, COUNT)),
          ppm,
          1e-10,
        );
      }),
    );
  });

  test("twice the flow, half the time; twice the length, twice the time", () => {
    fc.assert(
      fc.property(bore, length, flow, (d, l, q) => {
        const seconds = purgeTime(
          si(d, LENGTH),
          si(l, LENGTH),
          si(q, FLOW),
          si(50, OXYGEN),
          si(0, OXYGEN),
          si(1, COUNT),
        );
        expectNear(
          purgeTime(
            si(d, LENGTH),
            si(l, LENGTH),
            si(2 * q, FLOW),
            si(50, OXYGEN),
            si(0, OXYGEN),
            si(1, COUNT),
          ),
          seconds / 2,
        );
        expectNear(
          purgeTime(
            si(d, LENGTH),
            si(2 * l, LENGTH),
            si(q, FLOW),
            si(50, OXYGEN),
            si(0, OXYGEN),
            si(1, COUNT),
          ),
          2 * seconds,
        );
        expectNear(
          purgeTime(
            si(2 * d, LENGTH),
            si(l, LENGTH),
            si(q, FLOW),
            si(50, OXYGEN),
            si(0, OXYGEN),
            si(1, COUNT),
          ),
          4 * seconds,
        );
      }),
    );
  });

  test("a leak leaves what makes oxygen in equal oxygen out", () => {
    fc.assert(
      fc.property(flow, flow, (q, leak) => {
        expectNear(leakOxygen(si(q, ANY_FLOW), si(leak, ANY_FLOW)) * (q + leak), AIR_PPM * leak);
      }),
    );
  });
});

test("no leak leaves nothing, and no time leaves air", () => {
  expect(leakOxygen(si(1, ANY_FLOW), si(0, ANY_FLOW))).toBe(0);
  expect(
    purgeOxygen(si(0.05, LENGTH), si(1, LENGTH), si(1e-4, FLOW), si(0, TIME), si(0, OXYGEN), si(1, COUNT)),
  ).toBe(AIR_PPM);
  expect(
    purgeOxygen(si(0.05, LENGTH), si(1, LENGTH), si(1e-4, FLOW), si(0, TIME), si(0, OXYGEN), si(7, COUNT)),
  ).toBe(AIR_PPM);
});

test("a purge without end leaves the oxygen of the supply", () => {
  expect(oxygenAfter(1e6, 5, 1)).toBe(5);
  expect(oxygenAfter(1e6, 5, 1000)).toBe(5);
});

test("just under air needs next to nothing", () => {
  expect(purgeChanges(si(AIR_PPM * (1 - 1e-9), OXYGEN), si(0, OXYGEN), 1)).toBeCloseTo(1e-9, 15);
});

describe(evidence("PURGE_CHANGES", BY_HAND, "ln(209 495/1e-6), a millionth of a ppm over the supply"), () => {
  test("just over the supply is still reached", () => {
    // ln(209 495/1e-6), by hand 12.25246 + 13.81551 = 26.06797.
    expect(purgeChanges(si(5.000001, OXYGEN), si(5, OXYGEN), 1)).toBeCloseTo(26.06797, 4);
  });
});

describe(evidence("PURGE_VOLUME", BY_HAND, "a bore of 2 mm by 1/π mm, π/4·4·1/π"), () => {
  test("one cubic millimetre", () => {
    expectNear(purgeVolume(si(0.002, LENGTH), si(0.001 / Math.PI, LENGTH)), 1e-9);
  });
});

test("the formulas default to 50 ppm, a pure supply and one cell", () => {
  expect(number("PURGE_CHANGES")).toBe(number("PURGE_CHANGES", 50, 0, 1));
  expect(number("PURGE_TIME", 2, 12, 20)).toBe(number("PURGE_TIME", 2, 12, 20, 50, 0, 1, "US"));
  expect(number("PURGE_FLOW", 2, 12, 20)).toBe(number("PURGE_FLOW", 2, 12, 20, 50, 0, 1, "US"));
  expect(number("PURGE_OXYGEN", 2, 12, 20, 9)).toBe(number("PURGE_OXYGEN", 2, 12, 20, 9, 0, 1, "US"));
});
