/**
 * Converts a form to the other system of units: the typed numbers are rewritten, the units cell follows, the physics
 * stays. Pure: a host reads the form before and carries the edits out after.
 */

import type { Units } from "../../src/quantity";
import { fromBase, toBase } from "../../src/quantity";
import { formatOf } from "./formats";
import type { SheetPlan, Template } from "./sheet";
import { UNITS_NAME } from "./sheet";

export type Content = string | number | boolean;

export interface FormCell {
  readonly at: string;
  /** A formula with its =, a number, a text; "" where the cell is blank. */
  readonly content: Content;
}

/** A form as it stands on a sheet. */
export interface Form {
  readonly template: Template;
  readonly units: Units;
  /** The cells behind each name, one or a column of them. A name whose cells are gone is left out. */
  readonly cells: ReadonlyMap<string, readonly FormCell[]>;
}

export interface Edit {
  readonly at: string;
  readonly content?: string | number;
  readonly format?: string;
}

export type Conversion =
  { readonly to: Units; readonly edits: readonly Edit[] } | { readonly problem: string };

/** A number this near to a short one is meant to be it: what converting there and back leaves of rounding. */
const SHORT_DIGITS = 10;
const ROUNDING = 1e-14;

function tidy(value: number): number {
  const short = Number(value.toPrecision(SHORT_DIGITS));
  return Math.abs(short - value) <= ROUNDING * Math.abs(value) ? short : value;
}

export function convert(form: Form): Conversion {
  const to: Units = form.units === "US" ? "SI" : "US";
  const plan = form.template.plan(form.units);
  const stuck = plan.names
    .filter(({ input, quantity }) => input && quantity !== undefined)
    .flatMap(({ name }) => cellsOf(form, name).map((cell) => ({ name, cell })))
    .filter(({ name, cell }) => !isConvertible(cell.content, plan, name));
  if (stuck.length > 0) {
    const where = stuck.map(({ name, cell }) => `${cell.at} (${name})`).join(", ");
    return {
      problem: `Nothing was changed. These typed cells hold a formula or text, which has no unit to convert: ${where}. Type the number itself first.`,
    };
  }
  const edits: Edit[] = cellsOf(form, UNITS_NAME).map(({ at }) => ({ at, content: to }));
  for (const { name, quantity, input } of plan.names) {
    if (quantity === undefined) continue;
    const format = formatOf(quantity, to);
    const newFormat = format === formatOf(quantity, form.units) ? {} : { format };
    for (const { at, content } of cellsOf(form, name)) {
      const newContent =
        input && typeof content === "number"
          ? { content: tidy(fromBase(toBase(content, quantity, form.units), quantity, to)) }
          : {};
      edits.push({ at, ...newContent, ...newFormat });
    }
  }
  return { to, edits: edits.filter(({ content, format }) => content !== undefined || format !== undefined) };
}

function cellsOf(form: Form, name: string): readonly FormCell[] {
  return form.cells.get(name) ?? [];
}

/** A number, a blank, or the formula that the template itself put there, which follows the other cells. */
function isConvertible(content: Content, plan: SheetPlan, name: string): boolean {
  if (content === "" || typeof content === "number") return true;
  const planned = plan.names.find((one) => one.name === name);
  const original = plan.cells.find(({ at }) => at === planned?.at)?.content;
  return typeof original === "string" && original.startsWith("=") && shape(content) === shape(original);
}

/** A formula without its addresses, which move when rows are inserted. */
function shape(content: Content): string {
  return String(content)
    .replace(/\$?[A-Z]{1,3}\$?\d+/g, "@")
    .replace(/\s/g, "");
}
