/**
 * The browser sheet's side of the functions: the global that functions.js reports in to, and each formula registered
 * with the engine under its own name, with argument help from functions.json.
 */

import { helpers, registries } from "@odoo/o-spreadsheet";

import { remembering } from "./remembered";

interface Parameter {
  readonly name: string;
  readonly description: string;
  readonly optional?: boolean;
  readonly repeating?: boolean;
  readonly dimensionality?: string;
}

export interface FunctionDefinition {
  readonly id: string;
  readonly description: string;
  readonly parameters: readonly Parameter[];
}

export type Formula = (...cells: unknown[]) => unknown;

/** A cell as the engine hands it over and takes it back. */
interface EngineCell {
  readonly value: unknown;
  readonly message?: string;
}

class CellError extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message);
  }
}

/** The global must stand before functions.js is loaded; what that script reports in is in the map given back. */
export function provideFunctionsGlobal(): ReadonlyMap<string, Formula> {
  const associated = new Map<string, Formula>();
  Object.assign(globalThis, {
    CustomFunctions: {
      Error: CellError,
      ErrorCode: {
        invalidValue: "#VALUE!",
        notAvailable: "#N/A",
        divisionByZero: "#DIV/0!",
        invalidNumber: "#NUM!",
        nullReference: "#NULL!",
        invalidName: "#NAME?",
        invalidReference: "#REF!",
      },
      associate: (id: string, formula: Formula) => associated.set(id, formula),
    },
  });
  return associated;
}

export function registerFormulas(
  namespace: string,
  definitions: readonly FunctionDefinition[],
  formulaOf: (id: string) => Formula | undefined,
): void {
  // Of the error names only the engine's own are known to it; without this ours would pass as text.
  registries.errorTypes.add("#VALUE!");
  for (const definition of definitions) {
    const formula = formulaOf(definition.id);
    if (formula === undefined)
      throw new Error(`${definition.id} is in functions.json but not in functions.js`);
    const remembered = remembering(formula);
    const name = `${namespace}.${definition.id}`;
    if (registries.functionRegistry.contains(name)) continue;
    registries.functionRegistry.add(name, {
      description: definition.description,
      isExported: true,
      category: "Ringbead",
      args: definition.parameters.map(argument),
      compute: (...given: unknown[]) => computed(remembered, definition.parameters, given),
    });
  }
}

function argument({
  name,
  description,
  optional,
  repeating,
  dimensionality,
}: Parameter): ReturnType<typeof helpers.arg> {
  const kind = [
    dimensionality === "matrix" ? "any, range<any>" : "any",
    ...(optional === true || repeating === true ? ["optional"] : []),
    ...(repeating === true ? ["repeating"] : []),
  ];
  return helpers.arg(`${name} (${kind.join(", ")})`, description);
}

function computed(formula: Formula, parameters: readonly Parameter[], given: readonly unknown[]): never {
  // As in Excel, an argument that holds an error is the answer; its sentence comes along.
  const error = given.flatMap(cellsOf).find(isError);
  if (error !== undefined) return { value: error.value, message: error.message } as never;
  const repeating = parameters.findIndex((parameter) => parameter.repeating === true);
  const cells = given.map((one, i) => received(one, parameters[Math.min(i, parameters.length - 1)]));
  const args = repeating < 0 ? cells : [...cells.slice(0, repeating), cells.slice(repeating)];
  return result(() => formula(...args)) as never;
}

function cellsOf(given: unknown): EngineCell[] {
  if (given === undefined) return [];
  return Array.isArray(given) ? (given as EngineCell[][]).flat() : [given as EngineCell];
}

function isError({ value }: EngineCell): boolean {
  return typeof value === "string" && registries.errorTypes.has(value);
}

/** The engine keeps ranges column by column; formulas take them row by row. */
function received(given: unknown, parameter: Parameter | undefined): unknown {
  if (given === undefined) return undefined;
  if (Array.isArray(given)) {
    const columns = given as EngineCell[][];
    return columns[0]?.map((_, row) => columns.map((column) => column[row]?.value ?? null));
  }
  const value = (given as EngineCell).value ?? null;
  return parameter?.dimensionality === "matrix" ? [[value]] : value;
}

/** What goes back: a cell, or a table column by column. Nothing may escape: the engine would show its own help text. */
function result(run: () => unknown): EngineCell | EngineCell[][] {
  try {
    const value = run();
    if (!Array.isArray(value)) return { value };
    const rows = value as unknown[][];
    return rows[0]?.map((_, column) => rows.map((row) => ({ value: row[column] }))) ?? [];
  } catch (problem) {
    const { code, message } = problem as CellError;
    return { value: code, message };
  }
}
