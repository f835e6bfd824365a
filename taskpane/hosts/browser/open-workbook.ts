/** A file as a workbook of this page, with a word on what of it could not be read. */

import { Model } from "@odoo/o-spreadsheet";

import { asSaved, upToDate } from "../../files/older";
import { readFile } from "../../files/read";
import type { SheetPlan } from "../../sheets/sheet";
import { BrowserHost } from "./browser-host";
import { unknownFunctions, workbookData } from "./workbook-data";
import type { WorkbookData } from "./workbook/store";

/** Far above any workbook of ours; a browser would stand still over a larger one. */
const LARGEST = 30_000_000;

export interface Opened {
  readonly data: WorkbookData;
  readonly remark: string;
}

export async function readWorkbook(file: File): Promise<Opened> {
  if (file.size > LARGEST) throw new Error("it is larger than 30 MB");
  return opened(new Uint8Array(await file.arrayBuffer()), file.name);
}

export async function opened(bytes: Uint8Array, name: string): Promise<Opened> {
  // A zip archive begins so; all else, .xls and .csv too, would fail with less of a reason.
  if (bytes[0] !== 0x50 || bytes[1] !== 0x4b) throw new Error("it is no .xlsx file");
  const read = await readFile(bytes);
  if (read.sheets.length === 0) throw new Error("it has no sheet that can be shown");
  const older = read.sheets.flatMap((sheet) => {
    const today = upToDate(sheet);
    return today === undefined ? [] : [{ sheet, ...today }];
  });
  const workbook = {
    ...read,
    sheets: read.sheets.map((sheet) => (older.some((one) => one.sheet === sheet) ? asSaved(sheet) : sheet)),
  };
  const unknown = unknownFunctions(workbook);
  const leftOut = [
    ...workbook.leftOut,
    ...(unknown.length === 0
      ? []
      : [`functions that this sheet does not have (${unknown.slice(0, 5).join(", ")})`]),
  ];
  const told = leftOut.length === 0 ? "" : ` Not taken over: ${leftOut.join("; ")}.`;
  const anew = older.map(({ sheet }) => `“${sheet.name}”`).join(", ");
  const upgraded =
    older.length === 0
      ? ""
      : ` ${anew} is of an earlier version, or not whole: what was typed stands in today's sheet, which computes it anew; beside it is the sheet as it was saved.${exampleWords(older.flatMap(({ fromExample }) => fromExample))}`;
  const data = await withSheets(
    workbookData(workbook),
    older.map(({ plan }) => plan),
  );
  return { data, remark: `Opened “${name}”.${upgraded}${told}` };
}

function exampleWords(labels: readonly string[]): string {
  return labels.length === 0 ? "" : ` Not in the file, so as a new sheet has it: ${labels.join(", ")}.`;
}

/** The workbook with some more ready sheets before the others. */
async function withSheets(data: WorkbookData, plans: readonly SheetPlan[]): Promise<WorkbookData> {
  if (plans.length === 0) return data;
  const model = new Model(data);
  const host = new BrowserHost(model);
  for (const plan of plans) await host.insert(plan);
  return model.exportData();
}
