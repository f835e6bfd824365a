/** docs/help/figures/nearness.svg: errors of the model over the outside diameter, a dot a place. */

import type { Bound, Compared } from "../../test/nearness";
import { FACE_BOUNDS, faceError, ROOT_BOUNDS, rootError } from "../../test/nearness";
import { ALIKE, STAINLESS } from "../../test/src/heat-flow/tube-runs";

export const SHOWS =
  "Two plots over the outside diameter from 3 to 125 mm, a dot for each place compared with an independent 3-D solution: above, the error of the face width in percent, below, that of the root width in mm. Full dots are stainless steels, rings are made-up metals with the conductivity of titanium and carbon steel. Dashed lines are the bounds that 95 of 100 places of stainless steels keep. Errors shrink as tubes grow.";

/** Outside diameters at the edges, mm; the scale is logarithmic. */
const [NARROWEST, WIDEST] = [3, 125];
const TICKS = [5, 10, 20, 50, 100];
const [LEFT, WIDTH, HEIGHT] = [56, 408, 168];

const STYLE = `
    text { font: 15px Arial, Helvetica, sans-serif; fill: #1d2b32; }
    .mid { text-anchor: middle; }
    .end { text-anchor: end; }
    .line { fill: none; stroke: #1d2b32; stroke-width: 1.75; }
    .thin { fill: none; stroke: #1d2b32; stroke-width: 1; }
    .hidden { fill: none; stroke: #1d2b32; stroke-width: 1; stroke-dasharray: 6 4; }
    .dots { fill: none; stroke: #1f5f7a; stroke-width: 3; stroke-linecap: round; stroke-opacity: 0.6; }
    .rings { fill: none; stroke: #1f5f7a; stroke-width: 1; }
    @media (prefers-color-scheme: dark) {
      text { fill: #e8eef1; }
      .line, .thin, .hidden { stroke: #e8eef1; }
      .dots, .rings { stroke: #8fcbe4; }
    }
  `;

interface Panel {
  readonly top: number;
  readonly title: string;
  readonly error: (place: Compared) => number;
  /** Errors at the edges, either way. */
  readonly most: number;
  readonly ticks: readonly [value: number, told: string][];
  readonly bounds: readonly Bound[];
}

const PANELS: readonly Panel[] = [
  {
    top: 34,
    title: "face, error in %",
    error: faceError,
    most: 0.15,
    ticks: [-0.1, 0, 0.1].map((share) => [share, signed(100 * share)]),
    bounds: FACE_BOUNDS,
  },
  {
    top: 244,
    title: "root, error in mm",
    error: rootError,
    most: 1.5,
    ticks: [-1, 0, 1].map((length) => [length, signed(length)]),
    bounds: ROOT_BOUNDS,
  },
];

export function nearnessFigure(places: readonly Compared[]): string {
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 480 464" width="480" height="464" role="img" aria-labelledby="nearness-title" aria-describedby="nearness-desc">`,
    `  <title id="nearness-title">Errors of the model over the outside diameter</title>`,
    `  <desc id="nearness-desc">${SHOWS}</desc>`,
    `  <style>${STYLE}</style>`,
    ...PANELS.flatMap((panel) => drawn(panel, places)),
    ...TICKS.map((od) => label("mid", across(od), 244 + HEIGHT + 20, String(od))),
    label("mid", LEFT + WIDTH / 2, 244 + HEIGHT + 42, "outside diameter, mm"),
    "</svg>",
    "",
  ].join("\n");
}

function drawn({ top, title, error, most, ticks, bounds }: Panel, places: readonly Compared[]): string[] {
  const middle = top + HEIGHT / 2;
  const up = (value: number): number => middle - ((value / most) * HEIGHT) / 2;
  const at = (place: Compared): string => {
    const value = error(place);
    if (!(Math.abs(value) <= most && place.od >= NARROWEST && place.od <= WIDEST))
      throw new Error(`${title}: ${String(value)} at ${String(place.od)} mm is outside the plot`);
    return `${tenth(across(place.od))} ${tenth(up(value))}`;
  };
  const of = (metals: readonly string[]): Compared[] => places.filter(({ metal }) => metals.includes(metal));
  const steps = bounds
    .filter(({ metals }) => metals === STAINLESS)
    .flatMap(({ from, below, within }) => {
      const [start, end] = [Math.max(from, NARROWEST), Math.min(below, WIDEST)].map((od) =>
        tenth(across(od)),
      );
      return [1, -1].map((sign) => `M${start ?? ""} ${tenth(up(sign * within))}H${end ?? ""}`);
    });
  return [
    label("", LEFT, top - 10, title),
    `  <path class="line" d="M${String(LEFT)} ${String(top)}V${String(top + HEIGHT)}H${String(LEFT + WIDTH)}"/>`,
    `  <path class="thin" d="M${String(LEFT)} ${String(middle)}H${String(LEFT + WIDTH)}"/>`,
    ...ticks.map(([value, told]) => label("end", LEFT - 6, up(value) + 5, told)),
    `  <path class="rings" d="${of(ALIKE)
      .map((place) => `M${at(place)}m-2 0a2 2 0 1 0 4 0a2 2 0 1 0-4 0`)
      .join("")}"/>`,
    `  <path class="dots" d="${of(STAINLESS)
      .map((place) => `M${at(place)}h0`)
      .join("")}"/>`,
    `  <path class="hidden" d="${steps.join("")}"/>`,
  ];
}

function across(od: number): number {
  return LEFT + (WIDTH * Math.log(od / NARROWEST)) / Math.log(WIDEST / NARROWEST);
}

function label(look: string, x: number, y: number, told: string): string {
  const of = look === "" ? "" : ` class="${look}"`;
  return `  <text${of} x="${tenth(x)}" y="${tenth(y)}">${told}</text>`;
}

/** With a true minus, and a plus before what is above 0. */
function signed(value: number): string {
  const size = String(Math.abs(Math.round(value)));
  return value < 0 ? `−${size}` : value > 0 ? `+${size}` : size;
}

function tenth(pixels: number): string {
  return String(Math.round(10 * pixels) / 10);
}
