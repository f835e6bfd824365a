/** Does on a new sheet what the tables of a page say was typed, and compares what they say it shows. */

import type { SheetPlan, Template } from "../../taskpane/sheets/sheet";
import { computed } from "../taskpane/computed";
import type { OpenSheet } from "../taskpane/open-sheet";
import { openSheet } from "../taskpane/open-sheet";

interface Table {
  readonly headings: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

function tablesIn(text: string): Table[] {
  return [...text.matchAll(/(?:^\|.*\|\n)+/gm)].map(([table]) => {
    const rows = table
      .trim()
      .split("\n")
      .map((line) =>
        line
          .slice(1, -1)
          .split("|")
          .map((cell) => cell.trim()),
      );
    return { headings: rows[0] ?? [], rows: rows.slice(2) };
  });
}

interface Place {
  readonly name: string;
  readonly at: string;
}

/** What a person reads in each cell. */
function textsOf(sheet: OpenSheet): ReadonlyMap<string, string> {
  return new Map(computed(sheet).map(({ at, text }) => [at, text]));
}

/**
 * The named cell in the row of a label: a typed one or a computed one, since both may bear the same words. A label may
 * follow the sheet, so it is read there. A check may bear the words of a result too, and stands below it.
 */
function placeOf(plan: SheetPlan, sheet: OpenSheet, label: string, input: boolean): Place {
  const texts = textsOf(sheet);
  const [found] = plan.cells
    .filter(({ at }) => texts.get(at) === label)
    .flatMap(({ at }) => {
      const [side, line] = [at.slice(0, 1), at.slice(1)];
      const beside = plan.names
        .filter((one) => one.input === input && one.at.slice(1) === line && one.at.slice(0, 1) > side)
        .sort((a, b) => (a.at < b.at ? -1 : 1));
      return beside.slice(0, 1);
    });
  if (found === undefined) throw new Error(`no ${input ? "typed" : "computed"} row says ${label}`);
  return found;
}

/** What a person reads at a computed cell, with the unit or the second cell beside it. */
function shown(sheet: OpenSheet, { at }: Place): string[] {
  const texts = textsOf(sheet);
  const [column, row] = [at.charCodeAt(0), at.slice(1)];
  const beside = (columns: number): string =>
    texts.get(`${String.fromCharCode(column + columns)}${row}`) ?? "";
  const unit = [1, 2].map(beside).find((text) => text !== "") ?? "";
  // Behind the columns of further scenarios.
  const further = [1, 2, 3, 4].map(beside).find((text) => /^[a-z]/.test(text)) ?? "";
  return [beside(0), `${beside(0)} ${unit}`, `${beside(0)} ${further}`];
}

interface Worked {
  readonly read: number;
  readonly wrong: readonly string[];
}

/** Carries the tables of a page out on a new sheet, in their order, and tells every row that reads otherwise. */
export async function workThrough(text: string, template: Template): Promise<Worked> {
  const plan = template.plan("US");
  const sheet = await openSheet(template, "US");
  const problems: string[] = [];
  let count = 0;
  for (const { headings, rows } of tablesIn(text)) {
    const [heading] = headings;
    const list = listOf(plan, sheet, headings);
    if (list !== undefined) {
      const { read, wrong } = workList(list, sheet, rows);
      count += read;
      problems.push(...wrong);
      continue;
    }
    for (const [first = "", second = ""] of rows) {
      const label = first.replaceAll("**", "");
      if (heading === "Typed") sheet.type(placeOf(plan, sheet, label, true).name, second);
      if (heading !== "Computed") continue;
      count += 1;
      const texts = shown(sheet, placeOf(plan, sheet, label, false));
      const told = second.replace(/^“(.*)”$/, "$1");
      if (!texts.includes(told)) problems.push(`${label}: says ${told}, shows ${texts[1] ?? ""}`);
    }
  }
  return { read: count, wrong: problems };
}

interface List {
  /** Row of the headings. */
  readonly top: number;
  /** Letter of each column that the page has, and whether it is typed. */
  readonly columns: readonly { readonly letter: string; readonly isTyped: boolean }[];
  /** Where the invented list has something typed. */
  readonly invented: readonly string[];
}

/** The list of the sheet that has these headings in one row, in their order; undefined where none has. */
function listOf(plan: SheetPlan, sheet: OpenSheet, headings: readonly string[]): List | undefined {
  const rows = new Map<number, [letter: string, text: string][]>();
  for (const { at, text } of computed(sheet)) {
    const row = Number(at.slice(1));
    if (!Number.isNaN(row)) rows.set(row, [...(rows.get(row) ?? []), [at.slice(0, 1), text]]);
  }
  for (const [top, cells] of rows) {
    let from = 0;
    const letters = headings.map((heading) => {
      // A heading may be broken into two lines.
      const place = cells.findIndex(([, text], i) => i >= from && text.replace(/\s+/g, " ") === heading);
      from = place + 1;
      return cells[place]?.[0];
    });
    if (letters.length < 3 || letters.includes(undefined)) continue;
    const typed = plan.cells.filter(
      ({ at, look }) =>
        look.startsWith("input") && Number(at.slice(1)) > top && letters.includes(at.slice(0, 1)),
    );
    const first = new Set(typed.map(({ at }) => at));
    const columns = letters.map((letter = "") => ({
      letter,
      isTyped: first.has(`${letter}${String(top + 1)}`),
    }));
    if (!columns.some(({ isTyped }) => isTyped)) continue;
    return { top, columns, invented: typed.filter(({ content }) => content !== "").map(({ at }) => at) };
  }
  return undefined;
}

/** Types a list in the place of the invented one, and compares what the sheet says beside it. */
function workList({ top, columns, invented }: List, sheet: OpenSheet, rows: Table["rows"]): Worked {
  for (const at of invented) sheet.typeAt(at, "");
  const cells = rows.flatMap((row, line) =>
    columns.map(({ letter, isTyped }, i) => ({
      at: `${letter}${String(top + 1 + line)}`,
      isTyped,
      told: (row[i] ?? "").replace(/^“(.*)”$/, "$1"),
    })),
  );
  for (const { at, isTyped, told } of cells) if (isTyped) sheet.typeAt(at, told);
  const texts = textsOf(sheet);
  const compared = cells.filter(({ isTyped }) => !isTyped);
  return {
    read: compared.length,
    wrong: compared
      .filter(({ at, told }) => texts.get(at) !== told)
      .map(({ at, told }) => `${at}: says ${told}, shows ${texts.get(at) ?? ""}`),
  };
}
