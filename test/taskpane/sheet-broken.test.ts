/** What a person breaks: computed cells typed over, tables blocked, rows deleted. The summary never says that all holds. */

import { TEMPLATES } from "../../taskpane/sheets";
import type { SheetPlan } from "../../taskpane/sheets/sheet";
import { filledBy, formulasOf, results } from "./graph";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

describe.each(TEMPLATES.map((template) => [template.id, template] as const))("%s", (_, template) => {
  const plan = template.plan("US");
  const summaryAt = plan.names.find(({ name }) => name === "summary")?.at ?? "";
  let sheet: OpenSheet;
  beforeAll(async () => {
    sheet = await openSheet(template, "US");
  });

  test("each computed cell typed over with a number, behind the page too", () => {
    const passed: string[] = [];
    let before: [at: string, formula: string][] = [];
    for (const [at, formula] of formulasOf(plan)) {
      if (at === summaryAt) continue;
      sheet.typeAllAt([...before, [at, "2"]]);
      if (sheet.holds()) passed.push(`${at} ${formula}`);
      before = [[at, formula]];
    }
    sheet.typeAllAt(before);
    expect(passed).toEqual([]);
    expect(sheet.holds()).toBe(true);
  });

  test("each table with a cell in it typed over is not shown, and the summary tells", () => {
    const filled = filledBy(sheet, plan);
    const passed: string[] = [];
    let tables = 0;
    for (const anchor of new Set(filled.values())) {
      const inside = [...filled].filter(([, from]) => from === anchor).map(([at]) => at);
      tables += 1;
      for (const at of new Set([inside[0], inside[Math.floor(inside.length / 2)], inside.at(-1)])) {
        if (at === undefined) continue;
        sheet.typeAt(at, "2");
        expect([anchor, sheet.at(anchor)]).toEqual([anchor, "#SPILL!"]);
        if (sheet.holds()) passed.push(`${at} of ${anchor}`);
        sheet.typeAt(at, "");
      }
    }
    expect(tables).toBeGreaterThan(0);
    expect(passed).toEqual([]);
    expect(sheet.holds()).toBe(true);
  });

  test("each row deleted: the summary tells, or every result is what it was", () => {
    const before = numbers(sheet, plan);
    const passed: string[] = [];
    for (const row of rowsToDelete(plan)) {
      sheet.deleteRow(row);
      const lost = !names(sheet).has("summary");
      if (!lost && sheet.holds()) {
        const after = numbers(sheet, plan);
        const changed = [...before].filter(([name, value]) => after.get(name) !== value);
        if (changed.length > 0)
          passed.push(`row ${String(row)}: ${changed.map(([name]) => name).join(", ")}`);
      }
      sheet.undo();
    }
    expect(passed).toEqual([]);
    expect(sheet.holds()).toBe(true);
  });
});

test.each([
  [
    "the checks on the page",
    (plan: SheetPlan) => rowsOf(plan, "verdict").filter((row) => row < listTop(plan)),
  ],
  [
    "all that is behind the page",
    (plan: SheetPlan) => rowsOf(plan, "note").filter((row) => row > pageEnd(plan)),
  ],
])("%s, all deleted at once", async (_, rowsIn) => {
  for (const template of TEMPLATES) {
    const sheet = await openSheet(template, "US");
    const rows = rowsIn(template.plan("US"));
    expect(rows.length).toBeGreaterThan(5);
    sheet.deleteRows(rows);
    expect([template.id, sheet.holds()]).toEqual([template.id, false]);
  }
});

function rowsOf(plan: SheetPlan, look: string): number[] {
  const rows = plan.cells.filter((cell) => cell.look === look).map(({ at }) => Number(at.replace(/\D+/, "")));
  return [...new Set(rows)];
}

function pageEnd(plan: SheetPlan): number {
  return Number(/\d+$/.exec(plan.print.area)?.[0]);
}

/** Where a list with remarks begins, which look like checks. */
function listTop(plan: SheetPlan): number {
  const list = plan.names.find(({ name }) => name === "list_remark" || name === "list_counts");
  return list === undefined ? Infinity : Number(/\d+/.exec(list.at)?.[0]);
}

/** What is named on the page and computed. */
function numbers(sheet: OpenSheet, plan: SheetPlan): Map<string, unknown> {
  const there = names(sheet);
  const computed = new Set(results(plan, new Map()).map(({ at }) => at));
  return new Map(
    plan.names
      .filter(({ at }) => computed.has(at))
      .map(({ name }) => [name, there.has(name) ? sheet.value(name) : "gone"]),
  );
}

function names({ model }: OpenSheet): Set<string> {
  const sheetId = model.getters.getActiveSheetId();
  return new Set(
    model.getters
      .getNamedRanges()
      .filter(({ range }) => range.sheetId === sheetId && range.invalidXc === undefined)
      .map(({ name }) => name.split("__")[0] ?? name),
  );
}

/**
 * Every row of the page; of the tables behind it and of a list's blank lines, whose rows are alike, the first, the last and
 * some between. The lines of a list are for a person to delete: gas-list.test.ts has what remains.
 */
function rowsToDelete(plan: SheetPlan): number[] {
  const looks = new Map<number, Set<string>>();
  for (const { at, look, content } of plan.cells) {
    const row = Number(at.replace(/\D+/, ""));
    const kind =
      look === "input" || look === "inputText" ? `${look} ${content === "" ? "blank" : "typed"}` : look;
    looks.set(row, (looks.get(row) ?? new Set()).add(kind));
  }
  const kindOf = (row: number): string => [...(looks.get(row) ?? [])].sort().join();
  const page = pageEnd(plan);
  const isLine = (row: number): boolean =>
    kindOf(row).includes("input typed") && /verdict|remark/.test(kindOf(row));
  const isBlankLine = (row: number): boolean =>
    kindOf(row).includes("input blank") && /verdict|remark/.test(kindOf(row));
  const alike = (row: number): boolean =>
    (row > page || isBlankLine(row)) && kindOf(row) === kindOf(row - 1) && kindOf(row) === kindOf(row + 1);
  const all = Array.from({ length: Math.max(...looks.keys()) }, (_, i) => i + 1);
  return all.filter((row) => !isLine(row) && !(alike(row) && row % 16 !== 0));
}
