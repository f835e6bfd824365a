/** Rows that a person types, each with what it may hold. */

import type { Quantity, Units } from "../../src/quantity";
import { COUNT, TIME } from "../../src/quantity";
import type { Between, Row } from "./layout";

interface Typed {
  readonly label: string;
  readonly name: string;
}

interface TypedNumber extends Typed {
  readonly content: Row["content"];
  readonly quantity: Quantity;
  readonly range: Between | Readonly<Record<Units, Between>>;
  readonly above0?: number;
  readonly unit?: string;
  readonly format?: string;
}

/** A number that must be there. */
export function typed(row: TypedNumber): Row {
  return { ...row, look: "input" };
}

/** A number that may stay blank, for which a formula then has its default. */
export function optional(row: Omit<TypedNumber, "content"> & { readonly content?: Row["content"] }): Row {
  return { content: "", ...row, look: "input", mayBeBlank: true };
}

/** Seconds, none or at least one: a sheet makes a small fraction of a day of 0:30. */
export function seconds(label: string, name: string, content: number, most: number): Row {
  return typed({ label, name, content, quantity: TIME, range: [0, most], above0: 1 });
}

/** Something counted, in a unit of its own that both systems share. */
export function counted(
  label: string,
  name: string,
  content: number,
  unit: string,
  range: Between,
  more: Pick<TypedNumber, "above0" | "format"> = {},
): Row {
  return typed({ label, name, content, quantity: COUNT, unit, range, format: "0", ...more });
}

/** Words of one's own. */
export function words(label: string, name: string, content: string): Row {
  return { label, name, content, look: "inputText" };
}

/** One of a list of words. */
export function choice(
  label: string,
  name: string,
  content: string,
  allowed: readonly string[],
  more: Pick<Row, "columns" | "otherNames"> = {},
): Row {
  return {
    label,
    name,
    content,
    look: "inputText",
    unit: "",
    allowed,
    ...more,
  };
}
