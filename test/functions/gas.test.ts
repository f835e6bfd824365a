import fc from "fast-check";

import { expectPrinted, number, refusal } from "../bead";
import { BY_HAND, PUBLISHED, REFERENCE_LIBRARY, evidence } from "../evidence";

const LITERS_PER_CUBIC_FOOT = 28.316_846_592;
const PSI_PER_BAR = 100_000 / 6894.757_293_168_361;
const positive = (max: number): fc.Arbitrary<number> => fc.double({ min: 1e-3, max, noNaN: true });

describe("GAS_LIQUID", () => {
  describe(
    evidence("GAS_LIQUID", PUBLISHED, "ifc-2018", "gas of a liter and of a gallon of liquid argon"),
    () => {
      test("29.71 ft³ from a liter", () => {
        expectPrinted(number("GAS_LIQUID", 1), "29.71");
      });
      test("112.45 ft³ from a US gallon, 231 in³, to what the liter is rounded by", () => {
        const gallon = (231 * 0.0254 ** 3) / 0.001;
        expect(Math.abs(number("GAS_LIQUID", gallon) / 112.45 - 1)).toBeLessThan(
          0.005 / 29.71 + 0.005 / 112.45,
        );
      });
    },
  );
  describe(
    evidence(
      "GAS_LIQUID",
      REFERENCE_LIBRARY,
      "coolprop-8.0.0",
      "saturated liquid at 1 atm, 1395.395 kg/m³, over the gas at 70 °F and 1 atm: within 0.2 %",
    ),
    () => {
      test("29.7657 ft³ from a liter", () => {
        expect(Math.abs(number("GAS_LIQUID", 1) / 29.7657 - 1)).toBeLessThan(0.002);
      });
    },
  );
  describe(
    evidence("GAS_LIQUID", BY_HAND, "230 L × 29.71 ft³ × 0.9, and the same mass at 15 °C and 1 bar"),
    () => {
      test("nine tenths of 230 L are 6149.97 ft³", () => {
        expect(number("GAS_LIQUID", 230, 0.9)).toBeCloseTo(6149.97, 9);
        expect(number("GAS_LIQUID", 230)).toBeCloseTo(6833.3, 9);
      });
      test("the SI liter is at another state: 1.65553 kg/m³ over 1.66822 (both of [coolprop-8.0.0])", () => {
        // 1.69075 kg/m³ at 15 °C and 1 atm; at 1 bar, 1/1.01325 of it, the compressibility up from 0.999254 by 1e-5.
        const ratio = 1.65553 / (1.69075 / 1.01325);
        const us = number("GAS_LIQUID", 230, 0.9) * LITERS_PER_CUBIC_FOOT;
        expect(Math.abs(number("GAS_LIQUID", 230, 0.9, "SI") / us / ratio - 1)).toBeLessThan(3e-5);
      });
    },
  );
  test.each([
    [[0], "#VALUE! liquid = 0 L: must be above 0"],
    [[230, 0], "#VALUE! usable = 0: must be above 0 and at most 1"],
    [[230, 90], "#VALUE! usable = 90: must be above 0 and at most 1"],
    [["230 L"], '#VALUE! liquid = "230 L": must be a number (L)'],
  ])("%j is refused: %s", (cells, sentence) => {
    expect(refusal("GAS_LIQUID", ...cells)).toBe(sentence);
  });
});

