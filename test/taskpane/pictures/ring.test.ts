import fc from "fast-check";

import { RUNS } from "../../arbitrary-cells";
import { onCircle } from "../../../taskpane/pictures/ring-figure";
import type { Joint } from "./shown-joint";
import { JOINT, partOf, pictureOf, spoken, textsIn } from "./shown-joint";

type Row = readonly (number | string)[];
const PARTS = ["Sector 1", "Sector 2", "Sector 3", "Sector 4"];

function withMeans(means: readonly number[], rises: readonly number[] = [0, 5, 100, 250, 300]): Joint {
  const rows = (JOINT.means ?? []).map((row, i): Row => [
    row[0] ?? 0,
    row[1] ?? 0,
    means[i] ?? 0,
    rises[i] ?? 0,
  ]);
  return { ...JOINT, means: rows };
}

/** Every point that a path passes through, in order: the last two numbers of each of its commands. */
function pointsOf(d: string): { x: number; y: number }[] {
  return [...d.matchAll(/[MLA]([^MLAZ]+)/g)].map(([, numbers = ""]) => {
    const [x = NaN, y = NaN] = numbers.trim().split(" ").slice(-2).map(Number);
    return { x, y };
  });
}

const CENTER = onCircle(0, 0);

/** Degrees from the top, clockwise, 0 to 360, and how far from the center. */
function polar({ x, y }: { x: number; y: number }): { angle: number; radius: number } {
  const angle = (Math.atan2(x - CENTER.x, CENTER.y - y) * 180) / Math.PI;
  return { angle: (angle + 360) % 360, radius: Math.hypot(x - CENTER.x, y - CENTER.y) };
}

/** Degrees between two directions. */
function apart(one: number, other: number): number {
  return Math.abs(((one - other + 540) % 360) - 180);
}

test(`each sector's arc begins and ends where the sector does, and the lap over the beginning; ${RUNS}`, () => {
  const cut = fc.uniqueArray(fc.integer({ min: 1, max: 359 }), { minLength: 3, maxLength: 3 });
  fc.assert(
    fc.property(cut, fc.integer({ min: 1, max: 360 }), (cuts, lap) => {
      const ends = [0, ...[...cuts].sort((a, b) => a - b), 360, 360 + lap];
      const means = (JOINT.means ?? []).map((row, i): Row => [
        ends[i] ?? 0,
        ends[i + 1] ?? 0,
        row[2] ?? 0,
        row[3] ?? 0,
      ]);
      const picture = pictureOf("ring", { ...JOINT, means, overlap: [[lap]] });
      PARTS.forEach((part, i) => {
        const points = pointsOf(partOf(picture, part).attributes.d ?? "").map(polar);
        const [from = 0, to = 0] = [ends[i], ends[i + 1]];
        // Out along the rim by its middle, in, and back.
        const angles = [from, (from + to) / 2, to, to, (from + to) / 2, from];
        expect(points).toHaveLength(angles.length);
        points.forEach(({ angle }, at) => {
          expect(apart(angle, angles[at] ?? 0)).toBeLessThan(0.01);
        });
      });
      const over = pointsOf(partOf(picture, "Overlap").attributes.d ?? "").map(polar);
      [0, lap / 2, lap].forEach((angle, at) => {
        expect(apart(over[at]?.angle ?? NaN, angle)).toBeLessThan(0.01);
      });
      // Outside the ring, so that both are seen.
      expect(over[0]?.radius).toBeGreaterThan(
        polar(pointsOf(partOf(picture, "Sector 1").attributes.d ?? "")[0] ?? CENTER).radius,
      );
    }),
  );
});

test.each([
  ["less", [50, 49, 47, 43.5, 41], "The last quarter needs 13 % less current than the first"],
  ["more", [50, 51, 53, 56.5, 41], "The last quarter needs 13 % more current than the first"],
  ["all equal", [50, 50, 50, 50, 41], "Every quarter needs the same current"],
  ["ends equal", [50, 49, 51, 50, 41], "The last quarter needs as much current as the first"],
  // 0.25 A of 50 A is half a percent, the least that is told with its number.
  ["half a percent less", [50, 49, 49, 49.75, 41], "The last quarter needs 1 % less current than the first"],
  [
    "under half a percent less",
    [50, 49, 49, 49.76, 41],
    "The last quarter needs slightly less current than the first",
  ],
  [
    "under half a percent more",
    [50, 49, 49, 50.24, 41],
    "The last quarter needs slightly more current than the first",
  ],
  // Four digits are shown: 50 both.
  [
    "a difference that is not shown",
    [50, 49, 49, 49.99999, 41],
    "The last quarter needs as much current as the first",
  ],
])("the finding: %s", (_, means, title) => {
  const picture = pictureOf("ring", withMeans(means));
  expect(picture.title).toBe(title);
  expect(spoken(picture).startsWith(title)).toBe(true);
});

test("sectors that are no quarters are not called so", () => {
  const ends = [0, 80, 180, 270, 360, 380];
  const means = (JOINT.means ?? []).map((row, i): Row => [
    ends[i] ?? 0,
    ends[i + 1] ?? 0,
    row[2] ?? 0,
    row[3] ?? 0,
  ]);
  expect(pictureOf("ring", { ...JOINT, means }).title).toBe(
    "The last sector needs 13 % less current than the first",
  );
});

test("tint goes with the heat that has come around, and words tell where none has", () => {
  const tints = (joint: Joint): number[] =>
    PARTS.map((part) => Number(partOf(pictureOf("ring", joint), part).attributes["fill-opacity"]));
  const [first = 0, second = 0, third = 0, fourth = 0] = tints(JOINT);
  expect(second).toBeGreaterThan(first);
  // In proportion: 100 of 250 degrees.
  expect((third - first) / (fourth - first)).toBeCloseTo(0.4, 2);
  expect(pictureOf("ring", JOINT).notes[0]).toBe("Tint: heat that has come around, up to +250 °F.");
  const cold = withMeans([50, 50, 50, 50, 50], [0, 0, 0, 0, 0]);
  expect(new Set(tints(cold))).toEqual(new Set([first]));
  expect(pictureOf("ring", cold).notes[0]).toBe(
    "No heat has come around: the tube ahead of the arc stays cold.",
  );
});

test("amps, pulse and rise stand at every sector; a steady arc has no pulse", () => {
  const pulsed = textsIn(pictureOf("ring", JOINT));
  for (const text of [
    "50 A",
    "65/19.5 A",
    "+250 °F",
    "start, overlap 20°",
    "41 A in the overlap",
    "1.635 rpm",
  ])
    expect(pulsed).toContain(text);
  const steady = textsIn(pictureOf("ring", { ...JOINT, style: [["steady"]], peaks: [], backs: [] }));
  expect(steady).toContain("43.5 A");
  expect(steady.join()).not.toContain("/");
  const metric = textsIn(pictureOf("ring", { ...JOINT, sheet_units: [["SI"]] }));
  expect(metric).toContain("+250 °C");
});

test("a blank row that a person inserted between the sectors changes nothing", () => {
  const means = [...(JOINT.means ?? [])];
  means.splice(2, 0, ["", "", "", ""]);
  expect(pictureOf("ring", { ...JOINT, means })).toEqual(pictureOf("ring", JOINT));
});

test("sectors out of order are told, not drawn", () => {
  const means = [...(JOINT.means ?? [])].reverse();
  const { drawing, missing } = pictureOf("ring", { ...JOINT, means });
  expect(drawing).toBeUndefined();
  expect(missing?.what.join()).toContain("a turn in order: sector 1 goes from 360° to 380°");
});
