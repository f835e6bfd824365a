/** Pipe in a list of tubes: nominal size and schedule, walls of ASME B36.19M and B36.10M, beside sizes as numbers. */

import { table } from "../bead";
import { GOOD, takeoff } from "./takeoff-rows";

/** Standoff is half the wall and 0.010 in: it tells the wall that was read. */
function wallRead(od: unknown, wall: unknown): unknown {
  const [[standoff = "", ...rest] = []] = table("SIZE_TABLE", [[od, wall]]);
  return typeof standoff === "number" ? Math.round(2 * (standoff - 0.01) * 1e9) / 1e9 : rest.at(-1);
}

test.each([
  ["NPS 1", "10S", 0.109],
  ["nps 1-1/2", "sch 10S", 0.109],
  ["NPS 1½", "Sch. 40S", 0.145],
  ["NPS 2", "schedule 5S", 0.065],
  ["NPS 2", "5 s", 0.065],
  ["NPS 3/4", "sch 10", 0.083],
])("%s, %s has a wall of %d in", (od, wall, inches) => {
  expect(wallRead(od, wall)).toBe(inches);
});

test("a nominal size with its wall as a number, and the row equals that of its outside diameter", () => {
  const [pipe, tube] = table("SIZE_TABLE", [
    ["NPS 1", 0.065],
    [1.315, 0.065],
  ]);
  expect(pipe).toEqual(tube);
});

test("in millimeters by the column of the standard: NPS 2 schedule 10S is 60.3 × 2.77", () => {
  const [pipe, tube] = table(
    "SIZE_TABLE",
    [
      ["NPS 2", "10S"],
      [60.3, 2.77],
    ],
    "pulsed",
    null,
    "SI",
  );
  expect(pipe).toEqual(tube);
});

test.each([
  ["1", "sch 10S", /^wall: is a schedule of pipe; write the size beside it as NPS 1-1\/2/],
  ["NPS 1", "sch 7", /^wall: is not in this table; it has 5S, 10S/],
  ["NPS 7", "10S", /^od: /],
  ["DN 25", "10S", /^od: DN sizes are not read; DN 25 is NPS 1$/],
  ["NPS", "10S", /^od: must be a nominal size/],
  ["NPS 1", "", /^wall: needs a number/],
  ["NPS 1", 40, /^wall: no tube of this trade has such a wall/],
  ["NPSX 1", "10S", /^wall: is a schedule of pipe/],
])("%s, %s is told", (od, wall, told) => {
  expect(wallRead(od, wall)).toMatch(told);
});

test("a joint list counts pipe as it counts tube", () => {
  expect(takeoff([[8, "NPS 1", "10S", "316L"]]).lines).toEqual(takeoff([[8, 1.315, 0.109, "316L"]]).lines);
  expect(takeoff([GOOD, ["2", "NPS 2", "sch 40S"]]).lines).toHaveLength(2);
});
