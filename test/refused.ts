/** What is refused, and in which words: the tests run every call, and docs/refusals.md shows them. */

/** Calls as typed, with the code and sentence of their refusal. */
export const REFUSED: readonly [call: string, sentence: string][] = [
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

  ['=BEAD.ARC_VOLTS(0.499, , "SI")', "#VALUE! standoff = 0.499 mm: must be between 0.5 mm and 3 mm"],
  ['=BEAD.ARC_VOLTS(3.001, , "SI")', "#VALUE! standoff = 3.001 mm: must be between 0.5 mm and 3 mm"],
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
  ["=BEAD.TRAVEL_TIME(1, 5, -1)", "#VALUE! overlap = -1°: must be 0 or more"],
  ["=BEAD.TRAVEL_SUGGEST(0)", "#VALUE! wall = 0 in: must be above 0"],
  ["=BEAD.TRAVEL_SUGGEST(0.065, 0)", "#VALUE! beadWidth = 0 in: must be above 0"],
  ["=BEAD.OVERLAP_SUGGEST(0, 0.065)", "#VALUE! od = 0 in: must be above 0"],
  ["=BEAD.OVERLAP_SUGGEST(1, 0)", "#VALUE! wall = 0 in: must be above 0"],
  ["=BEAD.OVERLAP_SUGGEST(1, 0.5)", "#VALUE! wall = 0.5 in: must be less than half of od, 0.5 in"],
  ["=BEAD.OVERLAP_SUGGEST(1, 0.065, 0)", "#VALUE! beadWidth = 0 in: must be above 0"],

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

  ["=BEAD.CYCLE_TIME(0, 5)", "#VALUE! od = 0 in: must be above 0"],
  ["=BEAD.CYCLE_TIME(1, 0)", "#VALUE! speed = 0 in/min: must be above 0"],
  ["=BEAD.CYCLE_TIME(1, 5, -1)", "#VALUE! prepurge = -1 s: must be 0 or more"],
  ["=BEAD.CYCLE_TIME(1, 5, , -1)", "#VALUE! dwell = -1 s: must be 0 or more"],
  ["=BEAD.CYCLE_TIME(1, 5, , , -1)", "#VALUE! overlap = -1°: must be 0 or more"],
  ["=BEAD.CYCLE_TIME(1, 5, , , , -1)", "#VALUE! downslope = -1 s: must be 0 or more"],
  ["=BEAD.CYCLE_PHASES(1, 5, , , , , -1)", "#VALUE! postpurge = -1 s: must be 0 or more"],
  ["=BEAD.CYCLE_PHASES(1, 5, , , , , , -1)", "#VALUE! handling = -1 s: must be 0 or more"],

  [
    "=BEAD.HEAT_INPUT(1E300, 1E300, 1)",
    "#VALUE! result = beyond what a cell can hold: some argument is far too large or too small",
  ],
  ["=BEAD.STANDOFF()", "#VALUE! wall = blank: needs a number (in)"],
  [
    '=BEAD.HEAT_INPUT("10", 100, 5)',
    '#VALUE! volts = "10": is a number stored as text; turn the cell into a number (V)',
  ],
  [
    '=BEAD.STANDOFF("thin")',
    '#VALUE! wall = "thin": must be a number or a size such as 1.5, 1-1/2 or 38.1 mm',
  ],
  [
    '=BEAD.STANDOFF("thin", , "SI")',
    '#VALUE! wall = "thin": must be a number or a size such as 38.1, 38.1 mm or 1-1/2 in',
  ],
  [
    '=BEAD.STANDOFF("0,065")',
    '#VALUE! wall = "0,065": contains a comma (decimal or thousands separator?); type 1.5 or 1500',
  ],
  [
    '=BEAD.STANDOFF("1/16", , "SI")',
    '#VALUE! wall = "1/16": is a fraction, which is a size in inches; type 1/16 in, or millimeters',
  ],
  [
    '=BEAD.STANDOFF("1/2 mm")',
    '#VALUE! wall = "1/2 mm": is a fraction of a millimeter; type it with decimals',
  ],
  ['=BEAD.STANDOFF("1/15")', '#VALUE! wall = "1/15": is no fraction of an inch; type it with decimals'],
  [
    '=BEAD.STANDOFF("1/2/2026")',
    '#VALUE! wall = "1/2/2026": looks like a date; type a size such as 1.5, 1-1/2 or 38.1 mm',
  ],
  [
    "=BEAD.STANDOFF(46024)",
    "#VALUE! wall = 46024: looks like a size that the sheet turned into a date; type it as 0 1/2, '1/2 or 0.5",
  ],
  ['=BEAD.STANDOFF("1E301 mm")', '#VALUE! wall = "1E301 mm": is out of range (limit 1e300)'],
  ["=BEAD.SIZE(-1)", "#VALUE! text = -1 in: must be 0 or more"],

  [
    "=BEAD.AMPS_WALL(1.65)",
    '#VALUE! wall = 1.65 in: no tube of this trade has such a wall (maximum 1 in); for millimeters give "SI"',
  ],
  ["=BEAD.STANDOFF(39)", "#VALUE! wall = 39 in: no tube of this trade has such a wall (maximum 1 in)"],
  [
    '=BEAD.STANDOFF("1-5/8")',
    "#VALUE! wall = 1.625 in: no tube of this trade has such a wall (maximum 1 in)",
  ],
  [
    '=BEAD.STANDOFF(0.065, , "SI")',
    '#VALUE! wall = 0.065 mm: no tube of this trade has such a wall (minimum 0.1 mm); for inches give "US"',
  ],
  [
    "=BEAD.STANDOFF(0.00393)",
    "#VALUE! wall = 0.00393 in: no tube of this trade has such a wall (minimum 0.00393701 in)",
  ],
  [
    "=BEAD.TRAVEL_SPEED(25.4, 1)",
    '#VALUE! od = 25.4 in: no tube of this trade has such an outside diameter (maximum 20 in); for millimeters give "SI"',
  ],
  [
    '=BEAD.TRAVEL_SPEED(509, 1, "SI")',
    "#VALUE! od = 509 mm: no tube of this trade has such an outside diameter (maximum 508 mm)",
  ],
  [
    "=BEAD.OVERLAP_SUGGEST(1, 0.065, 4)",
    "#VALUE! beadWidth = 4 in: must be at most the circumference, 3.14159 in",
  ],
  // π·0.3 mm = 0.942478 mm; 1 mm + 2·0.1 mm = 1.2 mm.
  [
    '=BEAD.OVERLAP_SUGGEST(0.3, 0.1, , "SI")',
    "#N/A od = 0.3 mm: the default bead, 1.2 mm, is wider than the circumference",
  ],
  ["=BEAD.STANDOFF(TRUE)", "#VALUE! wall = TRUE: must be a number (in)"],
  ["=BEAD.STANDOFF({0.065,0.083})", "#VALUE! wall = a range: takes one cell, not 1 × 2 cells"],
  ["=BEAD.STANDOFF(1E301)", "#VALUE! wall = 1e+301: is out of range (limit 1e300)"],
  ['=BEAD.STANDOFF(0.065, , "metric")', '#VALUE! units = "metric": must be one of US, SI'],
  [
    '=BEAD.AMPS_WALL(0.065, "317")',
    '#VALUE! material = "317": must be one of 304L, 316L, 2205, CS, TI-2, TI-6-4, 625, C-276, C12200, C70600',
  ],
  ['=BEAD.HEAT_INPUT(24, 120, 10, "80%")', '#VALUE! efficiency = "80%": must be a number'],
  ["=BEAD.PURGE_LEAK(, 0.05)", "#VALUE! flow = blank: needs a number"],
  ['=BEAD.CREW_OUTPUT(2, 120, 360, , , "lunch")', '#VALUE! pattern = "lunch": must be one of steady, random'],
  ['=BEAD.SCHEDULE(1, 0.065, , "fast")', '#VALUE! style = "fast": must be one of pulsed, steady'],

  ["=BEAD.ABOUT()", "#VALUE! id = blank: needs a text"],
  ["=BEAD.ABOUT(TRUE)", "#VALUE! id = TRUE: must be a text"],
  [
    '=BEAD.ABOUT("STAND")',
    '#N/A id = "STAND": no formula has this name; did you mean STANDOFF, STANDOFF_SPREAD?',
  ],
  ['=BEAD.ABOUT("WELDER")', '#N/A id = "WELDER": no formula has this name'],

  ["=BEAD.PIPE_OD()", "#VALUE! nps = blank: needs a text"],
  ['=BEAD.PIPE_OD("DN50")', '#VALUE! nps = "DN50": DN sizes are not read; DN 50 is NPS 2'],
  [
    '=BEAD.PIPE_OD("DN55")',
    '#VALUE! nps = "DN55": DN sizes are not read; give the nominal pipe size in inches',
  ],
  [
    '=BEAD.PIPE_OD("1-Feb")',
    '#VALUE! nps = "1-Feb": is a date that a spreadsheet made of a fraction; type \'1/2 as text, or 0.5',
  ],
  [
    "=BEAD.PIPE_OD(45689)",
    '#VALUE! nps = "45689": is a date that a spreadsheet made of a fraction; type \'1/2 as text, or 0.5',
  ],
  ['=BEAD.PIPE_OD("big")', '#VALUE! nps = "big": must be a nominal size such as 1/2, 1-1/2 or 2'],
  [
    "=BEAD.PIPE_OD(7)",
    '#N/A nps = "7": is not in this table; it has 1/8, 1/4, 3/8, 1/2, 3/4, 1, 1-1/4, 1-1/2, 2, 2-1/2, 3, 3-1/2, 4, 5, 6, 8, 10, 12',
  ],
  [
    '=BEAD.PIPE_WALL(2, "XXS")',
    '#N/A schedule = "XXS": is not in this table; it has 5S, 10S, 40S, 80S, 5, 10, 40, 80',
  ],
  [
    '=BEAD.PIPE_WALL("1/8", "5S")',
    '#N/A schedule = "5S": the standard has no such wall for NPS 1/8; this table has 10S, 40S, 80S, 10, 40, 80',
  ],
  [
    "=BEAD.PURGE_TINT(30000)",
    "#N/A ppm = 30000 ppm: no sample shows so much oxygen; the last is for 25000 ppm",
  ],

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
  [
    "=BEAD.CREW_HEADS(0, 900)",
    "#N/A loadSeconds = 0 s: must be above 0 when walkSeconds is 0; heads that need no operator have no limit",
  ],
  [
    '=BEAD.GAS_CYLINDER(50, 200, 201, 15, "SI")',
    "#VALUE! residual = 201 bar: must be at most pressure, 200 bar",
  ],
  [
    '=BEAD.GAS_CYLINDER(50, 400, 0, 15, "SI")',
    "#VALUE! pressure = 400 bar: must be between 0 bar and 350 bar",
  ],
  [
    '=BEAD.GAS_CYLINDER(50, 200, 0, -274, "SI")',
    "#VALUE! temperature = -274 °C: must be between -30 °C and 60 °C",
  ],
  ["=BEAD.GAS_METER(10)", "#VALUE! gas = blank: needs one of AR, N2, HE, AIR"],
  ['=BEAD.GAS_METER(10, "XE")', '#VALUE! gas = "XE": must be one of AR, N2, HE, AIR'],

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
  ["=BEAD.AMPS_SECTORS(1, 0.065, 5, 4, 0, 3601)", "#VALUE! dwell = 3601 s: must be between 0 s and 3600 s"],
  // By hand: 0.02·4·5.848e-6 m²/s/(π·0.8 mm) = 11.169 mm/min.
  [
    '=BEAD.AMPS_SECTORS(1, 0.2, 0.07, , , , , , , , , , "SI")',
    "#VALUE! speed = 0.07 mm/min: must be between 0.6 mm/min and 60000 mm/min",
  ],
  ["=BEAD.AMPS_SECTORS(1, 0.065, 5, 361)", "#VALUE! sectors = 361: must be a whole number from 1 to 360"],
  ["=BEAD.AMPS_SECTORS(1, 0.065, 5, 4, 1081)", "#VALUE! overlap = 1081°: must be between 0° and 1080°"],
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
    "=BEAD.SCHEDULE(1, 0.065, , , , , , , , , , , 0.2)",
    "#VALUE! allowance = 0.2 in: makes the standoff 0.2325 in; arc voltage is estimated only for 0.019685 in to 0.11811 in",
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
    "=BEAD.SCHEDULE(1, 0.065, , , , , , , , , 200)",
    '#N/A peak = 200 A: the first sector needs a mean of only 47.3774 A, no more than the background of 60 A: the peak is too large; lower peak or background, or ask for "steady"',
  ],
  [
    "=BEAD.SCHEDULE(1, 0.065, , , , , , , , , 40)",
    '#N/A peak = 40 A: the first sector needs a mean of 47.3774 A, no less than the peak of 40 A: the peak is too small; raise peak, or ask for "steady"',
  ],
  [
    "=BEAD.DAM_DISTANCE(2600, 4, 0.083, 10, 9, 10)",
    "#N/A limit = 2600 °F: the weld itself only reaches 742.778 °F by this calculation",
  ],
  [
    '=BEAD.SCHEDULE(0.375, 0.065, "C12200", "steady")',
    "#N/A od = 0.375 in: is too small for this bead: by 90° four sectors make it 0.418086 in wide, face and root, in place of 0.16937 in",
  ],
  [
    '=BEAD.SCHEDULE(0.25, 0.035, "C12200", "steady")',
    "#N/A od = 0.25 in: has no suggested schedule with this wall; suggested dwell = 8.03811 s: shorten the dwell; heats the tube so much that the first sector needs no current",
  ],
];

