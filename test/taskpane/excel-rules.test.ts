import { ExcelHost } from "../../taskpane/hosts/excel/excel-host";
import { convert } from "../../taskpane/sheets/convert";
import { FakeError, FakeExcel } from "./excel-fake";
import type { FakeSheet } from "./excel-fake";
import type * as SmallForm from "./small-form";
import { smallPlan } from "./small-form";

jest.mock("../../taskpane/sheets", () => ({
  get TEMPLATES() {
    return [jest.requireActual<typeof SmallForm>("./small-form").SMALL];
  },
}));

let excel: FakeExcel;
let host: ExcelHost;
let sheet: FakeSheet;
beforeEach(async () => {
  excel = new FakeExcel().install();
  host = new ExcelHost({ pause: () => Promise.resolve() });
  await host.insert(smallPlan("US"));
  sheet = excel.sheet("Small form");
});

async function converted(): Promise<void> {
  const form = await host.readForm();
  if (form === undefined) throw new Error("no form");
  const conversion = convert(form);
  if ("problem" in conversion) throw new Error(conversion.problem);
  await host.editForm(form, conversion.edits);
}

function validation(at: string): unknown[] {
  const { style } = sheet.cell(at);
  return ["rule", "ignoreBlanks", "errorAlert"].map((part) => style.get(`dataValidation.${part}`));
}

test("signs are colored by a formula that speaks of the first cell of their range", () => {
  expect(sheet.conditionals.map(({ range, kind, settings }) => [range, kind, ...settings])).toEqual([
    ["D4:D5", "Custom", ["custom.rule.formula", '=LEFT(D4,2)="✓ "'], ["custom.format.font.color", "#1B5E2B"]],
    [
      "D4:D5",
      "Custom",
      ["custom.rule.formula", '=LEFT(D4,2)="▲ "'],
      ["custom.format.font.color", "#8A2A0B"],
      ["custom.format.fill.color", "#FDF0E1"],
    ],
  ]);
});

test("a number out of its range is asked about, not refused", () => {
  expect(validation("B5")).toEqual([
    { decimal: { formula1: 0.02, formula2: 0.5, operator: "Between" } },
    true,
    { showAlert: true, style: "Warning", title: "Wall", message: "Wall outside of 0.02 to 0.5 in" },
  ]);
  expect(validation("C12")[0]).toEqual({ decimal: { formula1: 5, formula2: 200, operator: "Between" } });
});

test("in a cell kept as text only plain numbers are judged", () => {
  expect(validation("B10")[0]).toEqual({
    custom: {
      formula: '=IF(ISNUMBER(SEARCH("/",B10)),TRUE,IFERROR(AND(VALUE(B10)>=0.25,VALUE(B10)<=12),TRUE))',
    },
  });
});

test("words too long for Excel's warning are refused before anything is written", async () => {
  const plan = smallPlan("US");
  const ranges = plan.ranges.map((range) => ({ ...range, message: "x".repeat(226) }));
  await expect(host.insert({ ...plan, ranges })).rejects.toThrow(
    "the message of the range of B4 is too long",
  );
  expect(excel.sheets.map(({ name }) => name)).toEqual(["Sheet1", "Small form"]);
});

test("a list of words fits up to the 255 signs that Excel takes, commas and all", async () => {
  const listed = (last: number): ReturnType<typeof smallPlan> => ({
    ...smallPlan("US"),
    lists: [{ at: "B7", allowed: ["x".repeat(100), "y".repeat(last)] }],
  });
  await host.insert(listed(154));
  await expect(host.insert(listed(155))).rejects.toThrow("a list of allowed words does not fit");
});

test("a size in a cell kept as text stays text, without an apostrophe", () => {
  expect([sheet.cell("B4").formula, sheet.cell("B4").type, sheet.cell("B4").format]).toEqual([
    "1-1/2",
    "String",
    "@",
  ]);
  excel.enter(sheet, "B10", "1/2");
  expect(sheet.cell("B10").formula).toBe("1/2");
});

test("conversion rewrites units, sizes and ranges", async () => {
  excel.enter(sheet, "B11", "1/2");
  await converted();
  expect(["B2", "C2", "B4", "B5", "B11"].map((at) => sheet.cell(at).formula)).toEqual([
    "SI",
    "SI",
    "38.1",
    1.651,
    "12.7",
  ]);
  expect([sheet.cell("B11").format, sheet.cell("B11").type]).toEqual(["@", "String"]);
  expect(validation("B5")[0]).toEqual({ decimal: { formula1: 0.5, formula2: 12, operator: "Between" } });
  expect(validation("B11")[0]).toEqual({
    custom: {
      formula: '=IF(ISNUMBER(SEARCH("/",B11)),TRUE,IFERROR(AND(VALUE(B11)>=6,VALUE(B11)<=300),TRUE))',
    },
  });
  expect(validation("B2")[0]).toEqual({ list: { inCellDropDown: false, source: "SI" } });
  expect(validation("C2")[0]).toBeUndefined();
});

test("when a late step fails, all is as it was: contents, formats, ranges", async () => {
  excel.enter(sheet, "B11", "1/2");
  excel.enter(sheet, "B5", "'1/16");
  // A person took the rule of one cell away.
  for (const part of ["rule", "ignoreBlanks", "errorAlert"]) {
    sheet.cell("B12").style.set(`dataValidation.${part}`, undefined);
  }
  const state = (): unknown[] =>
    [...sheet.cells].map(([at, { formula, format }]) => [at, formula, format, validation(at)]);
  const before = state();
  const kind = "dataValidation.errorAlert";
  let failures = 0;
  excel.failing = {
    // The units cell and five cells with a range are told what to say: the last of them fails, once.
    get call() {
      const done = excel.runs.at(-1)?.calls.filter((call) => call === kind).length;
      return done === 6 ? kind : "";
    },
    get error() {
      excel.failing = undefined;
      failures += 1;
      return new FakeError("GeneralException");
    },
  };
  await expect(converted()).rejects.toThrow("Excel gave no reason");
  expect(failures).toBe(1);
  expect(state()).toEqual(before);
});
