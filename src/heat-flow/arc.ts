/** The arc between the power a weld needs and the current on the dial. */

import { ARC_VOLTS_GAPS, COMMON_ALLOWANCE, arcVolts, standoff } from "../gap/electrode";
import { above0, between, shareAbove0 } from "../limits";
import type { Length, Share, Voltage } from "../quantity";
import { LENGTH, SHARE, si, VOLTAGE } from "../quantity";
import { amount, Refusal, rule } from "../refusal";

/**
 * Fraction of the arc's power that reaches the tube. Mean of the published values for TIG, electrode negative, 95 % range
 * 0.73–0.82 ([stenbacka-2012]). Not the 0.6 of [en-1011-1], which is a code factor.
 */
export const ARC_EFFICIENCY = si(0.78, SHARE);

/** The 95 % range of the same values: the weakest and the strongest arc. */
export const EFFICIENCIES = [si(0.73, SHARE), si(0.82, SHARE)] as const;
/** How far a wall may be off either way, as a fraction. Common practice. */
export const WALL_TOLERANCE = si(0.1, SHARE);
/** Root that counts as full penetration, of the wall, and the widest face, of the bead: estimates from common practice. */
export const ROOT_LEAST = 0.5;
export const FACE_MOST = 1.5;

/** Far beyond any arc on either side; inside, nothing overflows. */
const VOLTS = [1, 1000] as const;
const MIN_EFFICIENCY = 0.001;

/** W into the tube per A; the efficiency is refused by the name it is given by. */
export function wattsPerAmp(volts: Voltage, efficiency: Share, argument = "efficiency"): number {
  return (
    between("volts", above0("volts", volts, VOLTAGE), VOLTAGE, ...VOLTS) *
    between(argument, shareAbove0(argument, efficiency), SHARE, MIN_EFFICIENCY, 1)
  );
}

/** The walls, m, whose common standoff lies in the 0.5 to 3 mm that the estimate of arc voltage holds for. */
export const ARC_VOLTS_WALLS = [wallOf(ARC_VOLTS_GAPS[0]), wallOf(ARC_VOLTS_GAPS[1])] as const;

function wallOf(gap: number): Length {
  return si(2 * (gap - COMMON_ALLOWANCE), LENGTH);
}

/**
 * Arc voltage at the common standoff of a wall; of a thinner wall than the estimate holds for, that at its minimum gap.
 * Beyond the thickest the caller says which argument can fix it.
 */
export function commonArcVolts(wall: Length): Voltage {
  const most = ARC_VOLTS_WALLS[1];
  if (above0("wall", wall, LENGTH) <= most) {
    return arcVolts(si(Math.max(ARC_VOLTS_GAPS[0], standoff(wall, COMMON_ALLOWANCE)), LENGTH));
  }
  throw new Refusal(
    "volts",
    "omitted",
    rule`give the arc voltage; it is estimated only for walls up to ${amount(most, LENGTH)}`,
  );
}
