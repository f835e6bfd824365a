/** Reads a sheet out of the engine, edits, inserted rows and all. */

import type { Model } from "@odoo/o-spreadsheet";

import { addressOf, placeOf } from "../../sheets/addresses";
import { CHARACTER_WIDTH, paperOf } from "./engine-looks";
import { NAME_MARK } from "../../files/spoken";
import type { Style } from "../looks";
import type { Snapshot, SnapshotCell, SnapshotChart, Spill } from "../../files/sheet-state";
import { curveOf, kindOf } from "./engine-chart";
import { rulesOf } from "./engine-rules";
import { rangeOf } from "./zones";

/** Points that a pixel of the screen is high. */
export const POINTS = 0.75;

export function snapshotOf(model: Model, sheetId: string): Snapshot {
  const { getters } = model;
  const cells = cellsOf(model, sheetId);
  const merges = getters.getMerges(sheetId);
  const charts = chartsOf(model, sheetId);
  const { columns, fonts } = extentOf(cells);
  const ends = (side: "right" | "bottom"): number[] => merges.map((merge) => merge[side] + 1);
  const size = (count: number, of: (i: number) => number): number[] =>
    Array.from({ length: count }, (_, i) => of(i));
  return {
    name: getters.getSheetName(sheetId),
    widths: size(Math.max(columns, ...ends("right")), (col) =>
      round(getters.getColSize(sheetId, col) / CHARACTER_WIDTH),
    ),
    heights: size(Math.max(fonts.length, ...ends("bottom")), (row) =>
      // Whole pixels, as the row has when the file is opened again.
      round(
        Math.ceil(Math.max(getters.getRowSize(sheetId, row), lineHeight(fonts[row] ?? 0) / POINTS)) * POINTS,
      ),
    ),
    cells,
    merges: merges.map(rangeOf),
    ...rulesOf(model, sheetId),
    charts,
    ...filterOf(model, sheetId),
    frozenRows: getters.getPaneDivisions(sheetId).ySplit,
    frozenColumns: getters.getPaneDivisions(sheetId).xSplit,
    gridLines: getters.getGridLinesVisibility(sheetId),
    ...namesOf(model, sheetId),
  };
}

/** How many columns the cells reach over, and the largest font of each row; each cell is looked at once. */
function extentOf(cells: readonly SnapshotCell[]): { columns: number; fonts: number[] } {
  const fonts: number[] = [];
  let columns = 0;
  for (const { at, style } of cells) {
    const { column, row } = placeOf(at);
    columns = Math.max(columns, column + 1);
    fonts[row] = Math.max(fonts[row] ?? 0, style.size ?? 0);
  }
  return { columns, fonts };
}

function cellsOf(model: Model, sheetId: string): SnapshotCell[] {
  const { getters } = model;
  const { numberOfRows, numberOfCols } = getters.getSheetSize(sheetId);
  const cells: SnapshotCell[] = [];
  for (let row = 0; row < numberOfRows; row += 1) {
    for (let col = 0; col < numberOfCols; col += 1) {
      const position = { sheetId, col, row };
      const cell = getters.getCell(position);
      const border = getters.getCellBorder(position)?.bottom;
      const value = getters.getEvaluatedCell(position).value ?? "";
      const spill = spillOf(model, position);
      // A place that a merged cell lies over has no look of its own, but for the line below it.
      const isCovered = isUnderMerge(model, position);
      if (isCovered && border === undefined && value === "") continue;
      // An empty place of a table keeps its formula: it may fill when an input changes.
      if (cell === undefined && border === undefined && value === "" && spill === undefined) continue;
      cells.push({
        at: addressOf({ column: col, row }),
        value,
        ...(cell?.isFormula === true ? { formula: formulaOf(model, position) } : {}),
        ...(spill === undefined ? {} : { spill }),
        style: styleOf(isCovered ? {} : getters.getCellStyle(position), border?.color),
        ...(cell?.format === undefined || isCovered ? {} : { format: cell.format }),
      });
    }
  }
  return cells;
}

function isUnderMerge({ getters }: Model, position: Position): boolean {
  const merge = getters.getMerge(position);
  return merge !== undefined && (merge.left !== position.col || merge.top !== position.row);
}

interface Position {
  readonly sheetId: string;
  readonly col: number;
  readonly row: number;
}

function formulaOf(model: Model, position: Position): string {
  return model.getters.getCellText(position, { showFormula: true });
}

