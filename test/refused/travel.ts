/** Refusals of travel and overlap. */

import type { Refused } from "./example";

export const TRAVEL: readonly Refused[] = [
  ["=BEAD.TRAVEL_SPEED(0, 1)", "#VALUE! od = 0 in: must be above 0"],
  ["=BEAD.TRAVEL_SPEED(1, 0)", "#VALUE! rpm = 0 rpm: must be above 0"],
  ["=BEAD.TRAVEL_RPM(0, 5)", "#VALUE! od = 0 in: must be above 0"],
  ['=BEAD.TRAVEL_RPM(25.4, 0, "SI")', "#VALUE! speed = 0 mm/min: must be above 0"],
  ["=BEAD.TRAVEL_TIME(0, 5)", "#VALUE! od = 0 in: must be above 0"],
  ["=BEAD.TRAVEL_TIME(1, 0)", "#VALUE! speed = 0 in/min: must be above 0"],
  ["=BEAD.TRAVEL_TIME(1, 5, -1)", "#VALUE! overlap = -1°: must be 0 or more"],
  ["=BEAD.TRAVEL_SUGGEST(0)", "#VALUE! wall = 0 in: must be above 0"],
  ["=BEAD.TRAVEL_SUGGEST(0.065, 0)", "#VALUE! beadWidth = 0 in: must be above 0"],
  ["=BEAD.OVERLAP_SUGGEST(0, 0.065)", "#VALUE! od = 0 in: must be above 0"],
  ["=BEAD.OVERLAP_SUGGEST(1, 0)", "#VALUE! wall = 0 in: must be above 0"],
  ["=BEAD.OVERLAP_SUGGEST(1, 0.5)", "#VALUE! wall = 0.5 in: must be less than half of od, 0.5 in"],
  ["=BEAD.OVERLAP_SUGGEST(1, 0.065, 0)", "#VALUE! beadWidth = 0 in: must be above 0"],
  [
    "=BEAD.OVERLAP_SUGGEST(1, 0.065, 4)",
    "#VALUE! beadWidth = 4 in: must be at most the circumference, 3.14159 in",
  ],
  // π·0.3 mm = 0.942478 mm; 1 mm + 2·0.1 mm = 1.2 mm.
  [
    '=BEAD.OVERLAP_SUGGEST(0.3, 0.1, , "SI")',
    "#N/A od = 0.3 mm: the default bead, 1.2 mm, is wider than the circumference",
  ],
];
