/**
 * The heat that reaches the arc around a ring. Lengths are in turns of the mean circumference C, times in turns of
 * travel, so that one number is left: P = v·C/(4α), large where the arc outruns its heat.
 */

import { decayIntegral } from "../numerics/exponential-integral";
import { erfc } from "../numerics/error-function";

/** Where e^−c no longer counts. */
const NEGLIGIBLE = 36;

/**
 * Σ over n ≠ 0 of exp(−P(x + n)²/u)/u: heat let out u ago, x behind, that comes around the ring and not straight.
 * As images while little of it has met itself, as a Fourier series of the whole ring less n = 0 after that.
 */
export function roundTheRing(peclet: number, x: number, u: number): number {
  if (u <= 0) return 0;
  if (u > changeover(peclet)) {
    let waves = 1;
    const decay = (Math.PI * Math.PI * u) / peclet;
    for (let m = 1; decay * m * m < NEGLIGIBLE; m += 1) {
      waves += 2 * Math.exp(-decay * m * m) * Math.cos(2 * Math.PI * m * x);
    }
    return waves * Math.sqrt(Math.PI / (peclet * u)) - Math.exp((-peclet * x * x) / u) / u;
  }
  let sum = 0;
  for (const n of images(x, Math.sqrt((NEGLIGIBLE * u) / peclet))) {
    sum += Math.exp((-peclet * (x + n) * (x + n)) / u);
  }
  return sum / u;
}

/** The same added up over u from `from` to `to`: heat of an arc that stood still x behind. */
export function roundTheRingOver(peclet: number, x: number, from: number, to: number): number {
  const change = Math.min(Math.max(changeover(peclet), from), to);
  return asImages(peclet, x, from, change) + asWaves(peclet, x, change, to);
}

function asImages(peclet: number, x: number, from: number, to: number): number {
  let sum = 0;
  for (const n of images(x, Math.sqrt((NEGLIGIBLE * to) / peclet))) {
    sum += decayIntegral(peclet * (x + n) * (x + n), from, to);
  }
  return sum;
}

function asWaves(peclet: number, x: number, from: number, to: number): number {
  if (from === to) return 0;
  const [early, late] = [Math.PI * Math.sqrt(from / peclet), Math.PI * Math.sqrt(to / peclet)];
  let sum = (2 * Math.sqrt(Math.PI) * (late - early)) / Math.PI;
  for (let m = 1; early * m < Math.sqrt(NEGLIGIBLE); m += 1) {
    sum += (2 / m) * Math.cos(2 * Math.PI * m * x) * (erfc(early * m) - erfc(late * m));
  }
  return sum - decayIntegral(peclet * x * x, from, to);
}

/** Images and waves are equally many where π²u/P = P/u. */
function changeover(peclet: number): number {
  return peclet / Math.PI;
}

/** The n ≠ 0 whose image stands within `reach` turns of the arc. */
function images(x: number, reach: number): number[] {
  const near: number[] = [];
  for (let n = Math.ceil(-x - reach); n <= reach - x; n += 1) if (n !== 0) near.push(n);
  return near;
}
