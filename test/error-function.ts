/** The complementary error function and its first integral, scaled so that nothing is lost. */

export interface ScaledErrorFunctions {
  /** e^(z²)·erfc(z) */
  readonly erfc: number;
  /** e^(z²)·ierfc(z), where ierfc(z) = ∫_z^∞ erfc = e^(−z²)/√π − z·erfc(z) */
  readonly ierfc: number;
}

const TWO_OVER_ROOT_PI = 2 / Math.sqrt(Math.PI);
/** Below it the power series is short and little cancels; above it the continued fraction is short. */
const SERIES_UP_TO = 2;
const LONGEST_FRACTION = 60;

/** e^(z²)·erfc(z) and e^(z²)·ierfc(z) for z ≥ 0, within 1e-12 of the value. */
export function scaledErrorFunctions(z: number): ScaledErrorFunctions {
  return z < SERIES_UP_TO ? bySeries(z) : byFraction(z);
}

/** erfc(z) for z ≥ 0. */
export function erfc(z: number): number {
  return scaledErrorFunctions(z).erfc * Math.exp(-z * z);
}

/** ierfc(z) for z ≥ 0. */
export function ierfc(z: number): number {
  return scaledErrorFunctions(z).ierfc * Math.exp(-z * z);
}

/** erf(z) = 2/√π·e^(−z²)·Σ 2ⁿz^(2n+1)/(1·3·…·(2n+1)): [abramowitz-stegun-1964] 7.1.6, all terms positive. */
function bySeries(z: number): ScaledErrorFunctions {
  let term = z;
  let sum = z;
  for (let n = 1; term > sum * (Number.EPSILON / 8); n += 1) {
    term *= (2 * z * z) / (2 * n + 1);
    sum += term;
  }
  const scaled = Math.exp(z * z) - TWO_OVER_ROOT_PI * sum;
  return { erfc: scaled, ierfc: TWO_OVER_ROOT_PI / 2 - z * scaled };
}

/**
 * Repeated integrals obey 2n·iⁿ = iⁿ⁻² − 2z·iⁿ⁻¹ ([abramowitz-stegun-1964] 7.2.5): run from far down, their ratios
 * rₙ = iⁿ/iⁿ⁻¹ = 1/(2z + 2(n + 1)·rₙ₊₁) settle, and i⁻¹ = 2/√π·e^(−z²) is known.
 */
function byFraction(z: number): ScaledErrorFunctions {
  let ratio = 0;
  for (let n = LONGEST_FRACTION; n > 1; n -= 1) ratio = 1 / (2 * z + 2 * n * ratio);
  const first = 1 / (2 * z + 2 * ratio);
  return { erfc: TWO_OVER_ROOT_PI * first, ierfc: TWO_OVER_ROOT_PI * first * ratio };
}
