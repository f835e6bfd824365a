/** Every formula, family by family in the order of the job, and the help of each. */

import project from "../package.json";
import type { Family, Formula } from "./formula";
import type { FormulaHelp } from "./help-text";
import { helpOf } from "./help-text";
import { ARC_GAP } from "./gap/standoff";
import { ELECTRODE } from "./gap/electrode";

export const FAMILIES = [ARC_GAP, ELECTRODE] as const;

/** The records by id, for the compiler: a sheet that calls a formula by a wrong id or argument does not compile. */
export type Records = {
  [Each in (typeof FAMILIES)[number]["formulas"][number] as Each["id"]]: Each;
};

const families: readonly Family[] = FAMILIES;

export const FORMULAS: readonly Formula[] = families.flatMap(({ formulas }) => formulas);
export const HELP: readonly FormulaHelp[] = families.flatMap((family) =>
  family.formulas.map((formula) => helpOf(formula, family)),
);
export const VERSION: string = project.version;

const byId = new Map(FORMULAS.map((formula) => [formula.id, formula.call]));

export function formulaById(id: string): ((...cells: unknown[]) => unknown) | undefined {
  return byId.get(id);
}
