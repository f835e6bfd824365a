/** The width of the fused bead that a starting procedure aims at. */

import { above0 } from "../limits";
import type { Length } from "../quantity";
import { LENGTH, si } from "../quantity";

/** The two numbers of the common width, which help tells too. */
export const BASE_WIDTH = si(0.001, LENGTH);
export const WIDTH_PER_WALL = 2;

/**
 * Target fused width, m, mean of face and root: 1 mm + 2 × wall. An estimate from common practice for single-pass
 * autogenous tube welds; no published table confirms it.
 */
export function commonBeadWidth(wall: Length): Length {
  return si(BASE_WIDTH + WIDTH_PER_WALL * above0("wall", wall, LENGTH), LENGTH);
}
