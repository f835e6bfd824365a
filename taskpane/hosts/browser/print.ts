/**
 * Prints the sheet being shown as a page of its own: the grid on screen is painted, so its cells are set out once more
 * as a table, and only that is printed.
 */

import type { Model } from "@odoo/o-spreadsheet";
import type { ChartConfiguration } from "chart.js";
import Chart from "chart.js/auto";

import type { Paper } from "../../sheets/sheet";
import { NAME_MARK, paperOf } from "./browser-host";

const PRINT_ID = "print-page";

export function printSheet(model: Model): void {
  document.getElementById(PRINT_ID)?.remove();
  const area = printArea(model);
  const page = document.createElement("div");
  page.id = PRINT_ID;
  const turn = document.createElement("style");
  turn.textContent = `@page { size: ${area.paper === "form" ? "portrait" : "landscape"}; }`;
  page.append(turn, sheetTable(model, area));
  document.body.append(page);
  if (area.paper === "form") page.style.setProperty("zoom", String(fitting(page)));
  window.print();
}

/**
 * The part of a page inside its margins that both Letter and A4 offer, in CSS pixels, long side and short side; less a
 * little for lines that do not shrink by whole pixels.
 */
const PAGE = { long: 945, short: 715 };

/** How much a form has to shrink to be one page. A smaller page is set wider, so the shrinking is tried out. */
function fitting(page: HTMLElement): number {
  const { short: width, long: height } = PAGE;
  let zoom = 1;
  for (let attempt = 0; attempt < MOST_ATTEMPTS; attempt += 1) {
    Object.assign(page.style, { display: "block", width: `${String(width / zoom)}px` });
    const needed = page.getBoundingClientRect().height * zoom;
    if (needed <= height) break;
    zoom *= (height / needed) * 0.995;
  }
  page.removeAttribute("style");
  return zoom;
}
const MOST_ATTEMPTS = 8;

interface Area {
  readonly sheetId: string;
  readonly rows: number;
  readonly columns: number;
  readonly paper: Paper;
}

/** The area that the sheet's print name covers; on a person's own sheet, all that shows anything. */
function printArea(model: Model): Area {
  const { getters } = model;
  const sheetId = getters.getActiveSheetId();
  for (const { name, range } of getters.getNamedRanges()) {
    const paper = paperOf(name.split(NAME_MARK)[0] ?? "");
    if (range.sheetId !== sheetId || paper === undefined) continue;
    return { sheetId, rows: range.zone.bottom + 1, columns: range.zone.right + 1, paper };
  }
  return { sheetId, ...usedArea(model, sheetId), paper: "form" };
}

function sheetTable(model: Model, { sheetId, rows, columns }: Area): HTMLTableElement {
  const { getters } = model;
  const table = document.createElement("table");
  table.append(columnWidths(model, sheetId, columns));
  const charts = getters.getFigures(sheetId);
  let blanks = 0;
  for (let row = 0; row < rows; row += 1) {
    blanks = isBlank(model, { sheetId, row }, columns) ? blanks + 1 : 0;
    // Of the room that a list keeps for more lines, one blank line is enough on paper.
    if (blanks > 1) continue;
    const line = table.insertRow();
    for (let col = 0; col < columns; col += 1) {
      const position = { sheetId, col, row };
      const merge = getters.getMerge(position);
      if (merge !== undefined && (merge.left !== col || merge.top !== row)) continue;
      const cell = line.insertCell();
      if (merge !== undefined) {
        cell.colSpan = merge.right - merge.left + 1;
        cell.rowSpan = merge.bottom - merge.top + 1;
      }
      cell.textContent = getters.getEvaluatedCell(position).formattedValue;
      dress(cell, model, position);
      const chart = charts.find((figure) => figure.col === col && figure.row === row);
      if (chart !== undefined) cell.append(chartPicture(model, chart));
    }
  }
  return table;
}

/** Whether a row shows nothing and no merged cell or chart lies over it. */
function isBlank({ getters }: Model, { sheetId, row }: Omit<Position, "col">, columns: number): boolean {
  return Array.from({ length: columns }, (_, col) => ({ sheetId, col, row })).every(
    (position) =>
      getters.getMerge(position) === undefined && getters.getEvaluatedCell(position).formattedValue === "",
  );
}

interface Position {
  readonly sheetId: string;
  readonly col: number;
  readonly row: number;
}

/** Rows and columns up to the last cell that shows anything. */
function usedArea(model: Model, sheetId: string): { rows: number; columns: number } {
  let [rows, columns] = [0, 0];
  const { numberOfRows, numberOfCols } = model.getters.getSheetSize(sheetId);
  for (let row = 0; row < numberOfRows; row += 1) {
    for (let col = 0; col < numberOfCols; col += 1) {
      const position = { sheetId, col, row };
      if (model.getters.getEvaluatedCell(position).formattedValue === "") continue;
      const merge = model.getters.getMerge(position);
      rows = Math.max(rows, (merge?.bottom ?? row) + 1);
      columns = Math.max(columns, (merge?.right ?? col) + 1);
    }
  }
  return { rows, columns };
}

function columnWidths(model: Model, sheetId: string, columns: number): HTMLElement {
  const group = document.createElement("colgroup");
  const widths = Array.from({ length: columns }, (_, col) => model.getters.getColSize(sheetId, col));
  const total = widths.reduce((sum, width) => sum + width, 0);
  for (const width of widths) {
    const column = document.createElement("col");
    column.style.width = `${((100 * width) / total).toFixed(2)}%`;
    group.append(column);
  }
  return group;
}

function dress(cell: HTMLTableCellElement, model: Model, position: Position): void {
  const style = model.getters.getCellComputedStyle(position);
  const border = model.getters.getCellComputedBorder(position);
  const isNumber = typeof model.getters.getEvaluatedCell(position).value === "number";
  Object.assign(cell.style, {
    fontWeight: style.bold === true ? "600" : "",
    fontStyle: style.italic === true ? "italic" : "",
    fontSize: style.fontSize === undefined ? "" : `${String(style.fontSize)}pt`,
    color: style.textColor ?? "",
    background: style.fillColor ?? "",
    textAlign: style.align ?? (isNumber ? "right" : "left"),
    borderBottom: border?.bottom === undefined ? "" : `1px solid ${border.bottom.color}`,
  });
}

/** Twice the size on screen, so that print is sharp. */
const SHARPNESS = 2;

/** A chart drawn once more for the page: on screen only those in sight are drawn. */
function chartPicture(
  model: Model,
  { id, width, height }: { id: string; width: number; height: number },
): Node {
  const { getters } = model;
  const chartId = getters.getChartIdFromFigureId(id);
  const runtime = chartId === undefined ? undefined : getters.getChartRuntime(chartId);
  if (runtime === undefined || !("chartJsConfig" in runtime)) return document.createTextNode("");
  const canvas = document.createElement("canvas");
  Object.assign(canvas, { width, height });
  const { options, ...config } = runtime.chartJsConfig as ChartConfiguration;
  const chart = new Chart(canvas, {
    ...config,
    options: { ...options, animation: false, responsive: false, devicePixelRatio: SHARPNESS },
  });
  const picture = document.createElement("img");
  Object.assign(picture, { src: canvas.toDataURL("image/png"), alt: "Chart of the sheet", width, height });
  chart.destroy();
  return picture;
}
