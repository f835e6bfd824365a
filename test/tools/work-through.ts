/** Does on a new sheet what the tables of a page say was typed, and compares what they say it shows. */

import { JOINTS } from "../../taskpane/sheets/gas/inputs";
import type { SheetPlan, Template } from "../../taskpane/sheets/sheet";
import { computed } from "../taskpane/computed";
import type { OpenSheet } from "../taskpane/open-sheet";
import { openSheet } from "../taskpane/open-sheet";

interface Table {
  readonly heading: string;
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
    return { heading: rows[0]?.[0] ?? "", rows: rows.slice(2) };
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
  return [beside(0), `${beside(0)} ${unit}`];
}

/** Carries the tables of a page out on a new sheet, in their order, and tells every row that reads otherwise. */
export async function workThrough(
  text: string,
  template: Template,
): Promise<{ read: number; wrong: string[] }> {
  const plan = template.plan("US");
  const sheet = await openSheet(template, "US");
  const problems: string[] = [];
  let count = 0;
  for (const { heading, rows } of tablesIn(text)) {
    if (heading === "joints") typeList(sheet, rows);
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

/** Puts a list of joints in the place of the invented one, below the heading that the named column begins with. */
function typeList(sheet: OpenSheet, rows: Table["rows"]): void {
  const lines = Math.max(JOINTS.length, rows.length);
  for (let line = 0; line < lines; line += 1) {
    for (let column = 0; column < 4; column += 1) {
      sheet.typeBeside("list_counts", column, 1 + line, rows[line]?.[column] ?? "");
    }
  }
}
