/** Calls a formula by its id, as a host would. */

import "../generated/associate";

import { formulaById } from "../functions/catalogue";

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

/** The error code and the sentence with which a formula refuses its arguments. */
export function refusal(id: string, ...cells: unknown[]): string {
  try {
    bead(id, ...cells);
  } catch (problem) {
    const { code, message } = problem as { code: string; message: string };
    return `${code} ${message}`;
  }
  return "answered";
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
