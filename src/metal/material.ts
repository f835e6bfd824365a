/**
 * The metals and the numbers the heat-flow, dam and puddle calculations use, a source beside each.
 * "Hot" stands for the metal on its way to melting, near 1200 K (927 °C); "cold" for room temperature, 25 °C.
 */

import { itemAt } from "../numerics/item";
import { isBelow } from "../limits";
import { si, TEMPERATURE } from "../quantity";
import { amount, Refusal, rule } from "../refusal";
import type { Sourced } from "../sourced";
import { estimate, memory, published } from "../sourced";
import type { Thermal } from "./thermal";
import { THERMAL } from "./thermal";

/** What the table below says of a metal; thermal.ts says the rest. */
interface Tabulated {
  /** W/(m·K) near 1200 K. */
  readonly hotConductivity: Sourced;
  /** m²/s near 1200 K. */
  readonly hotDiffusivity: Sourced;
  /** K: where the last solid melts. */
  readonly liquidus: Sourced;
  /** W/(m·K) at 25 °C. */
  readonly coldConductivity: Sourced;
  /** Heat capacity by volume at 25 °C, J/(m³·K). */
  readonly coldHeatCapacity: Sourced;
  /** N/m: the liquid near its liquidus, with the sulfur that tube and pipe carry. */
  readonly surfaceTension: Sourced;
}

export interface Material extends Tabulated, Thermal {}

/** The tables below keep the units of their sources: mm²/s, °C, MJ/(m³·K). */
const MM2_PER_S = 1e-6;
const MJ = 1e6;
const celsius = (degrees: number): number => degrees + 273.15;

const FITS_316 = "recommended values for 316, polynomial fits";
const ANNEX_C = "Annex C, stainless steels (1.4462 among them)";
const TI64 = "recommended values for Ti-6Al-4V";
const CP_625 = "cp 338.39 + 0.2441 T and 8440 kg/m³";
const STAINLESS_TENSION = "equation for stainless steels, 1823 K, 0.01 % sulfur";
const LIQUID_NICKEL = "pure nickel, 1.778 N/m ([iida-guthrie-1988]), less 5 % for sulfur and alloying";

/** A row of the table: what people call the metal, and its numbers. */
function metal<const Name extends string>(
  designation: Name,
  properties: Tabulated,
): readonly [designation: Name, properties: Tabulated] {
  return [designation, properties];
}

/**
 * Every metal, in the order people list them: steels, titanium, nickel, copper. A list rather than an object, in which
 * a designation that reads as a whole number, 2205, would come first.
 */
