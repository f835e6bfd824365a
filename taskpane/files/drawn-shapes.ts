/**
 * Elements of an SVG as native shapes of a sheet's drawing (ECMA-376, DrawingML), in print's colors. Throws on an element,
 * attribute or color that it does not know, so that no part of a drawing is left out.
 */

import type { Shape } from "../pictures/shape";
import { ACCENT, HOT, INK, METAL, PALE } from "../pictures/shape";
import { pathCommands, pointCommands, whole } from "./drawn-path";
import { drawnText } from "./drawn-text";
import { markup } from "./text";

/** As the browser sheet prints them. */
export const PRINTED: Readonly<Record<string, string>> = {
  [INK]: "1D2B32",
  [PALE]: "51626B",
  [ACCENT]: "1F5F7A",
  [HOT]: "C4532D",
  [METAL]: "DDE5E8",
};

export interface Placing {
  /** Where the drawing's own corner lies in its group, EMU. */
  readonly left: number;
  readonly top: number;
  /** EMU a pixel of the drawing. */
  readonly emu: number;
  /** How much larger than drawn its letters are. */
  readonly letters: number;
  /** The number of each next shape, of which a sheet's drawing has no two alike. */
  readonly nextId: () => number;
}

/** What every element may say of its look. */
const LOOK = [
  "data-part",
  "fill",
  "fill-opacity",
  "stroke",
  "stroke-width",
  "stroke-opacity",
  "stroke-dasharray",
];
const PLACES: Readonly<Record<string, readonly string[]>> = {
  rect: ["x", "y", "width", "height"],
  line: ["x1", "y1", "x2", "y2"],
  circle: ["cx", "cy", "r"],
  path: ["d"],
  polyline: ["points"],
  polygon: ["points"],
  text: ["x", "y", "text-anchor", "font-size", "font-weight"],
};

/** All elements of a drawing, one after another: later ones lie over earlier ones. */
export function drawnShapes({ tag, attributes, children }: Shape, placing: Placing): string {
  if (tag !== "svg") throw new Error(`a drawing is a ${tag}`);
  const size = sizeOf({ tag, attributes, children });
  return children
    .map((child) => {
      if (typeof child === "string") throw new Error(`a drawing has the bare words ${child}`);
      return element(child, size, placing);
    })
    .join("");
}

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Of a whole drawing, px. */
export function sizeOf({ attributes }: Shape): Size {
  const [left, top, width = NaN, height = NaN] = (attributes.viewBox ?? "").split(" ").map(Number);
  if (left !== 0 || top !== 0 || !(width > 0 && height > 0)) throw new Error("a drawing has no size");
  return { width, height };
}

function element(shape: Shape, size: Size, placing: Placing): string {
  const known = PLACES[shape.tag];
  if (known === undefined) throw new Error(`a drawing has a ${shape.tag}`);
  const unknown = Object.keys(shape.attributes).filter(
    (name) => !known.includes(name) && !LOOK.includes(name),
  );
  if (unknown.length > 0) throw new Error(`a ${shape.tag} has ${unknown.join(", ")}`);
  if (shape.tag === "text") return wordsOf(shape, placing);
  if (shape.children.length > 0) throw new Error(`a ${shape.tag} has something in it`);
  const { attributes, tag } = shape;
  const { emu } = placing;
  const at = (name: string): number => number(shape, name);
  if (tag === "line") {
    const [x1, y1, x2, y2] = [at("x1"), at("y1"), at("x2"), at("y2")];
    const box = {
      x: Math.min(x1, x2),
      y: Math.min(y1, y2),
      width: Math.abs(x2 - x1),
      height: Math.abs(y2 - y1),
    };
    return native(shape, placing, box, preset("line"), (x2 - x1) * (y2 - y1) < 0 ? ' flipV="1"' : "");
  }
  if (tag === "rect") {
    return native(
      shape,
      placing,
      { x: at("x"), y: at("y"), width: at("width"), height: at("height") },
      preset("rect"),
    );
  }
  if (tag === "circle") {
    const r = at("r");
    return native(
      shape,
      placing,
      { x: at("cx") - r, y: at("cy") - r, width: 2 * r, height: 2 * r },
      preset("ellipse"),
    );
  }
  const commands =
    tag === "path" ? pathCommands(attributes.d ?? "", emu) : pointCommands(attributes.points ?? "", emu);
  // Its box is the whole drawing, so that its points are those of the drawing.
  return native(
    shape,
    placing,
    { x: 0, y: 0, ...size },
    path(tag === "polygon" ? `${commands}<a:close/>` : commands, size, emu),
  );
}

