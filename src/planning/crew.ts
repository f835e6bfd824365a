/** One operator and several weld heads: how many to give, and what they put out. */

import { above0, atLeast0, shareAbove0, wholeDown, wholeFrom1 } from "../limits";
import type { Count, Duration, Share, Time } from "../quantity";
import { COUNT, DURATION, si, TIME } from "../quantity";
import { amount, Refusal, rule } from "../refusal";

/** What one joint asks of the operator and of the machine, s. */
export interface Work {
  /** Operator at the head: unload, load, start. The machine stands. */
  readonly load: Time;
  /** Head on its own: purge, weld, purge. */
  readonly machine: Time;
  /** Operator on the way to the next head; the machine runs or waits meanwhile. */
  readonly walk: Time;
}

export interface Shift {
  readonly seconds: Duration;
  /** Share of the shift that crew and machines are there to work. */
  readonly availability: Share;
}

export const PATTERNS = ["steady", "random"] as const;
export type Pattern = (typeof PATTERNS)[number];

/** Common practice: a shift of eight hours, s. */
export const COMMON_SHIFT = si(8 * 3600, DURATION);
export const MOST_HEADS = si(1000, COUNT);

/** Whole heads that one operator keeps busy, at least 1: ⌊(load + machine)/(load + walk)⌋. Steady times. */
export function headsPerOperator(work: Work): Count {
  const attention = attentionOf(work);
  if (attention > 0) return si(Math.max(1, wholeDown((work.load + work.machine) / attention)), COUNT);
  throw new Refusal(
    "loadSeconds",
    amount(work.load, TIME),
    rule`must be above 0 when walkSeconds is 0; heads that need no operator have no limit`,
    "unanswerable",
  );
}

/** Joints in a shift from one operator's heads. */
export function crewOutput(heads: Count, work: Work, shift: Shift, pattern: Pattern): Count {
  const whole = wholeFrom1("heads", heads, MOST_HEADS);
  attentionOf(work);
  const seconds = above0("hours", shift.seconds, DURATION) * shareAbove0("availability", shift.availability);
  return si(seconds * rateOf(whole, work, pattern), COUNT);
}

/**
 * Joints per second. Whoever stays at one head walks nowhere: that is what one head makes, and the least of several,
 * where the way to the next costs more than it gains.
 */
function rateOf(heads: number, work: Work, pattern: Pattern): number {
  const rate = pattern === "steady" ? steadyRate(heads, work) : randomRate(heads, work);
  return Math.max(rate, 1 / (work.load + work.machine));
}

/**
 * Joints per second when every time is the same: heads/max(load + machine, heads·(load + walk)). Either each head
 * runs its cycle without waiting or the operator is never idle.
 */
function steadyRate(heads: number, { load, machine, walk }: Work): number {
  return Math.min(heads / (load + machine), 1 / (load + walk));
}

/**
 * Joints per second when times scatter exponentially: the finite-source queue M/M/1//heads, mean service load + walk,
 * mean run machine. Mean value analysis ([reiser-lavenberg-1980]) adds one head at a time: a head that calls finds
 * the queue of a shop with one head fewer. All terms are positive and bounded, so nothing cancels or overflows.
 */
function randomRate(heads: number, { load, machine, walk }: Work): number {
  const service = load + walk;
  let rate = 0;
  let calling = 0;
  for (let head = 1; head <= heads; head += 1) {
    const stopped = service * (1 + calling);
    rate = head / (machine + stopped);
    calling = rate * stopped;
  }
  return rate;
}

/** Operator's time per joint, s. */
function attentionOf({ load, machine, walk }: Work): number {
  above0("machineSeconds", machine, TIME);
  return atLeast0("loadSeconds", load, TIME) + atLeast0("walkSeconds", walk, TIME);
}
