/** Travel of the arc round the tube. */

import { above0, atLeast0, tube } from "../limits";
import type { Material } from "../metal/material";
import type { Angle, Length, Rotation, Speed, Time } from "../quantity";
import { ANGLE, LENGTH, ROTATION, si, SPEED, TIME } from "../quantity";

/** Surface speed, m/s, of a head that turns at `turns` per second: π·d·n. Geometry. */
export function travelSpeed(od: Length, turns: Rotation): Speed {
  return si(Math.PI * above0("od", od, LENGTH) * above0("rpm", turns, ROTATION), SPEED);
}

/** Turns per second that give a surface speed: v/(π·d). Geometry. */
export function rotation(od: Length, speed: Speed): Rotation {
  return si(above0("speed", speed, SPEED) / (Math.PI * above0("od", od, LENGTH)), ROTATION);
}

/** Seconds for a full turn and the overlap (degrees past the start): π·d·(360 + overlap)/360/v. Geometry. */
export function travelTime(od: Length, speed: Speed, overlap: Angle): Time {
  const turns = (360 + atLeast0("overlap", overlap, ANGLE)) / 360;
  return si(turns / rotation(od, speed), TIME);
}

/**
 * Half of Rosenthal's dimensionless speed × width at which the suggested speed sits: v·b/(4α) = 0.4. Fast enough that
 * the pool stays short, slow enough that the wall melts evenly through; a choice of common practice.
 */
export const SUGGESTED_PECLET = 0.4;

/** 3 and 10 in/min: what heads turn at, common practice. A conductive metal would ask for more, a thick wall for less. */
export const SUGGESTED_SPEEDS = [si(0.0762 / 60, SPEED), si(0.254 / 60, SPEED)] as const;

/** Suggested travel speed, m/s: v·b/(4α) = 0.4 with the hot diffusivity α and the bead width b, held from 3 to 10 in/min. */
export function suggestedSpeed(beadWidth: Length, material: Material): Speed {
  const free =
    (4 * material.hotDiffusivity.value * SUGGESTED_PECLET) / above0("beadWidth", beadWidth, LENGTH);
  const [slowest, fastest] = SUGGESTED_SPEEDS;
  return si(Math.min(Math.max(free, slowest), fastest), SPEED);
}

const OVERLAP_STEP = 5;
/** Keeps a width that is a whole number of steps from being pushed a step further by rounding. */
const ROUNDING = 1e-9;

/** Overlap, degrees: covers one bead width on the outside, rounded up to a multiple of 5°. Geometry. */
export function suggestedOverlap(od: Length, wall: Length, beadWidth: Length): Angle {
  tube(od, wall);
  const degrees = (360 * above0("beadWidth", beadWidth, LENGTH)) / (Math.PI * od);
  return si(Math.max(1, Math.ceil(degrees / OVERLAP_STEP - ROUNDING)) * OVERLAP_STEP, ANGLE);
}
