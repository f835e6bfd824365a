/** The formulas' help as the build wrote it from their records: the same text that BEAD.ABOUT gives. */

import help from "../../generated/help.json";

export type FormulaHelp = (typeof help.formulas)[number];

export const VERSION = help.version;
export const FORMULAS: readonly FormulaHelp[] = help.formulas;

/** The formula as one types it, with its arguments: BEAD.STANDOFF(wall, [allowance], [units]). */
export function signature({ id, parameters }: FormulaHelp): string {
  const names = parameters.map(({ name, optional, repeating }) => {
    const shown = repeating ? `${name}…` : name;
    return optional || repeating ? `[${shown}]` : shown;
  });
  return `${help.namespace}.${id}(${names.join(", ")})`;
}

/** Our formulas in a cell's formula, in the order they stand there, each once. */
export function formulasIn(formula: string): FormulaHelp[] {
  const named = [...formula.toUpperCase().matchAll(/BEAD[._]([A-Z0-9_]+)\s*\(/g)].map(([, id]) => id);
  return [...new Set(named)].flatMap((id) => FORMULAS.filter((one) => one.id === id));
}