/** The answer that a cell is part of, where that is more than the cell. */
function spillOf(model: Model, position: Position): Spill | undefined {
  const { getters } = model;
  const first = getters.getArrayFormulaSpreadingOn(position);
  if (first === undefined) return undefined;
  const zone = getters.getSpreadZone(first);
  if (zone === undefined || (zone.left === zone.right && zone.top === zone.bottom)) return undefined;
  return {
    formula: formulaOf(model, first),
    from: { column: zone.left, row: zone.top },
    columns: zone.right - zone.left + 1,
    rows: zone.bottom - zone.top + 1,
  };
}

interface EngineStyle {
  readonly bold?: boolean | undefined;
  readonly italic?: boolean | undefined;
  readonly fontSize?: number | undefined;
  readonly textColor?: string | undefined;
  readonly fillColor?: string | undefined;
  readonly align?: "left" | "center" | "right" | undefined;
  readonly wrapping?: string | undefined;
}

function styleOf(style: EngineStyle, underline: string | undefined): Style {
  const { fontSize, textColor, fillColor, align } = style;
  return {
    ...(style.bold === true ? { bold: true } : {}),
    ...(style.italic === true ? { italic: true } : {}),
    ...(fontSize === undefined ? {} : { size: fontSize }),
    ...(textColor === undefined ? {} : { ink: textColor }),
    ...(fillColor === undefined ? {} : { fill: fillColor }),
    ...(align === undefined ? {} : { align }),
    ...(style.wrapping === "wrap" ? { wrap: true } : {}),
    ...(underline === undefined ? {} : { underline }),
  };
}

/** The list that can be filtered: a file holds one of a sheet. */
function filterOf({ getters }: Model, sheetId: string): Pick<Snapshot, "filter"> {
  const [table] = getters.getCoreTables(sheetId).filter(({ config }) => config.hasFilters);
  return table === undefined ? {} : { filter: rangeOf(table.range.zone) };
}

/** The sheet's names without the engine's mark; the one that tells the printed area is no name in a file. */
function namesOf(model: Model, sheetId: string): Pick<Snapshot, "names" | "print"> {
  const here = model.getters
    .getNamedRanges()
    .filter(({ range }) => range.sheetId === sheetId && range.invalidXc === undefined)
    .map(({ name, range }) => ({
      name: name.split(NAME_MARK)[0] ?? name,
      spoken: name,
      range: rangeOf(range.zone),
    }));
  const print = here.find(({ name }) => paperOf(name) !== undefined);
  const paper = paperOf(print?.name ?? "");
  return {
    names: here.filter(({ name }) => paperOf(name) === undefined),
    ...(print === undefined || paper === undefined ? {} : { print: { area: print.range, paper } }),
  };
}

function chartsOf({ getters }: Model, sheetId: string): SnapshotChart[] {
  return getters.getFigures(sheetId).flatMap(({ id, col, row, width, height }): SnapshotChart[] => {
    const chartId = getters.getChartIdFromFigureId(id);
    const definition = chartId === undefined ? undefined : getters.getChartDefinition(chartId);
    const kind = definition === undefined ? undefined : kindOf(definition);
    if (definition === undefined || kind === undefined || !("axesDesign" in definition)) return [];
    const { dataSource, title } = definition;
    if (dataSource.type !== "range") return [];
    const ranges = [dataSource.labelRange ?? "", ...dataSource.dataSets.map(({ dataRange }) => dataRange)];
    // A person's own chart of another sheet's cells.
    if (ranges.some((range) => range === "" || range.includes("!"))) return [];
    const lies = kind === "timeBar";
    const { logarithmic = false, dots = [], marked = [], named = [] } = curveOf(definition) ?? {};
    const along = {
      x: definition.axesDesign.x?.title?.text ?? "",
      y: definition.axesDesign.y?.title?.text ?? "",
    };
    return [
      {
        title: title.text ?? "",
        kind,
        labels: dataSource.labelRange ?? "",
        values: dataSource.dataSets.map(({ dataRange }) => dataRange),
        axes: lies ? { x: along.y, y: along.x } : along,
        ...(logarithmic ? { logarithmic } : {}),
        ...(dots.length > 0 ? { dots } : {}),
        ...(marked.length > 0 ? { marked } : {}),
        ...(named.length > 0 ? { named } : {}),
        from: { column: col, row },
        to: {
          column: passed(col, width, (i) => getters.getColSize(sheetId, i)),
          row: passed(row, height, (i) => getters.getRowSize(sheetId, i)),
        },
      },
    ];
  });
}

/** The first column or row that begins at or past a length from another. */
function passed(first: number, length: number, sizeOf: (i: number) => number): number {
  let [end, left] = [first, length];
  while (left > 0) {
    left -= sizeOf(end);
    end += 1;
  }
  return end;
}

/** Points that a line of a font takes; without a page the engine cannot measure it. */
function lineHeight(size: number): number {
  return 1.35 * size;
}

function round(length: number): number {
  return Math.round(length * 100) / 100;
}
