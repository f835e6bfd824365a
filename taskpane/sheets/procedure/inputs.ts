/** What a person types on the procedure sheet. The example is invented and says so. */

import {
  ANGLE,
  BORE_PRESSURE,
  COUNT,
  CURRENT,
  FREQUENCY,
  HEAT_INPUT,
  LENGTH,
  SHARE,
  SPEED,
  TEMPERATURE,
  TIME,
  VOLTAGE,
} from "../../../src/quantity";
import { DAM_SPACING, oxygenRows, PURGE_FLOW } from "../gas-rows";
import type { Row } from "../layout";
import { TUBE as TUBE_ROWS } from "../tube";
import { choice, optional, seconds, typed, words } from "../typed";

export const JOB: Row[] = [
  words("Job", "job", "Invented: Fennel Island creamery"),
  words("Joint", "joint", "Skid 3, joint 12 (invented)"),
  words("Heat numbers", "heat_numbers", "A-0001 / A-0002 (invented)"),
];

export const PAPERS: Row[] = [
  words("Qualified procedure", "procedure_no", "WPS-000 (invented)"),
  words("Head, collets", "head", ""),
  words("Date", "sheet_date", ""),
];

const TOLERANCES = { US: [0.0005, 0.06], SI: [0.013, 1.5] } as const;

export const TUBE: Row[] = [
  ...TUBE_ROWS,
  optional({
    label: "Bead width (blank: default)",
    name: "bead_typed",
    quantity: LENGTH,
    range: { US: [0.02, 0.6], SI: [0.7, 15] },
  }),
  optional({
    label: "Allowance (blank: default)",
    name: "allowance",
    content: { US: 0.01, SI: 0.254 },
    quantity: LENGTH,
    range: { US: [0.002, 0.05], SI: [0.06, 1.2] },
  }),
  typed({
    label: "OD tolerance, ±",
    name: "od_tolerance",
    content: { US: 0.005, SI: 0.13 },
    quantity: LENGTH,
    range: TOLERANCES,
  }),
  optional({
    label: "Runout, TIR (blank: none)",
    name: "runout",
    content: { US: 0.004, SI: 0.1 },
    quantity: LENGTH,
    range: TOLERANCES,
  }),
  typed({
    label: "Reach, tube center to seat",
    name: "reach",
    content: { US: 1.5, SI: 38.1 },
    quantity: LENGTH,
    range: { US: [0.3, 15], SI: [16, 400] },
  }),
  typed({
    label: "Qualified heat input, maximum",
    name: "heat_most",
    content: { US: 8, SI: 0.315 },
    quantity: HEAT_INPUT,
    range: { US: [1, 60], SI: [0.02, 2.4] },
  }),
  optional({
    label: "Heat input factor (1, or EN 0.6)",
    name: "heat_factor",
    content: 1,
    quantity: SHARE,
    range: [0.1, 1],
  }),
];

export const ARC: Row[] = [
  choice("Style", "style", "pulsed", ["pulsed", "steady"]),
  optional({
    label: "Peak, sector 1 (blank: by wall)",
    name: "peak_typed",
    quantity: CURRENT,
    range: [1, 500],
  }),
  optional({
    label: "Background, fraction of peak",
    name: "back_share",
    content: 0.3,
    quantity: SHARE,
    range: [0.02, 0.9],
  }),
  optional({
    label: "Arc voltage (blank: estimate)",
    name: "volts_typed",
    quantity: VOLTAGE,
    range: [5, 30],
  }),
  optional({
    label: "Arc efficiency (blank: 0.78)",
    name: "efficiency",
    quantity: SHARE,
    range: [0.4, 0.95],
  }),
  optional({
    label: "Travel speed (blank: suggested)",
    name: "speed_typed",
    quantity: SPEED,
    range: { US: [0.8, 30], SI: [20, 760] },
  }),
  optional({
    label: "Overlap (blank: suggested)",
    name: "overlap_typed",
    quantity: ANGLE,
    range: [1, 360],
  }),
  optional({
    label: "Start dwell (blank: heat flow)",
    name: "dwell_typed",
    quantity: TIME,
    range: [0, 120],
    above0: 0.1,
  }),
  seconds("Prepurge", "prepurge", 30, 600),
  seconds("Postpurge", "postpurge", 15, 600),
  seconds("Handling", "handling", 240, 14_400),
];

/** Invented: the heat input is the qualified maximum above; a small coupon covers every larger tube. */
export const COUPON = { od: { US: 0.5, SI: 12.7 }, heat: { US: 8, SI: 0.315 } };

/** A program of one's own, judged beside the schedule: a blank cell is as computed. */
export const OWN_PULSE: Row[] = [
  optional({
    label: "Peak share, set (blank: computed)",
    name: "share_set",
    quantity: SHARE,
    range: [0.05, 1],
  }),
  optional({
    label: "Pulse rate, set (blank: computed)",
    name: "rate_set",
    quantity: FREQUENCY,
    range: [0.2, 50],
  }),
];
export const OWN_SPREAD: Row[] = [
  optional({
    label: "Wall off by, ± (blank: 0.10)",
    name: "wall_tolerance",
    quantity: SHARE,
    range: [0, 0.25],
    above0: 0.01,
  }),
];
/** Peak of a sector; the current itself of a steady arc. */
export const SET_AMPS = [1, 500] as const;

export const BORE: Row[] = [
  optional({
    label: "Bore (blank: OD − 2 × wall)",
    name: "bore_typed",
    quantity: LENGTH,
    range: { US: [0.03, 20], SI: [0.8, 508] },
  }),
  DAM_SPACING,
  typed({
    label: "Dam temperature limit",
    name: "dam_limit",
    content: { US: 212, SI: 100 },
    quantity: TEMPERATURE,
    range: { US: [120, 1200], SI: [50, 650] },
  }),
  typed({
    label: "Dam from the weld, at least",
    name: "dam_least",
    content: { US: 6, SI: 150 },
    quantity: LENGTH,
    range: { US: [0.5, 24], SI: [13, 610] },
  }),
  typed({
    label: "Vent hole fitted",
    name: "vent",
    content: { US: 0.1875, SI: 5 },
    quantity: LENGTH,
    range: { US: [0.02, 2], SI: [0.5, 50] },
  }),
  typed({
    label: "Bore pressure wanted",
    name: "pressure_wanted",
    content: { US: 0.3, SI: 0.75 },
    quantity: BORE_PRESSURE,
    range: { US: [0.01, 10], SI: [0.025, 25] },
  }),
];

export const OXYGEN_TARGET: Row[] = [
  PURGE_FLOW,
  ...oxygenRows(0),
  optional({ label: "Mixed cells (1 is safe)", name: "cells", content: 1, quantity: COUNT, range: [1, 100] }),
];
