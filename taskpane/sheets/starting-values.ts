/**
 * Starting values as native formulas of a sheet. Speed, bead and overlap stand at the head of most chains, and each of
 * our own formulas in a chain costs Excel about half a second; the tests hold these to TRAVEL_SUGGEST and
 * OVERLAP_SUGGEST. They speak of the rows wall, od, material, alpha, bead, speed and sheet_units.
 *
 * A native formula would reckon on with a wall that cannot be, so the bead and the bore stay empty then, and what needs
 * them waits: an empty cell rather than a number that looks right.
 */

import { DEFAULT_MATERIAL, DESIGNATIONS, MATERIALS } from "../../src/metal/material";

/** Hot diffusivity of the material typed, mm²/s. */
export const DIFFUSIVITY = `SWITCH(${[
  'UPPER(TRIM({material}&""))',
  '""',
  diffusivity(DEFAULT_MATERIAL),
  ...DESIGNATIONS.flatMap((designation) => [`"${designation}"`, diffusivity(designation)]),
].join(",")})`;

/** What the formula gives where outside diameter and wall make a tube, else nothing. */
export function ofTube(formula: string): string {
  return `IF(COUNT({od},{wall})<2,"",IF(AND({wall}>0,2*{wall}<{od}),${formula},""))`;
}

/** Common bead width: 1 mm + 2 × wall. */
export const COMMON_BEAD = 'IF({sheet_units}="SI",1,1/25.4)+2*{wall}';
/** v·b/4α = 0.4, a minute. */
const SPEED = 'IF(COUNT({bead},{alpha})=2,1.6*60*{alpha}/({bead}*IF({sheet_units}="SI",1,25.4^2)),"")';
/** The speed typed, or else the one suggested. */
export const SPEED_OR_TYPED = `IF({speed_typed}="",${SPEED},{speed_typed})`;
/** The speed for a formula that would take a common bead, or none, in the place of an empty one. */
export const SPEED_OF_BEAD = 'IF(ISNUMBER({bead}),{speed},"")';
/** Degrees that cover the bead, up to a multiple of 5. */
export const OVERLAP = 'IF(ISNUMBER({bead}),CEILING(360*{bead}/(PI()*{od}),5),"")';
/** Three bead widths of travel, s. */
export const DOWNSLOPE = 'IF(AND(COUNT({bead},{speed})=2,SUM({speed})>0),3*{bead}/{speed}*60,"")';

function diffusivity(designation: keyof typeof MATERIALS): string {
  return String(Number((MATERIALS[designation].hotDiffusivity.value * 1e6).toPrecision(8)));
}
