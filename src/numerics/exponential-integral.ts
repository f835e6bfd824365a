/** The exponential integral E₁(x) = ∫ₓ^∞ e^−s/s ds, scaled so that nothing is lost. */

const EULER_GAMMA = 0.577_215_664_901_532_9;
/** Below it the power series is short; above it the continued fraction is. */
const SERIES_UP_TO = 1.5;
const DEPTH_TIMES_X = 90;
const SHORTEST_FRACTION = 8;

/** e^x·E₁(x) for x > 0, within 1e-14 of the value. */
export function scaledE1(x: number): number {
  if (x <= SERIES_UP_TO) return Math.exp(x) * (entire(x) - Math.log(x) - EULER_GAMMA);
  // [abramowitz-stegun-1964] 5.1.22 in its contracted form, from the far end. Its error falls as exp(−4√(depth·x)).
  const depth = Math.ceil(DEPTH_TIMES_X / x) + SHORTEST_FRACTION;
  let denominator = x + 2 * depth + 1;
  for (let n = depth; n > 0; n -= 1) denominator = x + 2 * n - 1 - (n * n) / denominator;
  return 1 / denominator;
}

/** E₁(x) for x > 0, infinity too. */
export function e1(x: number): number {
  return Math.exp(-x) * scaledE1(x);
}

/**
 * ∫ e^(−c/u)/u du from `from` to `to`, 0 ≤ from ≤ to, c ≥ 0, not both c and from 0: E₁(c/to) − E₁(c/from), where E₁ of
 * infinity is 0, and plain ln(to/from) where c is nothing. Near there the logarithms are taken off each other first.
 */
export function decayIntegral(c: number, from: number, to: number): number {
  if (c / from <= SERIES_UP_TO) return Math.log(to / from) + entire(c / to) - entire(c / from);
  return e1(c / to) - e1(c / from);
}

/** ∫₀ˣ (1 − e^−s)/s ds = E₁(x) + ln x + γ for small x: [abramowitz-stegun-1964] 5.1.11. */
function entire(x: number): number {
  let term = 1;
  let sum = 0;
  for (let k = 1; Math.abs(term) > Number.EPSILON / 8; k += 1) {
    term *= -x / k;
    sum -= term / k;
  }
  return sum;
}
