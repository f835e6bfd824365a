/** The pane's sentences about cells of the ready sheets: each has its cell, and says what the sheet shows there. */

import { TEMPLATES } from "../../taskpane/sheets";
import { NOTES } from "../../taskpane/sheets/notes";
import { columnsIn, formCellWords } from "../../taskpane/pane/form-cell";
import type { SelectedCell } from "../../taskpane/hosts/host";
import { addressOf } from "../../taskpane/sheets/addresses";
import { openSheet } from "./open-sheet";

const SYSTEMS = ["US", "SI"] as const;

describe.each(TEMPLATES)("$title", (template) => {
  const { id } = template;
  test.each(SYSTEMS)("in %s each note has a computed cell, and each check a note", (units) => {
    const { names } = template.plan(units);
    for (const name of Object.keys(NOTES[id])) {
      expect(names.find((one) => one.name === name)).toMatchObject({ input: false });
    }
    const checks = names.filter(({ name }) => name.startsWith("check_")).map(({ name }) => name);
    expect(Object.keys(NOTES[id])).toEqual(expect.arrayContaining(checks));
  });
});

test("letters in braces are columns", () => {
  expect(columnsIn("in this row {E}° ahead, {E} and {F}; {e} {12}")).toEqual(["E", "F"]);
});

async function wordsAt(
  name: string,
  columns: number,
  rows: number,
): Promise<ReturnType<typeof formCellWords>> {
  const [template] = TEMPLATES;
  if (template === undefined) throw new Error("no sheets");
  const open = await openSheet(template, "US");
  const sheetId = open.model.getters.getActiveSheetId();
  const zone = open.model.getters.getNamedRanges().find((one) => one.name.split("__")[0] === name)
    ?.range.zone;
  const [col, row] = [(zone?.left ?? NaN) + columns, (zone?.top ?? NaN) + rows];
  const cell = open.model.getters.getCell({ sheetId, col, row });
  const selected: SelectedCell = {
    address: addressOf({ column: col, row }),
    formula:
      cell?.isFormula === true
        ? open.model.getters.getCellText({ sheetId, col, row }, { showFormula: true })
        : "",
    shown: "",
    message: "",
    units: "US",
  };
  return formCellWords(selected, await open.form());
}

test("a table's note holds to its last cell and no further", async () => {
  expect((await wordsAt("sectors", 7, 4)).note).toMatch(/^Mean current is what melts/);
  expect((await wordsAt("sectors", 7, 5)).note).not.toMatch(/^Mean current is what melts/);
  expect((await wordsAt("sectors", 8, 4)).note).toBe("");
});

test("a typed cell is for typing; a native formula tells the labels of what it reads", async () => {
  expect(await wordsAt("wall", 0, 0)).toMatchObject({ kind: "is for typing", reads: [] });
  const { kind, reads } = await wordsAt("heat", 0, 0);
  expect(kind).toBe("");
  expect(reads.map(({ label }) => label)).toEqual([...new Set(reads.map(({ label }) => label))]);
});
