/** Flow in the bore, its vent, and what root and color bear. */

import fc from "fast-check";

import { number, refusal } from "../bead";
import { COMMON_PRACTICE, evidence } from "../evidence";

const MM = 25.4;
const FLOW_TO_SI = 28.316_846_592 / 60;
const MBAR_PER_INCH_OF_WATER = 2.490_889_1;

const gas = fc.constantFrom("AR", "N2", "HE", "AIR");
const inches = fc.double({ min: 0.05, max: 40, noNaN: true });
const flow = fc.double({ min: 0.5, max: 500, noNaN: true });
const inchesOfWater = fc.double({ min: 1e-3, max: 10, noNaN: true });
const discharge = fc.double({ min: 0.1, max: 1, noNaN: true });

function expectSame(one: number, other: number): void {
  expect(Math.abs(one / other - 1)).toBeLessThan(1e-12);
}

describe("flow in the bore", () => {
  test("the laminar ceiling is the flow at Re 2000", () => {
    fc.assert(
      fc.property(inches, gas, (bore, name) => {
        expectSame(number("PURGE_REYNOLDS", bore, number("PURGE_LAMINAR", bore, name), name), 2000);
      }),
    );
  });
  test("US and SI agree", () => {
    fc.assert(
      fc.property(inches, flow, gas, (bore, rate, name) => {
        const us = number("PURGE_REYNOLDS", bore, rate, name);
        expectSame(number("PURGE_REYNOLDS", bore * MM, rate * FLOW_TO_SI, name, "SI"), us);
        const ceiling = number("PURGE_LAMINAR", bore, name);
        expectSame(number("PURGE_LAMINAR", bore * MM, name, "SI"), ceiling * FLOW_TO_SI);
      }),
    );
  });
  test("the gas omitted is argon", () => {
    expect(number("PURGE_REYNOLDS", 2, 20)).toBe(number("PURGE_REYNOLDS", 2, 20, "AR"));
    expect(number("PURGE_LAMINAR", 2)).toBe(number("PURGE_LAMINAR", 2, "ar"));
  });
  describe(
    evidence(
      "PURGE_LAMINAR",
      COMMON_PRACTICE,
      "helium stays smooth at seven times the flow of nitrogen and more",
    ),
    () => {
      test("thin helium stays smooth at seven times the flow of nitrogen and more", () => {
        expect(number("PURGE_LAMINAR", 2, "HE") / number("PURGE_LAMINAR", 2, "N2")).toBeGreaterThan(7);
      });
    },
  );
});

