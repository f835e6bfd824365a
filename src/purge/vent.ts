/**
 * The vent of a purged bore: a round sharp-edged hole that the purge flow leaves through, which sets the pressure.
 * Gas at 20 °C and 1 atm, taken as incompressible, out of a bore far wider than the hole.
 */

import type { Gas } from "../gas/gas";
import { above0, isAbove, shareAbove0 } from "../limits";
import type { BorePressure, Flow, Length, Share } from "../quantity";
import { BORE_PRESSURE, FLOW, LENGTH, SHARE, si } from "../quantity";
import { amount, Refusal, rule } from "../refusal";

/** Discharge coefficient of a sharp-edged round hole at high Reynolds numbers; textbooks agree on 0.60 to 0.62. */
export const SHARP_EDGE_DISCHARGE = si(0.61, SHARE);

/**
 * Maximum bore pressure that the vent equation is offered for, Pa. At 2.5 % of an atmosphere the expansion of the
 * gas changes the flow by about half a percent ([iso-5167-2]), less than the discharge coefficient is known to.
 */
export const MAX_VENT_PRESSURE = si(2500, BORE_PRESSURE);

/** Pressure across a hole, Pa, from Q = Cd·A·√(2Δp/ρ). */
export function orificePressure(flow: number, diameter: number, density: number, discharge: number): number {
  const velocity = flow / (discharge * (Math.PI / 4) * diameter ** 2);
  return (density / 2) * velocity ** 2;
}

/** Diameter of a hole, m, from Q = Cd·A·√(2Δp/ρ). */
export function orificeDiameter(flow: number, pressure: number, density: number, discharge: number): number {
  const velocity = Math.sqrt((2 * pressure) / density);
  return Math.sqrt(flow / (discharge * (Math.PI / 4) * velocity));
}

/** Diameter of the vent that holds a bore pressure at a purge flow, m. */
export function ventDiameter(flow: Flow, pressure: BorePressure, gas: Gas, discharge: Share): Length {
  above0("flow", flow, FLOW);
  above0("pressure", pressure, BORE_PRESSURE);
  shareAbove0("discharge", discharge);
  if (!isAbove(pressure, MAX_VENT_PRESSURE)) {
    return si(orificeDiameter(flow, pressure, gas.density.value, discharge), LENGTH);
  }
  throw new Refusal(
    "pressure",
    amount(pressure, BORE_PRESSURE),
    rule`must be at most ${amount(MAX_VENT_PRESSURE, BORE_PRESSURE)}, where the gas can still be treated as incompressible`,
  );
}

/** Bore pressure that a vent holds at a purge flow, Pa above the room. */
export function ventPressure(flow: Flow, diameter: Length, gas: Gas, discharge: Share): BorePressure {
  above0("flow", flow, FLOW);
  above0("ventDiameter", diameter, LENGTH);
  shareAbove0("discharge", discharge);
  const pressure = orificePressure(flow, diameter, gas.density.value, discharge);
  if (!isAbove(pressure, MAX_VENT_PRESSURE)) {
    return si(Math.min(pressure, MAX_VENT_PRESSURE), BORE_PRESSURE);
  }
  const least = orificeDiameter(flow, MAX_VENT_PRESSURE, gas.density.value, discharge);
  throw new Refusal(
    "ventDiameter",
    amount(diameter, LENGTH),
    rule`must be at least ${amount(least, LENGTH)} for this flow; below it the pressure exceeds ${amount(MAX_VENT_PRESSURE, BORE_PRESSURE)}, where the gas can no longer be treated as incompressible`,
  );
}
