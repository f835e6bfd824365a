/** A drawing as data: the elements of an SVG, without a page to put them in. Lengths are in pixels of the drawing. */

export interface Shape {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly (Shape | string)[];
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Every drawing is as wide as a pane dragged down to 300 px has room for, so that its text is never smaller than there. */
export const WIDTH = 264;

/** Colors by name, which pane and card give; ink is that of the text around it, also where the system sets colors. */
export const INK = "currentColor";
export const PALE = "var(--faint)";
export const ACCENT = "var(--accent)";
export const HOT = "var(--arc)";
export const METAL = "var(--metal)";

export function shape(
  tag: string,
  attributes: Readonly<Record<string, string | number>>,
  ...children: readonly (Shape | string)[]
): Shape {
  const texts = Object.entries(attributes).map(([name, value]) => [name, written(value)] as const);
  return { tag, attributes: Object.fromEntries(texts), children };
}

/** The whole drawing; what it shows in words goes where a screen reader finds it. */
export function drawing({ width, height }: Size, says: string, parts: readonly Shape[]): Shape {
  return shape(
    "svg",
    { role: "img", "aria-label": says, viewBox: `0 0 ${written(width)} ${written(height)}` },
    ...parts,
  );
}

export function line(from: Point, to: Point, more: Readonly<Record<string, string | number>> = {}): Shape {
  return shape("line", { x1: from.x, y1: from.y, x2: to.x, y2: to.y, stroke: INK, ...more });
}

export interface TextStyle {
  readonly anchor?: "start" | "middle" | "end";
  readonly isBold?: boolean;
  readonly fill?: string;
}

/** Words that begin, center or end at a point of their baseline. */
export function words(
  at: Point,
  text: string,
  { anchor = "start", isBold, fill = INK }: TextStyle = {},
): Shape {
  return shape(
    "text",
    {
      x: at.x,
      y: at.y,
      "text-anchor": anchor,
      "font-size": 11,
      fill,
      ...(isBold === true ? { "font-weight": 600 } : {}),
    },
    text,
  );
}

/** Lines of words below each other, the first in bold. */
export function block(at: Point, texts: readonly string[], anchor: TextStyle["anchor"] = "start"): Shape[] {
  return texts.map((text, i) =>
    words({ x: at.x, y: at.y + i * LINE }, text, {
      anchor,
      isBold: i === 0,
      fill: i === 0 ? INK : PALE,
    }),
  );
}

/** From one line of words to the next. */
export const LINE = 13;

/** A number of a drawing, to a thousandth of a pixel. */
export function written(value: string | number): string {
  return typeof value === "string" ? value : String(Math.round(value * 1000) / 1000);
}

/** A number with its thousands apart. */
export function grouped(value: number): string {
  const [whole = "", ...rest] = String(value).split(".");
  return [whole.replace(/\B(?=(\d{3})+$)/g, ","), ...rest].join(".");
}
