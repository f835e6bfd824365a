/** What the lines of a list take of time and gas, added up by size and metal. */

import { designationOf } from "../metal/material";
import type { Count, Duration, Volume } from "../quantity";
import { COUNT, DURATION, si, VOLUME } from "../quantity";
import type { Counted, Line } from "./takeoff";

/** Joints, s and m³ of all lines of one tube. */
export interface SizeSum {
  /** The tube, as its first line has it; undefined for all tubes beyond those that have a row. */
  readonly tube: Pick<Line, "od" | "wall" | "material"> | undefined;
  readonly joints: Count;
  readonly seconds: Duration;
  readonly arcGas: Volume;
  readonly purgeGas: Volume;
}

/** Digits in which 38.1 mm and 1-1/2 in are one size. */
const DIGITS = 9;

/** One sum a tube in the order of the list; `most` of them at most, of which the last then holds all other tubes. */
export function sumsBySize(lines: readonly Counted[], most = Infinity): SizeSum[] {
  const sums = new Map<string, SizeSum>();
  for (const line of lines) {
    const { od, wall, material } = line;
    const key = [od.toPrecision(DIGITS), wall.toPrecision(DIGITS), designationOf(material)].join(" ");
    const { tube, ...before } = sums.get(key) ?? { tube: { od, wall, material }, ...NOTHING };
    sums.set(key, { tube, ...added(before, { ...line, joints: line.quantity }) });
  }
  const all = [...sums.values()];
  if (all.length <= most) return all;
  const others = all.slice(most - 1).reduce(added, NOTHING);
  return [...all.slice(0, most - 1), { tube: undefined, ...others }];
}

type Sums = Omit<SizeSum, "tube">;
const NOTHING: Sums = {
  joints: si(0, COUNT),
  seconds: si(0, DURATION),
  arcGas: si(0, VOLUME),
  purgeGas: si(0, VOLUME),
};

function added(a: Sums, b: Sums): Sums {
  return {
    joints: si(a.joints + b.joints, COUNT),
    seconds: si(a.seconds + b.seconds, DURATION),
    arcGas: si(a.arcGas + b.arcGas, VOLUME),
    purgeGas: si(a.purgeGas + b.purgeGas, VOLUME),
  };
}
