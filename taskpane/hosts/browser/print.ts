/**
 * Prints the sheet being shown: the grid on screen is painted, so whenever the browser prints, by key, menu or button, the
 * sheet's cells are set out once more as a table, and only that is printed. A form goes on to another page between its
 * blocks, a list between its lines, with its heading again; only what is meant for one page is made smaller to fit.
 */

import type { Model } from "@odoo/o-spreadsheet";
import { registries } from "@odoo/o-spreadsheet";

import { NAME_MARK } from "../../files/spoken";
import { blocksOf, printedPages } from "../../files/pages";
import { isListName } from "../../sheets/pages";
import type { Paper } from "../../sheets/sheet";
import { liesAcross } from "../../sheets/sheet";
import { element } from "../../pane/dom";
import { figure } from "../../pane/figure";
import { picturesOf } from "../../pictures";
import { BLOCKS } from "../../pictures/joint";
import { paperOf } from "./engine-looks";
import { snapshotOf } from "./engine-sheet";
import { namedCells } from "./named-cells";
import { chartPicture } from "./print-chart";

const PRINT_ID = "print-page";

/** From now on each print is of what the sheet shows then, or of what is shown in its place. */
export function printOnRequest(modelNow: () => Model, inItsPlace: () => HTMLElement | undefined): void {
  window.addEventListener("beforeprint", () => {
    remove();
    const other = inItsPlace();
    const page = other === undefined ? pageOf(modelNow()) : newPage("form", modelNow().getters, [other]);
    document.body.append(page);
    if (page.className === "page") fitToOne(page);
  });
  window.addEventListener("afterprint", remove);
  // The engine's own way to print sets the painted grid on paper.
  registries.topbarMenuRegistry.replaceChild("print", ["file"], {
    name: "Print",
    sequence: 190,
    execute: () => {
      window.print();
    },
  });
}

function remove(): void {
  document.getElementById(PRINT_ID)?.remove();
}

function pageOf(model: Model): HTMLElement {
  const area = printArea(model);
  return newPage(area.paper, model.getters, [...tablesOf(model, area), ...picturesOn(model)]);
}

/** The joint as the pane draws it, side by side below its procedure sheet. */
function picturesOn(model: Model): HTMLElement[] {
  const pictures = picturesOf(namedCells(model, BLOCKS));
  return pictures === undefined ? [] : [element("div", { class: "pictures" }, ...pictures.map(figure))];
}

/** Paper with the sheet's name, the day and the page's number at its foot. */
function newPage(paper: Paper, getters: Model["getters"], parts: readonly HTMLElement[]): HTMLElement {
  const page = document.createElement("div");
  page.id = PRINT_ID;
  page.className = paper;
  const rules = document.createElement("style");
  const day = new Date().toLocaleDateString();
  const title = getters.getSheetName(getters.getActiveSheetId());
  rules.textContent = `@page { size: ${liesAcross(paper) ? "landscape" : "portrait"};
    @bottom-left { font: ${FOOT_FONT}; content: ${asCssText(`${title} · ${day}`)}; }
    @bottom-right { font: ${FOOT_FONT}; content: "page " counter(page) " of " counter(pages); } }`;
  page.append(rules, ...parts);
  return page;
}

/** What both Letter and A4 leave between the margins of the page, pixels. */
const ROOM = { width: 705, height: 935 };
/** Width of print as wide as the columns of the grid ask for, at the size of print. */
const PRINT_OF_GRID = 0.86;

/** Makes a sheet as small as one page asks for. */
function fitToOne(page: HTMLElement): void {
  const width = PRINT_OF_GRID * Number(page.querySelector("table")?.dataset.width);
  Object.assign(page.style, { display: "block", width: `${String(width)}px` });
  page.style.zoom = String(Math.min(ROOM.width / width, ROOM.height / page.offsetHeight));
  page.style.display = "";
}

const FOOT_FONT = '8pt "Segoe UI", "Liberation Sans", sans-serif';

/** Text inside a style sheet, whatever a person called the sheet. */
function asCssText(text: string): string {
  return `"${text.replace(/[^\w .,:·-]/gu, (sign) => `\\${(sign.codePointAt(0) ?? 32).toString(16)} `)}"`;
}

interface Area {
  readonly sheetId: string;
  /** The first row, from 0. */
  readonly top: number;
  readonly rows: number;
  readonly columns: number;
  readonly paper: Paper;
  /** The row that every page of a list begins with. */
  readonly heading?: number;
}

