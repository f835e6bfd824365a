/** A value that is a limit but for rounding, as a few formulas in a row make it, is that limit. */

import fc from "fast-check";

import { bead, byName, expectNear, number, refusal, table } from "../bead";
import { decades } from "../arbitrary-cells";

const BORES = 2000;

describe("oxygen purged down to a level of the samples has the color of that level", () => {
  /** Levels of AWS D18.2 that PURGE_TINT tests against its source. */
  const LEVELS = [10, 25, 50, 100, 200, 500, 1000, 5000, 12_500, 25_000];
  const bore = fc.record({
    diameter: decades(0.05, 20),
    length: decades(0.1, 1e4),
    flow: decades(0.1, 1000),
    supply: fc.constantFrom(0, 1, 5, 9.5),
    cells: fc.integer({ min: 1, max: 50 }),
    units: fc.constantFrom("US", "SI"),
  });

  test(`50 ppm is the third sample in ${String(BORES)} bores`, () => {
    fc.assert(
      fc.property(bore, ({ diameter, length, flow, supply, cells, units }) => {
        const seconds = number("PURGE_TIME", diameter, length, flow, 50, supply, cells, null, units);
        const ppm = number("PURGE_OXYGEN", diameter, length, flow, seconds, supply, cells, units);
        expect(number("PURGE_TINT", ppm)).toBe(3);
      }),
      { numRuns: BORES },
    );
  });

  test.each(LEVELS.slice(1).map((ppm, i) => [ppm, i + 2]))("%d ppm is sample %d", (ppm, sample) => {
    fc.assert(
      fc.property(bore, ({ diameter, length, flow, supply, cells, units }) => {
        const seconds = number("PURGE_TIME", diameter, length, flow, ppm, supply, cells, null, units);
        const left = number("PURGE_OXYGEN", diameter, length, flow, seconds, supply, cells, units);
        expect(number("PURGE_TINT", left)).toBe(sample);
      }),
    );
  });
});

describe("the gap at which the estimate of arc voltage ends", () => {
  // 2·(3 − 0.254) = 5.492 mm and 2·(0.5 − 0.254) = 0.492 mm of wall; 8.5 + 0.8 V/mm of gap.
  test.each([
    [5.492, "SI", 10.9],
    [0.492, "SI", 8.9],
    [5.492 / 25.4, "US", 10.9],
    [0.492 / 25.4, "US", 8.9],
  ])("of a wall of %d in %s", (wall, units, volts) => {
    const gap = number("STANDOFF", wall, null, units);
    expectNear(number("ARC_VOLTS", gap, null, units), volts);
    const call = byName("AMPS_MELT", { wall, speed: units === "SI" ? 130 : 5, units });
    expect(refusal("AMPS_MELT", ...call)).toBe("answered");
  });

  test("made up of a wall and an allowance, however they are shared out", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.2, noNaN: true }), fc.constantFrom(3, 0.5), (wall, limit) => {
        const allowance = limit / 25.4 - wall / 2;
        fc.pre(allowance >= 0);
        const gap = number("STANDOFF", wall, allowance);
        expectNear(number("ARC_VOLTS", gap), 8.5 + 0.8 * limit);
      }),
    );
  });
});

test("the mean of a pulse that never leaves its background, or its peak, has a share of 0 or 1", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 400, noNaN: true }),
      fc.double({ min: 0.01, max: 0.99, noNaN: true }),
      fc.double({ min: 0.01, max: 10, noNaN: true }),
      (peak, fraction, seconds) => {
        const back = peak * fraction;
        // The background's own mean: (back·t + back·t)/2t, off by a rounding now and then.
        const low = number("AMPS_MEAN", back, seconds, back, 1.1 * seconds);
        const high = number("AMPS_MEAN", peak, seconds, peak, 1.1 * seconds);
        for (const [mean, share] of [
          [low, 0],
          [high, 1],
        ] as const) {
          const found = number("PULSE_SHARE", mean, peak, back);
          expect(Math.abs(found - share)).toBeLessThan(1e-12 / (1 - fraction));
          expect(found).toBeGreaterThanOrEqual(0);
          expect(found).toBeLessThanOrEqual(1);
        }
      },
    ),
  );
});

test("the hottest place of the tube is at the weld: its own temperature is no distance away", () => {
  fc.assert(
    fc.property(
      // So little that nothing melts, not even at the weld.
      fc.double({ min: 1, max: 10, noNaN: true }),
      fc.double({ min: 0.02, max: 0.1, noNaN: true }),
      fc.constantFrom(null, "304L", "CS", "TI-2"),
      (amps, share, material) => {
        const weld = [50, 50 * share, amps, 9.5, 130, 0, null, material, 20, null, "SI"];
        const hottest = number("DAM_TEMPERATURE", 0, ...weld);
        // The hill is flat on top: a micrometer away it is 1e-9 of its height lower.
        expect(number("DAM_DISTANCE", hottest, ...weld)).toBeLessThan(2e-3);
      },
    ),
  );
});

