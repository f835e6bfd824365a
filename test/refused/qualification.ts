/** Refusals of coverage. */

import type { Refused } from "./example";

export const QUALIFICATION: readonly Refused[] = [
  ["=BEAD.COVER_WALL(0)", "#VALUE! couponWall = 0 in: must be above 0"],
  [
    "=BEAD.COVER_WALL(1.65)",
    '#VALUE! couponWall = 1.65 in: no tube of this trade has such a wall (maximum 1 in); for millimeters give "SI"',
  ],
  [
    '=BEAD.COVER_WALL(0.065, "AWS D18.1")',
    '#VALUE! rule = "AWS D18.1": must be one of ASME IX, ISO 15614-1, ISO 9606-1',
  ],
  ["=BEAD.COVER_OD(-1)", "#VALUE! couponOd = -1 in: must be above 0"],
  ['=BEAD.COVER_OD(2, "ISO 15614-1")', '#VALUE! rule = "ISO 15614-1": must be one of ASME IX, ISO 9606-1'],
  ["=BEAD.COVER_HEAT(0)", "#VALUE! couponHeat = 0 kJ/in: must be above 0"],
];
