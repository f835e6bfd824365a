/** Every formula, family by family in the order of the job. */

import project from "../package.json";
import { aboutFamily } from "./about/about";
import { AIR } from "./air/air";
import type { Family, Formula } from "./formula";
import { ARC_GAP } from "./gap/standoff";
import { ELECTRODE } from "./gap/electrode";
import { TRAVEL } from "./travel/travel";
import { AMPERAGE } from "./current/amperage";
import { HEAT_FLOW } from "./heat-flow/sectors";
import { SCHEDULES } from "./current/schedule";
import { HEAT_INPUTS } from "./current/heat-input";
import { DAMS } from "./heat-flow/dams";
import { INSPECTION } from "./inspection/inspection";
import { METALS } from "./metal/materials";
import { GAS_SUPPLY } from "./gas/gas";
import { CREW } from "./planning/crew";
import { CYCLE } from "./planning/cycle";
import { LEARNING } from "./planning/learning";
import { SETUPS } from "./planning/setups";
import { TAKEOFF } from "./planning/takeoff";
import { BORE_GAS } from "./purge/bore";
import { PURGE } from "./purge/purge";
import { OWN_COUPONS } from "./shop/coupons";
import { QUALIFICATION } from "./qualification/coverage";
import { SIZES } from "./tables/sizes";
import { TABLES } from "./tables/tables";

export const VERSION: string = project.version;

export const FAMILIES = [
  ARC_GAP,
  ELECTRODE,
  TRAVEL,
  AMPERAGE,
  HEAT_FLOW,
  SCHEDULES,
  HEAT_INPUTS,
  OWN_COUPONS,
  PURGE,
  BORE_GAS,
  DAMS,
  GAS_SUPPLY,
  AIR,
  CYCLE,
  CREW,
  TAKEOFF,
  SETUPS,
  LEARNING,
  INSPECTION,
  QUALIFICATION,
  SIZES,
  TABLES,
  METALS,
  aboutFamily(VERSION, () => families),
] as const;

/** The records by id, for the compiler: a sheet that calls a formula by a wrong id or argument does not compile. */
export type Records = {
  [Each in (typeof FAMILIES)[number]["formulas"][number] as Each["id"]]: Each;
};

export const families: readonly Family[] = FAMILIES;

export const FORMULAS: readonly Formula[] = families.flatMap(({ formulas }) => formulas);

const byId = new Map(FORMULAS.map((formula) => [formula.id, formula.call]));

export function formulaById(id: string): ((...cells: unknown[]) => unknown) | undefined {
  return byId.get(id);
}
