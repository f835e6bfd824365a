/**
 * Formulas out of a file in the form that our sheets speak them: the opposite of stored.ts. A table of ours, which a file
 * keeps as a look-up in each of its cells, is one formula again.
 */

import type { Place } from "../sheets/addresses";
import { addressOf, placeOf } from "../sheets/addresses";

/** This and the sheet's number make a name of one sheet one of the whole workbook, as the browser's engine has them. */
export const NAME_MARK = "__";

const TEXT_OR_NAME = /"(?:[^"]|"")*"|'(?:[^']|'')+'!|[A-Za-z_][\w.]*(?:!|\()?/g;
const STORED_OURS = /^_xldudf_BEAD_/i;
const PREFIX = /^_xl(?:fn|ws|udf)\.(?:_xlws\.)?/i;

/** The file's names as our formulas speak of them: by sheet and name, both in small letters. */
export type SpokenNames = ReadonlyMap<string, ReadonlyMap<string, string>>;

/** The formula with its =. */
export function spokenFormula(stored: string, sheet: string, names: SpokenNames): string {
  let elsewhere: string | undefined;
  const text = stored.replace(TEXT_OR_NAME, (token) => {
    if (token.startsWith('"')) return token;
    if (token.endsWith("!")) {
      elsewhere = token.slice(0, -1).replace(/^'|'$/g, "").replaceAll("''", "'").toLowerCase();
      return token;
    }
    const of = elsewhere ?? sheet.toLowerCase();
    elsewhere = undefined;
    if (STORED_OURS.test(token)) return token.replace(STORED_OURS, "BEAD.");
    if (token.endsWith("(")) return token.replace(PREFIX, "");
    return names.get(of)?.get(token.toLowerCase()) ?? token.replace(PREFIX, "");
  });
  return `=${withoutSheets(text, names)}`;
}

/** A name of another sheet says by itself which sheet it is of. */
function withoutSheets(text: string, names: SpokenNames): string {
  const all = new Set([...names.values()].flatMap((own) => [...own.values()]));
  return text.replace(/(?:'(?:[^']|'')+'|[A-Za-z_][\w.]*)!([A-Za-z_]\w*)/g, (whole, name: string) =>
    all.has(name) ? name : whole,
  );
}

/** A cell of a table of ours as a file keeps it: the table's formula, its first cell, and the cell's place in it. */
interface InTable {
  readonly at: string;
  readonly table: string;
  readonly from: Place;
  readonly column: number;
}

const IN_TABLE = /^=INDEX\((BEAD\.[A-Z_]+\(.*\)),ROWS\(\$?([A-Z]+)\$(\d+):\$?([A-Z]+)(\d+)\),(\d+)\)$/s;

function inTable(at: string, formula: string): InTable | undefined {
  const parts = IN_TABLE.exec(formula);
  if (parts === null) return undefined;
  const [, table = "", letters = "", first = "", lettersHere = "", here = "", column = ""] = parts;
  const place = placeOf(at);
  if (letters !== lettersHere || Number(here) !== place.row + 1 || !isOneCall(table)) return undefined;
  const from = { column: placeOf(`${letters}1`).column, row: Number(first) - 1 };
  return place.column - from.column + 1 === Number(column)
    ? { at, table, from, column: Number(column) }
    : undefined;
}

/** Whether the last bracket closes the first. */
function isOneCall(call: string): boolean {
  let depth = 0;
  const marks = call.replace(/"(?:[^"]|"")*"/g, "").match(/[()]/g) ?? [];
  return marks.every((mark, i) => {
    depth += mark === "(" ? 1 : -1;
    return depth > 0 || i === marks.length - 1;
  });
}

/** What each cell holds when tables are whole again: undefined where a table's first cell fills it. */
export function wholeTables(formulas: ReadonlyMap<string, string>): Map<string, string | undefined> {
  const tables = new Map<string, InTable[]>();
  for (const [at, formula] of formulas) {
    const cell = inTable(at, formula);
    if (cell === undefined) continue;
    const key = `${addressOf(cell.from)} ${cell.table}`;
    tables.set(key, [...(tables.get(key) ?? []), cell]);
  }
  const whole = new Map<string, string | undefined>(formulas);
  for (const at of filledRuns(formulas)) whole.set(at, undefined);
  for (const cells of tables.values()) {
    if (!isBlock(cells)) continue;
    for (const { at } of cells) whole.set(at, undefined);
    const [{ from, table }] = cells as [InTable];
    whole.set(addressOf(from), `=${table}`);
  }
  return whole;
}

/**
 * One native answer down a column, which a file keeps as the same formula on each of its lines: from the first line on it
 * fills the others.
 */
function filledRuns(formulas: ReadonlyMap<string, string>): string[] {
  const filled: string[] = [];
  for (const [at, formula] of formulas) {
    const { column, row } = placeOf(at);
    const lines = [...formula.matchAll(/\$?[A-Z]{1,3}\$?(\d+):\$?[A-Z]{1,3}\$?(\d+)/g)].map(
      ([, first, last]) => [Number(first) - 1, Number(last) - 1] as const,
    );
    const isRun = lines.some(([first, last]) => {
      const run = Array.from({ length: last - first + 1 }, (_, i) => addressOf({ column, row: first + i }));
      return row > first && row <= last && run.every((one) => formulas.get(one) === formula);
    });
    if (isRun) filled.push(at);
  }
  return filled;
}

/** Whether the cells fill a block from the table's first cell on. A row that was inserted into it leaves a hole. */
function isBlock(cells: readonly InTable[]): boolean {
  const [first] = cells;
  if (first === undefined) return false;
  const places = cells.map(({ at }) => placeOf(at));
  const columns = Math.max(...cells.map(({ column }) => column));
  const rows = Math.max(...places.map(({ row }) => row)) - first.from.row + 1;
  return places.every(({ row }) => row >= first.from.row) && cells.length === columns * rows;
}
