/** Test welds of a working period. */

import { above0, atMost, wholeFrom, wholeUp } from "../limits";
import type { Count, Duration } from "../quantity";
import { COUNT, DURATION, si } from "../quantity";
import { amount, Refusal, rule } from "../refusal";

/** [nfpa-99]: every four hours after the start. */
export const COMMON_EVERY = si(4 * 3600, DURATION);
/** A period without an end is none. */
export const MOST_HOURS = si(1000 * 3600, DURATION);
/** Coupons more often than this leave no time for joints. */
export const LEAST_EVERY = si(360, DURATION);
export const MOST_EVENTS = si(10_000, COUNT);

/**
 * Coupons of a working period [nfpa-99]: one at the start, one each time `every` has passed before the end, one at the
 * end, and one after each long idle time and each change. The coupon of an hour that is the end is the one at the end.
 */
export function couponsDue(hours: Duration, every: Duration, idles: Count, changes: Count): Count {
  const period = atMost("hours", above0("hours", hours, DURATION), DURATION, MOST_HOURS);
  if (!(every >= LEAST_EVERY)) {
    throw new Refusal(
      "every",
      amount(every, DURATION),
      rule`must be at least ${amount(LEAST_EVERY, DURATION)}`,
    );
  }
  const between = wholeUp(period / every) - 1;
  const events = wholeFrom("idles", idles, 0, MOST_EVENTS) + wholeFrom("changes", changes, 0, MOST_EVENTS);
  return si(2 + between + events, COUNT);
}
