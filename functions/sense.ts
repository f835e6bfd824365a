/**
 * What no tube of this trade measures: most likely a number in the other units. The calculations behind the formulas
 * hold far beyond these sizes; a person who types one has slipped.
 */

import { isAbove, isBelow } from "../src/limits";
import type { Length, Units } from "../src/quantity";
import { fromBase, LENGTH, si, toBase } from "../src/quantity";
import { amount, Refusal, rule } from "../src/refusal";

export interface TradeSizes {
  /** As a sentence calls it. */
  readonly what: string;
  readonly min: Length;
  readonly max: Length;
}

/** Common practice: thinner is foil and cannot be held butt to butt, thicker is not welded without filler metal. */
export const TRADE_WALLS: TradeSizes = {
  what: "such a wall",
  min: si(0.0001, LENGTH),
  max: si(0.0254, LENGTH),
};
/** Common practice: no closed or open head goes around a larger tube. */
export const TRADE_ODS: TradeSizes = {
  what: "such an outside diameter",
  min: si(0, LENGTH),
  max: si(0.508, LENGTH),
};

/**
 * Whether some tube of the trade has the length. What is 0 or less is left to the calculation, which says more simply
 * what is wrong.
 */
export function isOfTheTrade(length: Length, sizes: TradeSizes): boolean {
  return length <= 0 || fits(length, sizes);
}

/** Why no tube has it. `plain`: typed without a unit, so that it may have been meant in the other. */
export function notOfTheTrade(
  argument: string,
  length: Length,
  sizes: TradeSizes,
  units: Units,
  plain: boolean,
): Refusal {
  const limit = isAbove(length, sizes.max)
    ? rule`maximum ${amount(sizes.max, LENGTH)}`
    : rule`minimum ${amount(sizes.min, LENGTH)}`;
  const other = units === "US" ? "SI" : "US";
  const meantInOther = plain && fits(toBase(fromBase(length, LENGTH, units), LENGTH, other), sizes);
  const hint = meantInOther ? `; for ${UNIT_NAMES[other]} give "${other}"` : "";
  return new Refusal(argument, amount(length, LENGTH), [
    `no tube of this trade has ${sizes.what} (`,
    ...limit,
    `)${hint}`,
  ]);
}

/** Common practice: a tube with a thinner wall does not keep its shape; sizes so far apart are of two systems of units. */
const MOST_ODS_OVER_WALL = 200;

/** Refuses a diameter and a wall that are each of the trade, but of no one tube. */
export function oneTube(od: Length, wall: Length): void {
  if (wall <= 0 || !isAbove(od, si(MOST_ODS_OVER_WALL * wall, LENGTH))) return;
  throw new Refusal("wall", amount(wall, LENGTH), [
    `no tube of this trade has so thin a wall for its od (maximum ${String(MOST_ODS_OVER_WALL)} walls); check the units of both`,
  ]);
}

const UNIT_NAMES: Readonly<Record<Units, string>> = { US: "inches", SI: "millimeters" };

function fits(length: Length, { min, max }: TradeSizes): boolean {
  return !isBelow(length, min) && !isAbove(length, max);
}
