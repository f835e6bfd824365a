/** The course of a shift: which head runs, which operator is where, and who waits for whom, moment by moment. */

import { above0, atLeast0, atMost, isAbove, wholeDown, wholeFrom1 } from "../limits";
import { itemAt } from "../numerics/item";
import type { Count, Duration, Time } from "../quantity";
import { COUNT, DURATION, si, TIME } from "../quantity";
import type { Work } from "./crew";

/** What a head does: it waits for an operator, an operator is at it, or its machine runs. */
const HEAD = { waits: 0, isLoaded: 1, runs: 2 } as const;
/** What an operator does who is at no head. */
const OPERATOR = { waits: 0, walks: -1 } as const;

export interface Moment {
  readonly time: Time;
  /** Joints finished by then. */
  readonly joints: Count;
  /** For each operator the number of the head they are at, from 1, or one of OPERATOR. */
  readonly operators: readonly number[];
  /** For each head one of HEAD. */
  readonly heads: readonly number[];
}

export interface Course {
  readonly heads: Count;
  readonly operators: Count;
  readonly work: Work;
  readonly lasts: Duration;
  /** From one moment to the next. */
  readonly step: Time;
}

export const MOST_HEADS_SHOWN = si(20, COUNT);
/** Eight hours by the minute. */
const MOST_MOMENTS = 480;
const ROUNDING = 1e-9;
/** What keeps a cell from waiting. */
const MOST_JOINTS = 5000;

/**
 * The moments of a shift whose times are all the same, from empty heads at 0 on, every `step` seconds. Operators take
 * the heads in turn: joint j starts when its head has run out, S(j − heads) + load + machine, and an operator has come,
 * S(j − operators) + load + walk. A walk that takes longer than the machine runs is not taken: then each operator stays
 * at one head. So the joints of a long course come to those of the steady output.
 */
export function course({ heads, operators, work, lasts, step }: Course): Moment[] {
  const all = wholeFrom1("heads", heads, MOST_HEADS_SHOWN);
  const people = wholeFrom1("operators", operators, MOST_HEADS_SHOWN);
  const { load, machine, walk } = work;
  above0("machineSeconds", machine, TIME);
  atLeast0("loadSeconds", load, TIME);
  atLeast0("walkSeconds", walk, TIME);
  above0("stepSeconds", step, TIME);
  above0("hours", lasts, DURATION);
  const rounds = roundsOf(all, people, work);
  atMost("hours", lasts, DURATION, Math.min(MOST_MOMENTS * step, MOST_JOINTS * rounds.period));
  return Array.from({ length: wholeDown(lasts / step) + 1 }, (_, i) => rounds.at(si(i * step, TIME)));
}

interface Rounds {
  /** Seconds from one joint to the next in the long run. */
  readonly period: number;
  /** Moments are asked for in their order. */
  readonly at: (time: Time) => Moment;
}

/** The joints in the order they start. */
function roundsOf(heads: number, operators: number, { load, machine, walk }: Work): Rounds {
  const stay = operators >= heads || walk > machine;
  // Heads that are served, and operators who go around them.
  const served = stay ? Math.min(heads, operators) : heads;
  const serving = Math.min(heads, operators);
  const cycle = load + machine;
  const round = stay ? 0 : load + walk;
  // Just before a load, a walk and a run end: a moment that is their end but for rounding comes after it.
  const [loaded, walked, run] = [justBefore(load), justBefore(round), justBefore(cycle)];
  const starts: number[] = [];
  let [begun, done] = [0, 0];

  function startOf(joint: number): number {
    for (let j = starts.length; j <= joint; j += 1) {
      const before = (count: number, seconds: number): number => {
        const start = starts[j - count];
        return start === undefined ? 0 : start + seconds;
      };
      starts.push(Math.max(before(served, cycle), before(serving, round)));
    }
    return itemAt(starts, joint);
  }

  /** Seconds since the last joint began of those that come every `count`, the first of them number `first`. */
  function since(
    first: number,
    count: number,
    time: Time,
  ): { readonly joint: number; readonly seconds: number } {
    const joint = begun - 1 - ((((begun - 1 - first) % count) + count) % count);
    return { joint, seconds: joint < 0 ? Infinity : time - startOf(joint) };
  }

  function operatorAt(i: number, time: Time): number {
    if (i >= serving) return OPERATOR.waits;
    const { joint, seconds } = since(i, serving, time);
    if (seconds < loaded) return (joint % served) + 1;
    return seconds < walked ? OPERATOR.walks : OPERATOR.waits;
  }

  function headAt(i: number, time: Time): number {
    if (i >= served) return HEAD.waits;
    const { seconds } = since(i, served, time);
    if (seconds < loaded) return HEAD.isLoaded;
    return seconds < run ? HEAD.runs : HEAD.waits;
  }

  return {
    period: Math.max(cycle / served, round / serving),
    at: (time) => {
      while (!isAbove(startOf(begun), time)) begun += 1;
      while (!isAbove(startOf(done) + cycle, time)) done += 1;
      return {
        time,
        joints: si(done, COUNT),
        operators: Array.from({ length: operators }, (_, i) => operatorAt(i, time)),
        heads: Array.from({ length: heads }, (_, i) => headAt(i, time)),
      };
    },
  };
}

/** A moment since a start is a difference of two times, so that it is off by their rounding. */
function justBefore(seconds: number): number {
  return seconds * (1 - ROUNDING);
}
