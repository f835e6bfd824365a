/** Rows that a person types, each with what it may hold. */

import type { Quantity, Units } from "../../src/quantity";
import { COUNT } from "../../src/quantity";
import type { Between, Row } from "./layout";

interface Typed {
  readonly label: string;
  readonly name: string;
}

interface TypedNumber extends Typed {
  readonly content: Row["content"];
  readonly quantity: Quantity;
  readonly range: Between | Readonly<Record<Units, Between>>;
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

/** Something counted, in a unit of its own that both systems share. */
export function counted(
  label: string,
  name: string,
  content: number,
  unit: string,
  range: Between,
  format = "0",
): Row {
  return typed({ label, name, content, quantity: COUNT, unit, range, format });
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
  columns?: number,
): Row {
  return {
    label,
    name,
    content,
    look: "inputText",
    unit: "",
    allowed,
    ...(columns === undefined ? {} : { columns }),
  };
}
