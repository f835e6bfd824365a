/** A workbook out of a file in the engine's own form, so that opening it is one step and leaves nothing to undo. */

import { DEFAULT_LOCALE, helpers, registries } from "@odoo/o-spreadsheet";

import type { ReadWorkbook } from "../../files/read";
import type { Snapshot, SnapshotCell, SnapshotChart } from "../../files/sheet-state";
import { NAME_MARK } from "../../files/spoken";
import { placeOf } from "../../sheets/addresses";
import type { Style } from "../looks";
import { LOOKS } from "../looks";
import { TEXT_FORMAT } from "../ranges";
import { chartDefinition } from "./engine-chart";
import { CHARACTER_WIDTH, engineStyle, PRINT_NAMES } from "./engine-looks";
import { POINTS } from "./engine-sheet";
import { FILTER, grayRule, listCriterion, rangeCriterion, signRule } from "./rules";
import { typedMark } from "./typed-cells";
import { ENGINE_VERSION } from "./workbook/engine-version";
import type { WorkbookData } from "./workbook/store";

const DEFAULT_HEIGHT = 23;
const DEFAULT_WIDTH = 96;
/** Room to go on below and beside what the file has. */
const SPARE = { rows: 40, columns: 6, least: 20 } as const;

export function workbookData({ sheets }: ReadWorkbook): WorkbookData {
  const styles = new Numbered();
  const formats = new Numbered();
  const borders = new Numbered();
  const data = sheets.map((sheet, i) => sheetData(sheet, i + 1, { styles, formats, borders }));
  const namedRanges = Object.fromEntries(sheets.flatMap((sheet, i) => namesOf(sheet, i + 1)));
  return {
    version: ENGINE_VERSION,
    sheets: data,
    styles: styles.all,
    formats: formats.all,
    borders: borders.all,
    namedRanges,
  };
}

/** Equal things once, each with a number. */
class Numbered {
  readonly all: Record<number, unknown> = {};
  readonly #numbers = new Map<string, number>();

  numberOf(thing: unknown): number {
    const key = JSON.stringify(thing);
    const known = this.#numbers.get(key) ?? this.#numbers.size + 1;
    this.#numbers.set(key, known);
    this.all[known] = thing;
    return known;
  }
}

interface Shared {
  readonly styles: Numbered;
  readonly formats: Numbered;
  readonly borders: Numbered;
}

function sheetData(sheet: Snapshot, serial: number, { styles, formats, borders }: Shared): object {
  const id = `opened-${String(serial)}`;
  const places = sheet.cells.map(({ at }) => placeOf(at));
  const [rows, columns] = [
    Math.max(0, ...places.map(({ row }) => row + 1)),
    Math.max(0, ...places.map(({ column }) => column + 1)),
  ];
  const isForm = sheet.names.some(({ name }) => name.startsWith("form_"));
  const styled: [string, number][] = [];
  const formatted: [string, number][] = [];
  const bordered: [string, number][] = [];
  for (const { at, style, format } of sheet.cells) {
    const { underline, ...rest } = style;
    const mark = isForm ? typedOf(style, format) : {};
    if (Object.keys(rest).length > 0 || isForm)
      styled.push([at, styles.numberOf({ ...engineStyle(rest), ...mark })]);
    if (format !== undefined) formatted.push([at, formats.numberOf(format)]);
    if (underline !== undefined) {
      bordered.push([at, borders.numberOf({ bottom: { style: "thin", color: underline } })]);
    }
  }
  const sizes = {
    columns: sheet.widths.map((width) => (width === 0 ? DEFAULT_WIDTH : Math.round(width * CHARACTER_WIDTH))),
    rows: sheet.heights.map((height) => (height === 0 ? DEFAULT_HEIGHT : Math.round(height / POINTS))),
  };
  return {
    id,
    name: sheet.name,
    colNumber: Math.max(SPARE.least, columns + SPARE.columns),
    rowNumber: rows + SPARE.rows,
    cells: Object.fromEntries(sheet.cells.flatMap((cell) => contentOf(cell))),
    styles: Object.fromEntries(styled),
    formats: Object.fromEntries(formatted),
    borders: Object.fromEntries(bordered),
    cols: sized(sizes.columns, DEFAULT_WIDTH),
    rows: sized(sizes.rows, DEFAULT_HEIGHT),
    merges: sheet.merges,
    dataValidationRules: validationsOf(sheet),
    conditionalFormats: colorsOf(sheet),
    figures: sheet.charts.map((chart, i) => figureOf(chart, `${id}-${String(i)}`, sizes)),
    areGridLinesVisible: sheet.gridLines,
    panes: { xSplit: sheet.frozenColumns, ySplit: sheet.frozenRows },
    tables: sheet.filter === undefined ? [] : [{ range: sheet.filter, type: "static", config: FILTER }],
    isVisible: true,
  };
}

