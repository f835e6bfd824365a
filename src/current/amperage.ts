/** The trade's rule of thumb for current. */

import { ARC_EFFICIENCY, wattsPerAmp } from "../heat-flow/arc";
import { ampsOfWidth } from "../heat-flow/plate-melt";
import { above0 } from "../limits";
import type { Material } from "../metal/material";
import { AMBIENT, MATERIALS } from "../metal/material";
import type { Current, Length } from "../quantity";
import { CURRENT, LENGTH, si, VOLTAGE } from "../quantity";
import { commonBeadWidth } from "../travel/bead";
import { suggestedSpeed } from "../travel/travel";

/** One ampere per thousandth of an inch, A/m. */
const AMPS_PER_METER_OF_WALL = 1 / 0.000_025_4;

/**
 * Current by wall, A: 1 A per 0.001 in of 316L (common practice); another metal in the proportion of what melts the
 * common bead in it and in 316L, each at its own suggested travel.
 */
export function ampsByWall(wall: Length, material: Material): Current {
  const amps = above0("wall", wall, LENGTH) * AMPS_PER_METER_OF_WALL;
  const usual = MATERIALS["316L"];
  if (material === usual) return si(amps, CURRENT);
  return si((amps * meltAmps(wall, material)) / meltAmps(wall, usual), CURRENT);
}

/** Any arc will do, for only the proportion counts. */
const WATTS = wattsPerAmp(si(10, VOLTAGE), ARC_EFFICIENCY);

function meltAmps(wall: Length, material: Material): number {
  const beadWidth = commonBeadWidth(wall);
  const speed = suggestedSpeed(beadWidth, material);
  return ampsOfWidth(
    { wall, speed, material, arcSize: undefined, preheat: AMBIENT, watts: WATTS },
    beadWidth,
  );
}
