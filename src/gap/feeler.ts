/** Feeler leaves for a gap: which of the set to stack. */

import { itemAt } from "../numerics/item";
import { above0, atMost, between } from "../limits";
import type { Length, Units } from "../quantity";
import { COUNT, LENGTH, si } from "../quantity";
import { amount, Refusal, rule } from "../refusal";

/**
 * A common inch set of 32 leaves, thousandths (common practice, from memory): thirty-one of steel and a second
 * ten of brass.
 */
const INCH_SET = [
  1.5, 2, 2.5, 3, 4, 5, 6, 7, 8, 9, 10, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26,
  28, 30, 32, 35,
].map((thousandths) => si((thousandths * 0.0254) / 1000, LENGTH));
/** A common metric set: 0.05 to 1.00 mm by 0.05 mm (common practice, from memory). */
const METRIC_SET = Array.from({ length: 20 }, (_, i) => si(((i + 1) * 0.05) / 1000, LENGTH));

export const COMMON_LEAVES: Record<Units, readonly Length[]> = { US: INCH_SET, SI: METRIC_SET };
/** Half the step between leaves: half a thousandth of an inch, 0.025 mm. */
export const COMMON_TOLERANCE: Record<Units, Length> = {
  US: si(0.000_012_7, LENGTH),
  SI: si(0.000_025, LENGTH),
};

/** Leaves are told apart to a tenth of a micrometer, finer than any gauge is made. */
const GRAIN = 1e-7;
/** Slack for arithmetic on grains, far under one of them. */
const ROUNDING = 1e-6;
const THICKEST_GAP = 0.01;
/** Far wider than an arc gap is ever set to; each further sum costs the search time. */
const WIDEST_TOLERANCE = 0.001;
const MOST_LEAVES = 100;
const OUT_OF_REACH = 255;

/**
 * The leaves to stack, thickest first, m: as few as possible within `tolerance` of the gap, then the nearest sum,
 * then the thickest first leaf. No leaf twice. Exact search over sums in whole grains.
 */
export function feelerStack(gap: Length, leaves: readonly Length[], tolerance: Length): Length[] {
  atMost("gap", above0("gap", gap, LENGTH), LENGTH, THICKEST_GAP);
  between("tolerance", tolerance, LENGTH, 0, WIDEST_TOLERANCE);
  if (leaves.length > MOST_LEAVES) {
    throw new Refusal(
      "leaves",
      amount(leaves.length, COUNT),
      rule`must be at most ${amount(MOST_LEAVES, COUNT)} leaves`,
    );
  }
  for (const leaf of leaves) above0("leaves", leaf, LENGTH);

  const target = gap / GRAIN;
  const slack = tolerance / GRAIN + ROUNDING;
  const most = Math.floor(target + slack);
  const set = leaves
    .map((thickness) => ({ thickness, grains: Math.round(thickness / GRAIN) }))
    .filter(({ grains }) => grains > 0 && grains <= most)
    .sort((a, b) => b.thickness - a.thickness);
  const fewest = fewestLeaves(set, most);
  const least = Math.max(1, Math.ceil(target - slack));
  const stacks = bestSums(itemAt(fewest, 0), least, most, target).map((sum) => stackOf(set, fewest, sum));
  const best = stacks.reduce((a, b) => (thickerFirst(b, a) ? b : a), stacks[0] ?? []);
  if (best.length > 0) return best;
  throw new Refusal(
    "gap",
    amount(gap, LENGTH),
    rule`no stack of these leaves comes within ${amount(tolerance, LENGTH)} of it`,
    "unanswerable",
  );
}

interface Leaf {
  readonly thickness: Length;
  readonly grains: number;
}

/** fewest[i][sum]: how few of the leaves from the i-th on make the sum exactly. */
function fewestLeaves(set: readonly Leaf[], most: number): Uint8Array[] {
  let after = new Uint8Array(most + 1).fill(OUT_OF_REACH);
  after[0] = 0;
  const rows = [after];
  let reach = 0;
  for (const { grains } of [...set].reverse()) {
    const here = after.slice();
    reach = Math.min(reach + grains, most);
    for (let sum = grains; sum <= reach; sum += 1) {
      const without = itemAt(after, sum - grains);
      if (without !== OUT_OF_REACH && without + 1 < itemAt(here, sum)) here[sum] = without + 1;
    }
    rows.push(here);
    after = here;
  }
  return rows.reverse();
}

/** The sums that need fewest leaves and, among those, lie nearest to the target: one, or two on either side of it. */
function bestSums(fewest: Uint8Array, least: number, most: number, target: number): number[] {
  let best: number[] = [];
  let count = OUT_OF_REACH;
  let distance = Infinity;
  for (let sum = least; sum <= most; sum += 1) {
    const needs = itemAt(fewest, sum);
    const away = Math.abs(sum - target);
    if (needs > count || needs === OUT_OF_REACH) continue;
    if (needs < count || away < distance - ROUNDING) {
      best = [sum];
      count = needs;
      distance = away;
    } else if (away <= distance + ROUNDING) best.push(sum);
  }
  return best;
}

/** Takes each leaf, thickest first, whenever it can belong to a smallest stack. */
function stackOf(set: readonly Leaf[], fewest: readonly Uint8Array[], sum: number): Length[] {
  const taken: Length[] = [];
  let left = sum;
  set.forEach(({ thickness, grains }, i) => {
    if (left < grains || itemAt(itemAt(fewest, i + 1), left - grains) + 1 !== itemAt(itemAt(fewest, i), left))
      return;
    taken.push(thickness);
    left -= grains;
  });
  return taken;
}

/** Whether stack a has the thicker leaf at the first place where the two differ. */
function thickerFirst(a: readonly number[], b: readonly number[]): boolean {
  const differs = a.findIndex((leaf, i) => leaf !== b[i]);
  return differs >= 0 && itemAt(a, differs) > itemAt(b, differs);
}
