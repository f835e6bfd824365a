/** Which cells of a sheet wait for which, by the addresses that its formulas speak of. */

import { addressOf, placeOf } from "../../taskpane/sheets/addresses";
import type { CellPlan, SheetPlan } from "../../taskpane/sheets/sheet";
import { addressesIn } from "./excel-fake-objects";
import type { OpenSheet } from "./open-sheet";

/** Every address a formula speaks of, ranges spelled out. */
export function references(formula: string): string[] {
  const bare = formula.replace(/"[^"]*"/g, "").replaceAll("$", "");
  return [...bare.matchAll(/\b[A-Z]{1,2}\d+(?::[A-Z]{1,2}\d+)?\b/g)].flatMap(([range]) =>
    addressesIn(range).flat(),
  );
}

export function formulasOf(plan: SheetPlan): Map<string, string> {
  return new Map(
    plan.cells.flatMap(({ at, content }) =>
      typeof content === "string" && content.startsWith("=") ? [[at, content] as const] : [],
    ),
  );
}

/** The cells that a table fills, by each of them the cell of its formula. */
export function filledBy({ model }: OpenSheet, plan: SheetPlan): Map<string, string> {
  const sheetId = model.getters.getActiveSheetId();
  return new Map(
    [...formulasOf(plan).keys()].flatMap((at) => {
      const { column, row } = placeOf(at);
      const zone = model.getters.getSpreadZone({ sheetId, col: column, row });
      if (zone === undefined) return [];
      const corner = (col: number, line: number): string => addressOf({ column: col, row: line });
      return addressesIn(`${corner(zone.left, zone.top)}:${corner(zone.right, zone.bottom)}`)
        .flat()
        .filter((one) => one !== at)
        .map((one) => [one, at] as const);
    }),
  );
}

/** For each cell, all that is computed from it, at first or second hand. */
export class Graph {
  readonly #next = new Map<string, Set<string>>();

  constructor(plan: SheetPlan, filled: ReadonlyMap<string, string>) {
    const link = (from: string, to: string): void => {
      this.#next.set(from, (this.#next.get(from) ?? new Set()).add(to));
    };
    for (const [at, formula] of formulasOf(plan)) for (const one of references(formula)) link(one, at);
    for (const [at, anchor] of filled) link(anchor, at);
  }

  from(at: string): ReadonlySet<string> {
    const found = new Set<string>();
    const open = [at];
    for (let one = open.pop(); one !== undefined; one = open.pop()) {
      for (const next of this.#next.get(one) ?? []) {
        if (found.has(next)) continue;
        found.add(next);
        open.push(next);
      }
    }
    return found;
  }
}

/** Cells of the page that a person takes a number or an answer from: no checks, no labels, nothing behind the page. */
export function results(plan: SheetPlan, filled: ReadonlyMap<string, string>): CellPlan[] {
  const formulas = formulasOf(plan);
  return plan.cells.filter(
    ({ at, look }) =>
      (look === "result" || look === "text" || look === "line") && (formulas.has(at) || filled.has(at)),
  );
}
