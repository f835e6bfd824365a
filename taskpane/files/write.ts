/** Writes a workbook as the bytes of an .xlsx file, so that its numbers are there in a spreadsheet without the add-in. */

import type { Cell, CellStyle, SheetChart, WriteSheet } from "hucre/xlsx";
import { writeXlsx } from "hucre/xlsx";

import type { Place } from "../hosts/addresses";
import { addressOf, freeName, placeOf } from "../hosts/addresses";
import type { Style } from "../hosts/looks";
import { chartInk } from "../hosts/looks";
import type { Paper } from "../sheets/sheet";
import { asExcelWrites } from "./as-excel-writes";
import { fileSigns, fileValidations, rgb } from "./rules";
import type { Snapshot, SnapshotCell, SnapshotChart, Value } from "./sheet-state";
import type { Vocabulary } from "./stored";
import { quoted, storedFormula } from "./stored";

/** What a new sheet of Excel is written in. */
const FONT = { name: "Calibri", size: 11 };
/** Stands on a cell whose formula a file cannot keep. */
export const VALUE_ONLY = "The value when this file was saved: it does not follow the other cells.";
const PRINT_AREA = "_xlnm.Print_Area";
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
  const sheets = workbook.map((snapshot) => ({
    ...snapshot,
    name: names.get(snapshot.name) ?? snapshot.name,
  }));
  const bytes = await writeXlsx({
    sheets: sheets.map((snapshot) =>
      fileSheet(snapshot, { names: spokenIn(snapshot, sheets), sheets: names, givesTable }),
    ),
    // The writer's own setting of a print area leaves a sheet's name with a space in it unquoted.
    namedRanges: sheets.flatMap(({ name: sheet, names: own, print }) =>
      [...own, ...(print === undefined ? [] : [{ name: PRINT_AREA, range: print.area }])].map(
        ({ name, range }) => ({ name, range: onSheet(sheet, range), scope: sheet }),
      ),
    ),
  });
  return asExcelWrites(bytes);
}

/** What each sheet is called in the file: a name that is too long is shortened, one that Excel keeps for itself gets a number. */
function fileNames(sheets: readonly string[]): Map<string, string> {
  const names = new Map<string, string>();
  for (const sheet of sheets) names.set(sheet, freeName(sheet, [RESERVED, ...names.values()]));
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

function fileSheet(snapshot: Snapshot, vocabulary: Vocabulary): WriteSheet {
  const { name, print } = snapshot;
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
    conditionalRules: fileSigns(snapshot),
    charts: snapshot.charts.map((chart) => fileChart(chart, snapshot)),
    view: { showGridLines: snapshot.gridLines },
    ...(snapshot.frozenRows > 0 ? { freezePane: { rows: snapshot.frozenRows } } : {}),
    ...(print === undefined ? {} : { pageSetup: filePage(print.paper), headerFooter: FOOT }),
  };
}

/** A form is upright and a list lies across, as wide as the page and as many pages long as it takes. */
function filePage(paper: Paper): NonNullable<WriteSheet["pageSetup"]> {
  return {
    orientation: paper === "form" ? "portrait" : "landscape",
    fitToPage: true,
    fitToWidth: 1,
    fitToHeight: 0,
  };
}

function fileCell(cell: SnapshotCell, vocabulary: Vocabulary): Partial<Cell> {
  const style = fileStyle(cell.style, cell.format);
  const value = fileValue(cell.value);
  const stored = storedFormula(cell, vocabulary);
  if (stored !== undefined) {
    return {
      style,
      formula: stored.formula,
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
  if (typeof value !== "string" || !/^#[A-Z]/.test(value)) return value;
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

function fileChart(chart: SnapshotChart, { name: sheet, cells }: Snapshot): SheetChart {
  const corner = ({ column, row }: Place): { col: number; row: number } => ({ col: column, row });
  return {
    type: chart.kind === "bar" ? "column" : "line",
    title: chart.title,
    altText: chart.title,
    series: chart.values.map((range, i) => {
      const { start, end } = cornersOf(range);
      const letter = range.replace(/\d.*$/, "");
      return {
        name: String(cells.find(({ at }) => at === addressOf(start))?.value ?? ""),
        values: onSheet(sheet, `${letter}${String(start.row + 2)}:${letter}${String(end.row + 1)}`),
        categories: onSheet(sheet, chart.labels),
        color: chartInk(i).slice(1),
        ...(chart.kind === "line" ? { marker: { symbol: "none" as const } } : {}),
      };
    }),
    axes: { x: { title: chart.axes.x }, y: { title: chart.axes.y } },
    legend: chart.values.length > 1 ? "bottom" : false,
    anchor: { from: corner(chart.from), to: corner(chart.to) },
  };
}

function cornersOf(range: string): { start: Place; end: Place } {
  const [first = "", last = first] = range.split(":");
  return { start: placeOf(first), end: placeOf(last) };
}

function onSheet(sheet: string, range: string): string {
  return `${quoted(sheet)}!${absolute(range)}`;
}

function absolute(range: string): string {
  return range.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
}
