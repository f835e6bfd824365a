/**
 * Where a sheet's pictures go in a file: into the room that the sheet keeps for them below its printed page, which is then
 * printed too; below everything else where something was put into that room. They cover no cell and no chart.
 */

import { addressOf, placeOf } from "../sheets/addresses";
import { PICTURES_NAME } from "../sheets/sheet";
import type { Drawn } from "./drawn-pictures";
import { drawnPictures } from "./drawn-pictures";
import { EMU_PER_POINT } from "./drawn-text";
import { whole } from "./drawn-path";
import { ROW_HEIGHT } from "./pages";
import { cornersOf } from "./ranges";
import type { Snapshot } from "./sheet-state";

/** Points that a character of a column's width takes. */
const CHARACTER = 5.25;
/** Above the pictures and below them, points. */
const APART = 6;

export interface PlacedPictures {
  /** Their first row, from 0. */
  readonly first: number;
  /** The print area with them; undefined where they are not printed. */
  readonly area?: string;
  /** Parts of the sheet's drawing. */
  readonly anchors: string;
}

export function placedPictures(sheet: Snapshot): PlacedPictures | undefined {
  const { pictures = [], print, widths, heights } = sheet;
  const last = placeOf((print?.area ?? "H1").replace(/^.*:/, ""));
  const across = widths.slice(0, last.column + 1);
  const width = CHARACTER * across.reduce((sum, one) => sum + one, 0);
  if (pictures.length === 0 || width === 0) return undefined;
  const drawn = drawnPictures(pictures, width);
  const height = 2 * APART + Math.max(...drawn.map((one) => one.top + one.height));
  const rowsFrom = (first: number): number => {
    let [row, left] = [first, height];
    for (; left > 0; row += 1) left -= heights[row] ?? ROW_HEIGHT;
    return row - first;
  };
  const room = roomOf(sheet.names);
  const isFree = room !== undefined && !taken(sheet, { column: last.column, row: room }, rowsFrom(room));
  const first = isFree ? room : lastOf(sheet) + 2;
  const isNext = print !== undefined && isFree && room === last.row + 1;
  const end = addressOf({ column: last.column, row: first + rowsFrom(first) - 1 });
  return {
    first,
    ...(isNext ? { area: print.area.replace(/:.*$/, `:${end}`) } : {}),
    anchors: drawn.map((one) => anchorXml(one, first, sheet)).join(""),
  };
}

/** A print area out of a file without the room that pictures had in it. */
export function withoutRoom(area: string, names: Snapshot["names"]): string {
  const room = roomOf(names);
  const { start, end } = cornersOf(area);
  return room === undefined || room <= start.row || room > end.row
    ? area
    : area.replace(/:.*$/, `:${addressOf({ column: end.column, row: room - 1 })}`);
}

/** The first row of the room that a sheet keeps. */
function roomOf(names: Snapshot["names"]): number | undefined {
  const range = names.find(({ name }) => name === PICTURES_NAME)?.range;
  return range === undefined ? undefined : cornersOf(range).start.row;
}

/** Whether anything stands in some rows, left of a column and in it. */
function taken(
  sheet: Snapshot,
  from: { readonly column: number; readonly row: number },
  rows: number,
): boolean {
  const isIn = (row: number, column: number): boolean =>
    column <= from.column && row >= from.row && row < from.row + rows;
  return (
    sheet.cells.some(({ at, value, formula }) => {
      const { column, row } = placeOf(at);
      return isIn(row, column) && (value !== "" || formula !== undefined);
    }) ||
    sheet.charts.some(
      (chart) =>
        chart.from.column <= from.column && chart.from.row < from.row + rows && chart.to.row > from.row,
    )
  );
}

/** The last row with anything on it. */
function lastOf({ cells, charts }: Snapshot): number {
  const rows = [...cells.map(({ at }) => placeOf(at).row), ...charts.map(({ to }) => to.row)];
  return rows.reduce((most, row) => Math.max(most, row), 0);
}

function anchorXml({ left, top, width, height, xml }: Drawn, first: number, sheet: Snapshot): string {
  const across = passed(0, left, (i) => CHARACTER * (sheet.widths[i] ?? 0));
  const down = passed(first, APART + top, (i) => sheet.heights[i] ?? ROW_HEIGHT);
  const emu = (points: number): string => whole(points * EMU_PER_POINT);
  return (
    `<xdr:oneCellAnchor><xdr:from><xdr:col>${String(across.index)}</xdr:col><xdr:colOff>${emu(across.rest)}</xdr:colOff>` +
    `<xdr:row>${String(down.index)}</xdr:row><xdr:rowOff>${emu(down.rest)}</xdr:rowOff></xdr:from>` +
    `<xdr:ext cx="${emu(width)}" cy="${emu(height)}"/>${xml}<xdr:clientData/></xdr:oneCellAnchor>`
  );
}

/** The column or row that a length from the beginning of another ends in, and what is left of the length there. */
function passed(
  first: number,
  length: number,
  sizeOf: (i: number) => number,
): { index: number; rest: number } {
  let [index, rest] = [first, length];
  while (rest >= sizeOf(index) && sizeOf(index) > 0) {
    rest -= sizeOf(index);
    index += 1;
  }
  return { index, rest };
}