describe("GAS_JOINT", () => {
  describe(evidence("GAS_JOINT", BY_HAND, "flow × time"), () => {
    test("10 L/min for 90 s and 20 L/min for 600 s are 15 L and 200 L", () => {
      expect(number("GAS_JOINT", 10, 90, 20, 600, "SI")).toBeCloseTo(215, 10);
    });
    test("without a purge it is the torch alone: 20 ft³/h for 180 s is 1 ft³", () => {
      expect(number("GAS_JOINT", 20, 180)).toBeCloseTo(1, 12);
    });
  });
  test("nothing flows, nothing is used", () => {
    expect(number("GAS_JOINT", 0, 180, 0, 0)).toBe(0);
  });
  test("US and SI agree", () => {
    fc.assert(
      fc.property(
        positive(1e3),
        positive(1e4),
        positive(1e3),
        positive(1e4),
        (torch, arc, purge, seconds) => {
          const toSi = LITERS_PER_CUBIC_FOOT / 60;
          const us = number("GAS_JOINT", torch, arc, purge, seconds);
          const si = number("GAS_JOINT", torch * toSi, arc, purge * toSi, seconds, "SI");
          expect(Math.abs(si / (us * LITERS_PER_CUBIC_FOOT) - 1)).toBeLessThan(1e-12);
        },
      ),
    );
  });
  test.each([
    [[-1, 90], "#VALUE! torchFlow = -1 ft³/h: must be 0 or more"],
    [[10, -90], "#VALUE! torchSeconds = -90 s: must be 0 or more"],
    [[10, 90, -20], "#VALUE! purgeFlow = -20 ft³/h: must be 0 or more"],
    [[10, 90, 20, -6], "#VALUE! purgeSeconds = -6 s: must be 0 or more"],
    [["", 90], "#VALUE! torchFlow = blank: needs a number (ft³/h)"],
    [[10, "90"], '#VALUE! torchSeconds = "90": is a number stored as text; turn the cell into a number (s)'],
    [[10, true], "#VALUE! torchSeconds = TRUE: must be a number (s)"],
    [[NaN, 90], "#VALUE! torchFlow = NaN: must be a finite number (ft³/h)"],
    [[[[1, 2]], 90], "#VALUE! torchFlow = a range: takes one cell, not 1 × 2 cells"],
    [
      [1e200, 1e200, 0, 0],
      "#VALUE! result = beyond what a cell can hold: some argument is far too large or too small",
    ],
  ])("%j: %s", (cells, sentence) => {
    expect(refusal("GAS_JOINT", ...cells)).toBe(sentence);
  });
});

