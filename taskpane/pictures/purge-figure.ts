/** Where the lines of the purge curve lie: even seconds across, powers of ten up. */

import type { Purge, Sample } from "./purge";
import type { Point, Shape } from "./shape";
import { ACCENT, drawing, grouped, HOT, INK, LINE, line, PALE, shape, WIDTH, words, written } from "./shape";

const HEIGHT = 204;
const PLOT = { left: 54, right: WIDTH - 8, top: 22, bottom: HEIGHT - 32 } as const;
/** Room at the right of the curve for words, in proportion to its time. */
const BEYOND = 1.3;
/** About as many marks along the time. */
const MARKS = 4;
/** Room above the curve, powers of ten. */
const HEAD = 0.1;
/** A power of ten that a computer's logarithm misses by less is hit. */
const SLIP = 1e-9;

interface Scale {
  readonly seconds: number;
  /** Logarithms at the foot, a power of ten, and at the head, a little above the curve. */
  readonly low: number;
  readonly high: number;
}

export function purgeFigure({ samples, target, reached }: Purge, says: string): Shape {
  const scale = scaleOf(samples);
  const at = placed(scale);
  const point = at({ seconds: reached.value, ppm: target.value });
  const isEarly = point.x < (PLOT.left + PLOT.right) / 2;
  return drawing({ width: WIDTH, height: HEIGHT }, says, [
    words({ x: 2, y: 11 }, "oxygen, ppm", { fill: PALE }),
    words({ x: PLOT.right, y: HEIGHT - 3 }, "purge time, s", { anchor: "end", fill: PALE }),
    ...levels(scale),
    ...times(scale),
    line(
      { x: PLOT.left, y: point.y },
      { x: PLOT.right, y: point.y },
      {
        "data-part": "target",
        stroke: ACCENT,
        "stroke-width": 1.5,
        "stroke-dasharray": "6 3",
      },
    ),
    words({ x: isEarly ? PLOT.right : PLOT.left + 4, y: point.y - 5 }, `target ${target.shown}`, {
      anchor: isEarly ? "end" : "start",
    }),
    line(point, { x: point.x, y: PLOT.bottom }, { "stroke-dasharray": "2 2" }),
    shape("polyline", {
      "data-part": "curve",
      points: samples
        .map((sample) => at(sample))
        .map(({ x, y }) => `${written(x)},${written(y)}`)
        .join(" "),
      fill: "none",
      stroke: HOT,
      "stroke-width": 2.5,
    }),
    shape("circle", { "data-part": "reached", cx: point.x, cy: point.y, r: 4, fill: INK }),
    words({ x: point.x + 6, y: isEarly ? point.y - 5 - LINE : point.y - 6 }, reached.shown, { isBold: true }),
  ]);
}

/** As far as the samples go: from the power of ten below the least to just above the most. */
export function scaleOf(samples: readonly Sample[]): Scale {
  const logs = samples.map(({ ppm }) => Math.log10(ppm));
  const low = Math.floor(Math.min(...logs) + SLIP);
  const longest = Math.max(...samples.map(({ seconds }) => seconds));
  return {
    seconds: longest === 0 ? 1 : longest * BEYOND,
    low,
    high: Math.max(low + 1, Math.max(...logs) + HEAD),
  };
}

function placed({ seconds: most, low, high }: Scale): (sample: Sample) => Point {
  return ({ seconds, ppm }) => ({
    x: PLOT.left + ((PLOT.right - PLOT.left) * seconds) / most,
    y: PLOT.bottom - ((PLOT.bottom - PLOT.top) * (Math.log10(ppm) - low)) / (high - low),
  });
}

/** A level line and its number for every power of ten. */
function levels(scale: Scale): Shape[] {
  const at = placed(scale);
  return Array.from(
    { length: Math.floor(scale.high + SLIP) - scale.low + 1 },
    (_, i) => scale.low + i,
  ).flatMap((power) => {
    const ppm = Number(`1e${String(power)}`);
    const { y } = at({ seconds: 0, ppm });
    return [
      line({ x: PLOT.left, y }, { x: PLOT.right, y }, { "stroke-opacity": power === scale.low ? 1 : 0.25 }),
      words({ x: PLOT.left - 4, y: y + 4 }, grouped(ppm), { anchor: "end", fill: PALE }),
    ];
  });
}

/** Marks of the time at 1, 2 or 5 of a power of ten. */
function times(scale: Scale): Shape[] {
  const step = stepOf(scale.seconds / MARKS);
  const at = placed(scale);
  return Array.from({ length: Math.floor(scale.seconds / step) + 1 }, (_, i) => i * step).flatMap(
    (seconds) => {
      const { x } = at({ seconds, ppm: 10 ** scale.low });
      return [
        line({ x, y: PLOT.bottom }, { x, y: PLOT.bottom + 4 }),
        words({ x, y: PLOT.bottom + 15 }, grouped(Number(seconds.toPrecision(6))), {
          anchor: "middle",
          fill: PALE,
        }),
      ];
    },
  );
}

/** The least of 1, 2 and 5 of a power of ten that is not below a number. */
function stepOf(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least) + SLIP);
  return [1, 2, 5, 10].map((times) => times * power).find((step) => step >= least * (1 - SLIP)) ?? 10 * power;
}
