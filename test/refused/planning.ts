/** Refusals of cycle, crew and take-off. */

import type { Refused } from "./example";

export const PLANNING: readonly Refused[] = [
  ["=BEAD.CYCLE_TIME(0, 5)", "#VALUE! od = 0 in: must be above 0"],
  ["=BEAD.CYCLE_TIME(1, 0)", "#VALUE! speed = 0 in/min: must be above 0"],
  ["=BEAD.CYCLE_TIME(1, 5, -1)", "#VALUE! prepurge = -1 s: must be 0 or more"],
  ["=BEAD.CYCLE_TIME(1, 5, , -1)", "#VALUE! dwell = -1 s: must be 0 or more"],
  ["=BEAD.CYCLE_TIME(1, 5, , , -1)", "#VALUE! overlap = -1°: must be 0 or more"],
  ["=BEAD.CYCLE_TIME(1, 5, , , , -1)", "#VALUE! downslope = -1 s: must be 0 or more"],
  ["=BEAD.CYCLE_PHASES(1, 5, , , , , -1)", "#VALUE! postpurge = -1 s: must be 0 or more"],
  ["=BEAD.CYCLE_PHASES(1, 5, , , , , , -1)", "#VALUE! handling = -1 s: must be 0 or more"],
  [
    "=BEAD.CREW_HEADS(0, 900)",
    "#N/A loadSeconds = 0 s: must be above 0 when walkSeconds is 0; heads that need no operator have no limit",
  ],
  ["=BEAD.TAKEOFF()", "#VALUE! joints = blank: needs rows of quantity, od, wall and, if you like, material"],
  [
    "=BEAD.TAKEOFF({1,1})",
    "#VALUE! joints = 2 columns: must be 3 or 4 columns: quantity, od, wall and, if you like, material",
  ],
  [
    "=BEAD.TAKEOFF({1})",
    "#VALUE! joints = 1 column: must be 3 or 4 columns: quantity, od, wall and, if you like, material",
  ],
  ["=BEAD.TAKEOFF({8,1,0.065}, -1)", "#VALUE! handlingSeconds = -1 s: must be 0 or more"],
];
