/** Gauss-Legendre nodes on a stretch of time that spans many decades. */

import { itemAt } from "../numerics/item";

/** Eight points of Gauss and Legendre on −1 to 1: Abramowitz & Stegun table 25.4 (from memory), positive half. */
const NODES = [
  0.183_434_642_495_649_8, 0.525_532_409_916_329, 0.796_666_477_413_626_7, 0.960_289_856_497_536_3,
];
const WEIGHTS = [
  0.362_683_783_378_362, 0.313_706_645_877_887_3, 0.222_381_034_453_374_5, 0.101_228_536_290_376_3,
];
const UPPER = NODES.map((x, i) => ({ x, weight: itemAt(WEIGHTS, i) }));
const POINTS = [...UPPER.map(({ x, weight }) => ({ x: -x, weight })).reverse(), ...UPPER];

/** Calls `each` with the nodes of ∫ f(τ) dτ between two ages, even in √τ: for an integrand with a root singularity at 0. */
export function rootPanel(from: number, to: number, each: (age: number, weight: number) => void): void {
  const half = (Math.sqrt(to) - Math.sqrt(from)) / 2;
  const middle = Math.sqrt(from) + half;
  for (const { x, weight } of POINTS) {
    const root = middle + half * x;
    each(root * root, 2 * root * half * weight);
  }
}

/** The same from `from` to `to`, even in ln τ, on panels at most `longest` wide in ln τ. */
export function logPanels(
  from: number,
  to: number,
  longest: number,
  each: (age: number, weight: number) => void,
): void {
  const span = Math.log(to / from);
  const panels = Math.ceil(span / longest);
  const half = span / panels / 2;
  for (let i = 0; i < panels; i += 1) {
    const middle = from * Math.exp((2 * i + 1) * half);
    for (const { x, weight } of POINTS) {
      const age = middle * Math.exp(half * x);
      each(age, age * half * weight);
    }
  }
}
