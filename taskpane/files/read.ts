/**
 * Reads an .xlsx file: our own of any version, also when another spreadsheet has saved it since, with all that makes a
 * sheet work; any other file as far as a sheet of ours can hold it, with a word on what was left out.
 */

import type { Cell, CellStyle, ConditionalRule, DataValidation, Sheet, Workbook } from "hucre/xlsx";
import { readXlsx } from "hucre/xlsx";

import { addressOf, placeOf } from "../sheets/addresses";
import type { Style } from "../hosts/looks";
import { GRAYED } from "../hosts/looks";
import type { GrayedPlan, Paper } from "../sheets/sheet";
import { SIGNS } from "../sheets/sheet";
import { isListName } from "../sheets/pages";
import { chartOf } from "./charts";
import { withoutRoom } from "./pictures-room";
import { plainRange, rangeFrom } from "./ranges";
import { withoutWrappedRemarks } from "./remarks";
import { hasForeignShapes, unreadIn } from "./unread";
import type { Snapshot, SnapshotCell, SnapshotRange } from "./sheet-state";
import type { SpokenNames } from "./spoken";
import { NAME_MARK, spokenFormula, wholeTables } from "./spoken";
import { unstoredText } from "./text";
import { SPACE, TRUTH, VALUE_ONLY } from "./write";

export interface ReadWorkbook {
  readonly sheets: readonly Snapshot[];
  /** What the file has and the sheets do not, each thing once. */
  readonly leftOut: readonly string[];
}

const PRINT_AREA = /^(?:_xlnm\.)?Print_Area$/i;
/** A4 and Letter hold far less; a file can say that its empty cells go on to the last row there is. */
const MOST_ROWS = 20_000;
const MOST_COLUMNS = 200;

export async function readFile(bytes: Uint8Array): Promise<ReadWorkbook> {
  const workbook = await readXlsx(bytes, { readStyles: true });
  const leftOut = new Set<string>(hasForeignShapes(bytes) ? ["shapes and text boxes"] : []);
  const names = spokenNames(workbook);
  const sheets = workbook.sheets
    .filter((sheet) => {
      if (sheet.hidden === true || sheet.veryHidden === true) leftOut.add("hidden sheets");
      return sheet.hidden !== true && sheet.veryHidden !== true;
    })
    .map((sheet) => snapshotFrom(sheet, workbook, names, leftOut));
  return { sheets, leftOut: [...leftOut] };
}

/** Every name of a cell or range, spoken with the number of its sheet. */
function spokenNames({ sheets, namedRanges = [] }: Workbook): SpokenNames {
  return new Map(
    sheets.map(({ name: sheet }, i) => {
      const own = namedRanges.filter((one) => one.scope === sheet && !PRINT_AREA.test(one.name));
      return [
        sheet.toLowerCase(),
        new Map(own.map(({ name }) => [name.toLowerCase(), `${name}${NAME_MARK}${String(i + 1)}`])),
      ];
    }),
  );
}

function snapshotFrom(sheet: Sheet, workbook: Workbook, names: SpokenNames, leftOut: Set<string>): Snapshot {
  const cells = cellsOf(sheet, names, leftOut);
  const own = names.get(sheet.name.toLowerCase());
  const scoped = (workbook.namedRanges ?? []).filter(({ scope }) => scope === sheet.name);
  if ((workbook.namedRanges ?? []).some(({ scope }) => scope === undefined))
    leftOut.add("names of the whole workbook");
  const printed = scoped.find(({ name }) => PRINT_AREA.test(name))?.range ?? sheet.pageSetup?.printArea;
  const area = printed === undefined ? undefined : plainRange(printed);
  for (const kind of unreadIn(sheet)) leftOut.add(kind);
  const named = scoped.flatMap(({ name, range }) => {
    const spoken = own?.get(name.toLowerCase());
    const plain = plainRange(range);
    return spoken === undefined || plain === undefined ? [] : [{ name, spoken, range: plain }];
  });
  return withoutWrappedRemarks({
    name: sheet.name,
    widths: (sheet.columns ?? []).map(({ width }) => width ?? 0),
    heights: heightsOf(sheet),
    cells,
    merges: (sheet.merges ?? []).map(({ startRow, startCol, endRow, endCol }) =>
      rangeFrom({ column: startCol, row: startRow }, { column: endCol, row: endRow }),
    ),
    names: named,
    ...validationsOf(sheet.dataValidations ?? [], leftOut),
    ...colorsOf(sheet.conditionalRules ?? [], leftOut),
    charts: (sheet.charts ?? []).flatMap((chart) => chartOf(chart, leftOut)),
    frozenRows: sheet.freezePane?.rows ?? 0,
    frozenColumns: sheet.freezePane?.columns ?? 0,
    ...(sheet.autoFilter === undefined ? {} : { filter: sheet.autoFilter.range.replaceAll("$", "") }),
    gridLines: sheet.view?.showGridLines !== false,
    ...(area === undefined
      ? {}
      : { print: { area: withoutRoom(area, named), paper: paperOf(sheet.pageSetup, scoped) } }),
  });
}

