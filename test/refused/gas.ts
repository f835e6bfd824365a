/** Refusals of gas supply. */

import type { Refused } from "./example";

export const GAS: readonly Refused[] = [
  [
    '=BEAD.GAS_CYLINDER(50, 200, 201, 15, "SI")',
    "#VALUE! residual = 201 bar: must be at most pressure, 200 bar",
  ],
  [
    '=BEAD.GAS_CYLINDER(50, 400, 0, 15, "SI")',
    "#VALUE! pressure = 400 bar: must be between 0 bar and 350 bar",
  ],
  [
    '=BEAD.GAS_CYLINDER(50, 200, 0, -274, "SI")',
    "#VALUE! temperature = -274 °C: must be between -30 °C and 60 °C",
  ],
  ["=BEAD.GAS_METER(10)", "#VALUE! gas = blank: needs one of AR, N2, HE, AIR"],
  ['=BEAD.GAS_METER(10, "XE")', '#VALUE! gas = "XE": must be one of AR, N2, HE, AIR'],
];
