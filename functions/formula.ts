/**
 * A formula is one typed record. From it follow the reading and refusing of cells, the functions that a host calls, its
 * metadata, the help, the reference and what a ready sheet may write. `calc` gets each argument as a number of its own
 * kind and must return what `gives` says, so that no unit can be taken for another.
 */

import type { Units } from "../src/quantity";
import { differs } from "../src/quantity";
import type { Answer } from "./answer";
import { answer, answerAlike } from "./answer";
import type { Argument } from "./argument";
import type { Reader } from "./cells";
import type { Gives } from "./gives";

export type Arguments = Readonly<Record<string, Argument>>;

/** What `calc` gets of each argument. */
export type Given<Args extends Arguments> = {
  readonly [Name in keyof Args]: Args[Name] extends Argument<infer Value> ? Value : never;
};

/** What is told of a formula, apart from how it is called. */
interface Facts {
  /** What it gives, without the unit, which follows from `gives`. */
  readonly meaning: string;
  /** What follows the unit. */
  readonly detail?: string;
  /** The equation in LaTeX, a line each. */
  readonly tex?: readonly string[];
  /** The equation in one line, where the LaTeX does not say it all or there is none. */
  readonly equation?: string;
  /** Each symbol of the equation and what it is. */
  readonly where?: Readonly<Record<string, string>>;
  readonly validity: string;
  readonly assumptions?: string;
  /** Works are cited by key: "[rosenthal-1946]". */
  readonly source: string;
  /** What nothing outside the project confirms. */
  readonly unconfirmed?: string;
  /** Why no value from outside is held against its result, for a formula that has no such check. */
  readonly unchecked?: string;
  /** Ids of the formulas beside it. */
  readonly related: readonly string[];
  /** Everyday words that someone might look for. */
  readonly synonyms?: readonly string[];
  /** Name of a figure of the help. */
  readonly figure?: string;
  /** Arguments as typed, null for an omitted one, and what they give. */
  readonly example: { readonly args: readonly ExampleCell[]; readonly gives: string };
}

export type ExampleCell = Constant | readonly (readonly Constant[])[];
type Constant = number | string | boolean | null;

interface FormulaRecord<Id extends string, Args extends Arguments, Result> extends Facts {
  readonly id: Id;
  readonly args: Args;
  readonly gives: Gives<Result>;
  /** Base SI in and out; `units` only for sizes that each system makes for itself, 1/16 in beside 1.6 mm. */
  readonly calc: (given: Given<Args>, units: Units) => NoInfer<Result>;
}

/** A formula as a host calls it and as help tells it. */
export interface Formula<Id extends string = string, Args extends Arguments = Arguments> extends Facts {
  readonly id: Id;
  readonly args: Args;
  readonly gives: Pick<Gives<unknown>, "quantity" | "columns" | "columnKinds" | "shape" | "told" | "type">;
  /** Whether its last argument is `units`. */
  readonly takesUnits: boolean;
  /** The answer for cells as a host hands them over, or the host's own error. */
  readonly call: (...cells: unknown[]) => Answer;
}

export function formula<const Id extends string, const Args extends Arguments, Result>(
  record: FormulaRecord<Id, Args, Result>,
): Formula<Id, Args> {
  const { calc, gives, args } = record;
  const readers = Object.entries<Argument>(args).map(([name, { read }]) => ({ name, read }));
  const takesUnits =
    gives.differs ||
    Object.values<Argument>(args).some(({ quantity, columnKinds = [] }) =>
      [quantity, ...columnKinds].some((kind) => kind !== undefined && differs(kind)),
    );
  const body = (reader: Reader, cells: readonly unknown[]): Answer => {
    const given: Record<string, unknown> = {};
    let place = 0;
    for (const { name, read } of readers) {
      given[name] = read(reader, name, cells[place]);
      place += 1;
    }
    return gives.write(calc(given as Given<Args>, reader.units), reader.units);
  };
  return {
    ...record,
    takesUnits,
    call: takesUnits
      ? (...cells) => answer(cells[readers.length], body, cells)
      : (...cells) => answerAlike(body, cells),
  };
}

/** Formulas that stand together in the reference, in the order of the job. */
export interface Family<Formulas extends readonly Formula[] = readonly Formula[]> {
  readonly title: string;
  readonly formulas: Formulas;
}

export function family<const Formulas extends readonly Formula[]>(
  title: string,
  formulas: Formulas,
): Family<Formulas> {
  return { title, formulas };
}
