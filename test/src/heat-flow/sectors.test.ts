import fc from "fast-check";

import { meltPower } from "../../../src/heat-flow/melt-power";
import { plateOf } from "../../../src/heat-flow/plate";
import { ringSectors } from "../../../src/heat-flow/sectors";
import { startDwell } from "../../../src/heat-flow/start-dwell";
import { MATERIALS } from "../../../src/metal/material";
import { ANGLE, COUNT, LENGTH, si, SPEED } from "../../../src/quantity";
import { number, table } from "../../bead";
import { INDEPENDENT, evidence } from "../../evidence";
import { plainMeans } from "../../volterra";

function sectors(...cells: unknown[]): number[][] {
  return table("AMPS_SECTORS", ...cells) as number[][];
}

/** 316L hot, Mills 2002; copper, Copper Development Association and Incropera & DeWitt (both as MATERIALS has them). */
const METALS = {
  "316L": { conductivity: 28.387, diffusivity: 5.848e-6, meltingRise: 1430 },
  C12200: { conductivity: 339, diffusivity: 79e-6, meltingRise: 1063 },
};

/** od, wall mm; speed over the suggested one; overlap °; dwell s or the default. */
const CASES = [
  [3, 0.5, 1, 30, "", "316L"],
  [3, 0.7, 2, 400, 0, "316L"],
  [3, 0.5, 1, 0, "", "C12200"],
  [3, 0.5, 0.05, 30, 0, "C12200"],
  [6.35, 0.89, 0.5, 30, "", "316L"],
  [12.7, 1.24, 1, 500, "", "316L"],
  [25.4, 1.65, 0.4, 20, 9, "316L"],
  [25.4, 1.65, 1, 720, "", "316L"],
  [88.9, 3, 0.2, 30, "", "316L"],
  [88.9, 3, 3, 30, 0.01, "316L"],
  [300, 1, 1, 10, "", "316L"],
  [300, 5, 0.3, 400, 30, "316L"],
] as const;

describe(
  evidence(
    "AMPS_SECTORS",
    INDEPENDENT,
    "the ring's Volterra equation solved the plain way, within 0.02 %, tubes of 3 to 300 mm",
  ),
  () => {
    test.each(CASES)(
      "%p × %p mm, speed × %p, overlap %p°, dwell %p s, %s",
      (od, wall, pace, overlap, dwell, metal) => {
        const { conductivity, diffusivity, meltingRise } = METALS[metal];
        const speed = pace * number("TRAVEL_SUGGEST", wall, "", metal, "SI");
        const seconds = dwell === "" ? number("START_DWELL", wall, speed, "", metal, "", "SI") : dwell;
        // 10 V and an efficiency of 1 make ten watts of an ampere.
        const cold = number("AMPS_MELT", wall, speed, "", metal, 10, 1, "", "SI");
        const rows = sectors(od, wall, speed, 4, overlap, dwell, "", metal, 10, 1, "", "SI");
        const ends = [0, 0.25, 0.5, 0.75, 1, ...(overlap > 0 ? [1 + overlap / 360] : [])];
        const plain = plainMeans(
          {
            circumference: (Math.PI * (od - wall)) / 1000,
            speed: speed / 60_000,
            diffusivity,
            strength: (cold * 10) / (4 * Math.PI * conductivity * (wall / 1000) * meltingRise),
            dwell: seconds,
            turns: 1 + overlap / 360,
          },
          ends,
          1200,
        );
        expect(rows).toHaveLength(plain.length);
        rows.forEach(([from, to, amps, share], i) => {
          expect(from).toBeCloseTo(360 * (ends[i] ?? NaN), 9);
          expect(to).toBeCloseTo(360 * (ends[i + 1] ?? NaN), 9);
          expect(Math.abs((amps ?? NaN) / (cold * (plain[i] ?? NaN)) - 1)).toBeLessThan(2e-4);
          expect((share ?? NaN) * (rows[0]?.[2] ?? NaN)).toBeCloseTo(amps ?? NaN, 9);
        });
      },
    );
  },
);

