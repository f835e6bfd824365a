/**
 * Converts a form to the other system of units: the typed numbers are rewritten, the units cell follows, the physics
 * stays. Pure: a host reads the form before and carries the edits out after.
 */

import type { Units } from "../../src/quantity";
import { fromBase, toBase } from "../../src/quantity";
import { formatOf } from "./formats";
import type { SheetPlan, Template } from "./sheet";
import { UNITS_NAME } from "./sheet";

/** A form as it stands on a sheet. */
export interface Form {
  readonly template: Template;
  readonly units: Units;
  /** What stands in each named cell: a formula with its =, a number, a text. A name whose cell is gone is left out. */
  readonly contents: ReadonlyMap<string, string | number | boolean>;
  /** Where each named cell lies now. */
  readonly places: ReadonlyMap<string, string>;
}

export interface Edit {
  readonly name: string;
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
  const stuck = plan.names.filter(({ name, input, quantity }) => {
    const content = form.contents.get(name);
    return input && quantity !== undefined && !isConvertible(content, plan, name);
  });
  if (stuck.length > 0) {
    const where = stuck.map(({ name }) => `${form.places.get(name) ?? "?"} (${name})`).join(", ");
    return {
      problem: `Nothing was changed. These typed cells hold a formula or text, which has no unit to convert: ${where}. Type the number itself first.`,
    };
  }
  const edits: Edit[] = [{ name: UNITS_NAME, content: to }];
  for (const { name, quantity, input } of plan.names) {
    if (quantity === undefined || !form.contents.has(name)) continue;
    const content = form.contents.get(name);
    const before = formatOf(quantity, form.units);
    const after = formatOf(quantity, to);
    edits.push({
      name,
      ...(input && typeof content === "number"
        ? {
            content: tidy(fromBase(toBase(content, quantity, form.units), quantity, to)),
          }
        : {}),
      ...(before === after ? {} : { format: after }),
    });
  }
  return { to, edits: edits.filter(({ content, format }) => content !== undefined || format !== undefined) };
}

/** A number, a blank, or the formula that the template itself put there, which follows the other cells. */
function isConvertible(
  content: string | number | boolean | undefined,
  plan: SheetPlan,
  name: string,
): boolean {
  if (content === undefined || content === "" || typeof content === "number") return true;
  const planned = plan.names.find((one) => one.name === name);
  const original = plan.cells.find(({ at }) => at === planned?.at)?.content;
  return typeof original === "string" && original.startsWith("=") && shape(content) === shape(original);
}

/** A formula without its addresses, which move when rows are inserted. */
function shape(content: string | number | boolean): string {
  return String(content)
    .replace(/\$?[A-Z]{1,3}\$?\d+/g, "@")
    .replace(/\s/g, "");
}
