/**
 * What a formula takes in one place of its argument list: how help tells it, how a cell is read for it, and what it
 * stands for when omitted. An argument that several formulas share is said once, in arguments.ts.
 */

import type { Of, Quantity, Units } from "../src/quantity";
import { differs, fromBase, plainNumber, unitPair, written } from "../src/quantity";
import { Refusal } from "../src/refusal";
import type { Reader, Typed } from "./cells";
import { wordsOf } from "./cells";
import type { TradeSizes } from "./sense";
import { isOfTheTrade, notOfTheTrade } from "./sense";

export interface Argument<Value = unknown, Optional extends boolean = boolean> {
  /** The words of the help, without unit and default. */
  readonly what: string;
  /** What follows the unit. */
  readonly detail: string;
  /** The kind of the number in the cell; none for words and texts. */
  readonly quantity: Quantity | undefined;
  /** The kinds of the numbers in its columns, for rows of several. */
  readonly columnKinds?: readonly Quantity[];
  /** One cell, a range of them, or all arguments from here on. */
  readonly takes: "cell" | "range" | "rest";
  readonly optional: Optional;
  /** What it is when omitted, as help tells it; "" where `what` tells it or it is required. */
  readonly omitted: string;
  /** Reads the cell; refuses it by `name`. */
  readonly read: (reader: Reader, name: string, cell: unknown) => Value;
}

/** A required number, which an omitted cell may still give a default to: see `orDefault` and its neighbors. */
export interface NumberArgument<Kind extends string> extends Argument<Of<Kind>, false> {
  readonly quantity: Quantity<Kind>;
}

type Optional<Value> = Argument<Value, true>;
type Required<Value> = Argument<Value, false>;

const CELL = { detail: "", quantity: undefined, takes: "cell", optional: false, omitted: "" } as const;

/** The same, where the result may give the number back as it was typed. */
export function withTyped<Kind extends string>(
  argument: NumberArgument<Kind>,
): Required<Typed<Kind>> & { readonly quantity: Quantity<Kind> } {
  return {
    ...argument,
    read: (reader, name, cell) => ({
      base: argument.read(reader, name, cell),
      typed: reader.typed(name, cell),
    }),
  };
}

/** A required length that some tube of the trade has: see sense.ts. */
export function ofTrade(argument: NumberArgument<"length">, sizes: TradeSizes): NumberArgument<"length"> {
  return {
    ...argument,
    read: (reader, name, cell) => {
      const length = argument.read(reader, name, cell);
      if (isOfTheTrade(length, sizes)) return length;
      throw notOfTheTrade(name, length, sizes, reader.units, reader.typed(name, cell) !== undefined);
    },
  };
}

/** A required number of a kind of quantity. */
export function number<Kind extends string>(
  what: string,
  quantity: Quantity<Kind>,
  detail = "",
): NumberArgument<Kind> {
  return {
    ...CELL,
    what,
    detail,
    quantity,
    read: (reader, name, cell) => reader.number(name, cell, quantity),
  };
}

/** The same, with a default that is the same physical quantity in both systems. */
export function orDefault<Kind extends string>(
  argument: NumberArgument<Kind>,
  value: NoInfer<Of<Kind>>,
): Optional<Of<Kind>> {
  return {
    ...argument,
    optional: true,
    omitted: toldInBoth(value, argument.quantity),
    read: readOr(argument, () => value),
  };
}

/** The same, with a default of its own in each system, as sizes have that are made in inches and in millimeters. */
export function orBySystem<Kind extends string>(
  argument: NumberArgument<Kind>,
  values: Readonly<Record<Units, NoInfer<Of<Kind>>>>,
): Optional<Of<Kind>> {
  const { quantity } = argument;
  return {
    ...argument,
    optional: true,
    omitted: `${written(values.US, quantity, "US")} | ${written(values.SI, quantity, "SI")}`,
    read: readOr(argument, ({ units }) => values[units]),
  };
}

/** The same, where the calculation finds the default itself; `omitted` tells how. */
export function orComputed<Kind extends string>(
  argument: NumberArgument<Kind>,
  omitted: string,
): Optional<Of<Kind> | undefined> {
  return { ...argument, optional: true, omitted, read: readOr(argument, () => undefined) };
}

