/** Refusals of the pipe and oxide tables. */

import type { Refused } from "./example";

export const TABLES: readonly Refused[] = [
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
    "=BEAD.TUBE_TOLERANCE(1.25, 0.065)",
    "#N/A od = 1.25 in: A270 has no row for this diameter here; use the size of the order, or see the standard",
  ],
  ["=BEAD.TUBE_TOLERANCE(1, 0.5)", "#VALUE! wall = 0.5 in: must be less than half of od, 0.5 in"],
  ['=BEAD.TUBE_TOLERANCE(1, 0.065, "A312")', '#VALUE! standard = "A312": must be one of A270, A269, A1016'],
  [
    "=BEAD.PURGE_TINT(30000)",
    "#N/A ppm = 30000 ppm: no sample shows so much oxygen; the last is for 25000 ppm",
  ],
];