function paperOf(setup: Sheet["pageSetup"], names: readonly { readonly name: string }[]): Paper {
  if (setup?.orientation === "landscape") return names.some(({ name }) => isListName(name)) ? "list" : "wide";
  return setup?.fitToHeight === 1 ? "page" : "form";
}

function cellsOf(sheet: Sheet, names: SpokenNames, leftOut: Set<string>): SnapshotCell[] {
  const all = [...(sheet.cells ?? new Map<string, Cell>())].map(([key, cell]) => {
    const [row = 0, column = 0] = key.split(",").map(Number);
    return { at: addressOf({ column, row }), row, column, cell };
  });
  // A merged cell is one cell: files repeat its look in the places it lies over.
  const covered = coveredBy(sheet.merges ?? []);
  const inside = all
    .filter(({ row, column }) => row < MOST_ROWS && column < MOST_COLUMNS)
    .map((one) => (covered.has(one.at) ? { ...one, cell: onlyLine(one.cell) } : one))
    .filter(({ at, cell }) => !covered.has(at) || cell.style?.border?.bottom !== undefined);
  if (inside.some(({ cell }) => cell.comment?.text === VALUE_ONLY)) {
    leftOut.add("formulas that the file could only keep as values");
  }
  if (all.some(({ row, column }) => row >= MOST_ROWS || column >= MOST_COLUMNS))
    leftOut.add(`cells below row ${String(MOST_ROWS)} or right of column ${String(MOST_COLUMNS)}`);
  const formulas = new Map<string, string>();
  const filled = new Set<string>();
  for (const { at, cell } of inside) {
    if (cell.formula === undefined || cell.formula === "") continue;
    formulas.set(at, spokenFormula(unstoredText(cell.formula), sheet.name, names));
    // The answer of one formula over many cells: the others hold a copy of their value.
    for (const other of addressesIn(cell.formulaRef ?? at))
      if (other !== at && cell.formulaType === "array") filled.add(other);
  }
  const whole = wholeTables(formulas);
  return inside.map(({ at, cell }) => {
    const formula = whole.get(at);
    const isFilled = filled.has(at) || (formulas.has(at) && formula === undefined);
    const { style, numFmt } = styleFrom(cell.style);
    return {
      at,
      // Of a formula its answer when the file was saved.
      value: valueFrom(cell),
      ...(isFilled ? { isFilled } : {}),
      ...(formula === undefined || filled.has(at) ? {} : { formula }),
      style,
      ...(numFmt === undefined || NO_FORMATS.has(numFmt) ? {} : { format: numFmt }),
    };
  });
}

function onlyLine({ style }: Cell): Cell {
  const line = style?.border?.bottom;
  return {
    value: null,
    type: "empty",
    ...(line === undefined ? {} : { style: { border: { bottom: line } } }),
  };
}

function coveredBy(merges: NonNullable<Sheet["merges"]>): ReadonlySet<string> {
  const covered = new Set<string>();
  for (const { startRow: row, startCol: column, endRow, endCol } of merges) {
    const all = addressesIn(rangeFrom({ column, row }, { column: endCol, row: endRow }));
    for (const at of all.slice(1)) covered.add(at);
  }
  return covered;
}

/** What a cell without a format of its own has in a file. */
const NO_FORMATS: ReadonlySet<string> = new Set(["General", TRUTH]);

function valueFrom({ value }: Cell): SnapshotCell["value"] {
  if (value instanceof Date) return value.toISOString().slice(0, 10);
  return value === null || value === SPACE ? "" : value;
}

