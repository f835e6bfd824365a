/** Writes a workbook as the bytes of an .xlsx file, so that its numbers are there in a spreadsheet without the add-in. */

import type { Cell, CellStyle, WriteSheet } from "hucre/xlsx";
import { writeXlsx } from "hucre/xlsx";

import { freeName, placeOf } from "../sheets/addresses";
import type { Style } from "../hosts/looks";
import type { Pages } from "../sheets/pages";
import { MARGINS } from "../sheets/pages";
import type { Paper } from "../sheets/sheet";
import { liesAcross } from "../sheets/sheet";
import { asExcelWrites } from "./as-excel-writes";
import type { PointNames } from "./charts";
import { fileChart, pointNames } from "./charts";
import { printedPages } from "./pages";
import type { PlacedPictures } from "./pictures-room";
import { placedPictures } from "./pictures-room";
import { withWrappedRemarks } from "./remarks";
import { cornersOf, onSheet } from "./ranges";
import { fileColors, fileValidations, rgb } from "./rules";
import type { Snapshot, SnapshotCell, Value } from "./sheet-state";
import type { Vocabulary } from "./stored";
import { quoted, storedFormula } from "./stored";
import { LONGEST_FORMULA, plainText, storedCellText, storedText } from "./text";

/** What a new sheet of Excel is written in. */
const FONT = { name: "Calibri", size: 11 };
/** Stands on a cell whose formula a file cannot keep. */
export const VALUE_ONLY = "The value when this file was saved: it does not follow the other cells.";
const PRINT_AREA = "_xlnm.Print_Area";
const PRINT_TITLES = "_xlnm.Print_Titles";
/** A name that Excel keeps for a sheet of its own. */
const RESERVED = "History";
/** Sheet and day at the left, page of pages at the right, in Excel's own codes. */
const FOOT = { oddFooter: "&L&A · &D&RPage &P of &N" };
/** Errors that a file knows; any other is the general one. */
const ERRORS = ["#NULL!", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#N/A"];

export async function writeFile(
  workbook: readonly Snapshot[],
  givesTable: Vocabulary["givesTable"],
): Promise<Uint8Array> {
  const names = fileNames(workbook.map(({ name }) => name));
  const sheets = workbook.map((snapshot) =>
    withPicturesRoom({
      ...withWrappedRemarks(snapshot),
      name: names.get(snapshot.name) ?? snapshot.name,
    }),
  );
  const named = new Map(
    sheets.flatMap((snapshot, i) =>
      snapshot.charts.flatMap((chart, c): [string, PointNames][] => {
        const names = pointNames(chart, snapshot);
        return names === undefined ? [] : [[namesKey(i, c), names]];
      }),
    ),
  );
  const bytes = await writeXlsx({
    sheets: sheets.map((snapshot, i) => ({
      ...fileSheet(snapshot, { names: spokenIn(snapshot, sheets), sheets: names, givesTable }),
      charts: snapshot.charts.map((chart, c) =>
        fileChart(chart, snapshot, named.has(namesKey(i, c)) ? namesKey(i, c) : ""),
      ),
      ...(snapshot.placed === undefined ? {} : { textBoxes: [placeholder(i)] }),
    })),
    // The writer's own setting of a print area leaves a sheet's name with a space in it unquoted.
    namedRanges: sheets.flatMap((snapshot) =>
      [...snapshot.names, ...printNames(snapshot)].map(({ name, range }) => ({
        name,
        range: onSheet(snapshot.name, range),
        scope: snapshot.name,
      })),
    ),
  });
  const drawn = sheets.flatMap(({ placed }, i): [string, string][] =>
    placed === undefined ? [] : [[placeholder(i).text, placed.anchors]],
  );
  return asExcelWrites(bytes, { drawn: new Map(drawn), named });
}

/** A sheet of the file, and the pictures on it. */
type FileSnapshot = Snapshot & { readonly placed?: PlacedPictures };

function withPicturesRoom(sheet: Snapshot): FileSnapshot {
  const placed = placedPictures(sheet);
  if (placed === undefined) return sheet;
  const { print } = sheet;
  const area =
    placed.area === undefined || print === undefined ? {} : { print: { ...print, area: placed.area } };
  return { ...sheet, ...area, placed };
}

/** Stands in a series for the names of its points. */
function namesKey(sheet: number, chart: number): string {
  return `names of chart ${String(sheet + 1)}.${String(chart + 1)}`;
}

/** Stands in a sheet's drawing where its pictures come: the writer knows text boxes, and no other shapes. */
function placeholder(sheet: number): NonNullable<WriteSheet["textBoxes"]>[number] {
  return { text: `pictures of sheet ${String(sheet + 1)}`, anchor: { from: { row: 0, col: 0 } } };
}

/** Names by which a file tells what is printed, and which rows every page begins with. */
function printNames(snapshot: Snapshot): { readonly name: string; readonly range: string }[] {
  const { print } = snapshot;
  if (print === undefined) return [];
  const heading = printedPages(snapshot)?.heading;
  const titles = heading === undefined ? [] : [{ name: PRINT_TITLES, range: wholeRow(heading) }];
  return [{ name: PRINT_AREA, range: print.area }, ...titles];
}

function wholeRow(row: number): string {
  return `$${String(row + 1)}:$${String(row + 1)}`;
}

/** What each sheet is called in the file: a name that is too long is shortened, one that Excel keeps for itself gets a number. */
function fileNames(sheets: readonly string[]): Map<string, string> {
  const names = new Map<string, string>();
  for (const sheet of sheets) names.set(sheet, freeName(plainText(sheet), [RESERVED, ...names.values()]));
  return names;
}

/** A sheet's own names as they are, those of another sheet with its name before them. */
function spokenIn(here: Snapshot, sheets: readonly Snapshot[]): Map<string, string> {
  return new Map(
    sheets.flatMap((sheet) =>
      sheet.names.map(({ name, spoken }) => [
        spoken,
        sheet === here ? name : `${quoted(sheet.name)}!${name}`,
      ]),
    ),
  );
}

function fileSheet(snapshot: FileSnapshot, vocabulary: Vocabulary): WriteSheet {
  const { name, print, placed } = snapshot;
  const pages = printedPages(snapshot, placed?.area === undefined ? [] : [placed.first]);
  return {
    name,
    columns: snapshot.widths.map((width) => ({ width })),
    rowDefs: new Map(snapshot.heights.map((height, row) => [row, { height }])),
    cells: new Map(
      snapshot.cells.map((cell) => {
        const { column, row } = placeOf(cell.at);
        return [`${String(row)},${String(column)}`, fileCell(cell, vocabulary)];
      }),
    ),
    merges: snapshot.merges.map((range) => {
      const { start, end } = cornersOf(range);
      return { startRow: start.row, startCol: start.column, endRow: end.row, endCol: end.column };
    }),
    dataValidations: fileValidations(snapshot),
    conditionalRules: fileColors(snapshot),
    view: { showGridLines: snapshot.gridLines },
    ...frozen(snapshot),
    ...(snapshot.filter === undefined ? {} : { autoFilter: { range: snapshot.filter } }),
    ...(print === undefined || pages === undefined
      ? {}
      : {
          pageSetup: filePage(print.paper, pages),
          headerFooter: FOOT,
          // The file tells the row that a page ends with.
          rowBreaks: pages.starts.map((row) => row - 1),
        }),
  };
}

function frozen({ frozenRows: rows, frozenColumns: columns }: Snapshot): Pick<WriteSheet, "freezePane"> {
  const freezePane = { ...(rows > 0 ? { rows } : {}), ...(columns > 0 ? { columns } : {}) };
  return rows + columns > 0 ? { freezePane } : {};
}

/** A form is upright and a list lies across, as wide as the page and as many pages long as it takes, or one. */
function filePage(paper: Paper, { scale, side }: Pages): NonNullable<WriteSheet["pageSetup"]> {
  return {
    orientation: liesAcross(paper) ? "landscape" : "portrait",
    fitToPage: true,
    fitToWidth: 1,
    fitToHeight: paper === "page" ? 1 : 0,
    scale,
    margins: { ...MARGINS, left: side, right: side },
  };
}

function fileCell(cell: SnapshotCell, vocabulary: Vocabulary): Partial<Cell> {
  const style = fileStyle(cell.style, cell.format);
  const value = fileValue(cell.value);
  const stored = storedFormula(cell, vocabulary);
  if (stored !== undefined && stored.formula.length <= LONGEST_FORMULA) {
    return {
      style,
      formula: storedText(stored.formula),
      formulaResult: value,
      ...(stored.ours ? keptAnswer(cell, value) : {}),
      ...(stored.array ? { formulaType: "array", formulaRef: cell.at, formulaDynamic: true } : {}),
    };
  }
  const isComputed = cell.formula !== undefined;
  return {
    style,
    value: value === "" ? null : value,
    ...(isComputed ? { comment: { text: VALUE_ONLY } } : {}),
  };
}

/**
 * Some spreadsheets keep only numbers and texts that are not empty, and compute any other formula again, which they cannot
 * do with ours. So an empty answer is kept as a space, an unbreakable one since others are trimmed off, and a truth value
 * as the number that it counts as.
 */
function keptAnswer({ style, format }: SnapshotCell, value: Value): Partial<Cell> {
  if (value === "") return { formulaResult: SPACE };
  if (typeof value !== "boolean") return {};
  return { formulaResult: Number(value), style: fileStyle(style, format ?? TRUTH) };
}
export const SPACE = "\u00a0";
export const TRUTH = '"TRUE";"TRUE";"FALSE"';

function fileValue(value: Value): Value {
  if (typeof value !== "string") return value;
  if (!/^#[A-Z]/.test(value)) return storedCellText(value);
  return ERRORS.includes(value) ? value : "#VALUE!";
}

function fileStyle(style: Style, format: string | undefined): CellStyle {
  const { ink, fill, align, underline, size } = style;
  return {
    font: {
      ...FONT,
      ...(style.bold === true ? { bold: true } : {}),
      ...(style.italic === true ? { italic: true } : {}),
      ...(size === undefined ? {} : { size }),
      ...(ink === undefined ? {} : { color: rgb(ink) }),
    },
    ...(fill === undefined ? {} : { fill: { type: "pattern", pattern: "solid", fgColor: rgb(fill) } }),
    ...(underline === undefined ? {} : { border: { bottom: { style: "thin", color: rgb(underline) } } }),
    alignment: {
      vertical: "center",
      ...(align === undefined ? {} : { horizontal: align }),
      ...(style.wrap === true ? { wrapText: true } : {}),
    },
    ...(format === undefined ? {} : { numFmt: format }),
  };
}
