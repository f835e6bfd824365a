/**
 * Calls of our formulas as a sheet writes them, by the names of their arguments. The records stand behind it, for the
 * compiler only: a renamed id, a misspelt or missing argument does not compile, and no calculation comes along.
 */

import type { Records } from "../../functions/catalogue";
import { NAMESPACE } from "../../functions/namespace";
import help from "../../generated/help.json";
import { UNITS_READ_NAME } from "./sheet";

export type FormulaId = keyof Records;
type ArgumentsOf<Id extends FormulaId> = Records[Id]["args"];
type OptionalNames<Args> = {
  [Name in keyof Args]: Args[Name] extends { readonly optional: true } ? Name : never;
}[keyof Args];

/** A reference such as `{wall}`, a native formula, or a number as typed. */
export type Written = string | number;

/** What a call gives for each argument; optional ones may be omitted. `units` always follows the sheet. */
export type Cells<Id extends FormulaId> = Readonly<
  Record<Exclude<keyof ArgumentsOf<Id>, OptionalNames<ArgumentsOf<Id>>>, Written> &
    Partial<Record<OptionalNames<ArgumentsOf<Id>>, Written>>
>;

const parameters = new Map(help.formulas.map(({ id, parameters: all }) => [id, all.map(({ name }) => name)]));

/** `BEAD.STANDOFF({wall},{allowance?},{sheet_units})` */
export function call<Id extends FormulaId>(id: Id, cells: Cells<Id>): string {
  return `${NAMESPACE}.${id}(${argumentsOf(id, cells).join(",")})`;
}

/** The sentence with which the formula refuses the same arguments; "" if it answers. */
export function refusal<Id extends FormulaId>(id: Id, cells: Cells<Id>): string {
  const reason = `${NAMESPACE}.REASON(${[`"${id}"`, ...argumentsOf(id, cells)].join(",")})`;
  // One call, not one to compare and one to show: no sentence has a bar in it.
  return `SUBSTITUTE(SUBSTITUTE("|"&${reason}&"|","|fine|",""),"|","")`;
}

function argumentsOf<Id extends FormulaId>(id: Id, cells: Cells<Id>): string[] {
  const names = parameters.get(id) ?? [];
  const written = cells as Readonly<Record<string, Written | undefined>>;
  const all = names.map((name) => (name === "units" ? `{${UNITS_READ_NAME}}` : String(written[name] ?? "")));
  while (all.at(-1) === "") all.pop();
  return all;
}
