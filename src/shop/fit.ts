/** What a shop measured against what was predicted: a line through the origin with its intervals. Units cancel. */

import { between } from "../limits";
import { tQuantile } from "../numerics/student-t";
import type { Count, Share } from "../quantity";
import { COUNT, SHARE, si } from "../quantity";

/** A value with the interval of its mean and that of the next single one; one value alone has no intervals. */
export interface Fit {
  readonly value: Share;
  readonly low: Share | "";
  readonly high: Share | "";
  readonly nextLow: Share | "";
  readonly nextHigh: Share | "";
  readonly count: Count;
}

export interface Pair {
  readonly predicted: number;
  readonly measured: number;
}

/** How the scatter of what is measured goes with the size of what is predicted. */
export const SPREADS = ["percent", "same", "growing"] as const;
export type Spread = (typeof SPREADS)[number];

/** Scatter in the same percentage, in the same amount, or with a variance in proportion to the size: its power of x. */
const POWERS: Readonly<Record<Spread, number>> = { percent: 2, same: 0, growing: 1 };

/** Any unit, the same throughout; inside, no square overflows. */
export const ANY_SIZE = [1e-9, 1e9] as const;
export const CONFIDENCES = [0.5, 0.9999] as const;
export const COMMON_CONFIDENCE = si(0.95, SHARE);

export function checkedConfidence(confidence: Share): Share {
  return between("confidence", confidence, SHARE, ...CONFIDENCES);
}

/**
 * k of measured = k·predicted, least squares with weights x^(−p): k = Σwxy/Σwx², s² = Σw(y − kx)²/(n − 1). The interval
 * of k is ± t·s/√Σwx²; that of the next single y/x at the mean x̄ is ± t·s·√(1/(w̄x̄²) + 1/Σwx²), w̄ the weight there.
 * Needs at least one pair, all above 0.
 */
export function fitThroughOrigin(pairs: readonly Pair[], spread: Spread, confidence: Share): Fit {
  const count = pairs.length;
  const middle = pairs.reduce((sum, { predicted }) => sum + predicted, 0) / count;
  const power = POWERS[spread];
  // In parts of the mean, so that its own weight is 1; both sides of the line are divided by the scatter.
  const scaled = pairs.map(({ predicted, measured }) => {
    const x = predicted / middle;
    const scatter = x ** (power / 2);
    return { x: x / scatter, y: measured / middle / scatter };
  });
  const squares = scaled.reduce((sum, { x }) => sum + x * x, 0);
  const value = scaled.reduce((sum, { x, y }) => sum + x * y, 0) / squares;
  const misses = scaled.reduce((sum, { x, y }) => sum + (y - value * x) ** 2, 0);
  return withIntervals(value, count, misses, squares, confidence);
}

/** The mean of some values, which is a line through the origin whose x are all 1. */
export function meanOf(values: readonly number[], confidence: Share): Fit {
  const pairs = values.map((measured) => ({ predicted: 1, measured }));
  return fitThroughOrigin(pairs, "same", confidence);
}

function withIntervals(
  value: number,
  count: number,
  misses: number,
  squares: number,
  confidence: Share,
): Fit {
  const freedom = count - 1;
  if (freedom === 0) {
    const none = { low: "", high: "", nextLow: "", nextHigh: "" } as const;
    return { value: si(value, SHARE), ...none, count: si(count, COUNT) };
  }
  const reach = tQuantile((1 + confidence) / 2, freedom) * Math.sqrt(misses / freedom);
  const mean = reach / Math.sqrt(squares);
  const next = reach * Math.sqrt(1 + 1 / squares);
  return {
    value: si(value, SHARE),
    low: si(value - mean, SHARE),
    high: si(value + mean, SHARE),
    nextLow: si(value - next, SHARE),
    nextHigh: si(value + next, SHARE),
    count: si(count, COUNT),
  };
}
