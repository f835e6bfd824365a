/** What a steady arc of some power melts of a plate, and the power for a wanted melt. Lengths m, powers W into the metal. */

import { rootBetween } from "../numerics/root";
import type { ArcPlate } from "./arc-plate";
import type { MovingArc } from "./moving-arc";
import { movingArc, weightsAt } from "./moving-arc";
import { crestAt, firstGuess, squareAt } from "./widest";

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

/** The power at which the mean of face and root is `width`: the face is then between one and two of it wide. */
export function powerOfMean(plate: ReadyPlate, rise: number, width: number): number {
  const { arc, root } = plate;
  const miss = (face: number): number => {
    const target = rise / powerOfFace(plate, rise, face);
    return (face + 2 * Math.sqrt(squareAt(arc, root, target))) / (2 * width) - 1;
  };
  return powerOfFace(plate, rise, width * rootBetween((part) => miss(part * width), 1, 2));
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
