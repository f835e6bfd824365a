import fc from "fast-check";

import { RUNS } from "../../arbitrary-cells";
import type { Joint } from "./shown-joint";
import { JOINT, length, partOf, pictureOf, spoken, textsIn } from "./shown-joint";

const column = (...numbers: readonly (number | string)[]): Joint[string] => numbers.map((one) => [one]);
const five = (one: number): Joint[string] => column(one, one, one, one, one);
/** A coordinate is written to a thousandth of a pixel, and a length lies between two of them. */
const WRITTEN = 0.0011;

const size = fc.double({ min: 0.01, max: 0.5, noNaN: true });

test(`every length of the drawing has one scale: wall, face, root, gap and electrode as their numbers; ${RUNS}`, () => {
  fc.assert(
    fc.property(size, size, size, size, size, (wall, face, root, standoff, electrode) => {
      const picture = pictureOf("section", {
        ...JOINT,
        wall: [[wall]],
        standoff: [[standoff]],
        electrode: [[electrode]],
        faces: five(face),
        roots: five(root),
      });
      const between = (part: string, from: string, to: string): number =>
        length(picture, part, to) - length(picture, part, from);
      const scale = between("face", "x1", "x2") / face;
      const near = (px: number, number: number): void => {
        expect(Math.abs(px - number * scale)).toBeLessThan(WRITTEN * (1 + number / face));
      };
      near(length(picture, "wall", "height"), wall);
      near(between("wall-size", "y1", "y2"), wall);
      near(between("root", "x1", "x2"), root);
      near(between("gap", "y1", "y2"), standoff);
      const points = (partOf(picture, "electrode").attributes.points ?? "")
        .split(" ")
        .map((point) => point.split(",").map(Number));
      near((points[4]?.[0] ?? NaN) - (points[0]?.[0] ?? NaN), electrode);
      // The tip stands on the center line, as high above the outside as the gap is.
      expect(points[2]?.[0]).toBe(length(picture, "center", "x1"));
      expect(points[2]?.[1]).toBeCloseTo(length(picture, "gap", "y1"), 2);
      expect(length(picture, "gap", "y2")).toBe(length(picture, "wall", "y"));
    }),
  );
});

test(`nothing of it lies outside the picture; ${RUNS}`, () => {
  fc.assert(
    fc.property(size, size, size, size, size, (wall, face, root, standoff, electrode) => {
      const picture = pictureOf("section", {
        ...JOINT,
        wall: [[wall]],
        standoff: [[standoff]],
        electrode: [[electrode]],
        faces: five(face),
        roots: five(root),
      });
      const [, , width = 0, height = 0] = (picture.drawing?.attributes.viewBox ?? "").split(" ").map(Number);
      for (const shape of picture.drawing?.children ?? []) {
        if (typeof shape === "string") continue;
        for (const [name, value] of Object.entries(shape.attributes)) {
          const limit = /^x[12]?$/.test(name) ? width : /^y[12]?$/.test(name) ? height : undefined;
          if (limit === undefined) continue;
          expect([name, Number(value) >= 0, Number(value) <= limit]).toEqual([name, true, true]);
        }
      }
    }),
  );
});

test("the numbers stand beside their lines as the sheet shows them, and are spoken", () => {
  const picture = pictureOf("section", JOINT);
  const texts = textsIn(picture);
  for (const text of ["0.065 in", "0.0425 in", "0.18 in", "root 0.15 in", "electrode 0.04 in"]) {
    expect(texts).toContain(text);
    expect(spoken(picture)).toContain(text);
  }
  expect(picture.notes[0]).toBe("To scale, at the end of sector 1.");
});

test.each([
  ["the narrowest root", [0.15, 0.14, 0.16, 0.15, 0.15], "Melts through all around; narrowest root 0.14 in"],
  ["equal roots", [0.15, 0.15, 0.15, 0.15, 0.15], "Melts through all around; root 0.15 in in every sector"],
  // Shown as 0.15 all five.
  [
    "roots that read the same",
    [0.15, 0.150001, 0.15, 0.15, 0.15],
    "Melts through all around; root 0.15 in in every sector",
  ],
  ["one root of 0", [0.15, 0.14, 0, 0.15, 0.15], "Sector 3 does not melt through"],
  ["the overlap's root of 0", [0.15, 0.14, 0.15, 0.15, 0], "Overlap does not melt through"],
  ["two roots of 0", [0, 0.14, 0, 0.15, 0.15], "2 of 5 sectors do not melt through"],
])("%s", (_, roots, title) => {
  expect(pictureOf("section", { ...JOINT, roots: column(...roots) }).title).toBe(title);
});

test("a bead without a root has no body in the drawing, since its depth is not known", () => {
  const picture = pictureOf("section", { ...JOINT, roots: column(0.1, 0, 0.1, 0.1, 0.1) });
  expect(() => partOf(picture, "bead")).toThrow();
  expect(() => partOf(picture, "root")).toThrow();
  expect(textsIn(picture)).toContain("root 0 in");
});

test.each([
  ["1/16", "1/16 in"],
  ["0.0625", "0.0625 in"],
  ['1/16"', '1/16"'],
  ["1.5875 mm", "1.5875 mm"],
])("a wall typed as %s is drawn as 0.0625 in", (typed, shown) => {
  const picture = pictureOf("section", { ...JOINT, wall: [[typed]] });
  const scale = (length(picture, "face", "x2") - length(picture, "face", "x1")) / 0.18;
  expect(length(picture, "wall", "height") / scale).toBeCloseTo(0.0625, 5);
  expect(textsIn(picture)).toContain(shown);
});

test("sizes that no one scale shows are not drawn", () => {
  const { drawing, missing } = pictureOf("section", { ...JOINT, wall: [[50]] });
  expect(drawing).toBeUndefined();
  expect(missing?.what.join()).toContain("too far apart");
});