test("the rise at a sector's end is what one short sector there is short of: q = q(b)·(1 − T/θ)", () => {
  const cold = number("AMPS_MELT", 1.65, 130, "", "", "", "", "", "SI");
  const rows = sectors(25.4, 1.65, 130, 4, "", "", "", "", "", "", "", "SI");
  const short = sectors(25.4, 1.65, 130, 360, "", "", "", "", "", "", "", "SI");
  for (const quarter of [1, 2, 3]) {
    const [before, after] = [short[90 * quarter - 1]?.[2] ?? NaN, short[90 * quarter]?.[2] ?? NaN];
    const rise = 1430 * (1 - (before + after) / 2 / cold);
    expect(Math.abs((rows[quarter - 1]?.[4] ?? NaN) - rise)).toBeLessThan(0.05);
  }
});

test("a very large tube: equal sectors, the power of the plate, until the lap comes near the start", () => {
  const plate = plateOf(si(0.00165, LENGTH), MATERIALS["316L"]);
  const [speed, beadWidth] = [si(0.13 / 60, SPEED), si(0.0043, LENGTH)];
  const pass = { od: si(5, LENGTH), speed, beadWidth, sectors: si(4, COUNT), overlap: si(10, ANGLE) };
  const rows = ringSectors(plate, { ...pass, dwell: startDwell(plate, speed, beadWidth) });
  const cold = meltPower(plate, speed, beadWidth);
  for (const { power, share, rise } of rows.slice(0, 3)) {
    expect(Math.abs(power / cold - 1)).toBeLessThan(1e-9);
    expect(Math.abs(share - 1)).toBeLessThan(1e-9);
    expect(Math.abs(rise)).toBeLessThan(1e-6);
  }
  expect(rows[3]?.share).toBeGreaterThan(0.998);
  expect(rows[3]?.share).toBeLessThan(1);
  expect(rows[4]?.share).toBeLessThan(rows[3]?.share ?? NaN);
});

/** Tube of ordinary proportions: od mm, wall as a share of od, speed over the suggested one. */
const ordinary = fc.record({
  od: fc.double({ min: 3, max: 300, noNaN: true }),
  share: fc.double({ min: 0.02, max: 0.15, noNaN: true }),
  pace: fc.double({ min: 0.6, max: 3, noNaN: true }),
});

function wallOf(od: number, share: number): number {
  return Math.min(Math.max(od * share, 0.5), 5);
}

test("sectors never increase on a cold tube at ordinary speeds", () => {
  fc.assert(
    fc.property(ordinary, ({ od, share, pace }) => {
      const wall = wallOf(od, share);
      const speed = pace * number("TRAVEL_SUGGEST", wall, "", "", "SI");
      const amps = sectors(od, wall, speed, 6, "", "", "", "", "", "", "", "SI").map((row) => row[2] ?? NaN);
      amps.slice(1).forEach((next, i) => {
        expect(next).toBeLessThanOrEqual((amps[i] ?? NaN) * (1 + 1e-6));
      });
    }),
    { numRuns: 60 },
  );
});

test("more preheat, fewer amps, in the proportion of what is left to melt; the shares stay", () => {
  fc.assert(
    fc.property(ordinary, fc.double({ min: 0, max: 900, noNaN: true }), ({ od, share, pace }, preheat) => {
      const wall = wallOf(od, share);
      const speed = pace * number("TRAVEL_SUGGEST", wall, "", "", "SI");
      const cold = sectors(od, wall, speed, 3, 20, "", "", "", "", "", "", "SI");
      const warm = sectors(od, wall, speed, 3, 20, "", "", "", "", "", preheat, "SI");
      warm.forEach((row, i) => {
        const was = cold[i] ?? [];
        expect((row[2] ?? NaN) / (was[2] ?? NaN)).toBeCloseTo((1450 - preheat) / 1430, 9);
        expect(row[3]).toBeCloseTo(was[3] ?? NaN, 9);
      });
    }),
    { numRuns: 40 },
  );
});

test("a longer dwell leaves the tube warmer for every sector", () => {
  const amps = [0, 2, 4, 8].map((dwell) =>
    sectors(12.7, 1.24, 160, 4, 20, dwell, "", "", "", "", "", "SI").map((row) => row[2] ?? NaN),
  );
  amps.slice(1).forEach((longer, i) => {
    longer.forEach((value, sector) => {
      expect(value).toBeLessThan(amps[i]?.[sector] ?? NaN);
    });
  });
});
