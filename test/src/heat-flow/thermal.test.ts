/** The metals' numbers against hand calculations from the equations of their sources. */

import { effectiveMetal, metalNumbers } from "../../../src/heat-flow/effective";
import { DESIGNATIONS, MATERIALS } from "../../../src/metal/material";
import { THERMAL } from "../../../src/metal/thermal";

describe("Kim, ANL-75-55, equations from memory, T in K, 293.15 K to the liquidus", () => {
  // 316L: middle 1008.15 K, θ 1430 K: 9.248 + 0.01571 × 1008.15 = 25.09; at 1723.15 K 36.32; (459.9 + 0.1330 × 1008.15) × 1430 = 849.4 kJ/kg.
  // 304L: middle 1010.65 K, θ 1435 K: 8.116 + 0.01618 × 1010.65 = 24.47; at 1728.15 K 36.08; (469.4 + 0.1348 × 1010.65) × 1435 = 869.1 kJ/kg.
  test.each([
    ["316L", 9.248, 0.01571, 459.9, 0.133, 1723.15],
    ["304L", 8.116, 0.01618, 469.4, 0.1348, 1728.15],
  ] as const)("%s", (metal, k0, k1, c0, c1, liquidus) => {
    const middle = (293.15 + liquidus) / 2;
    const { meanConductivity, liquidusConductivity, sensibleHeat } = THERMAL[metal];
    expect(meanConductivity.value).toBeCloseTo(k0 + k1 * middle, 1);
    expect(liquidusConductivity.value).toBeCloseTo(k0 + k1 * liquidus, 1);
    expect(sensibleHeat.value / 1000).toBeCloseTo(((c0 + c1 * middle) * (liquidus - 293.15)) / 1000, 0);
  });
});

test("carbon steel: the integrals of EN 1993-1-2, 3.4.1, by fine steps, kept beyond 1200 °C", () => {
  const conductivity = (t: number): number => (t < 800 ? 54 - 0.0333 * t : 27.3);
  const capacity = (t: number): number => {
    if (t < 600) return 425 + 0.773 * t - 1.69e-3 * t * t + 2.22e-6 * t ** 3;
    if (t < 735) return 666 + 13002 / (738 - t);
    return t < 900 ? 545 + 17820 / (t - 731) : 650;
  };
  const steps = 149_000;
  let [k, c] = [0, 0];
  for (let i = 0; i < steps; i += 1) {
    const t = 20 + 0.01 * (i + 0.5);
    k += conductivity(t) / steps;
    c += capacity(t) * 0.01;
  }
  expect(THERMAL.CS.meanConductivity.value).toBeCloseTo(k, 1);
  expect(Math.abs(THERMAL.CS.sensibleHeat.value / c - 1)).toBeLessThan(1e-3);
});

test.each(DESIGNATIONS)("%s: in the order that physics asks for", (designation) => {
  const metal = metalNumbers(MATERIALS[designation]);
  const effective = effectiveMetal(metal);
  const conductivity = effective.diffusivity * effective.heatCapacity;
  const [low, high] = [metal.coldConductivity, metal.meanConductivity, metal.liquidusConductivity].sort(
    (a, b) => a - b,
  ) as [number, number];
  expect(conductivity).toBeGreaterThan(0.9 * low);
  expect(conductivity).toBeLessThan(1.5 * high);
  // Room temperature's heat capacity is the smallest of the solid's.
  expect(effective.heatCapacity).toBeGreaterThan(metal.coldHeatCapacity);
  expect(metal.latentHeat).toBeLessThan(metal.sensibleHeat);
});
