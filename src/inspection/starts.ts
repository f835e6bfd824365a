/** How many joints to start so that enough are good. */

import { isBelow, shareAbove0, shareInside, wholeFrom1 } from "../limits";
import { binomialUpTo } from "../numerics/binomial";
import type { Count, Share } from "../quantity";
import { COUNT, SHARE, si } from "../quantity";
import { amount, Refusal, rule } from "../refusal";

/** Larger orders of welds there are not; the search stays a moment's work. */
export const MOST_GOOD = si(100_000, COUNT);
export const MOST_STARTED = si(1_000_000_000, COUNT);
export const EVEN_ODDS = si(0.5, SHARE);

/**
 * The fewest joints to start so that at least `good` of them are good with that confidence: the smallest n whose
 * binomial chance P(X ≥ good) reaches it, each joint good with the product of the yields of its stages. One joint more
 * never lowers the chance, so halving finds it. Assumes that joints fail independently.
 */
export function jointsToStart(good: Count, yields: readonly Share[], confidence: Share): Count {
  const wanted = wholeFrom1("good", good, MOST_GOOD);
  const all = yields.reduce((product, one) => product * shareAbove0("yield", one), 1);
  const sure = shareInside("confidence", confidence);
  if (all === 1) return wanted;
  const miss = 1 - all;
  const isEnough = (started: number): boolean =>
    !isBelow(1 - binomialUpTo(wanted - 1, started, all, miss), sure);
  if (!isEnough(MOST_STARTED)) {
    throw new Refusal(
      "yield",
      amount(all, SHARE),
      rule`is so small that more than ${amount(MOST_STARTED, COUNT)} joints have to be started`,
      "unanswerable",
    );
  }
  let [under, enough] = [wanted - 1, Math.min(Math.ceil(wanted / all), MOST_STARTED)];
  while (!isEnough(enough)) [under, enough] = [enough, Math.min(2 * enough, MOST_STARTED)];
  while (enough - under > 1) {
    const middle = Math.floor((under + enough) / 2);
    if (isEnough(middle)) enough = middle;
    else under = middle;
  }
  return si(enough, COUNT);
}
