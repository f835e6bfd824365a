/** Refusals of the heat-flow formulas. */

import type { Refused } from "./example";

export const HEAT_FLOW: readonly Refused[] = [
  ['=BEAD.ARC_VOLTS(0.499, , "SI")', "#VALUE! standoff = 0.499 mm: must be between 0.5 mm and 3 mm"],
  ['=BEAD.ARC_VOLTS(3.001, , "SI")', "#VALUE! standoff = 3.001 mm: must be between 0.5 mm and 3 mm"],
  [
    "=BEAD.ARC_VOLTS(0.019685)",
    "#VALUE! standoff = 0.019685 in: must be between 0.0196850393701 in and 0.11811023622 in",
  ],
  [
    "=BEAD.AMPS_MELT(0.3, 5)",
    "#VALUE! volts = omitted: give the arc voltage; it is estimated only for walls up to 0.21622 in",
  ],
  [
    "=BEAD.AMPS_MELT(0.065, 5, , , , , 3000)",
    "#VALUE! preheat = 3000 °F: must be below the liquidus, 2642 °F",
  ],
  [
    "=BEAD.AMPS_MELT(0.065, 5, , , , , -500)",
    "#VALUE! preheat = -500 °F: must be above absolute zero, -459.67 °F",
  ],
  ["=BEAD.MELT_WIDTH(0.065, 1, 5)", "#N/A amps = 1 A: melts nothing; melting starts at 23.4074 A"],
  ["=BEAD.MELT_WIDTH(0.065, 100000, 5)", "#N/A amps = 100000 A: must be at most 305.08 A"],
  ["=BEAD.DAM_DISTANCE(60, 1, 0.065, 46, 9.4, 5)", "#VALUE! limit = 60 °F: must be above ambient, 68 °F"],
  [
    "=BEAD.DAM_DISTANCE(3000, 1, 0.065, 46, 9.4, 5)",
    "#VALUE! limit = 3000 °F: must be below the liquidus, 2642 °F",
  ],
  [
    "=BEAD.AMPS_SECTORS(0.125, 0.03, 5, 4, 0, 60)",
    "#N/A dwell = 60 s: shorten the dwell; heats the tube so much that the first sector needs no current",
  ],
  [
    "=BEAD.AMPS_SECTORS(0.25, 0.035, 10, 4, 0, 0, 1)",
    "#VALUE! beadWidth = 1 in: must be between 0.000393701 in and 0.629022 in",
  ],
  [
    "=BEAD.AMPS_SECTORS(0.06, 0.018, 0.5, 36, 0, 3)",
    "#N/A speed = 0.5 in/min: the tube's own heat melts it ahead of the arc within 40° of rotation; increase travel speed, reduce overlap or target a narrower bead",
  ],
  ["=BEAD.AMPS_SECTORS(1, 0.065, 5, 4, 0, 3601)", "#VALUE! dwell = 3601 s: must be between 0 s and 3600 s"],
  // By hand: 0.02·4·5.848e-6 m²/s/(π·0.8 mm) = 11.169 mm/min.
  [
    '=BEAD.AMPS_SECTORS(1, 0.2, 0.07, , , , , , , , , , "SI")',
    "#VALUE! speed = 0.07 mm/min: must be between 0.6 mm/min and 60000 mm/min",
  ],
  ["=BEAD.AMPS_SECTORS(1, 0.065, 5, 361)", "#VALUE! sectors = 361: must be a whole number from 1 to 360"],
  ["=BEAD.AMPS_SECTORS(1, 0.065, 5, 4, 1081)", "#VALUE! overlap = 1081°: must be between 0° and 1080°"],
  [
    "=BEAD.AMPS_MELT(0.065, 100)",
    "#VALUE! speed = 100 in/min: must be at most 73.6649 in/min with this wall and arc",
  ],
  [
    "=BEAD.DAM_DISTANCE(68.0000001, 1, 0.065, 46, 9.4, 5)",
    "#N/A limit = 68 °F: is exceeded further away than 3937.01 in",
  ],
  [
    "=BEAD.AMPS_SECTORS(1, 0.065, 5, , , , 0.06)",
    "#N/A beadWidth = 0.06 in: leaves no root: the wall melts through from 0.0660954 in",
  ],
  [
    "=BEAD.AMPS_WINDOW(0.065, 5, , , , 0.9, 0.8)",
    "#VALUE! efficiencyLow = 0.9: must be at most efficiencyHigh, 0.8",
  ],
  ['=BEAD.RING_BEAD(1, 0.065, 5, "")', "#VALUE! amps = blank: needs a number or a range of them"],
  [
    "=BEAD.DAM_TEMPERATURE(0, 1, 0.065, 46, 9.4, 5)",
    "#N/A distance = 0 in: so near, the metal melts; the liquidus is 2642 °F",
  ],
  [
    "=BEAD.DAM_DISTANCE(2600, 4, 0.083, 10, 9, 10)",
    "#N/A limit = 2600 °F: the weld itself only reaches 742.778 °F by this calculation",
  ],
  [
    "=BEAD.COUPON_EFFICIENCY(0.065, {45;0}, 9.4, 5, {0.145;0.17})",
    "#VALUE! amps = 0 A: row 2: must be above 0",
  ],
  [
    "=BEAD.COUPON_EFFICIENCY(0.065, {45;50}, 9.4, 5, {0.145;0.17;0.19})",
    "#VALUE! width = 3 cells: must be one cell or as many as amps, 2",
  ],
  ["=BEAD.SHOP_FACTOR({4;5}, {3;-4})", "#VALUE! measured = -4: row 2: must be between 1e-9 and 1000000000"],
  [
    "=BEAD.COUPON_EFFICIENCY(0.065, {45;20}, 9.4, 5, {0.145;0.2})",
    "#N/A width = 0.2 in: row 2: takes 2.15498 of the arc's power; must be between 0.001 and 1: check width, amps, volts, wall and travel",
  ],
  [
    "=BEAD.COUPON_EFFICIENCY(0.065, {45,45;45,45}, 9.4, 5, 0.145)",
    "#VALUE! amps = a range: takes one column or one row, not 2 × 2 cells",
  ],
  [
    "=BEAD.RING_BEAD(1, 0.065, 50, 50)",
    "#VALUE! speed = 50 in/min: must be at most 31.9395 in/min with the usual bead of this wall, 0.16937 in",
  ],
  [
    "=BEAD.AMPS_WINDOW(0.065, 50)",
    "#VALUE! speed = 50 in/min: must be at most 31.9395 in/min with the usual bead of this wall, 0.16937 in",
  ],
  ["=BEAD.PROGRAM_BEAD(1, 0.065, 5, {65,0}, 0.6)", "#VALUE! peaks = 0 A: must be above 0"],
  ["=BEAD.PROGRAM_BEAD(1, 0.065, 5, 20000, 0.6)", "#VALUE! peaks = 20000 A: must be between 0 A and 10000 A"],
  [
    "=BEAD.PROGRAM_BEAD(1, 0.065, 5, 65, 0.6, , , , , , 20, , , , , , 0)",
    "#VALUE! overlapPeak = 0 A: must be above 0",
  ],
  ["=BEAD.PROGRAM_BEAD(1, 0.065, 5, 65, 1.2)", "#VALUE! share = 1.2: must be between 0 and 1"],
  [
    "=BEAD.PROGRAM_BEAD(1, 0.065, 5, 65, 0.6, 0.3, 0.5)",
    "#VALUE! rate = 0.5 Hz: must be at least 0.984038 Hz, a pulse per half bead of travel",
  ],
];
