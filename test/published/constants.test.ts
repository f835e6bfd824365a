/** Exact factors of NIST SP 811 and the SI definitions, through the two ways of a conversion. */

import type { Quantity } from "../../src/quantity";
import {
  BORE_PRESSURE,
  CYLINDER_PRESSURE,
  FLOW,
  fromBase,
  HEAT_INPUT,
  LENGTH,
  SPEED,
  TEMPERATURE,
  TEMPERATURE_RISE,
  toBase,
  VOLUME,
} from "../../src/quantity";
import { expectNear, expectPrinted } from "../bead";

const EXACT: [name: string, of: Quantity, us: number, base: number][] = [
  ["1 in = 0.0254 m", LENGTH, 1, 0.0254],
  ["12 in = 1 ft = 0.3048 m", LENGTH, 12, 0.3048],
  ["1 ft³ = 28.316846592 L", VOLUME, 1, 0.028316846592],
  ["1 ft³/h = 28.316846592 L in 3600 s", FLOW, 1, 0.028316846592 / 3600],
  ["1 inH₂O, conventional = 249.08891 Pa", BORE_PRESSURE, 1, 249.08891],
  ["1 psi = 6894.757293168361 Pa", CYLINDER_PRESSURE, 1, 6894.757293168361],
  ["1 in/min = 0.0254 m in 60 s", SPEED, 1, 0.0254 / 60],
  ["1 kJ/in = 1000 J in 0.0254 m", HEAT_INPUT, 1, 1000 / 0.0254],
  ["0 °F = 459.67·5/9 K", TEMPERATURE, 0, (459.67 * 5) / 9],
  ["68 °F = 293.15 K", TEMPERATURE, 68, 293.15],
  ["212 °F = 373.15 K", TEMPERATURE, 212, 373.15],
  ["a rise of 9 °F = 5 K", TEMPERATURE_RISE, 9, 5],
];

test.each(EXACT)("%s", (_, of, us, base) => {
  expectNear(toBase(us, of, "US"), base, 1e-15);
  expectNear(fromBase(base, of, "US") + 1000, us + 1000, 1e-15);
});

const SI: [name: string, of: Quantity, si: number, base: number][] = [
  ["1 mm", LENGTH, 1, 1e-3],
  ["60 mm/min = 1 mm/s", SPEED, 60, 1e-3],
  ["60 L/min = 1 L/s", FLOW, 60, 1e-3],
  ["1 L", VOLUME, 1, 1e-3],
  ["1 mbar = 100 Pa", BORE_PRESSURE, 1, 100],
  ["1 bar = 100 000 Pa", CYLINDER_PRESSURE, 1, 1e5],
  ["1 kJ/mm = 1 MJ/m", HEAT_INPUT, 1, 1e6],
  ["0 °C = 273.15 K", TEMPERATURE, 0, 273.15],
  ["a rise of 1 °C = 1 K", TEMPERATURE_RISE, 1, 1],
];

test.each(SI)("%s", (_, of, si, base) => {
  expectNear(toBase(si, of, "SI"), base, 1e-15);
  expectNear(fromBase(base, of, "SI") + 1000, si + 1000, 1e-15);
});

/** A US value as written in SI. */
const inSI = (us: number, of: Quantity): number => fromBase(toBase(us, of, "US"), of, "SI");

test("printed conversions from one system to the other", () => {
  expectPrinted(inSI(1, FLOW), "0.47194744320");
  expectPrinted(1 / inSI(1, FLOW), "2.1188800033");
  expectPrinted(inSI(1, SPEED) / 60, "0.423333333");
  expectPrinted(toBase(70, TEMPERATURE, "US"), "294.2611");
  expectNear(inSI(25.4, HEAT_INPUT), 1);
  expectPrinted(inSI(1, BORE_PRESSURE), "2.4908891");
  expectPrinted(inSI(1, CYLINDER_PRESSURE), "0.06894757293168");
});