function preset(name: string): string {
  return `<a:prstGeom prst="${name}"><a:avLst/></a:prstGeom>`;
}

function path(commands: string, { width, height }: Size, emu: number): string {
  return (
    '<a:custGeom><a:avLst/><a:gdLst/><a:ahLst/><a:cxnLst/><a:rect l="0" t="0" r="r" b="b"/><a:pathLst>' +
    `<a:path w="${whole(width * emu)}" h="${whole(height * emu)}">${commands}</a:path></a:pathLst></a:custGeom>`
  );
}

interface Box extends Size {
  readonly x: number;
  readonly y: number;
}

function native(
  shape: Shape,
  { left, top, emu, nextId }: Placing,
  box: Box,
  geometry: string,
  flip = "",
): string {
  const { tag, attributes } = shape;
  const name = markup(attributes["data-part"] ?? tag);
  const fill = tag === "line" ? "<a:noFill/>" : paint(attributes.fill, attributes["fill-opacity"]);
  return (
    `<xdr:sp macro="" textlink=""><xdr:nvSpPr><xdr:cNvPr id="${String(nextId())}" name="${name}"/><xdr:cNvSpPr/></xdr:nvSpPr>` +
    `<xdr:spPr><a:xfrm${flip}><a:off x="${whole(left + box.x * emu)}" y="${whole(top + box.y * emu)}"/>` +
    `<a:ext cx="${whole(box.width * emu)}" cy="${whole(box.height * emu)}"/></a:xfrm>` +
    `${geometry}${fill}${stroke(shape, emu)}</xdr:spPr></xdr:sp>`
  );
}

function paint(color: string | undefined, opacity = "1"): string {
  if (color === "none") return "<a:noFill/>";
  const rgb = PRINTED[color ?? ""];
  if (rgb === undefined) throw new Error(`a drawing has the color ${String(color)}`);
  const alpha = opacity === "1" ? "" : `<a:alpha val="${whole(numberOf(opacity) * 100_000)}"/>`;
  return `<a:solidFill><a:srgbClr val="${rgb}">${alpha}</a:srgbClr></a:solidFill>`;
}

/** Dashes are counted in widths of their line. */
function stroke({ attributes }: Shape, emu: number): string {
  if (attributes.stroke === undefined) return "<a:ln><a:noFill/></a:ln>";
  const width = numberOf(attributes["stroke-width"] ?? "1");
  const lengths =
    attributes["stroke-dasharray"]?.split(" ").map((px) => whole((numberOf(px) / width) * 100_000)) ?? [];
  if (lengths.length % 2 === 1) throw new Error("a dash has no gap");
  const dashes = lengths.flatMap((dash, i) =>
    i % 2 === 0 ? [`<a:ds d="${dash}" sp="${lengths[i + 1] ?? dash}"/>`] : [],
  );
  return (
    `<a:ln w="${whole(width * emu)}" cap="flat">${paint(attributes.stroke, attributes["stroke-opacity"])}` +
    `${dashes.length > 0 ? `<a:custDash>${dashes.join("")}</a:custDash>` : ""}<a:miter lim="400000"/></a:ln>`
  );
}

function wordsOf(shape: Shape, { left, top, emu, letters, nextId }: Placing): string {
  const { attributes, children } = shape;
  const [text, ...more] = children;
  const rgb = PRINTED[attributes.fill ?? ""];
  const anchor = attributes["text-anchor"] ?? "start";
  if (typeof text !== "string" || more.length > 0) throw new Error("a text has other than words in it");
  if (rgb === undefined) throw new Error(`a text has the color ${String(attributes.fill)}`);
  if (anchor !== "start" && anchor !== "middle" && anchor !== "end")
    throw new Error(`a text is at the ${anchor}`);
  return drawnText({
    id: nextId(),
    x: left + number(shape, "x") * emu,
    y: top + number(shape, "y") * emu,
    size: number(shape, "font-size") * emu * letters,
    anchor,
    rgb,
    isBold: attributes["font-weight"] === "600",
    text,
  });
}

function number({ tag, attributes }: Shape, name: string): number {
  const value = attributes[name];
  if (value === undefined) throw new Error(`a ${tag} has no ${name}`);
  return numberOf(value);
}

function numberOf(text: string): number {
  const value = Number(text);
  if (text === "" || !Number.isFinite(value)) throw new Error(`a drawing has “${text}” for a number`);
  return value;
}
