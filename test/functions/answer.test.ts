/** The border on its own: what a body may give back and what a host then sees. */

import type { Answer } from "../../functions/answer";
import { answer, answerAlike } from "../../functions/answer";
import { LENGTH } from "../../src/quantity";
import { amount, Refusal } from "../../src/refusal";

/** The code and sentence that reach the host from a body that gives or throws this. */
function errorOf(body: () => unknown, units: unknown = null): string {
  try {
    answer(units, body as () => Answer);
  } catch (problem) {
    if (problem instanceof CustomFunctions.Error) return `${problem.code} ${problem.message ?? ""}`;
  }
  return "answered";
}

const TOO_LARGE = "#VALUE! result = beyond what a cell can hold: some argument is far too large or too small";

describe("what goes back", () => {
  test.each([
    [1.5],
    ["text"],
    [""],
    [true],
    [false],
    [
      [
        [1, "a"],
        [true, 2],
      ],
    ],
  ])("%j as it is", (value) => {
    expect(answerAlike(() => value as Answer)).toEqual(value);
  });

  test("no negative zero, alone or in a table", () => {
    expect(
      Object.is(
        answerAlike(() => -0),
        0,
      ),
    ).toBe(true);
    expect(Object.is(answerAlike(() => [[1, -0]])[0]?.[1], 0)).toBe(true);
  });

  test("text of the maximum length a cell can hold; longer text ends in an ellipsis", () => {
    const longest = "x".repeat(32_767);
    expect(answerAlike(() => longest)).toBe(longest);
    const cut = answerAlike(() => `${longest}x`);
    expect(cut).toBe(`${"x".repeat(32_766)}…`);
  });

  test("the host's own table is a copy", () => {
    const rows = [[1, 2]];
    expect(answerAlike(() => rows)).not.toBe(rows);
  });
});

describe("what never goes back", () => {
  test.each([NaN, Infinity, -Infinity])("%d, alone or in a table", (value) => {
    expect(errorOf(() => value)).toBe(TOO_LARGE);
    expect(errorOf(() => [[1, value]])).toBe(TOO_LARGE);
  });

  test.each([[null], [undefined], [{}], [1n], [Symbol("x")], [(): number => 1], [new Date(0)]])(
    "%p, alone or in a table",
    (value) => {
      const failure = "#VALUE! Ringbead failed on these arguments (an empty result): please report them";
      expect(errorOf(() => value)).toBe(failure);
      expect(errorOf(() => [[1, value]])).toBe(failure);
    },
  );

  test.each([[[]], [[[]]], [[[1, 2], [3]]], [[[1], []]], [[[], [1]]], [[1, 2]]])(
    "a table that is no full rectangle: %j",
    (rows) => {
      expect(errorOf(() => rows)).toBe(
        "#VALUE! Ringbead failed on these arguments (ragged table): please report them",
      );
    },
  );
});

describe("what a body throws", () => {
  const tooThin = (kind?: "unanswerable"): Refusal =>
    new Refusal("wall", amount(0.001, LENGTH), ["must be above ", amount(0.0254, LENGTH)], kind);
  const thrown = (problem: unknown) => (): never => {
    throw problem as Error;
  };

  test("a refusal reaches the host in the reader's units", () => {
    expect(errorOf(thrown(tooThin()))).toBe("#VALUE! wall = 0.0393701 in: must be above 1 in");
    expect(errorOf(thrown(tooThin()), "SI")).toBe("#VALUE! wall = 1 mm: must be above 25.4 mm");
  });

  test("a fair question without an answer is #N/A", () => {
    expect(errorOf(thrown(tooThin("unanswerable")))).toBe("#N/A wall = 0.0393701 in: must be above 1 in");
  });

  test("anything else says that the program is at fault", () => {
    expect(errorOf(thrown(new RangeError("off the end")))).toBe(
      "#VALUE! Ringbead failed on these arguments (off the end): please report them",
    );
    expect(errorOf(thrown("text"))).toBe(
      "#VALUE! Ringbead failed on these arguments (text): please report them",
    );
  });

  test("units come first: the body does not run when they are refused", () => {
    const body = jest.fn(() => 1);
    expect(errorOf(body, "metric")).toBe('#VALUE! units = "metric": must be one of US, SI');
    expect(body).not.toHaveBeenCalled();
  });
});
