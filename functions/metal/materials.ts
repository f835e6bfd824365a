import type { Designation, Material } from "../../src/metal/material";
import { DEFAULT_MATERIAL, DESIGNATIONS, MATERIALS } from "../../src/metal/material";
import type { Sourced } from "../../src/sourced";
import type { Value } from "../answer";
import { answerAlike } from "../answer";
import type { Reader } from "../cells";

/** The material argument of every formula that has one. */
export function readMaterial(read: Reader, material: unknown): Material {
  return MATERIALS[read.wordOr("material", material, DESIGNATIONS, DEFAULT_MATERIAL)];
}

/**
 * The metals and the property values in use, one row each, with the source of every number.
 * @customfunction MATERIALS
 * @returns Columns: designation; hot k W/(m·K); hot α mm²/s; liquidus °C; cold k W/(m·K); cold ρ·cp MJ/(m³·K); surface tension N/m; sources
 * @validity Hot: near 1200 K (927 °C). Cold: 25 °C. Surface tension: the liquid near its liquidus. SI units whatever the sheet's system.
 * @source Named in the last column for every number
 * @unconfirmed "memory" in the last column marks a number recalled from its source and not compared with a copy, "estimate" one that nothing outside confirms.
 * @related AMPS_MELT, AMPS_WALL, DAM_TEMPERATURE, PURGE_CEILING
 * @example =BEAD.MATERIALS() → "304L", 27.532, 5.8167, 1455, 12.94, 4.0231, 1.565, …
 */
export function materialsCells(): unknown[][] {
  return answerAlike(() => DESIGNATIONS.map(row));
}

function row(designation: Designation): Value[] {
  const metal = MATERIALS[designation];
  return [
    designation,
    metal.hotConductivity.value,
    tidy(metal.hotDiffusivity.value * 1e6),
    tidy(metal.liquidus.value - 273.15),
    metal.coldConductivity.value,
    tidy(metal.coldHeatCapacity.value / 1e6),
    metal.surfaceTension.value,
    [
      sourceOf("hot k", metal.hotConductivity),
      sourceOf("hot α", metal.hotDiffusivity),
      sourceOf("liquidus", metal.liquidus),
      sourceOf("cold k", metal.coldConductivity),
      sourceOf("cold ρ·cp", metal.coldHeatCapacity),
      sourceOf("surface tension", metal.surfaceTension),
    ].join("; "),
  ];
}

/** Takes the rounding of a change of unit off a table value. */
function tidy(value: number): number {
  return Number(value.toPrecision(12));
}

function sourceOf(what: string, { source, standing }: Sourced): string {
  return standing === "published" ? `${what}: ${source}` : `${what}: ${source} (${standing})`;
}