const METALS = [
  metal("304L", {
    hotConductivity: memory(27.532, "kim-1975", "equations for 304L at 1200 K"),
    hotDiffusivity: memory(5.8167 * MM2_PER_S, "kim-1975", "equations for 304L: k/(ρ·cp) at 1200 K"),
    liquidus: memory(celsius(1455), "asm-handbook", "range 1400–1455 °C"),
    coldConductivity: memory(12.94, "kim-1975", "equations for 304L at 298 K"),
    coldHeatCapacity: memory(4.0231 * MJ, "kim-1975", "equations for 304L: ρ·cp at 298 K"),
    surfaceTension: memory(1.565, "mills-2005", STAINLESS_TENSION),
  }),
  metal("316L", {
    hotConductivity: published(28.387, "mills-2002", `${FITS_316}, at 1200 K`),
    hotDiffusivity: published(5.848 * MM2_PER_S, "mills-2002", `${FITS_316}: k/(ρ·cp) at 1200 K`),
    liquidus: published(celsius(1450), "mills-2002", "melting range of 316, 1385–1450 °C"),
    coldConductivity: published(13.757, "mills-2002", `${FITS_316}, at 298 K`),
    coldHeatCapacity: published(3.8402 * MJ, "mills-2002", `${FITS_316}: ρ·cp at 298 K`),
    surfaceTension: published(1.593, "pichler-2022", "reference steel SRM 1155a at 1708 K"),
  }),
  metal("2205", {
    hotConductivity: memory(26.371, "en-1993-1-2", `${ANNEX_C}: 14.6 + 0.0127 θ at 927 °C`),
    hotDiffusivity: memory(
      5.933 * MM2_PER_S,
      "en-1993-1-2",
      `${ANNEX_C}: k/(7850·cp), cp 566.2 J/kgK at 927 °C`,
    ),
    liquidus: published(celsius(1440), "sheet-2205", "melting range 1385–1440 °C"),
    coldConductivity: memory(14.918, "en-1993-1-2", `${ANNEX_C}, at 25 °C`),
    coldHeatCapacity: memory(3.586 * MJ, "en-1993-1-2", `${ANNEX_C}: 7850·cp, cp 456.8 J/kgK at 25 °C`),
    surfaceTension: estimate(1.565, `[mills-2005], ${STAINLESS_TENSION}; taken to hold for a duplex steel`),
  }),
  metal("CS", {
    hotConductivity: published(28.0, "welding-handbook-1", "welding constants for steel: 0.028 J/mm·s·K"),
    hotDiffusivity: published(6.3636 * MM2_PER_S, "welding-handbook-1", "0.028/0.0044 (ρC 0.0044 J/mm³K)"),
    liquidus: published(celsius(1510), "welding-handbook-1", "melting temperature 1510 °C"),
    coldConductivity: published(53.33, "en-1993-1-2", "3.4.1: 54 − 0.0333 θ at 20 °C"),
    coldHeatCapacity: published(3.4524 * MJ, "en-1993-1-2", "3.4.1: 7850·cp, cp 439.8 J/kgK at 20 °C"),
    surfaceTension: memory(1.565, "sahoo-1988", "iron at 1809 K with 0.03 % sulfur"),
  }),
  metal("TI-2", {
    hotConductivity: memory(22.0, "incropera-dewitt", "Table A.1: titanium at 1200 K"),
    hotDiffusivity: memory(
      7.868 * MM2_PER_S,
      "incropera-dewitt",
      "Table A.1: cp 620 J/kgK at 1200 K, with 4510 kg/m³",
    ),
    liquidus: memory(celsius(1670), "sheet-titanium", "1665–1670 °C"),
    coldConductivity: memory(
      16.4,
      "sheet-titanium",
      "grade 2; grade 1 and pure titanium are given as 16 to 22",
    ),
    coldHeatCapacity: memory(2.3587 * MJ, "sheet-titanium", "4510 kg/m³, 523 J/kgK"),
    surfaceTension: memory(1.557, "paradis-2002", "pure titanium at 1943 K; handbooks give 1.65"),
  }),
  metal("TI-6-4", {
    hotConductivity: memory(19.3, "mills-2002", `${TI64}: beta phase at 995 °C`),
    hotDiffusivity: memory(7.032 * MM2_PER_S, "mills-2002", `${TI64}: cp 641 J/kgK and 4282 kg/m³ at 995 °C`),
    liquidus: memory(celsius(1650), "mills-2002", `${TI64}: 1650 °C; sheets give 1604–1660`),
    coldConductivity: memory(7.0, "mills-2002", `${TI64} at 25 °C; three sheets give 6.6, 6.7 and 7.2`),
    coldHeatCapacity: memory(
      2.4133 * MJ,
      "mills-2002",
      `${TI64}: 4420 kg/m³, 546 J/kgK; sheets give 526–586`,
    ),
    surfaceTension: memory(1.52, "mills-2002", `${TI64} near the liquidus`),
  }),
  metal("625", {
    hotConductivity: memory(24.008, "sheet-625", "22.8 at 871 °C and 25.2 at 982 °C, interpolated to 927 °C"),
    hotDiffusivity: memory(
      4.506 * MM2_PER_S,
      "capriccioli-frosi-2009",
      `k above over ρ·cp at 1200 K: ${CP_625}`,
    ),
    liquidus: published(celsius(1350), "sheet-625", "1290–1350 °C"),
    coldConductivity: memory(9.856, "sheet-625", "9.8 at 21 °C and 10.8 at 93 °C, interpolated to 25 °C"),
    coldHeatCapacity: published(3.4703 * MJ, "capriccioli-frosi-2009", `at 298 K: ${CP_625}`),
    surfaceTension: estimate(1.69, LIQUID_NICKEL),
  }),
  metal("C-276", {
    hotConductivity: estimate(
      26.87,
      "straight line through the rows of the [sheet-c-276] from 25 to 500 °C, carried to 927 °C",
    ),
    hotDiffusivity: estimate(
      5.21 * MM2_PER_S,
      "k above over 8890 kg/m³ and cp 580 J/kgK, its rise taken from a sister alloy",
    ),
    liquidus: memory(celsius(1371), "sheet-c-276", "1323–1371 °C"),
    coldConductivity: memory(10.2, "sheet-c-276", "at 25 °C"),
    coldHeatCapacity: memory(3.796 * MJ, "sheet-c-276", "8890 kg/m³, 427 J/kgK"),
    surfaceTension: estimate(1.69, LIQUID_NICKEL),
  }),
  metal("C12200", {
    hotConductivity: memory(
      339,
      "cda-copper",
      "room value, kept; pure copper at 1200 K is 339 too ([incropera-dewitt], Table A.1)",
    ),
    hotDiffusivity: memory(
      79.0 * MM2_PER_S,
      "incropera-dewitt",
      "Table A.1: k above, 8940 kg/m³ and cp 480 J/kgK at 1200 K",
    ),
    liquidus: memory(celsius(1083), "cda-copper", "melting point"),
    coldConductivity: memory(339, "cda-copper", "196 Btu/(h·ft·°F)"),
    coldHeatCapacity: memory(3.4419 * MJ, "cda-copper", "8940 kg/m³, 385 J/kgK"),
    surfaceTension: memory(1.285, "iida-guthrie-1988", "pure copper at its melting point"),
  }),
  metal("C70600", {
    hotConductivity: estimate(115, "Wiedemann–Franz law at 1200 K with a resistivity of 25.5 µΩ·cm"),
    hotDiffusivity: estimate(
      26.2 * MM2_PER_S,
      "k above, 8940 kg/m³ and cp 491 J/kgK by the Kopp–Neumann rule",
    ),
    liquidus: published(celsius(1150), "sheet-c70600", "1100–1150 °C"),
    coldConductivity: published(45.0, "sheet-c70600", "26 Btu/(h·ft·°F)"),
    coldHeatCapacity: published(3.3704 * MJ, "sheet-c70600", "8940 kg/m³, 377 J/kgK"),
    surfaceTension: estimate(1.285, "copper's value: nickel's is higher, and copper gathers at the surface"),
  }),
] as const;

export type Designation = (typeof METALS)[number][0];

export const MATERIALS = Object.fromEntries(
  METALS.map(([designation, properties]) => [designation, { ...properties, ...THERMAL[designation] }]),
) as Readonly<Record<Designation, Material>>;

export const DESIGNATIONS: readonly Designation[] = METALS.map(([designation]) => designation);

/** What a row of the table is called. */
export function designationOf(material: Material): Designation {
  return itemAt(
    DESIGNATIONS,
    DESIGNATIONS.findIndex((one) => MATERIALS[one] === material),
  );
}

/** The metal of a formula whose material argument is omitted. */
export const DEFAULT_MATERIAL: Designation = "316L";

/** The room that tube, gas and dams start from, 20 °C, K. */
export const AMBIENT = si(celsius(20), TEMPERATURE);

/** θ: how far the metal has to be heated to melt, K. Refuses a start at or above the liquidus. */
export function meltingRise(material: Material, start: number): number {
  const rise = material.liquidus.value - start;
  if (isBelow(start, material.liquidus.value)) return rise;
  throw new Refusal(
    "preheat",
    amount(start, TEMPERATURE),
    rule`must be below the liquidus, ${amount(material.liquidus.value, TEMPERATURE)}`,
  );
}
