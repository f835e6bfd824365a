/** Where a planned sheet goes on to another page, found from the plan before Excel has measured a row. */

import { blocksAcross, pagesOf } from "../../sheets/pages";
import type { SheetPlan } from "../../sheets/sheet";
import { placeOf } from "../../sheets/addresses";
import { LOOKS } from "../looks";

/** Points that a row has as Excel makes it, and a line of text of a size. */
const ROW_HEIGHT = 15;
const OF_SIZE = 1.35;

/** Rows, from 0, before which a page ends. A list goes on where Excel's page is full. */
export function pageStarts({ cells, widths, print }: SheetPlan): readonly number[] {
  if (print.paper === "list" || print.paper === "page") return [];
  const [first = "", last = first] = print.area.split(":");
  const [top, bottom] = [placeOf(first).row, placeOf(last).row];
  const heights = Array.from({ length: bottom + 1 - top }, () => ROW_HEIGHT);
  for (const { at, look, lines = 1 } of cells) {
    const row = placeOf(at).row - top;
    const height = lines * Math.max(ROW_HEIGHT, OF_SIZE * (LOOKS[look].size ?? 0));
    if (row >= 0 && row < heights.length) heights[row] = Math.max(heights[row] ?? 0, height);
  }
  const headings = cells
    .filter(({ at, look }) => look === "section" && placeOf(at).column === 0)
    .map(({ at, columns = 1 }) => ({ row: placeOf(at).row, width: columns }));
  const { starts } = pagesOf({
    widths: widths.slice(0, placeOf(last).column + 1),
    heights,
    blocks: blocksAcross(headings)
      .filter((row) => row >= top && row <= bottom)
      .map((row) => row - top),
    paper: print.paper,
  });
  return starts.map((row) => row + top);
}
