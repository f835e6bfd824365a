/**
 * Three things the file writer cannot be told. The program named in the properties: text answers of formulas that a
 * spreadsheet does not know are kept only in files said to be Excel's. No computing on opening, which would lose every
 * answer where the add-in is missing. And errors of formulas as errors, where the writer makes them text.
 */

import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

/** Build of the calculation engine of today's Excel: with an older one it would compute everything on opening. */
const CALCULATION = '<calcPr calcId="191029"/>';
const TEXT_ERROR =
  /t="str"(>(?:<f>|<f [^>]*>)[^<]*<\/f><v>#(?:NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A)<\/v>)/g;

const SHEET = /^xl\/worksheets\/sheet\d+\.xml$/;

const CHANGES: Record<string, (xml: string) => string> = {
  "docProps/app.xml": (xml) =>
    replaced(xml, /<Application>[^<]*<\/Application>/, "<Application>Microsoft Excel</Application>"),
  "xl/workbook.xml": (xml) => replaced(xml, /<calcPr[^>]*\/>/, CALCULATION),
};

export function asExcelWrites(file: Uint8Array): Uint8Array {
  const parts = unzipSync(file);
  for (const [path, change] of Object.entries(CHANGES)) {
    const part = parts[path];
    if (part === undefined) throw new Error(`the file has no ${path}`);
    parts[path] = strToU8(change(strFromU8(part)));
  }
  for (const [path, part] of Object.entries(parts)) {
    if (SHEET.test(path)) parts[path] = strToU8(strFromU8(part).replace(TEXT_ERROR, 't="e"$1'));
  }
  return zipSync(parts);
}

function replaced(xml: string, old: RegExp, wanted: string): string {
  if (!old.test(xml)) throw new Error(`nothing to put ${wanted} in the place of`);
  return xml.replace(old, wanted);
}
