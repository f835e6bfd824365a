/** Fused widths by place on a ring: the maximum over time at each distance from the joint. */

import type { MeltSection } from "./melt";
import type { RingPass } from "./ring-pass";
import type { RingHistory, RingRise } from "./ring-rise";
import { historyWeights, ringHistory, ringRise } from "./ring-rise";
import { squareWhere } from "./widest";

/** A pass made ready: everything that does not depend on the place. */
export interface ReadyPass {
  readonly history: RingHistory;
  readonly face: Float64Array;
  readonly root: Float64Array;
}

export function readyPass(pass: RingPass, fineness?: number): ReadyPass {
  const history = ringHistory(pass, pass.end, 0, fineness);
  return { history, face: historyWeights(history, 0), root: historyWeights(history, 1) };
}

/** The search for times before and after the crest: first stride, in guesses or passages, and its growth. */
const FIRST_STRIDE = 0.15;
const GROWTH = 1.8;
const MOST_STEPS = 60;
/** A step of false position keeps this part of the bracket away from its ends. */
const EDGE = 0.02;
/** Where what is still to gain is under this part of the rise, the crest is found. */
const CLOSE = 1e-7;

interface TimedRise extends RingRise {
  readonly time: number;
}

/**
 * The maximum over time near the arc's passage of `travel` m from the start, no later than the end of the arc. `guess`
 * is how long after the passage it is looked for.
 */
export function ringCrest(
  history: RingHistory,
  weights: Float64Array,
  travel: number,
  square: number,
  guess: number,
): TimedRise {
  const { plate, dwell, end } = history.pass;
  const at = (time: number): TimedRise => {
    const { value, byTime, bySquare, byAlong } = ringRise(history, weights, travel, square, time);
    return { value, byTime, bySquare, byAlong, time };
  };
  const scale = (plate.spread + plate.wall) / plate.speed;
  const passage = dwell + travel / plate.speed;
  let low = at(Math.min(passage + guess, end));
  let high = low;
  let stride = FIRST_STRIDE * (guess > 0 ? guess : scale);
  while (low.byTime < 0) {
    high = low;
    low = at(Math.max(low.time - stride, passage / 1e6));
    stride *= GROWTH;
  }
  while (high.byTime >= 0) {
    low = high;
    if (low.time >= end) return low;
    high = at(Math.min(low.time + stride, end));
    stride *= GROWTH;
  }
  for (let step = 1; ; step += 1) {
    const slow = step % 3 === 0;
    const part = slow ? 0.5 : low.byTime / (low.byTime - high.byTime);
    const middle = at(low.time + (high.time - low.time) * Math.min(Math.max(part, EDGE), 1 - EDGE));
    const gain = Math.abs(middle.byTime) * (high.time - low.time);
    if (gain < CLOSE * middle.value || high.time - low.time < CLOSE * scale || step === MOST_STEPS)
      return middle;
    if (middle.byTime > 0) low = middle;
    else high = middle;
  }
}

/** Where ln T is this close to its aim the width is known to a few millionths. */
const CLOSE_RISE = 3e-6;

/** Fused width, m, at one depth near the passage of `travel` m from the start. */
function widthAt(history: RingHistory, weights: Float64Array, rise: number, travel: number): number {
  const { dwell, plate } = history.pass;
  const passage = dwell + travel / plate.speed;
  let guess = 0;
  const crestOf = (square: number): TimedRise => {
    const crest = ringCrest(history, weights, travel, square, guess);
    guess = Math.max(0, crest.time - passage);
    return crest;
  };
  return 2 * Math.sqrt(squareWhere(crestOf, rise, CLOSE_RISE));
}

/**
 * Fused widths of face and root, m, where the arc has traveled `travel` m, with `rise` K from the tube's first
 * temperature to its liquidus; 0 where nothing melts.
 */
export function ringSection({ history, face, root }: ReadyPass, rise: number, travel: number): MeltSection {
  return {
    face: widthAt(history, face, rise, travel),
    root: widthAt(history, root, rise, travel),
  };
}

/** How much of the circumference ahead of where the arc goes out may still be melted by it. */
const AHEAD = 0.2;

/** The same at a place x m from the start along the mean circumference, the widest of all passages over it. */
export function placeSection(ready: ReadyPass, rise: number, along: number): MeltSection {
  const { circumference, dwell, end, plate } = ready.history.pass;
  const reach = plate.speed * (end - dwell) + AHEAD * circumference;
  let widest = ringSection(ready, rise, along);
  for (let travel = along + circumference; travel < reach; travel += circumference) {
    const again = ringSection(ready, rise, travel);
    widest = { face: Math.max(widest.face, again.face), root: Math.max(widest.root, again.root) };
  }
  return widest;
}
