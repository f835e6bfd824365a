/** Oxygen in a room into which argon flows. */

import { above0, atLeast0 } from "../limits";
import type { AirChanges, Duration, Flow, Percent, Volume } from "../quantity";
import { AIR_CHANGES, DURATION, FLOW, PERCENT, si, VOLUME } from "../quantity";
import { Refusal } from "../refusal";

/** Oxygen of dry air by volume, percent. */
const AIR_OXYGEN = si(20.95, PERCENT);

/**
 * Oxygen of the room's air, percent, after a time, or after any time where none is given. Fresh air Q is blown in beside
 * argon R, both mix at once with all of the room and as much leaves: V·dC/dt = 20.95·Q − (Q + R)·C. Argon is heavier
 * than air and does not mix so: near the floor, in pits and in vessels there is less oxygen than this.
 */
export function roomOxygen(
  volume: Volume,
  flow: Flow,
  airChanges: AirChanges,
  hours: Duration | undefined,
): Percent {
  const argon = atLeast0("flow", flow, FLOW) / above0("volume", volume, VOLUME);
  const air = atLeast0("airChanges", airChanges, AIR_CHANGES);
  if (hours === undefined && air === 0) {
    throw new Refusal("hours", "blank", [
      "needs a number (h) where airChanges is 0: without fresh air the oxygen never stops falling",
    ]);
  }
  const passed = hours === undefined ? Infinity : atLeast0("hours", hours, DURATION);
  if (argon === 0 || passed === 0) return AIR_OXYGEN;
  const inEnd = (AIR_OXYGEN * air) / (air + argon);
  return si(inEnd + (AIR_OXYGEN - inEnd) * Math.exp(-(air + argon) * passed), PERCENT);
}
