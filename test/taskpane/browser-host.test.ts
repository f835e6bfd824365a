import { VERSION } from "../../functions/catalogue";
import { procedure } from "../../taskpane/sheets/procedure";
import { openSheet } from "./open-sheet";

test("repairing and recalculating leave every value as it was", async () => {
  const sheet = await openSheet(procedure, "US");
  const { host, model } = sheet;
  const sheetId = model.getters.getActiveSheetId();
  const values = (): unknown[] =>
    model.getters.getEvaluatedCellsPositions(sheetId).map((at) => model.getters.getEvaluatedCell(at).value);
  const before = values();
  const planned = procedure.plan("US").cells.filter(({ content }) => String(content).includes("BEAD."));
  expect(await host.repairFormulas()).toEqual({ count: planned.length, refused: [] });
  await host.recalculate();
  expect(values()).toEqual(before);
  expect(sheet.value("standoff")).toBeCloseTo(0.0425, 12);
});

test("the running functions tell their version", async () => {
  const { host } = await openSheet(procedure, "US");
  expect(await host.functionsVersion()).toBe(VERSION);
});
