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

/** The longest step toward a crest, in passages, so that none leaps over the hill at hand; and its growth from step to step. */
const FIRST_STRIDE = 0.3;
const GROWTH = 1.8;
const MOST_STEPS = 100;
/** A step of false position keeps this part of the bracket away from its ends. */
const EDGE = 0.02;
/** Where less than this part of the rise is still to gain, the crest is found: a parabola's gain is off by its cube. */
const CLOSE = 1e-8;

/**
 * The maximum over time near the arc's passage of `travel` m from the start, no later than the end of the arc. `guess`
 * is how long after the passage it is looked for. Newton on ∂T/∂t = 0, held between the last times at which T rose and
 * fell.
 */
export function ringCrest(
  history: RingHistory,
  weights: Float64Array,
  travel: number,
  square: number,
  guess: number,
): RingRise {
  const { plate, dwell, end } = history.pass;
  const scale = (plate.spread + plate.wall) / plate.speed;
  const passage = dwell + travel / plate.speed;
  const earliest = passage / 1e6;
  let stride = FIRST_STRIDE * scale;
  let [rose, fell]: (RingRise | undefined)[] = [];
  let time = Math.min(passage + guess, end);
  for (let tries = 1; ; tries += 1) {
    const rise = ringRise(history, weights, travel, square, time);
    const { value, byTime, byTimeTwice } = rise;
    if (byTime >= 0) rose = rise;
    else fell = rise;
    if (rose === rise && time >= end) return rise;
    const move = byTimeTwice < 0 ? -byTime / byTimeTwice : NaN;
    const gain = (byTime * move) / 2;
    if (gain < CLOSE * value && time + move <= end)
      return { ...rise, value: value + gain, time: time + move };
    if (rose !== undefined && fell !== undefined) {
      const bracket = fell.time - rose.time;
      if (Math.abs(byTime) * bracket < CLOSE * value || tries >= MOST_STEPS) return rise;
      time = within(rose, fell, time + move, tries % 3 === 0);
      continue;
    }
    const step = byTimeTwice < 0 ? Math.min(Math.abs(move), stride) : stride;
    time = rose === undefined ? Math.max(time - step, earliest) : Math.min(time + step, end);
    stride *= GROWTH;
  }
}

/** The next time between one at which T rose and one at which it fell: Newton's where that lies between them. */
function within(rose: RingRise, fell: RingRise, newton: number, halve: boolean): number {
  if (newton > rose.time && newton < fell.time) return newton;
  const part = halve ? 0.5 : rose.byTime / (rose.byTime - fell.byTime);
  return rose.time + (fell.time - rose.time) * Math.min(Math.max(part, EDGE), 1 - EDGE);
}

/** Where ln T is this close to its aim the width is known to a few millionths. */
const CLOSE_RISE = 3e-6;

/**
 * u = y² of the bead's edge at one depth near the passage of `travel` m from the start, m²; 0 where nothing melts. Each
 * crest is looked for as long after the passage as the one before; the first from the passage on, since where the power
 * has just changed there may be a hill before it and one after.
 */
function edgeAt(
  history: RingHistory,
  weights: Float64Array,
  rise: number,
  travel: number,
  near: number,
): number {
  const { dwell, plate } = history.pass;
  const passage = dwell + travel / plate.speed;
  let lag = 0;
  const crestOf = (square: number): RingRise => {
    const crest = ringCrest(history, weights, travel, square, lag);
    lag = Math.max(0, crest.time - passage);
    return crest;
  };
  return squareWhere(crestOf, rise, CLOSE_RISE, near);
}

const NOWHERE: MeltSection = { face: 0, root: 0 };

/**
 * Fused widths of face and root, m, where the arc has traveled `travel` m, with `rise` K from the tube's first
 * temperature to its liquidus; 0 where nothing melts. They are first looked for where they are at a place nearby.
 */
export function ringSection(
  { history, face, root }: ReadyPass,
  rise: number,
  travel: number,
  near: MeltSection = NOWHERE,
): MeltSection {
  return {
    face: 2 * Math.sqrt(edgeAt(history, face, rise, travel, (near.face * near.face) / 4)),
    root: 2 * Math.sqrt(edgeAt(history, root, rise, travel, (near.root * near.root) / 4)),
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
