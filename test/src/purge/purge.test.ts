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
import type { Flow, Length } from "../../../src/quantity";
import { ANY_FLOW, COUNT, FLOW, LENGTH, OXYGEN, si, TIME } from "../../../src/quantity";
import { RUNS } from "../../arbitrary-cells";
import { decadesOf, evenly, plus, times, wholes } from "../../arbitrary-quantities";
import { expectNear, number } from "../../bead";
import { BY_HAND, COMMON_PRACTICE, evidence } from "../../evidence";

const cells = fc.oneof(fc.constant(si(1, COUNT)), wholes(COUNT, 1, 20), wholes(COUNT, 1, 1000));
/** A target and a supply some way under it. */
const target = fc
  .tuple(decadesOf(OXYGEN, 0.01, 200_000), fc.double({ min: 0, max: 0.9, noNaN: true }))
  .map(([ppm, part]) => ({ ppm, supply: times(part, ppm) }));
const bore = decadesOf(LENGTH, 1e-3, 1);
const length = decadesOf(LENGTH, 1e-2, 100);
const flow = decadesOf(FLOW, 1e-6, 1e-2);
const PURE = si(0, OXYGEN);
const ONE_CELL = si(1, COUNT);

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
      fc.property(evenly(COUNT, 1, 8), cells, (changes, n) => {
        const ppm = oxygenAfter(changes, PURE, n);
        // Beyond that many cells nothing is left to tell one target from another.
        fc.pre(ppm > 1e-250);
        expectNear(purgeChanges(ppm, PURE, n), changes, 1e-11);
      }),
    );
  });

  test("for one cell the changes are the logarithm of the fall", () => {
    fc.assert(
      fc.property(target, ({ ppm, supply }) => {
        const fall = (AIR_PPM - supply) / (ppm - supply);
        expectNear(purgeChanges(ppm, supply, ONE_CELL), Math.log(fall), 1e-11);
      }),
    );
  });

  test("cells in series never need more changes, below one part in ten of air", () => {
    fc.assert(
      fc.property(decadesOf(OXYGEN, 0.01, 20_000), wholes(COUNT, 1, 999), (ppm, n) => {
        const changes = purgeChanges(ppm, PURE, n);
        expect(purgeChanges(ppm, PURE, plus(n, ONE_CELL))).toBeLessThan(changes);
        expect(changes).toBeGreaterThan(1);
      }),
    );
  });

  test("a lower target or more oxygen in the supply needs more", () => {
    fc.assert(
      fc.property(target, cells, ({ ppm, supply }, n) => {
        const changes = purgeChanges(ppm, supply, n);
        const between = times(0.5, plus(ppm, supply));
        expect(purgeChanges(between, supply, n)).toBeGreaterThan(changes);
        expect(purgeChanges(ppm, between, n)).toBeGreaterThan(changes);
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

  test("twice the flow, half the time; twice the length, twice the time; twice the bore, four times", () => {
    fc.assert(
      fc.property(bore, length, flow, (d, l, q) => {
        const time = (wide: Length, long: Length, gas: Flow): number =>
          purgeTime(wide, long, gas, si(50, OXYGEN), PURE, ONE_CELL);
        const seconds = time(d, l, q);
        expectNear(time(d, l, times(2, q)), seconds / 2);
        expectNear(time(d, times(2, l), q), 2 * seconds);
        expectNear(time(times(2, d), l, q), 4 * seconds);
      }),
    );
  });

  test("a leak leaves what makes oxygen in equal oxygen out", () => {
    const anyFlow = decadesOf(ANY_FLOW, 1e-6, 1e-2);
    fc.assert(
      fc.property(anyFlow, anyFlow, (q, leak) => {
        expectNear(leakOxygen(q, leak) * (q + leak), AIR_PPM * leak);
      }),
    );
  });
});

test("no leak leaves nothing, and no time leaves air", () => {
  expect(leakOxygen(si(1, ANY_FLOW), si(0, ANY_FLOW))).toBe(0);
  const atOnce = (n: number): number =>
    purgeOxygen(si(0.05, LENGTH), si(1, LENGTH), si(1e-4, FLOW), si(0, TIME), PURE, si(n, COUNT));
  expect(atOnce(1)).toBe(AIR_PPM);
  expect(atOnce(7)).toBe(AIR_PPM);
});

test("a purge without end leaves the oxygen of the supply", () => {
  const endless = si(1e6, COUNT);
  expect(oxygenAfter(endless, si(5, OXYGEN), ONE_CELL)).toBe(5);
  expect(oxygenAfter(endless, si(5, OXYGEN), si(1000, COUNT))).toBe(5);
});

test("just under air needs next to nothing", () => {
  expect(purgeChanges(times(1 - 1e-8, AIR_PPM), PURE, ONE_CELL)).toBeCloseTo(1e-8, 15);
});

describe(evidence("PURGE_CHANGES", BY_HAND, "ln(209 495/1e-6), a millionth of a ppm over the supply"), () => {
  test("just over the supply is still reached", () => {
    // ln(209 495/1e-6), by hand 12.25246 + 13.81551 = 26.06797.
    const [ppm, supply] = [si(5.000001, OXYGEN), si(5, OXYGEN)];
    expect(purgeChanges(ppm, supply, ONE_CELL)).toBeCloseTo(26.06797, 4);
  });
});

describe(evidence("PURGE_VOLUME", BY_HAND, "a bore of 2 mm by 1/π mm, π/4·4·1/π"), () => {
  test("one cubic millimeter", () => {
    expectNear(purgeVolume(si(0.002, LENGTH), si(0.001 / Math.PI, LENGTH)), 1e-9);
  });
});

test("the formulas default to 50 ppm, a pure supply and one cell", () => {
  expect(number("PURGE_CHANGES")).toBe(number("PURGE_CHANGES", 50, 0, 1));
  expect(number("PURGE_TIME", 2, 12, 20)).toBe(number("PURGE_TIME", 2, 12, 20, 50, 0, 1, null, "US"));
  expect(number("PURGE_FLOW", 2, 12, 20)).toBe(number("PURGE_FLOW", 2, 12, 20, 50, 0, 1, "US"));
  expect(number("PURGE_OXYGEN", 2, 12, 20, 9)).toBe(number("PURGE_OXYGEN", 2, 12, 20, 9, 0, 1, "US"));
});
