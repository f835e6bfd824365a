/** Chances of counts: so many out of a running process, or out of one lot. */

import { stirlingRest } from "./stirling-rest";

/**
 * Chance of `most` or fewer hits in `trials` independent ones, each with a chance of `hit`, 0 < hit < 1. `miss` is
 * 1 − hit, given apart because a hit that is nearly certain leaves little of it.
 */
export function binomialUpTo(most: number, trials: number, hit: number, miss: number): number {
  const step = (k: number): number => ((trials - k) * hit) / ((k + 1) * miss);
  const mode = Math.floor((trials + 1) * hit);
  return sumUpTo(most, { least: 0, most: trials, mode }, (k) => binomial(k, trials, hit, miss), step);
}

/** Chance of `most` or fewer bad ones among `drawn` of a lot of `lot` that holds `bad`: drawn without putting back. */
export function hypergeometricUpTo(most: number, drawn: number, bad: number, lot: number): number {
  const least = Math.max(0, drawn + bad - lot);
  const greatest = Math.min(drawn, bad);
  const step = (k: number): number => ((bad - k) / (k + 1)) * ((drawn - k) / (lot - bad - drawn + k + 1));
  const mode = Math.floor(((drawn + 1) / (lot + 2)) * (bad + 1));
  return sumUpTo(most, { least, most: greatest, mode }, (k) => hypergeometric(k, drawn, bad, lot), step);
}

/** Chance of exactly k bad ones in such a draw: three binomial chances at the same share of the lot [loader-2000]. */
export function hypergeometric(k: number, drawn: number, bad: number, lot: number): number {
  if (k < 0 || k > bad || k > drawn || drawn - k > lot - bad) return 0;
  if (drawn === lot) return 1;
  const [hit, miss] = [drawn / lot, (lot - drawn) / lot];
  const found = logBinomial(k, bad, hit, miss) + logBinomial(drawn - k, lot - bad, hit, miss);
  return Math.exp(found - logBinomial(drawn, lot, hit, miss));
}

interface Terms {
  readonly least: number;
  readonly most: number;
  readonly mode: number;
}

/** Terms below this part of the sum change nothing in it. */
const NOTHING = 1e-18;

/**
 * Sum of the terms up to `most`: from its largest one outward by their ratios, so that only as many are looked at as
 * count. All are positive, so nothing cancels.
 */
function sumUpTo(
  most: number,
  terms: Terms,
  chance: (k: number) => number,
  ratio: (k: number) => number,
): number {
  if (most < terms.least) return 0;
  if (most >= terms.most) return 1;
  const from = Math.max(terms.least, Math.min(most, terms.mode));
  let sum = 1;
  for (let k = from, term = 1; k > terms.least && term > NOTHING * sum; k -= 1) {
    term /= ratio(k - 1);
    sum += term;
  }
  for (let k = from, term = 1; k < most && term > NOTHING * sum; k += 1) {
    term *= ratio(k);
    sum += term;
  }
  return Math.min(1, sum * chance(from));
}

function binomial(k: number, trials: number, hit: number, miss: number): number {
  return Math.exp(logBinomial(k, trials, hit, miss));
}

/** ln of C(n, k)·hit^k·miss^(n−k) as [loader-2000]: what is large is never formed. */
function logBinomial(k: number, n: number, hit: number, miss: number): number {
  if (n === 0) return 0;
  if (k === 0) return n * logOf(miss, hit);
  if (k === n) return n * logOf(hit, miss);
  const rest = stirlingRest(n) - stirlingRest(k) - stirlingRest(n - k);
  return (
    rest - deviance(k, n * hit) - deviance(n - k, n * miss) - Math.log(2 * Math.PI * (k / n) * (n - k)) / 2
  );
}

/** ln x where 1 − x is known too, which says more where it is small. */
function logOf(x: number, without: number): number {
  return without < 0.5 ? Math.log1p(-without) : Math.log(x);
}

/** k·ln(k/mean) + mean − k, which is 0 where k is the mean. */
function deviance(k: number, mean: number): number {
  const u = (mean - k) / k;
  return k * (u - Math.log1p(u));
}
