/** A formula by its name as people type it. */

import { Refusal } from "../../src/refusal";
import { quoted } from "../cells";
import type { Family, Formula } from "../formula";
import { NAMESPACE } from "../namespace";

export interface Entry {
  readonly formula: Formula;
  readonly family: Family;
  /** Of all formulas, from 0. */
  readonly place: number;
}

const PREFIX = new RegExp(`^=?${NAMESPACE}[._]`);
/** As many letters are alike in the names of formulas of one kind. */
const ALIKE = 4;

/** Every formula in its place. */
export function entriesOf(families: readonly Family[]): Entry[] {
  return families
    .flatMap((family) => family.formulas.map((formula) => ({ formula, family })))
    .map((entry, place) => ({ ...entry, place }));
}

export function find(families: readonly Family[], typed: string): Entry {
  const entries = entriesOf(families);
  const bare = typed.toUpperCase().replace(PREFIX, "");
  const found = entries.find(({ formula }) => formula.id === bare);
  if (found !== undefined) return found;
  const near = entries.map(({ formula }) => formula.id).filter((id) => id.startsWith(bare.slice(0, ALIKE)));
  const hint = near.length > 0 ? `; did you mean ${near.join(", ")}?` : "";
  throw new Refusal("id", quoted(typed), [`no formula has this name${hint}`], "unanswerable");
}
