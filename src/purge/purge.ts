/**
 * Purging the bore: oxygen falls as gas sweeps the volume. `cells` mixed cells in series stand between two limits:
 * 1 is a fully mixed volume (the safe default), many come near to plain displacement.
 */

import { above0, atLeast0, isAbove, isBelow, wholeFrom1 } from "../limits";
import { logPoissonTail, poissonTail } from "../numerics/poisson-tail";
import type { AnyFlow, Count, Flow, Length, Oxygen, Time, Volume } from "../quantity";
import { ANY_FLOW, COUNT, FLOW, LENGTH, OXYGEN, si, TIME, VOLUME } from "../quantity";
import { amount, Refusal, rule } from "../refusal";
import { rootBetween } from "../numerics/root";

/** Oxygen in dry air by volume, ppm. */
export const AIR_PPM = si(209_500, OXYGEN);
/** A common target for stainless tube, ppm. */
export const COMMON_TARGET_PPM = si(50, OXYGEN);
export const MOST_CELLS = si(1000, COUNT);

/** Gas volume of the purged length of bore, m³: π/4·d²·L. Geometry. */
export function purgeVolume(bore: Length, length: Length): Volume {
  return si((Math.PI / 4) * above0("bore", bore, LENGTH) ** 2 * above0("length", length, LENGTH), VOLUME);
}

/** Oxygen after n volume changes, ppm: Cs + (C₀ − Cs)·e^{−cells·n}·Σ_{k<cells} (cells·n)^k/k!. */
export function oxygenAfter(changes: Count, supplyPpm: Oxygen, cells: Count): Oxygen {
  checkSupply(supplyPpm);
  const whole = wholeFrom1("cells", cells, MOST_CELLS);
  return si(supplyPpm + (AIR_PPM - supplyPpm) * poissonTail(whole, whole * changes), OXYGEN);
}

/** Volume changes that bring air down to `ppm`: the inverse of `oxygenAfter`. Out of reach at or below the supply. */
export function purgeChanges(ppm: Oxygen, supplyPpm: Oxygen, cells: Count): Count {
  checkSupply(supplyPpm);
  const whole = wholeFrom1("cells", cells, MOST_CELLS);
  atLeast0("ppm", ppm, OXYGEN);
  if (!isBelow(ppm, AIR_PPM)) {
    throw new Refusal(
      "ppm",
      amount(ppm, OXYGEN),
      rule`must be less than the oxygen in air, ${amount(AIR_PPM, OXYGEN)}`,
    );
  }
  if (!isAbove(ppm, supplyPpm)) {
    throw new Refusal(
      "ppm",
      amount(ppm, OXYGEN),
      rule`cannot be reached; must be above supplyPpm, ${amount(supplyPpm, OXYGEN)}`,
      "unanswerable",
    );
  }
  const left = (ppm - supplyPpm) / (AIR_PPM - supplyPpm);
  return si(changesTo(left, whole), COUNT);
}

/**
 * Solves poissonTail(cells, cells·n) = left for n, in logarithms of both. One cell needs −ln left; what mixes in more
 * cells needs no more than one change beyond that, and no less than its share by cells.
 */
function changesTo(left: number, cells: number): number {
  const goal = Math.log(left);
  const miss = (logN: number): number => logPoissonTail(cells, cells * Math.exp(logN)) - goal;
  return Math.exp(rootBetween(miss, Math.log(-goal / (2 * cells)), Math.log(1 - goal)));
}

/** Seconds that so many volume changes take, whatever oxygen they reach: changes × volume / flow. */
export function sweepTime(bore: Length, length: Length, flow: Flow, changes: Count): Time {
  return si(
    (above0("changes", changes, COUNT) * purgeVolume(bore, length)) / above0("flow", flow, FLOW),
    TIME,
  );
}

/** Seconds to bring the bore down to `ppm`: changes × volume / flow. */
export function purgeTime(
  bore: Length,
  length: Length,
  flow: Flow,
  ppm: Oxygen,
  supplyPpm: Oxygen,
  cells: Count,
): Time {
  return sweepTime(bore, length, flow, purgeChanges(ppm, supplyPpm, cells));
}

/** Flow that brings the bore down to `ppm` in a given time, m³/s: changes × volume / seconds. */
export function purgeFlow(
  bore: Length,
  length: Length,
  seconds: Time,
  ppm: Oxygen,
  supplyPpm: Oxygen,
  cells: Count,
): Flow {
  return si(
    (purgeChanges(ppm, supplyPpm, cells) * purgeVolume(bore, length)) / above0("seconds", seconds, TIME),
    FLOW,
  );
}

/** Oxygen in the bore after a time of purging, ppm. */
export function purgeOxygen(
  bore: Length,
  length: Length,
  flow: Flow,
  seconds: Time,
  supplyPpm: Oxygen,
  cells: Count,
): Oxygen {
  const gas = above0("flow", flow, FLOW) * atLeast0("seconds", seconds, TIME);
  return oxygenAfter(si(gas / purgeVolume(bore, length), COUNT), supplyPpm, cells);
}

/** Oxygen that an air leak leaves for good, ppm: air·leak/(flow + leak), both flows in the same unit. */
export function leakOxygen(flow: AnyFlow, leak: AnyFlow): Oxygen {
  return si((AIR_PPM * atLeast0("leak", leak, ANY_FLOW)) / (above0("flow", flow, ANY_FLOW) + leak), OXYGEN);
}

function checkSupply(supplyPpm: Oxygen): void {
  atLeast0("supplyPpm", supplyPpm, OXYGEN);
  if (isBelow(supplyPpm, AIR_PPM)) return;
  throw new Refusal(
    "supplyPpm",
    amount(supplyPpm, OXYGEN),
    rule`must be less than the oxygen in air, ${amount(AIR_PPM, OXYGEN)}`,
  );
}
