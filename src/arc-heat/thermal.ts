/**
 * What the metals of metal/material.ts take to melt: numbers between 20 °C and the liquidus, a source beside each.
 * `published` was compared with a copy; a curve carried beyond its source's range is an estimate.
 */

import type { Designation } from "../metal/material";
import { MATERIALS } from "../metal/material";
import type { Sourced } from "../sourced";
import { estimate, memory, published } from "../sourced";
import type { MetalNumbers } from "./effective";

export interface Thermal {
  /** Mean of k(T) from 20 °C to the liquidus, W/(m·K). */
  readonly meanConductivity: Sourced;
  /** k of the solid at the liquidus, W/(m·K). */
  readonly liquidusConductivity: Sourced;
  /** Heat from 20 °C to the liquidus without the latent heat, J/kg. */
  readonly sensibleHeat: Sourced;
  /** J/kg */
  readonly latentHeat: Sourced;
  /** kg/m³ at room temperature. */
  readonly density: Sourced;
}

/** The table below keeps kJ/kg. */
const KJ = 1e3;

const KIM = "Kim, ANL-75-55 (1975)";
const EN_STAINLESS = "EN 1993-1-2 Annex C, stainless steels, carried from 1200 to 1440 °C";
const EN_CARBON = "EN 1993-1-2, 3.4.1, compared up to 1200 °C, its last value kept to 1510 °C";
const INCROPERA = "Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, Table A.1";
const MILLS_TI64 = "Mills 2002 recommended values for Ti-6Al-4V, trapezoids from 20 to 1650 °C";
const NICKEL_TABLE = "producer table from 21 to 982 °C, its last slope carried to 1350 °C";
const LINE = "straight line through the values of metal/material.ts at 25 and 927 °C";

export const THERMAL = {
  "304L": {
    meanConductivity: memory(24.47, `${KIM}: 8.116 + 0.01618 T`),
    liquidusConductivity: memory(36.08, `${KIM}: 8.116 + 0.01618 T`),
    sensibleHeat: memory(869.1 * KJ, `${KIM}: cp 469.4 + 0.1348 T`),
    latentHeat: memory(265 * KJ, KIM),
    density: memory(7894, `${KIM} at 298 K`),
  },
  "316L": {
    meanConductivity: memory(25.09, `${KIM}: 9.248 + 0.01571 T`),
    liquidusConductivity: memory(36.32, `${KIM}: 9.248 + 0.01571 T`),
    sensibleHeat: memory(849.4 * KJ, `${KIM}: cp 459.9 + 0.1330 T`),
    latentHeat: published(268 * KJ, `${KIM}, as a public table of its values prints it`),
    density: published(7955, `${KIM} at 298 K, as a public table of its values prints it`),
  },
  "2205": {
    meanConductivity: estimate(23.87, `${EN_STAINLESS}: 14.6 + 0.0127 θ`),
    liquidusConductivity: estimate(32.89, `${EN_STAINLESS}: 14.6 + 0.0127 θ`),
    sensibleHeat: estimate(783.7 * KJ, `${EN_STAINLESS}: cp 450 + 0.28 θ − 2.91e-4 θ² + 1.34e-7 θ³`),
    latentHeat: estimate(265 * KJ, "that of 304L"),
    density: published(7800, "EN 10088-1, as a tube supplier's table prints it"),
  },
  CS: {
    meanConductivity: estimate(34.13, EN_CARBON),
    liquidusConductivity: estimate(27.3, EN_CARBON),
    sensibleHeat: estimate(1028.6 * KJ, `${EN_CARBON}; the peak of cp at 735 °C is in it`),
    latentHeat: memory(247 * KJ, "iron, 13.81 kJ/mol"),
    density: memory(7850, "EN 1991-1-1, structural steel"),
  },
  "TI-2": {
    meanConductivity: estimate(
      21.8,
      `grade 2 cold, then ${INCROPERA}, titanium, its slope carried to 1943 K`,
    ),
    liquidusConductivity: estimate(28.2, `${INCROPERA}, titanium: slope of 1200 to 1500 K carried to 1943 K`),
    sensibleHeat: estimate(1168 * KJ, `${INCROPERA}, cp carried to 1943 K, with 4.17 kJ/mol at 1155 K`),
    latentHeat: memory(295.6 * KJ, "titanium, 14.15 kJ/mol (NIST-JANAF)"),
    density: memory(4510, "producer sheets"),
  },
  "TI-6-4": {
    meanConductivity: memory(17.57, MILLS_TI64),
    liquidusConductivity: memory(28.4, MILLS_TI64),
    sensibleHeat: memory(1141 * KJ, `${MILLS_TI64}, with 48 kJ/kg at 995 °C`),
    latentHeat: published(295 * KJ, "Brooks, Robinson, Chapman & Richardson, HTHP 35/36: 295 ± 15 J/g"),
    density: memory(4420, "Mills 2002 recommended values for Ti-6Al-4V at 25 °C"),
  },
  "625": {
    meanConductivity: estimate(20.3, NICKEL_TABLE),
    liquidusConductivity: estimate(32.5, NICKEL_TABLE),
    sensibleHeat: estimate(761 * KJ, "cp 338.39 + 0.2441 T, Capriccioli & Frosi 2009, carried to 1623 K"),
    latentHeat: estimate(227 * KJ, "value common in published weld simulations"),
    density: published(8440, "producer sheet: 8.44 g/cm³"),
  },
  "C-276": {
    meanConductivity: estimate(22.6, LINE),
    liquidusConductivity: estimate(35.1, LINE),
    sensibleHeat: estimate(730 * KJ, "cp 427 J/kgK at 25 °C and 580 at 927 °C, straight line"),
    latentHeat: estimate(230 * KJ, "that of alloy 625"),
    density: memory(8890, "producer sheet"),
  },
  C12200: {
    meanConductivity: memory(339, "Copper Development Association: room value, kept; pure copper is alike"),
    liquidusConductivity: estimate(
      330,
      `${INCROPERA}, pure copper, carried from 1200 K to its melting point`,
    ),
    sensibleHeat: estimate(466 * KJ, `${INCROPERA}: cp of pure copper, carried from 1200 to 1356 K`),
    latentHeat: memory(205 * KJ, "pure copper"),
    density: memory(8940, "Copper Development Association alloy data"),
  },
  C70600: {
    meanConductivity: estimate(88.5, LINE),
    liquidusConductivity: estimate(132, LINE),
    sensibleHeat: estimate(506 * KJ, "cp 377 J/kgK at 25 °C and 491 at 927 °C, straight line"),
    latentHeat: estimate(216 * KJ, "copper and nickel by their shares: 206.8 and 298 kJ/kg"),
    density: memory(8940, "Copper Development Association alloy data"),
  },
} as const satisfies Record<Designation, Thermal>;

/** The numbers of a metal for the rule of effective.ts, base SI. */
export function metalNumbers(designation: Designation): MetalNumbers {
  const thermal = THERMAL[designation];
  const material = MATERIALS[designation];
  return {
    meanConductivity: thermal.meanConductivity.value,
    liquidusConductivity: thermal.liquidusConductivity.value,
    coldConductivity: material.coldConductivity.value,
    coldHeatCapacity: material.coldHeatCapacity.value,
    sensibleHeat: thermal.sensibleHeat.value,
    latentHeat: thermal.latentHeat.value,
    density: thermal.density.value,
    liquidus: material.liquidus.value,
  };
}
