/** The limits of each formula: the sentence just beyond, and an answer at the limit where it still holds. */

import { parseCall } from "../../tools/example.mjs";
import { bead, refusal } from "../bead";

/** Calls as typed, with the code and sentence of their refusal. */
const REFUSED: readonly [call: string, sentence: string][] = [
  ["=BEAD.STANDOFF(0)", "#VALUE! wall = 0 in: must be above 0"],
  ["=BEAD.STANDOFF(-0.065)", "#VALUE! wall = -0.065 in: must be above 0"],
  ['=BEAD.STANDOFF(-1.651, , "SI")', "#VALUE! wall = -1.651 mm: must be above 0"],
  ["=BEAD.STANDOFF(0.065, -0.001)", "#VALUE! allowance = -0.001 in: must not be below 0"],

  ["=BEAD.STANDOFF_SPREAD(0, 0.005)", "#VALUE! standoff = 0 in: must be above 0"],
  ["=BEAD.STANDOFF_SPREAD(0.04, -0.005)", "#VALUE! odTolerance = -0.005 in: must not be below 0"],
  ["=BEAD.STANDOFF_SPREAD(0.04, 0.005, -0.001)", "#VALUE! runout = -0.001 in: must not be below 0"],
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
  ['=BEAD.FEELER_STACK(1, , -0.01, "SI")', "#VALUE! tolerance = -0.01 mm: must be between 0 mm and 10 mm"],
  ['=BEAD.FEELER_STACK(1, , 10.01, "SI")', "#VALUE! tolerance = 10.01 mm: must be between 0 mm and 10 mm"],
  ['=BEAD.FEELER_STACK(1, {0.5,0}, , "SI")', "#VALUE! leaves = 0 mm: must be above 0"],
  ['=BEAD.FEELER_STACK(1, {0.5;-0.1}, , "SI")', "#VALUE! leaves = -0.1 mm: must be above 0"],
  ['=BEAD.FEELER_STACK(1, {0.5;"x"}, , "SI")', '#VALUE! leaves = "x": must be a number (mm)'],
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

  ['=BEAD.ARC_VOLTS(0.499, "SI")', "#VALUE! standoff = 0.499 mm: must be between 0.5 mm and 3 mm"],
  ['=BEAD.ARC_VOLTS(3.001, "SI")', "#VALUE! standoff = 3.001 mm: must be between 0.5 mm and 3 mm"],
  [
    "=BEAD.ARC_VOLTS(0.019685)",
    "#VALUE! standoff = 0.019685 in: must be between 0.0196850393701 in and 0.11811023622 in",
  ],

  ["=BEAD.TRAVEL_SPEED(0, 1)", "#VALUE! od = 0 in: must be above 0"],
  ["=BEAD.TRAVEL_SPEED(1, 0)", "#VALUE! rpm = 0 rpm: must be above 0"],
  ["=BEAD.TRAVEL_RPM(0, 5)", "#VALUE! od = 0 in: must be above 0"],
  ['=BEAD.TRAVEL_RPM(25.4, 0, "SI")', "#VALUE! speed = 0 mm/min: must be above 0"],
  ["=BEAD.TRAVEL_TIME(0, 5)", "#VALUE! od = 0 in: must be above 0"],
  ["=BEAD.TRAVEL_TIME(1, 0)", "#VALUE! speed = 0 in/min: must be above 0"],
  ["=BEAD.TRAVEL_TIME(1, 5, -1)", "#VALUE! overlap = -1°: must not be below 0"],
  ["=BEAD.TRAVEL_SUGGEST(0)", "#VALUE! wall = 0 in: must be above 0"],
  ["=BEAD.TRAVEL_SUGGEST(0.065, 0)", "#VALUE! beadWidth = 0 in: must be above 0"],
  ["=BEAD.OVERLAP_SUGGEST(0, 0.065)", "#VALUE! od = 0 in: must be above 0"],
  ["=BEAD.OVERLAP_SUGGEST(1, 0)", "#VALUE! wall = 0 in: must be above 0"],
  ["=BEAD.OVERLAP_SUGGEST(1, 0.5)", "#VALUE! wall = 0.5 in: must be under half of od, 0.5 in"],
  ["=BEAD.OVERLAP_SUGGEST(1, 0.065, 0)", "#VALUE! beadWidth = 0 in: must be above 0"],

  ["=BEAD.HEAT_INPUT(0, 100, 5)", "#VALUE! volts = 0 V: must be above 0"],
  ["=BEAD.HEAT_INPUT(10, 0, 5)", "#VALUE! amps = 0 A: must be above 0"],
  ["=BEAD.HEAT_INPUT(10, 100, 0)", "#VALUE! speed = 0 in/min: must be above 0"],
  ["=BEAD.HEAT_INPUT(10, 100, 5, 0)", "#VALUE! efficiency = 0: must be above 0 and at most 1"],
  ["=BEAD.HEAT_INPUT(10, 100, 5, 1.01)", "#VALUE! efficiency = 1.01: must be above 0 and at most 1"],
  ["=BEAD.HEAT_PULSED(0, 100, 1, 9, 30, 1, 5)", "#VALUE! peakVolts = 0 V: must be above 0"],
  ["=BEAD.HEAT_PULSED(10, 0, 1, 9, 30, 1, 5)", "#VALUE! peakAmps = 0 A: must be above 0"],
  ["=BEAD.HEAT_PULSED(10, 100, 0, 9, 30, 1, 5)", "#VALUE! peakTime = 0 s: must be above 0"],
  ["=BEAD.HEAT_PULSED(10, 100, 1, -9, 30, 1, 5)", "#VALUE! backVolts = -9 V: must not be below 0"],
  ["=BEAD.HEAT_PULSED(10, 100, 1, 9, -30, 1, 5)", "#VALUE! backAmps = -30 A: must not be below 0"],
  ["=BEAD.HEAT_PULSED(10, 100, 1, 9, 30, -1, 5)", "#VALUE! backTime = -1 s: must not be below 0"],
  ["=BEAD.HEAT_PULSED(10, 100, 1, 9, 30, 1, 0)", "#VALUE! speed = 0 in/min: must be above 0"],
  ["=BEAD.HEAT_PULSED(10, 100, 1, 9, 30, 1, 5, 2)", "#VALUE! efficiency = 2: must be above 0 and at most 1"],
  ["=BEAD.HEAT_METERED(0, 10)", "#VALUE! joules = 0 J: must be above 0"],
  ["=BEAD.HEAT_METERED(1000, 0)", "#VALUE! length = 0 in: must be above 0"],
  ["=BEAD.HEAT_METERED(1000, 10, 0)", "#VALUE! efficiency = 0: must be above 0 and at most 1"],
  ["=BEAD.AMPS_MEAN(0, 1, 30, 1)", "#VALUE! peakAmps = 0 A: must be above 0"],
  ["=BEAD.AMPS_MEAN(100, 0, 30, 1)", "#VALUE! peakTime = 0 s: must be above 0"],
  ["=BEAD.AMPS_MEAN(100, 1, -30, 1)", "#VALUE! backAmps = -30 A: must not be below 0"],
  ["=BEAD.AMPS_MEAN(100, 1, 30, -1)", "#VALUE! backTime = -1 s: must not be below 0"],
  ["=BEAD.PULSE_SHARE(48, 65, -1)", "#VALUE! backAmps = -1 A: must not be below 0"],
  ["=BEAD.PULSE_SHARE(48, 30, 30)", "#VALUE! peakAmps = 30 A: must be above backAmps, 30 A"],
  ["=BEAD.PULSE_SHARE(48, 20, 30)", "#VALUE! peakAmps = 20 A: must be above backAmps, 30 A"],
  ["=BEAD.PULSE_SHARE(19, 65, 19.5)", "#VALUE! meanAmps = 19 A: must be between 19.5 A and 65 A"],
  ["=BEAD.PULSE_SHARE(66, 65, 19.5)", "#VALUE! meanAmps = 66 A: must be between 19.5 A and 65 A"],
  ["=BEAD.PULSE_RATE(0, 0.17)", "#VALUE! speed = 0 in/min: must be above 0"],
  ["=BEAD.PULSE_RATE(5, 0)", "#VALUE! beadWidth = 0 in: must be above 0"],
  ["=BEAD.PULSE_RATE(5, 0.17, 1)", "#VALUE! overlap = 1: must be at least 0 and under 1"],
  ["=BEAD.PULSE_RATE(5, 0.17, -0.1)", "#VALUE! overlap = -0.1: must be at least 0 and under 1"],

  ["=BEAD.AMPS_WALL(0)", "#VALUE! wall = 0 in: must be above 0"],

  ["=BEAD.PURGE_VOLUME(0, 12)", "#VALUE! bore = 0 in: must be above 0"],
  ["=BEAD.PURGE_VOLUME(2, 0)", "#VALUE! length = 0 in: must be above 0"],
  ["=BEAD.PURGE_CHANGES(-1)", "#VALUE! ppm = -1 ppm: must not be below 0"],
  ["=BEAD.PURGE_CHANGES(0)", "#N/A ppm = 0 ppm: cannot be reached; must be above supplyPpm, 0 ppm"],
  ["=BEAD.PURGE_CHANGES(5, 5)", "#N/A ppm = 5 ppm: cannot be reached; must be above supplyPpm, 5 ppm"],
  ["=BEAD.PURGE_CHANGES(5, 8)", "#N/A ppm = 5 ppm: cannot be reached; must be above supplyPpm, 8 ppm"],
  ["=BEAD.PURGE_CHANGES(209500)", "#VALUE! ppm = 209500 ppm: must be under air, 209500 ppm"],
  ["=BEAD.PURGE_CHANGES(50, -1)", "#VALUE! supplyPpm = -1 ppm: must not be below 0"],
  ["=BEAD.PURGE_CHANGES(50, 209500)", "#VALUE! supplyPpm = 209500 ppm: must be under air, 209500 ppm"],
  ["=BEAD.PURGE_CHANGES(50, 0, 0)", "#VALUE! cells = 0: must be a whole number from 1 to 1000"],
  ["=BEAD.PURGE_CHANGES(50, 0, 1.5)", "#VALUE! cells = 1.5: must be a whole number from 1 to 1000"],
  ["=BEAD.PURGE_CHANGES(50, 0, 1001)", "#VALUE! cells = 1001: must be a whole number from 1 to 1000"],
  ["=BEAD.PURGE_TIME(0, 12, 20)", "#VALUE! bore = 0 in: must be above 0"],
  ["=BEAD.PURGE_TIME(2, 0, 20)", "#VALUE! length = 0 in: must be above 0"],
  ["=BEAD.PURGE_TIME(2, 12, 0)", "#VALUE! flow = 0 ft³/h: must be above 0"],
  ['=BEAD.PURGE_TIME(50, 300, 0, , , , "SI")', "#VALUE! flow = 0 L/min: must be above 0"],
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
  ["=BEAD.PURGE_OXYGEN(2, 12, 20, -1)", "#VALUE! seconds = -1 s: must not be below 0"],
  [
    "=BEAD.PURGE_OXYGEN(2, 12, 20, 60, 209500)",
    "#VALUE! supplyPpm = 209500 ppm: must be under air, 209500 ppm",
  ],
  [
    "=BEAD.PURGE_OXYGEN(2, 12, 20, 60, 0, 1001)",
    "#VALUE! cells = 1001: must be a whole number from 1 to 1000",
  ],
  ["=BEAD.PURGE_LEAK(0, 1)", "#VALUE! flow = 0: must be above 0"],
  ["=BEAD.PURGE_LEAK(10, -1)", "#VALUE! leak = -1: must not be below 0"],

  ["=BEAD.CYCLE_TIME(0, 5)", "#VALUE! od = 0 in: must be above 0"],
  ["=BEAD.CYCLE_TIME(1, 0)", "#VALUE! speed = 0 in/min: must be above 0"],
  ["=BEAD.CYCLE_TIME(1, 5, -1)", "#VALUE! prepurge = -1 s: must not be below 0"],
  ["=BEAD.CYCLE_TIME(1, 5, , -1)", "#VALUE! dwell = -1 s: must not be below 0"],
  ["=BEAD.CYCLE_TIME(1, 5, , , -1)", "#VALUE! overlap = -1°: must not be below 0"],
  ["=BEAD.CYCLE_TIME(1, 5, , , , -1)", "#VALUE! downslope = -1 s: must not be below 0"],
  ["=BEAD.CYCLE_PHASES(1, 5, , , , , -1)", "#VALUE! postpurge = -1 s: must not be below 0"],
  ["=BEAD.CYCLE_PHASES(1, 5, , , , , , -1)", "#VALUE! handling = -1 s: must not be below 0"],

  [
    "=BEAD.HEAT_INPUT(1E300, 1E300, 1)",
    "#VALUE! result = beyond what a cell can hold: some argument is far too large or too small",
  ],
];

