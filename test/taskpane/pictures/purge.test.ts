import fc from "fast-check";

import { RUNS } from "../../arbitrary-cells";
import { all, JOINT, length, partOf, pictureOf, secondsTo, spoken, textsIn } from "./shown-joint";

/** Where the curve passes, px. */
function curve(picture: ReturnType<typeof pictureOf>): { x: number; y: number }[] {
  return (partOf(picture, "curve").attributes.points ?? "").split(" ").map((point) => {
    const [x = NaN, y = NaN] = point.split(",").map(Number);
    return { x, y };
  });
}

test(`seconds are even and powers of ten too: what falls tenfold every two seconds is one straight line; ${RUNS}`, () => {
  fc.assert(
    fc.property(fc.double({ min: 11, max: 9000, noNaN: true }), (ppm) => {
      const picture = pictureOf("purge", { ...JOINT, target_ppm: [[ppm]], purge_time: [[secondsTo(ppm)]] });
      const points = curve(picture);
      const [first, last] = [points[0], points.at(-1)];
      if (first === undefined || last === undefined) throw new Error("no curve");
      const slope = (last.y - first.y) / (last.x - first.x);
      for (const { x, y } of points) expect(y - (first.y + slope * (x - first.x))).toBeCloseTo(0, 2);
      // The target's level line meets the curve at the purge time.
      const reached = { x: length(picture, "reached", "cx"), y: length(picture, "reached", "cy") };
      expect(reached.y).toBe(length(picture, "target", "y1"));
      expect(points.some(({ x, y }) => x === reached.x && y === reached.y)).toBe(true);
      expect((reached.x - first.x) / (last.x - first.x)).toBeCloseTo(secondsTo(ppm) / secondsTo(10), 4);
    }),
  );
});

test("axes have units, the scale its powers of ten, and the numbers are the sheet's", () => {
  const picture = pictureOf("purge", JOINT);
  const texts = textsIn(picture);
  for (const text of [
    "oxygen, ppm",
    "purge time, s",
    "10",
    "100",
    "1,000",
    "10,000",
    "100,000",
    "target 50 ppm",
  ])
    expect(texts).toContain(text);
  // 2 s times the powers of ten from 50 to 200 000 ppm, 3.60206.
  expect(texts).toContain("7.204 s");
  expect(picture.title).toBe("Down to 50 ppm after 7.204 s, if gas and air mix");
  expect(spoken(picture)).toContain("200,000 ppm at 0 s");
  const levels = all(picture.drawing).filter(({ attributes }) => attributes["stroke-opacity"] !== undefined);
  const heights = levels.map(({ attributes }) => Number(attributes.y1));
  const steps = heights.slice(1).map((y, i) => (heights[i] ?? 0) - y);
  for (const step of steps) expect(step).toBeCloseTo(steps[0] ?? NaN, 2);
});

test("a target that holds from the start is told so", () => {
  const picture = pictureOf("purge", { ...JOINT, purge_time: [[0]], target_ppm: [[200_000]] });
  expect(picture.title).toBe("The bore has no more than 200000 ppm from the start");
});

test("a curve that ends where the purge gas itself has more oxygen is drawn as far as it goes", () => {
  const levels = (JOINT.levels ?? []).map((row, i) => (i < 9 ? row : ["", ""]));
  const picture = pictureOf("purge", {
    ...JOINT,
    levels,
    target_ppm: [[1000]],
    purge_time: [[secondsTo(1000)]],
  });
  expect(curve(picture)).toHaveLength(10);
  // To 500 ppm, so the scale begins at 100.
  expect(textsIn(picture)).not.toContain("10");
});

test("times that do not rise are told, not drawn", () => {
  const levels = [...(JOINT.levels ?? [])].reverse();
  const { drawing, missing } = pictureOf("purge", { ...JOINT, levels });
  expect(drawing).toBeUndefined();
  expect(missing?.what).toEqual(["oxygen that falls with time"]);
});
