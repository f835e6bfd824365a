/**
 * The start dwell of a wall with everything else as suggested, for long lists in which every wall differs: one smooth
 * curve a metal, found once and interpolated.
 */

import type { Material } from "../metal/material";
import { itemAt } from "../numerics/item";
import type { Length, Time } from "../quantity";
import { LENGTH, si, TIME } from "../quantity";
import { BASE_WIDTH, commonBeadWidth, WIDTH_PER_WALL } from "../travel/bead";
import { SUGGESTED_PECLET, SUGGESTED_SPEEDS, suggestedSpeed } from "../travel/travel";
import { dwellOf } from "./dwell";

/** The walls the table covers, m. */
export const TABLE_WALLS = [si(0.0001, LENGTH), si(0.015, LENGTH)] as const;
/** Chebyshev points a piece: the curve is met to 1e-4. */
const POINTS = 16;

/** A piece of the curve: ln dwell over ln wall as a Chebyshev series. */
interface Piece {
  readonly from: number;
  readonly to: number;
  readonly series: readonly number[];
}

const tables = new WeakMap<Material, readonly Piece[]>();

/** START_DWELL of the common bead at the suggested travel, s. */
export function usualDwell(wall: Length, material: Material): Time {
  let pieces = tables.get(material);
  if (pieces === undefined) {
    pieces = piecesOf(material);
    tables.set(material, pieces);
  }
  const x = Math.log(wall);
  let n = 0;
  while (n < pieces.length - 1 && x > itemAt(pieces, n).to) n += 1;
  return si(Math.exp(valueAt(itemAt(pieces, n), x)), TIME);
}

/** The suggested travel is held where the curve bends: a piece ends there. */
function piecesOf(material: Material): Piece[] {
  const bends = SUGGESTED_SPEEDS.map((speed) => {
    const beadWidth = (4 * material.hotDiffusivity.value * SUGGESTED_PECLET) / speed;
    return (beadWidth - BASE_WIDTH) / WIDTH_PER_WALL;
  });
  const [thinnest, thickest] = TABLE_WALLS;
  const walls = [thinnest, ...bends.filter((wall) => wall > thinnest && wall < thickest), thickest];
  const ends = walls.sort((a, b) => a - b).map(Math.log);
  return ends.slice(1).map((to, i) => pieceOf(material, itemAt(ends, i), to));
}

function pieceOf(material: Material, from: number, to: number): Piece {
  const angles = Array.from({ length: POINTS }, (_, i) => (Math.PI * (i + 0.5)) / POINTS);
  const values = angles.map((angle) => {
    const wall = si(Math.exp((from + to) / 2 + ((to - from) / 2) * Math.cos(angle)), LENGTH);
    const beadWidth = commonBeadWidth(wall);
    const speed = suggestedSpeed(beadWidth, material);
    return Math.log(dwellOf({ wall, speed, material, arcSize: undefined }, beadWidth));
  });
  const series = angles.map((_, n) => {
    const sum = values.reduce((total, value, i) => total + value * Math.cos(n * itemAt(angles, i)), 0);
    return ((n === 0 ? 1 : 2) * sum) / POINTS;
  });
  return { from, to, series };
}

/** Clenshaw's sum. */
function valueAt({ from, to, series }: Piece, x: number): number {
  const t = (2 * x - from - to) / (to - from);
  const twice = 2 * t;
  let next = 0;
  let afterNext = 0;
  for (let n = series.length - 1; n > 0; n -= 1) {
    const here = itemAt(series, n) + twice * next - afterNext;
    afterNext = next;
    next = here;
  }
  return itemAt(series, 0) + t * next - afterNext;
}
