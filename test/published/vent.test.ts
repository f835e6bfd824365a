/** Flow through holes, pipes and float meters against worked examples. */

import { reynolds } from "../../src/purge/bore-flow";
import type { Gas } from "../../src/gas/gas";
import { meterFlow } from "../../src/gas/gas-supply";
import { MAX_VENT_PRESSURE, orificeDiameter, orificePressure } from "../../src/purge/vent";
import { expectPrinted, number } from "../bead";
import { BY_HAND, INDEPENDENT, PUBLISHED, REFERENCE_LIBRARY, evidence } from "../evidence";
import { ANY_FLOW, FLOW, LENGTH, si } from "../../src/quantity";

/** Invented to hold a density and viscosity that a worked example gives. */
function fluid(density: number, viscosity: number): Gas {
  const given = (value: number): Gas["density"] => ({ value, standing: "published", source: "the example" });
  return { density: given(density), viscosity: given(viscosity) };
}

/** In a pipe the flow already moves before the hole: its diameter counts as 1/√(1 − β⁴) times the discharge. */
function approach(hole: number, pipe: number): number {
  return 1 / Math.sqrt(1 - (hole / pipe) ** 4);
}

/** Flow that a pressure drives through a hole: sought on the function under test, by halving. */
function flowAt(pressure: number, diameter: number, density: number, discharge: number): number {
  let [low, high] = [0, 10];
  for (let step = 0; step < 100; step += 1) {
    const flow = (low + high) / 2;
    if (orificePressure(flow, diameter, density, discharge) > pressure) high = flow;
    else low = flow;
  }
  return low;
}

describe("sharp-edged orifices in a pipe", () => {
  const geankoplis = flowAt(93_200, 0.0566, 878, 0.61 * approach(0.0566, 0.1541));
  const methanol = (13_600 - 788.4) * 9.81 * 0.11;
  const cengel = flowAt(methanol, 0.03, 788.4, 0.61 * approach(0.03, 0.04));

  describe(evidence("PURGE_VENT PURGE_PRESSURE", PUBLISHED, "geankoplis-transport", "example 3.2-2"), () => {
    test("0.02257 m³/s, 8.970 m/s", () => {
      expectPrinted(geankoplis, "0.02257");
      expectPrinted(geankoplis / ((Math.PI / 4) * 0.0566 ** 2), "8.970");
    });
    test("the diameter of a hole is found back from its pressure", () => {
      expectPrinted(orificeDiameter(geankoplis, 93_200, 878, 0.61 * approach(0.0566, 0.1541)), "0.0566");
    });
  });
  describe(evidence("PURGE_REYNOLDS", PUBLISHED, "geankoplis-transport", "example 3.2-2"), () => {
    test("Reynolds number 1.0872e5 at the hole", () => {
      expectPrinted(reynolds(si(0.0566, LENGTH), si(geankoplis, FLOW), fluid(878, 0.0041)) / 1e5, "1.0872");
    });
  });
  describe(evidence("PURGE_PRESSURE", PUBLISHED, "cengel-cimbala", "example 8-10"), () => {
    test("methanol: 0.00309 m³/s, 2.46 m/s", () => {
      expectPrinted(cengel, "0.00309");
      expectPrinted(cengel / ((Math.PI / 4) * 0.04 ** 2), "2.46");
    });
  });
  describe(evidence("PURGE_PRESSURE", PUBLISHED, "krishnaswamy-fluid", "example 5.2"), () => {
    test("4.265 m³/h", () => {
      const pressure = 1000 * 9.8 * 12.6 * 0.15;
      expectPrinted(flowAt(pressure, 0.02, 1000, 0.5999 * approach(0.02, 0.04)) * 3600, "4.265");
    });
  });
  describe(evidence("PURGE_PRESSURE", PUBLISHED, "abulencia-theodore", "example 19.7"), () => {
    test("air: 509.80 Pa, 35.27 m/s", () => {
      expectPrinted(orificePressure(1, 0.19, 1.23, approach(0.19, 0.25)), "509.80");
      expectPrinted(1 / ((Math.PI / 4) * 0.19 ** 2), "35.27");
    });
  });
  describe(evidence("PURGE_PRESSURE", REFERENCE_LIBRARY, "fluids-1.3.1", "a meter of [iso-5167-2]"), () => {
    test("50 mm in 73.66 mm, 200 to 183 kPa: 7.702338 kg/s", () => {
      // Discharge coefficient (D and D/2 taps) and expansibility (κ 1.33) are the standard's own equations.
      const [pipe, hole, density, viscosity] = [0.07366, 0.05, 999.1, 0.0011];
      const coefficient = dischargeIso5167(pipe, hole, (4 * 7.702338) / (Math.PI * pipe * viscosity));
      const expansion = expansibility(hole / pipe, 200e3, 183e3, 1.33);
      const flow = flowAt(17_000, hole, density, coefficient * expansion * approach(hole, pipe));
      expectPrinted(flow * density, "7.702338");
    });
  });
  test("the discharge of ISO 5167 gives the printed 0.5990326 for 22.2 mm in 73.91 mm with flange taps", () => {
    const reynoldsNumber = (4 * 0.12) / (Math.PI * 0.07391 * 18.5e-6);
    const taps = 0.0254 / 0.07391;
    expectPrinted(dischargeIso5167(0.07391, 0.0222, reynoldsNumber, taps, taps), "0.5990326");
  });
});

