/** Reject rate of a process, from what was inspected. */

import { shareInside, wholeFrom, wholeFrom1 } from "../limits";
import { betaQuantile } from "../numerics/beta";
import type { Count, Share } from "../quantity";
import { COUNT, SHARE, si } from "../quantity";

/** More joints were never inspected; what follows stays a moment's work. */
export const MOST_INSPECTED = si(1_000_000, COUNT);

export interface RejectRate {
  readonly low: Share;
  readonly estimate: Share;
  readonly high: Share;
}

/**
 * Two-sided interval and estimate of the reject rate [clopper-pearson-1934]: the rates at which so many rejects or more,
 * and so many or fewer, have half of what confidence leaves. It holds with that confidence or more, whatever the rate.
 */
export function rejectRate(rejected: Count, inspected: Count, confidence: Share): RejectRate {
  const of = wholeFrom1("inspected", inspected, MOST_INSPECTED);
  const bad = wholeFrom("rejected", rejected, 0, of);
  const tail = (1 - shareInside("confidence", confidence)) / 2;
  const low = bad === 0 ? 0 : betaQuantile(tail, bad, of - bad + 1);
  const high = bad === of ? 1 : betaQuantile(1 - tail, bad + 1, of - bad);
  return { low: si(low, SHARE), estimate: si(bad / of, SHARE), high: si(high, SHARE) };
}
