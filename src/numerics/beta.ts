/**
 * The regularized incomplete beta function I_x(a, b) and its quantile, a and b above 0: chances of the beta, Student's
 * t, F and binomial distributions are values of it. The continued fraction 8.17.22 of [nist-dlmf] by Lentz's method, of
 * the smaller tail, whose logarithm is there where the tail itself is too small for a number.
 */

import { rootBetween } from "./root";

/** Terms of the fraction: a few times √max(a, b) are needed. */
const MOST_TERMS = 100_000;
const EPSILON = 2 ** -53;

/** I_x(a, b), the chance that a beta variable is at most x; 0 ≤ x ≤ 1. */
export function betaRegularized(a: number, b: number, x: number): number {
  return chanceOf(logOddsAt(a, b, x, 1 - x));
}

/** The x at which I_x(a, b) = chance, 0 ≤ chance ≤ 1. */
export function betaQuantile(chance: number, a: number, b: number): number {
  return chanceOf(betaQuantileLogOdds(Math.log(chance) - Math.log1p(-chance), a, b));
}

/** Odds beyond these are those of 0 and of 1 in a double. */
const MOST_LOG_ODDS = 700;
const CLOSE = 1e-15;

/**
 * ln(x/(1 − x)) at which the chance has these log odds. Between the tails both grow smoothly, at a rate of a on the far
 * left and of b on the far right, so that neither a tiny x nor one next to 1 loses digits.
 */
export function betaQuantileLogOdds(logOdds: number, a: number, b: number): number {
  if (Math.abs(logOdds) === Infinity) return logOdds;
  const miss = (z: number): number => logOddsAt(a, b, chanceOf(z), chanceOf(-z)) - logOdds;
  if (miss(-MOST_LOG_ODDS) > 0) return -Infinity;
  if (miss(MOST_LOG_ODDS) < 0) return Infinity;
  return rootBetween(miss, -MOST_LOG_ODDS, MOST_LOG_ODDS, CLOSE);
}

/** 1/(1 + e^{−z}). */
function chanceOf(z: number): number {
  return 1 / (1 + Math.exp(-z));
}

/** ln(I/(1 − I)); y is 1 − x, given beside it because it may be too small to be left of the difference. */
function logOddsAt(a: number, b: number, x: number, y: number): number {
  if (x <= 0) return -Infinity;
  if (y <= 0) return Infinity;
  return x * (b + 1) <= y * (a + 1) ? logOddsOf(logTail(a, b, x, y)) : -logOddsOf(logTail(b, a, y, x));
}

/** ln(p/(1 − p)) from ln p. */
function logOddsOf(logChance: number): number {
  return logChance - Math.log(-Math.expm1(logChance));
}

/** ln I_x(a, b) where x is at most the mean, more or less, so that the fraction converges quickly. */
function logTail(a: number, b: number, x: number, y: number): number {
  return logFront(a, b, x, y) - Math.log(a) + Math.log(fraction(a, b, x));
}

/**
 * ln(x^a·y^b/B(a, b)). Written out, large numbers would cancel; so as [loader-2000]: Stirling's formula, what it leaves
 * of the three gamma functions, and how far x and y are from a/(a + b) and b/(a + b).
 */
function logFront(a: number, b: number, x: number, y: number): number {
  const off = x * b - y * a;
  const rest = stirlingRest(a + b) - stirlingRest(a) - stirlingRest(b);
  return (
    Math.log(a / (a + b)) / 2 +
    Math.log(b / (2 * Math.PI)) / 2 +
    rest +
    a * logOver(off / a, (x * (a + b)) / a) +
    b * logOver(-off / b, (y * (a + b)) / b)
  );
}

/** ln(1 + u) − u, from u where that is small and from 1 + u elsewhere; the two terms −u of a sum cancel. */
function logOver(u: number, onePlus: number): number {
  return (Math.abs(u) < 0.5 ? Math.log1p(u) : Math.log(onePlus)) - u;
}

/** From here on the terms of the rest below are exact to rounding. */
const LARGE = 16;

/** ln Γ(a) − ((a − ½)·ln a − a + ½ln 2π), a > 0. */
function stirlingRest(a: number): number {
  let below = 0;
  let at = a;
  for (; at < LARGE; at += 1) below += (at + 0.5) * Math.log1p(1 / at) - 1;
  const s = 1 / (at * at);
  const series =
    1 / 12 - s * (1 / 360 - s * (1 / 1260 - s * (1 / 1680 - s * (1 / 1188 - (s * 691) / 360_360))));
  return below + series / at;
}

/** The continued fraction, without the factor before it. No denominator comes near 0: x is at most about the mean. */
function fraction(a: number, b: number, x: number): number {
  let c = 1;
  let d = 1 / (1 - ((a + b) * x) / (a + 1));
  let value = d;
  for (let m = 1; m <= MOST_TERMS; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / (1 + even * d);
    c = 1 + even / c;
    value *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / (1 + odd * d);
    c = 1 + odd / c;
    value *= d * c;
    if (Math.abs(d * c - 1) <= 2 * EPSILON) break;
  }
  return value;
}