test.each(REFUSED)("%s", (call, sentence) => {
  const { id, args } = parseCall(call);
  expect(refusal(id, ...args)).toBe(sentence);
});

/** At the limit, or just inside it, there is an answer. */
const ANSWERED = [
  "=BEAD.STANDOFF(0.065, 0)",
  "=BEAD.STANDOFF_SPREAD(0.0401, 0.06, 0.02)",
  "=BEAD.STANDOFF_SPREAD(0.04, 0, 0)",
  '=BEAD.FEELER_STACK(10, {5,6}, 1, "SI")',
  '=BEAD.FEELER_STACK(1, {1}, 10, "SI")',
  '=BEAD.FEELER_STACK(1, {1}, 0, "SI")',
  "=BEAD.ELECTRODE_LENGTH(0.7501, 1, 0.25)",
  "=BEAD.ELECTRODE_DIAMETER(5)",
  "=BEAD.ELECTRODE_DIAMETER(500)",
  '=BEAD.ARC_VOLTS(0.5, "SI")',
  '=BEAD.ARC_VOLTS(3, "SI")',
  "=BEAD.ARC_VOLTS(0.019686)",
  "=BEAD.ARC_VOLTS(0.11811)",
  "=BEAD.TRAVEL_TIME(1, 5, 0)",
  "=BEAD.OVERLAP_SUGGEST(1, 0.49999999)",
  "=BEAD.HEAT_INPUT(10, 100, 5, 1)",
  "=BEAD.HEAT_PULSED(10, 100, 1, 0, 0, 0, 5)",
  "=BEAD.AMPS_MEAN(100, 1, 0, 0)",
  "=BEAD.PULSE_SHARE(19.5, 65, 19.5)",
  "=BEAD.PULSE_SHARE(65, 65, 19.5)",
  "=BEAD.PULSE_SHARE(0, 65, 0)",
  "=BEAD.PULSE_RATE(5, 0.17, 0)",
  "=BEAD.PULSE_RATE(5, 0.17, 0.9999)",
  "=BEAD.PURGE_CHANGES(209499.9)",
  "=BEAD.PURGE_CHANGES(5.001, 5)",
  "=BEAD.PURGE_CHANGES(50, 0, 1000)",
  "=BEAD.PURGE_OXYGEN(2, 12, 20, 0)",
  "=BEAD.PURGE_LEAK(10, 0)",
  "=BEAD.CYCLE_TIME(1, 5, 0, 0, 0, 0, 0, 0)",
];

test.each(ANSWERED)("%s answers", (call) => {
  const { id, args } = parseCall(call);
  expect(bead(id, ...args)).toBeDefined();
});

test("more than a hundred feeler leaves are refused, a hundred are not", () => {
  const leaves = (count: number): number[][] => Array.from({ length: count }, () => [0.01]);
  expect(refusal("FEELER_STACK", 0.05, leaves(101))).toBe("#VALUE! leaves = 101: must be at most 100 leaves");
  expect(bead("FEELER_STACK", 0.05, leaves(100))).toHaveLength(5);
});
