/**
 * Starting values as native formulas of a sheet. Speed, bead and overlap stand at the head of most chains, and each of
 * our own formulas in a chain costs Excel about half a second; the tests hold these to TRAVEL_SUGGEST and
 * OVERLAP_SUGGEST. They speak of the rows wall, od, material, alpha, bead and sheet_units.
 */

import { DEFAULT_MATERIAL, DESIGNATIONS, MATERIALS } from "../../src/material";

/** Hot diffusivity of the material typed, mm²/s. */
export const DIFFUSIVITY = `SWITCH(${[
  'UPPER(TRIM({material}&""))',
  '""',
  diffusivity(DEFAULT_MATERIAL),
  ...DESIGNATIONS.flatMap((designation) => [`"${designation}"`, diffusivity(designation)]),
].join(",")})`;

/** Common bead width: 1 mm + 2 × wall. */
export const BEAD = 'IF({sheet_units}="SI",1,1/25.4)+2*{wall}';
/** v·b/4α = 0.4, a minute. */
export const SPEED = '1.6*60*{alpha}/({bead}*IF({sheet_units}="SI",1,25.4^2))';
/** Degrees that cover the bead, up to a multiple of 5. */
export const OVERLAP = "CEILING(360*{bead}/(PI()*{od}),5)";
/** Three bead widths of travel, s. */
export const DOWNSLOPE = "3*{bead}/{speed}*60";

function diffusivity(designation: keyof typeof MATERIALS): string {
  return String(Number((MATERIALS[designation].hotDiffusivity.value * 1e6).toPrecision(8)));
}
