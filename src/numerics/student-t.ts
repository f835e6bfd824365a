import { betaQuantileLogOdds } from "./beta";

/**
 * The t below which a variable of Student's distribution lies with a chance, 0 < chance < 1, `freedom` > 0:
 * x = ν/(ν + t²) is a beta variable of ν/2 and ½, and the chance beyond |t| on both sides is I_x(ν/2, ½).
 */
export function tQuantile(chance: number, freedom: number): number {
  const outside = 2 * Math.min(chance, 1 - chance);
  const within = Math.abs(1 - 2 * chance);
  if (within === 0) return 0;
  const logOdds = betaQuantileLogOdds(Math.log(outside) - Math.log(within), freedom / 2, 0.5);
  return Math.sign(chance - 0.5) * Math.sqrt(freedom) * Math.exp(-logOdds / 2);
}
