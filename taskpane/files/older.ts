/**
 * A ready sheet out of a file of an earlier version: what was typed goes into today's sheet, whose formulas it was not made
 * for, and the sheet of the file stays beside it as it was saved.
 */

import type { Place } from "../sheets/addresses";
import { addressOf, placeOf } from "../sheets/addresses";
import { LOOKS } from "../hosts/looks";
import { TEMPLATES } from "../sheets";
import { addressesIn } from "../sheets/watched";
import type { SheetPlan } from "../sheets/sheet";
import { formName, SIGNS, UNITS_NAME } from "../sheets/sheet";
import type { Snapshot, Value } from "./sheet-state";

/** What cells to type in were called, and are called now. */
const RENAMED: Readonly<Record<string, string>> = { bore: "bore_typed", liquid_litres: "liquid_liters" };
/** The column of outside diameters in a list of joints: now with its heading and end, first without. */
const LIST = { now: "list_ods", then: "od" } as const;
/** Of a cell that is for reading only. */
const PAPER = "#FFFFFF";
/** Counts, outside diameters, walls and materials stand beside each other. */
const LIST_COLUMNS = [-1, 0, 1, 2] as const;

/** Of a cycle plan that knew no scenarios: heads were typed for one operator, and are now those of the shop. */
const HEADS = { then: "heads", now: "shop_heads", operators: "operators" } as const;
/** What an older sheet had no place for is left blank, not as in today's example: what-ifs and the list of changeovers. */
const NEW_AND_BLANK = /_[bcd]$|^scenario|^joint_/;

export interface UpToDate {
  readonly plan: SheetPlan;
  /** Labels of typed cells that the file does not have, so that they hold what a new sheet begins with. */
  readonly fromExample: readonly string[];
}

/** Today's sheet with what was typed in an older one; undefined for today's own and for any other sheet. */
export function upToDate(snapshot: Snapshot): UpToDate | undefined {
  const names = new Map(snapshot.names.map(({ name, range }) => [name, range]));
  // Of a formula that a person typed its answer: what it reads stands elsewhere today.
  const contents = new Map(snapshot.cells.map(({ at, value }) => [at, value]));
  const computed = new Set(snapshot.cells.filter(({ formula }) => formula !== undefined).map(({ at }) => at));
  const template = TEMPLATES.find(({ id }) => names.has(formName(id)));
  const units = contents.get(names.get(UNITS_NAME) ?? "");
  if (template === undefined || (units !== "US" && units !== "SI")) return undefined;
  const plan = template.plan(units);
  if (plan.names.every(({ name }) => names.has(name))) return undefined;
  const typed = new Map<string, Value>();
  for (const [then, range] of names) {
    const now = plan.names.find(({ name, input }) => input && name === (RENAMED[then] ?? then));
    if (now === undefined || now.at.includes(":")) continue;
    // A cell that is renamed was computed where nothing was typed; a blank one need not be in the file at all.
    const isDefault = then !== now.name && computed.has(range);
    typed.set(now.at, isDefault ? "" : (contents.get(range) ?? ""));
  }
  for (const [at, content] of carriedList(plan, names, contents)) typed.set(at, content);
  for (const [at, content] of carriedShop(plan, names, contents)) typed.set(at, content);
  const cells = plan.cells.map((cell) => {
    const content = typed.get(cell.at);
    return content === undefined
      ? cell
      : { ...cell, content: typeof content === "number" ? content : String(content) };
  });
  return { plan: { ...plan, cells }, fromExample: untouched(plan, typed) };
}

/** Heads of the shop from those of one operator, and blank what-ifs, where the file is a cycle plan without scenarios. */
function carriedShop(
  plan: SheetPlan,
  names: ReadonlyMap<string, string>,
  contents: ReadonlyMap<string, Value>,
): Map<string, Value> {
  const carried = new Map<string, Value>();
  const heads = plan.names.find(({ name }) => name === HEADS.now);
  if (heads === undefined || names.has(HEADS.now)) return carried;
  const [each, operators] = [HEADS.then, HEADS.operators].map((name) => contents.get(names.get(name) ?? ""));
  carried.set(heads.at, typeof each === "number" && typeof operators === "number" ? each * operators : "");
  const isTyped = new Set(plan.cells.flatMap(({ at, look }) => (look.startsWith("input") ? [at] : [])));
  const columns = plan.lists
    .filter(({ at }) => at.includes(":"))
    .map(({ at }) => ({ name: "joint_metals", at }));
  const blank = [...plan.names, ...columns].filter(
    ({ name }) => NEW_AND_BLANK.test(name) && !names.has(name),
  );
  for (const at of blank.flatMap((one) => addressesIn(one.at))) if (isTyped.has(at)) carried.set(at, "");
  return carried;
}

/** Typed cells that got nothing from the file and are not blank in a new sheet. */
function untouched({ names, cells }: SheetPlan, typed: ReadonlyMap<string, Value>): string[] {
  return names.flatMap(({ name, at, input }) => {
    const cell = cells.find((one) => one.at === at);
    if (!input || at.includes(":") || typed.has(at) || cell === undefined || cell.content === "") return [];
    const { column, row } = placeOf(at);
    const left = addressOf({ column: column - 1, row });
    const label = cells.find((one) => one.at === left && one.look === "label")?.content;
    return [`${String(label ?? name)} (${String(cell.content)})`];
  });
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

/**
 * The sheet with its answers as they were saved, and no formula. Nothing on it looks as if it could be typed in, and no
 * verdict of then reads as one of now.
 */
export function asSaved(snapshot: Snapshot): Snapshot {
  return {
    ...snapshot,
    name: `${snapshot.name.slice(0, 22)} as saved`,
    cells: snapshot.cells.map(({ at, value, style, format }) => ({
      at,
      value:
        typeof value === "string" && Object.values(SIGNS).some((sign) => value.startsWith(sign))
          ? `As saved: ${value}`
          : value,
      style: style.fill === LOOKS.input.fill ? { ...style, fill: PAPER } : style,
      ...(format === undefined ? {} : { format }),
    })),
    signs: [],
    names: [],
    lists: [],
    ranges: [],
  };
}
