/** Modified Bessel functions of the second kind, scaled so that nothing overflows or is lost. */

export interface ScaledBessel {
  /** e^x·K₀(x) */
  readonly k0: number;
  /** e^x·(K₁(x) − K₀(x)), found without taking a difference where that would cancel. */
  readonly gap: number;
}

const EULER_GAMMA = 0.577_215_664_901_532_9;
/** Below it the power series is short; above it the integral is. */
const SERIES_UP_TO = 2;
/** Where e^−c has fallen under the rounding of 1. */
const NEGLIGIBLE = 40;
/** Steps at which the trapezoidal rule is exact to rounding: in t, and in t·√x where the integrand is a bell. */
const WIDEST_STEP = 0.25;
const BELL_STEP = 0.6;

/** e^x·K₀(x) and e^x·(K₁(x) − K₀(x)) for x > 0, within 1e-12 of the value, x from 1e-300 to 1e200. */
export function scaledBesselK(x: number): ScaledBessel {
  return x <= SERIES_UP_TO ? bySeries(x) : byIntegral(x);
}

/** Power series, [abramowitz-stegun-1964] 9.6.10–9.6.13, with K₁ from the Wronskian I₀K₁ + I₁K₀ = 1/x (9.6.15). */
function bySeries(x: number): ScaledBessel {
  const square = (x * x) / 4;
  const log = -(Math.log(x / 2) + EULER_GAMMA);
  let term = 1;
  let harmonic = 0;
  let i0 = 1;
  let i1 = 1;
  let rest = 0;
  for (let k = 1; term > Number.EPSILON / 8; k += 1) {
    term *= square / (k * k);
    harmonic += 1 / k;
    i0 += term;
    i1 += term / (k + 1);
    rest += term * harmonic;
  }
  const k0 = log * i0 + rest;
  const k1 = (1 / x - (x / 2) * i1 * k0) / i0;
  const scale = Math.exp(x);
  return { k0: scale * k0, gap: scale * (k1 - k0) };
}

/**
 * K_ν(x) = ∫₀^∞ exp(−x·cosh t)·cosh νt dt ([abramowitz-stegun-1964] 9.6.24) by the trapezoidal rule, which converges
 * geometrically on an even analytic integrand that dies out ([trefethen-weideman-2014]).
 */
function byIntegral(x: number): ScaledBessel {
  const step = Math.min(WIDEST_STEP, BELL_STEP / Math.sqrt(x));
  let k0 = 0.5;
  let gap = 0;
  for (let i = 1; ; i += 1) {
    const rise = 2 * Math.sinh((i * step) / 2) ** 2; // cosh t − 1
    const weight = Math.exp(-x * rise);
    k0 += weight;
    gap += weight * rise;
    if (x * rise > NEGLIGIBLE) return { k0: k0 * step, gap: gap * step };
  }
}
