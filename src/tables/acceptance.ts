/** Limits of form for hygienic tube butt welds. */

import { isAbove, tube } from "../limits";
import type { Length } from "../quantity";
import { LENGTH, si } from "../quantity";

export interface WeldLimits {
  readonly concavity: Length;
  readonly convexity: Length;
  readonly misalignment: Length;
}

interface SizeException {
  readonly od: Length;
  /** Outside misalignment allowed, and the tolerance on that tube's outside diameter: the same figure. */
  readonly misalignment: Length;
}

/** The table's own exceptions on the outside, m: 4 in tube 0.015 in, 6 in tube 0.030 in. */
export const EXCEPTIONS: readonly SizeException[] = [
  { od: si(0.1016, LENGTH), misalignment: si(0.000_381, LENGTH) },
  { od: si(0.1524, LENGTH), misalignment: si(0.000_762, LENGTH) },
];

/**
 * Maximum concavity, convexity and outside misalignment, m: [asme-bpe-2012], Table MJ-8.4-1, 10 %, 10 % and 15 % of
 * the nominal wall. A tube measured within its tolerance counts as its nominal size.
 */
export function weldLimits(od: Length, wall: Length): WeldLimits {
  tube(od, wall);
  const exception = EXCEPTIONS.find((size) => !isAbove(Math.abs(od - size.od), size.misalignment));
  return {
    concavity: si(0.1 * wall, LENGTH),
    convexity: si(0.1 * wall, LENGTH),
    misalignment: si(exception?.misalignment ?? 0.15 * wall, LENGTH),
  };
}
