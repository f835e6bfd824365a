/** Calls a formula by its id, as a host would. */

import type { FormulaHelp } from "../functions/help-text";
import type { Records } from "../functions/catalogue";
import { FORMULAS, formulaById } from "../functions/catalogue";
import type { Formula } from "../functions/formula";
import type { Quantity } from "../src/quantity";
import { asRange, exampleCells as cellsOfRecord } from "../tools/docs/example-cells";
import type { TypedCall } from "../tools/docs/typed-call";

/** The answer of a formula; its refusal is thrown. */
export function bead(id: string, ...cells: unknown[]): unknown {
  const formula = formulaById(id);
  if (formula === undefined) throw new Error(`no formula ${id}`);
  return formula(...cells);
}

/** The answer of a formula that gives one number. */
export function number(id: string, ...cells: unknown[]): number {
  const result = bead(id, ...cells);
  if (typeof result !== "number") throw new Error(`${id} gave ${typeof result}`);
  return result;
}

/** The answer of a formula that gives a table. */
export function table(id: string, ...cells: unknown[]): (number | string | boolean)[][] {
  const result = bead(id, ...cells);
  if (!Array.isArray(result)) throw new Error(`${id} gave ${typeof result}`);
  return result as (number | string | boolean)[][];
}

/** In place of a refusal. */
export const ANSWERED = "answered";

/** What a formula says of its arguments: the answer, or the error code and the sentence of its refusal. */
export function said(
  id: string,
  ...cells: unknown[]
): { readonly refused: string; readonly answer?: unknown } {
  try {
    return { refused: ANSWERED, answer: bead(id, ...cells) };
  } catch (problem) {
    const { code, message } = problem as { code: string; message: string };
    return { refused: `${code} ${message}` };
  }
}

/** The error code and the sentence with which a formula refuses its arguments. */
export function refusal(id: string, ...cells: unknown[]): string {
  return said(id, ...cells).refused;
}

/** Half a unit in the last printed digit: how near a value has to come to a printed one. */
export function halfUnit(printed: string): number {
  const decimals = /\.(\d+)/.exec(printed)?.[1]?.length ?? 0;
  return 0.5 * 10 ** -decimals;
}

/** Expects a value to round to a printed one. */
export function expectPrinted(value: number, printed: string): void {
  const tolerance = halfUnit(printed) * (1 + 1e-9);
  expect(Math.abs(value - Number(printed.replaceAll(" ", "")))).toBeLessThanOrEqual(tolerance);
}

/** Expects a law to hold to 1e-12 relative, or as near as is said. */
export function expectNear(value: number, expected: number, relative = 1e-12): void {
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(relative * Math.abs(expected));
}

/** The cells of the worked example, one a declared parameter, as a host fills them: null for what is omitted. */
export function exampleCells({ id }: Pick<FormulaHelp, "id">): unknown[] {
  return cellsOfRecord(recordOf(id));
}

/** The same for a call as typed. */
export function typedCells({ parameters }: FormulaHelp, { args }: TypedCall): unknown[] {
  return parameters.map(({ repeating }, i) => (repeating ? args.slice(i).map(asRange) : (args[i] ?? null)));
}

/** The cells of the worked example with one of them changed. */
export function exampleWith(about: FormulaHelp, index: number, cell: unknown): unknown[] {
  return exampleCells(about).map((given, i) => (i === index ? cell : given));
}

/** Cells of a call by the names of its arguments. */
export type CellsByName<Id extends keyof Records> = Partial<
  Record<keyof Records[Id]["args"] | "units", unknown>
>;

/** The cells in the order of the arguments; what is not named is omitted. */
export function byName<Id extends keyof Records>(id: Id, given: CellsByName<Id>): unknown[] {
  const { args, takesUnits } = recordOf(id);
  const named: Readonly<Record<string, unknown>> = given;
  return [...Object.keys(args), ...(takesUnits ? ["units"] : [])].map((name) => named[name] ?? null);
}

/** The record of a formula. */
export function recordOf(id: string): Formula {
  const record = FORMULAS.find((one) => one.id === id);
  if (record === undefined) throw new Error(`no record ${id}`);
  return record;
}

/** The kind of number that an argument takes; none for words, and for the units themselves. */
export function kindOfArgument(id: string, name: string): Quantity | undefined {
  return recordOf(id).args[name]?.quantity;
}

/** The kind of number in a column of a formula's answer, of which a single number is the first. */
export function kindOfResult(id: string, column = 0): Quantity | undefined {
  const { quantity, columnKinds } = recordOf(id).gives;
  return columnKinds.length > 0 ? columnKinds[column] : quantity;
}
