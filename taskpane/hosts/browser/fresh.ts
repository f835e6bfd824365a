/** The workbook a newcomer starts with: a computed procedure sheet and an empty one. */

import { Model } from "@odoo/o-spreadsheet";

import { procedure } from "../../sheets/procedure";
import { BrowserHost } from "./browser-host";
import { FRESH } from "./fresh-data";
import { ENGINE_VERSION } from "./workbook/engine-version";
import type { WorkbookData } from "./workbook/store";

/** As data: the workbook made of it has nothing to undo. */
export function freshWorkbook(): Promise<WorkbookData> {
  return FRESH === "" ? writtenWorkbook() : Promise.resolve(JSON.parse(FRESH) as WorkbookData);
}

/** The same, written cell by cell. */
export async function writtenWorkbook(): Promise<WorkbookData> {
  const model = emptyWorkbook();
  await new BrowserHost(model).insert(procedure.plan("US"));
  return model.exportData();
}

export function emptyWorkbook(): Model {
  return new Model({
    version: ENGINE_VERSION,
    sheets: [{ id: "scratch", name: "Scratch", colNumber: 26, rowNumber: 100 }],
  });
}
