import { convert } from "../../taskpane/sheets/convert";
import type * as SmallForm from "./small-form";
import type { SmallSheet } from "./small-form";
import { openSmall, smallPlan } from "./small-form";

jest.mock("../../taskpane/sheets", () => ({
  get TEMPLATES() {
    return [jest.requireActual<typeof SmallForm>("./small-form").SMALL];
  },
}));

let sheet: SmallSheet;
beforeEach(async () => {
  sheet = await openSmall();
});

function look(at: string): unknown {
  const { bold, textColor, fillColor } = sheet.model.getters.getCellComputedStyle(sheet.position(at));
  return { bold, textColor, fillColor };
}

/** What is said of a cell's number, or undefined. */
function warning(at: string): string | undefined {
  return sheet.model.getters.getInvalidDataValidationMessage(sheet.position(at));
}

async function converted(): Promise<void> {
  const form = await sheet.host.readForm();
  if (form === undefined) throw new Error("no form");
  const conversion = convert(form);
  if ("problem" in conversion) throw new Error(conversion.problem);
  await sheet.host.editForm(form, conversion.edits);
}

function insertRowAt(at: string): void {
  const { sheetId, row } = sheet.position(at);
  const { isSuccessful } = sheet.model.dispatch("ADD_COLUMNS_ROWS", {
    sheetId,
    sheetName: sheet.model.getters.getSheetName(sheetId),
    dimension: "ROW",
    base: row,
    quantity: 1,
    position: "before",
  });
  expect(isSuccessful).toBe(true);
}

const HOLDS = { bold: undefined, textColor: "#1B5E2B", fillColor: undefined };
const ATTENTION = { bold: undefined, textColor: "#8A2A0B", fillColor: "#FDF0E1" };

test("signs are colored, and follow the verdict and an inserted row", () => {
  expect([sheet.value("D4"), look("D4")]).toEqual(["✓ holds", HOLDS]);
  expect([sheet.value("D5"), look("D5")]).toEqual(["▲ needs attention", ATTENTION]);
  sheet.type("B6", "11");
  expect(look("D5")).toEqual(HOLDS);
  insertRowAt("D4");
  sheet.type("B6", "0");
  expect([look("D5"), look("D6")]).toEqual([ATTENTION, HOLDS]);
});

test("a number out of its range is taken and told of; blanks are not", () => {
  expect(warning("B5")).toBeUndefined();
  sheet.type("B5", "0.9");
  expect([sheet.value("B5"), warning("B5")]).toEqual([0.9, "Wall outside of 0.02 to 0.5 in"]);
  sheet.type("B5", "1 1/2 in");
  expect([sheet.value("B5"), warning("B5")]).toEqual(["1 1/2 in", "Wall outside of 0.02 to 0.5 in"]);
  sheet.type("B5", "");
  expect(warning("B5")).toBeUndefined();
});

test.each<[string, string | undefined]>([
  ["1-1/2", undefined],
  ["1/2", undefined],
  ["38.1 mm", undefined],
  ["11.9", undefined],
  ["12.1", "Outside diameter outside of 0.25 to 12 in"],
  ["0.2", "Outside diameter outside of 0.25 to 12 in"],
])("in a cell kept as text, %s", (content, said) => {
  sheet.type("B4", content);
  sheet.type("B12", content);
  expect([sheet.value("B4"), warning("B4"), warning("B12")]).toEqual([content, said, said]);
});

test("the units cell takes no other word, the second one is as any other", () => {
  const units = sheet.model.getters.getValidationRuleForCell(sheet.position("B2"));
  expect([units?.criterion.values, units?.isBlocking]).toEqual([["US"], true]);
  expect(sheet.model.getters.getValidationRuleForCell(sheet.position("C2"))).toBeUndefined();
});

test("conversion rewrites units, sizes, numbers and ranges", async () => {
  sheet.type("B11", "1/2");
  await converted();
  expect(["B2", "C2", "B4", "B5", "B11"].map((at) => sheet.value(at))).toEqual([
    "SI",
    "SI",
    "38.1",
    1.651,
    "12.7",
  ]);
  expect([sheet.format("B4"), sheet.format("B5"), sheet.format("B11")]).toEqual(["@", "0.000", "@"]);
  expect(["B4", "B5", "B11"].map(warning)).toEqual([undefined, undefined, undefined]);
  sheet.type("B5", "13");
  expect(warning("B5")).toBe("Wall outside of 0.5 to 12 mm");
  sheet.type("B12", "301");
  expect(warning("B12")).toBe("Outside diameter outside of 6 to 300 mm");
  sheet.type("C12", "201");
  expect(warning("C12")).toBe("Current outside of 5 to 200 A");
  expect(sheet.model.getters.getValidationRuleForCell(sheet.position("B2"))?.criterion.values).toEqual([
    "SI",
  ]);
});

test("conversion finds ranges that an inserted row moved, and takes none from another cell", async () => {
  insertRowAt("A4");
  insertRowAt("B12");
  await converted();
  sheet.type("B6", "13");
  expect(warning("B6")).toBe("Wall outside of 0.5 to 12 mm");
  for (const at of ["B5", "B11", "B12", "B13", "B14"]) {
    sheet.type(at, "5");
    expect([at, warning(at)]).toEqual([at, "Outside diameter outside of 6 to 300 mm"]);
  }
  for (const at of ["C11", "C12", "C13", "C14"]) {
    sheet.type(at, "201");
    expect([at, warning(at)]).toEqual([at, "Current outside of 5 to 200 A"]);
  }
});

test("there and back gives the sheet as it was", async () => {
  const contents = (): unknown[] =>
    smallPlan("US").cells.map(({ at }) => [at, sheet.value(at), sheet.format(at)]);
  sheet.type("B11", "0.5");
  const before = contents();
  await converted();
  await converted();
  // 1-1/2 comes back as the number it is.
  expect(contents()).toEqual(
    before.map((cell) => (Array.isArray(cell) && cell[0] === "B4" ? ["B4", "1.5", "@"] : cell)),
  );
});
