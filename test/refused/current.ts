/** Refusals of heat input, pulses and the schedule. */

import type { Refused } from "./example";

export const CURRENT: readonly Refused[] = [
  ["=BEAD.HEAT_INPUT(0, 100, 5)", "#VALUE! volts = 0 V: must be above 0"],
  ["=BEAD.HEAT_INPUT(10, 0, 5)", "#VALUE! amps = 0 A: must be above 0"],
  ["=BEAD.HEAT_INPUT(10, 100, 0)", "#VALUE! speed = 0 in/min: must be above 0"],
  ["=BEAD.HEAT_INPUT(10, 100, 5, 0)", "#VALUE! efficiency = 0: must be above 0 and at most 1"],
  ["=BEAD.HEAT_INPUT(10, 100, 5, 1.01)", "#VALUE! efficiency = 1.01: must be above 0 and at most 1"],
  ["=BEAD.HEAT_PULSED(0, 100, 1, 9, 30, 1, 5)", "#VALUE! peakVolts = 0 V: must be above 0"],
  ["=BEAD.HEAT_PULSED(10, 0, 1, 9, 30, 1, 5)", "#VALUE! peakAmps = 0 A: must be above 0"],
  ["=BEAD.HEAT_PULSED(10, 100, 0, 9, 30, 1, 5)", "#VALUE! peakTime = 0 s: must be above 0"],
  ["=BEAD.HEAT_PULSED(10, 100, 1, -9, 30, 1, 5)", "#VALUE! backVolts = -9 V: must be 0 or more"],
  ["=BEAD.HEAT_PULSED(10, 100, 1, 9, -30, 1, 5)", "#VALUE! backAmps = -30 A: must be 0 or more"],
  ["=BEAD.HEAT_PULSED(10, 100, 1, 9, 30, -1, 5)", "#VALUE! backTime = -1 s: must be 0 or more"],
  ["=BEAD.HEAT_PULSED(10, 100, 1, 9, 30, 1, 0)", "#VALUE! speed = 0 in/min: must be above 0"],
  ["=BEAD.HEAT_PULSED(10, 100, 1, 9, 30, 1, 5, 2)", "#VALUE! efficiency = 2: must be above 0 and at most 1"],
  ["=BEAD.HEAT_METERED(0, 10)", "#VALUE! joules = 0 J: must be above 0"],
  ["=BEAD.HEAT_METERED(1000, 0)", "#VALUE! length = 0 in: must be above 0"],
  ["=BEAD.HEAT_METERED(1000, 10, 0)", "#VALUE! efficiency = 0: must be above 0 and at most 1"],
  ["=BEAD.AMPS_MEAN(0, 1, 30, 1)", "#VALUE! peakAmps = 0 A: must be above 0"],
  ["=BEAD.AMPS_MEAN(100, 0, 30, 1)", "#VALUE! peakTime = 0 s: must be above 0"],
  ["=BEAD.AMPS_MEAN(100, 1, -30, 1)", "#VALUE! backAmps = -30 A: must be 0 or more"],
  ["=BEAD.AMPS_MEAN(100, 1, 30, -1)", "#VALUE! backTime = -1 s: must be 0 or more"],
  ["=BEAD.PULSE_SHARE(48, 65, -1)", "#VALUE! backAmps = -1 A: must be 0 or more"],
  ["=BEAD.PULSE_SHARE(48, 30, 30)", "#VALUE! peakAmps = 30 A: must be above backAmps, 30 A"],
  ["=BEAD.PULSE_SHARE(48, 20, 30)", "#VALUE! peakAmps = 20 A: must be above backAmps, 30 A"],
  ["=BEAD.PULSE_SHARE(19, 65, 19.5)", "#VALUE! meanAmps = 19 A: must be between 19.5 A and 65 A"],
  ["=BEAD.PULSE_SHARE(66, 65, 19.5)", "#VALUE! meanAmps = 66 A: must be between 19.5 A and 65 A"],
  ["=BEAD.PULSE_RATE(0, 0.17)", "#VALUE! speed = 0 in/min: must be above 0"],
  ["=BEAD.PULSE_RATE(5, 0)", "#VALUE! beadWidth = 0 in: must be above 0"],
  ["=BEAD.PULSE_RATE(5, 0.17, 1)", "#VALUE! overlap = 1: must be 0 or more and less than 1"],
  ["=BEAD.PULSE_RATE(5, 0.17, -0.1)", "#VALUE! overlap = -0.1: must be 0 or more and less than 1"],
  ["=BEAD.AMPS_WALL(0)", "#VALUE! wall = 0 in: must be above 0"],
  [
    "=BEAD.SCHEDULE(1, 0.3)",
    "#N/A wall = 0.3 in: one pass without filler is not known to penetrate it (ASM Handbook 6: typically 3 mm, 1/8 in); prepare the edges and use filler",
  ],
  [
    '=BEAD.SCHEDULE(0.05554, 0.02, "304L")',
    "#N/A od = 0.05554 in: is too small for this bead: the whole ring reaches the liquidus; increase travel speed, reduce overlap or target a narrower bead",
  ],
  [
    '=BEAD.SCHEDULE(3.45, 1.696, "304L", "steady", , , , , , , , , , , "SI")',
    "#N/A od = 3.45 mm: is too small for this bead: the whole ring reaches the liquidus; increase travel speed, reduce overlap or target a narrower bead",
  ],
  ["=BEAD.SCHEDULE(1, 0.065, , , 0)", "#VALUE! volts = 0 V: must be above 0"],
  ["=BEAD.SCHEDULE(1, 0.065, , , , 1.01)", "#VALUE! efficiency = 1.01: must be above 0 and at most 1"],
  ["=BEAD.SCHEDULE(1, 0.065, , , , , 0)", "#VALUE! speed = 0 in/min: must be above 0"],
  ["=BEAD.SCHEDULE(1, 0.065, , , , , , 0)", "#VALUE! beadWidth = 0 in: must be above 0"],
  ["=BEAD.SCHEDULE(1, 0.065, , , , , , , 1081)", "#VALUE! overlap = 1081°: must be between 0° and 1080°"],
  [
    "=BEAD.SCHEDULE(1, 0.065, , , , , , , , 3000)",
    "#N/A dwell = 3000 s: is too small for this wall: the tube's own heat widens the face, and the current that keeps the width leaves no root at 90°",
  ],
  ["=BEAD.SCHEDULE(1, 0.065, , , , , , , , , 0)", "#VALUE! peak = 0 A: must be above 0"],
  [
    "=BEAD.SCHEDULE(1, 0.065, , , , , , , , , 600, 0)",
    "#N/A peak = 600 A: calls for 611.384 A, which no standard electrode is listed for",
  ],
  ["=BEAD.SCHEDULE(1, 0.065, , , , , , , , , , 1.01)", "#VALUE! background = 1.01: must be between 0 and 1"],
  [
    "=BEAD.SCHEDULE(1, 0.065, , , , , , , , , , , 0.2)",
    "#VALUE! allowance = 0.2 in: makes the standoff 0.2325 in; arc voltage is estimated only for 0.019685 in to 0.11811 in",
  ],
  [
    "=BEAD.SCHEDULE(1, 0.065, , , , , , , , , 200)",
    '#N/A peak = 200 A: the first sector needs a mean of only 47.3774 A, no more than the background of 60 A: the peak is too large; lower peak or background, or ask for "steady"',
  ],
  [
    "=BEAD.SCHEDULE(1, 0.065, , , , , , , , , 40)",
    '#N/A peak = 40 A: the first sector needs a mean of 47.3774 A, no less than the peak of 40 A: the peak is too small; raise peak, or ask for "steady"',
  ],
  [
    '=BEAD.SCHEDULE(0.375, 0.065, "C12200", "steady")',
    "#N/A od = 0.375 in: is too small for this bead: by 90° four sectors make it 0.403221 in wide, face and root, in place of 0.16937 in",
  ],
  [
    '=BEAD.SCHEDULE(0.25, 0.035, "C12200", "steady")',
    "#N/A od = 0.25 in: has no suggested schedule with this wall; suggested dwell = 8.03811 s: shorten the dwell; heats the tube so much that the first sector needs no current",
  ],
];
