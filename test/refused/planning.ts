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
  [
    "=BEAD.CREW_OUTPUT(4, 180, 260, , , , , 0)",
    "#VALUE! operators = 0: must be a whole number from 1 to 1000",
  ],
  ["=BEAD.CREW_COURSE(21, 180, 260)", "#VALUE! heads = 21: must be a whole number from 1 to 20"],
  ["=BEAD.CREW_COURSE(2, 180, 260, , 9)", "#VALUE! hours = 9 h: must be at most 8 h"],
  [
    "=BEAD.SETUP_COUNT({40,1,0.065;10,1,0.6})",
    "#VALUE! joints = row 2: is no joint: wall = 0.6 in: must be less than half of od, 0.5 in",
  ],
  [
    '=BEAD.SETUP_COUNT({40,1,0.065;"ten",1,0.065})',
    '#VALUE! joints = row 2: is no joint: quantity = "ten": must be a number',
  ],
  ["=BEAD.LEARN_TIME(0, 4, 0.8)", "#VALUE! first = 0: must be above 0"],
  ["=BEAD.LEARN_TIME(100, 0, 0.8)", "#VALUE! n = 0: must be a whole number from 1 to 1000000000"],
  ["=BEAD.LEARN_TIME(100, 4, 0.5)", "#VALUE! rate = 0.5: must be above 0.5 and at most 1"],
  ["=BEAD.LEARN_TIME(100, 4, 80)", "#VALUE! rate = 80: must be above 0.5 and at most 1"],
  ['=BEAD.LEARN_TIME(100, 4, 0.8, "wright")', '#VALUE! model = "wright": must be one of average, unit'],
  ["=BEAD.LEARN_TOTAL(100, 5, 3, 0.8)", "#VALUE! to = 3: must be at least from, 5"],
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
  ["=BEAD.TAKEOFF({8,1,0.065}, , , , , , , , , -60)", "#VALUE! purgeAtLeast = -60 s: must be 0 or more"],
  ["=BEAD.TAKEOFF({8,1,0.065}, , , , , , , , , , 1.5)", "#VALUE! purgeWaited = 1.5: must be between 0 and 1"],
  [
    "=BEAD.TAKEOFF_SIZES({8,1,0.065}, , , , , , , , , , , 2)",
    "#VALUE! purgeWaited = 2: must be between 0 and 1",
  ],
  [
    "=BEAD.TAKEOFF_SIZES()",
    "#VALUE! joints = blank: needs rows of quantity, od, wall and, if you like, material",
  ],
  ["=BEAD.TAKEOFF_SIZES({8,1,0.065}, -1)", "#VALUE! handlingSeconds = -1 s: must be 0 or more"],
  [
    "=BEAD.TAKEOFF_SIZES({8,1,0.065}, , , , , , , , , 0)",
    "#VALUE! most = 0: must be a whole number from 1 to 200000",
  ],
];