/** Beyond what can be typed as a call: what stands in the cells, shown as a reader would write it. */
export const REFUSED_CELLS: readonly [call: string, cells: readonly unknown[], sentence: string][] = [
  [
    "=BEAD.STANDOFF(#N/A)",
    [{ type: "Error", basicValue: "#N/A" }],
    "#VALUE! wall = #N/A: the referenced cell contains an error; fix it first",
  ],
  [
    "=BEAD.STANDOFF(#DIV/0!)",
    [{ code: "#DIV/0!" }],
    "#VALUE! wall = #DIV/0!: the referenced cell contains an error; fix it first",
  ],
  [
    "=BEAD.STANDOFF(a linked data type)",
    [{ type: "Entity", text: "tube" }],
    "#VALUE! wall = a linked data type: must be a number (in)",
  ],
  ["=BEAD.STANDOFF(a number that is none)", [NaN], "#VALUE! wall = NaN: must be a finite number (in)"],
  [
    "=BEAD.FEELER_STACK(0.05, 101 leaves)",
    [0.05, times(101, [0.01])],
    "#VALUE! leaves = 101: must be at most 100 leaves",
  ],
  [
    "=BEAD.TAKEOFF(200001 rows)",
    [times(200_001, [1, 1, 0.065])],
    "#VALUE! joints = 200001 rows: must be at most 200000 rows; take the list in parts",
  ],
];

