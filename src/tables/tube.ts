/** Tolerances of tube by the standard that it is made to. */

import { isAbove, isBelow, tube } from "../limits";
import type { Length, Units } from "../quantity";
import { LENGTH, si, toBase } from "../quantity";
import { amount, Refusal } from "../refusal";

export const TUBE_STANDARDS = ["A270", "A269", "A1016"] as const;
export type TubeStandard = (typeof TUBE_STANDARDS)[number];

export interface TubeTolerance {
  readonly odOver: Length;
  readonly odUnder: Length;
  readonly wallOver: Length;
  readonly wallUnder: Length;
}

interface Row {
  /** Diameters of the row, in inches as printed. */
  readonly from: number;
  readonly to: number;
  /** Whether the row has its last diameter, and its first. */
  readonly hasTo: boolean;
  readonly hasFrom: boolean;
  /** Outside diameter over and under, as printed in each system. */
  readonly od: Readonly<Record<Units, number>>;
  /** Wall over and under, as a share of it. */
  readonly wall: number;
}

function row(
  [from, to]: readonly [number, number],
  [us, metric]: readonly [number, number],
  wall: number,
  ends: "both" | "first" | "last",
): Row {
  return { from, to, hasFrom: ends !== "last", hasTo: ends !== "first", od: { US: us, SI: metric }, wall };
}

/**
 * [astm-a270-2002], Table 2: the diameters. Its gaps between 1 and 1 1/2 in and between 2 and 2 1/2 in are the
 * standard's own. The wall, 12.5 %, is from memory.
 */
const A270 = [
  row([0, 1], [0.005, 0.13], 0.125, "last"),
  row([1.5, 2], [0.008, 0.2], 0.125, "both"),
  row([2.5, 3], [0.01, 0.25], 0.125, "both"),
  row([3, 4], [0.015, 0.38], 0.125, "first"),
  row([4, 5.5], [0.015, 0.38], 0.125, "first"),
  row([5.5, 8], [0.03, 0.76], 0.125, "first"),
  row([8, 12], [0.05, 1.27], 0.125, "both"),
];

/** [astm-a269]. Which row has a diameter between two of them is from memory. */
const A269 = [
  row([0, 0.5], [0.005, 0.13], 0.15, "first"),
  row([0.5, 1.5], [0.005, 0.13], 0.1, "first"),
  row([1.5, 3.5], [0.01, 0.25], 0.1, "first"),
  row([3.5, 5.5], [0.015, 0.38], 0.1, "first"),
  row([5.5, 8], [0.03, 0.76], 0.1, "both"),
];

/** [astm-a1016] for the diameter, [astm-a249] for the wall. Which row has a diameter between two is from memory. */
const A1016 = [
  row([0, 1], [0.004, 0.1], 0.1, "first"),
  row([1, 1.5], [0.006, 0.15], 0.1, "both"),
  row([1.5, 2], [0.008, 0.2], 0.1, "first"),
  row([2, 2.5], [0.01, 0.25], 0.1, "first"),
  row([2.5, 3], [0.012, 0.3], 0.1, "first"),
  row([3, 4], [0.015, 0.38], 0.1, "both"),
];

const ROWS: Readonly<Record<TubeStandard, readonly Row[]>> = { A270, A269, A1016 };

/** Outside diameter over and under, wall over and under, m, as the standard prints them in the system of the call. */
export function tubeTolerance(od: Length, wall: Length, standard: TubeStandard, units: Units): TubeTolerance {
  tube(od, wall);
  const found = ROWS[standard].find((one) => isIn(od, one));
  if (found === undefined) {
    throw new Refusal(
      "od",
      amount(od, LENGTH),
      [`${standard} has no row for this diameter here; use the size of the order, or see the standard`],
      "unanswerable",
    );
  }
  const ofOd = toBase(found.od[units], LENGTH, units);
  const ofWall = si(found.wall * wall, LENGTH);
  return { odOver: ofOd, odUnder: ofOd, wallOver: ofWall, wallUnder: ofWall };
}

function isIn(od: Length, { from, to, hasFrom, hasTo }: Row): boolean {
  const least = toBase(from, LENGTH, "US");
  const most = toBase(to, LENGTH, "US");
  const isFrom = hasFrom ? !isBelow(od, least) : isAbove(od, least);
  return isFrom && (hasTo ? !isAbove(od, most) : isBelow(od, most));
}
