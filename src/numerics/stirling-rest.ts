/** What Stirling's formula leaves of ln k!, a whole number, so that chances of large counts do not cancel [loader-2000]. */

/** From this k on three terms of the rest are exact to rounding of the whole. */
const LARGE = 32;

/** ln k! − (k·ln k − k + ½ln(2πk)). */
export function stirlingRest(k: number): number {
  if (k >= LARGE) return (1 / 12 - (1 / 360 - 1 / (1260 * k * k)) / (k * k)) / k;
  let logFactorial = 0;
  for (let i = 2; i <= k; i += 1) logFactorial += Math.log(i);
  return logFactorial - (k * Math.log(k) - k + Math.log(2 * Math.PI * k) / 2);
}
