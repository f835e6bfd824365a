/** One weld round a ring as it is programmed, and the heat its arc has given by any time. Base SI. */

import { itemAt } from "../numerics/item";
import type { ArcPlate } from "./arc-plate";

export interface PowerStep {
  /** s from the ignition of the arc. */
  readonly from: number;
  /** W into the metal. */
  readonly power: number;
}

export interface RingPass {
  /** With the speed at the mean radius. */
  readonly plate: ArcPlate;
  /** At the mean radius, m. */
  readonly circumference: number;
  /** The arc stands still this long before it travels, s. */
  readonly dwell: number;
  /** In the order of their times, the first from 0. */
  readonly steps: readonly PowerStep[];
  /** When the arc goes out, s. */
  readonly end: number;
}

/** The speed at which the metal passes the arc at the mean radius, m/s; `speed` is told at the outside. */
export function meanRadiusSpeed(od: number, wall: number, speed: number): number {
  return speed * (1 - wall / od);
}

/** The heat an arc has given by any time. */
export interface HeatGiven {
  /** When each power begins, s. */
  readonly from: Float64Array;
  /** W */
  readonly power: Float64Array;
  /** Heat given before it begins, J. */
  readonly before: Float64Array;
}

export function heatGiven({ steps, end }: RingPass): HeatGiven {
  const all = [{ from: -Infinity, power: 0 }, ...steps, { from: end, power: 0 }];
  const before = new Float64Array(all.length);
  for (let i = 2; i < all.length; i += 1) {
    const { from, power } = itemAt(all, i - 1);
    before[i] = itemAt(before, i - 1) + power * (itemAt(all, i).from - from);
  }
  return {
    from: new Float64Array(all.map(({ from }) => from)),
    power: new Float64Array(all.map(({ power }) => power)),
    before,
  };
}
