/** Refusals of the purge. */

import type { Refused } from "./example";

export const PURGE: readonly Refused[] = [
  ["=BEAD.PURGE_VOLUME(0, 12)", "#VALUE! bore = 0 in: must be above 0"],
  ["=BEAD.PURGE_VOLUME(2, 0)", "#VALUE! length = 0 in: must be above 0"],
  ["=BEAD.PURGE_CHANGES(-1)", "#VALUE! ppm = -1 ppm: must be 0 or more"],
  ["=BEAD.PURGE_CHANGES(0)", "#N/A ppm = 0 ppm: cannot be reached; must be above supplyPpm, 0 ppm"],
  ["=BEAD.PURGE_CHANGES(5, 5)", "#N/A ppm = 5 ppm: cannot be reached; must be above supplyPpm, 5 ppm"],
  ["=BEAD.PURGE_CHANGES(5, 8)", "#N/A ppm = 5 ppm: cannot be reached; must be above supplyPpm, 8 ppm"],
  [
    "=BEAD.PURGE_CHANGES(209500)",
    "#VALUE! ppm = 209500 ppm: must be less than the oxygen in air, 209500 ppm",
  ],
  ["=BEAD.PURGE_CHANGES(50, -1)", "#VALUE! supplyPpm = -1 ppm: must be 0 or more"],
  [
    "=BEAD.PURGE_CHANGES(50, 209500)",
    "#VALUE! supplyPpm = 209500 ppm: must be less than the oxygen in air, 209500 ppm",
  ],
  ["=BEAD.PURGE_CHANGES(50, 0, 0)", "#VALUE! cells = 0: must be a whole number from 1 to 1000"],
  ["=BEAD.PURGE_CHANGES(50, 0, 1.5)", "#VALUE! cells = 1.5: must be a whole number from 1 to 1000"],
  [
    "=BEAD.PURGE_CHANGES(50, 0, 2.0000001)",
    "#VALUE! cells = 2.0000001: must be a whole number from 1 to 1000",
  ],
  ["=BEAD.PURGE_CHANGES(50, 0, 1001)", "#VALUE! cells = 1001: must be a whole number from 1 to 1000"],
  ["=BEAD.PURGE_TIME(0, 12, 20)", "#VALUE! bore = 0 in: must be above 0"],
  ["=BEAD.PURGE_TIME(2, 0, 20)", "#VALUE! length = 0 in: must be above 0"],
  ["=BEAD.PURGE_TIME(2, 12, 0)", "#VALUE! flow = 0 ft³/h: must be above 0"],
  ['=BEAD.PURGE_TIME(50, 300, 0, , , , , "SI")', "#VALUE! flow = 0 L/min: must be above 0"],
  ["=BEAD.PURGE_TIME(2, 12, 20, 0)", "#N/A ppm = 0 ppm: cannot be reached; must be above supplyPpm, 0 ppm"],
  ["=BEAD.PURGE_TIME(2, 12, 20, 50, 0, 0)", "#VALUE! cells = 0: must be a whole number from 1 to 1000"],
  ["=BEAD.PURGE_FLOW(0, 12, 20)", "#VALUE! bore = 0 in: must be above 0"],
  ["=BEAD.PURGE_FLOW(2, 0, 20)", "#VALUE! length = 0 in: must be above 0"],
  ["=BEAD.PURGE_FLOW(2, 12, 0)", "#VALUE! seconds = 0 s: must be above 0"],
  [
    "=BEAD.PURGE_FLOW(2, 12, 20, 5, 6)",
    "#N/A ppm = 5 ppm: cannot be reached; must be above supplyPpm, 6 ppm",
  ],
  ["=BEAD.PURGE_OXYGEN(0, 12, 20, 60)", "#VALUE! bore = 0 in: must be above 0"],
  ["=BEAD.PURGE_OXYGEN(2, 0, 20, 60)", "#VALUE! length = 0 in: must be above 0"],
  ["=BEAD.PURGE_OXYGEN(2, 12, 0, 60)", "#VALUE! flow = 0 ft³/h: must be above 0"],
  ["=BEAD.PURGE_OXYGEN(2, 12, 20, -1)", "#VALUE! seconds = -1 s: must be 0 or more"],
  [
    "=BEAD.PURGE_OXYGEN(2, 12, 20, 60, 209500)",
    "#VALUE! supplyPpm = 209500 ppm: must be less than the oxygen in air, 209500 ppm",
  ],
  [
    "=BEAD.PURGE_OXYGEN(2, 12, 20, 60, 0, 1001)",
    "#VALUE! cells = 1001: must be a whole number from 1 to 1000",
  ],
  ["=BEAD.PURGE_LEAK(0, 1)", "#VALUE! flow = 0: must be above 0"],
  ["=BEAD.PURGE_LEAK(10, -1)", "#VALUE! leak = -1: must be 0 or more"],
  [
    "=BEAD.PURGE_VENT(20, 20)",
    "#VALUE! pressure = 20 inH₂O: must be at most 10.0366 inH₂O, where the gas can still be treated as incompressible",
  ],
  [
    '=BEAD.PURGE_VENT(10, 40, , , "SI")',
    "#VALUE! pressure = 40 mbar: must be at most 25 mbar, where the gas can still be treated as incompressible",
  ],
  [
    "=BEAD.PURGE_PRESSURE(20, 0.05)",
    "#VALUE! ventDiameter = 0.05 in: must be at least 0.0963266 in for this flow; below it the pressure exceeds 10.0366 inH₂O, where the gas can no longer be treated as incompressible",
  ],
  [
    '=BEAD.PURGE_PRESSURE(10, 1, , , "SI")',
    "#VALUE! ventDiameter = 1 mm: must be at least 2.51836 mm for this flow; below it the pressure exceeds 25 mbar, where the gas can no longer be treated as incompressible",
  ],
];
