/**
 * Where a sheet goes on to another page of paper: a form between its blocks, a list between its lines under the heading
 * again. The browser's print and the file ask here, so that both break before the same rows.
 */

import type { Paper } from "./sheet";

/** Names of a column of a list, from its heading on: every page of the list begins with that row. */
const LIST_NAMES: readonly string[] = ["list_ods", "log_joint"];

export function isListName(name: string): boolean {
  return LIST_NAMES.includes(name);
}

/** Paper above and below the print, inches. */
export const MARGINS = { top: 0.47, bottom: 0.6, header: 0.25, footer: 0.25 } as const;
/** The least at each side, inches. */
const LEAST_SIDE = 0.43;

/**
 * The paper that has less height for its width, points: Letter upright, A4 across. A sheet that is fitted to the width of
 * the other one is smaller on it, and has more room.
 */
const PAPERS: Readonly<Record<Paper, readonly [width: number, height: number]>> = {
  form: [612, 792],
  wide: [842, 595],
  page: [612, 792],
  list: [842, 595],
};
const POINTS_PER_INCH = 72;
/** Points that a character of a column's width takes, in the font that sheets are written in. */
const CHARACTER = 5.25;
/** Of the height, for a screen that measures columns narrower than this. */
const SPARE = 0.97;
/** Letters of 11 points are 8 then, as small as one reads at arm's length; on a wide form a little smaller. */
const LEAST_SCALE: Readonly<Record<Paper, number>> = { form: 73, wide: 69, page: 69, list: 73 };

/** Of a page: where more of it is taken, a list begins on the next. */
const MOST_ABOVE_LIST = 0.7;

export interface Laid {
  /** Columns that are printed, characters. */
  readonly widths: readonly number[];
  /** Rows that are printed, points. */
  readonly heights: readonly number[];
  /** Rows, from 0, with which a block begins. */
  readonly blocks: readonly number[];
  /** The row that heads a list, whose lines may go on to another page anywhere. */
  readonly heading?: number | undefined;
  readonly paper: Paper;
}

export interface Pages {
  /** Percent of its size on the screen. */
  readonly scale: number;
  /** Paper at each side, inches: fitted to the width that is left, the sheet has this scale. */
  readonly side: number;
  /** Rows, from 0, before which a page ends. */
  readonly starts: readonly number[];
}

/** As few pages as legible letters allow, one where a sheet asks for that, and of those the ones with the largest letters. */
export function pagesOf(sheet: Laid): Pages {
  const [width, height] = PAPERS[sheet.paper];
  const room = SPARE * (height - POINTS_PER_INCH * (MARGINS.top + MARGINS.bottom));
  const across = CHARACTER * total(sheet.widths);
  const most = Math.floor(Math.min(100, (100 * (width - 2 * POINTS_PER_INCH * LEAST_SIDE)) / across));
  if (sheet.paper === "page") {
    const scale = Math.max(1, Math.min(most, Math.floor((100 * room) / total(sheet.heights))));
    return { scale, side: sideOf(width, across, scale), starts: [] };
  }
  const least = Math.max(1, Math.min(most, LEAST_SCALE[sheet.paper]));
  // What stands above the first block is on one page where that can be.
  const above = total(sheet.heights.slice(0, sheet.blocks[0]));
  const pagesAt = (starts: readonly number[], percent: number): number =>
    starts.length + (above > (100 * room) / percent ? 1 : 0);
  let [scale, starts] = [least, startsAt(sheet, (100 * room) / least)];
  for (let larger = least + 1; larger <= most; larger += 1) {
    const then = startsAt(sheet, (100 * room) / larger);
    if (pagesAt(then, larger) <= pagesAt(starts, scale)) [scale, starts] = [larger, then];
  }
  return { scale, side: sideOf(width, across, scale), starts };
}

/** What is left at each side of the print, inches. */
function sideOf(width: number, across: number, scale: number): number {
  const side = (width - (across * scale) / 100) / 2 / POINTS_PER_INCH;
  return Math.round(100 * Math.max(LEAST_SIDE, side)) / 100;
}

/**
 * Rows with which a block begins: those whose heading lies across as much of the sheet as the widest does. Beside a narrower
 * one stands something else, which no page is to part.
 */
export function blocksAcross(
  headings: readonly { readonly row: number; readonly width: number }[],
): number[] {
  const widest = headings.reduce((most, { width }) => Math.max(most, width), 0);
  return headings
    .filter(({ width }) => width === widest)
    .map(({ row }) => row)
    .sort((a, b) => a - b);
}

/** Before which rows a page ends that has room for so many points of rows. */
function startsAt({ heights, blocks, heading }: Laid, room: number): number[] {
  const starts: number[] = [];
  let used = total(heights.slice(0, blocks[0]));
  blocks.forEach((first, i) => {
    const end = blocks[i + 1] ?? heights.length;
    const height = total(heights.slice(first, end));
    const isList = heading !== undefined && heading >= first && heading < end;
    if (isList && used > room * MOST_ABOVE_LIST) {
      starts.push(first);
      used = height % room;
      // One that no page has room for goes on where it is.
    } else if (isList || height > room) used = (used + height) % room;
    else if (used + height <= room) used += height;
    else {
      starts.push(first);
      used = height;
    }
  });
  return starts;
}

function total(lengths: readonly number[]): number {
  return lengths.reduce((sum, one) => sum + one, 0);
}
