/** The metals' numbers against hand calculations from the equations of their sources. */

import { effectiveMetal, metalNumbers, ROOM } from "../../../src/heat-flow/effective";
import { DESIGNATIONS, MATERIALS } from "../../../src/metal/material";
import { THERMAL } from "../../../src/metal/thermal";

test("heats and conductivities are counted from 20 °C", () => {
  expect(ROOM - 273.15).toBeCloseTo(20, 9);
});

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

type Row = readonly [at: number, value: number];

/** ∫ between two temperatures of what the rows give by straight lines, the last line carried on. */
function integral(rows: readonly Row[], from: number, to: number): number {
  let sum = 0;
  for (const [i, [x1, y1]] of rows.slice(0, -1).entries()) {
    const [x2, y2] = rows[i + 1] ?? [NaN, NaN];
    const [low, high] = [i === 0 ? from : Math.max(x1, from), i === rows.length - 2 ? to : Math.min(x2, to)];
    if (high > low) sum += (y1 + ((y2 - y1) * ((low + high) / 2 - x1)) / (x2 - x1)) * (high - low);
  }
  return sum;
}

/** The rest of the table, worked out again from what stands beside each number there. From memory but for the sheets. */
describe("the metals' numbers from the rows and equations of their sources", () => {
  const START = 293.15;
  /** A value rounded, or read from a table by straight lines: within half a percent. */
  const expectRead = (told: number, found: number): void => {
    expect(Math.abs(told / found - 1)).toBeLessThan(0.005);
  };

  test("304L and 316L: Kim, ANL-75-55, density at 298.15 K", () => {
    const density = (...[a, b, c]: readonly [number, number, number]): number =>
      a - b * 298.15 - c * 298.15 ** 2;
    expectRead(THERMAL["304L"].density.value, density(7984.1, 0.26506, 1.158e-4));
    expectRead(THERMAL["316L"].density.value, density(8084.2, 0.42086, 3.8942e-5));
  });

  test("heats of fusion: 304L by Kim, 2205 the same; iron 13.81 kJ/mol over 55.845 g/mol (NIST-JANAF)", () => {
    expect(THERMAL["304L"].latentHeat.value).toBe(265e3);
    expect(THERMAL["2205"].latentHeat.value).toBe(THERMAL["304L"].latentHeat.value);
    expectRead(THERMAL.CS.latentHeat.value, 13.81e6 / 55.845);
  });

  test("2205: EN 1993-1-2 Annex C from 20 to 1440 °C, 7.8 kg/dm³ (EN 10088-1)", () => {
    const { meanConductivity, liquidusConductivity, sensibleHeat, density } = THERMAL["2205"];
    expect(meanConductivity.value).toBeCloseTo(14.6 + 0.0127 * 730, 2);
    expect(liquidusConductivity.value).toBeCloseTo(14.6 + 0.0127 * 1440, 2);
    const heat = (t: number): number => 450 * t + 0.14 * t ** 2 - 0.97e-4 * t ** 3 + 0.335e-7 * t ** 4;
    expect(sensibleHeat.value / 1000).toBeCloseTo((heat(1440) - heat(20)) / 1000, 1);
    expect(density.value).toBe(7800);
  });

  test("carbon steel: EN 1993-1-2, 27.3 W/mK from 800 °C on and 7850 kg/m³", () => {
    expect([THERMAL.CS.liquidusConductivity.value, THERMAL.CS.density.value]).toEqual([27.3, 7850]);
  });

  test("titanium: Incropera & DeWitt, Table A.1, and 4.17 and 14.15 kJ/mol (NIST-JANAF)", () => {
    const { liquidusConductivity, sensibleHeat, latentHeat, density } = THERMAL["TI-2"];
    expectRead(liquidusConductivity.value, 24.5 + ((24.5 - 22) / 300) * (1943 - 1500));
    const capacity: Row[] = [
      [300, 522],
      [400, 551],
      [600, 591],
      [800, 633],
      [1000, 675],
      [1200, 620],
      [1500, 686],
    ];
    expectRead(sensibleHeat.value, integral(capacity, START, 1943) + 4.17e6 / 47.867);
    expectRead(latentHeat.value, 14.15e6 / 47.867);
    expect(density.value).toBe(4510);
  });

  test("Ti-6Al-4V: Mills 2002, alpha to 995 °C and beta from there, 48 kJ/kg between; Brooks 2003, 295 J/g", () => {
    const { meanConductivity, liquidusConductivity, sensibleHeat, latentHeat, density } = THERMAL["TI-6-4"];
    const at = [25, 100, 200, 300, 400, 500, 600, 700, 800, 900, 995];
    const beyond = [995, 1100, 1200, 1300, 1400, 1500, 1600, 1650];
    const rows = (temperatures: readonly number[], values: readonly number[]): Row[] =>
      temperatures.map((t, i) => [t, values[i] ?? NaN]);
    const over = (alpha: readonly number[], beta: readonly number[]): number =>
      integral(rows(at, alpha), 20, 995) + integral(rows(beyond, beta), 995, 1650);
    const conductivity = over(
      [7.0, 7.45, 8.75, 10.15, 11.35, 12.6, 14.2, 15.5, 17.8, 20.2, 22.7],
      [19.3, 21.0, 22.9, 23.7, 24.6, 25.8, 27.0, 28.4],
    );
    const heat = over(
      [546, 562, 584, 606, 629, 651, 673, 694, 714, 734, 753],
      [641, 660, 678, 696, 714, 732, 750, 759],
    );
    expect(meanConductivity.value).toBeCloseTo(conductivity / 1630, 2);
    expect(liquidusConductivity.value).toBe(28.4);
    expect(sensibleHeat.value / 1000).toBeCloseTo(heat / 1000 + 48, 0);
    expect([latentHeat.value, density.value]).toEqual([295e3, 4420]);
  });

  test("625: its sheet from 21 to 982 °C, the slope from 760 °C on carried to 1350 °C; cp by Capriccioli & Frosi", () => {
    const { meanConductivity, liquidusConductivity, sensibleHeat, density } = THERMAL["625"];
    const sheet: Row[] = [
      [21, 9.8],
      [38, 10.1],
      [93, 10.8],
      [204, 12.5],
      [316, 14.1],
      [427, 15.7],
      [538, 17.5],
      [649, 19.0],
      [760, 20.8],
      [871, 22.8],
      [982, 25.2],
    ];
    const last = 25.2 + ((25.2 - 20.8) / (982 - 760)) * (1350 - 982);
    expectRead(meanConductivity.value, integral([...sheet, [1350, last]], 20, 1350) / 1330);
    expectRead(liquidusConductivity.value, last);
    const middle = (START + 1623.15) / 2;
    expectRead(sensibleHeat.value, (338.39 + 0.2441 * middle) * 1330);
    expect(density.value).toBe(8440);
  });

  // A straight line through the values at 25 and 927 °C: its mean is that of the middle between 20 °C and the liquidus.
  test.each([
    ["C-276", 1371, 427, 580, 8890],
    ["C70600", 1150, 377, 491, 8940],
  ] as const)("%s: straight lines from 25 to 927 °C", (designation, liquidus, cold, hot, kilograms) => {
    const { coldConductivity, hotConductivity } = MATERIALS[designation];
    const line = (at25: number, at927: number, celsius: number): number =>
      at25 + ((at927 - at25) * (celsius - 25)) / (927 - 25);
    const k = (celsius: number): number => line(coldConductivity.value, hotConductivity.value, celsius);
    const { meanConductivity, liquidusConductivity, sensibleHeat, density } = THERMAL[designation];
    expectRead(meanConductivity.value, k((20 + liquidus) / 2));
    expectRead(liquidusConductivity.value, k(liquidus));
    expectRead(sensibleHeat.value, line(cold, hot, (20 + liquidus) / 2) * (liquidus - 20));
    expect(density.value).toBe(kilograms);
  });

  test("copper: Incropera & DeWitt, Table A.1, carried from 1200 to 1356 K; 48.9 cal/g and 8.94 kg/dm³", () => {
    const { meanConductivity, liquidusConductivity, sensibleHeat, latentHeat, density } = THERMAL.C12200;
    expect(meanConductivity.value).toBe(MATERIALS.C12200.coldConductivity.value);
    expectRead(liquidusConductivity.value, 339 - ((352 - 339) / 200) * (1356 - 1200));
    const capacity: Row[] = [
      [200, 356],
      [300, 385],
      [400, 397],
      [600, 417],
      [800, 433],
      [1000, 451],
      [1200, 480],
    ];
    expectRead(sensibleHeat.value, integral(capacity, START, 1356));
    expectRead(latentHeat.value, 48.9e3 * 4.184);
    expect(density.value).toBe(8940);
  });

  test("copper-nickel: heats of fusion of copper and nickel, 206.8 and 298 kJ/kg, by their shares of 90 and 10 %", () => {
    expectRead(THERMAL.C70600.latentHeat.value, 0.9 * 206.8e3 + 0.1 * 298e3);
  });
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
