/** Travel of the arc around the tube. */

import { above0, atLeast0, isAbove, tube, wholeUp } from "../limits";
import type { Material } from "../metal/material";
import type { Angle, Length, Rotation, Speed, Time } from "../quantity";
import { ANGLE, LENGTH, ROTATION, si, SPEED, TIME } from "../quantity";
import { amount, orRefusal, Refusal, rule } from "../refusal";
import { commonBeadWidth } from "./bead";

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

/** Overlap, degrees: covers one bead width on the outside, rounded up to a multiple of 5°. Geometry. */
export function suggestedOverlap(od: Length, wall: Length, beadWidth: Length): Angle {
  tube(od, wall);
  const circumference = Math.PI * od;
  if (isAbove(above0("beadWidth", beadWidth, LENGTH), circumference)) {
    throw new Refusal(
      "beadWidth",
      amount(beadWidth, LENGTH),
      rule`must be at most the circumference, ${amount(circumference, LENGTH)}`,
    );
  }
  return si(wholeUp((360 * beadWidth) / circumference / OVERLAP_STEP) * OVERLAP_STEP, ANGLE);
}

/** The same of the common bead; speaks of the tube where that bead, which nobody typed, is wider than its circumference. */
export function commonOverlap(od: Length, wall: Length): Angle {
  const beadWidth = commonBeadWidth(wall);
  const overlap = orRefusal(() => suggestedOverlap(od, wall, beadWidth));
  if (!(overlap instanceof Refusal)) return overlap;
  if (overlap.argument !== "beadWidth") throw overlap;
  throw new Refusal(
    "od",
    amount(od, LENGTH),
    rule`the default bead, ${amount(beadWidth, LENGTH)}, is wider than the circumference`,
    "unanswerable",
  );
}