/** A cell to type in is known by its look, which no other spreadsheet changes by itself. */
function typedOf({ fill, align }: Style, format: string | undefined): object {
  if (fill !== LOOKS.input.fill) return {};
  return typedMark(format === TEXT_FORMAT || align === LOOKS.inputText.align ? "text" : "number");
}

function contentOf({ at, value, formula, format, isFilled }: SnapshotCell): [string, string][] {
  if (formula !== undefined) return [[at, formula]];
  if (value === "" || isFilled === true) return [];
  if (typeof value !== "string") return [[at, String(value).toUpperCase()]];
  return [[at, format === TEXT_FORMAT ? value : asText(value)]];
}

/** Text that the engine would take for a number, a date or a formula is text by its apostrophe. */
function asText(text: string): string {
  const locale = DEFAULT_LOCALE;
  const isTaken =
    /^[=+']/.test(text) ||
    helpers.isNumber(text, locale) ||
    helpers.isDateTime(text, locale) ||
    /^(?:true|false)$/i.test(text);
  return isTaken ? `'${text}` : text;
}

function sized(sizes: readonly number[], usual: number): Record<number, { readonly size: number }> {
  return Object.fromEntries(sizes.flatMap((size, i) => (size === usual ? [] : [[i, { size }] as const])));
}

function validationsOf({ lists, ranges }: Snapshot): object[] {
  const newId = (): string => new helpers.UuidGenerator().uuidv4();
  return [
    ...lists.map(({ range, allowed }) => ({
      id: newId(),
      isBlocking: true,
      criterion: listCriterion(allowed),
      ranges: [range],
    })),
    ...ranges.map(({ range, least, most, title, message, isText }) => ({
      id: newId(),
      isBlocking: false,
      criterion: rangeCriterion({ at: range, least, most }, isText),
      range: { least, most, title, message },
      ranges: [range],
    })),
  ];
}

function colorsOf({ signs, grayed }: Snapshot): object[] {
  const told = (["holds", "attention"] as const).map((sign) => ({
    id: `sign-${sign}`,
    rule: signRule(sign),
    ranges: signs,
  }));
  const rows = grayed.map((plan, i) => ({
    id: `grayed-${String(i)}`,
    rule: grayRule(plan),
    ranges: [plan.at],
  }));
  return [...(signs.length === 0 ? [] : told), ...rows];
}

function figureOf(
  chart: SnapshotChart,
  id: string,
  sizes: { readonly columns: readonly number[]; readonly rows: readonly number[] },
): object {
  const { from, to } = chart;
  const length = (all: readonly number[], start: number, end: number, usual: number): number =>
    Array.from({ length: Math.max(1, end - start) }, (_, i) => all[start + i] ?? usual).reduce(
      (a, b) => a + b,
      0,
    );
  return {
    id: `${id}-figure`,
    tag: "chart",
    col: from.column,
    row: from.row,
    offset: { x: 0, y: 0 },
    width: length(sizes.columns, from.column, to.column, DEFAULT_WIDTH),
    height: length(sizes.rows, from.row, to.row, DEFAULT_HEIGHT),
    data: { chartId: `${id}-chart`, ...chartDefinition(chart) },
  };
}

function namesOf({ name: sheet, names, print }: Snapshot, serial: number): [string, string][] {
  const own = names.map(({ spoken, range }): [string, string] => [spoken, onSheet(sheet, range)]);
  if (print === undefined) return own;
  return [...own, [`${PRINT_NAMES[print.paper]}${NAME_MARK}${String(serial)}`, onSheet(sheet, print.area)]];
}

function onSheet(sheet: string, range: string): string {
  return `'${sheet.replaceAll("'", "''")}'!${range}`;
}

/** Functions that formulas call and this browser's engine does not have. */
export function unknownFunctions({ sheets }: ReadWorkbook): string[] {
  const called = sheets.flatMap(({ cells }) =>
    cells.flatMap(({ formula = "" }) =>
      [...formula.replace(/"(?:[^"]|"")*"/g, "").matchAll(/([A-Za-z_][\w.]*)\(/g)].map(([, name = ""]) =>
        name.toUpperCase(),
      ),
    ),
  );
  return [...new Set(called)].filter((name) => !registries.functionRegistry.contains(name));
}
