/** The border between what a formula is told of a weld and the numbers of the model: checked, in base SI. */

import { COMMON_ALLOWANCE, standoff } from "../gap/electrode";
import { above0, between, isAbove, temperature } from "../limits";
import type { Material } from "../metal/material";
import { AMBIENT, meltingRise } from "../metal/material";
import type { Length, Speed, Temperature } from "../quantity";
import { LENGTH, si, SPEED } from "../quantity";
import { amount, Refusal, rule } from "../refusal";
import { commonBeadWidth } from "../travel/bead";
import type { ArcPlate } from "./arc-plate";
import { effectiveMetal, metalNumbers } from "./effective";
import { meanRadiusSpeed } from "./ring-pass";

/** What every formula of heat flow is told of the wall and the arc on it. */
export interface Weld {
  readonly wall: Length;
  /** Surface travel, told at the outside of a tube. */
  readonly speed: Speed;
  readonly material: Material;
  /** Width of the arc's spot, 4σ; of the common standoff where it is omitted. */
  readonly arcSize: Length | undefined;
}

/** Far beyond any weld on either side: 0.05 mm to 100 mm of wall. */
const WALLS = [si(0.000_05, LENGTH), si(0.1, LENGTH)] as const;
/** Bead and arc spot: 0.01 mm to 100 mm. */
const WIDTHS = [si(0.000_01, LENGTH), si(0.1, LENGTH)] as const;
/** From 0.6 mm to 60 m a minute. */
const SPEEDS = [si(0.000_01, SPEED), si(1, SPEED)] as const;
/** v·(h + 2σ)/(4α) up to which there is an answer: twenty times that of usual travel, and no heat gets ahead of it. */
const SHARPEST = 6;
/** v·b/(4α) up to which the inverse was proved; beads of the trade have 0.2 to 0.9. */
const WIDEST = 3;

/** The spot of a free arc in argon: 0.5 mm + half the gap on each side of its middle, σ. */
const SPOT = { base: 0.0005, perGap: 0.5, widths: 4 } as const;

/** Width of the arc's spot, 4σ, m: 4 × (0.5 mm + half the gap). An estimate; published spots are about 4 mm wide. */
export function commonArcSize(gap: Length): Length {
  return si(SPOT.widths * (SPOT.base + SPOT.perGap * gap), LENGTH);
}

/** The arc's spot as it is told, which may be omitted. */
export function checkedArcSize(arcSize: Length | undefined): void {
  if (arcSize !== undefined) between("arcSize", above0("arcSize", arcSize, LENGTH), LENGTH, ...WIDTHS);
}

/** The wall under the arc, as a flat plate. */
export function plateOf(weld: Weld): ArcPlate {
  const { wall, speed, material, arcSize } = weld;
  between("wall", above0("wall", wall, LENGTH), LENGTH, ...WALLS);
  between("speed", above0("speed", speed, SPEED), SPEED, ...SPEEDS);
  checkedArcSize(arcSize);
  const spread = (arcSize ?? commonArcSize(standoff(wall, COMMON_ALLOWANCE))) / SPOT.widths;
  const metal = effectiveMetal(metalNumbers(material));
  const fastest = (SHARPEST * 4 * metal.diffusivity) / (wall + 2 * spread);
  if (speed > fastest) {
    throw new Refusal(
      "speed",
      amount(speed, SPEED),
      rule`must be at most ${amount(fastest, SPEED)} with this wall and arc`,
    );
  }
  return { metal, wall, spread, speed };
}

/** The same on a tube, whose metal passes the arc at the mean radius. */
export function ringPlateOf(od: Length, weld: Weld): ArcPlate {
  const plate = plateOf(weld);
  return { ...plate, speed: meanRadiusSpeed(od, weld.wall, weld.speed) };
}

/** The widest bead there is an answer for, m. */
export function widestBead({ metal, speed }: ArcPlate): Length {
  return si(Math.min(WIDTHS[1], (WIDEST * 4 * metal.diffusivity) / speed), LENGTH);
}

/** A bead's width the model answers for. */
export function fusedWidth(argument: string, width: Length, plate: ArcPlate): Length {
  return between(argument, above0(argument, width, LENGTH), LENGTH, WIDTHS[0], widestBead(plate));
}

/** The common bead of a wall where no other can be asked for: what stands in its way is the travel. */
export function usualBead(weld: Weld): Length {
  const { metal } = plateOf(weld);
  const { wall, speed } = weld;
  const width = commonBeadWidth(wall);
  const fastest = si((WIDEST * 4 * metal.diffusivity) / width, SPEED);
  if (isAbove(speed, fastest)) {
    throw new Refusal(
      "speed",
      amount(speed, SPEED),
      rule`must be at most ${amount(fastest, SPEED)} with the usual bead of this wall, ${amount(width, LENGTH)}`,
    );
  }
  return width;
}

/** θ: from the metal's temperature before welding to its liquidus, K. */
export function riseToMelt(material: Material, preheat: Temperature = AMBIENT): number {
  return meltingRise(material, temperature("preheat", preheat));
}
