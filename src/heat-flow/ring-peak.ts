/** The hottest that a ring ever gets at some distance beside the joint, heat even through the wall. */

import { itemAt } from "../numerics/item";
import { maximumBetween } from "../numerics/maximum";
import { rootBetween } from "../numerics/root";
import type { RingPass } from "./ring-pass";
import type { RingHistory } from "./ring-rise";
import { ringHistory, ringRise } from "./ring-rise";

export interface RingPeak {
  /** K */
  readonly rise: number;
  /** s from the ignition of the arc. */
  readonly time: number;
  /** By u = distance², K/m²: the peak itself moves, but a peak is flat there. */
  readonly bySquare: number;
}

/** The wait for the heat, in distance²/α: heat let in at once along a line peaks at a half, at a point at a quarter. */
const LONGEST_WAIT = 0.75;
/** Angles at which the hottest place is first looked for, and times, closer together near the end of the arc. */
const ANGLES = 16;
const TIMES = 6;
/** How near the root of the wait and the ridge are found, in parts of their stretch: the peak is exact to the square. */
const CLOSE = 1e-4;

/** A dwell under this part of the weld is none: its ages would span endless decades. */
const BRIEFEST = 1e-6;

/**
 * Maximum over time and round the ring at `distance` m. While the arc travels the ridge behind it only grows, so the
 * hottest moment is after the arc has gone out, or after it has left the place of a long dwell.
 */
export function ringPeak(pass: RingPass, distance: number): RingPeak {
  const { plate, circumference, dwell, end } = pass;
  const square = distance * distance;
  const wait = (LONGEST_WAIT * (square + plate.wall * plate.wall)) / plate.metal.diffusivity;
  let along = 0;
  const historyAt = (time: number): RingHistory =>
    // Only ages that have heat of the arc, so that the nodes lie where the heat is however long ago it was.
    ringHistory(pass, time, Math.max(0, time - end));
  const at = (time: number, history = historyAt(time)): RingPeak => {
    along = ridge(history, square, time, along);
    const { value, bySquare } = ringRise(history, history.mean, along, square, time);
    return { rise: value, time, bySquare };
  };
  const after = peakAfter(end, 1);
  if (dwell < BRIEFEST * end) return after;
  const early = peakAfter(dwell, Math.min(1, Math.sqrt((end - dwell) / wait)));
  return early.rise > after.rise ? early : after;

  /** The peak within a stretch of time, looked at closer together near its start. */
  function peakAfter(start: number, most: number): RingPeak {
    const timeOf = (part: number): number => start + wait * part * part;
    // On a large tube the hottest hill of one moment is not that of another: each begins with a look all round.
    const scanned = Array.from({ length: TIMES + 1 }, (_, i) => {
      const part = (most * i) / TIMES;
      const history = historyAt(timeOf(part));
      along = hottestAngle(history, square, timeOf(part));
      return { part, rise: at(timeOf(part), history).rise, along };
    });
    const best = scanned.reduce((top, next, i) => (next.rise > itemAt(scanned, top).rise ? i : top), 0);
    ({ along } = itemAt(scanned, best));
    const low = itemAt(scanned, Math.max(best - 1, 0)).part;
    const high = itemAt(scanned, Math.min(best + 1, TIMES)).part;
    const top = maximumBetween((part) => at(timeOf(part)).rise, low, high, CLOSE * most);
    if (best > 0 || itemAt(scanned, 0).rise <= top.value) return at(timeOf(top.at));
    ({ along } = itemAt(scanned, 0));
    return at(start);
  }

  /** Where round the ring T is at its maximum at a time, m, near a guess. */
  function ridge(history: RingHistory, u: number, time: number, guess: number): number {
    const slope = (x: number): number => ringRise(history, history.mean, x, u, time).byAlong;
    const uphill = Math.sign(slope(guess));
    let [near, stride] = [guess, circumference / (8 * ANGLES)];
    for (let i = 0; i < 2 * ANGLES && slope(near + uphill * stride) * uphill > 0; i += 1) {
      near += uphill * stride;
      // Never further than the angles at first, so that no hill is leapt over.
      stride = Math.min(2 * stride, circumference / ANGLES);
    }
    return rootBetween(slope, near, near + uphill * stride, CLOSE * circumference);
  }
}

function hottestAngle(history: RingHistory, square: number, time: number): number {
  const { pass, mean } = history;
  const angles = Array.from({ length: ANGLES }, (_, i) => (-i * pass.circumference) / ANGLES);
  const rises = angles.map((angle) => ringRise(history, mean, angle, square, time).value);
  return itemAt(angles, rises.indexOf(Math.max(...rises)));
}
