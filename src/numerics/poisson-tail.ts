import { stirlingRest } from "./stirling-rest";

/**
 * The chance of fewer than `terms` events where x are expected, e^{−x}·Σ_{k<terms} x^k/k!: the regularized upper
 * incomplete gamma function Q(terms, x). All terms are positive, so nothing cancels; each is measured by the largest,
 * so nothing overflows.
 */
export function poissonTail(terms: number, x: number): number {
  return Math.exp(logPoissonTail(terms, x));
}

/** Its logarithm, which is there where the chance itself is too small for a number. */
export function logPoissonTail(terms: number, x: number): number {
  if (x === 0) return 0;
  const largest = Math.min(terms - 1, Math.floor(x));
  let sum = 1;
  for (let k = largest, term = 1; k > 0; k -= 1) {
    term *= k / x;
    sum += term;
  }
  for (let k = largest + 1, term = 1; k < terms; k += 1) {
    term *= x / k;
    sum += term;
  }
  return Math.min(0, Math.log(sum) + logTerm(largest, x));
}

/**
 * ln(e^{−x}·x^k/k!), k ≤ x + 1. Written out, numbers as large as x·ln x would cancel; so as [loader-2000]: with
 * u = (x − k)/k it is −k(u − ln(1 + u)) − ½ln(2πk) − what Stirling's formula leaves of ln k!.
 */
function logTerm(k: number, x: number): number {
  if (k === 0) return -x;
  const u = (x - k) / k;
  return -k * (u - Math.log1p(u)) - Math.log(2 * Math.PI * k) / 2 - stirlingRest(k);
}
