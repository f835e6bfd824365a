/** A refusal is one line of well-formed text, whatever a name holds. */

import { refusal } from "../bead";

const LENGTH = "must be a number or a size such as 1.5, 1-1/2 or 38.1 mm";
const SIZE = "must be a nominal size such as 1/2, 1-1/2 or 2";

test.each([
  ["a line break", "line\nbreak", '"line break"'],
  ["a line separator", "line\u2028break", '"line break"'],
  ["half of a pair", "x\ud83d", '"x "'],
  ["a pair where the quotation ends", `${"x".repeat(39)}😀yy`, `"${"x".repeat(39)}😀…"`],
  ["a long text", "x".repeat(100_000), `"${"x".repeat(40)}…"`],
])("%s", (_, typed, shown) => {
  expect(refusal("PIPE_OD", typed)).toBe(`#VALUE! nps = ${shown}: ${SIZE}`);
  expect(refusal("STANDOFF", typed)).toBe(`#VALUE! wall = ${shown}: ${LENGTH}`);
  expect(refusal("PIPE_WALL", 2, typed)).toBe(
    `#N/A schedule = ${shown}: is not in this table; it has 5S, 10S, 40S, 80S, 5, 10, 40, 80`,
  );
});
