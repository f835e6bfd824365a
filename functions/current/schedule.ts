/** The schedule: a complete set of starting values for one tube. */

import { COMMON_BACKGROUND, STYLES } from "../../src/current/choices";
import type { Schedule } from "../../src/current/schedule";
import { PROMISE, schedule } from "../../src/current/schedule";
import { ARC_VOLTS_WALLS } from "../../src/heat-flow/arc";
import { COMMON_SECTORS } from "../../src/heat-flow/ring-weld";
import { itemAt } from "../../src/numerics/item";
import type { Of, Quantity, Units } from "../../src/quantity";
import {
  ANGLE,
  CURRENT,
  FREQUENCY,
  HEAT_INPUT,
  LENGTH,
  plainNumber,
  ROTATION,
  SHARE,
  SPEED,
  TEMPERATURE_RISE,
  TIME,
  VOLTAGE,
} from "../../src/quantity";
import { amount, toldRule } from "../../src/refusal";
import { number, orComputed, orDefault, toldInBoth, word } from "../argument";
import {
  ALLOWANCE,
  BEAD_WIDTH,
  DWELL,
  EFFICIENCY,
  MATERIAL,
  OD,
  OVERLAP,
  SPEED_OF_TRAVEL,
  VOLTS_OF_WALL,
  WALL,
} from "../arguments";
import { family, formula } from "../formula";
import type { Entry } from "../gives";
import { entries } from "../gives";
import { SIZE_TABLE } from "./size-table";

const [THINNEST, THICKEST] = ARC_VOLTS_WALLS;

const SCHEDULE = formula({
  id: "SCHEDULE",
  meaning:
    "A complete set of starting values for a tube, a row each: label, value, unit. Prove them on a test coupon",
  args: {
    od: OD,
    wall: WALL,
    material: MATERIAL,
    style: word('"pulsed" (default) or "steady"', STYLES, "pulsed"),
    volts: VOLTS_OF_WALL,
    efficiency: EFFICIENCY,
    speed: orComputed(SPEED_OF_TRAVEL, "TRAVEL_SUGGEST"),
    beadWidth: BEAD_WIDTH,
    overlap: orComputed(OVERLAP, "OVERLAP_SUGGEST"),
    dwell: orComputed(DWELL, "START_DWELL"),
    peak: orComputed(number("Peak current of the first sector", CURRENT), "AMPS_WALL"),
    background: orDefault(number("Background current, fraction of the peak", SHARE), COMMON_BACKGROUND),
    allowance: ALLOWANCE,
    arcSize: orComputed(
      number("Width of the arc's spot, 4σ of its Gaussian", LENGTH),
      "4 × (0.5 mm + half the gap)",
    ),
  },
  gives: entries(
    "Rows of label, value, unit: standoff, electrode, volts, bead width, arc spot, travel, rpm, prepurge, dwell and its current, by sector (the overlap last) current, if pulsed the steady current that melts the same, temperature rise ahead of the arc, face and root at the end, minimum amps through, pulse, rotation, slope, postpurge, heat input, arc time, bore, remarks",
  ),
  equation:
    "Each value as typed or from its own formula: STANDOFF, ELECTRODE_DIAMETER, ARC_VOLTS, TRAVEL_SUGGEST, START_DWELL, AMPS_SECTORS, RING_BEAD, AMPS_THROUGH at the mean radius, OVERLAP_SUGGEST, PULSE_RATE, HEAT_INPUT; pulsed: mean I = steady mean/(1 + 0.37·D·v/(f·b)), D = s·(1 − s)·(1 − β)/(s + (1 − s)·β), peak of the first sector Ip = AMPS_WALL, background Ib = β·Ip, peak share s = (I − Ib)/(Ip − Ib), later peaks in the proportion of the means",
  tex: [
    String.raw`I_p = \text{AMPS\_WALL},\quad I_b = \beta\,I_p`,
    String.raw`s = \frac{I - I_b}{I_p - I_b},\quad I = \frac{I_s}{1 + 0.37\,D\,\frac{v}{f b}},\quad D = \frac{s(1 - s)(1 - \beta)}{s + (1 - s)\beta}`,
  ],
  where: {
    Iₚ: "peak current of the first sector (peak)",
    I_b: "its background current",
    I: "its mean current",
    Iₛ: "the steady current of the same bead, of AMPS_SECTORS",
    D: "charge of a pulse beyond its mean, over the charge of the pulse",
    β: "background over peak (background)",
    v: "surface travel",
    f: "pulse rate",
    b: "fused width",
    s: "fraction of the pulse time at peak",
  },
  validity: `Starting values for full-penetration autogenous butt welds of walls up to ${toldInBoth(THICKEST, LENGTH)}, with a remark above 3.2 mm (1/8 in) and under ${toldInBoth(THINNEST, LENGTH)}. #N/A where RING_BEAD does not give the bead back at every sector's end, root and all, within ${plainNumber(100 * PROMISE)} % of its width. Against outside brackets for 316L of 1 to 3.2 mm: peaks lie within 0.8 to 1.8 A per 0.001 in; arc energy lies within 60 to 130 J/mm² of travel × wall up to 1.6 mm, and above it (to 210) for thicker walls, whose suggested travel is slow. Sectors are quarters of the full turn; AMPS_SECTORS gives the overlap its own row.`,
  assumptions:
    "Those of the formulas it calls. Heat input is arc energy (efficiency 1) at the largest mean of dwell and sectors. A pulse melts as wide as a slightly larger steady current: fitted to eight computed runs, half to twice the suggested rate, of an independent nonlinear 3-D solution.",
  source:
    "The formulas it calls; background 30 %, spots overlapping by 0.75, 30 s and 15 s of gas and a downslope of three bead widths are common practice",
  unconfirmed:
    "Outside brackets cover 316L of 1 to 3.2 mm only: other metals and walls have none, and nothing is compared with a measured weld. Bead width, arc voltage and the level of the travel speed are estimates from common practice.",
  related: ["AMPS_SECTORS", "AMPS_WALL", "TRAVEL_SUGGEST", "CYCLE_TIME", "TAKEOFF"],
  synonyms: [
    "welding parameters",
    "settings",
    "starting values",
    "downslope",
    "amps and speed",
    "parameters",
    "program",
    "procedure",
    "WPS",
    "weld settings",
    "setup sheet",
    "recipe",
    "upslope",
    "ramp",
  ],
  figure: "cycle",
  example: {
    args: [1, 0.065],
    gives:
      '"Standoff", 0.0425, "in"; "Electrode diameter", 0.04, "in"; "Arc voltage", 9.3636, "V"; "Bead width", 0.16937, "in"; "Arc spot", 0.16374, "in"; "Travel speed", 5.138, "in/min"; …',
  },
  calc: ({ od, wall, material, ...choices }, units) =>
    entriesOf(schedule(od, wall, material, choices, units), units),
});