/** Reader-Harris/Gallagher equation, ISO 5167-2 (from memory, proven by the printed value above). */
function dischargeIso5167(pipe: number, hole: number, reynoldsNumber: number, l1 = 1, l2 = 0.47): number {
  const beta = hole / pipe;
  const a = ((19_000 * beta) / reynoldsNumber) ** 0.8;
  const m2 = (2 * l2) / (1 - beta);
  const b4 = beta ** 4 / (1 - beta ** 4);
  return (
    0.5961 +
    0.0261 * beta ** 2 -
    0.216 * beta ** 8 +
    0.000521 * ((1e6 * beta) / reynoldsNumber) ** 0.7 +
    (0.0188 + 0.0063 * a) * beta ** 3.5 * (1e6 / reynoldsNumber) ** 0.3 +
    (0.043 + 0.08 * Math.exp(-10 * l1) - 0.123 * Math.exp(-7 * l1)) * (1 - 0.11 * a) * b4 -
    0.031 * (m2 - 0.8 * m2 ** 1.1) * beta ** 1.3
  );
}

/** Expansion of a gas through an orifice, ISO 5167-2. */
function expansibility(beta: number, upstream: number, downstream: number, isentropic: number): number {
  const geometry = 0.351 + 0.256 * beta ** 4 + 0.93 * beta ** 8;
  return 1 - geometry * (1 - (downstream / upstream) ** (1 / isentropic));
}

describe("a gas can be treated as incompressible up to the pressure that the vent equation is offered for", () => {
  test("expansibility of ISO 5167-2: 0.9974739 at 22.2 in 73.9 mm, 100 to 99 kPa", () => {
    expectPrinted(expansibility(22.2 / 73.9, 1e5, 9.9e4, 1.4), "0.9974739");
  });
  describe(
    evidence(
      "PURGE_VENT PURGE_PRESSURE",
      INDEPENDENT,
      "expansibility of [iso-5167-2]: less than 0.7 % of flow up to the maximum pressure",
    ),
    () => {
      test.each([
        ["argon or helium", 5 / 3],
        ["air or nitrogen", 1.4],
      ])("%s at 25 mbar", (_, isentropic) => {
        const ratio = expansibility(0, 101_325 + MAX_VENT_PRESSURE, 101_325, isentropic);
        expect(1 - ratio).toBeGreaterThan(0.004);
        expect(1 - ratio).toBeLessThan(0.007);
      });
    },
  );
});

describe(
  evidence("PURGE_VENT PURGE_PRESSURE", BY_HAND, "Q = Cd·π/4·d²·√(2Δp/ρ) with argon at 1.66182 kg/m³"),
  () => {
    test("10 L/min at 1 mbar: √(200/1.66182) = 10.97041 m/s, ÷ 0.61 → 24.9053 mm², 5.6312 mm", () => {
      expectPrinted(number("PURGE_VENT", 10, 1, "AR", 0.61, "SI"), "5.6312");
    });
    test("10 L/min through 5.6312 mm holds 1 mbar", () => {
      expectPrinted(number("PURGE_PRESSURE", 10, 5.6312, "AR", 0.61, "SI"), "1.0000");
    });
  },
);

