/**
 * What the metals of material.ts take to melt: numbers between 20 °C and the liquidus, a source beside each. A curve
 * carried beyond its source's range is an estimate.
 */

import type { Sourced } from "../sourced";
import { estimate, memory, published } from "../sourced";
import type { Designation } from "./material";

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

const K_304L = "8.116 + 0.01618 T";
const K_316L = "9.248 + 0.01571 T";
const ANNEX_C = "[en-1993-1-2] Annex C, stainless steels, carried from 1200 to 1440 °C";
const STEEL = "[en-1993-1-2] 3.4.1, compared up to 1200 °C, its last value kept to 1510 °C";
const TABLE_A1 = "[incropera-dewitt] Table A.1";
const TI64 = "recommended values for Ti-6Al-4V, trapezoids from 20 to 1650 °C";
const NICKEL_TABLE = "[sheet-625] from 21 to 982 °C, its last slope carried to 1350 °C";
const LINE = "straight line through the values at 25 and 927 °C";

export const THERMAL = {
  "304L": {
    meanConductivity: memory(24.47, "kim-1975", `mean of ${K_304L}`),
    liquidusConductivity: memory(36.08, "kim-1975", K_304L),
    sensibleHeat: memory(869.1 * KJ, "kim-1975", "integral of cp 469.4 + 0.1348 T"),
    latentHeat: memory(265 * KJ, "kim-1975", "heat of fusion of 304L"),
    density: memory(7894, "kim-1975", "304L at 298 K"),
  },
  "316L": {
    meanConductivity: memory(25.09, "kim-1975", `mean of ${K_316L}`),
    liquidusConductivity: memory(36.32, "kim-1975", K_316L),
    sensibleHeat: memory(849.4 * KJ, "kim-1975", "integral of cp 459.9 + 0.1330 T"),
    latentHeat: published(
      268 * KJ,
      "kim-1975",
      "heat of fusion of 316, as a public table of its values prints it",
    ),
    density: published(7955, "kim-1975", "316L at 298 K, as a public table of its values prints it"),
  },
  "2205": {
    meanConductivity: estimate(23.87, `${ANNEX_C}: 14.6 + 0.0127 θ`),
    liquidusConductivity: estimate(32.89, `${ANNEX_C}: 14.6 + 0.0127 θ`),
    sensibleHeat: estimate(783.7 * KJ, `${ANNEX_C}: cp 450 + 0.28 θ − 2.91e-4 θ² + 1.34e-7 θ³`),
    latentHeat: estimate(265 * KJ, "that of 304L"),
    density: published(7800, "sheet-2205", "7.8 g/cm³, as in EN 10088-1"),
  },
  CS: {
    meanConductivity: estimate(34.13, STEEL),
    liquidusConductivity: estimate(27.3, STEEL),
    sensibleHeat: estimate(1028.6 * KJ, `${STEEL}; the peak of cp at 735 °C is in it`),
    latentHeat: memory(247 * KJ, "nist-janaf", "iron, 13.81 kJ/mol"),
    density: memory(7850, "en-1993-1-2", "3.2.2, unit mass"),
  },
  "TI-2": {
    meanConductivity: estimate(21.8, `grade 2 cold, then ${TABLE_A1}, titanium, its slope carried to 1943 K`),
    liquidusConductivity: estimate(28.2, `${TABLE_A1}, titanium: slope of 1200 to 1500 K carried to 1943 K`),
    sensibleHeat: estimate(1168 * KJ, `${TABLE_A1}, cp carried to 1943 K, with 4.17 kJ/mol at 1155 K`),
    latentHeat: memory(295.6 * KJ, "nist-janaf", "titanium, 14.15 kJ/mol"),
    density: memory(4510, "sheet-titanium", "4.51 g/cm³"),
  },
  "TI-6-4": {
    meanConductivity: memory(17.57, "mills-2002", TI64),
    liquidusConductivity: memory(28.4, "mills-2002", "recommended values for Ti-6Al-4V, solid at 1650 °C"),
    sensibleHeat: memory(1141 * KJ, "mills-2002", `${TI64}, with 48 kJ/kg at 995 °C`),
    latentHeat: published(295 * KJ, "brooks-2003", "295 ± 15 J/g"),
    density: memory(4420, "mills-2002", "recommended values for Ti-6Al-4V at 25 °C"),
  },
  "625": {
    meanConductivity: estimate(20.3, NICKEL_TABLE),
    liquidusConductivity: estimate(32.5, NICKEL_TABLE),
    sensibleHeat: estimate(761 * KJ, "cp 338.39 + 0.2441 T ([capriccioli-frosi-2009]), carried to 1623 K"),
    latentHeat: estimate(227 * KJ, "value common in published weld simulations"),
    density: published(8440, "sheet-625", "8.44 g/cm³"),
  },
  "C-276": {
    meanConductivity: estimate(22.6, LINE),
    liquidusConductivity: estimate(35.1, LINE),
    sensibleHeat: estimate(730 * KJ, "cp 427 J/kgK at 25 °C and 580 at 927 °C, straight line"),
    latentHeat: estimate(230 * KJ, "that of alloy 625"),
    density: memory(8890, "sheet-c-276", "8.89 g/cm³"),
  },
  C12200: {
    meanConductivity: memory(339, "cda-copper", "room value, kept; pure copper is alike"),
    liquidusConductivity: estimate(330, `${TABLE_A1}, pure copper, carried from 1200 K to its melting point`),
    sensibleHeat: estimate(466 * KJ, `${TABLE_A1}: cp of pure copper, carried from 1200 to 1356 K`),
    latentHeat: memory(205 * KJ, "cda-copper", "heat of fusion of pure copper"),
    density: memory(8940, "cda-copper", "8.94 g/cm³"),
  },
  C70600: {
    meanConductivity: estimate(88.5, LINE),
    liquidusConductivity: estimate(132, LINE),
    sensibleHeat: estimate(506 * KJ, "cp 377 J/kgK at 25 °C and 491 at 927 °C, straight line"),
    latentHeat: estimate(216 * KJ, "copper and nickel by their shares: 206.8 and 298 kJ/kg"),
    density: memory(8940, "sheet-c70600", "8.94 g/cm³"),
  },
} as const satisfies Record<Designation, Thermal>;
