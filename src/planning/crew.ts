/** Operators and weld heads: how many heads to give to one, and what they put out. */

import { above0, atLeast0, shareAbove0, wholeDown, wholeFrom1 } from "../limits";
import type { Count, Duration, Share, Time } from "../quantity";
import { COUNT, DURATION, si, TIME } from "../quantity";
import { amount, Refusal, rule } from "../refusal";
import { rateOfOne, rateOfSeveral } from "./finite-source";

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
export const MOST_HEADS = si(10_000, COUNT);
export const MOST_OPERATORS = si(1000, COUNT);
export const ONE_OPERATOR = si(1, COUNT);

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

/** Joints in a shift from heads that one or several operators serve together. */
export function crewOutput(
  heads: Count,
  work: Work,
  shift: Shift,
  pattern: Pattern,
  operators: Count,
): Count {
  const shop = {
    heads: wholeFrom1("heads", heads, MOST_HEADS),
    operators: wholeFrom1("operators", operators, MOST_OPERATORS),
  };
  attentionOf(work);
  const seconds = above0("hours", shift.seconds, DURATION) * shareAbove0("availability", shift.availability);
  return si(seconds * rateOf(shop, work, pattern), COUNT);
}

interface Shop {
  readonly heads: number;
  readonly operators: number;
}

/**
 * Joints per second. Whoever stays at one head walks nowhere and makes 1/(load + machine): some operators may do so
 * while the others go around the rest, whichever makes most. One head more or one operator more then never costs joints.
 */
function rateOf({ heads, operators }: Shop, work: Work, pattern: Pattern): number {
  const alone = 1 / (work.load + work.machine);
  if (operators >= heads) return heads * alone;
  const rate = (staying: number): number => {
    const rest = { heads: heads - staying, operators: operators - staying };
    if (rest.operators === 0) return staying * alone;
    return staying * alone + (pattern === "steady" ? steadyRate(rest, work) : randomRate(rest, work));
  };
  // Nobody gains by staying where the next head is no walk away: then all heads are everybody's.
  return work.walk === 0 ? Math.max(rate(0), operators * alone) : largest(rate, operators);
}

/**
 * The largest of a function of 0 … most with one hill. That joints have one hill over the number of operators who stay
 * is not proven; a test compares every number of them.
 */
function largest(of: (count: number) => number, most: number): number {
  let [low, high] = [0, most];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (of(middle + 1) > of(middle)) low = middle + 1;
    else high = middle;
  }
  return of(low);
}

/**
 * Joints per second when every time is the same: min(heads/(load + machine), operators/(load + walk)). Either each head
 * runs its cycle without waiting or no operator is ever idle.
 */
function steadyRate({ heads, operators }: Shop, { load, machine, walk }: Work): number {
  return Math.min(heads / (load + machine), operators / (load + walk));
}

/** Joints per second when times scatter exponentially: mean service load + walk, mean run machine. */
function randomRate({ heads, operators }: Shop, { load, machine, walk }: Work): number {
  const source = { heads, service: load + walk, run: machine };
  return operators === 1 ? rateOfOne(source) : rateOfSeveral(source, operators);
}

/** Operator's time per joint, s. */
function attentionOf({ load, machine, walk }: Work): number {
  above0("machineSeconds", machine, TIME);
  return atLeast0("loadSeconds", load, TIME) + atLeast0("walkSeconds", walk, TIME);
}
