/** What a file keeps beside the cells, read back from its parts. */

import { Model, helpers, registries } from "@odoo/o-spreadsheet";
import { read } from "@e965/xlsx";
import { strFromU8, unzipSync } from "fflate";

import { writeFile } from "../../taskpane/files/write";
import type * as Addresses from "../../taskpane/sheets/addresses";
import { placeOf } from "../../taskpane/sheets/addresses";
import { snapshotOf } from "../../taskpane/hosts/browser/engine-sheet";
import { openSmall } from "./small-form";

// Counted: how often the writer looks an address up tells how its work grows.
jest.mock("../../taskpane/sheets/addresses", () => {
  const actual = jest.requireActual<typeof Addresses>("../../taskpane/sheets/addresses");
  return { ...actual, placeOf: jest.fn(actual.placeOf) };
});

async function parts(model: Model): Promise<{ sheet: string; styles: string; bytes: Uint8Array }> {
  const bytes = await writeFile(
    [snapshotOf(model, model.getters.getActiveSheetId())],
    (id) => id === "TEST_TABLE",
  );
  const all = unzipSync(bytes);
  const part = (path: string): string => strFromU8(all[path] ?? new Uint8Array());
  return { sheet: part("xl/worksheets/sheet1.xml"), styles: part("xl/styles.xml"), bytes };
}

test("signs: a rule for each, with its style, also for an inserted row", async () => {
  const { model, position } = await openSmall();
  const { sheetId, row } = position("D5");
  model.dispatch("ADD_COLUMNS_ROWS", {
    sheetId,
    sheetName: model.getters.getSheetName(sheetId),
    dimension: "ROW",
    base: row,
    quantity: 1,
    position: "before",
  });
  const { sheet, styles } = await parts(model);
  const [all = ""] = /<conditionalFormatting .*<\/conditionalFormatting>/s.exec(sheet) ?? [];
  expect(all).toMatch(/^<conditionalFormatting sqref="D4:D6">/);
  expect(
    [
      ...all.matchAll(/<cfRule type="expression" priority="(\d)" dxfId="(\d)"><formula>(.*?)<\/formula>/g),
    ].map(([, ...told]) => told),
  ).toEqual([
    ["1", "0", 'LEFT(D4,2)="✓ "'],
    ["2", "1", 'LEFT(D4,2)="▲ "'],
  ]);
  const [, holds, attention] = /<dxfs count="2"><dxf>(.*?)<\/dxf><dxf>(.*?)<\/dxf>/s.exec(styles) ?? [];
  expect(holds).toMatch(/<color rgb="(FF)?1B5E2B"/);
  expect(attention).toMatch(/<color rgb="(FF)?8A2A0B".*<bgColor rgb="(FF)?FDF0E1"/s);
});

test("ranges: a warning with its words; in a cell kept as text only plain numbers are judged", async () => {
  const { model } = await openSmall();
  const { sheet } = await parts(model);
  const validations = new Map(
    [...sheet.matchAll(/<dataValidation ([^>]*)>(.*?)<\/dataValidation>/g)].map(([, told = "", formulas]) => [
      /sqref="([^"]*)"/.exec(told)?.[1],
      { told, formulas },
    ]),
  );
  expect([...validations.keys()].sort()).toEqual(["B10:B12", "B2", "B4", "B5", "C10:C12"]);
  for (const at of ["B4", "B5", "B10:B12", "C10:C12"]) {
    expect(validations.get(at)?.told).toMatch(/allowBlank="1" showErrorMessage="1" errorStyle="warning"/);
  }
  const wall = validations.get("B5");
  expect(wall?.told).toMatch(/type="decimal" .*operator="between"/);
  expect(wall?.told).toContain('errorTitle="Wall" error="Wall outside of 0.02 to 0.5 in"');
  expect(wall?.formulas).toBe("<formula1>0.02</formula1><formula2>0.5</formula2>");
  const list = validations.get("B10:B12");
  expect(list?.told).toContain('type="custom"');
  expect(list?.formulas).toContain("AND(VALUE(B10)&gt;=0.25,VALUE(B10)&lt;=12)");
});

test("cells kept as text are texts of that format", async () => {
  const { model, type } = await openSmall();
  type("B10", "1/2");
  type("B11", "0.84");
  const { bytes } = await parts(model);
  const { Sheets, SheetNames } = read(bytes, { type: "array", cellNF: true });
  const sheet = Sheets[SheetNames[0] ?? ""];
  for (const [at, text] of [
    ["B4", "1-1/2"],
    ["B10", "1/2"],
    ["B11", "0.84"],
  ] as const) {
    expect([at, sheet?.[at]]).toEqual([at, expect.objectContaining({ t: "s", v: text, z: "@" })]);
  }
});

/** A table of ours that a file has to keep cell by cell. */
function registerTable(): void {
  if (registries.functionRegistry.contains("BEAD.TEST_TABLE")) return;
  const compute = ({ value }: { value: number }): { value: number }[][] =>
    Array.from({ length: 8 }, (_, column) =>
      Array.from({ length: value }, (_unused, row) => ({ value: 10 * row + column })),
    );
  registries.functionRegistry.add("BEAD.TEST_TABLE", {
    description: "",
    isExported: true,
    args: [helpers.arg("rows (number)", "")],
    compute: compute as (...given: unknown[]) => { value: number }[][],
  });
}

test("the work of writing a table grows as its cells do, and every cell of it is kept", async () => {
  jest.spyOn(console, "debug").mockImplementation(() => undefined);
  registerTable();
  const lookups: number[] = [];
  for (const rows of [201, 402]) {
    const model = new Model({
      version: "19.3.0",
      sheets: [
        {
          id: "s",
          name: "S",
          colNumber: 10,
          rowNumber: 500,
          cells: { A2: `=BEAD.TEST_TABLE(${String(rows)})` },
        },
      ],
    });
    jest.mocked(placeOf).mockClear();
    const { bytes } = await parts(model);
    lookups.push(jest.mocked(placeOf).mock.calls.length);
    const { Sheets, SheetNames } = read(bytes, { type: "array" });
    const last = Sheets[SheetNames[0] ?? ""]?.[`H${String(rows + 1)}`] as
      { f?: string; v?: number } | undefined;
    expect(last?.v).toBe(10 * (rows - 1) + 7);
    expect(last?.f).toBe(`INDEX(_xldudf_BEAD_TEST_TABLE(${String(rows)}),ROWS(A$2:A${String(rows + 1)}),8)`);
  }
  const [once = 0, twice = 0] = lookups;
  expect(once).toBeGreaterThanOrEqual(201 * 8);
  expect(twice).toBeLessThanOrEqual(2 * once);
});
