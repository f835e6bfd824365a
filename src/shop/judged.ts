/** A shop's coupons together: each one's efficiency, the width that the mean of all predicts, and which stand apart. */

import { meanRadiusSpeed } from "../heat-flow/ring-pass";
import { tube } from "../limits";
import { tQuantile } from "../numerics/student-t";
import type { Length, Share } from "../quantity";
import { LENGTH, si, SPEED } from "../quantity";
import { orRefusal, Refusal } from "../refusal";
import type { Coupon, Side } from "./coupon";
import { efficiencyOf, widthAt } from "./coupon";
import { meanOf } from "./fit";

/** A weld of a tube: its travel is told at the outside. */
export interface TubeCoupon extends Omit<Coupon, "width"> {
  readonly od: Length;
  readonly face: Length;
  /** None where it was not measured: the face then counts alone. */
  readonly root: Length | undefined;
}

export interface JudgedCoupon {
  readonly measured: Length;
  readonly efficiency: Share;
  /** At the mean efficiency of all. */
  readonly predicted: Length;
  /** At the ends of the interval of a next weld; none of one coupon alone. */
  readonly low: Length | "";
  readonly high: Length | "";
  readonly apart: boolean;
}

interface Met {
  readonly coupon: Coupon;
  readonly side: Exclude<Side, "root">;
  readonly efficiency: Share;
}

/** Each coupon judged with all that could be read and met, or why it could not. */
export function judged(lines: readonly (() => TubeCoupon)[], confidence: Share): (JudgedCoupon | Refusal)[] {
  const all = lines.map((line) => orRefusal(() => met(line())));
  const sound = all.filter((one): one is Met => !(one instanceof Refusal));
  if (sound.length === 0) return all.filter((one) => one instanceof Refusal);
  const efficiencies = sound.map(({ efficiency }) => efficiency);
  const fit = meanOf(efficiencies, confidence);
  return all.map((one) => {
    if (one instanceof Refusal) return one;
    const at = (efficiency: Share | ""): Length | "" =>
      efficiency === "" ? "" : widthAt(one.coupon, one.side, efficiency);
    return {
      measured: one.coupon.width,
      efficiency: one.efficiency,
      predicted: widthAt(one.coupon, one.side, fit.value),
      low: at(fit.nextLow),
      high: at(fit.nextHigh),
      apart: standsApart(one.efficiency, efficiencies, confidence),
    };
  });
}

function met({ od, face, root, ...weld }: TubeCoupon): Met {
  tube(od, weld.wall);
  const speed = si(meanRadiusSpeed(od, weld.wall, weld.speed), SPEED);
  const side = root === undefined ? "face" : "mean";
  const width = si(root === undefined ? face : (face + root) / 2, LENGTH);
  const coupon = { ...weld, speed, width };
  return { coupon, side, efficiency: efficiencyOf(coupon, side) };
}

/** Of fewer nobody can say which one is wrong. */
const FEWEST = 4;

/**
 * Grubbs' test on each side: |x − mean|/s over (n − 1)/√n·√(t²/(n − 2 + t²)), t of 1 − (1 − confidence)/2n with n − 2
 * degrees of freedom, so that all coupons of a sound list are within it as often as the confidence says.
 */
export function standsApart(value: number, all: readonly number[], confidence: number): boolean {
  const n = all.length;
  if (n < FEWEST) return false;
  const mean = all.reduce((sum, each) => sum + each, 0) / n;
  const deviation = Math.sqrt(all.reduce((sum, each) => sum + (each - mean) ** 2, 0) / (n - 1));
  const t = tQuantile(1 - (1 - confidence) / (2 * n), n - 2);
  const limit = ((n - 1) / Math.sqrt(n)) * Math.sqrt((t * t) / (n - 2 + t * t));
  return Math.abs(value - mean) > limit * deviation;
}
