/** The hottest that a ring ever gets at some distance beside the joint, heat even through the wall. */

import { itemAt } from "../numerics/item";
import type { RingPass } from "./ring-pass";
import type { RingHistory, RingRise } from "./ring-rise";
import { ringHistory, ringRise } from "./ring-rise";

export interface RingPeak {
  /** K */
  readonly rise: number;
  /** s from the ignition of the arc. */
  readonly time: number;
}

/** The wait for the heat, in distance²/α: heat let in at once along a line peaks at a half, at a point at a quarter. */
const LONGEST_WAIT = 0.75;
/** Angles at which the hottest place is first looked for, and times, closer together near the end of the arc. */
const ANGLES = 16;
const TIMES = 12;
/** Golden section narrows the time to 0.002 of the wait, which moves the peak by its square. */
const NARROWINGS = 13;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * Maximum over time and round the ring at `distance` m. While the arc travels the ridge of heat only grows, so the
 * search is from the end of the arc to well after the heat of an instant would have peaked.
 */
export function ringPeak(pass: RingPass, distance: number): RingPeak {
  const { plate, circumference, end } = pass;
  const square = distance * distance;
  const alpha = plate.metal.diffusivity;
  const wait = (LONGEST_WAIT * (square + plate.wall * plate.wall)) / alpha;
  const start = firstAngle(ringHistory(pass, end), square);
  let along = start;
  const hottest = (part: number): number => {
    const after = wait * part * part;
    // Only ages that have heat of the arc, so that the nodes lie where the heat is however long ago it was.
    const history = ringHistory(pass, end + after, after);
    along = ridge(history, square, end + after, along, circumference / ANGLES);
    return ringRise(history, history.mean, along, square, end + after).value;
  };
  const rises = Array.from({ length: TIMES + 1 }, (_, i) => hottest(i / TIMES));
  const best = rises.indexOf(Math.max(...rises));
  let low = Math.max(best - 1, 0) / TIMES;
  let high = Math.min(best + 1, TIMES) / TIMES;
  along = start;
  let [a, b] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [atA, atB] = [hottest(a), hottest(b)];
  for (let i = 0; i < NARROWINGS; i += 1) {
    if (atA > atB) {
      [high, b, atB] = [b, a, atA];
      a = high - GOLDEN * (high - low);
      atA = hottest(a);
    } else {
      [low, a, atA] = [a, b, atB];
      b = low + GOLDEN * (high - low);
      atB = hottest(b);
    }
  }
  const peak = best === 0 && Math.max(atA, atB) < hottest(0) ? 0 : (low + high) / 2;
  return { rise: hottest(peak), time: end + wait * peak * peak };
}

function firstAngle(history: RingHistory, square: number): number {
  const { pass, mean } = history;
  const angles = Array.from({ length: ANGLES }, (_, i) => (-i * pass.circumference) / ANGLES);
  const rises = angles.map((angle) => ringRise(history, mean, angle, square, pass.end).value);
  return itemAt(angles, rises.indexOf(Math.max(...rises)));
}

/** Where the ridge is to this part of the first step, the rise is exact to its square. */
const CLOSE = 1e-3;

/** The place round the ring near `guess` at which T is at its maximum at `time`, m: false position on ∂T/∂x. */
function ridge(history: RingHistory, square: number, time: number, guess: number, stride: number): number {
  const at = (along: number): RingRise => ringRise(history, history.mean, along, square, time);
  const slope = (along: number): number => at(along).byAlong;
  const direction = slope(guess) > 0 ? 1 : -1;
  let near = guess;
  let far = guess + direction * stride;
  for (let i = 0; i < ANGLES && slope(far) * direction > 0; i += 1)
    [near, far] = [far, far + direction * stride];
  for (let i = 0; i < MOST_STEPS && Math.abs(far - near) > CLOSE * stride; i += 1) {
    const [s, t] = [slope(near), slope(far)];
    const even = i % 3 === 2 || s === t;
    const middle = even ? (near + far) / 2 : near + ((far - near) * s) / (s - t);
    if (slope(middle) * direction > 0) near = middle;
    else far = middle;
  }
  return (near + far) / 2;
}

const MOST_STEPS = 8;
