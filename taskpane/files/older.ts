/**
 * A ready sheet out of a file of an earlier version: what was typed goes into today's sheet, whose formulas it was not made
 * for, and the sheet of the file stays beside it as it was saved.
 */

import type { Place } from "../hosts/addresses";
import { addressOf, placeOf } from "../hosts/addresses";
import { TEMPLATES } from "../sheets";
import type { SheetPlan } from "../sheets/sheet";
import { formName, UNITS_NAME } from "../sheets/sheet";
import type { Snapshot, Value } from "./sheet-state";

/** What cells to type in were called, and are called now. */
const RENAMED: Readonly<Record<string, string>> = { bore: "bore_typed", liquid_litres: "liquid_liters" };
/** The column of outside diameters in a list of joints: now with its heading and end, first without. */
const LIST = { now: "list_ods", then: "od" } as const;
/** Counts, outside diameters, walls and materials stand beside each other. */
const LIST_COLUMNS = [-1, 0, 1, 2] as const;

/** Today's sheet with what was typed in an older one; undefined for today's own and for any other sheet. */
export function upToDate(snapshot: Snapshot): SheetPlan | undefined {
  const names = new Map(snapshot.names.map(({ name, range }) => [name, range]));
  const contents = new Map(
    snapshot.cells.filter(({ formula }) => formula === undefined).map(({ at, value }) => [at, value]),
  );
  const template = TEMPLATES.find(({ id }) => names.has(formName(id)));
  const units = contents.get(names.get(UNITS_NAME) ?? "");
  if (template === undefined || (units !== "US" && units !== "SI")) return undefined;
  const plan = template.plan(units);
  if (plan.names.every(({ name }) => names.has(name))) return undefined;
  const typed = new Map<string, Value>();
  for (const [then, range] of names) {
    const now = plan.names.find(({ name, input }) => input && name === (RENAMED[then] ?? then));
    const content = contents.get(range);
    if (now !== undefined && content !== undefined && !now.at.includes(":")) typed.set(now.at, content);
  }
  for (const [at, content] of carriedList(plan, names, contents)) typed.set(at, content);
  return {
    ...plan,
    cells: plan.cells.map((cell) => {
      const content = typed.get(cell.at);
      return content === undefined
        ? cell
        : { ...cell, content: typeof content === "number" ? content : String(content) };
    }),
  };
}

/** The lines of a list, in today's list from its first line on; what is left of today's example is emptied. */
function carriedList(
  plan: SheetPlan,
  names: ReadonlyMap<string, string>,
  contents: ReadonlyMap<string, Value>,
): Map<string, Value> {
  const now = plan.names
    .find(({ name }) => name === LIST.now)
    ?.at.split(":")
    .map(placeOf);
  const then = (names.get(LIST.now) ?? names.get(LIST.then))?.split(":").map(placeOf);
  const carried = new Map<string, Value>();
  const [first, last] = now ?? [];
  const [from, to] = then ?? [];
  if (first === undefined || last === undefined || from === undefined || to === undefined) return carried;
  const skipped = names.has(LIST.now) ? 1 : 0;
  const lines = to.row - from.row + 1 - 2 * skipped;
  const room = last.row - first.row - 1;
  if (lines > room) throw new Error(`its list has more lines than a list of today, ${String(room)}`);
  const beside = ({ column, row }: Place, columns: number, rows: number): string =>
    addressOf({ column: column + columns, row: row + rows });
  for (let line = 0; line < room; line += 1) {
    for (const columns of LIST_COLUMNS) {
      const content = line < lines ? (contents.get(beside(from, columns, line + skipped)) ?? "") : "";
      carried.set(beside(first, columns, line + 1), content);
    }
    if (line >= lines) carried.set(beside(first, LIST_COLUMNS[0] - 1, line + 1), "");
  }
  return carried;
}

/** The sheet with its answers as they were saved, and no formula. */
export function asSaved(snapshot: Snapshot): Snapshot {
  return {
    ...snapshot,
    name: `${snapshot.name.slice(0, 22)} as saved`,
    cells: snapshot.cells.map(({ at, value, style, format }) => ({
      at,
      value,
      style,
      ...(format === undefined ? {} : { format }),
    })),
    names: [],
    lists: [],
    ranges: [],
  };
}
