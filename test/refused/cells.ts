/** Refusals of what stands in a cell, whatever the formula: words, dates, commas, sizes that no tube has. */

import type { Refused, RefusedCells } from "./example";

export const CELLS: readonly Refused[] = [
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
];

/** Beyond what can be typed as a call: what stands in the cells, shown as a reader would write it. */
export const REFUSED_CELLS: readonly RefusedCells[] = [
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
  [
    '=BEAD.STANDOFF(a date, , "SI")',
    [new Date(2026, 0, 2), null, "SI"],
    "#VALUE! wall = a date: looks like a size that the sheet turned into a date; type it as 0 1/2, '1/2 or 0.5",
  ],
  [
    "=BEAD.HEAT_INPUT(a date, 100, 5)",
    [new Date(2026, 0, 2), 100, 5],
    "#VALUE! volts = a date: must be a number (V)",
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
  [
    "=BEAD.LOG_CHECK(5001 rows)",
    [times(5001, [60, 60, 9, 5, 20, 2, 0, 0, 0, ""])],
    "#VALUE! log = 5001 rows: must be at most 5000 rows; take the log in parts",
  ],
];

function times(count: number, row: readonly unknown[]): unknown[][] {
  return Array.from({ length: count }, () => [...row]);
}
