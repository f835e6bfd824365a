/** Saves the sheet being shown as a file. */

import type { Model } from "@odoo/o-spreadsheet";

import { FORMULAS } from "../../pane/help";
import { writeFile } from "../../files/write";
import { snapshotOf } from "./engine-sheet";

export const XLSX_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

const TABLES = new Set(FORMULAS.filter(({ returns }) => returns !== "").map(({ id }) => id));

/** The file's bytes. */
export function fileOf(model: Model): Promise<Uint8Array> {
  return writeFile(snapshotOf(model), (id) => TABLES.has(id));
}

/** Milliseconds. */
const KEPT_FOR = 60_000;

/** Hands the file to the browser as a download; nothing leaves the machine. */
export async function saveSheet(model: Model): Promise<void> {
  const name = model.getters.getSheetName(model.getters.getActiveSheetId());
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([new Uint8Array(await fileOf(model))], { type: XLSX_TYPE }));
  link.download = `${name}.xlsx`;
  link.click();
  // Not at once: some browsers read the file only after the click.
  setTimeout(() => {
    URL.revokeObjectURL(link.href);
  }, KEPT_FOR);
}
