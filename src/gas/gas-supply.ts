/** Gas from the bottle to the joint: what a joint takes, what a cylinder gives, what a float meter means. */

import { argonDensity } from "./argon";
import type { Gas } from "./gas";
import { above0, atLeast0, between, isAbove, shareAbove0 } from "../limits";
import type {
  AnyFlow,
  CylinderPressure,
  Flow,
  LiquidVolume,
  Share,
  Temperature,
  Time,
  Units,
  Volume,
} from "../quantity";
import {
  ANY_FLOW,
  CYLINDER_PRESSURE,
  FLOW,
  LIQUID_VOLUME,
  TEMPERATURE,
  TIME,
  VOLUME,
  si,
  toBase,
} from "../quantity";
import { amount, Refusal, rule } from "../refusal";

/** Gas of one joint, m³: torch and purge, each flow for its time. */
export function jointGas(torchFlow: Flow, torchSeconds: Time, purgeFlow: Flow, purgeSeconds: Time): Volume {
  const torch = atLeast0("torchFlow", torchFlow, FLOW) * atLeast0("torchSeconds", torchSeconds, TIME);
  return si(
    torch + atLeast0("purgeFlow", purgeFlow, FLOW) * atLeast0("purgeSeconds", purgeSeconds, TIME),
    VOLUME,
  );
}

/** The atmosphere that a gauge reads from, Pa. */
const ATMOSPHERE = 101_325;
export const MAX_CYLINDER_PRESSURE = si(35e6, CYLINDER_PRESSURE);
/** −30 to 60 °C: where cylinders stand, with room on both sides. */
export const TEMPERATURES = [si(243.15, TEMPERATURE), si(333.15, TEMPERATURE)] as const;

interface State {
  readonly temperature: Temperature;
  /** Absolute, Pa. */
  readonly pressure: number;
}

/** What a gas supplier's cubic foot or liter means: 70 °F and 1 atm (14.696 psi); 15 °C and 1 bar. */
export const STANDARD_STATE: Record<Units, State> = {
  US: { temperature: si(((70 + 459.67) * 5) / 9, TEMPERATURE), pressure: ATMOSPHERE },
  SI: { temperature: si(288.15, TEMPERATURE), pressure: 100_000 },
};

/**
 * Argon that a cylinder gives while its gauge falls from `pressure` to `residual`, m³ at the standard state: mass
 * of the real gas at either pressure and the same temperature, over its density at that state.
 */
export function cylinderArgon(
  waterVolume: Volume,
  pressure: CylinderPressure,
  residual: CylinderPressure,
  temperature: Temperature,
  standard: State,
): Volume {
  above0("waterVolume", waterVolume, VOLUME);
  between("pressure", pressure, CYLINDER_PRESSURE, 0, MAX_CYLINDER_PRESSURE);
  atLeast0("residual", residual, CYLINDER_PRESSURE);
  between("temperature", temperature, TEMPERATURE, ...TEMPERATURES);
  if (isAbove(residual, pressure)) {
    throw new Refusal(
      "residual",
      amount(residual, CYLINDER_PRESSURE),
      rule`must be at most pressure, ${amount(pressure, CYLINDER_PRESSURE)}`,
    );
  }
  const full = argonDensity(pressure + ATMOSPHERE, temperature);
  const empty = argonDensity(Math.min(residual, pressure) + ATMOSPHERE, temperature);
  return si((waterVolume * (full - empty)) / argonDensity(standard.pressure, standard.temperature), VOLUME);
}

/** [ifc-2018]: 29.71 ft³ of gas at 70 °F and 1 atm from a liter of liquid argon; a volume over a volume. */
const GAS_OF_LIQUID = toBase(29.71, VOLUME, "US") / toBase(1, LIQUID_VOLUME, "US");

/** Argon that a liquid container gives, m³ at the standard state: its usable liquid, boiled off. */
export function liquidArgon(liquid: LiquidVolume, usable: Share, standard: State): Volume {
  const { temperature, pressure } = STANDARD_STATE.US;
  const listed = above0("liquid", liquid, LIQUID_VOLUME) * shareAbove0("usable", usable) * GAS_OF_LIQUID;
  const mass = listed * argonDensity(pressure, temperature);
  return si(mass / argonDensity(standard.pressure, standard.temperature), VOLUME);
}

/**
 * True flow through a float meter whose scale was made for another gas: reading × √(ρ of the scale's gas/ρ of the
 * gas). Float height and drag the same, both gases at the same low pressure.
 */
export function meterFlow(reading: AnyFlow, gas: Gas, scaleGas: Gas): AnyFlow {
  return si(
    atLeast0("reading", reading, ANY_FLOW) * Math.sqrt(scaleGas.density.value / gas.density.value),
    ANY_FLOW,
  );
}
