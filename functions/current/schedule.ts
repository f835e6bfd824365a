/** The schedule: a complete set of starting values for one tube. */

import type { Style } from "../../src/current/choices";
import { COMMON_BACKGROUND } from "../../src/current/choices";
import type { Schedule } from "../../src/current/schedule";
import { schedule } from "../../src/current/schedule";
import { ARC_VOLTS_WALLS } from "../../src/heat-flow/arc";
import { COMMON_SECTORS } from "../../src/heat-flow/sectors";
import { itemAt } from "../../src/numerics/item";
import type { Of, Quantity } from "../../src/quantity";
import {
  ANGLE,
  CURRENT,
  FREQUENCY,
  HEAT_INPUT,
  LENGTH,
  ROTATION,
  SHARE,
  SPEED,
  TEMPERATURE_RISE,
  TIME,
  VOLTAGE,
} from "../../src/quantity";
import { amount } from "../../src/refusal";
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

const STYLES: readonly Style[] = ["pulsed", "steady"];
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
  },
  gives: entries(
    "Rows of label, value, unit: standoff, electrode, volts, bead width, travel, rpm, prepurge, dwell; current by sector (the overlap last) and temperature rise ahead of the arc; pulse, rotation, slope, postpurge, heat input, arc time, bore, a warning",
  ),
  equation:
    "Each value as typed or from its own formula: STANDOFF, ELECTRODE_DIAMETER, ARC_VOLTS, TRAVEL_SUGGEST, START_DWELL, AMPS_SECTORS, OVERLAP_SUGGEST, PULSE_RATE, HEAT_INPUT; pulsed: peak of the first sector Ip = AMPS_WALL, background Ib = f·Ip, peak share s = (I − Ib)/(Ip − Ib), later peaks in the proportion of the means",
  tex: [String.raw`I_p = \text{AMPS\_WALL},\quad I_b = f\,I_p`, String.raw`s = \frac{I - I_b}{I_p - I_b}`],
  where: {
    Iₚ: "peak current of the first sector (peak)",
    I_b: "its background current",
    f: "background over peak (background)",
    I: "its mean current, of AMPS_SECTORS",
    s: "fraction of the pulse time at peak",
  },
  validity: `Starting values for full-penetration autogenous butt welds of walls ${toldInBoth(THINNEST, LENGTH)} to ${toldInBoth(THICKEST, LENGTH)}, others where volts is given. Against outside brackets for 316L of 1 to 3.2 mm: peaks lie within 0.8 to 1.8 A per 0.001 in; arc energy lies within 60 to 130 J/mm² of travel × wall up to 1.7 mm, and above it (to 207) for thicker walls, whose suggested travel is slow. Sectors are quarters of the full turn, the overlap one more.`,
  assumptions:
    "Those of the formulas it calls. Heat input is arc energy (efficiency 1) of the hottest sector.",
  source:
    "The formulas it calls; background 30 %, spots overlapping by 0.75, 30 s and 15 s of gas and a downslope of three bead widths are common practice",
  unconfirmed:
    "Outside brackets cover 316L of 1 to 3.2 mm only: other metals and walls have none, and nothing is compared with a measured weld. Bead width, arc voltage and the level of the travel speed are estimates from common practice.",
  related: ["AMPS_SECTORS", "AMPS_WALL", "TRAVEL_SUGGEST", "CYCLE_TIME", "TAKEOFF"],
  synonyms: ["welding parameters", "settings", "starting values", "downslope", "amps and speed"],
  figure: "cycle",
  example: {
    args: [1, 0.065],
    gives:
      '"Standoff", 0.0425, "in"; "Electrode diameter", 0.04, "in"; "Arc voltage", 9.3636, "V"; "Bead width", 0.16937, "in"; "Travel speed", 5.138, "in/min"; …',
  },
  calc: ({ od, wall, material, ...choices }, units) =>
    entriesOf(schedule(od, wall, material, choices, units)),
});

function entriesOf(set: Schedule): Entry[] {
  const { pulse } = set;
  return [
    entry("Standoff", set.standoff, LENGTH),
    entry("Electrode diameter", set.electrode, LENGTH),
    entry("Arc voltage", set.volts, VOLTAGE),
    entry("Bead width", set.beadWidth, LENGTH),
    entry("Travel speed", set.speed, SPEED),
    entry("Rotor speed", set.rotor, ROTATION),
    entry("Prepurge", set.prepurge, TIME),
    entry("Start dwell", set.dwell, TIME),
    ...set.means.flatMap((_, i) => sectorEntries(set, i)),
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
    {
      label: "Starting values. Prove on a test coupon; the qualified procedure governs.",
      value: undefined,
    },
  ];
}

/** A sector, or past the full turn the overlap: mean, peak, background and the rise ahead of the arc at its end. */
function sectorEntries({ means, rises, pulse }: Schedule, i: number): Entry[] {
  const sector = i < COMMON_SECTORS ? `Sector ${String(i + 1)}` : "Overlap";
  return [
    entry(`${sector} mean`, itemAt(means, i), CURRENT),
    ...(pulse === undefined
      ? []
      : [
          entry(`${sector} peak`, itemAt(pulse.peaks, i), CURRENT),
          entry(`${sector} background`, itemAt(pulse.backs, i), CURRENT),
        ]),
    entry(`${sector} rise ahead`, itemAt(rises, i), TEMPERATURE_RISE),
  ];
}

function entry<Kind extends string>(label: string, value: Of<Kind>, of: Quantity<Kind>): Entry {
  return { label, value: amount(value, of) };
}

export const SCHEDULES = family("Schedule", [SCHEDULE]);
