/**
 * The browser sheet's side of the functions: the global that functions.js reports in to, and each formula registered
 * with the engine under its own name, with argument help from functions.json.
 */

import { helpers, registries } from "@odoo/o-spreadsheet";

import { itemAt } from "../../../src/numerics/item";
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

/** How the engine computes a function, and what it hands over for an argument: a cell, columns of a range, or nothing. */
type Compute = Parameters<typeof registries.functionRegistry.add>[1]["compute"];
type Given = Parameters<Compute>[number];
/** A cell as the engine hands it over and takes it back, and what stands in it. */
type EngineCell = Exclude<Given, undefined | readonly unknown[]>;
type CellValue = EngineCell["value"];

/** No subclass of `Error`, whose stack costs more than the refusal and is seen by nobody. */
class CellError {
  constructor(
    readonly code: string,
    readonly message?: string,
  ) {}
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
      compute: computeOf(remembered, definition.parameters),
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

/** How the engine computes a formula; where each argument goes is settled here, once for all calls. */
function computeOf(formula: Formula, parameters: readonly Parameter[]): Compute {
  const repeating = parameters.findIndex((parameter) => parameter.repeating === true);
  const matrix = parameters.map(({ dimensionality }) => dimensionality === "matrix");
  const last = parameters.length - 1;
  return (...given) => {
    const cells: unknown[] = [];
    for (let i = 0; i < given.length; i += 1) {
      const one = given[i];
      // As in Excel, an argument that holds an error is the answer; its sentence comes along.
      const error = errorIn(one);
      if (error !== undefined) return refused(error.value, error.message);
      cells.push(received(one, matrix[Math.min(i, last)] ?? false));
    }
    const args = repeating < 0 ? cells : [...cells.slice(0, repeating), cells.slice(repeating)];
    return result(formula, args);
  };
}

function errorIn(given: Given): EngineCell | undefined {
  if (!Array.isArray(given)) return isError(given) ? given : undefined;
  for (const column of given) {
    const error = column.find(isError);
    if (error !== undefined) return error;
  }
  return undefined;
}

function isError(cell: EngineCell | undefined): boolean {
  return typeof cell?.value === "string" && registries.errorTypes.has(cell.value);
}

function refused(value: CellValue, message: string | undefined): EngineCell {
  return message === undefined ? { value } : { value, message };
}

/** The engine keeps ranges column by column; formulas take them row by row. */
function received(given: Given, matrix: boolean): unknown {
  if (given === undefined) return undefined;
  if (Array.isArray(given))
    return given[0]?.map((_, row) => given.map((column) => column[row]?.value ?? null));
  return matrix ? [[given.value]] : given.value;
}

/** What goes back: a cell, or a table column by column. Nothing may escape: the engine would show its own help text. */
function result(formula: Formula, args: readonly unknown[]): EngineCell | EngineCell[][] {
  try {
    const value = formula(...args) as CellValue | CellValue[][];
    if (!Array.isArray(value)) return { value };
    return value[0]?.map((_, column) => value.map((row) => ({ value: itemAt(row, column) }))) ?? [];
  } catch (problem) {
    const { code, message } = problem as CellError;
    return refused(code, message);
  }
}
