/** The starting values of one tube among many, with the currents between which its bead holds. */

import { COMMON_BACKGROUND } from "./choices";
import type { Style } from "./choices";
import type { Schedule } from "./schedule";
import { schedule } from "./schedule";
import { ARC_EFFICIENCY, EFFICIENCIES, FACE_MOST, ROOT_LEAST, WALL_TOLERANCE } from "../heat-flow/arc";
import { ampsWindow } from "../heat-flow/plate-melt";
import { COMMON_ALLOWANCE } from "../gap/electrode";
import { isAbove, isBelow } from "../limits";
import type { Material } from "../metal/material";
import { AMBIENT } from "../metal/material";
import { itemAt } from "../numerics/item";
import type { Current, Length, Share, Units } from "../quantity";
import { CURRENT, LENGTH, SHARE, si } from "../quantity";
import type { Refusal, Rule } from "../refusal";
import { orRefusal } from "../refusal";

export interface Size {
  readonly od: Length;
  readonly wall: Length;
  readonly material: Material;
}

export interface SizeTerms {
  readonly style: Style;
  readonly efficiency: Share;
}

export interface SizeRow {
  readonly set: Schedule;
  /** Mean currents of the first sector, between too little root and too wide a face. */
  readonly minimum: Current;
  readonly maximum: Current;
  readonly remarks: readonly Rule[];
}

/** What may differ from joint to joint, as AMPS_WINDOW has it: the arc in proportion to the efficiency. */
const WEAKEST = EFFICIENCIES[0] / ARC_EFFICIENCY;
const STRONGEST = EFFICIENCIES[1] / ARC_EFFICIENCY;

/** Rows kept, so that a list in which one size changes costs that one; far more than a list of a job has. */
const KEPT = 4000;
const kept = new Map<string, SizeRow | Refusal>();
const numbers = new Map<Material, number>();

/** The row of a size, as SCHEDULE and AMPS_WINDOW have it, or why there is none. */
export function sizeRow(size: Size, terms: SizeTerms, units: Units): SizeRow | Refusal {
  const metal = numbers.get(size.material) ?? numbers.size;
  numbers.set(size.material, metal);
  const key = [size.od, size.wall, metal, terms.style, terms.efficiency, units].join();
  let row = kept.get(key);
  if (row === undefined) {
    row = orRefusal(() => rowOf(size, terms, units));
    if (kept.size === KEPT) kept.clear();
    kept.set(key, row);
  }
  return row;
}

function rowOf({ od, wall, material }: Size, { style, efficiency }: SizeTerms, units: Units): SizeRow {
  const set = schedule(od, wall, material, { ...SUGGESTED, style, efficiency }, units);
  const window = windowOf(set, wall, material, efficiency);
  return { set, ...window, remarks: [...set.remarks, ...window.remarks] };
}

const SUGGESTED = {
  volts: undefined,
  speed: undefined,
  beadWidth: undefined,
  overlap: undefined,
  dwell: undefined,
  peak: undefined,
  background: COMMON_BACKGROUND,
  allowance: COMMON_ALLOWANCE,
  arcSize: undefined,
} as const;

type Window = Pick<SizeRow, "minimum" | "maximum" | "remarks">;

/**
 * The window of a flat plate in proportion to the current of its bead, on the first sector's mean, which melts the same
 * bead with its tube and pulse.
 */
function windowOf(set: Schedule, wall: Length, material: Material, efficiency: Share): Window {
  const { speed, arcSize, beadWidth, volts, means } = set;
  const plate = ampsWindow({ wall, speed, material, arcSize }, AMBIENT, {
    rootLeast: si(ROOT_LEAST * wall, LENGTH),
    faceMost: si(FACE_MOST * beadWidth, LENGTH),
    beadWidth,
    wallTolerance: WALL_TOLERANCE,
    efficiencyLow: si(WEAKEST * efficiency, SHARE),
    efficiencyHigh: si(Math.min(1, STRONGEST * efficiency), SHARE),
    efficiency,
    volts,
  });
  const amps = itemAt(means, 0);
  const minimum = si((amps * plate.minimum) / plate.amps, CURRENT);
  const maximum = si((amps * plate.maximum) / plate.amps, CURRENT);
  return { minimum, maximum, remarks: remarksOn(amps, minimum, maximum) };
}

/** The default bead is never too wide for the most current: its face would have to be half as wide again. */
function remarksOn(amps: Current, minimum: Current, maximum: Current): Rule[] {
  if (isAbove(minimum, maximum)) {
    return [["Closed window: no current suits every wall and arc of the usual spread."]];
  }
  if (isBelow(amps, minimum))
    return [["Current below the window: with the weakest arc or the thickest wall the root is too narrow."]];
  return [];
}
