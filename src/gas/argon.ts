/**
 * Density of argon as a real gas: the reference equation of [tegeler-1999], which NIST uses. Its authors give 0.03 %
 * in density for 235 to 520 K and up to 30 MPa; the ideal gas is off by up to 7 % there, a two-constant cubic equation
 * by 2 to 3 %. Coefficients as a general reference library ([coolprop-8.0.0]) has them.
 */

import { rootBetween } from "../numerics/root";

/** Specific gas constant as the equation has it, J/(kg·K): 8.31451/0.039948. */
const GAS_CONSTANT = 8.314_51 / 0.039_948;
/** The critical point, which the equation is reduced by. */
const CRITICAL_TEMPERATURE = 150.687;
const CRITICAL_DENSITY = 535.6;

/**
 * n·δ^d·τ^t·exp(−δ^l), δ = ρ/ρc and τ = Tc/T; no exponential where l is 0. Rows of [n, d, t, l]. The equation has four
 * more terms, Gaussians about the critical point with exp(−225·(τ − 1.11)²) at the most: above 240 K they are under
 * 1e-20 and neglected.
 */
const TERMS = [
  [0.088_722_304_990_011, 1, 0, 0],
  [0.705_148_051_672_98, 1, 0.25, 0],
  [-1.682_011_565_409, 1, 1, 0],
  [-0.149_090_144_314_86, 1, 2.75, 0],
  [-0.120_248_046_009_4, 1, 4, 0],
  [-0.121_649_787_985_99, 2, 0, 0],
  [0.400_359_336_267_52, 2, 0.25, 0],
  [-0.271_360_626_991_29, 2, 0.75, 0],
  [0.242_119_245_796_45, 2, 2.75, 0],
  [0.005_788_958_318_557, 3, 0, 0],
  [-0.041_097_335_615_341, 3, 2, 0],
  [0.024_710_761_541_614, 4, 0.75, 0],
  [-0.321_813_917_507_02, 1, 3, 1],
  [0.332_300_176_957_94, 1, 3.5, 1],
  [0.031_019_986_287_345, 3, 1, 1],
  [-0.030_777_086_002_437, 4, 2, 1],
  [0.093_891_137_419_581, 4, 4, 1],
  [-0.090_643_210_682_031, 5, 3, 1],
  [-0.000_457_783_492_766_54, 7, 0, 1],
  [-0.000_082_659_729_025_197, 10, 0.5, 1],
  [0.000_130_134_156_031_47, 10, 1, 1],
  [-0.011_397_840_001_996, 2, 1, 2],
  [-0.024_455_169_960_535, 2, 7, 2],
  [-0.064_324_067_175_955, 4, 5, 2],
  [0.058_889_471_093_674, 4, 6, 2],
  [-0.000_649_335_521_129_65, 8, 6, 2],
  [-0.013_889_862_158_435, 3, 10, 3],
  [0.404_898_392_969_1, 5, 13, 3],
  [-0.386_125_195_947_49, 5, 14, 3],
  [-0.188_171_423_322_33, 6, 11, 3],
  [0.159_776_475_964_82, 6, 14, 3],
  [0.053_985_518_513_856, 7, 8, 3],
  [-0.028_953_417_958_014, 7, 14, 3],
  [-0.013_025_413_381_384, 8, 6, 3],
  [0.002_894_869_677_577_8, 9, 7, 3],
  [-0.002_264_713_430_479_6, 5, 24, 4],
  [0.001_761_645_619_636_8, 6, 22, 4],
] as const;

/**
 * Density of argon, kg/m³, at an absolute pressure (Pa) and a temperature (K) of 240 K or more, far above the critical
 * one, where pressure rises with density throughout. Sought within twice and half of what the ideal gas would have.
 */
export function argonDensity(pressure: number, temperature: number): number {
  const ideal = pressure / (GAS_CONSTANT * temperature);
  const miss = (density: number): number => density * compressibility(density, temperature) - ideal;
  return rootBetween(miss, ideal / 2, 2 * ideal);
}

/** p/(ρRT) = 1 + δ·∂/∂δ of the residual Helmholtz energy over RT. */
function compressibility(density: number, temperature: number): number {
  const delta = density / CRITICAL_DENSITY;
  const tau = CRITICAL_TEMPERATURE / temperature;
  let sum = 1;
  for (const [n, d, t, l] of TERMS) {
    const decay = l === 0 ? 0 : delta ** l;
    sum += n * delta ** d * tau ** t * Math.exp(-decay) * (d - l * decay);
  }
  return sum;
}
