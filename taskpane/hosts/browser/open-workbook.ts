/** A file as a workbook of this page, with a word on what of it could not be read. */

import { readFile } from "../../files/read";
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
  const workbook = await readFile(bytes);
  if (workbook.sheets.length === 0) throw new Error("it has no sheet that can be shown");
  const unknown = unknownFunctions(workbook);
  const leftOut = [
    ...workbook.leftOut,
    ...(unknown.length === 0
      ? []
      : [`functions that this sheet does not have (${unknown.slice(0, 5).join(", ")})`]),
  ];
  const told = leftOut.length === 0 ? "" : ` Not taken over: ${leftOut.join("; ")}.`;
  return { data: workbookData(workbook), remark: `Opened “${name}”.${told}` };
}
