/** The arc gap, how it is set and gauged, and the electrode that carries the current. */

import { above0, atLeast0, between, isAbove, isBelow } from "../limits";
import type { Current, Length, Units, Voltage } from "../quantity";
import { CURRENT, LENGTH, si, VOLTAGE } from "../quantity";
import { amount, Refusal, rule } from "../refusal";

/** Ten thousandths of an inch, the common addition to half the wall, m. */
export const COMMON_ALLOWANCE = si(0.000_254, LENGTH);

/** Arc gap, m: half the wall plus an allowance. Common practice of orbital tube welding. */
export function standoff(wall: Length, allowance: Length): Length {
  return si(above0("wall", wall, LENGTH) / 2 + atLeast0("allowance", allowance, LENGTH), LENGTH);
}

/**
 * Minimum and maximum gap around the tube, m, when the outside diameter may be off by ± odTolerance and the tube
 * runs out by `runout` (total indicator reading): both move the surface by half their amount. Geometry.
 */
export function standoffSpread(gap: Length, odTolerance: Length, runout: Length): [min: Length, max: Length] {
  above0("standoff", gap, LENGTH);
  const swing = atLeast0("odTolerance", odTolerance, LENGTH) / 2 + atLeast0("runout", runout, LENGTH) / 2;
  if (isBelow(swing, gap)) return [si(gap - swing, LENGTH), si(gap + swing, LENGTH)];
  throw new Refusal(
    "standoff",
    amount(gap, LENGTH),
    rule`the electrode could touch the tube; must be above odTolerance/2 + runout/2, ${amount(swing, LENGTH)}`,
  );
}

/** Electrode length from seat to tip, m: what is left of the reach from tube center to seat. Geometry. */
export function electrodeLength(reach: Length, od: Length, gap: Length): Length {
  above0("reach", reach, LENGTH);
  const taken = above0("od", od, LENGTH) / 2 + above0("standoff", gap, LENGTH);
  if (isBelow(taken, reach)) return si(reach - taken, LENGTH);
  throw new Refusal(
    "reach",
    amount(reach, LENGTH),
    rule`must be above od/2 + standoff, ${amount(taken, LENGTH)}`,
  );
}

interface ElectrodeSize {
  /** The nominal size as each system lists it, m. */
  readonly diameter: Record<Units, Length>;
  readonly min: number;
  readonly max: number;
}

function size(inches: number, millimeters: number, min: number, max: number): ElectrodeSize {
  return { diameter: { US: si(inches * 0.0254, LENGTH), SI: si(millimeters / 1000, LENGTH) }, min, max };
}

/** Current ranges for direct current, electrode negative, in argon: [aws-a5.12] (from memory). */
const SIZES = [
  size(0.02, 0.5, 5, 20),
  size(0.04, 1.0, 15, 80),
  size(1 / 16, 1.6, 70, 150),
  size(3 / 32, 2.4, 150, 250),
  size(1 / 8, 3.2, 250, 400),
  size(5 / 32, 4.0, 400, 500),
] as const;

/**
 * Nominal diameter of the smallest standard electrode whose range holds `amps`, m. The inch and the metric series
 * are sizes of their own (1/16 in beside 1.6 mm), so the answer depends on the system asked for.
 */
export function electrodeDiameter(amps: Current, units: Units): Length {
  above0("amps", amps, CURRENT);
  const fit = SIZES.find(({ min, max }) => !isBelow(amps, min) && !isAbove(amps, max));
  if (fit !== undefined) return fit.diameter[units];
  throw new Refusal(
    "amps",
    amount(amps, CURRENT),
    rule`no standard electrode is listed; the table runs from ${amount(SIZES[0].min, CURRENT)} to ${amount(SIZES[5].max, CURRENT)}`,
    "unanswerable",
  );
}

/** The gaps, m, and currents, A, that the estimate of arc voltage holds for. */
export const ARC_VOLTS_GAPS = [si(0.0005, LENGTH), si(0.003, LENGTH)] as const;
const ARC_VOLTS_AMPS = [si(30, CURRENT), si(150, CURRENT)] as const;
/** The current that the level stands for where none is given, A. */
const LEVEL_AMPS = 100;
/** V per A: through the arcs of [kraus-1987], 38 A 7.5 V, 50 A 8.0 V and 70 A 8.5 V. */
const VOLTS_PER_AMP = 0.031;

/**
 * Arc voltage, V, for argon, electrode negative: 8.5 V + 0.8 V per mm of gap, for gaps of 0.5 to 3 mm, an estimate from
 * common practice. A given current moves it by 0.031 V per A from 100 A.
 */
export function arcVolts(gap: Length, amps?: Current): Voltage {
  const level = 8.5 + 800 * between("standoff", gap, LENGTH, ...ARC_VOLTS_GAPS);
  if (amps === undefined) return si(level, VOLTAGE);
  const current = between("amps", above0("amps", amps, CURRENT), CURRENT, ...ARC_VOLTS_AMPS);
  return si(level + VOLTS_PER_AMP * (current - LEVEL_AMPS), VOLTAGE);
}
