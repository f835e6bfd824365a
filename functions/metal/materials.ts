/** The metals and where each of their numbers comes from. */

import { DESIGNATIONS, MATERIALS as PROPERTIES } from "../../src/metal/material";
import { OTHER_NAMES } from "../../src/metal/names";
import { family, formula } from "../formula";
import type { Column } from "../gives";
import { table, wordsColumn } from "../gives";
import { MILL_RATIO, MILL_SULFUR } from "./mill";
import { sourcesOf } from "./told";

const MATERIALS = formula({
  id: "MATERIALS",
  meaning: "The metals and the property values in use, one row each, with the source of every number",
  args: {},
  gives: table({
    designation: wordsColumn("designation"),
    hotConductivity: property("hot k W/(m·K)"),
    hotDiffusivity: property("hot α mm²/s"),
    liquidus: property("liquidus °C"),
    coldConductivity: property("cold k W/(m·K)"),
    coldHeatCapacity: property("cold ρ·cp MJ/(m³·K)"),
    surfaceTension: property("surface tension N/m"),
    meanConductivity: property("mean k W/(m·K)"),
    liquidusConductivity: property("k at the liquidus W/(m·K)"),
    sensibleHeat: property("heat to the liquidus kJ/kg"),
    latentHeat: property("latent heat kJ/kg"),
    density: property("density kg/m³"),
    names: wordsColumn("other names"),
    sources: wordsColumn("sources"),
  }),
  validity:
    "Hot: near 1200 K (927 °C). Cold: 25 °C. Mean k and heat: from 20 °C to the liquidus, without the latent heat. Density: cold. Surface tension: the liquid near its liquidus. SI units whatever the sheet's system.",
  source:
    "Named in the last column for every number. Other names: ASTM grades, UNS numbers of [sae-hs-1086] and EN numbers of [en-10088-1], from memory; a straight stainless grade stands for its low-carbon twin.",
  unconfirmed:
    '"memory" in the last column marks a number recalled from its source and not compared with a copy, "estimate" one that nothing outside confirms.',
  unchecked: "A table of input data: each number is compared with its own source instead",
  related: ["AMPS_MELT", "AMPS_WALL", "DAM_TEMPERATURE", "PURGE_CEILING"],
  synonyms: [
    "alloys",
    "stainless",
    "thermal conductivity",
    "melting point",
    "material properties",
    "metal",
    "grade",
    "stainless steel",
    "titanium",
    "copper",
    "nickel",
    "duplex",
    "carbon steel",
    "316L",
    "conductivity",
  ],
  example: {
    args: [],
    gives: '"304L", 27.532, 5.8167, 1455, 12.94, 4.0231, 1.565, 24.47, 36.08, 869.1, 265, 7894, …',
  },
  calc: () =>
    DESIGNATIONS.map((designation) => {
      const metal = PROPERTIES[designation];
      return {
        designation,
        hotConductivity: metal.hotConductivity.value,
        hotDiffusivity: metal.hotDiffusivity.value * 1e6,
        liquidus: metal.liquidus.value - 273.15,
        coldConductivity: metal.coldConductivity.value,
        coldHeatCapacity: metal.coldHeatCapacity.value / 1e6,
        surfaceTension: metal.surfaceTension.value,
        meanConductivity: metal.meanConductivity.value,
        liquidusConductivity: metal.liquidusConductivity.value,
        sensibleHeat: metal.sensibleHeat.value / 1e3,
        latentHeat: metal.latentHeat.value / 1e3,
        density: metal.density.value,
        names: OTHER_NAMES[designation].join(", "),
        sources: sourcesOf(designation),
      };
    }),
});

/** A number in the SI unit of its heading in both systems, with the rounding of the change of unit taken off. */
function property(heading: string): Column<number> {
  return { heading, quantity: undefined, write: (value) => Number(value.toPrecision(12)) };
}

export const METALS = family("Metals", [MATERIALS, MILL_RATIO, MILL_SULFUR]);
