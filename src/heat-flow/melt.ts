/** What a steady arc of some power melts of a plate, and the power for a wanted melt. Lengths m, powers W into the metal. */

import type { Point } from "../numerics/newton";
import { fallingRoot } from "../numerics/newton";
import { rootBetween } from "../numerics/root";
import type { ArcPlate } from "./arc-plate";
import type { MovingArc } from "./moving-arc";
import { movingArc, weightsAt } from "./moving-arc";
import { crestAt, crestsOf, firstGuess, squareAt } from "./widest";

export interface MeltSection {
  /** Fused width of the face, 0 where nothing melts. */
  readonly face: number;
  /** Fused width of the root, 0 where the wall is not melted through. */
  readonly root: number;
}

/** A plate made ready: everything that does not depend on power or width. */
export interface ReadyPlate {
  readonly arc: MovingArc;
  readonly face: Float64Array;
  readonly root: Float64Array;
}

export function readyPlate(plate: ArcPlate, fineness?: number): ReadyPlate {
  const arc = movingArc(plate, fineness);
  return { arc, face: weightsAt(arc, 0), root: weightsAt(arc, 1) };
}

/** Fused widths of face and root, m, at `power` with `rise` K from the metal ahead of the arc to its liquidus. */
export function meltSection({ arc, face, root }: ReadyPlate, rise: number, power: number): MeltSection {
  const target = rise / power;
  return {
    face: 2 * Math.sqrt(squareAt(arc, face, target)),
    root: 2 * Math.sqrt(squareAt(arc, root, target)),
  };
}

/** Mean of face and root, m. */
export function meanWidth(plate: ReadyPlate, rise: number, power: number): number {
  const { face, root } = meltSection(plate, rise, power);
  return (face + root) / 2;
}

/** The power at which the face is `width` wide; width 0: at which it begins to melt. */
export function powerOfFace({ arc, face }: ReadyPlate, rise: number, width: number): number {
  return rise / crestAt(arc, face, (width * width) / 4, firstGuess(arc)).value;
}

/** The power at which the root is `width` wide; width 0: the minimum that melts through. */
export function powerOfRoot({ arc, root }: ReadyPlate, rise: number, width: number): number {
  return rise / crestAt(arc, root, (width * width) / 4, firstGuess(arc)).value;
}

/** The root is first looked for at this part of the mean. */
const LIKELY_ROOT = 0.7;

/**
 * The power at which the mean of face and root is `width`: that at which a root and a face of what it leaves of the sum
 * just melt together; a face of twice the mean where there is no root yet.
 */
export function powerOfMean({ arc, face, root }: ReadyPlate, rise: number, width: number): number {
  const [faceCrest, rootCrest] = [crestsOf(arc, face), crestsOf(arc, root)];
  // Half of the root, y. The hottest at the root over that at the face falls as the root takes from the face.
  const miss = (y: number): Point => {
    const other = width - y;
    const [above, below] = [faceCrest(other * other), rootCrest(y * y)];
    const slope = 2 * ((y * below.bySquare) / below.value + (other * above.bySquare) / above.value);
    return { value: Math.log(below.value / above.value), slope };
  };
  const y = fallingRoot(miss, 0, width / 2, (LIKELY_ROOT * width) / 2);
  return rise / faceCrest((width - y) * (width - y)).value;
}

/** Depth melted under the arc, m: 0 where nothing melts, the wall where it is melted through. */
export function meltDepth(plate: ReadyPlate, rise: number, power: number): number {
  const { arc } = plate;
  const { wall } = arc.plate;
  if (power <= powerOfFace(plate, rise, 0)) return 0;
  if (power >= powerOfRoot(plate, rise, 0)) return wall;
  const miss = (part: number): number =>
    Math.log((crestAt(arc, weightsAt(arc, part), 0, firstGuess(arc)).value * power) / rise);
  return wall * rootBetween(miss, 0, 1);
}