/** What is said in an answer: TAKEOFF's remark on its first line, REASON's text. */
export const REMARKED: readonly [call: string, text: string][] = [
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
  ["=BEAD.TAKEOFF({8.5,1,0.065})", "quantity: must be a whole number from 1 to 1000000000"],
  [
    '=BEAD.TAKEOFF({8,1,0.065,"brass"})',
    "material: must be one of 304L, 316L, 2205, CS, TI-2, TI-6-4, 625, C-276, C12200, C70600",
  ],
  ['=BEAD.TAKEOFF({8,1,"about 0.065"})', "wall: must be a number or a size such as 1.5, 1-1/2 or 38.1 mm"],
  ['=BEAD.REASON("STANDOFF", -0.065)', "wall = -0.065 in: must be above 0"],
  ['=BEAD.REASON("STANDOFF", 1, 2, "US", 4)', "STANDOFF takes 3 arguments, not 4"],
  ['=BEAD.REASON("ABOUT", "STANDOFF", 2)', "ABOUT takes 1 argument, not 2"],
];

function times(count: number, row: readonly unknown[]): unknown[][] {
  return Array.from({ length: count }, () => [...row]);
}

export interface Example {
  readonly call: string;
  readonly cells?: readonly unknown[];
  readonly says: string;
}

