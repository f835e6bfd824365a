import type { Quantity } from "../../src/quantity";
import {
  ANGLE,
  CURRENT,
  FREQUENCY,
  HEAT_INPUT,
  LENGTH,
  ROTATION,
  SHARE,
  SPEED,
  TIME,
  unitOf,
  VOLTAGE,
} from "../../src/quantity";
import type { Schedule, Style } from "../../src/current/schedule";
import { schedule } from "../../src/current/schedule";
import type { Value } from "../answer";
import { answer } from "../answer";
import type { Reader } from "../cells";
import { readMaterial } from "../metal/materials";

const STYLES: readonly Style[] = ["pulsed", "steady"];

/**
 * A complete set of starting values for a tube, a row each: label, value, unit. Prove them on a test coupon.
 * @customfunction SCHEDULE
 * @param od Outside diameter, in | mm
 * @param wall Wall thickness, in | mm
 * @param [material] Designation such as "316L" (default); BEAD.MATERIALS lists them
 * @param [style] "pulsed" (default) or "steady"
 * @param [units] "US" (default) or "SI"
 * @returns Rows of label, value, unit: standoff, electrode, volts, bead width, travel, rpm, prepurge, dwell, amps by sector, pulse, rotation, slope, postpurge, heat input, arc time, a warning
 * @equation Each value from its own formula: STANDOFF, ELECTRODE_DIAMETER, ARC_VOLTS, TRAVEL_SUGGEST, START_DWELL, AMPS_SECTORS, OVERLAP_SUGGEST, PULSE_RATE, HEAT_INPUT; pulsed: peak of the first sector Ip = AMPS_WALL, background Ib = 30 %·Ip, peak share s = (I − Ib)/(Ip − Ib), later peaks in the proportion of the means
 * @math I_p = \text{AMPS\_WALL},\quad I_b = 30\,\%\cdot I_p
 * @math s = \frac{I - I_b}{I_p - I_b}
 * @where Iₚ peak current of the first sector; I_b its background current; I its mean current, of AMPS_SECTORS; s share of the pulse time at peak
 * @validity Starting values for full-penetration autogenous butt welds of walls 0.02 to 0.216 in (0.5 to 5.5 mm). Beside outside brackets for 316L of 1 to 3.2 mm: peaks lie within 0.8 to 1.8 A per 0.001 in; arc energy within 60 to 130 J/mm² of travel × wall up to 1.7 mm, above it (to 207) for thicker walls, whose suggested travel is slow. Sectors are quarters of the full turn; AMPS_SECTORS gives the overlap its own row.
 * @assumptions Those of the formulas it calls. Heat input is arc energy (efficiency 1) of the hottest sector.
 * @source The formulas it calls; background 30 %, spots overlapping by 0.75, 30 s and 15 s of gas and a downslope of three bead widths are common practice
 * @unconfirmed Outside brackets are of 316L, 1 to 3.2 mm: other metals and walls have none, and no single measured weld stands beside it. Bead width, arc voltage and the level of the travel speed are estimates from common practice.
 * @related AMPS_SECTORS, AMPS_WALL, TRAVEL_SUGGEST, CYCLE_TIME, TAKEOFF
 * @figure cycle
 * @example =BEAD.SCHEDULE(1, 0.065) → "Standoff", 0.0425, "in"; "Electrode diameter", 0.04, "in"; "Arc voltage", 9.3636, "V"; "Bead width", 0.16937, "in"; "Travel speed", 5.138, "in/min"; …
 */
export function scheduleCells(
  od: unknown,
  wall: unknown,
  material?: unknown,
  style?: unknown,
  units?: unknown,
): unknown[][] {
  return answer(units, (read) => {
    const diameter = read.number("od", od, LENGTH);
    const thickness = read.number("wall", wall, LENGTH);
    const metal = readMaterial(read, material);
    const kind = read.wordOr("style", style, STYLES, "pulsed");
    return rows(read, schedule(diameter, thickness, metal, kind, read.units));
  });
}

function rows(read: Reader, set: Schedule): Value[][] {
  const row = (label: string, value: number, of: Quantity): Value[] => [
    label,
    read.give(value, of),
    unitOf(of, read.units),
  ];
  const pulse = set.pulse;
  return [
    row("Standoff", set.standoff, LENGTH),
    row("Electrode diameter", set.electrode, LENGTH),
    row("Arc voltage", set.volts, VOLTAGE),
    row("Bead width", set.beadWidth, LENGTH),
    row("Travel speed", set.speed, SPEED),
    row("Rotor speed", set.turns, ROTATION),
    row("Prepurge", set.prepurge, TIME),
    row("Start dwell", set.dwell, TIME),
    ...(pulse === undefined
      ? set.means.map((amps, i) => row(`Sector ${String(i + 1)} amps`, amps, CURRENT))
      : [
          ...pulse.peaks.flatMap((peak, i) => [
            row(`Sector ${String(i + 1)} peak`, peak, CURRENT),
            row(`Sector ${String(i + 1)} background`, pulse.backs[i] ?? NaN, CURRENT),
          ]),
          row("Pulse rate", pulse.rate, FREQUENCY),
          row("Peak share of the pulse", pulse.share, SHARE),
        ]),
    row("Rotation time with overlap", set.rotationTime, TIME),
    row("Overlap", set.overlap, ANGLE),
    row("Downslope", set.downslope, TIME),
    row("Postpurge", set.postpurge, TIME),
    row("Heat input, hottest sector", set.heatInput, HEAT_INPUT),
    row("Arc time", set.arcTime, TIME),
    ["Starting values. Prove on a test coupon; the qualified procedure governs.", "", ""],
  ];
}