function entriesOf(set: Schedule, units: Units): Entry[] {
  const { pulse } = set;
  return [
    entry("Standoff", set.standoff, LENGTH),
    entry("Electrode diameter", set.electrode, LENGTH),
    entry("Arc voltage", set.volts, VOLTAGE),
    entry("Bead width", set.beadWidth, LENGTH),
    entry("Arc spot", set.arcSize, LENGTH),
    entry("Travel speed", set.speed, SPEED),
    entry("Rotor speed", set.rotor, ROTATION),
    entry("Prepurge", set.prepurge, TIME),
    entry("Start dwell", set.dwell, TIME),
    entry("Start dwell current", set.dwellAmps, CURRENT),
    ...set.means.flatMap((_, i) => sectorEntries(set, i)),
    entry("Minimum amps through", set.throughAmps, CURRENT),
    ...(pulse === undefined
      ? []
      : [entry("Pulse rate", pulse.rate, FREQUENCY), entry("Peak share of the pulse", pulse.share, SHARE)]),
    entry("Full turn", set.turnTime, TIME),
    entry("Rotation time with overlap", set.rotationTime, TIME),
    entry("Overlap", set.overlap, ANGLE),
    entry("Downslope", set.downslope, TIME),
    entry("Postpurge", set.postpurge, TIME),
    entry("Heat input, hottest sector", set.heatInput, HEAT_INPUT),
    entry("Arc time", set.arcTime, TIME),
    entry("Bore", set.bore, LENGTH),
    ...set.remarks.map((remark) => ({ label: toldRule(remark, units), value: undefined })),
    {
      label: "Starting values. Prove on a test coupon; the qualified procedure governs.",
      value: undefined,
    },
  ];
}

/** A sector, or past the full turn the overlap: its currents, and at its end the rise ahead of the arc and the bead. */
function sectorEntries({ means, steady, rises, sections, pulse }: Schedule, i: number): Entry[] {
  const sector = i < COMMON_SECTORS ? `Sector ${String(i + 1)}` : "Overlap";
  return [
    entry(`${sector} mean`, itemAt(means, i), CURRENT),
    ...(pulse === undefined
      ? []
      : [
          entry(`${sector} peak`, itemAt(pulse.peaks, i), CURRENT),
          entry(`${sector} background`, itemAt(pulse.backs, i), CURRENT),
          entry(`${sector} steady equivalent`, itemAt(steady, i), CURRENT),
        ]),
    entry(`${sector} rise ahead`, itemAt(rises, i), TEMPERATURE_RISE),
    entry(`${sector} face`, itemAt(sections, i).face, LENGTH),
    entry(`${sector} root`, itemAt(sections, i).root, LENGTH),
  ];
}

function entry<Kind extends string>(label: string, value: Of<Kind>, of: Quantity<Kind>): Entry {
  return { label, value: amount(value, of) };
}

export const SCHEDULES = family("Schedule", [SCHEDULE, SIZE_TABLE]);