describe("GAS_CYLINDER", () => {
  const pressure = fc.double({ min: 0, max: 350, noNaN: true });
  const temperature = fc.double({ min: -30, max: 60, noNaN: true });

  test("residual and temperature omitted are 0 and 15 °C, 70 °F", () => {
    expect(number("GAS_CYLINDER", 50, 200, null, "", "SI")).toBe(
      number("GAS_CYLINDER", 50, 200, 0, 15, "SI"),
    );
    expect(number("GAS_CYLINDER", 1.7, 2500)).toBe(number("GAS_CYLINDER", 1.7, 2500, 0, 70));
  });
  test("a residual is taken off: what is left at 10 bar stays in the cylinder", () => {
    const all = number("GAS_CYLINDER", 50, 200, 0, 15, "SI");
    const left = number("GAS_CYLINDER", 50, 10, 0, 15, "SI");
    expect(number("GAS_CYLINDER", 50, 200, 10, 15, "SI")).toBeCloseTo(all - left, 8);
  });
  test("changed at once, it gives nothing", () => {
    expect(number("GAS_CYLINDER", 50, 200, 200, 15, "SI")).toBe(0);
    expect(number("GAS_CYLINDER", 50, 0, 0, 15, "SI")).toBe(0);
  });
  test("more pressure, more gas", () => {
    fc.assert(
      fc.property(pressure, pressure, temperature, (one, other, celsius) => {
        fc.pre(Math.abs(one - other) > 1e-6);
        const [low, high] = [Math.min(one, other), Math.max(one, other)].map((bar) =>
          number("GAS_CYLINDER", 50, bar, 0, celsius, "SI"),
        );
        expect(low).toBeLessThan(high ?? NaN);
      }),
    );
  });
  test("a warmer cylinder at the same gauge pressure holds less", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 350, noNaN: true }),
        fc.double({ min: -30, max: 59, noNaN: true }),
        (bar, celsius) => {
          const [cold, warm] = [celsius, celsius + 1].map((degrees) =>
            number("GAS_CYLINDER", 50, bar, 0, degrees, "SI"),
          );
          expect(warm).toBeLessThan(cold ?? NaN);
        },
      ),
    );
  });
  test("twice the cylinder, twice the gas", () => {
    fc.assert(
      fc.property(positive(1000), pressure, (liters, bar) => {
        const once = number("GAS_CYLINDER", liters, bar, 0, 15, "SI");
        expect(Math.abs(number("GAS_CYLINDER", 2 * liters, bar, 0, 15, "SI") - 2 * once)).toBeLessThanOrEqual(
          1e-12 * once,
        );
      }),
    );
  });
  test("US and SI differ by their standard states alone: 15 °C, 1 bar holds 1.034598 of 70 °F, 1 atm", () => {
    // ρ(70 °F, 1 atm)/ρ(15 °C, 1 bar) = 1.655525367/1.668628492 by CoolProp: a liter of SI is heavier.
    const ratio = 1.655_525_367 / 1.668_628_492;
    fc.assert(
      fc.property(positive(100), fc.double({ min: 100, max: 5000, noNaN: true }), (cubicFeet, psi) => {
        const us = number("GAS_CYLINDER", cubicFeet, psi, 0, 70);
        const celsius = (70 - 32) / 1.8;
        const si = number(
          "GAS_CYLINDER",
          cubicFeet * LITERS_PER_CUBIC_FOOT,
          psi / PSI_PER_BAR,
          0,
          celsius,
          "SI",
        );
        expect(Math.abs(si / (us * LITERS_PER_CUBIC_FOOT * ratio) - 1)).toBeLessThan(1e-8);
      }),
    );
  });
  test.each([
    [[0, 2500], "#VALUE! waterVolume = 0 ft³: must be above 0"],
    [[1.7, -1], "#VALUE! pressure = -1 psi: must be between 0 psi and 5076.32 psi"],
    [[50, 351, 0, 15, "SI"], "#VALUE! pressure = 351 bar: must be between 0 bar and 350 bar"],
    [[1.7, 2500, -1], "#VALUE! residual = -1 psi: must be 0 or more"],
    [[1.7, 2500, 2600], "#VALUE! residual = 2600 psi: must be at most pressure, 2500 psi"],
    [[1.7, 2500, 0, 200], "#VALUE! temperature = 200 °F: must be between -22 °F and 140 °F"],
    [[50, 200, 0, -273.15, "SI"], "#VALUE! temperature = -273.15 °C: must be between -30 °C and 60 °C"],
    [[1.7, null], "#VALUE! pressure = blank: needs a number (psi)"],
    [[1.7, 2500, 0, 70, "metric"], '#VALUE! units = "metric": must be one of US, SI'],
  ])("%j: %s", (cells, sentence) => {
    expect(refusal("GAS_CYLINDER", ...cells)).toBe(sentence);
  });
  test.each([
    [50, 350, 0, 60],
    [50, 350, 0, -30],
    [50, 0, 0, 60],
  ])("answers at its limits: %d L, %d bar, %d, %d °C", (...cells) => {
    expect(number("GAS_CYLINDER", ...cells, "SI")).toBeGreaterThanOrEqual(0);
  });
  test.each([-22, 140])("answers at its limits: %d °F", (fahrenheit) => {
    expect(number("GAS_CYLINDER", 1.7, 2500, 0, fahrenheit)).toBeGreaterThan(0);
  });
});

describe("GAS_METER", () => {
  test("the scale's own gas reads true", () => {
    ["AR", "N2", "HE", "AIR"].forEach((gas) => {
      expect(number("GAS_METER", 12.5, gas, gas)).toBe(12.5);
    });
  });
  test("a scale omitted is one for air; the word is read as typed", () => {
    expect(number("GAS_METER", 10, " ar ")).toBe(number("GAS_METER", 10, "AR", "AIR"));
  });
  test("there and back", () => {
    const gas = fc.constantFrom("AR", "N2", "HE", "AIR");
    fc.assert(
      fc.property(positive(1e3), gas, gas, (reading, one, other) => {
        const back = number("GAS_METER", number("GAS_METER", reading, one, other), other, one);
        expect(Math.abs(back / reading - 1)).toBeLessThan(1e-12);
      }),
    );
  });
  test.each([
    [[-1, "AR"], "#VALUE! reading = -1: must be 0 or more"],
    [[10, ""], "#VALUE! gas = blank: needs one of AR, N2, HE, AIR"],
    [[10, "CO2"], '#VALUE! gas = "CO2": must be one of AR, N2, HE, AIR'],
    [[10, 2], "#VALUE! gas = 2: must be one of AR, N2, HE, AIR"],
    [[10, "AR", "H2"], '#VALUE! scaleGas = "H2": must be one of AR, N2, HE, AIR'],
    [[null, "AR"], "#VALUE! reading = blank: needs a number"],
  ])("%j: %s", (cells, sentence) => {
    expect(refusal("GAS_METER", ...cells)).toBe(sentence);
  });
});
