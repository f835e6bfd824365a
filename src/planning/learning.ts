/** Learning curves: each doubling of the joints made costs the same fraction of the time before. */

import { above0, wholeFrom1 } from "../limits";
import type { Count, Share } from "../quantity";
import { COUNT, SHARE, si } from "../quantity";
import { amount, Refusal, rule } from "../refusal";

/**
 * What falls with the doubling: `average`, the mean of all joints so far ([wright-1936]); `unit`, the joint made just then
 * ([crawford-1944]). The totals of the two differ by a third after a few doublings, so neither goes without its name.
 */
export const LEARNING_MODELS = ["average", "unit"] as const;
export type LearningModel = (typeof LEARNING_MODELS)[number];

/** Far beyond any lot. */
export const MOST_UNITS = si(1e9, COUNT);
/** At half the time per doubling all joints after the first together cost nothing: no one learns so fast. */
export const STEEPEST = 0.5;

export interface Curve {
  /** Time, or cost, of the first joint, in any unit; the answer is in the same. */
  readonly first: Count;
  /** Time after a doubling over the time before it. */
  readonly rate: Share;
  readonly model: LearningModel;
}

/** Time of the nth joint alone: first·(n^{1+b} − (n − 1)^{1+b}) or first·n^b, b = log₂ rate. */
export function learnTime(curve: Curve, n: Count): Count {
  const whole = wholeFrom1("n", n, MOST_UNITS);
  const { first, b } = readCurve(curve);
  return si(first * (curve.model === "average" ? between(whole, whole, 1 + b) : whole ** b), COUNT);
}

/** Time of all joints of a run, the first and last of it included. */
export function learnTotal(curve: Curve, from: Count, to: Count): Count {
  const [start, end] = [wholeFrom1("from", from, MOST_UNITS), wholeFrom1("to", to, MOST_UNITS)];
  if (end < start) {
    throw new Refusal("to", amount(to, COUNT), rule`must be at least from, ${amount(start, COUNT)}`);
  }
  const { first, b } = readCurve(curve);
  return si(
    first * (curve.model === "average" ? between(start, end, 1 + b) : sumOfPowers(start, end, b)),
    COUNT,
  );
}

function readCurve({ first, rate }: Curve): { readonly first: number; readonly b: number } {
  above0("first", first, COUNT);
  if (rate > STEEPEST && rate <= 1) return { first, b: Math.log2(rate) };
  throw new Refusal(
    "rate",
    amount(rate, SHARE),
    rule`must be above ${amount(STEEPEST, SHARE)} and at most ${amount(1, SHARE)}`,
  );
}

/** to^p − (from − 1)^p, by the ratio of the two: nearly alike, their difference would be mostly rounding. */
function between(from: number, to: number, p: number): number {
  const ratio = (from - 1) / to;
  return -(to ** p) * Math.expm1(p * (ratio < 0.5 ? Math.log(ratio) : Math.log1p(-(to - from + 1) / to)));
}

/** Up to this many terms are added one by one. */
const FEW = 64;
/** B₂ₖ/(2k)! of the Euler–Maclaurin sum. */
const BERNOULLI = [1 / 12, -1 / 720, 1 / 30_240, -1 / 1_209_600];

/**
 * Σ n^b, −1 < b ≤ 0. Beyond the first terms by Euler–Maclaurin: integral, half of both ends, and corrections that fall
 * with n^{−2} each; from 64 on the fifth is under 1e-18 of the sum.
 */
function sumOfPowers(from: number, to: number, b: number): number {
  const start = Math.max(from, FEW);
  let sum = 0;
  for (let n = from; n <= to && n < start; n += 1) sum += n ** b;
  return to < start ? sum : sum + smoothSum(start, to, b);
}

function smoothSum(from: number, to: number, b: number): number {
  const p = 1 + b;
  const integral = (from ** p * Math.expm1(p * Math.log(to / from))) / p;
  let slopes = 0;
  // d^{2k−1}/dn^{2k−1} of n^b is b(b − 1)…(b − 2k + 2)·n^{b−2k+1}.
  let falling = b;
  BERNOULLI.forEach((factor, i) => {
    const power = b - 2 * i - 1;
    slopes += factor * falling * (to ** power - from ** power);
    falling *= power * (power - 1);
  });
  return integral + (from ** b + to ** b) / 2 + slopes;
}
