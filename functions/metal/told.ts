/**
 * Where every number of a metal comes from, in one text. In functions.js the texts of all metals stand here, written by
 * the build (tools/build/told-loader.ts), and the numbers have no sources beside them.
 */

import type { Designation } from "../../src/metal/material";
import { MATERIALS } from "../../src/metal/material";
import type { Sourced } from "../../src/sourced";

export function sourcesOf(designation: Designation): string {
  const metal = MATERIALS[designation];
  return [
    sourceOf("hot k", metal.hotConductivity),
    sourceOf("hot α", metal.hotDiffusivity),
    sourceOf("liquidus", metal.liquidus),
    sourceOf("cold k", metal.coldConductivity),
    sourceOf("cold ρ·cp", metal.coldHeatCapacity),
    sourceOf("surface tension", metal.surfaceTension),
    sourceOf("mean k", metal.meanConductivity),
    sourceOf("k at the liquidus", metal.liquidusConductivity),
    sourceOf("heat to the liquidus", metal.sensibleHeat),
    sourceOf("latent heat", metal.latentHeat),
    sourceOf("density", metal.density),
  ].join("; ");
}

function sourceOf(what: string, { source, standing }: Sourced): string {
  return standing === "published" ? `${what}: ${source}` : `${what}: ${source} (${standing})`;
}
