/**
 * What the second engine is given: our formulas from their records, and the four native functions of the ready sheets that it
 * lacks or has otherwise. Written here from what a spreadsheet's help says of them.
 */

import type { FunctionMetadata, FunctionPluginDefinition } from "hyperformula";
import { ArraySize, CellError, EmptyValue, ErrorType, FunctionPlugin, SimpleRangeValue } from "hyperformula";

import { FORMULAS } from "../../functions/catalogue";
import type { ProcedureAst } from "../../node_modules/hyperformula/typings/parser";
import type { InterpreterState } from "../../node_modules/hyperformula/typings/interpreter/InterpreterState";
import type {
  InternalScalarValue,
  InterpreterValue,
} from "../../node_modules/hyperformula/typings/interpreter/InterpreterValue";
import { addressOf } from "../../taskpane/sheets/addresses";
import { asRange } from "../../tools/docs/example-cells";
import { remembered } from "./remembered";

/** What the functions cannot learn from the engine while it computes a sheet. */
export interface Around {
  /** How many rows and columns the answer of a cell's formula fills: the engine has to know before it computes. */
  readonly sizes: ReadonlyMap<string, readonly [rows: number, columns: number]>;
  /** The cells that hold a formula. */
  readonly formulas: ReadonlySet<string>;
}
export const around: { now: Around } = { now: { sizes: new Map(), formulas: new Set() } };

const PREFIX = "BEAD.";

/** Every formula by its name in a sheet. A blank cell is null, a range rows, as in the browser sheet. */
class Ours extends FunctionPlugin {
  static override implementedFunctions: Record<string, FunctionMetadata> = Object.fromEntries(
    FORMULAS.map(({ id }) => [
      PREFIX + id,
      { method: "answer", sizeOfResultArrayMethod: "size", parameters: [] },
    ]),
  );

  answer({ procedureName, args }: ProcedureAst, state: InterpreterState): InterpreterValue {
    const id = procedureName.slice(PREFIX.length);
    const record = FORMULAS.find((one) => one.id === id);
    const formula = remembered(id);
    if (record === undefined || formula === undefined) return new CellError(ErrorType.NAME, id);
    const given = args.map((one) => this.evaluateAst(one, state));
    const error = given.flatMap(scalars).find((one) => one instanceof CellError);
    if (error !== undefined) return error;
    const rest = Object.values(record.args).findIndex(({ takes }) => takes === "rest");
    const cells = given.map(cellOf);
    const called = rest < 0 ? cells : [...cells.slice(0, rest), cells.slice(rest).map(asRange)];
    try {
      const answer = formula(...called);
      return Array.isArray(answer)
        ? SimpleRangeValue.onlyValues(answer as InternalScalarValue[][])
        : (answer as InternalScalarValue);
    } catch (problem) {
      const { code, message } = problem as { code?: string; message: string };
      return new CellError(code === "#N/A" ? ErrorType.NA : ErrorType.VALUE, message);
    }
  }

  size(_: ProcedureAst, { formulaAddress: { row, col } }: InterpreterState): ArraySize {
    const [rows, columns] = around.now.sizes.get(addressOf({ column: col, row })) ?? [1, 1];
    return new ArraySize(columns, rows);
  }
}

function scalars(value: InterpreterValue): InternalScalarValue[] {
  return value instanceof SimpleRangeValue ? value.data.flat() : [value];
}

/** As COUNTIF compares: in any case. */
function wordIn(value: InternalScalarValue): string {
  const cell = cellOf(value);
  return typeof cell === "string" || typeof cell === "number" ? String(cell).toLowerCase() : "";
}

function cellOf(value: InterpreterValue): unknown {
  if (value instanceof SimpleRangeValue) return value.data.map((row) => row.map(cellOf));
  if (value === EmptyValue) return null;
  return typeof value === "object" && "val" in value ? value.val : value;
}

/** LOOKUP in a sorted list, ISFORMULA of a range, TEXT with the formats that the sheets use, and COUNT. */
class Native extends FunctionPlugin {
  static override implementedFunctions: Record<string, FunctionMetadata> = {
    LOOKUP: { method: "lookup", parameters: [] },
    ISFORMULA: { method: "isFormula", parameters: [], doesNotNeedArgumentsToBeComputed: true },
    TEXT: { method: "text", parameters: [] },
    COUNT: { method: "count", parameters: [] },
    COUNTIF: { method: "countIf", parameters: [] },
  };

