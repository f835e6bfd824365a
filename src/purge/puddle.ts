/** What the molten root can hold. */

import { above0 } from "../limits";
import type { Material } from "../metal/material";
import type { BorePressure, Length } from "../quantity";
import { BORE_PRESSURE, LENGTH, si } from "../quantity";

/**
 * Pressure that blows out a molten root, Pa: 2σ/w. A long root of width w bulges at most to a half-cylinder of
 * diameter w, across which surface tension holds σ/(w/2) (Young–Laplace). The weight of the metal is neglected.
 */
export function blowOutPressure(rootWidth: Length, material: Material): BorePressure {
  return si((2 * material.surfaceTension.value) / above0("rootWidth", rootWidth, LENGTH), BORE_PRESSURE);
}
