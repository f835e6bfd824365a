import { addressOf } from "../../taskpane/sheets/addresses";
import { picturesOf } from "../../taskpane/pictures";
import type { ShownForm } from "../../taskpane/pictures/cells";
import { BLOCKS } from "../../taskpane/pictures/joint";
import { cycle } from "../../taskpane/sheets/cycle";
import { procedure } from "../../taskpane/sheets/procedure";
import { FakeExcel } from "./excel-fake";
import { hostIn } from "./excel-host";
import { openSheet } from "./open-sheet";

const plan = procedure.plan("US");

/** Excel with the sheet in it; the fake computes nothing, so its cells get what the browser sheet computes. */
async function computed(): Promise<{ excel: FakeExcel; inBrowser: ShownForm | undefined }> {
  const excel = new FakeExcel().install();
  await hostIn(excel).insert(plan);
  const sheet = excel.sheet(plan.title);
  const { model, host } = await openSheet(procedure, "US");
  const sheetId = model.getters.getActiveSheetId();
  const { numberOfRows, numberOfCols } = model.getters.getSheetSize(sheetId);
  for (let row = 0; row < numberOfRows; row += 1) {
    for (let col = 0; col < numberOfCols; col += 1) {
      const { value, type } = model.getters.getEvaluatedCell({ sheetId, col, row });
      const cell = sheet.cell(addressOf({ column: col, row }));
      const kind: string = type;
      cell.value = value ?? "";
      cell.type = { number: "Double", text: "String", boolean: "Boolean", error: "Error" }[kind] ?? "Empty";
    }
  }
  return { excel, inBrowser: await host.namedCells(BLOCKS) };
}

/** Without the digits shown: the fake shows every number in full. */
function held(form: ShownForm | undefined): unknown {
  return [...(form?.cells ?? [])].map(([name, rows]) => [
    name,
    rows.map((row) => row.map(({ kind, number, text }) => [kind, number ?? text])),
  ]);
}

test("Excel reads the same cells as the browser sheet, in two syncs", async () => {
  const { excel, inBrowser } = await computed();
  const form = await hostIn(excel).namedCells(BLOCKS);
  expect(held(form)).toEqual(held(inBrowser));
  expect(form?.template).toBe("procedure");
  expect(excel.runs.at(-1)?.syncs).toBe(2);
  const pictures = picturesOf(form) ?? [];
  expect(pictures.map(({ missing }) => missing)).toEqual([undefined, undefined, undefined]);
});

test("a sheet whose name has an apostrophe and a mark is read all the same", async () => {
  const { excel, inBrowser } = await computed();
  excel.sheet(plan.title).name = "Bob's joint! 12";
  expect(held(await hostIn(excel).namedCells(BLOCKS))).toEqual(held(inBrowser));
});

test("an error and a blank are told apart from a number", async () => {
  const { excel } = await computed();
  const sheet = excel.sheet(plan.title);
  const cell = (name: string): { value: unknown; type: string } => sheet.cell(sheet.names.get(name) ?? "");
  Object.assign(cell("standoff"), { value: "#VALUE!", type: "Error" });
  Object.assign(cell("electrode"), { value: "", type: "String" });
  const cells = (await hostIn(excel).namedCells(BLOCKS))?.cells;
  expect(cells?.get("standoff")).toEqual([[{ kind: "error", text: "#VALUE!" }]]);
  expect(cells?.get("electrode")).toEqual([[{ kind: "blank", text: "" }]]);
});

test("a name whose cells were deleted, or moved to another sheet, is not there", async () => {
  const { excel } = await computed();
  const sheet = excel.sheet(plan.title);
  sheet.formulas.set("wall", "=#REF!");
  sheet.formulas.set("rpm", "=Elsewhere!$B$2");
  const cells = (await hostIn(excel).namedCells(BLOCKS))?.cells;
  expect([cells?.has("wall"), cells?.has("rpm"), cells?.has("standoff")]).toEqual([false, false, true]);
});

test("a sheet of another kind tells which, and one of a person's own none", async () => {
  const excel = new FakeExcel().install();
  expect(await hostIn(excel).namedCells(BLOCKS)).toBeUndefined();
  await hostIn(excel).insert(cycle.plan("US"));
  expect((await hostIn(excel).namedCells(BLOCKS))?.template).toBe("cycle");
});

test("the pane hears of typing, calculation, another cell and another sheet", async () => {
  const excel = new FakeExcel().install();
  let heard = 0;
  hostIn(excel).onChange(() => {
    heard += 1;
  });
  await Promise.resolve();
  await Promise.resolve();
  const events = [...excel.listeners.keys()].sort();
  expect(events).toEqual(["onActivated", "onCalculated", "onChanged", "onSelectionChanged"]);
  for (const listener of [...excel.listeners.values()].flat()) await listener();
  expect(heard).toBe(4);
});
