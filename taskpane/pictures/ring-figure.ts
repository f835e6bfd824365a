/** Where the lines of the ring lie: angles from the top, clockwise. */

import type { Ring, Sector } from "./ring";
import type { Point, Shape } from "./shape";
import { ACCENT, block, drawing, HOT, INK, LINE, line, PALE, shape, WIDTH, words, written } from "./shape";

const HEIGHT = 214;
const CENTER: Point = { x: WIDTH / 2, y: 114 };
const RADIUS = { inner: 50, outer: 64, lap: 69, label: 76, travel: 30 } as const;
/** Tint of the warmest sector, and of a cold one. */
const TINT = { least: 0.06, most: 0.85 } as const;
const TRAVEL = { from: -55, to: 55 } as const;

export function ringFigure({ sectors, lap, overlap, rotor }: Ring, says: string): Shape {
  const most = Math.max(...sectors.map(({ rise }) => rise.value));
  return drawing({ width: WIDTH, height: HEIGHT }, says, [
    ...sectors.map((sector) => band(sector, most === 0 ? 0 : sector.rise.value / most)),
    ...lapOver(lap),
    words({ x: CENTER.x, y: 11 }, `start, overlap ${overlap.shown}`, { anchor: "middle", isBold: true }),
    words({ x: CENTER.x, y: 11 + LINE }, `${lap.mean.shown} in the overlap`, {
      anchor: "middle",
      fill: PALE,
    }),
    ...sectors.flatMap(label),
    ...travel(),
    words({ x: CENTER.x, y: CENTER.y + 8 }, rotor.shown, { anchor: "middle", isBold: true }),
  ]);
}

/** A point of a circle around the ring's center, degrees from the top. */
export function onCircle(radius: number, angle: number): Point {
  const turn = (angle * Math.PI) / 180;
  return { x: CENTER.x + radius * Math.sin(turn), y: CENTER.y - radius * Math.cos(turn) };
}

function at({ x, y }: Point): string {
  return `${written(x)} ${written(y)}`;
}

/** From one angle to another, as an SVG path has it; a whole turn in two halves, since its ends are the same point. */
function arc(radius: number, from: number, to: number): string {
  const sweep = to > from ? 1 : 0;
  const middle = (from + to) / 2;
  return [middle, to]
    .map((end) => `A${written(radius)} ${written(radius)} 0 0 ${String(sweep)} ${at(onCircle(radius, end))}`)
    .join("");
}

function band({ label: part, from, to }: Sector, warmth: number): Shape {
  const d =
    `M${at(onCircle(RADIUS.outer, from))}${arc(RADIUS.outer, from, to)}` +
    `L${at(onCircle(RADIUS.inner, to))}${arc(RADIUS.inner, to, from)}Z`;
  return shape("path", {
    "data-part": part,
    d,
    fill: HOT,
    "fill-opacity": TINT.least + (TINT.most - TINT.least) * warmth,
    stroke: INK,
  });
}

/** The start as a stroke across the ring, and outside it the way that is welded twice. */
function lapOver({ label: part, from, to }: Sector): Shape[] {
  return [
    shape("path", {
      "data-part": part,
      d: `M${at(onCircle(RADIUS.lap, from))}${arc(RADIUS.lap, from, to)}`,
      fill: "none",
      stroke: ACCENT,
      "stroke-width": 5,
    }),
    line(onCircle(RADIUS.inner - 5, 0), onCircle(RADIUS.lap + 5, 0), { "stroke-width": 2 }),
  ];
}

/** Amps and what belongs to them, outside the middle of the sector. */
function label({ from, to, mean, pulse, rise }: Sector): Shape[] {
  const middle = onCircle(RADIUS.label, (from + to) / 2);
  const texts = [mean.shown, ...(pulse === undefined ? [] : [pulse]), `+${rise.shown}`];
  const isBelow = middle.y > CENTER.y;
  const y = isBelow ? middle.y + 6 : middle.y - (texts.length - 2) * LINE;
  return block({ x: middle.x, y }, texts, middle.x < CENTER.x ? "end" : "start");
}

/** Which way the arc goes. */
function travel(): Shape[] {
  const tip = onCircle(RADIUS.travel, TRAVEL.to);
  const barbs = [-5, 5].map((aside) => onCircle(RADIUS.travel + aside, TRAVEL.to - 16));
  return [
    shape("path", {
      "data-part": "travel",
      d: `M${at(onCircle(RADIUS.travel, TRAVEL.from))}${arc(RADIUS.travel, TRAVEL.from, TRAVEL.to)}`,
      fill: "none",
      stroke: INK,
      "stroke-width": 1.5,
    }),
    shape("polygon", {
      points: [tip, ...barbs].map(({ x, y }) => `${written(x)},${written(y)}`).join(" "),
      fill: INK,
    }),
    words({ x: CENTER.x, y: CENTER.y - 10 }, "travel", { anchor: "middle", fill: PALE }),
  ];
}
