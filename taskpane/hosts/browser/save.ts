/** Saves the workbook as a file. */

import type { Model } from "@odoo/o-spreadsheet";

import { FORMULAS } from "../../pane/help";
import { writeFile } from "../../files/write";
import { picturesOf } from "../../pictures";
import { BLOCKS } from "../../pictures/joint";
import { snapshotOf } from "./engine-sheet";
import { namedCells } from "./named-cells";

export const XLSX_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

const TABLES = new Set(FORMULAS.filter(({ returns }) => returns !== "").map(({ id }) => id));

/** The whole workbook as the bytes of a file. */
export function fileOf(model: Model): Promise<Uint8Array> {
  const sheets = model.getters.getSheetIds().map((sheetId) => {
    const pictures = picturesOf(namedCells(model, BLOCKS, sheetId));
    return { ...snapshotOf(model, sheetId), ...(pictures === undefined ? {} : { pictures }) };
  });
  return writeFile(sheets, (id) => TABLES.has(id));
}

/** Milliseconds. */
const KEPT_FOR = 60_000;
/** What file systems do not take in a name. */
const NOT_IN_FILE_NAMES = /[\\/:*?"<>|\p{Cc}]+/gu;

/** Hands the file to the browser as a download; nothing leaves the machine. */
export async function saveWorkbook(model: Model, name: string): Promise<void> {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([new Uint8Array(await fileOf(model))], { type: XLSX_TYPE }));
  link.download = `${name.replace(NOT_IN_FILE_NAMES, " ").trim() || "Ringbead"}.xlsx`;
  link.click();
  // Not at once: some browsers read the file only after the click.
  setTimeout(() => {
    URL.revokeObjectURL(link.href);
  }, KEPT_FOR);
}
