/** The arc efficiency that one weld of the shop speaks for: the inverse of what the model melts, by its power. */

import { above0, isAbove } from "../limits";
import type { MeltSection } from "../heat-flow/melt";
import { meltSection, powerOfFace, powerOfMean, powerOfRoot, readyPlate } from "../heat-flow/melt";
import type { Weld } from "../heat-flow/plate";
import { fusedWidth, plateOf, riseToMelt } from "../heat-flow/plate";
import { wattsPerAmp } from "../heat-flow/arc";
import type { Current, Length, Share, Voltage } from "../quantity";
import { CURRENT, LENGTH, SHARE, si } from "../quantity";
import { amount, Refusal, rule } from "../refusal";

/** Which of its fused widths was measured. */
export const SIDES = ["mean", "face", "root"] as const;
export type Side = (typeof SIDES)[number];

export interface Coupon extends Weld {
  readonly amps: Current;
  readonly volts: Voltage;
  readonly width: Length;
}

/** What the model melts of the same place at a power: the inverse. */
const WIDTH_OF_SIDE = {
  mean: ({ face, root }: MeltSection): number => (face + root) / 2,
  face: ({ face }: MeltSection): number => face,
} as const;

/** W into a plate that melts so wide a bead, by the side that was measured. */
export const POWER_OF_SIDE = { mean: powerOfMean, face: powerOfFace, root: powerOfRoot } as const;
/** Less is no arc. */
const LEAST = 0.001;

/**
 * Fraction of V·I at which a flat plate from 20 °C shows the measured width. Refused where that is more than all of it.
 */
export function efficiencyOf(coupon: Coupon, side: Side): Share {
  const arc = above0("amps", coupon.amps, CURRENT) * wattsPerAmp(coupon.volts, si(1, SHARE));
  const plate = plateOf(coupon);
  const width = fusedWidth("width", coupon.width, plate);
  const power = POWER_OF_SIDE[side](readyPlate(plate), riseToMelt(coupon.material), width);
  const efficiency = power / arc;
  if (efficiency >= LEAST && !isAbove(efficiency, 1)) return si(Math.min(efficiency, 1), SHARE);
  throw new Refusal(
    "width",
    amount(coupon.width, LENGTH),
    rule`takes ${amount(efficiency, SHARE)} of the arc's power; must be between ${amount(LEAST, SHARE)} and ${amount(1, SHARE)}: check width, amps, volts, wall and travel`,
    "unanswerable",
  );
}

/** Width that the model has at an efficiency; 0 where nothing melts. */
export function widthAt(coupon: Coupon, side: keyof typeof WIDTH_OF_SIDE, efficiency: number): Length {
  if (efficiency <= 0) return si(0, LENGTH);
  const power = coupon.amps * coupon.volts * efficiency;
  const section = meltSection(readyPlate(plateOf(coupon)), riseToMelt(coupon.material), power);
  return si(WIDTH_OF_SIDE[side](section), LENGTH);
}
