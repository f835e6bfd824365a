/** The cycle plan worked out by hand: a 1 in × 0.065 in tube of 316L, or 25.4 × 1.65 mm; times in s, sizes in mm. */

import type { Units } from "../../src/quantity";
import { byName, number } from "../bead";

/** Bead 1 mm + 2 walls, v = 1.6·α/b, its dwell by the formula alone, a downslope of three beads, 20° of overlap. */
export function weldOf(wall: number): {
  readonly dwell: number;
  readonly turn: number;
  readonly downslope: number;
  readonly arc: number;
} {
  const bead = 1 + 2 * wall;
  const speed = (1.6 * 5.848) / bead;
  const turn = (Math.PI * 25.4) / speed;
  const dwell = number("START_DWELL", ...byName("START_DWELL", { wall, speed: 60 * speed, units: "SI" }));
  const downslope = (3 * bead) / speed;
  return { dwell, turn, downslope, arc: dwell + turn * (380 / 360) + downslope };
}

export const WALLS: Readonly<Record<Units, number>> = { US: 1.651, SI: 1.65 };
/** Bore purge, prepurge and postpurge of the example. */
export const GAS = [120, 30, 15] as const;
export const [LOAD, WALK, AVAILABILITY] = [180, 15, 0.85];
/** Eight hours less 6 electrode changes of 5 min and 2 coupons of 10 min. */
export const NET_HOURS = 8 - (6 * 5 + 2 * 10) / 60;

export function machineOf(units: Units): number {
  return weldOf(WALLS[units]).arc + GAS[0] + GAS[1] + GAS[2];
}

export interface Shop {
  readonly load: number;
  readonly machine: number;
  readonly hours?: number;
}

/** One operator and machines in step (Niebel; Groover): the slower of the head's cycle and the operator's round. */
export function steadyOfOne(heads: number, { load, machine, hours = NET_HOURS }: Shop): number {
  if (heads === 0) return 0;
  // One head has no next one to walk to.
  const round = Math.max(load + machine, heads === 1 ? 0 : heads * (load + WALK));
  return (heads * 3600 * hours * AVAILABILITY) / round;
}

/** Several operators who share: the slower of the heads' cycles and all operators' rounds. */
export function steadyShared(
  heads: number,
  operators: number,
  { load, machine, hours = NET_HOURS }: Shop,
): number {
  const rounds = heads <= operators ? Infinity : operators / (load + WALK);
  return Math.min(heads / (load + machine), rounds) * 3600 * hours * AVAILABILITY;
}

/** Finite-source queue M/M/c//N, its states added up one by one: how many operators work on average. */
export function randomShared(
  heads: number,
  operators: number,
  { load, machine, hours = NET_HOURS }: Shop,
): number {
  // Where each head has an operator nobody walks.
  const service = heads <= operators ? load : load + WALK;
  const r = service / machine;
  let [weight, total, busy] = [1, 1, 0];
  for (let n = 1; n <= heads; n += 1) {
    weight *= ((heads - n + 1) * r) / Math.min(n, operators);
    total += weight;
    busy += weight * Math.min(n, operators);
  }
  return ((busy / total) * 3600 * hours * AVAILABILITY) / service;
}

/** Heads dealt out evenly to operators who keep to their own. */
export function fixed(heads: number, operators: number, ofOne: (heads: number) => number): number {
  const [each, more] = [Math.floor(heads / operators), heads % operators];
  const less = operators - more;
  return more * ofOne(each + 1) + (each === 0 ? 0 : less * ofOne(each));
}

/** Calendar days of so many working days from a Monday on. */
export function daysOf(workingDays: number, daysAWeek: number): number {
  return Math.floor((workingDays - 1) / daysAWeek) * 7 + ((workingDays - 1) % daysAWeek) + 1;
}
