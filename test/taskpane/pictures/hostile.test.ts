import { picturesOf } from "../../../taskpane/pictures";
import { shownCell } from "../../../taskpane/pictures/cells";
import type { Picture } from "../../../taskpane/pictures/picture";
import type { Joint } from "./shown-joint";
import { all, formOf, JOINT } from "./shown-joint";

const HOSTILE = ["", "about two", "<b>1</b>", "#VALUE!", -1, 1e300, -1e300, 5e-324, 1e-9, NaN, Infinity];
const NUMBERS = Object.entries(JOINT).filter(([name]) => !/^(?:sheet_units|style|check_)/.test(name));
const CASES = NUMBERS.flatMap(([name, rows]) =>
  HOSTILE.map((content): [string, string, Joint] => [
    name,
    String(content),
    // The third cell of a table, the one of a single name; of a row of several the last.
    {
      ...JOINT,
      [name]: rows.map((row, i) =>
        i === Math.min(2, rows.length - 1) ? [...row.slice(0, -1), content] : row,
      ),
    },
  ]),
);
const OF: Readonly<Record<string, readonly Picture["id"][]>> = {
  wall: ["section"],
  standoff: ["section"],
  electrode: ["section"],
  faces: ["section"],
  roots: ["section"],
  means: ["ring"],
  peaks: ["ring"],
  backs: ["ring"],
  overlap: ["ring"],
  rpm: ["ring"],
  levels: ["purge"],
  target_ppm: ["purge"],
  purge_time: ["purge"],
};

test.each(CASES)(
  "%s = %j: the pictures it belongs to say what is missing, the others are drawn",
  (name, _, joint) => {
    const pictures = picturesOf(formOf(joint)) ?? [];
    expect(pictures).toHaveLength(3);
    for (const { id, title, drawing, missing } of pictures) {
      expect(title).not.toMatch(/NaN|Infinity|undefined/);
      // A drawing or a reason, never both and never neither.
      expect([id, drawing === undefined]).toEqual([id, missing !== undefined]);
      if (missing !== undefined) {
        expect(OF[name]).toContain(id);
        expect(missing.what.length).toBeGreaterThan(0);
      }
      for (const { attributes } of all(drawing)) {
        expect(Object.values(attributes).join(" ")).not.toMatch(/NaN|Infinity|undefined/);
      }
    }
  },
);

test.each(NUMBERS)("%s left blank, or holding an error: its picture is not drawn", (name, rows) => {
  for (const content of ["", "#VALUE!", "text"]) {
    const joint = { ...JOINT, [name]: rows.map((row) => row.map(() => content)) };
    const pictures = picturesOf(formOf(joint)) ?? [];
    expect(pictures.filter(({ missing }) => missing !== undefined).map(({ id }) => id)).toEqual(OF[name]);
  }
});

test("a check that does not hold gives the reason, word for word", () => {
  const why = "▲ wall = -0.065 in: must be above 0";
  const pictures = picturesOf(formOf({ ...JOINT, standoff: [["#VALUE!"]], check_tube: [[why]] }));
  expect(pictures?.[0]?.missing).toEqual({ what: ["standoff"], why });
});

test("no form, or another one: no pictures", () => {
  expect(picturesOf(undefined)).toBeUndefined();
  expect(picturesOf({ template: "gas", cells: new Map() })).toBeUndefined();
});

test("a sheet without any of the names draws nothing", () => {
  const pictures = picturesOf({ template: "procedure", cells: new Map() }) ?? [];
  expect(pictures.map(({ drawing }) => drawing)).toEqual([undefined, undefined, undefined]);
});

test("a number whose column is too narrow to show it is told in its own digits", () => {
  expect(shownCell(0.0425, "#####", false)).toEqual({ kind: "number", text: "0.0425", number: 0.0425 });
  expect(shownCell("", "\u00a0", false)).toEqual({ kind: "blank", text: "" });
});
