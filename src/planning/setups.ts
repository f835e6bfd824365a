/** Changes of set-up over a list of joints: collets, electrode, schedule. */

import { tube, wholeFrom1 } from "../limits";
import type { Material } from "../metal/material";
import type { Count, Length } from "../quantity";
import { COUNT, si } from "../quantity";
import type { Line } from "./takeoff";
import { MOST_JOINTS } from "./takeoff";

export interface SetUpChanges {
  /** In the order of the list. */
  readonly asListed: Count;
  /** With all joints of a kind in a row: the kinds less one. */
  readonly grouped: Count;
}

/** Digits of a size that tell one from another: a change of units leaves less. */
const DIGITS = 9;

/** Refuses a line that is no joint. */
export function aJoint({ quantity, od, wall }: Line): void {
  wholeFrom1("quantity", quantity, MOST_JOINTS);
  tube(od, wall);
}

/**
 * Changes of set-up: od, wall or material differ from the joint before. The set-up of the first joint is no change.
 */
export function setUpChanges(lines: readonly Line[]): SetUpChanges {
  const metals = new Map<Material, number>();
  const kinds = lines.map(({ od, wall, material }) => {
    const metal = metals.get(material) ?? metals.size;
    metals.set(material, metal);
    return [size(od), size(wall), metal].join("|");
  });
  const changes = kinds.filter((kind, i) => i > 0 && kind !== kinds[i - 1]).length;
  return { asListed: si(changes, COUNT), grouped: si(Math.max(0, new Set(kinds).size - 1), COUNT) };
}

function size(length: Length): string {
  return length.toPrecision(DIGITS);
}
