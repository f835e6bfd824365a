import { recordsOf } from "../../tools/checks-reporter.mjs";

const passed = (title: string, ...ancestorTitles: string[]): Parameters<typeof recordsOf>[0][number] => ({
  status: "passed",
  title,
  ancestorTitles,
});

const VENT = "PURGE_VENT PURGE_PRESSURE | published | a handbook, example 1";

test("counts the tests that passed under a title that names its source", () => {
  expect(recordsOf([passed("one", "vents", VENT), passed("two", "vents", VENT), passed(VENT)])).toEqual([
    {
      formulas: ["PURGE_VENT", "PURGE_PRESSURE"],
      standing: "published",
      source: "a handbook, example 1",
      checks: 3,
    },
  ]);
});

test("a test that failed or was left out is no check", () => {
  const failed = { ...passed("one", VENT), status: "failed" };
  const pending = { ...passed("two", VENT), status: "pending" };
  expect(recordsOf([failed, pending])).toEqual([]);
});

test("other titles are no records, also those with a stroke", () => {
  expect(recordsOf([passed("%d in | %d mm", "laws"), passed("in | mm | both")])).toEqual([]);
});

test("one test may stand under two sources; records are in the order of their titles", () => {
  const other = "STANDOFF | common practice | half the wall";
  const records = recordsOf([passed("one", other, VENT)]);
  expect(records.map(({ formulas, checks }) => [formulas[0], checks])).toEqual([
    ["PURGE_VENT", 1],
    ["STANDOFF", 1],
  ]);
});