/** Reads as the argument itself does, unless it is omitted. */
function readOr<Kind extends string, Default>(
  { read }: NumberArgument<Kind>,
  fallback: (reader: Reader) => Default,
): (reader: Reader, name: string, cell: unknown) => Of<Kind> | Default {
  return (reader, name, cell) => (reader.isOmitted(name, cell) ? fallback(reader) : read(reader, name, cell));
}

/** One of a list of words; `alias` knows what else they are called. */
export function word<Word extends string>(
  what: string,
  words: readonly Word[],
  fallback: NoInfer<Word>,
  alias?: (typed: string) => NoInfer<Word> | undefined,
): Optional<Word> {
  const known = wordsOf(words, alias);
  return {
    ...CELL,
    what,
    optional: true,
    read: (reader, name, cell) => reader.wordOr(name, cell, known, fallback),
  };
}

/** One of a list of words, where guessing it would hide a mistake. */
export function requiredWord<Word extends string>(what: string, words: readonly Word[]): Required<Word> {
  const known = wordsOf(words);
  return {
    ...CELL,
    what,
    read: (reader, name, cell) => {
      const typed = reader.wordOr(name, cell, known, undefined);
      if (typed !== undefined) return typed;
      throw new Refusal(name, "blank", [`needs one of ${words.join(", ")}`]);
    },
  };
}

/** The thing that a word stands for, a metal or a gas. */
export function named<Word extends string, Value, IsOptional extends boolean>(
  argument: Argument<Word, IsOptional>,
  find: (word: Word) => Value,
): Argument<Value, IsOptional> {
  return { ...argument, read: (reader, name, cell) => find(argument.read(reader, name, cell)) };
}

/** A required text; a number is taken as people would write it. */
export function text(what: string): Required<string> {
  return { ...CELL, what, read: (reader, name, cell) => reader.text(name, cell) };
}

/** The numbers of an optional range, blank cells passed over; undefined when there are none. */
export function numbers<Kind extends string>(
  what: string,
  quantity: Quantity<Kind>,
  omitted: string,
): Optional<readonly Typed<Kind>[] | undefined> {
  return {
    ...CELL,
    what,
    quantity,
    takes: "range",
    optional: true,
    omitted,
    read: (reader, name, range) => reader.numbersOr(name, range, quantity),
  };
}

/** The numbers of a required range or cell, blank cells passed over. */
export function someNumbers<Kind extends string>(
  what: string,
  quantity: Quantity<Kind>,
): Required<readonly Of<Kind>[]> {
  return {
    ...CELL,
    what,
    quantity,
    takes: "range",
    read: (reader, name, range) => {
      const found = reader.numbersOr(name, range, quantity);
      if (found !== undefined) return found.map(({ base }) => base);
      throw new Refusal(name, "blank", ["needs a number or a range of them"]);
    },
  };
}

/** A required range that the formula reads row by row. */
export function rows<Value>(
  what: string,
  read: (reader: Reader, name: string, range: unknown) => Value,
  columnKinds: readonly Quantity[] = [],
): Required<Value> {
  return { ...CELL, what, columnKinds, takes: "range", read };
}

/** All arguments from here on, each as rows of cells. */
export function rest<Value>(
  what: string,
  read: (reader: Reader, name: string, ranges: unknown) => Value,
): Required<Value> {
  return { ...CELL, what, takes: "rest", read };
}

/** The help of an argument: words, unit, detail and default. */
export function described({ what, detail, quantity, omitted }: Argument): string {
  const unit = quantity === undefined ? "" : unitPair(quantity);
  return [
    what,
    unit === "" ? "" : `, ${unit}`,
    detail === "" ? "" : `: ${detail}`,
    omitted === "" ? "" : `; ${omitted} if omitted`,
  ].join("");
}

/** A base SI value in both systems, `0.01 in (0.254 mm)`; nothing and what both write alike as a plain number. */
export function toldInBoth<Kind extends string>(base: Of<Kind>, of: Quantity<Kind>): string {
  if (base === 0 || !differs(of)) return plainNumber(fromBase(base, of, "US"));
  return `${written(base, of, "US")} (${written(base, of, "SI")})`;
}
