/** Refusals that are said in an answer, not in place of one. */

import type { Refused } from "./example";

/** What is said in an answer: TAKEOFF's remark on its first line, REASON's text. */
export const REMARKED: readonly Refused[] = [
  [
    '=BEAD.TAKEOFF({"1,5",1,0.065})',
    "quantity: contains a comma (decimal or thousands separator?); type 1.5 or 1500",
  ],
  [
    '=BEAD.TAKEOFF({8,1,"1,651"})',
    "wall: contains a comma (decimal or thousands separator?); type 1.5 or 1500",
  ],
  [
    "=BEAD.TAKEOFF({8,500,0.065})",
    'od: no tube of this trade has such an outside diameter (maximum 20 in); for millimeters give "SI"',
  ],
  [
    "=BEAD.TAKEOFF({8,2,1.65})",
    'wall: no tube of this trade has such a wall (maximum 1 in); for millimeters give "SI"',
  ],
  [
    "=BEAD.TAKEOFF({8,12.7,0.049})",
    "wall: no tube of this trade has so thin a wall for its od (maximum 200 walls); check the units of both",
  ],
  ["=BEAD.TAKEOFF({8.5,1,0.065})", "quantity: must be a whole number from 1 to 1000000000"],
  [
    '=BEAD.TAKEOFF({8,1,0.065,"brass"})',
    "material: must be one of 304L, 316L, 2205, CS, TI-2, TI-6-4, 625, C-276, C12200, C70600",
  ],
  ['=BEAD.TAKEOFF({8,1,"about 0.065"})', "wall: must be a number or a size such as 1.5, 1-1/2 or 38.1 mm"],
  [
    '=BEAD.TAKEOFF({8,1,"sch 10S"})',
    "wall: is a schedule of pipe; write the size beside it as NPS 1-1/2, or the wall itself",
  ],
  ["=BEAD.SIZE_TABLE({1,0})", "wall: must be above 0"],
  ['=BEAD.LOG_CHECK({60,66,9,5,20,2,0,0,0,""}, 0.05)', "amps: must be within 5 % of 60 A"],
  ['=BEAD.LOG_CHECK({60,60,9,5,90,2,0,0,0,""}, , , , , , , , 50)', "ppm: must be at most 50 ppm"],
  ['=BEAD.LOG_CHECK({60,60,9,5,20,2,-1,0,0,""})', "concavity: must be at least 0 in"],
  ['=BEAD.LOG_CHECK({60,60,9,5,20,11,0,0,0,""})', "color: must be a whole number from 1 to 10"],
  ['=BEAD.REASON("STANDOFF", -0.065)', "wall = -0.065 in: must be above 0"],
  ['=BEAD.REASON("STANDOFF", 1, 2, "US", 4)', "STANDOFF takes 3 arguments, not 4"],
  ['=BEAD.REASON("ABOUT", "STANDOFF", 2)', "ABOUT takes 1 argument, not 2"],
];
