/** Refusals of mill certificates. */

import type { Refused } from "./example";

export const METAL: readonly Refused[] = [
  ["=BEAD.MILL_RATIO(0, 10)", "#VALUE! cr = 0 %: must be above 0"],
  ["=BEAD.MILL_RATIO(17, 0)", "#VALUE! ni = 0 %: must be above 0"],
  ["=BEAD.MILL_RATIO(17, 10, -1)", "#VALUE! mo = -1 %: must be 0 or more"],
  [
    "=BEAD.MILL_RATIO(17, 10, 2, 1, 0.5, 150)",
    "#VALUE! c = 150 %: is too much: the elements sum to more than 100 %; ppm are divided by 10000",
  ],
  [
    '=BEAD.MILL_RATIO(17, 10, , , , , , , , "DeLong")',
    '#VALUE! method = "DeLong": must be one of WRC-1992, Schaeffler, Hammar-Svensson',
  ],
  ["=BEAD.MILL_SULFUR(0, 0.01)", "#VALUE! sulfur = 0 %: must be above 0"],
  ["=BEAD.MILL_SULFUR(0.01, 120)", "#VALUE! otherSulfur = 120 %: must be at most 0.1 %"],
];