describe(evidence("PURGE_REYNOLDS", BY_HAND, "4ρQ/(πμd) of argon at 20 °C"), () => {
  test.each([
    [10, 47.5, "332.826"],
    [10, 22.1, "715.35"],
    [5, 10.2, "774.96"],
    [20, 6, "5269.75"],
  ])("%d L/min in %d mm: %s", (flow, bore, printed) => {
    expectPrinted(number("PURGE_REYNOLDS", bore, flow, "AR", "SI"), printed);
  });
});

describe(evidence("PURGE_LAMINAR", BY_HAND, "2000·πμd/(4ρ) of argon at 20 °C"), () => {
  // 2000·π·22.3065e-6·0.0475/(4·1.66182) = 1.001521e-3 m³/s; the bore of 10.2 mm in proportion.
  test.each([
    [47.5, "60.091"],
    [10.2, "12.904"],
  ])("Re 2000 in %d mm: %s L/min", (bore, printed) => {
    expectPrinted(number("PURGE_LAMINAR", bore, "AR", "SI"), printed);
  });
});

describe("float meters on another gas", () => {
  describe(evidence("GAS_METER", PUBLISHED, "de-nevers", "example 5.11"), () => {
    test("nitrogen scale at 100 on helium: 264.6", () => {
      expectPrinted(meterFlow(si(100, ANY_FLOW), fluid(4, 1), fluid(28, 1)), "264.6");
    });
    test("the same with real densities: the book's molar masses 28 and 4 are 0.03 % off their ratio", () => {
      expect(Math.abs(number("GAS_METER", 100, "HE", "N2") / 264.575 - 1)).toBeLessThan(0.0004);
    });
  });
  describe(evidence("GAS_METER", BY_HAND, "√ of the ratio of molar masses, within 0.07 %"), () => {
    test.each([
      ["AR", "AIR", 28.9647, 39.948],
      ["AR", "N2", 28.0134, 39.948],
      ["HE", "AR", 39.948, 4.0026],
    ])("%s through a scale for %s", (gas, scale, scaleMass, gasMass) => {
      // Gases at 1 atm keep to the ideal law within 0.07 %.
      const ideal = Math.sqrt(scaleMass / gasMass);
      expect(Math.abs(number("GAS_METER", 1, gas, scale) / ideal - 1)).toBeLessThan(0.0007);
    });
  });
});

describe(
  evidence("GAS_METER", BY_HAND, "ratio of the densities of argon and air at 20 °C by [coolprop-8.0.0]"),
  () => {
    test("argon is 38 % heavier than air (common practice), 1.379585 times", () => {
      expect(Math.abs(number("GAS_METER", 1, "AIR", "AR") ** 2 - 1.379585)).toBeLessThan(1e-5);
    });
  },
);

describe(evidence("PURGE_REYNOLDS", BY_HAND, "densities of an ideal gas, p·M/(R·T), within 0.1 %"), () => {
  test("argon, nitrogen, helium and air: 101 325·M/(8.314462618·293.15)", () => {
    const ideal = (molarMass: number): number => (101_325 * molarMass) / (8.314_462_618 * 293.15) / 1000;
    // 4ρQ/(πμd): the density of each gas shows in its Reynolds number against its viscosity (µPa·s, CoolProp 8.0.0).
    const gases: [string, number, number][] = [
      ["AR", 39.948, 22.3065],
      ["N2", 28.0134, 17.57],
      ["HE", 4.0026, 19.6],
      ["AIR", 28.9647, 18.2057],
    ];
    gases.forEach(([gas, molarMass, viscosity]) => {
      const expected = (4 * ideal(molarMass) * (10 / 60_000)) / (Math.PI * viscosity * 1e-6 * 0.05);
      expect(Math.abs(number("PURGE_REYNOLDS", 50, 10, gas, "SI") / expected - 1)).toBeLessThan(0.001);
    });
  });
});
