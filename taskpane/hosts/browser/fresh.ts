/** The workbook a newcomer starts with: a computed procedure sheet and an empty one. */

import { Model } from "@odoo/o-spreadsheet";

import { procedure } from "../../sheets/procedure";
import { BrowserHost } from "./browser-host";
import { ENGINE_VERSION } from "./workbook/engine-version";
import type { WorkbookData } from "./workbook/store";

/** As data: the workbook made of it has nothing to undo. */
export async function freshWorkbook(): Promise<WorkbookData> {
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
