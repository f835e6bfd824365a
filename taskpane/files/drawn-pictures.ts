/**
 * The pictures of the joint as native shapes side by side: a group each, with its finding and how to read it above the
 * drawing, as on the browser's paper. Lengths are in points.
 */

import type { Picture } from "../pictures/picture";
import { missingWords } from "../pictures/picture";
import { INK, PALE, WIDTH } from "../pictures/shape";
import { drawnShapes, PRINTED, sizeOf } from "./drawn-shapes";
import { EMU_PER_POINT, LINE_HEIGHT, wrappedText } from "./drawn-text";
import { whole } from "./drawn-path";
import { markup } from "./text";

/** Pictures and the lines above them; between two pictures, and between words and drawing. */
const LETTERS = 9;
const GAP = 8;
const ABOVE_DRAWING = 4;
/** Letters of a drawing are a little larger than on the screen, which the width of three would make too small. */
const LARGER = 11.5 / 11;
/** Of the size of letters, their width: few words have wider ones on average. */
const LETTER_WIDTH = 0.5;
/** The first number of a shape of ours; charts have those below. */
const FIRST_ID = 1001;

export const AS_STORED =
  "These pictures show the values stored when the file was saved. They do not follow the cells.";

export interface Drawn {
  /** From the left edge of the first picture. */
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** The shapes, a group of their own or a single one. */
  readonly xml: string;
}

/** Each picture, and last the words below them, in so much width. */
export function drawnPictures(pictures: readonly Picture[], width: number): Drawn[] {
  const slot = (width - GAP * (pictures.length - 1)) / pictures.length;
  const scale = slot / WIDTH;
  let id = FIRST_ID;
  const nextId = (): number => id++;
  // Drawings begin on one line.
  const above = Math.max(
    ...pictures.map((picture) => (picture.drawing === undefined ? 0 : linesHeight(captionOf(picture), slot))),
  );
  const groups = pictures.map((picture, i): Drawn => {
    const { title, drawing } = picture;
    const says = drawing?.attributes["aria-label"] ?? textOf(picture).join(" ");
    const words = textOf(picture);
    const wordsHeight = linesHeight(words, slot);
    const top = above + ABOVE_DRAWING;
    const height = drawing === undefined ? wordsHeight : top + sizeOf(drawing).height * scale;
    const groupId = nextId();
    const box = { id: nextId(), x: 0, y: 0, width: emu(slot), height: emu(wordsHeight) };
    const caption = wrappedText(
      box,
      words.map((text, line) => ({
        text,
        size: emu(LETTERS),
        rgb: rgb(line === 0 || drawing === undefined ? INK : PALE),
        isBold: line === 0,
      })),
    );
    const placing = { left: 0, top: emu(top), emu: emu(scale), letters: LARGER, nextId };
    const shapes = caption + (drawing === undefined ? "" : drawnShapes(drawing, placing));
    return {
      left: i * (slot + GAP),
      top: 0,
      width: slot,
      height,
      xml: group({ id: groupId, title, says, slot, height }, shapes),
    };
  });
  const height = Math.max(...groups.map((one) => one.height));
  const box = { id: nextId(), x: 0, y: 0, width: emu(width), height: emu(LETTERS * LINE_HEIGHT) };
  const remark = wrappedText(box, [{ text: AS_STORED, size: emu(LETTERS), rgb: rgb(PALE) }]);
  return [
    ...groups,
    { left: 0, top: height + ABOVE_DRAWING, width, height: LETTERS * LINE_HEIGHT, xml: remark },
  ];
}

function captionOf({ title, notes }: Picture): string[] {
  return [title, ...notes];
}

function textOf(picture: Picture): string[] {
  return picture.missing === undefined
    ? captionOf(picture)
    : [...captionOf(picture), ...missingWords(picture.missing)];
}

/** Of paragraphs that break at a width. */
function linesHeight(texts: readonly string[], width: number): number {
  const letters = Math.floor(width / (LETTER_WIDTH * LETTERS));
  return texts.reduce((sum, text) => sum + Math.ceil(text.length / letters), 0) * LETTERS * LINE_HEIGHT;
}

interface Group {
  readonly id: number;
  readonly title: string;
  readonly says: string;
  readonly slot: number;
  readonly height: number;
}

function group({ id, title, says, slot, height }: Group, shapes: string): string {
  const size = `cx="${whole(emu(slot))}" cy="${whole(emu(height))}"`;
  return (
    `<xdr:grpSp><xdr:nvGrpSpPr><xdr:cNvPr id="${String(id)}" name="${markup(title)}" descr="${markup(says)}"/><xdr:cNvGrpSpPr/></xdr:nvGrpSpPr>` +
    `<xdr:grpSpPr><a:xfrm><a:off x="0" y="0"/><a:ext ${size}/><a:chOff x="0" y="0"/><a:chExt ${size}/></a:xfrm></xdr:grpSpPr>` +
    `${shapes}</xdr:grpSp>`
  );
}

function emu(points: number): number {
  return points * EMU_PER_POINT;
}

function rgb(color: string): string {
  return PRINTED[color] ?? "";
}
