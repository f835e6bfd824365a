/** The pages that a sheet is printed on, found from how it looks. */

import { placeOf } from "../sheets/addresses";
import { isBlockFill } from "../hosts/looks";
import type { Pages } from "../sheets/pages";
import { blocksAcross, isListName, pagesOf } from "../sheets/pages";
import type { Snapshot } from "./sheet-state";

/** What a row without a height of its own has, points. */
export const ROW_HEIGHT = 15;

export interface PrintedPages extends Pages {
  /** The row, from 0, that every page of a list begins with. */
  readonly heading?: number;
}

/** Undefined for a sheet that says nothing of how it prints. `more`: rows, from 0, with which a block without a heading begins. */
export function printedPages(sheet: Snapshot, more: readonly number[] = []): PrintedPages | undefined {
  const { print, names, widths, heights } = sheet;
  if (print === undefined) return undefined;
  const [first = "", last = first] = print.area.split(":");
  const { column, row } = placeOf(last);
  // Of some sheets a part alone prints, which has rows above it.
  const top = placeOf(first).row;
  const list = print.paper === "list" ? names.find(({ name }) => isListName(name)) : undefined;
  const heading = list === undefined ? undefined : placeOf(list.range.replace(/:.*$/, "")).row;
  const blocks = [...blocksOf(sheet), ...more]
    .filter((start) => start >= top && start <= row)
    .map((start) => start - top);
  const pages = pagesOf({
    widths: widths.slice(0, column + 1),
    heights: Array.from({ length: row + 1 - top }, (_, i) => heights[top + i] ?? ROW_HEIGHT),
    blocks,
    heading: heading === undefined ? undefined : heading - top,
    paper: print.paper,
  });
  const starts = pages.starts.map((start) => start + top);
  return { ...pages, starts, ...(heading === undefined ? {} : { heading }) };
}

/** Rows, from 0, with which a block begins. */
export function blocksOf({ cells, merges }: Pick<Snapshot, "cells" | "merges">): number[] {
  const across = new Map(
    merges.map((range): [string, number] => {
      const [first = "", last = first] = range.split(":");
      return [first, placeOf(last).column];
    }),
  );
  const headings = cells
    .filter(({ at, style }) => isBlockFill(style.fill) && placeOf(at).column === 0)
    .map(({ at }) => ({ row: placeOf(at).row, width: across.get(at) ?? 0 }));
  return blocksAcross(headings);
}
