import { recordsOf } from "../../tools/docs/check-records";
import { BY_HAND, COMMON_PRACTICE, INDEPENDENT, MEMORY, PUBLISHED } from "../evidence";

/** A title as test/evidence.ts writes it; the sources are invented. */
function titled(formulas: string, standing: string, source: string): string {
  return `${formulas} | ${standing} | ${source}`;
}

const BOOK = titled("STANDOFF", PUBLISHED, "a book, example 1");
const BOTH = titled("PURGE_VENT PURGE_PRESSURE", BY_HAND, "Q = Cd·A·√(2Δp/ρ)");

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
  const titles = [titled("STANDOFF", PUBLISHED, "a book"), titled("STANDOFF", MEMORY, "a book")];
  expect(recordsOf(titles.map((title) => result("a value", [title])))).toHaveLength(2);
});

test("titles that tell no evidence are passed over, bars and all", () => {
  const titles = ["US and SI agree", "0.02 in | 0.5 mm up to 20 A", "A | B", "standoff | published | a book"];
  expect(recordsOf(titles.map((title) => result(title, titles)))).toEqual([]);
});

test("records stand by formula, standing and source, however the tests ran", () => {
  const titles = [
    titled("ARC_VOLTS", COMMON_PRACTICE, "b"),
    titled("ARC_VOLTS", INDEPENDENT, "a"),
    titled("ARC_VOLTS", PUBLISHED, "a"),
    titled("ARC_VOLTS", PUBLISHED, "b"),
    titled("STANDOFF", COMMON_PRACTICE, "a"),
  ];
  const order = (given: string[]): string[] =>
    recordsOf(given.map((title) => result("a value", [title]))).map(
      ({ formulas, standing, source }) => `${formulas.join(" ")} | ${standing} | ${source}`,
    );
  expect(order(titles)).toEqual(titles);
  expect(order([...titles].reverse())).toEqual(titles);
});
