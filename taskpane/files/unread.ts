/** What a file has that no sheet of ours can hold, by kind: told on opening, since the next save is without it. */

import { strFromU8, unzipSync } from "fflate";
import type { Cell, Sheet } from "hucre/xlsx";

import { AS_STORED } from "./drawn-pictures";
import { VALUE_ONLY } from "./write";

const KINDS: readonly (readonly [kind: string, isIn: (sheet: Sheet) => boolean])[] = [
  ["pictures", ({ images, backgroundImage }) => has(images) || backgroundImage !== undefined],
  ["tables as such (their cells are there)", ({ tables }) => has(tables)],
  ["pivot tables as such (their cells are there)", ({ pivotTables }) => has(pivotTables)],
  ["slicers", ({ slicers, timelines }) => has(slicers) || has(timelines)],
  ["sparklines", ({ sparklines }) => has(sparklines)],
  ["protection of sheets", ({ protection }) => protection !== undefined],
  [
    "notes and comments",
    (sheet) => has(sheet.threadedComments) || someCell(sheet, ({ comment }) => isNote(comment)),
  ],
  ["links", (sheet) => someCell(sheet, ({ hyperlink }) => hyperlink !== undefined)],
  ["looks of single words in a cell", (sheet) => someCell(sheet, ({ richText }) => has(richText))],
  [
    "that rows or columns were hidden (they are shown)",
    ({ rowDefs, columns }) =>
      [...(rowDefs?.values() ?? [])].some(({ hidden }) => hidden === true) ||
      (columns ?? []).some(({ hidden }) => hidden === true),
  ],
];

export function unreadIn(sheet: Sheet): string[] {
  return KINDS.flatMap(([kind, isIn]) => (isIn(sheet) ? [kind] : []));
}

const DRAWING = /^xl\/drawings\/drawing\d+\.xml$/;
const ANCHOR = /<(?:\w+:)?(twoCellAnchor|oneCellAnchor|absoluteAnchor)\b.*?<\/(?:\w+:)?\1>/gs;
const SHAPE = /<(?:\w+:)?(?:sp|grpSp|cxnSp)>|<(?:\w+:)?(?:sp|grpSp|cxnSp) /;
/** The pictures of the joint and the words below them. */
const OWN_SHAPES = 4;

/** Whether somebody drew shapes into the file: beside those that we drew, which are drawn anew on saving. */
export function hasForeignShapes(file: Uint8Array): boolean {
  const drawings = unzipSync(file, { filter: ({ name }) => DRAWING.test(name) });
  return Object.values(drawings).some((part) => {
    const xml = strFromU8(part);
    const shapes = (xml.match(ANCHOR) ?? []).filter((anchor) => SHAPE.test(anchor));
    return shapes.length > (xml.includes(AS_STORED) ? OWN_SHAPES : 0);
  });
}

function has(all: readonly unknown[] | undefined): boolean {
  return all !== undefined && all.length > 0;
}

function someCell({ cells }: Sheet, holds: (cell: Cell) => boolean): boolean {
  return [...(cells?.values() ?? [])].some(holds);
}

function isNote(comment: Cell["comment"]): boolean {
  return comment !== undefined && comment.text !== VALUE_ONLY;
}
