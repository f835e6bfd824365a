/**
 * Six things the file writer cannot be told. The program named in the properties: text answers of formulas that a
 * spreadsheet does not know are kept only in files said to be Excel's. No computing on opening, which would lose every
 * answer where the add-in is missing. Errors of formulas as errors, where the writer makes them text. Points of a
 * curve without a line between them. Names of such points out of cells. And shapes of a drawing. For the last two it is given
 * something to be replaced.
 */

import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

import type { PointNames } from "./charts";
import { MARK, POINT } from "./charts";
import { withPointNames } from "./point-names";

/** Build of the calculation engine of today's Excel: with an older one it would compute everything on opening. */
const CALCULATION = '<calcPr calcId="191029"/>';
/** The version that Excel has called itself since 2016; the schema demands two parts. */
const VERSION = "<AppVersion>16.0300</AppVersion>";
const TEXT_ERROR =
  /t="str"(>(?:<f>|<f [^>]*>)[^<]*<\/f><v>#(?:NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A)<\/v>)/g;

const SHEET = /^xl\/worksheets\/sheet\d+\.xml$/;

const CHART = /^xl\/charts\/chart\d+\.xml$/;
const LINE_OF_POINTS = new RegExp(
  `<a:ln>(?:(?!</a:ln>).)*</a:ln>(</c:spPr><c:marker><c:symbol val="(?:${POINT}|${MARK})"/>)`,
  "g",
);

const DRAWING = /^xl\/drawings\/drawing\d+\.xml$/;
const TEXT_BOX =
  /<xdr:twoCellAnchor>(?:(?!<\/xdr:twoCellAnchor>).)*<a:t>([^<]*)<\/a:t>.*?<\/xdr:twoCellAnchor>/gs;

const CHANGES: Record<string, (xml: string) => string> = {
  "docProps/app.xml": (xml) =>
    replaced(
      replaced(xml, /<Application>[^<]*<\/Application>/, "<Application>Microsoft Excel</Application>"),
      /<\/Properties>/,
      `${VERSION}</Properties>`,
    ),
  "xl/workbook.xml": (xml) => replaced(xml, /<calcPr[^>]*\/>/, CALCULATION),
};

export interface Replacing {
  /** By the words of the text box in its place, what comes into a drawing. */
  readonly drawn: ReadonlyMap<string, string>;
  /** By what stands between the parts of a label, the names of a series' points. */
  readonly named: ReadonlyMap<string, PointNames>;
}

export function asExcelWrites(file: Uint8Array, { drawn, named }: Replacing): Uint8Array {
  const parts = unzipSync(file);
  const placed = new Set<string>();
  for (const [path, change] of Object.entries(CHANGES)) {
    const part = parts[path];
    if (part === undefined) throw new Error(`the file has no ${path}`);
    parts[path] = strToU8(change(strFromU8(part)));
  }
  for (const [path, part] of Object.entries(parts)) {
    if (CHART.test(path)) {
      const chart = strFromU8(part).replace(LINE_OF_POINTS, "<a:ln><a:noFill/></a:ln>$1");
      parts[path] = strToU8(withPointNames(chart, named));
    }
    if (SHEET.test(path)) parts[path] = strToU8(strFromU8(part).replace(TEXT_ERROR, 't="e"$1'));
    if (DRAWING.test(path)) {
      const drawing = strFromU8(part).replace(TEXT_BOX, (box, words: string) => {
        placed.add(words);
        return drawn.get(words) ?? box;
      });
      parts[path] = strToU8(drawing);
    }
  }
  for (const words of drawn.keys()) if (!placed.has(words)) throw new Error(`no drawing has the ${words}`);
  return zipSync(parts);
}

function replaced(xml: string, old: RegExp, wanted: string): string {
  if (!old.test(xml)) throw new Error(`nothing to put ${wanted} in the place of`);
  return xml.replace(old, wanted);
}
