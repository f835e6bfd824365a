/** How the purge gas runs through the bore: smoothly or in eddies. */

import type { Gas } from "../gas/gas";
import { above0 } from "../limits";
import type { Count, Flow, Length } from "../quantity";
import { COUNT, FLOW, LENGTH, si } from "../quantity";

/** Maximum Reynolds number at which flow in a pipe is taken for laminar; eddies die out below about 2300. */
export const LAMINAR_LIMIT = si(2000, COUNT);

/** Reynolds number of a gas in a round bore: 4ρQ/(πμd), gas at 20 °C and 1 atm. */
export function reynolds(bore: Length, flow: Flow, gas: Gas): Count {
  const momentum = 4 * gas.density.value * above0("flow", flow, FLOW);
  return si(momentum / (Math.PI * gas.viscosity.value * above0("bore", bore, LENGTH)), COUNT);
}

/** Maximum flow, m³/s, that stays laminar: the flow at Re = 2000. */
export function laminarFlow(bore: Length, gas: Gas): Flow {
  const { density, viscosity } = gas;
  return si(
    (LAMINAR_LIMIT * Math.PI * viscosity.value * above0("bore", bore, LENGTH)) / (4 * density.value),
    FLOW,
  );
}
