/** How many decimals each quantity is worth in each system, as number formats. */

import type { Quantity, Units } from "../../src/quantity";
import {
  BORE_PRESSURE,
  CURRENT,
  CYLINDER_PRESSURE,
  ENERGY,
  FLOW,
  FREQUENCY,
  HEAT_INPUT,
  LENGTH,
  OXYGEN,
  ROTATION,
  SHARE,
  SPEED,
  TEMPERATURE,
  TIME,
  VOLTAGE,
  VOLUME,
} from "../../src/quantity";

const FORMATS = new Map<Quantity, Record<Units, string>>([
  [LENGTH, { US: "0.0000", SI: "0.000" }],
  [SPEED, { US: "0.00", SI: "0.0" }],
  [FLOW, { US: "0.0", SI: "0.0" }],
  [VOLUME, { US: "0.000", SI: "0.00" }],
  [HEAT_INPUT, { US: "0.00", SI: "0.000" }],
  [BORE_PRESSURE, { US: "0.00", SI: "0.00" }],
  [CYLINDER_PRESSURE, { US: "0", SI: "0.0" }],
  [TEMPERATURE, { US: "0", SI: "0" }],
  [TIME, { US: "0.0", SI: "0.0" }],
  [CURRENT, { US: "0.0", SI: "0.0" }],
  [VOLTAGE, { US: "0.00", SI: "0.00" }],
  [ENERGY, { US: "0", SI: "0" }],
  [ROTATION, { US: "0.000", SI: "0.000" }],
  [FREQUENCY, { US: "0.00", SI: "0.00" }],
  [SHARE, { US: "0.00", SI: "0.00" }],
  [OXYGEN, { US: "0", SI: "0" }],
]);

export function formatOf(quantity: Quantity, units: Units): string {
  return FORMATS.get(quantity)?.[units] ?? "General";
}
