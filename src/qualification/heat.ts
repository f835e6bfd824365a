/** Heat inputs that a welded test coupon covers. */

import { above0 } from "../limits";
import type { HeatInput } from "../quantity";
import { HEAT_INPUT, si } from "../quantity";
import type { Covered } from "./covered";

export const HEAT_RULES = ["ASME IX", "ISO 15614-1"] as const;
export type HeatRule = (typeof HEAT_RULES)[number];

/** [iso-15614-1-2017]: a quarter more where impact tests are required, a quarter less where hardness is. From memory. */
const ISO_BAND = 0.25;

/**
 * Minimum and maximum heat input, J/m: [asme-ix-2010], QW-409.1, with impact tests no more than the coupon's and no
 * minimum; [iso-15614-1-2017] 25 % either way.
 */
export function coveredHeat(coupon: HeatInput, rule: HeatRule): Covered<HeatInput> {
  above0("couponHeat", coupon, HEAT_INPUT);
  if (rule === "ASME IX") return { least: undefined, most: coupon };
  return {
    least: si((1 - ISO_BAND) * coupon, HEAT_INPUT),
    most: si((1 + ISO_BAND) * coupon, HEAT_INPUT),
  };
}
