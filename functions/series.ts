/** Ranges that are read side by side, a row each; one cell alone stands for all rows. */

import type { Of, Quantity } from "../src/quantity";
import { plainNumber } from "../src/quantity";
import { orRefusal, Refusal } from "../src/refusal";
import type { Argument, NumberArgument } from "./argument";
import { isBlank, rowsOf } from "./cells";
import { isTitle } from "./list";

/** A range whose cells are read when their row is, so that a refusal can say which row it was. */
export interface Series<Value = unknown> {
  readonly length: number;
  readonly isBlankAt: (index: number) => boolean;
  readonly at: (index: number) => Value;
}

/** A required range of numbers, or one number for all rows. */
export function series<Kind extends string>(
  argument: NumberArgument<Kind>,
): Argument<Series<Of<Kind>>, false> & { readonly quantity: Quantity<Kind> } {
  return {
    ...argument,
    takes: "range",
    read: (reader, name, range) => {
      const cells = inLine(name, range);
      return {
        length: cells.length,
        isBlankAt: (index) => isNothing(cells, index),
        at: (index) => argument.read(reader, name, cells[index]),
      };
    },
  };
}

/** Some hosts hand a blank cell of a range over as 0; none of these numbers may be 0. */
const BLANK_IN_A_RANGE = 0;

/** Blank, or the heading of a column. */
function isNothing(cells: readonly unknown[], index: number): boolean {
  const cell = cells[index];
  if (index === 0 && typeof cell === "string" && isTitle(cell)) return true;
  return cell === BLANK_IN_A_RANGE || isBlank(cell);
}

/** The cells of one column or one row. */
function inLine(name: string, range: unknown): unknown[] {
  const listed = rowsOf(range);
  const width = listed.reduce((most, row) => Math.max(most, row.length), 0);
  if (listed.length > 1 && width > 1) {
    const size = `${String(listed.length)} × ${String(width)} cells`;
    throw new Refusal(name, "a range", [`takes one column or one row, not ${size}`]);
  }
  return listed.flat();
}

type Columns = Readonly<Record<string, Series>>;
type RowOf<Each extends Columns> = {
  readonly [Name in keyof Each]: Each[Name] extends Series<infer Value> ? Value : never;
};

/**
 * What `each` makes of every row that is not blank. A refusal of one of the ranges says its row; ranges of different
 * lengths and more than `most` filled rows are refused.
 */
export function eachRow<const Each extends Columns, Result>(
  columns: Each,
  most: number,
  each: (row: RowOf<Each>) => Result,
): Result[] {
  const listed = Object.entries<Series>(columns);
  const ranged = listed.filter(([, { length }]) => length !== 1);
  const filled = filledRows(ranged);
  if (filled.length === 0) {
    throw new Refusal(listed[0]?.[0] ?? "", "blank", ["needs a number or a range of them"]);
  }
  if (filled.length > most) {
    throw new Refusal(ranged[0]?.[0] ?? "", "a range", [
      `must have at most ${plainNumber(most)} filled rows`,
    ]);
  }
  return filled.map((index) => {
    const result = orRefusal(() => {
      const row = listed.map(([name, column]) => [name, column.at(column.length === 1 ? 0 : index)] as const);
      return each(Object.fromEntries(row) as RowOf<Each>);
    });
    if (result instanceof Refusal) throw result.argument in columns ? ofRow(result, index, ranged) : result;
    return result;
  });
}

/** The rows where some range is not blank. */
function filledRows(ranged: readonly (readonly [string, Series])[]): number[] {
  const length = commonLength(ranged);
  const filled: number[] = [];
  for (let index = 0; index < length; index += 1) {
    if (ranged.length === 0 || ranged.some(([, column]) => !column.isBlankAt(index))) filled.push(index);
  }
  return filled;
}

/** 1 where no argument is a range. */
function commonLength([first, ...others]: readonly (readonly [string, Series])[]): number {
  if (first === undefined) return 1;
  const [name, { length }] = first;
  for (const [other, column] of others) {
    if (column.length === length) continue;
    throw new Refusal(other, cellsOf(column.length), [
      `must be one cell or as many as ${name}, ${String(length)}`,
    ]);
  }
  return length;
}

function cellsOf(length: number): string {
  return `${String(length)} cells`;
}

function ofRow(refusal: Refusal, index: number, ranged: readonly (readonly [string, Series])[]): Refusal {
  if (ranged.length === 0) return refusal;
  const { argument, value, rule, kind } = refusal;
  return new Refusal(argument, value, [`row ${String(index + 1)}: `, ...rule], kind);
}
