/** The trade's rule of thumb for current. */

import { above0 } from "../limits";
import type { Material } from "../metal/material";
import { AMBIENT, MATERIALS, meltingRise } from "../metal/material";
import type { Current, Length } from "../quantity";
import { CURRENT, LENGTH, si } from "../quantity";

/** One ampere per thousandth of an inch, A/m. */
const AMPS_PER_METER_OF_WALL = 1 / 0.000_025_4;

/**
 * Current by wall, A: 1 A per 0.001 in of 316L (common practice); another metal in the proportion of its hot
 * conductivity × rise to the liquidus from 20 °C, what the heat-flow model says of a bead as wide at the same v·b/α.
 */
export function ampsByWall(wall: Length, material: Material): Current {
  return si(
    above0("wall", wall, LENGTH) *
      AMPS_PER_METER_OF_WALL *
      (meltPower(material) / meltPower(MATERIALS["316L"])),
    CURRENT,
  );
}

/** k·θ, W/m: the power scale of melting through a plate, per thickness. */
function meltPower(material: Material): number {
  return material.hotConductivity.value * meltingRise(material, AMBIENT);
}
