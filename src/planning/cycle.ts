/** One weld cycle, from start to start. */

import { atLeast0 } from "../limits";
import type { Angle, Length, Speed, Time } from "../quantity";
import { ANGLE, si, TIME } from "../quantity";
import { travelTime } from "../travel/travel";

/** Common practice: gas before and after the arc, s. */
export const COMMON_PREPURGE = si(30, TIME);
export const COMMON_POSTPURGE = si(15, TIME);
/** Common practice: fading of the arc, in bead widths of travel. */
const DOWNSLOPE_WIDTHS = 3;

/** Common practice of the downslope, s: three bead widths of travel. */
export function commonDownslope(beadWidth: Length, speed: Speed): Time {
  return si((DOWNSLOPE_WIDTHS * beadWidth) / speed, TIME);
}

export interface Cycle {
  readonly od: Length;
  readonly speed: Speed;
  readonly prepurge: Time;
  readonly dwell: Time;
  /** Degrees past the full turn. */
  readonly overlap: Angle;
  readonly downslope: Time;
  readonly postpurge: Time;
  readonly handling: Time;
}

export interface Phase {
  readonly label: string;
  readonly starts: Time;
  readonly lasts: Time;
  readonly arcOn: boolean;
}

/** What the rotation takes, s: a full turn, and the overlap past it. */
function rotationOf({ od, speed, overlap }: Cycle): { readonly turn: Time; readonly past: Time } {
  const turn = travelTime(od, speed, si(0, ANGLE));
  return { turn, past: si((turn * atLeast0("overlap", overlap, ANGLE)) / 360, TIME) };
}

/** The phases of a cycle in their order, times in s. A phase of no length is kept, so that every cycle has the same rows. */
export function cyclePhases(cycle: Cycle): Phase[] {
  const { turn, past } = rotationOf(cycle);
  const lengths: [label: string, lasts: Time, arcOn: boolean][] = [
    ["Prepurge", atLeast0("prepurge", cycle.prepurge, TIME), false],
    ["Start dwell", atLeast0("dwell", cycle.dwell, TIME), true],
    ["Full turn", turn, true],
    ["Overlap", past, true],
    ["Downslope", atLeast0("downslope", cycle.downslope, TIME), true],
    ["Postpurge", atLeast0("postpurge", cycle.postpurge, TIME), false],
    ["Handling", atLeast0("handling", cycle.handling, TIME), false],
  ];
  let clock = 0;
  return lengths.map(([label, lasts, arcOn]) => {
    const starts = si(clock, TIME);
    clock += lasts;
    return { label, starts, lasts, arcOn };
  });
}

/** Seconds from start to start: the sum of the phases, without a list of them, since a take-off asks for every line. */
export function cycleTime(cycle: Cycle): Time {
  const { turn, past } = rotationOf(cycle);
  const before = atLeast0("prepurge", cycle.prepurge, TIME) + atLeast0("dwell", cycle.dwell, TIME);
  const arc = before + turn + past + atLeast0("downslope", cycle.downslope, TIME);
  const cool = arc + atLeast0("postpurge", cycle.postpurge, TIME);
  return si(cool + atLeast0("handling", cycle.handling, TIME), TIME);
}
