/** Refusals of the gap and the electrode. */

import type { Refused } from "./example";

export const GAP: readonly Refused[] = [
  ["=BEAD.STANDOFF(0)", "#VALUE! wall = 0 in: must be above 0"],
  ["=BEAD.STANDOFF(-0.065)", "#VALUE! wall = -0.065 in: must be above 0"],
  ['=BEAD.STANDOFF(-1.651, , "SI")', "#VALUE! wall = -1.651 mm: must be above 0"],
  ["=BEAD.STANDOFF(0.065, -0.001)", "#VALUE! allowance = -0.001 in: must be 0 or more"],
  ["=BEAD.STANDOFF_SPREAD(0, 0.005)", "#VALUE! standoff = 0 in: must be above 0"],
  ["=BEAD.STANDOFF_SPREAD(0.04, -0.005)", "#VALUE! odTolerance = -0.005 in: must be 0 or more"],
  ["=BEAD.STANDOFF_SPREAD(0.04, 0.005, -0.001)", "#VALUE! runout = -0.001 in: must be 0 or more"],
  [
    "=BEAD.STANDOFF_SPREAD(0.04, 0.06, 0.02)",
    "#VALUE! standoff = 0.04 in: the electrode could touch the tube; must be above odTolerance/2 + runout/2, 0.04 in",
  ],
  [
    '=BEAD.STANDOFF_SPREAD(1, 1.5, 1, "SI")',
    "#VALUE! standoff = 1 mm: the electrode could touch the tube; must be above odTolerance/2 + runout/2, 1.25 mm",
  ],
  ["=BEAD.FEELER_STACK(0)", "#VALUE! gap = 0 in: must be above 0"],
  ['=BEAD.FEELER_STACK(10.001, , , "SI")', "#VALUE! gap = 10.001 mm: must be at most 10 mm"],
  ['=BEAD.FEELER_STACK(1, , -0.01, "SI")', "#VALUE! tolerance = -0.01 mm: must be between 0 mm and 1 mm"],
  ['=BEAD.FEELER_STACK(1, , 1.01, "SI")', "#VALUE! tolerance = 1.01 mm: must be between 0 mm and 1 mm"],
  ['=BEAD.FEELER_STACK(1, {0.5,0}, , "SI")', "#VALUE! leaves = 0 mm: must be above 0"],
  ['=BEAD.FEELER_STACK(1, {0.5;-0.1}, , "SI")', "#VALUE! leaves = -0.1 mm: must be above 0"],
  [
    '=BEAD.FEELER_STACK(1, {0.5;"x"}, , "SI")',
    '#VALUE! leaves = "x": must be a number or a size such as 38.1, 38.1 mm or 1-1/2 in',
  ],
  ['=BEAD.FEELER_STACK(1, {0.5;TRUE}, , "SI")', "#VALUE! leaves = TRUE: must be a number (mm)"],
  [
    '=BEAD.FEELER_STACK(1, {0.5;0.4}, 0.05, "SI")',
    "#N/A gap = 1 mm: no stack of these leaves comes within 0.05 mm of it",
  ],
  [
    "=BEAD.FEELER_STACK(0.0005)",
    "#N/A gap = 0.0005 in: no stack of these leaves comes within 0.0005 in of it",
  ],
  ["=BEAD.ELECTRODE_LENGTH(0, 1, 0.04)", "#VALUE! reach = 0 in: must be above 0"],
  ["=BEAD.ELECTRODE_LENGTH(1.5, 0, 0.04)", "#VALUE! od = 0 in: must be above 0"],
  ["=BEAD.ELECTRODE_LENGTH(1.5, 1, 0)", "#VALUE! standoff = 0 in: must be above 0"],
  [
    "=BEAD.ELECTRODE_LENGTH(0.74, 1, 0.25)",
    "#VALUE! reach = 0.74 in: must be above od/2 + standoff, 0.75 in",
  ],
  ['=BEAD.ELECTRODE_LENGTH(10, 20, 1, "SI")', "#VALUE! reach = 10 mm: must be above od/2 + standoff, 11 mm"],
  ["=BEAD.ELECTRODE_DIAMETER(0)", "#VALUE! amps = 0 A: must be above 0"],
  [
    "=BEAD.ELECTRODE_DIAMETER(4.99)",
    "#N/A amps = 4.99 A: no standard electrode is listed; the table runs from 5 A to 500 A",
  ],
  [
    "=BEAD.ELECTRODE_DIAMETER(500.1)",
    "#N/A amps = 500.1 A: no standard electrode is listed; the table runs from 5 A to 500 A",
  ],
];
