/** Writes the plan of a ready sheet into a workbook of the engine, by commands of one step. */

import type { Model } from "@odoo/o-spreadsheet";

import { NAME_MARK } from "../../files/spoken";
import type { CellPlan, ChartPlan, SheetPlan } from "../../sheets/sheet";
import { UNITS_NAME } from "../../sheets/sheet";
import { placeOf } from "../../sheets/addresses";
import { LOOKS } from "../looks";
import { isTextAt } from "../ranges";
import { command } from "./commands";
import { chartDefinition } from "./engine-chart";
import { CHARACTER_WIDTH, engineStyle, LINE_HEIGHT, PRINT_NAMES, ROW_HEIGHT } from "./engine-looks";
import { allowOnly, colorSigns, grayRows, offerFilter, warnOutside } from "./rules";
import { typedMark } from "./typed-cells";

const COLUMNS = 20;
/** Where words of the last column go on. */
const SPARE_COLUMNS = 4;
const SPARE_ROWS = 40;

export interface NewSheet {
  readonly sheetId: string;
  readonly name: string;
  /** What tells its names from those of other sheets. */
  readonly serial: number;
}

type Run = (type: string, payload: object) => void;

/** Inside a step: nothing is computed before its end. */
export function writeSheet(model: Model, plan: SheetPlan, { sheetId, name, serial }: NewSheet): void {
  const run: Run = (type, payload) => {
    command(model, type, { sheetId, ...payload });
  };
  const range = (address: string): unknown => model.getters.getRangeDataFromXc(sheetId, address);
  const lastRow = Math.max(...plan.cells.map(({ at, rows = 1 }) => placeOf(at).row + rows));
  const cols = Math.max(COLUMNS, plan.widths.length + SPARE_COLUMNS);
  run("CREATE_SHEET", { name, position: 0, cols, rows: lastRow + SPARE_ROWS });
  plan.widths.forEach((width, column) => {
    run("RESIZE_COLUMNS_ROWS", {
      dimension: "COL",
      elements: [column],
      size: Math.round(width * CHARACTER_WIDTH),
    });
  });
  run("SET_GRID_LINES_VISIBILITY", { areGridLinesVisible: false });
  const suffix = `${NAME_MARK}${String(serial)}`;
  for (const { name: cellName, at } of plan.names) {
    run("CREATE_NAMED_RANGE", {
      name: cellName + suffix,
      ranges: [range(at)],
    });
  }
  for (const { at, allowed } of [...plan.lists, unitsLock(plan)]) {
    allowOnly(model, sheetId, at, allowed);
  }
  warnOutside(model, sheetId, plan.ranges, (at) => isTextAt(plan, at));
  colorSigns(model, sheetId, plan.signs);
  grayRows(model, sheetId, plan.grayed ?? []);
  // Before cells are merged: for each line the engine looks through all that are.
  underline(run, plan.cells);
  const merged = plan.cells.filter(({ columns = 1, rows = 1 }) => columns > 1 || rows > 1);
  if (merged.length > 0) run("ADD_MERGE", { target: merged.map(zoneOf) });
  for (const cell of plan.cells) if (cell.content !== "") write(run, cell);
  dress(
    run,
    plan.cells.filter(({ content }) => content === ""),
  );
  for (const cell of plan.cells) makeRoom(run, cell);
  run("CREATE_NAMED_RANGE", {
    name: PRINT_NAMES[plan.print.paper] + suffix,
    ranges: [range(plan.print.area)],
  });
  if (plan.frozenRows > 0) run("FREEZE_ROWS", { quantity: plan.frozenRows });
  const { frozenColumns = 0 } = plan;
  if (frozenColumns > 0) run("FREEZE_COLUMNS", { quantity: frozenColumns });
  // Last: a cell that is written below a list of the engine's would become part of it.
  offerFilter(model, sheetId, plan.filter);
  plan.charts.forEach((chart, i) => {
    drawChart(model, sheetId, chart, i);
  });
}

