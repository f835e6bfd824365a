/** What must hold whatever the numbers are: inverse of inverse, order, continuity. */

import fc from "fast-check";

import type { ArcPlate } from "../../../src/heat-flow/arc-plate";
import { effectiveMetal, metalNumbers } from "../../../src/heat-flow/effective";
import type { ReadyPlate } from "../../../src/heat-flow/melt";
import {
  meanWidth,
  meltDepth,
  meltSection,
  powerOfFace,
  powerOfMean,
  powerOfRoot,
  readyPlate,
} from "../../../src/heat-flow/melt";
import { startDwell, standingWidth } from "../../../src/heat-flow/start-dwell";
import type { Designation } from "../../../src/metal/material";
import { DESIGNATIONS, MATERIALS } from "../../../src/metal/material";

interface Weld {
  readonly metal: Designation;
  readonly wall: number;
  readonly spread: number;
  readonly speed: number;
  readonly width: number;
  readonly rise: number;
}

/** Walls of 0.3 to 4 mm, arcs of 0 to 2 mm, beads of a quarter to four times 1 mm + 2 walls. */
const welds: fc.Arbitrary<Weld> = fc
  .record({
    metal: fc.constantFrom(...DESIGNATIONS),
    wall: fc.double({ min: 0.0003, max: 0.004, noNaN: true }),
    spread: fc.double({ min: 0, max: 0.002, noNaN: true }),
    speed: fc.double({ min: 0.0003, max: 0.01, noNaN: true }),
    beads: fc.double({ min: 0.25, max: 4, noNaN: true }),
    rise: fc.double({ min: 500, max: 1600, noNaN: true }),
  })
  .map(({ beads, ...weld }) => ({ ...weld, width: beads * (0.001 + 2 * weld.wall) }))
  // v·b/(4α) up to 3, far beyond any bead of this trade (0.2 to 0.9).
  .filter((weld) => weld.speed * weld.width < 12 * plateOf(weld).metal.diffusivity);

function plateOf({ metal, wall, spread, speed }: Weld): ArcPlate {
  return { metal: effectiveMetal(metalNumbers(MATERIALS[metal])), wall, spread, speed };
}

function ready(weld: Weld): ReadyPlate {
  return readyPlate(plateOf(weld));
}

function powerOf(weld: Weld): number {
  return powerOfMean(ready(weld), weld.rise, weld.width);
}

const RUNS = { numRuns: 60 };

test("width of the power of a width gives the width back to 1e-6", () => {
  fc.assert(
    fc.property(welds, (weld) => {
      const back = meanWidth(ready(weld), weld.rise, powerOf(weld));
      expect(Math.abs(back / weld.width - 1)).toBeLessThan(1e-6);
    }),
    RUNS,
  );
});

test("face and root of the powers of a face and a root give them back", () => {
  fc.assert(
    fc.property(welds, (weld) => {
      const plate = ready(weld);
      const face = meltSection(plate, weld.rise, powerOfFace(plate, weld.rise, weld.width)).face;
      const root = meltSection(plate, weld.rise, powerOfRoot(plate, weld.rise, weld.width)).root;
      expect(Math.abs(face / weld.width - 1)).toBeLessThan(1e-8);
      expect(Math.abs(root / weld.width - 1)).toBeLessThan(1e-8);
    }),
    RUNS,
  );
});

describe("more power for", () => {
  /** A change that makes the weld need more power, however small. */
  const changes: [string, (weld: Weld, by: number) => Weld][] = [
    ["a wider bead", (weld, by) => ({ ...weld, width: weld.width * by })],
    ["a thicker wall", (weld, by) => ({ ...weld, wall: weld.wall * by })],
    ["a faster arc", (weld, by) => ({ ...weld, speed: weld.speed * by })],
    ["a colder tube", (weld, by) => ({ ...weld, rise: weld.rise * by })],
  ];
  test.each(changes)("%s, and never by a jump", (_, change) => {
    fc.assert(
      fc.property(welds, (weld) => {
        const power = powerOf(weld);
        const little = powerOf(change(weld, 1 + 1e-5)) / power - 1;
        const much = powerOf(change(weld, 1.2)) / power - 1;
        expect(little).toBeGreaterThan(0);
        // At most in proportion to the sixth power: no jump.
        expect(little).toBeLessThan(6e-5);
        expect(much).toBeGreaterThan(little);
      }),
      RUNS,
    );
  });
});

test("root under face, depth between nothing and the wall, each in its order of power", () => {
  fc.assert(
    fc.property(welds, fc.double({ min: 0.3, max: 3, noNaN: true }), (weld, part) => {
      const plate = ready(weld);
      const power = part * powerOfRoot(plate, weld.rise, 0);
      const { face, root } = meltSection(plate, weld.rise, power);
      const depth = meltDepth(plate, weld.rise, power);
      // A wall so thin that both are one is told apart only by rounding.
      expect(root).toBeLessThanOrEqual(face * (1 + 1e-9));
      expect(root > 0).toBe(part > 1);
      expect(face > 0).toBe(power > powerOfFace(plate, weld.rise, 0));
      expect(depth > 0).toBe(face > 0);
      expect(depth === weld.wall).toBe(part >= 1);
      expect(meltSection(plate, weld.rise, 1.01 * power).face).toBeGreaterThanOrEqual(face);
    }),
    RUNS,
  );
});

test("the start dwell melts the bead's width, and a hotter start needs less of it", () => {
  fc.assert(
    fc.property(welds, (weld) => {
      const plate = plateOf(weld);
      const power = powerOf(weld);
      const seconds = startDwell(plate, weld.rise, power, weld.width);
      expect(Math.abs(standingWidth(plate, weld.rise / power, seconds) / weld.width - 1)).toBeLessThan(1e-6);
      expect(startDwell(plate, weld.rise, 1.05 * power, weld.width)).toBeLessThan(seconds);
    }),
    { numRuns: 30 },
  );
});
