/** The plate that a tube wall is to the heat: what of metal, wall and preheat the heat-flow formulas need. */

import { above0, between, temperature } from "../limits";
import type { Material } from "../metal/material";
import { AMBIENT, meltingRise } from "../metal/material";
import type { Length, Speed } from "../quantity";
import { LENGTH, si, SPEED } from "../quantity";

export interface Plate {
  readonly wall: Length;
  /** k, W/(m·K) */
  readonly conductivity: number;
  /** α, m²/s */
  readonly diffusivity: number;
  /** θ: from the preheat to the liquidus, K */
  readonly meltingRise: number;
}

/** The wall, hot properties, at `preheat` K before the arc comes. */
export function plateOf(wall: Length, material: Material, preheat = AMBIENT): Plate {
  return {
    wall: between("wall", above0("wall", wall, LENGTH), LENGTH, ...LENGTHS),
    conductivity: material.hotConductivity.value,
    diffusivity: material.hotDiffusivity.value,
    meltingRise: meltingRise(material, temperature("preheat", preheat)),
  };
}

/** Far beyond any weld on either side; inside, nothing overflows. A micrometer to a meter. */
const LENGTHS = [si(1e-6, LENGTH), si(1, LENGTH)] as const;
/** From 0.06 mm to 60 m a minute. */
const SPEEDS = [si(1e-6, SPEED), si(1, SPEED)] as const;

export function arcSpeed(speed: Speed): Speed {
  return between("speed", above0("speed", speed, SPEED), SPEED, ...SPEEDS);
}

export function fusedWidth(width: Length): Length {
  return between("beadWidth", above0("beadWidth", width, LENGTH), LENGTH, ...LENGTHS);
}

/** The narrowest and the widest bead there is an answer for, m. */
export const WIDTHS = LENGTHS;