/** All of them, as the page shows them. */
export const EXAMPLES: readonly Example[] = [
  ...REFUSED.map(([call, says]) => ({ call, says })),
  ...REFUSED_CELLS.map(([call, cells, says]) => ({ call, cells, says })),
  ...REMARKED.map(([call, says]) => ({ call, says })),
];

/** Rules that no call here shows, each with the reason. */
export const NOT_SHOWN: readonly [words: string, why: string][] = [
  [
    "arc voltage is estimated only for walls up to …",
    "such a wall is refused before as too thick for one pass",
  ],
  [
    "has no suggested schedule with this wall; suggested … = …: …",
    "stands before the rule that the suggested value breaks, and is shown under that rule",
  ],
  ["has no suggested schedule with this wall; …", "the same"],
  ["maximum …", "a part of the sentence on sizes that no tube has"],
  ["minimum …", "a part of the sentence on sizes that no tube has"],
  ["sectors are too many; at most …", "it takes hundreds of currents in one range"],
  [
    "the tube's own heat melts it ahead of the arc within … of rotation; increase travel speed, reduce overlap or target a narrower bead",
    "no tube was found whose whole ring is not refused first",
  ],
  [
    "Thin wall: volts are those of the minimum gap that they are estimated for, that of a wall of ….",
    "a remark of SCHEDULE, no refusal",
  ],
];
