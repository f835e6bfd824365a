/**
 * Prints the sheet being shown as a page of its own: the grid on screen is painted, so its cells are set out once more
 * as a table, and only that is printed.
 */

import type { Model } from "@odoo/o-spreadsheet";

import { NAME_MARK, PRINT_NAMES } from "../host/browser";

const PRINT_ID = "print-page";

export function printSheet(model: Model): void {
  document.getElementById(PRINT_ID)?.remove();
  const area = printArea(model);
  const page = document.createElement("div");
  page.id = PRINT_ID;
  const turn = document.createElement("style");
  turn.textContent = `@page { size: ${area.landscape ? "landscape" : "portrait"}; }`;
  page.append(turn, sheetTable(model, area), ...chartPictures(model, area));
  document.body.append(page);
  page.style.setProperty("zoom", String(fitting(page, area.landscape)));
  window.print();
}

/** The part of a page inside its margins that both Letter and A4 offer, in CSS pixels, long side and short side. */
const PAGE = { long: 960, short: 715 };

/** How much the page has to shrink to be one page. */
function fitting(page: HTMLElement, landscape: boolean): number {
  const [width, height] = landscape ? [PAGE.long, PAGE.short] : [PAGE.short, PAGE.long];
  Object.assign(page.style, { display: "block", width: `${String(width)}px` });
  const needed = page.getBoundingClientRect().height;
  page.removeAttribute("style");
  return Math.min(1, height / needed);
}

interface Area {
  readonly sheetId: string;
  readonly rows: number;
  readonly columns: number;
  readonly landscape: boolean;
}

/** The area that the sheet's print name covers; on a person's own sheet, all that shows anything. */
function printArea(model: Model): Area {
  const { getters } = model;
  const sheetId = getters.getActiveSheetId();
  for (const { name, range } of getters.getNamedRanges()) {
    const [bare] = name.split(NAME_MARK);
    const landscape = bare === PRINT_NAMES.landscape;
    if (range.sheetId !== sheetId || (!landscape && bare !== PRINT_NAMES.portrait)) continue;
    return { sheetId, rows: range.zone.bottom + 1, columns: range.zone.right + 1, landscape };
  }
  return { sheetId, ...usedArea(model, sheetId), landscape: false };
}

function sheetTable(model: Model, { sheetId, rows, columns }: Area): HTMLTableElement {
  const { getters } = model;
  const table = document.createElement("table");
  table.append(columnWidths(model, sheetId, columns));
  for (let row = 0; row < rows; row += 1) {
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
    }
  }
  return table;
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

/** The charts lie over the grid as drawings; the page takes those inside its area as pictures under the table. */
function chartPictures(model: Model, { sheetId, columns, rows }: Area): HTMLImageElement[] {
  const inside = model.getters.getFigures(sheetId).filter(({ col, row }) => col < columns && row < rows);
  return inside.flatMap(({ id }) => {
    const canvas = document.querySelector<HTMLCanvasElement>(`.o-figure[data-id="${CSS.escape(id)}"] canvas`);
    if (canvas === null) return [];
    const picture = document.createElement("img");
    picture.src = canvas.toDataURL("image/png");
    picture.alt = "Chart of the sheet";
    return [picture];
  });
}
