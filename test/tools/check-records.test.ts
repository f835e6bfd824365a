import { recordsOf } from "../../tools/docs/check-records";
import { BY_HAND, COMMON_PRACTICE, evidence, INDEPENDENT, MEMORY, PUBLISHED } from "../evidence";

/** Titles made as the tests make them; the sources are invented. */
const BOOK = evidence("STANDOFF", PUBLISHED, "a book, example 1");
const BOTH = evidence("PURGE_VENT PURGE_PRESSURE", BY_HAND, "Q = Cd·A·√(2Δp/ρ)");

/** A test's result as jest reports it. */
function result(
  title: string,
  ancestorTitles: string[] = [],
  status = "passed",
): { title: string; ancestorTitles: string[]; status: string } {
  return { title, ancestorTitles, status };
}

test("nothing ran, nothing is recorded", () => {
  expect(recordsOf([])).toEqual([]);
});

test("a check that passed is counted by the title over it", () => {
  expect(recordsOf([result("0.0425 in", [BOOK]), result("1 mm", [BOOK])])).toEqual([
    { formulas: ["STANDOFF"], standing: "published", source: "a book, example 1", checks: 2 },
  ]);
});

test.each(["failed", "pending", "skipped", "todo", "disabled"])("one that is %s is not counted", (status) => {
  expect(recordsOf([result("0.0425 in", [BOOK], status)])).toEqual([]);
  expect(
    recordsOf([result("0.0425 in", [BOOK], status), result("1 mm", [BOOK])]).map(({ checks }) => checks),
  ).toEqual([1]);
});

test("the test's own title counts, and so does any title over it", () => {
  const found = recordsOf([
    result(BOOK),
    result("a value", ["laws", BOOK, "inner"]),
    result("another", [BOOK, BOTH]),
  ]);
  expect(found.map(({ formulas, checks }) => [formulas[0], checks])).toEqual([
    ["PURGE_VENT", 1],
    ["STANDOFF", 3],
  ]);
});

test("several formulas share a record", () => {
  expect(recordsOf([result("10 L/min", [BOTH])])).toEqual([
    {
      formulas: ["PURGE_VENT", "PURGE_PRESSURE"],
      standing: "worked out by hand",
      source: "Q = Cd·A·√(2Δp/ρ)",
      checks: 1,
    },
  ]);
});

test("one formula by one source in two standings is two records", () => {
  const titles = [evidence("STANDOFF", PUBLISHED, "a book"), evidence("STANDOFF", MEMORY, "a book")];
  expect(recordsOf(titles.map((title) => result("a value", [title])))).toHaveLength(2);
});

test("titles that tell no evidence are passed over, bars and all", () => {
  const titles = ["US and SI agree", "0.02 in | 0.5 mm up to 20 A", "A | B", "standoff | published | a book"];
  expect(recordsOf(titles.map((title) => result(title, titles)))).toEqual([]);
});

test("records stand by formula, standing and source, however the tests ran", () => {
  const titles = [
    evidence("ARC_VOLTS", COMMON_PRACTICE, "b"),
    evidence("ARC_VOLTS", INDEPENDENT, "a"),
    evidence("ARC_VOLTS", PUBLISHED, "a"),
    evidence("ARC_VOLTS", PUBLISHED, "b"),
    evidence("STANDOFF", COMMON_PRACTICE, "a"),
  ];
  const order = (given: string[]): string[] =>
    recordsOf(given.map((title) => result("a value", [title]))).map(
      ({ formulas, standing, source }) => `${formulas.join(" ")} | ${standing} | ${source}`,
    );
  expect(order(titles)).toEqual(titles);
  expect(order([...titles].reverse())).toEqual(titles);
});

describe("a title", () => {
  test("names formulas that there are", () => {
    expect(() => evidence("STANDOFF NO_SUCH", PUBLISHED, "a book")).toThrow("no formula NO_SUCH");
  });

  test.each(["", "one | two"])("has a source that can be told from the rest, not %p", (source) => {
    expect(() => evidence("STANDOFF", PUBLISHED, source)).toThrow("no source");
  });
});
