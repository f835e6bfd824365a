/** Words of a drawing as native text boxes without a frame. Lengths are in EMU. */

import { whole } from "./drawn-path";
import { markup } from "./text";

export const EMU_PER_POINT = 12_700;
/** Every system has it, or one with letters as wide, so that words end where the drawing has room for them. */
const LETTERS = "Arial";
/** Of the size of its letters: from the upper edge of a line to their foot, and to the next line. */
const FOOT = 0.92;
export const LINE_HEIGHT = 1.2;
/** Wider than most letters are, of their size. */
const WIDEST = 0.65;

export interface Words {
  readonly id: number;
  /** The point of their foot at which they begin, center or end. */
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly anchor: "start" | "middle" | "end";
  readonly rgb: string;
  readonly isBold: boolean;
  readonly text: string;
}

const SIDES = { start: ["l", 0], middle: ["ctr", 0.5], end: ["r", 1] } as const;

export function drawnText({ id, x, y, size, anchor, rgb, isBold, text }: Words): string {
  const [side, before] = SIDES[anchor];
  const width = WIDEST * size * Math.max(1, text.length);
  const box = { id, x: x - before * width, y: y - FOOT * size, width, height: LINE_HEIGHT * size };
  return textBox(box, "none", [paragraph({ text, size, rgb, isBold }, side)]);
}

export interface Paragraph {
  readonly text: string;
  readonly size: number;
  readonly rgb: string;
  readonly isBold?: boolean;
}

export interface TextBox {
  readonly id: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Paragraphs below each other, broken where the box ends. */
export function wrappedText(box: TextBox, paragraphs: readonly Paragraph[]): string {
  return textBox(
    box,
    "square",
    paragraphs.map((one) => paragraph(one, "l")),
  );
}

function textBox({ id, x, y, width, height }: TextBox, wrap: string, paragraphs: readonly string[]): string {
  return (
    `<xdr:sp macro="" textlink=""><xdr:nvSpPr><xdr:cNvPr id="${String(id)}" name="words"/><xdr:cNvSpPr txBox="1"/></xdr:nvSpPr>` +
    `<xdr:spPr><a:xfrm><a:off x="${whole(x)}" y="${whole(y)}"/><a:ext cx="${whole(width)}" cy="${whole(height)}"/></a:xfrm>` +
    '<a:prstGeom prst="rect"><a:avLst/></a:prstGeom><a:noFill/><a:ln><a:noFill/></a:ln></xdr:spPr>' +
    `<xdr:txBody><a:bodyPr vertOverflow="overflow" horzOverflow="overflow" wrap="${wrap}" lIns="0" tIns="0" rIns="0" bIns="0" anchor="t"/>` +
    `<a:lstStyle/>${paragraphs.join("")}</xdr:txBody></xdr:sp>`
  );
}

function paragraph({ text, size, rgb, isBold }: Paragraph, side: string): string {
  const letters = `<a:latin typeface="${LETTERS}"/><a:cs typeface="${LETTERS}"/>`;
  return (
    `<a:p><a:pPr algn="${side}"/><a:r><a:rPr lang="en-US" sz="${whole((100 * size) / EMU_PER_POINT)}" b="${isBold === true ? "1" : "0"}">` +
    `<a:solidFill><a:srgbClr val="${rgb}"/></a:solidFill>${letters}</a:rPr><a:t>${markup(text)}</a:t></a:r></a:p>`
  );
}
