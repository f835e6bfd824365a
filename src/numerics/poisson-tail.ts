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
  return Math.min(0, Math.log(sum) + largest * Math.log(x) - x - logFactorial(largest));
}

/** ln n!, by adding up: n stays at most a thousand here. */
function logFactorial(n: number): number {
  let sum = 0;
  for (let k = 2; k <= n; k += 1) sum += Math.log(k);
  return sum;
}
