/** What must hold of the amperages and widths whatever the weld. */

import fc from "fast-check";

import type { CellsByName } from "../bead";
import { byName, expectNear, number, refusal, table } from "../bead";

describe("laws", () => {
  /** Walls of 0.5 to 4 mm, beads of half to three times 1 mm + 2 walls, v·b/(4α) from 0.1 to 1.5 at α 5 mm²/s. */
  const pass = fc
    .record({
      wall: fc.double({ min: 0.5, max: 4, noNaN: true }),
      peclet: fc.double({ min: 0.1, max: 1.5, noNaN: true }),
      beads: fc.double({ min: 0.5, max: 3, noNaN: true }),
      metal: fc.constantFrom("316L", "CS", "TI-2", "625", "C12200"),
    })
    .map(({ wall, peclet, beads, metal }) => {
      const width = beads * (1 + 2 * wall);
      return { wall, width, metal, speed: (60 * 4 * 5 * peclet) / width };
    });
  const FEW = { numRuns: 40 };

  test("the width of the amps of a width is that width, and the other way round, to 1e-6", () => {
    fc.assert(
      fc.property(pass, ({ wall, speed, width, metal }) => {
        const amps = number("AMPS_MELT", wall, speed, width, metal, 10, "", 150, "", "SI");
        const back = number("MELT_WIDTH", wall, amps, speed, metal, 10, "", 150, "", "SI");
        expect(Math.abs(back / width - 1)).toBeLessThan(1e-6);
        const again = number("AMPS_MELT", wall, speed, back, metal, 10, "", 150, "", "SI");
        expect(Math.abs(again / amps - 1)).toBeLessThan(1e-6);
      }),
      FEW,
    );
  });

  test("amps rise with wall, width and speed, and fall with volts, efficiency and preheat", () => {
    fc.assert(
      fc.property(pass, ({ wall, speed, width, metal }) => {
        const amps = (
          thickness: number,
          travel: number,
          aim: number,
          volts = 10,
          efficiency = 0.7,
          preheat = 20,
        ): number => number("AMPS_MELT", thickness, travel, aim, metal, volts, efficiency, preheat, 4, "SI");
        const plain = amps(wall, speed, width);
        expect(amps(1.1 * wall, speed, width)).toBeGreaterThan(plain);
        expect(amps(wall, 1.1 * speed, width)).toBeGreaterThan(plain);
        expect(amps(wall, speed, 1.1 * width)).toBeGreaterThan(plain);
        expect(amps(wall, speed, width, 20) / plain).toBeCloseTo(0.5, 9);
        expect(amps(wall, speed, width, 10, 0.35) / plain).toBeCloseTo(2, 9);
        expect(amps(wall, speed, width, 10, 0.7, 21)).toBeLessThan(plain);
        expect(amps(wall, speed, width, 10, 0.7, 19)).toBeGreaterThan(plain);
      }),
      FEW,
    );
  });

  test("face at least as wide as root, their mean MELT_WIDTH; root and full depth from AMPS_THROUGH on", () => {
    fc.assert(
      fc.property(pass, fc.double({ min: 0.6, max: 1.8, noNaN: true }), ({ wall, speed, metal }, part) => {
        const through = number("AMPS_THROUGH", wall, speed, 0, metal, 10, "", "", "", "SI");
        const amps = part * through;
        const said = refusal("MELT_SECTION", wall, amps, speed, metal, 10, "", "", "", "SI");
        if (said !== "answered") {
          // So slow an arc, so conductive a metal: all at once, or more than there is an answer for.
          expect(said).toMatch(/^#N\/A amps = /);
          return;
        }
        const [[face = NaN, root = NaN, depth = NaN] = []] = table(
          "MELT_SECTION",
          ...[wall, amps, speed, metal, 10, "", "", "", "SI"],
        ) as number[][];
        expect(root).toBeLessThanOrEqual(face * (1 + 1e-9));
        expect(root > 0).toBe(part > 1);
        expect(depth).toBeLessThanOrEqual(wall * (1 + 1e-12));
        if (part > 1) expect(depth).toBeCloseTo(wall, 9);
        else expect(depth).toBeLessThan(wall);
        const width = number("MELT_WIDTH", wall, amps, speed, metal, 10, "", "", "", "SI");
        expect(Math.abs((face + root) / 2 / width - 1)).toBeLessThan(1e-9);
      }),
      FEW,
    );
  });

  test("no jump where the bead just goes through: the root grows from nothing", () => {
    const through = number("AMPS_THROUGH", 1.65, 130, "", "", "", "", "", "", "SI");
    const root = (amps: number): number =>
      Number(table("MELT_SECTION", 1.65, amps, 130, "", "", "", "", "", "SI")[0]?.[1]);
    expect(root(through * (1 - 1e-9))).toBe(0);
    // A root grows as the square root of what is beyond: 1e-8 of it opens about a ten-thousandth of the bead.
    expect(root(through * (1 + 1e-8))).toBeGreaterThan(0);
    expect(root(through * (1 + 1e-8))).toBeLessThan(0.01);
    const wide = number("AMPS_THROUGH", 1.65, 130, 2, "", "", "", "", "", "SI");
    expect(Math.abs(root(wide) / 2 - 1)).toBeLessThan(1e-6);
  });

  test("the window closes as wall and arc vary more, and holds the bead's own amps while it is open", () => {
    const [tight, usual, loose] = [0, 0.1, 0.2].map((tolerance) => {
      const [row = []] = table("AMPS_WINDOW", 0.065, 5, "", "", tolerance) as number[][];
      return row;
    });
    const rooms = [tight, usual, loose].map((row) => row?.[3] ?? NaN);
    expect([...rooms].sort((a, b) => b - a)).toEqual(rooms);
    const [minimum = NaN, amps = NaN, maximum = NaN, room = NaN] = usual ?? [];
    expect(amps).toBeGreaterThan(minimum);
    expect(amps).toBeLessThan(maximum);
    expect(room).toBeCloseTo((maximum - minimum) / amps, 12);
    // Its ends are those of AMPS_THROUGH at the thickest wall with the weakest arc, the spot of the nominal wall.
    const volts = number("ARC_VOLTS", 0.0425);
    const spot = (4 * (0.5 + 0.5 * 0.0425 * 25.4)) / 25.4;
    const through = number("AMPS_THROUGH", 0.0715, 5, 0.0325, "", volts, 0.73, "", spot);
    expect(Math.abs(minimum / through - 1)).toBeLessThan(1e-9);
    const [weak = []] = table("AMPS_WINDOW", 0.065, 5, "", "", 0.1, 0.6, 0.95) as number[][];
    expect(weak[3]).toBeLessThan(room);
  });

  test("what is omitted of the window: half the wall, one and a half beads, a tenth of the wall, 0.73 to 0.82", () => {
    // The bead of a wall of 1.651 mm: 1 + 2·1.651 = 4.302 mm.
    const window = (given: CellsByName<"AMPS_WINDOW">): number[] =>
      (
        table(
          "AMPS_WINDOW",
          ...byName("AMPS_WINDOW", { wall: 1.651, speed: 127, units: "SI", ...given }),
        )[0] ?? []
      ).map(Number);
    const told = window({
      rootLeast: 0.8255,
      faceMost: 6.453,
      wallTolerance: 0.1,
      efficiencyLow: 0.73,
      efficiencyHigh: 0.82,
    });
    window({}).forEach((amps, i) => {
      expectNear(amps, told[i] ?? NaN, 1e-9);
    });
  });

  test("sectors are equal on a very large tube, and equal to the plate's amps", () => {
    const rows = table("AMPS_SECTORS", 20, 0.065, 5, 4, 0, 0) as number[][];
    const plate = number("AMPS_MELT", 0.065, 5);
    for (const row of rows.slice(1)) expect(Math.abs((row[2] ?? NaN) / plate - 1)).toBeLessThan(5e-3);
  });

  test("START_DWELL does not depend on the preheat, and a faster arc dwells less", () => {
    expect(number("START_DWELL", 0.065, 5, "", "", 600)).toBeCloseTo(number("START_DWELL", 0.065, 5), 9);
    expect(number("START_DWELL", 0.065, 8)).toBeLessThan(number("START_DWELL", 0.065, 5));
  });

  test("DAM_DISTANCE leads back to its temperature, still air shortens it, and near ambient it holds", () => {
    const tube = [1, 0.065, 46, 9.4, 5, 4, "", "", 68] as const;
    for (const limit of [72, 90, 212, 800]) {
      const far = number("DAM_DISTANCE", limit, ...tube);
      expect(Math.abs(number("DAM_TEMPERATURE", far, ...tube) - limit)).toBeLessThan(1e-3 * (limit - 68));
      expect(number("DAM_DISTANCE", limit, ...tube, "still air")).toBeLessThan(far);
    }
  });
});
