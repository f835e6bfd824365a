/** Inserting into an Excel that fails as real ones are reported to: the numbers come, and what did not is told. */

import { gas } from "../../taskpane/sheets/gas";
import { procedure } from "../../taskpane/sheets/procedure";
import type { SheetPlan } from "../../taskpane/sheets/sheet";
import type { Unkindness } from "./excel-fake";
import { FakeError, FakeExcel } from "./excel-fake";
import { failure, hostIn } from "./excel-host";

const plan = procedure.plan("US");

function unkind(...ways: readonly Unkindness[]): FakeExcel {
  const excel = new FakeExcel().install();
  for (const way of ways) excel.unkind.add(way);
  return excel;
}

/** Everything that the sheet's numbers need. */
function expectWhole(excel: FakeExcel, { title, cells, names, signs }: SheetPlan): void {
  const sheet = excel.sheet(title);
  for (const { at, content } of cells) expect([at, sheet.cell(at).formula]).toEqual([at, content]);
  expect([...sheet.names.keys()]).toEqual(names.map(({ name }) => name));
  expect(sheet.conditionals.length).toBe(2 * signs.length);
  expect([...sheet.cells.values()].filter(({ value }) => value === "#NAME?")).toEqual([]);
}

test.each<Unkindness>([
  "no undo group on the web",
  "no undo group for many formulas",
  "no undo group for a new sheet",
])("%s: once more without, whole and with nothing left over", async (way) => {
  const excel = unkind(way);
  expect(await hostIn(excel).insert(plan)).toEqual({ name: plan.title, remark: "" });
  expectWhole(excel, plan);
  expect(excel.sheets.map(({ name }) => name)).toEqual(["Sheet1", plan.title]);
  expect(excel.sheet(plan.title).charts.length).toBe(plan.charts.length);
  const tries = excel.runs.filter(({ calls }) => calls.includes("worksheets.load"));
  expect(tries.map(({ options }) => options.mergeUndoGroup)).toEqual([true, undefined]);
});

test("one retry and no more", async () => {
  const excel = unkind();
  excel.failing = { call: "names.add", error: new FakeError("GeneralException") };
  expect(await failure(hostIn(excel).insert(plan))).toMatch(
    /^Excel gave no reason: .*; the half-made sheet was removed$/,
  );
  expect(excel.runs.filter(({ calls }) => calls.includes("names.add")).length).toBe(2);
  expect(excel.sheets.map(({ name }) => name)).toEqual(["Sheet1"]);
});

test("no retry where the half-made sheet could not be removed: that would leave two", async () => {
  const excel = unkind("no undo group for a new sheet");
  excel.failing = { call: "worksheet.delete", error: new FakeError("GeneralException") };
  expect(await failure(hostIn(excel).insert(plan))).toMatch(
    /the half-made sheet “Procedure sheet” could not be removed: delete it yourself$/,
  );
  expect(excel.sheets.map(({ name }) => name)).toEqual(["Sheet1", plan.title]);
});

test.each(["InvalidOperationInCellEditMode", "AccessDenied"])(
  "no retry after a person's %s",
  async (code) => {
    const excel = unkind();
    excel.failing = { call: "names.add", error: new FakeError(code) };
    await failure(hostIn(excel).insert(plan));
    expect(excel.runs.filter(({ calls }) => calls.includes("names.add")).length).toBe(1);
  },
);

test.each<[string, Unkindness[], RegExp]>([
  [
    "frozen rows refused",
    ["no frozen rows"],
    /^Excel refused the frozen rows \(Excel gave no reason: bring this workbook to the front and try again\)\. The numbers do not depend on that\.$/,
  ],
  ["names before frozen rows", ["no names after frozen rows"], /^$/],
  [
    "the page width silently dropped",
    ["page width not kept"],
    /^Excel refused the width of the page \(Excel did not keep it\)\. The numbers do not depend on that\.$/,
  ],
  [
    "another workbook in front",
    ["another workbook in front"],
    /^Excel refused showing the sheet, the frozen rows \(another workbook is in front: [^)]+\); (?:the chart “[^”]+”, )+hiding the gridlines \(Excel gave no reason: [^)]+\)\. The numbers/,
  ],
  [
    "all of it",
    ["no undo group on the web", "another workbook in front", "page width not kept"],
    /the width of the page \(Excel did not keep it\)/,
  ],
])("%s", async (_, ways, words) => {
  const excel = unkind(...ways);
  const { remark } = await hostIn(excel).insert(plan);
  expect(remark).toMatch(words);
  expectWhole(excel, plan);
  // What was not refused is there.
  expect(excel.sheet(plan.title).settings.get("pageLayout.orientation")).toBe("Portrait");
  expect(excel.sheet(plan.title).settings.get("pageLayout.setPrintArea")).toBe(plan.print.area);
});

test("what fails only inside the undo step is done after it, and nobody need know", async () => {
  const excel = new FakeExcel().install();
  excel.failing = {
    get call() {
      return excel.runs.at(-1)?.options.mergeUndoGroup === true ? "charts.add" : "";
    },
    error: new FakeError("UndoNotSupported"),
  };
  const cylinders = gas.plan("SI");
  expect(await hostIn(excel).insert(cylinders)).toEqual({ name: cylinders.title, remark: "" });
  expect(excel.sheet(cylinders.title).charts.map(({ settings }) => settings.get("title.text"))).toEqual(
    cylinders.charts.map(({ title }) => title),
  );
});

test("half a chart is taken away again, and its refusal stands beside the protection's", async () => {
  const excel = new FakeExcel().install();
  excel.failing = { call: "chart.setPosition", error: new FakeError("GeneralException") };
  const { remark } = await hostIn(excel).insert(plan, { protect: true });
  expect(plan.charts.length).toBeGreaterThan(0);
  expect(excel.sheet(plan.title).charts).toEqual([]);
  expect(remark).toMatch(
    /^Excel refused the chart “.*\. The numbers do not depend on that\. Its computed cells are protected \(no password\)\.$/,
  );
});

test("a person sees what is being waited for, once, and only where there is a wait", async () => {
  const excel = new FakeExcel().install();
  excel.enteredBeforeKnown = 5;
  const said: string[] = [];
  const say = (text: string): void => void said.push(text);
  await hostIn(excel).insert(plan, { say });
  expect(said).toEqual(["Waiting for Excel to register the formulas, 20 s at most…"]);
  await hostIn(excel).insert(plan, { say });
  expect(said.length).toBe(1);
});

test("a registration that comes in the last of the 20 seconds is in time", async () => {
  const tries = 13;
  const excel = new FakeExcel().install();
  excel.enteredBeforeKnown = tries - 1;
  expect((await hostIn(excel).insert(plan)).name).toBe(plan.title);
  const late = new FakeExcel().install();
  late.enteredBeforeKnown = tries;
  expect(await failure(hostIn(late).insert(plan))).toMatch(/^Excel does not know the formulas after 20 s/);
});