function styleFrom(style: CellStyle = {}): { readonly style: Style; readonly numFmt: string | undefined } {
  const { font, fill, alignment, border, numFmt } = style;
  const ink = colorOf(font?.color);
  const ground = fill?.type === "pattern" && fill.pattern === "solid" ? colorOf(fill.fgColor) : undefined;
  const line = border?.bottom === undefined ? undefined : (colorOf(border.bottom.color) ?? "#000000");
  const side = alignment?.horizontal;
  return {
    numFmt,
    style: {
      ...(font?.bold === true ? { bold: true } : {}),
      ...(font?.italic === true ? { italic: true } : {}),
      ...(font?.size === undefined || font.size === FONT_SIZE ? {} : { size: font.size }),
      ...(ink === undefined ? {} : { ink }),
      ...(ground === undefined ? {} : { fill: ground }),
      ...(side === "left" || side === "center" || side === "right" ? { align: side } : {}),
      ...(alignment?.wrapText === true ? { wrap: true } : {}),
      ...(line === undefined ? {} : { underline: line }),
    },
  };
}
/** What a new sheet is written in; the grid's own size. */
const FONT_SIZE = 11;

function colorOf(color: { readonly rgb?: string } | undefined): string | undefined {
  const digits = color?.rgb?.slice(-6);
  return digits === undefined || !/^[\dA-F]{6}$/i.test(digits) ? undefined : `#${digits.toUpperCase()}`;
}

function validationsOf(
  rules: readonly DataValidation[],
  leftOut: Set<string>,
): Pick<Snapshot, "lists" | "ranges"> {
  const lists: Snapshot["lists"][number][] = [];
  const ranges: SnapshotRange[] = [];
  for (const rule of rules) {
    const bounds = boundsOf(rule);
    for (const range of rule.range.split(" ")) {
      if (rule.type === "list" && rule.values !== undefined) lists.push({ range, allowed: rule.values });
      else if (bounds === undefined)
        leftOut.add("rules for typed cells that are neither a list nor a range of numbers");
      else {
        const { errorTitle: title = "", errorMessage: message = "" } = rule;
        ranges.push({ range, ...bounds, title, message, isText: rule.type === "custom" });
      }
    }
  }
  return { lists, ranges };
}

/** The ends of a range of numbers, also where a formula compares them (ranges.ts). */
function boundsOf(rule: DataValidation): { readonly least: number; readonly most: number } | undefined {
  const ends =
    rule.type === "decimal" && rule.operator === "between"
      ? [rule.formula1, rule.formula2]
      : /^IF\(ISNUMBER\(SEARCH\("\/",.*>=([-+.\dE]+),.*<=([-+.\dE]+)\)/i.exec(rule.formula1 ?? "")?.slice(1);
  const [least = NaN, most = NaN] = (ends ?? []).map(Number);
  return Number.isFinite(least) && Number.isFinite(most) ? { least, most } : undefined;
}

function colorsOf(
  rules: readonly ConditionalRule[],
  leftOut: Set<string>,
): Pick<Snapshot, "signs" | "grayed"> {
  const signs = new Set<string>();
  const grayed: GrayedPlan[] = [];
  for (const rule of rules) {
    const formula = unstoredText(String(rule.formula ?? ""));
    const isSign = Object.values(SIGNS).some((sign) => formula.endsWith(`="${sign}"`));
    const isGray = colorOf(rule.style?.fill?.type === "pattern" ? rule.style.fill.bgColor : undefined);
    if (isSign) for (const range of rule.range.split(" ")) signs.add(range);
    else if (rule.type === "expression" && isGray === GRAYED.fill) {
      for (const at of rule.range.split(" ")) grayed.push({ at, formula: `=${formula}` });
    } else leftOut.add("colors that follow the values");
  }
  return { signs: [...signs], grayed };
}

function heightsOf({ rowDefs }: Sheet): number[] {
  const known = [...(rowDefs ?? [])].filter(([row]) => row < MOST_ROWS);
  const rows = known.reduce((most, [row]) => Math.max(most, row + 1), 0);
  const heights = new Map(known.map(([row, { height }]) => [row, height]));
  return Array.from({ length: rows }, (_, row) => heights.get(row) ?? 0);
}

function addressesIn(range: string): string[] {
  const [first = "", last = first] = range.replaceAll("$", "").split(":");
  const [start, end] = [placeOf(first), placeOf(last)];
  const addresses: string[] = [];
  for (let row = start.row; row <= Math.min(end.row, MOST_ROWS); row += 1) {
    for (let column = start.column; column <= end.column; column += 1)
      addresses.push(addressOf({ column, row }));
  }
  return addresses;
}
