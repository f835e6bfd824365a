/** A workbook saved as a file and opened again is the same workbook, cell by cell. */

import { Model } from "@odoo/o-spreadsheet";

import type { Units } from "../../src/quantity";
import { opened } from "../../taskpane/hosts/browser/open-workbook";
import { fileOf } from "../../taskpane/hosts/browser/save";
import { snapshotOf } from "../../taskpane/hosts/browser/engine-sheet";
import { BrowserHost } from "../../taskpane/hosts/browser/browser-host";
import type { Snapshot } from "../../taskpane/files/sheet-state";
import { TEMPLATES } from "../../taskpane/sheets";
import type { Template } from "../../taskpane/sheets/sheet";
import { openSheet } from "./open-sheet";

async function reopened(model: Model): Promise<{ readonly model: Model; readonly remark: string }> {
  const { data, remark } = await opened(await fileOf(model), "line.xlsx");
  return { model: new Model(data), remark };
}

/** Without the engine's own marks on names, which count the sheets of a workbook. */
function comparable(model: Model, sheet: string): Snapshot {
  const { getters } = model;
  const id = getters.getSheetIds().find((one) => getters.getSheetName(one) === sheet) ?? "";
  const { cells, names, ...rest } = snapshotOf(model, id);
  return {
    ...rest,
    cells: cells.map((cell) => ({
      ...cell,
      ...(cell.formula === undefined ? {} : { formula: unmarked(cell.formula) }),
      ...(cell.spill === undefined
        ? {}
        : { spill: { ...cell.spill, formula: unmarked(cell.spill.formula) } }),
    })),
    names: names.map((one) => ({ ...one, spoken: unmarked(one.spoken) })),
  };
}

function unmarked(formula: string): string {
  return formula.replace(/__\d+/g, "");
}

const SHEETS = TEMPLATES.flatMap((template) =>
  (["US", "SI"] as Units[]).map((units): [string, Template, Units] => [
    `${template.title}, ${units}`,
    template,
    units,
  ]),
);

describe.each(SHEETS)("%s", (_, template, units) => {
  test("value, formula, format, look, name, list, range, sign, chart and print area of every cell", async () => {
    const open = await openSheet(template, units);
    const again = await reopened(open.model);
    expect(again.remark).toBe("Opened “line.xlsx”.");
    const [before, after] = [open.model, again.model].map((model) => comparable(model, template.title));
    expect(after?.cells).toEqual(before?.cells);
    expect(after).toEqual(before);
  });

  test("it is the same form: it converts as the first one does", async () => {
    const open = await openSheet(template, units);
    const again = await reopened(open.model);
    const form = await new BrowserHost(again.model).readForm();
    expect(form?.template.id).toBe(template.id);
    expect(form?.units).toBe(units);
    expect([...(form?.cells.keys() ?? [])].sort()).toEqual([...(await open.form()).cells.keys()].sort());
  });
});
