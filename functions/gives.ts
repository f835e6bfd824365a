/** What a formula gives: how help tells it, and how base SI becomes what a cell holds. */

import type { Amount } from "../src/refusal";
import type { Of, Quantity, Units } from "../src/quantity";
import { differs, fromBase, unitOf, unitPair } from "../src/quantity";
import type { Answer, Value } from "./answer";
import type { Typed } from "./cells";

export interface Gives<Result> {
  /** The kind of the one number, told behind the formula's meaning; none for text and tables. */
  readonly quantity: Quantity | undefined;
  /** Columns of a table, in order; none for a single value. */
  readonly columns: readonly string[];
  /** The kind of number in each of them; none where there are texts or each row says its own unit. */
  readonly columnKinds: readonly (Quantity | undefined)[];
  /** The same without units, and what help says in front of and behind them; none for a single value. */
  readonly shape?: Shape;
  /** What help says of a table; "" for a single value. */
  readonly told: string;
  readonly type: "number" | "text" | "numbers" | "table";
  /** Whether it differs between the two systems of units. */
  readonly differs: boolean;
  readonly write: (result: Result, units: Units) => Answer;
}

/** A table as help tells it. */
export interface Shape {
  readonly lead: string;
  readonly headings: readonly string[];
  readonly more: string;
}

/** One number of a kind of quantity. */
export function scalar<Kind extends string>(quantity: Quantity<Kind>): Gives<Of<Kind>> {
  return {
    quantity,
    columns: [],
    columnKinds: [],
    told: "",
    type: "number",
    differs: differs(quantity),
    write: (result, units) => fromBase(result, quantity, units),
  };
}

/**
 * One number of a printed table or of a size as it was typed: the very double of its decimals, not one a rounding of the
 * units away, so that it equals what a person types.
 */
export function printed<Kind extends string>(quantity: Quantity<Kind>): Gives<Of<Kind>> {
  return { ...scalar(quantity), write: (result, units) => asPrinted(fromBase(result, quantity, units)) };
}

/** One number that is given back as it was typed; one that nobody typed so, as a list prints it. */
export function asTyped<Kind extends string>(quantity: Quantity<Kind>): Gives<Typed<Kind>> {
  return {
    ...scalar(quantity),
    write: ({ base, typed }, units) => typed ?? asPrinted(fromBase(base, quantity, units)),
  };
}

/** A column of such numbers. */
export function typedColumn<Kind extends string>(
  heading: string,
  quantity: Quantity<Kind>,
): Column<Typed<Kind>> {
  return {
    heading,
    quantity,
    write: ({ base, typed }, units) => typed ?? asPrinted(fromBase(base, quantity, units)),
  };
}

/** Decimals that a person can type and what a change of unit may be off. */
const TYPED_DIGITS = 15;
const UNIT_ROUNDING = 4 * Number.EPSILON;

/** The very double of its decimals where rounding of the units has led it off by less than a cell can show. */
export function asPrinted(value: number): number {
  const typed = Number(value.toPrecision(TYPED_DIGITS));
  return Math.abs(typed - value) <= UNIT_ROUNDING * Math.abs(value) ? typed : value;
}

/** One text. */
export function words(): Gives<string> {
  return {
    quantity: undefined,
    columns: [],
    columnKinds: [],
    told: "",
    type: "text",
    differs: false,
    write: (result) => result,
  };
}

/** A column of a table: its heading, and what stands in it. */
export interface Column<Cell> {
  readonly heading: string;
  readonly quantity: Quantity | undefined;
  readonly write: (cell: Cell, units: Units) => Value;
}

export function column<Kind extends string>(heading: string, quantity: Quantity<Kind>): Column<Of<Kind>> {
  return { heading, quantity, write: (cell, units) => fromBase(cell, quantity, units) };
}

/** A column of numbers where a row may have none. */
export function columnOrBlank<Kind extends string>(
  heading: string,
  quantity: Quantity<Kind>,
): Column<Of<Kind> | ""> {
  return {
    heading,
    quantity,
    write: (cell, units) => (cell === "" ? "" : fromBase(cell, quantity, units)),
  };
}

/** A column of numbers that has words in a row that is none, such as the headings of a pasted list. */
export function columnOrWords<Kind extends string>(
  heading: string,
  quantity: Quantity<Kind>,
): Column<Of<Kind> | string> {
  return {
    heading,
    quantity,
    write: (cell, units) => (typeof cell === "string" ? cell : fromBase(cell, quantity, units)),
  };
}

/** A column of texts, or of truth values where that is said; the table around it must not decide. */
export function wordsColumn<Cell extends string | boolean = string>(heading: string): Column<NoInfer<Cell>> {
  return { heading, quantity: undefined, write: (cell) => cell };
}

type AnyColumn = Column<never>;
type RowOf<Columns extends Readonly<Record<string, AnyColumn>>> = {
  readonly [Name in keyof Columns]: Columns[Name] extends Column<infer Cell> ? Cell : never;
};

interface TableText {
  /** Said in front of the columns. */
  readonly lead?: string;
  /** Said behind them. */
  readonly more?: string;
}

/** A row for each thing, under named columns. */
export function table<const Columns extends Readonly<Record<string, AnyColumn>>>(
  columns: Columns,
  { lead = "Columns", more = "" }: TableText = {},
): Gives<readonly RowOf<Columns>[]> {
  const entries = Object.entries(columns) as [string, Column<unknown>][];
  const headings = entries.map(([, { heading, quantity }]) => {
    const unit = quantity === undefined ? "" : unitPair(quantity);
    return unit === "" || heading.endsWith(` ${unit}`) ? heading : `${heading} ${unit}`;
  });
  return {
    quantity: undefined,
    columns: headings,
    columnKinds: entries.map(([, { quantity }]) => quantity),
    shape: { lead, headings: entries.map(([, { heading }]) => heading), more },
    told: `${lead}: ${headings.join("; ")}${more === "" ? "" : `. ${more}`}`,
    type: entries.every(([, { quantity }]) => quantity !== undefined) ? "numbers" : "table",
    differs: entries.some(([, { quantity }]) => quantity !== undefined && differs(quantity)),
    write: (result, units) =>
      result.map((row) =>
        entries.map(([name, { write }]) => write((row as Readonly<Record<string, unknown>>)[name], units)),
      ),
  };
}

/** A single row of numbers under named columns. */
export function row<const Columns extends Readonly<Record<string, AnyColumn>>>(
  columns: Columns,
): Gives<RowOf<Columns>> {
  const of = table(columns, { lead: "One row" });
  return { ...of, write: (result, units) => of.write([result], units) };
}

/** A line of a form: a label with a number of any kind and its unit, or a text alone. */
export interface Entry {
  readonly label: string;
  readonly value: Amount | undefined;
}

/** Label, value and unit, a row each. */
export function entries(told: string): Gives<readonly Entry[]> {
  return {
    quantity: undefined,
    columns: ["label", "value", "unit"],
    columnKinds: [undefined, undefined, undefined],
    shape: { lead: "Columns", headings: ["label", "value", "unit"], more: told },
    told,
    type: "table",
    differs: true,
    write: (result, units) =>
      result.map(({ label, value }) =>
        value === undefined
          ? [label, "", ""]
          : [label, asPrinted(fromBase(value.base, value.of, units)), unitOf(value.of, units)],
      ),
  };
}
