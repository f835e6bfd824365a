/**
 * Words of the last printed column as a file has them: wrapped in a row as high as they need, since paper ends beside them.
 * On the screen they go on over the blank cells to the right.
 */

import { placeOf } from "../sheets/addresses";
import type { Snapshot } from "./sheet-state";

/** Points of a line of text, and how many letters a column takes for each character of its width: few are as wide as a 0. */
const LINE = 15;
const LETTERS = 1.1;

export function withWrappedRemarks(sheet: Snapshot): Snapshot {
  const linesOf = linesIn(sheet);
  const heights = [...sheet.heights];
  const cells = sheet.cells.map((cell) => {
    const lines = linesOf(cell);
    if (lines < 2) return cell;
    const { row } = placeOf(cell.at);
    heights[row] = Math.max(heights[row] ?? 0, lines * LINE);
    return { ...cell, style: { ...cell.style, wrap: true } };
  });
  return { ...sheet, cells, heights };
}

/** The same sheet as the screen has it, of a file that was written so. */
export function withoutWrappedRemarks(sheet: Snapshot): Snapshot {
  const linesOf = linesIn(sheet);
  const heights = [...sheet.heights];
  const cells = sheet.cells.map((cell) => {
    const { row } = placeOf(cell.at);
    const { wrap, ...style } = cell.style;
    if (wrap !== true || linesOf(cell) < 2 || heights[row] !== linesOf(cell) * LINE) return cell;
    heights[row] = 0;
    return { ...cell, style };
  });
  // As a file without heights has it: none behind the last.
  while (heights.at(-1) === 0) heights.pop();
  return { ...sheet, cells, heights };
}

/** How many lines a remark takes on paper; 0 for every other cell. */
function linesIn({ print, widths, merges }: Snapshot): (cell: Snapshot["cells"][number]) => number {
  if (print?.paper !== "list") return () => 0;
  const last = placeOf(print.area.replace(/^.*:/, "")).column;
  const width = widths[last] ?? 0;
  const covered = new Set(merges.map((range) => range.replace(/:.*$/, "")));
  return ({ at, value }) => {
    const isRemark = typeof value === "string" && placeOf(at).column === last && !covered.has(at);
    return isRemark ? Math.ceil(value.length / (LETTERS * width)) : 0;
  };
}
