/** Walls that a welded test coupon covers. */

import { above0, isAbove, isBelow } from "../limits";
import type { Length, Units } from "../quantity";
import { LENGTH, si, toBase } from "../quantity";
import type { Covered } from "./covered";

export const WALL_RULES = ["ASME IX", "ISO 15614-1", "ISO 9606-1"] as const;
export type WallRule = (typeof WALL_RULES)[number];

/** Minimum and maximum wall, m, that a coupon of that wall covers by the rule; no maximum where it sets none. */
export function coveredWall(coupon: Length, rule: WallRule, units: Units): Covered<Length> {
  above0("couponWall", coupon, LENGTH);
  if (rule === "ASME IX") return bySectionIx(coupon, units);
  return rule === "ISO 15614-1" ? byIso15614(coupon) : byIso9606(coupon);
}

/** What Section IX prints in inches beside what it prints in millimeters, which is rounded. */
type Printed = Readonly<Record<Units, number>>;
const THIN: Printed = { US: 1 / 16, SI: 1.5 };
const MEDIUM: Printed = { US: 3 / 8, SI: 10 };
const THICK: Printed = { US: 3 / 2, SI: 38 };
const THICKEST: Printed = { US: 6, SI: 150 };
const MOST_OF_THICK: Printed = { US: 8, SI: 200 };
const LEAST_OF_THICK: Printed = { US: 3 / 16, SI: 5 };
/** Maximum over the thickest row. */
const BEYOND = 1.33;

/**
 * [asme-ix-2017], QW-451.1, groove welds with tension and bend tests, base metal: T to 2T under 1/16 in, from 1/16 in
 * to 3/8 in 1/16 in to 2T, above 3/16 in to 2T, from 1 1/2 in to 6 in 3/16 in to 8 in, above 3/16 in to 1.33T. The
 * columns of inches and of millimeters differ: each system has its own.
 */
function bySectionIx(coupon: Length, units: Units): Covered<Length> {
  const limit = (printed: Printed): Length => toBase(printed[units], LENGTH, units);
  const twice = si(2 * coupon, LENGTH);
  if (isBelow(coupon, limit(THIN))) return { least: coupon, most: twice };
  if (!isAbove(coupon, limit(MEDIUM))) return { least: limit(THIN), most: twice };
  const least = limit(LEAST_OF_THICK);
  if (isBelow(coupon, limit(THICK))) return { least, most: twice };
  if (!isAbove(coupon, limit(THICKEST))) return { least, most: limit(MOST_OF_THICK) };
  return { least, most: si(BEYOND * coupon, LENGTH) };
}

const THREE = si(0.003, LENGTH);
const TWELVE = si(0.012, LENGTH);

/**
 * [iso-15614-1-2017], level 2, butt weld in a single run: 0.7t to 1.3t up to 3 mm, 0.5t (at least 3 mm) to 1.3t up to
 * 12 mm, 0.5t to 1.1t above. From memory.
 */
function byIso15614(coupon: Length): Covered<Length> {
  if (!isAbove(coupon, THREE)) return { least: si(0.7 * coupon, LENGTH), most: si(1.3 * coupon, LENGTH) };
  if (!isAbove(coupon, TWELVE)) {
    return { least: si(Math.max(THREE, 0.5 * coupon), LENGTH), most: si(1.3 * coupon, LENGTH) };
  }
  return { least: si(0.5 * coupon, LENGTH), most: si(1.1 * coupon, LENGTH) };
}

/**
 * [iso-9606-1-2013], thickness s welded by hand: s to 2s or 3 mm, whichever is more, under 3 mm; 3 mm to 2s under
 * 12 mm; from 12 mm on 3 mm and more. All but the last row from memory.
 */
function byIso9606(coupon: Length): Covered<Length> {
  if (isBelow(coupon, THREE)) return { least: coupon, most: si(Math.max(THREE, 2 * coupon), LENGTH) };
  if (isBelow(coupon, TWELVE)) return { least: THREE, most: si(2 * coupon, LENGTH) };
  return { least: THREE, most: undefined };
}