/** The area that the sheet's print name covers; on a person's own sheet, all that shows anything. */
function printArea(model: Model): Area {
  const { getters } = model;
  const sheetId = getters.getActiveSheetId();
  const zones = new Map(
    getters
      .getNamedRanges()
      .filter(({ range }) => range.sheetId === sheetId)
      .map(({ name, range }) => [name.split(NAME_MARK)[0] ?? name, range.zone]),
  );
  for (const [name, zone] of zones) {
    const paper = paperOf(name);
    if (paper === undefined) continue;
    const heading = paper === "list" ? [...zones].find(([one]) => isListName(one))?.[1].top : undefined;
    return {
      sheetId,
      top: zone.top,
      rows: zone.bottom + 1,
      columns: zone.right + 1,
      paper,
      ...(heading === undefined ? {} : { heading }),
    };
  }
  return { sheetId, top: 0, ...usedArea(model, sheetId), paper: "form" };
}

/**
 * The sheet as tables of the same columns: what stands above a list, and the list with the heading that every page of it
 * begins with. Lines that a filter hides stay hidden. Rows that belong together are one body, which a page is not broken in while there is room on the next.
 */
function tablesOf(model: Model, area: Area): HTMLTableElement[] {
  const { sheetId, top, rows, columns, heading } = area;
  const table = newTable(model, area);
  const tables = [table];
  const snapshot = snapshotOf(model, sheetId);
  const pageStarts = new Set(printedPages(snapshot)?.starts);
  const blocks = new Set(blocksOf(snapshot));
  let body = table.createTBody();
  let blanks = 0;
  for (let row = top; row < rows; row += 1) {
    if (model.getters.isRowHidden(sheetId, row)) continue;
    blanks = isBlank(model, { sheetId, row }, columns) ? blanks + 1 : 0;
    // Of the room that a list keeps for more lines, one blank line is enough on paper.
    if (blanks > 1) continue;
    if (row === heading) {
      const list = newTable(model, area);
      tables.push(list);
      setRow(list.createTHead().insertRow(), model, { sheetId, row }, columns);
      body = list.createTBody();
      body.className = "lines";
      continue;
    }
    if (blocks.has(row)) body = (body.parentElement as HTMLTableElement).createTBody();
    // Where a file of this sheet goes on to another page, too.
    if (pageStarts.has(row)) body.classList.add("new-page");
    setRow(body.insertRow(), model, { sheetId, row }, columns);
  }
  return tables;
}

function newTable(model: Model, { sheetId, columns }: Area): HTMLTableElement {
  const table = document.createElement("table");
  table.dataset.width = String(totalOf(columnSizes(model, sheetId, columns)));
  table.append(columnWidths(model, sheetId, columns));
  return table;
}

function setRow(line: HTMLTableRowElement, model: Model, at: Omit<Position, "col">, columns: number): void {
  const { getters } = model;
  const charts = getters.getFigures(at.sheetId);
  for (let col = 0; col < columns; col += 1) {
    const position = { ...at, col };
    const merge = getters.getMerge(position);
    if (merge !== undefined && (merge.left !== col || merge.top !== at.row)) continue;
    const cell = line.insertCell();
    if (merge !== undefined) {
      cell.colSpan = merge.right - merge.left + 1;
      cell.rowSpan = merge.bottom - merge.top + 1;
    }
    cell.textContent = getters.getEvaluatedCell(position).formattedValue;
    dress(cell, model, position);
    const chart = charts.find((figure) => figure.col === col && figure.row === at.row);
    if (chart !== undefined) cell.append(chartPicture(model, chart));
  }
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

function columnSizes({ getters }: Model, sheetId: string, columns: number): number[] {
  return Array.from({ length: columns }, (_, col) => getters.getColSize(sheetId, col));
}

function totalOf(sizes: readonly number[]): number {
  return sizes.reduce((sum, size) => sum + size, 0);
}

function columnWidths(model: Model, sheetId: string, columns: number): HTMLElement {
  const group = document.createElement("colgroup");
  const widths = columnSizes(model, sheetId, columns);
  const total = totalOf(widths);
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
    // A date would break at its hyphens.
    whiteSpace: isNumber ? "nowrap" : "",
    textAlign: style.align ?? (isNumber ? "right" : "left"),
    borderBottom: border?.bottom === undefined ? "" : `1px solid ${border.bottom.color}`,
  });
}