test("a vent for the most pressure that is offered holds that pressure", () => {
  fc.assert(
    fc.property(decades(0.1, 500), fc.constantFrom("AR", "N2", "HE"), (flow, gas) => {
      // 25 mbar; 2500 Pa over 249.08891 Pa in inches of water.
      const mm = number("PURGE_VENT", flow, 25, gas, null, "SI");
      expectNear(number("PURGE_PRESSURE", flow, mm, gas, null, "SI"), 25);
      const inches = number("PURGE_VENT", flow, 2500 / 249.08891, gas);
      expectNear(number("PURGE_PRESSURE", flow, inches, gas), 2500 / 249.08891);
    }),
  );
});

test("the amps that melt the widest bead there is melt it", () => {
  // 100 mm, far beyond any weld; so slow that no narrower bead is the widest.
  const given = { wall: 1.65, speed: 10, volts: 10, efficiency: 1, units: "SI" };
  const most = number("AMPS_MELT", ...byName("AMPS_MELT", { ...given, beadWidth: 100 }));
  const width = (amps: number): unknown[] => byName("MELT_WIDTH", { ...given, amps });
  expectNear(number("MELT_WIDTH", ...width(most)), 100, 1e-9);
  expect(refusal("MELT_WIDTH", ...width(most * (1 + 1e-8)))).toMatch(/^#N\/A amps = /);
});

test("counts that a sheet computed are whole where they print whole", () => {
  // In floating point 0.3/0.1 is a hair under 3.
  expect(number("PURGE_CHANGES", 50, 0, 0.3 / 0.1)).toBe(number("PURGE_CHANGES", 50, 0, 3));
  expect(number("CREW_OUTPUT", 0.3 / 0.1, 120, 600, 8, 1, "random")).toBe(
    number("CREW_OUTPUT", 3, 120, 600, 8, 1, "random"),
  );
  expect(table("AMPS_SECTORS", 1, 0.065, 5, 0.3 / 0.1)).toEqual(table("AMPS_SECTORS", 1, 0.065, 5, 3));
  const [line] = table("TAKEOFF", [[0.3 / 0.1, 1, 0.065]]);
  expect(line?.[0]).toBe(3);
  expect(refusal("CREW_OUTPUT", 2.9999, 120, 600)).toMatch(
    /^#VALUE! heads = 2\.9999: must be a whole number/,
  );
});

test("a cylinder at either end of its temperatures, and full at its change-out", () => {
  for (const [temperature, units] of [
    [-22, "US"],
    [140, "US"],
    [-30, "SI"],
    [60, "SI"],
  ] as const) {
    expect(refusal("GAS_CYLINDER", 1.7, units === "US" ? 2400 : 165, 0, temperature, units)).toBe("answered");
  }
  for (const psi of [0.1, 100.3, 2216.7]) {
    expect(bead("GAS_CYLINDER", 1.7, psi, psi * (1 + 1e-12))).toBe(0);
  }
});

describe("OVERLAP_SUGGEST", () => {
  test("a bead as wide as the circumference overlaps by the full turn, a wider one is refused", () => {
    expect(number("OVERLAP_SUGGEST", 1, 0.065, Math.PI)).toBe(360);
    expect(number("OVERLAP_SUGGEST", 25.4, 1.65, 25.4 * Math.PI, "SI")).toBe(360);
    expect(refusal("OVERLAP_SUGGEST", 1, 0.065, 4)).toBe(
      "#VALUE! beadWidth = 4 in: must be at most the circumference, 3.14159 in",
    );
  });

  test("never more than a full turn, whatever the bead", () => {
    fc.assert(
      fc.property(decades(0.5, 500), decades(0.001, 4), (od, widths) => {
        const said = refusal("OVERLAP_SUGGEST", od, od / 10 + 0.1, widths * od, "SI");
        if (said === "answered") {
          expect(bead("OVERLAP_SUGGEST", od, od / 10 + 0.1, widths * od, "SI")).toBeLessThanOrEqual(360);
        }
        // Walls beyond the trade's are refused before.
        else if (od / 10 + 0.1 <= 25.4)
          expect([widths > Math.PI, said.slice(0, 19)]).toEqual([true, "#VALUE! beadWidth ="]);
      }),
    );
  });

  test("a suggested schedule speaks of the tube where the default bead is too wide for it", () => {
    const call = byName("SCHEDULE", { od: 0.8, wall: 0.35, style: "steady", volts: 9, units: "SI" });
    expect(refusal("SCHEDULE", ...call)).toMatch(/^#N\/A od = 0\.8 mm: /);
  });
});