function write(run: Run, cell: CellPlan): void {
  const { column, row } = placeOf(cell.at);
  run("UPDATE_CELL", { col: column, row, content: String(cell.content), ...dressOf(cell) });
}

/** The looks of blank cells: long lists have thousands, and all of a look are one command. */
function dress(run: Run, cells: readonly CellPlan[]): void {
  for (const alike of grouped(cells, (cell) => JSON.stringify(dressOf(cell))).values()) {
    const [first] = alike;
    if (first !== undefined)
      run("SET_FORMATTING", { target: alike.map(({ at }) => zoneOf({ at })), ...dressOf(first) });
  }
}

function makeRoom(run: Run, { at, rows = 1, lines }: CellPlan): void {
  if (rows === 1 && lines === undefined) return;
  const { row } = placeOf(at);
  run("RESIZE_COLUMNS_ROWS", {
    dimension: "ROW",
    elements: Array.from({ length: rows }, (_, i) => row + i),
    size: lines === undefined ? ROW_HEIGHT : lines * LINE_HEIGHT,
  });
}

/** The lines below cells, all of a color at once. */
function underline(run: Run, cells: readonly CellPlan[]): void {
  for (const [color, alike] of grouped(cells, ({ look }) => LOOKS[look].underline)) {
    if (color === undefined) continue;
    // Not as borders of zones: those below each other would get a line below the last alone.
    run("SET_BORDERS_ON_TARGET", {
      target: alike.map(zoneOf),
      border: { bottom: { color, style: "thin" } },
    });
  }
}

function drawChart(model: Model, sheetId: string, chart: ChartPlan, serial: number): void {
  const { column, row } = placeOf(chart.from);
  const end = placeOf(chart.to);
  const columns = Array.from({ length: end.column - column + 1 }, (_, i) => column + i);
  const width = columns.reduce((sum, col) => sum + model.getters.getColSize(sheetId, col), 0);
  const rows = Array.from({ length: end.row - row + 1 }, (_, i) => row + i);
  const height = rows.reduce((sum, one) => sum + model.getters.getRowSize(sheetId, one), 0);
  command(model, "CREATE_CHART", {
    sheetId,
    chartId: `${sheetId}-chart-${String(serial)}`,
    figureId: `${sheetId}-figure-${String(serial)}`,
    col: column,
    row,
    offset: { x: 0, y: 0 },
    size: { width, height },
    definition: chartDefinition(chart),
  });
}

/** The block of cells that a cell spreads over. */
function zoneOf({ at, columns = 1, rows = 1 }: Pick<CellPlan, "at" | "columns" | "rows">): object {
  const { column, row } = placeOf(at);
  return { left: column, right: column + columns - 1, top: row, bottom: row + rows - 1 };
}

/** The units cell takes no other word: retyping it would read inches as millimeters. */
function unitsLock(plan: SheetPlan): { at: string; allowed: readonly string[] } {
  const at = plan.names.find(({ name }) => name === UNITS_NAME)?.at ?? "";
  return { at, allowed: [plan.units] };
}

/** Look and number format of a cell, as the engine has them. */
function dressOf(cell: CellPlan): object {
  return {
    style: { ...engineStyle(LOOKS[cell.look]), ...typedMarkOf(cell) },
    ...(cell.format === undefined || cell.format === "General" ? {} : { format: cell.format }),
  };
}

function typedMarkOf({ look }: CellPlan): object {
  if (look === "input") return typedMark("number");
  return look === "inputText" ? typedMark("text") : {};
}

function grouped<Key>(cells: readonly CellPlan[], keyOf: (cell: CellPlan) => Key): Map<Key, CellPlan[]> {
  const groups = new Map<Key, CellPlan[]>();
  for (const cell of cells) {
    const key = keyOf(cell);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [cell]);
    else group.push(cell);
  }
  return groups;
}
