/** Help tells both systems of units, "in | mm"; beside a sheet that has one of them, that one is enough. */

import type { Quantity, Units } from "../../src/quantity";
import {
  BORE_PRESSURE,
  CYLINDER_PRESSURE,
  FLOW,
  HEAT_INPUT,
  LENGTH,
  SPEED,
  TEMPERATURE,
  VOLUME,
} from "../../src/quantity";

const QUANTITIES: readonly Quantity[] = [
  LENGTH,
  SPEED,
  FLOW,
  VOLUME,
  BORE_PRESSURE,
  CYLINDER_PRESSURE,
  HEAT_INPUT,
  TEMPERATURE,
];
/** What a gas supplier's unit of volume means in each system. */
const SUPPLIERS = ["70 °F, 1 atm", "15 °C, 1 bar"] as const;

/** A unit, or a number with its unit, in one system and then in the other. */
const PAIRS = [
  ...QUANTITIES.map(({ US, SI }) => [US.unit, SI.unit] as const).sort(([a], [b]) => b.length - a.length),
  SUPPLIERS,
].map(([us, other]) => new RegExp(`((?:[\\d.]+ )?${us}) \\| ((?:[\\d.]+ )?${other})(?![\\w/³])`, "g"));

export function inSystem(text: string, units: Units): string {
  return PAIRS.reduce((told, pair) => told.replace(pair, units === "US" ? "$1" : "$2"), text);
}