describe("vent and pressure", () => {
  test("are inverses of each other", () => {
    fc.assert(
      fc.property(flow, inchesOfWater, gas, discharge, (rate, pressure, name, coefficient) => {
        const vent = number("PURGE_VENT", rate, pressure, name, coefficient);
        expectSame(number("PURGE_PRESSURE", rate, vent, name, coefficient), pressure);
      }),
    );
  });
  test("US and SI agree", () => {
    fc.assert(
      fc.property(flow, inchesOfWater, gas, (rate, pressure, name) => {
        const us = number("PURGE_VENT", rate, pressure, name);
        const si = [rate * FLOW_TO_SI, pressure * MBAR_PER_INCH_OF_WATER, name, null, "SI"] as const;
        expectSame(number("PURGE_VENT", ...si), us * MM);
        const back = number("PURGE_PRESSURE", rate * FLOW_TO_SI, us * MM, name, null, "SI");
        expectSame(back, number("PURGE_PRESSURE", rate, us, name) * MBAR_PER_INCH_OF_WATER);
      }),
    );
  });
  test("twice the flow, four times the pressure; half the vent, sixteen times", () => {
    fc.assert(
      fc.property(flow, gas, (rate, name) => {
        const vent = number("PURGE_VENT", rate, 0.1, name);
        expectSame(number("PURGE_PRESSURE", 2 * rate, vent, name), 0.4);
        expectSame(number("PURGE_PRESSURE", rate, vent / 2, name), 1.6);
      }),
    );
  });
  test("a heavier gas needs a larger vent; a rounded edge a smaller one", () => {
    expect(number("PURGE_VENT", 20, 0.5, "AR")).toBeGreaterThan(number("PURGE_VENT", 20, 0.5, "HE"));
    expect(number("PURGE_VENT", 20, 0.5, "AR", 0.98)).toBeLessThan(number("PURGE_VENT", 20, 0.5));
  });
  test("25 mbar is answered, a hair more is not", () => {
    const vent = number("PURGE_VENT", 10, 25, "AR", null, "SI");
    expect(number("PURGE_PRESSURE", 10, vent * (1 + 1e-9), "AR", null, "SI")).toBeLessThan(25);
    expect(refusal("PURGE_PRESSURE", 10, vent * (1 - 1e-9), "AR", null, "SI")).toMatch(
      /^#VALUE! ventDiameter/,
    );
    expect(refusal("PURGE_VENT", 10, 25 * (1 + 1e-9), "AR", null, "SI")).toMatch(/^#VALUE! pressure/);
  });
});

describe("the root's ceiling", () => {
  test("falls as the root widens", () => {
    fc.assert(
      fc.property(inches, (width) => {
        expectSame(number("PURGE_CEILING", width) / number("PURGE_CEILING", 2 * width), 2);
      }),
    );
  });
  test("US and SI agree", () => {
    fc.assert(
      fc.property(inches, fc.constantFrom("304L", "316L", "CS", "TI-2", "C70600"), (width, metal) => {
        const us = number("PURGE_CEILING", width, metal);
        expectSame(number("PURGE_CEILING", width * MM, metal, "SI"), us * MBAR_PER_INCH_OF_WATER);
      }),
    );
  });
  test("the material omitted is 316L", () => {
    expect(number("PURGE_CEILING", 0.15)).toBe(number("PURGE_CEILING", 0.15, "316L"));
  });
});

describe("refusals", () => {
  test.each([
    ["PURGE_REYNOLDS", [0, 20], "#VALUE! bore = 0 in: must be above 0"],
    ["PURGE_REYNOLDS", [2, -20], "#VALUE! flow = -20 ft³/h: must be above 0"],
    ["PURGE_REYNOLDS", [2, 20, "H2"], '#VALUE! gas = "H2": must be one of AR, N2, HE, AIR'],
    ["PURGE_LAMINAR", [-50, "AR", "SI"], "#VALUE! bore = -50 mm: must be above 0"],
    ["PURGE_LAMINAR", [null], "#VALUE! bore = blank: needs a number (in)"],
    ["PURGE_VENT", [0, 0.5], "#VALUE! flow = 0 ft³/h: must be above 0"],
    ["PURGE_VENT", [20, 0], "#VALUE! pressure = 0 inH₂O: must be above 0"],
    [
      "PURGE_VENT",
      [10, 30, "AR", 0.61, "SI"],
      "#VALUE! pressure = 30 mbar: must be at most 25 mbar, where the gas can still be treated as incompressible",
    ],
    ["PURGE_VENT", [20, 0.5, "AR", 1.2], "#VALUE! discharge = 1.2: must be above 0 and at most 1"],
    ["PURGE_VENT", [20, 0.5, "AR", 0], "#VALUE! discharge = 0: must be above 0 and at most 1"],
    ["PURGE_PRESSURE", [20, 0], "#VALUE! ventDiameter = 0 in: must be above 0"],
    ["PURGE_PRESSURE", ["x", 0.2], '#VALUE! flow = "x": must be a number (ft³/h)'],
    [
      "PURGE_PRESSURE",
      [10, 1, "AR", 0.61, "SI"],
      // √(2·2500/1.66182) = 54.8521 m/s; 1.66667e-4/(0.61·54.8521) m² = 4.98107 mm², a hole of 2.51836 mm.
      "#VALUE! ventDiameter = 1 mm: must be at least 2.51836 mm for this flow; below it the pressure exceeds 25 mbar, where the gas can no longer be treated as incompressible",
    ],
    ["PURGE_CEILING", [0], "#VALUE! rootWidth = 0 in: must be above 0"],
    [
      "PURGE_CEILING",
      [4, "307", "SI"],
      '#VALUE! material = "307": must be one of 304L, 316L, 2205, CS, TI-2, TI-6-4, 625, C-276, C12200, C70600',
    ],
    ["PURGE_TINT", [-1], "#VALUE! ppm = -1 ppm: must be 0 or more"],
    [
      "PURGE_TINT",
      [30_000],
      "#N/A ppm = 30000 ppm: no sample shows so much oxygen; the last is for 25000 ppm",
    ],
    ["PURGE_TINT", [true], "#VALUE! ppm = TRUE: must be a number (ppm)"],
    ["PURGE_TINT", [""], "#VALUE! ppm = blank: needs a number (ppm)"],
  ])("%s %j: %s", (id, cells, sentence) => {
    expect(refusal(id, ...cells)).toBe(sentence);
  });
});
