/** The gases of torch and bore at 20 °C and 1 atm, a source beside each number. */

import type { Sourced } from "../sourced";
import { published } from "../sourced";

export interface Gas {
  /** kg/m³. */
  readonly density: Sourced;
  /** Dynamic viscosity, Pa·s. */
  readonly viscosity: Sourced;
}

/** The sources give viscosity in µPa·s. */
const MICRO = 1e-6;
const AT_20_C = "at 20 °C and 1 atm";

export const GASES = {
  AR: {
    density: published(1.66182, "tegeler-1999", `${AT_20_C}, as [coolprop-8.0.0] evaluates it`),
    viscosity: published(
      22.3065 * MICRO,
      "lemmon-jacobsen-2004",
      `${AT_20_C}, as [coolprop-8.0.0] evaluates it`,
    ),
  },
  N2: {
    density: published(1.16483, "coolprop-8.0.0", `its equation of nitrogen ${AT_20_C}`),
    viscosity: published(
      17.57 * MICRO,
      "lemmon-jacobsen-2004",
      `${AT_20_C}, as [coolprop-8.0.0] evaluates it`,
    ),
  },
  HE: {
    density: published(0.16631, "coolprop-8.0.0", `its equation of helium ${AT_20_C}`),
    viscosity: published(19.6 * MICRO, "coolprop-8.0.0", `its equation of helium ${AT_20_C}`),
  },
  AIR: {
    density: published(1.20458, "coolprop-8.0.0", `its equation of air ${AT_20_C}`),
    viscosity: published(
      18.2057 * MICRO,
      "lemmon-jacobsen-2004",
      `${AT_20_C}, as [coolprop-8.0.0] evaluates it`,
    ),
  },
} as const satisfies Record<string, Gas>;

export type GasName = keyof typeof GASES;

export const GAS_NAMES = ["AR", "N2", "HE", "AIR"] as const satisfies readonly GasName[];

/** The gas of a formula whose gas argument is omitted. */
export const DEFAULT_GAS: GasName = "AR";
