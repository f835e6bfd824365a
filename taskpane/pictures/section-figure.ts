/** Where the lines of the bead's section lie: one scale for every length. */

import type { Section } from "./section";
import type { Point, Shape } from "./shape";
import { ACCENT, block, drawing, HOT, INK, LINE, line, METAL, shape, WIDTH, words } from "./shape";

/** The piece of wall that is drawn, px; right of it stand the sizes of gap and wall. */
const PLATE = { left: 8, width: 180 } as const;
const SIZES_AT = PLATE.left + PLATE.width + 8;
const TEXT_AT = SIZES_AT + 7;
const CENTER = PLATE.left + PLATE.width / 2;
/** How much wider the piece of wall is than bead and electrode; the latter leaves room for words at its left. */
const AROUND = { bead: 1.7, electrode: 2.6 } as const;
/** Gap, wall and the electrode's point together are no higher, px. */
const HIGHEST = 150;
/** The piece of electrode above its point, px. */
const SHANK = 32;
const BELOW = 32;
/** Two sizes of two lines each stand no nearer to each other, px. */
const APART = 2 * LINE + 2;

interface Figure {
  /** The smallest of wall, electrode, gap and the face, if there is one, px. */
  readonly thinnest: number;
  readonly drawing: Shape;
}

export function sectionFigure(section: Section, says: string): Figure {
  const { wall, face, root, electrode, gap } = section;
  const widest = Math.max(AROUND.bead * Math.max(face.value, root.value), AROUND.electrode * electrode.value);
  const scale = Math.min(PLATE.width / widest, HIGHEST / (gap.value + wall.value + electrode.value));
  const px = {
    wall: wall.value * scale,
    face: face.value * scale,
    root: root.value * scale,
    electrode: electrode.value * scale,
    gap: gap.value * scale,
  };
  const tip = SHANK + px.electrode;
  const outside = tip + px.gap;
  const bore = outside + px.wall;
  const height = Math.max(bore + BELOW, sizesEnd(tip, outside, bore));
  return {
    thinnest: Math.min(px.wall, px.electrode, px.gap, ...(px.face > 0 ? [px.face] : [])),
    drawing: drawing({ width: WIDTH, height }, says, [
      shape("rect", {
        "data-part": "wall",
        x: PLATE.left,
        y: outside,
        width: PLATE.width,
        height: px.wall,
        fill: METAL,
        stroke: INK,
      }),
      ...(px.root > 0 ? [bead(px.face, px.root, outside, bore)] : []),
      line(
        { x: CENTER, y: 2 },
        { x: CENTER, y: bore + 10 },
        {
          "data-part": "center",
          "stroke-dasharray": "8 2 2 2",
          "stroke-width": 0.75,
        },
      ),
      point(px.electrode, tip),
      words({ x: CENTER + px.electrode / 2 + 6, y: 12 }, `electrode ${electrode.shown}`),
      ...(px.face > 0 ? across("face", px.face, outside - 4) : []),
      ...block({ x: PLATE.left, y: outside - 12 - LINE }, ["face", face.shown]),
      ...(px.root > 0 ? across("root", px.root, bore + 5) : []),
      words({ x: CENTER, y: bore + 21 }, `root ${root.shown}`, { anchor: "middle", isBold: true }),
      ...sizes(section, tip, outside, bore),
    ]),
  };
}

/** Metal that melts, flush with both sides: how far it stands out is not computed. */
function bead(face: number, root: number, outside: number, bore: number): Shape {
  const [top, bottom] = [outside + (bore - outside) * 0.4, outside + (bore - outside) * 0.6];
  const x = (half: number): string => String(Math.round((CENTER + half) * 1000) / 1000);
  const y = (at: number): string => String(Math.round(at * 1000) / 1000);
  const [f, r] = [face / 2, root / 2];
  return shape("path", {
    "data-part": "bead",
    d:
      `M${x(-f)} ${y(outside)}L${x(f)} ${y(outside)}C${x(f)} ${y(top)} ${x(r)} ${y(bottom)} ${x(r)} ${y(bore)}` +
      `L${x(-r)} ${y(bore)}C${x(-r)} ${y(bottom)} ${x(-f)} ${y(top)} ${x(-f)} ${y(outside)}Z`,
    fill: HOT,
    "fill-opacity": 0.55,
    stroke: INK,
  });
}

/** The electrode: its diameter to scale, and a point as long as that. */
function point(diameter: number, tip: number): Shape {
  const [left, right, shoulder] = [CENTER - diameter / 2, CENTER + diameter / 2, tip - diameter];
  const corners = [
    [left, 2],
    [left, shoulder],
    [CENTER, tip],
    [right, shoulder],
    [right, 2],
  ];
  return shape("polyline", {
    "data-part": "electrode",
    points: corners.map(([x = 0, y = 0]) => `${x.toFixed(3)},${y.toFixed(3)}`).join(" "),
    fill: INK,
    "fill-opacity": 0.3,
    stroke: INK,
  });
}

/** A width, from end to end. */
function across(part: string, width: number, y: number): Shape[] {
  return size(part, { x: CENTER - width / 2, y }, { x: CENTER + width / 2, y }, { x: 0, y: 3 });
}

/** A size with a stroke at both ends. */
function size(part: string, from: Point, to: Point, stroke: Point): Shape[] {
  const end = ({ x, y }: Point): Shape =>
    line({ x: x - stroke.x, y: y - stroke.y }, { x: x + stroke.x, y: y + stroke.y }, { stroke: ACCENT });
  return [line(from, to, { "data-part": part, stroke: ACCENT }), end(from), end(to)];
}

/** Sizes of gap and wall at the right, their words apart even where the sizes are small. */
function sizes({ gap, wall }: Section, tip: number, outside: number, bore: number): Shape[] {
  const [gapAt, wallAt] = middles(tip, outside, bore);
  const upright = (part: string, from: number, to: number): Shape[] =>
    size(part, { x: SIZES_AT, y: from }, { x: SIZES_AT, y: to }, { x: 3, y: 0 });
  const thin = { "stroke-width": 0.75, "stroke-dasharray": "2 2" };
  return [
    line({ x: CENTER, y: tip }, { x: SIZES_AT, y: tip }, thin),
    line({ x: PLATE.left + PLATE.width, y: outside }, { x: SIZES_AT, y: outside }, thin),
    line({ x: PLATE.left + PLATE.width, y: bore }, { x: SIZES_AT, y: bore }, thin),
    ...upright("gap", tip, outside),
    ...upright("wall-size", outside, bore),
    ...block({ x: TEXT_AT, y: gapAt - 2 }, ["gap", gap.shown]),
    ...block({ x: TEXT_AT, y: wallAt - 2 }, ["wall", wall.shown]),
  ];
}

/** Where the words of gap and wall are centered. */
function middles(tip: number, outside: number, bore: number): readonly [gap: number, wall: number] {
  const [gap, wall] = [(tip + outside) / 2, (outside + bore) / 2];
  const push = Math.max(0, APART - (wall - gap)) / 2;
  return [gap - push, wall + push];
}

function sizesEnd(tip: number, outside: number, bore: number): number {
  return middles(tip, outside, bore)[1] + LINE + 4;
}
