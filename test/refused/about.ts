/** Refusals of the formulas about formulas. */

import type { Refused } from "./example";

export const ABOUT: readonly Refused[] = [
  ["=BEAD.ABOUT()", "#VALUE! id = blank: needs a text"],
  ["=BEAD.ABOUT(TRUE)", "#VALUE! id = TRUE: must be a text"],
  [
    '=BEAD.ABOUT("STAND")',
    '#N/A id = "STAND": no formula has this name; did you mean STANDOFF, STANDOFF_SPREAD?',
  ],
  ['=BEAD.ABOUT("WELDER")', '#N/A id = "WELDER": no formula has this name'],
];
