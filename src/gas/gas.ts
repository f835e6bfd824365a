/** The gases of torch and bore at 20 °C and 1 atm, a source beside each number. */

import type { Sourced } from "../sourced";
import { memory, published } from "../sourced";

export interface Gas {
  /** kg/m³. */
  readonly density: Sourced;
  /** Dynamic viscosity, Pa·s. */
  readonly viscosity: Sourced;
}

/** The sources give viscosity in µPa·s. */
const MICRO = 1e-6;
const NIST_DENSITY = "NIST reference equation of state";
const NIST_VISCOSITY = "Lemmon & Jacobsen 2004 transport equation, as NIST uses it";

export const GASES = {
  AR: {
    density: published(1.66182, `${NIST_DENSITY} (Tegeler, Span & Wagner 1999)`),
    viscosity: published(22.3065 * MICRO, NIST_VISCOSITY),
  },
  N2: {
    density: published(1.16483, NIST_DENSITY),
    viscosity: memory(17.57 * MICRO, NIST_VISCOSITY),
  },
  HE: {
    density: published(0.16631, NIST_DENSITY),
    viscosity: memory(19.6 * MICRO, "handbook value"),
  },
  AIR: {
    density: published(1.20458, NIST_DENSITY),
    viscosity: published(18.2057 * MICRO, NIST_VISCOSITY),
  },
} as const satisfies Record<string, Gas>;

export type GasName = keyof typeof GASES;

export const GAS_NAMES = ["AR", "N2", "HE", "AIR"] as const satisfies readonly GasName[];

/** The gas of a formula whose gas argument is omitted. */
export const DEFAULT_GAS: GasName = "AR";
