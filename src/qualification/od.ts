/** Diameters that a welded test coupon covers. */

import { above0, isAbove, isBelow } from "../limits";
import type { Length, Units } from "../quantity";
import { LENGTH, si, toBase } from "../quantity";
import type { Covered } from "./covered";

export const OD_RULES = ["ASME IX", "ISO 9606-1"] as const;
export type OdRule = (typeof OD_RULES)[number];

/** Minimum and maximum outside diameter, m, that a coupon of that diameter covers by the rule. */
export function coveredOd(coupon: Length, rule: OdRule, units: Units): Covered<Length> {
  above0("couponOd", coupon, LENGTH);
  return rule === "ASME IX" ? bySectionIx(coupon, units) : byIso9606(coupon);
}

/** As Section IX prints them in inches and in millimeters. */
const SMALL = { US: 1, SI: 25 } as const;
const MEDIUM = { US: 2.875, SI: 73 } as const;

/**
 * [asme-ix-diameters], QW-452.3: the size welded and more under 1 in, 1 in and more from 1 in to 2 7/8 in, 2 7/8 in and more
 * above. A rule of performance; in a procedure the diameter is no variable.
 */
function bySectionIx(coupon: Length, units: Units): Covered<Length> {
  const small = toBase(SMALL[units], LENGTH, units);
  const medium = toBase(MEDIUM[units], LENGTH, units);
  if (isBelow(coupon, small)) return { least: coupon, most: undefined };
  return { least: isAbove(coupon, Number(medium)) ? medium : small, most: undefined };
}

const ISO_SMALL = si(0.025, LENGTH);

/** [iso-9606-1-2013]: D to 2D up to 25 mm; above 0.5D, at least 25 mm, and more. */
function byIso9606(coupon: Length): Covered<Length> {
  if (!isAbove(coupon, ISO_SMALL)) return { least: coupon, most: si(2 * coupon, LENGTH) };
  return { least: si(Math.max(ISO_SMALL, coupon / 2), LENGTH), most: undefined };
}