  /** The engine's own counts a blank cell that INDEX points at. */
  count({ args }: ProcedureAst, state: InterpreterState): InterpreterValue {
    const cells = args.flatMap((one) => scalars(this.evaluateAst(one, state)));
    return cells.filter((one) => typeof cellOf(one) === "number").length;
  }

  /** As the engine's own, but for each cell of a range of criteria too. Only equality and * are asked for. */
  countIf({ args }: ProcedureAst, state: InterpreterState): InterpreterValue {
    const [range = EmptyValue, wanted = EmptyValue] = args.map((one) => this.evaluateAst(one, state));
    const words = scalars(range).map((one) => wordIn(one));
    const counted = new Map<string, number>();
    for (const word of words) counted.set(word, (counted.get(word) ?? 0) + 1);
    const count = (criterion: InternalScalarValue): number => {
      const asked = wordIn(criterion);
      if (!asked.endsWith("*")) return counted.get(asked) ?? 0;
      return words.filter((word) => word.startsWith(asked.slice(0, -1))).length;
    };
    if (!(wanted instanceof SimpleRangeValue)) return count(wanted);
    return SimpleRangeValue.onlyNumbers(wanted.data.map((row) => row.map(count)));
  }

  /** The result beside the last number that is not above the one looked for. */
  lookup({ args }: ProcedureAst, state: InterpreterState): InterpreterValue {
    const [wanted = EmptyValue, list = [], results = []] = args.map((one) => this.evaluateAst(one, state));
    const [value] = scalars(wanted);
    if (value instanceof CellError) return value;
    const numbers = scalars(list as InterpreterValue).map(cellOf);
    const below = numbers.map((one) => typeof one === "number" && one <= Number(cellOf(value ?? EmptyValue)));
    return scalars(results as InterpreterValue)[below.lastIndexOf(true)] ?? new CellError(ErrorType.NA);
  }

  isFormula({ args: [asked] }: ProcedureAst, { formulaAddress }: InterpreterState): InterpreterValue {
    if (asked === undefined) return new CellError(ErrorType.NA);
    const ends = "start" in asked ? [asked.start, asked.end] : "reference" in asked ? [asked.reference] : [];
    const [from, to = from] = ends.flatMap((end) =>
      "toSimpleCellAddress" in end ? [end.toSimpleCellAddress(formulaAddress)] : [],
    );
    if (from === undefined || to === undefined) return new CellError(ErrorType.VALUE);
    const told = Array.from({ length: to.row - from.row + 1 }, (_, r) =>
      Array.from({ length: to.col - from.col + 1 }, (__, c) =>
        around.now.formulas.has(addressOf({ column: from.col + c, row: from.row + r })),
      ),
    );
    return "start" in asked ? SimpleRangeValue.onlyValues(told) : (told[0]?.[0] ?? false);
  }

  text({ args }: ProcedureAst, state: InterpreterState): InterpreterValue {
    const [value = EmptyValue, format = EmptyValue] = args.map((one) => this.evaluateAst(one, state));
    if (value instanceof CellError) return value;
    const number = cellOf(value);
    return typeof number === "number"
      ? written(number, String(cellOf(format)))
      : typeof number === "string"
        ? number
        : "";
  }
}

/** A number by a format of 0, 0.0, 0% and the like, with up to three of them for above, below and at 0. */
function written(number: number, format: string): string {
  const [above = "", below = `-${above}`, zero = above] = format.split(";");
  const section = number > 0 ? above : number < 0 ? below : zero;
  const [, sign = "", decimals = "", percent = ""] = /^([+-]?)0(?:\.(0+))?(%?)$/.exec(section) ?? [];
  const scale = 10 ** decimals.length;
  // Half goes away from 0, judged by the fifteen digits that a spreadsheet has.
  const digits = Number((Math.abs(number) * (percent === "" ? 1 : 100) * scale).toPrecision(15));
  return `${sign}${(Math.round(digits) / scale).toFixed(decimals.length)}${percent}`;
}

export const PLUGINS: readonly FunctionPluginDefinition[] = [Ours, Native];
