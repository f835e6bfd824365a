/**
 * Every formula by its id: what its help says and the function behind it. The build fills it, from the JSDoc of the
 * files in this folder, through generated/help.json and generated/associate.ts.
 */

import help from "../generated/help.json";

export interface ParameterHelp {
  readonly name: string;
  readonly description: string;
  readonly optional: boolean;
  /** Takes a range of cells rather than one. */
  readonly range: boolean;
  /** Takes all arguments from here on. */
  readonly repeating: boolean;
}

export interface FormulaHelp {
  readonly id: string;
  /** Name of the source file in functions/, the formula's family. */
  readonly family: string;
  readonly meaning: string;
  readonly parameters: readonly ParameterHelp[];
  readonly returns: string;
  readonly equation: string;
  readonly validity: string;
  readonly assumptions: string;
  readonly source: string;
  readonly unconfirmed: string;
  /** A formula as typed, and what it gives. */
  readonly example: string;
  readonly result: string;
}

export type Formula = (...cells: never[]) => unknown;

export const NAMESPACE: string = help.namespace;
export const VERSION: string = help.version;
export const HELP: readonly FormulaHelp[] = help.formulas;

const offered = new Map<string, Formula>();

/** Hands a formula to the host and remembers it for those that call others by name. */
export function offer(id: string, formula: Formula): void {
  offered.set(id, formula);
  CustomFunctions.associate(id, formula as (...cells: unknown[]) => unknown);
}

export function formulaById(id: string): ((...cells: unknown[]) => unknown) | undefined {
  return offered.get(id) as ((...cells: unknown[]) => unknown) | undefined;
}
