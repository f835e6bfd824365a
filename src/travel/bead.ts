/** The width of the fused bead that a starting procedure aims at. */

import { above0 } from "../limits";
import type { Length } from "../quantity";
import { LENGTH, si } from "../quantity";

/**
 * Fused width to aim at, m, mean of face and root: 1 mm + 2 × wall. An estimate from common practice for single-pass
 * autogenous tube welds; no published table confirms it.
 */
export function commonBeadWidth(wall: number): Length {
  return si(0.001 + 2 * above0("wall", wall, LENGTH), LENGTH);
}
