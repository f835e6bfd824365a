/** How many of a lot to look at, and what that proves. */

import { atLeast0, atMost, isAbove, shareInside, wholeFrom, wholeFrom1 } from "../limits";
import { binomialUpTo, hypergeometric, hypergeometricUpTo } from "../numerics/binomial";
import type { Count, Percent, Share } from "../quantity";
import { COUNT, PERCENT, SHARE, si } from "../quantity";
import { amount, Refusal } from "../refusal";
import type { Level, Severity } from "./plan-table";
import { codeLetter, planAt, QUALITY_LIMITS } from "./plan-table";

/** Larger lots and samples of welds there are not; what follows stays a moment's work. */
export const MOST_LOT = si(1_000_000_000, COUNT);
export const MOST_SAMPLE = si(1_000_000, COUNT);
/** The tables begin with two. */
export const LEAST_LOT = si(2, COUNT);
export const COMMON_CONFIDENCE = si(0.95, SHARE);

export interface SamplePlan {
  readonly letter: string;
  readonly sample: Count;
  readonly accept: Count;
  readonly reject: Count;
}

/** Code letter, sample, acceptance and rejection number of a single plan; a sample is never more than the lot. */
export function samplePlan(lot: Count, aql: Percent, level: Level, severity: Severity): SamplePlan {
  const joints = wholeFrom("lot", lot, LEAST_LOT, MOST_LOT);
  const letter = codeLetter(joints, level);
  const { sample, accept } = planAt(letter, placeOf(aql), severity);
  return {
    letter,
    sample: si(Math.min(sample, joints), COUNT),
    accept: si(accept, COUNT),
    reject: si(accept + 1, COUNT),
  };
}

/** The place of a quality limit in the list; one that is not there is refused with its neighbors. */
function placeOf(aql: Percent): number {
  const place = QUALITY_LIMITS.findIndex((one) => Math.abs(one - aql) <= 1e-9 * one);
  if (place >= 0) return place;
  throw new Refusal(
    "aql",
    amount(aql, PERCENT),
    [`must be one of ${QUALITY_LIMITS.join(", ")} %`],
    aql > 0 ? "unanswerable" : "impossible",
  );
}

/**
 * Chance that a sample holds no more bad ones than `accept`: binomial with a share of bad ones from a running process,
 * hypergeometric with a count of them in one lot.
 */
export function acceptanceOdds(sample: Count, accept: Count, bad: number, lot: Count | undefined): Share {
  const drawn = wholeFrom1("sample", sample, MOST_SAMPLE);
  const allowed = wholeFrom("accept", accept, 0, drawn);
  if (lot === undefined) {
    const share = atMost("bad", atLeast0("bad", si(bad, SHARE), SHARE), SHARE, 1);
    return si(ofProcess(allowed, drawn, share), SHARE);
  }
  const joints = wholeFrom("lot", lot, drawn, MOST_LOT);
  const inLot = wholeFrom("bad", si(bad, COUNT), 0, joints);
  return si(hypergeometricUpTo(allowed, drawn, inLot, joints), SHARE);
}

function ofProcess(allowed: number, drawn: number, share: number): number {
  if (share === 0 || allowed === drawn) return 1;
  return share === 1 ? 0 : binomialUpTo(allowed, drawn, share, 1 - share);
}

/**
 * The smallest sample that, with all of it good, proves fewer than `bad` bad ones in the lot: a lot that holds so many
 * would show none with a chance of 1 − confidence at most. The chance falls with the sample, so halving finds it.
 */
export function provingSample(lot: Count, bad: Count, confidence: Share): Count {
  const joints = wholeFrom1("lot", lot, MOST_LOT);
  const inLot = wholeFrom("bad", bad, 1, joints);
  const doubt = 1 - shareInside("confidence", confidence);
  // So many leave too few for the bad ones to hide in.
  let [under, enough] = [0, joints - inLot + 1];
  while (enough - under > 1) {
    const middle = Math.floor((under + enough) / 2);
    if (isAbove(hypergeometric(0, middle, inLot, joints), doubt)) under = middle;
    else enough = middle;
  }
  return si(enough, COUNT);
}
