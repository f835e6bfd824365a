/** Files that people open: our own of an earlier version, those that Excel has saved since, whole workbooks, and any other. */

import { readFileSync } from "node:fs";

import { Model } from "@odoo/o-spreadsheet";
import { read } from "@e965/xlsx";
import type { WriteSheet } from "hucre/xlsx";
import { writeXlsx } from "hucre/xlsx";

import type { Units } from "../../src/quantity";
import { command } from "../../taskpane/hosts/browser/commands";
import { BrowserHost } from "../../taskpane/hosts/browser/browser-host";
import { opened } from "../../taskpane/hosts/browser/open-workbook";
import { fileOf } from "../../taskpane/hosts/browser/save";
import { placeOf } from "../../taskpane/sheets/addresses";
import { gas } from "../../taskpane/sheets/gas";
import { procedure } from "../../taskpane/sheets/procedure";
import { number } from "../bead";
import { openSheet } from "./open-sheet";

type Value = string | number | boolean | null;

beforeAll(async () => {
  // Registers the formulas with the engine.
  await openSheet(procedure, "US");
});

class Book {
  constructor(
    readonly model: Model,
    readonly remark = "",
  ) {}

  get sheets(): string[] {
    return this.model.getters.getSheetIds().map((id) => this.model.getters.getSheetName(id));
  }

  idOf(sheet: string): string {
    const { getters } = this.model;
    return getters.getSheetIds().find((id) => getters.getSheetName(id) === sheet) ?? "";
  }

  at(sheet: string, address: string): Value {
    const { column: col, row } = placeOf(address);
    return this.model.getters.getEvaluatedCell({ sheetId: this.idOf(sheet), col, row }).value;
  }

  formula(sheet: string, address: string): string {
    const { column: col, row } = placeOf(address);
    return this.model.getters.getCellText({ sheetId: this.idOf(sheet), col, row }, { showFormula: true });
  }

  named(sheet: string, name: string, rows = 0): Value {
    const sheetId = this.idOf(sheet);
    const zone = this.model.getters
      .getNamedRanges()
      .find((one) => one.range.sheetId === sheetId && one.name.split("__")[0] === name)?.range.zone;
    if (zone === undefined) throw new Error(`no cell of ${sheet} is named ${name}`);
    return this.model.getters.getEvaluatedCell({ sheetId, col: zone.left, row: zone.top + rows }).value;
  }

  type(sheet: string, address: string, content: string): void {
    const { column: col, row } = placeOf(address);
    command(this.model, "UPDATE_CELL", { sheetId: this.idOf(sheet), col, row, content });
  }
}

async function open(bytes: Uint8Array): Promise<Book> {
  const { data, remark } = await opened(bytes, "bid.xlsx");
  return new Book(new Model(data), remark);
}

async function written(...sheets: readonly WriteSheet[]): Promise<Book> {
  return open(await writeXlsx({ sheets: [...sheets] }));
}

describe("a file of version 0.1", () => {
  test.each([
    [
      "procedure-US",
      "Procedure sheet",
      "US",
      { wall: 0.065, od: 1, heat_most: 8, dam_spacing: 24, style: "pulsed" },
    ],
    ["gas-SI", "Gas estimate", "SI", { torch_flow: 10, waste: 0.1, supply: "cylinder" }],
    ["cycle-US", "Cycle plan", "US", { joints: 600, operators: 2, shop_heads: 4, rate: 48 }],
  ] as const)(
    "%s: what was typed computes in today's sheet, and the old one stays as saved",
    async (name, title, units: Units, typed) => {
      const book = await open(readFileSync(`test/data/version-0.1/${name}.xlsx`));
      expect(book.remark).toContain(`“${title}” is of an earlier version`);
      expect(book.sheets).toEqual([title, `${title} as saved`]);
      expect(book.named(title, "summary")).toMatch(/^✓ All \d+ checks hold/);
      expect(book.named(title, "sheet_units")).toBe(units);
      for (const [cell, value] of Object.entries(typed)) expect(book.named(title, cell)).toBe(value);
      expect((await new BrowserHost(book.model).readForm())?.template.title).toBe(title);
    },
  );

  test("the list of joints comes along, line by line, and no line of today's example with it", async () => {
    const book = await open(readFileSync("test/data/version-0.1/gas-SI.xlsx"));
    const lines = [1, 2, 3, 4, 5, 6, 7].map((row) => book.named("Gas estimate", "list_counts", row));
    expect(lines).toEqual([120, 220, 90, 64, 36, 18, null]);
    expect(book.named("Gas estimate", "joints")).toBe(120 + 220 + 90 + 64 + 36 + 18);
    // What was computed then can be compared: the sheet as saved holds values.
    expect(typeof book.at("Gas estimate as saved", "D38")).toBe("number");
    expect(book.formula("Gas estimate as saved", "D38")).not.toMatch(/^=/);
  });
});

test("a cycle plan without scenarios: what was typed stands in the first column, and no what-if or list of today's example", async () => {
  const book = await open(readFileSync("test/data/version-0.1/cycle-US.xlsx"));
  const named = (name: string): unknown => book.named("Cycle plan", name);
  for (const name of ["shop_heads_b", "load_c", "scenario_b", "shift_steady_b", "changeovers_typed"]) {
    expect([name, named(name) ?? ""]).toEqual([name, ""]);
  }
  expect(book.named("Cycle plan", "joint_counts", 1) ?? "").toBe("");
  // Heads fixed to their operators as they were, without changeovers: twice what one makes.
  expect([named("heads_are"), named("changeovers")]).toEqual(["fixed", 0]);
  const one = number("CREW_OUTPUT", 2, 180, named("machine"), named("net_hours"), 0.85, "steady", 15);
  expect(Number(named("shift_steady"))).toBeCloseTo(2 * one, 9);
  expect(Number(named("labor"))).toBeCloseTo(8 / one, 9);
});

test("a sheet with a cell deleted: what a new sheet puts there is told, a typed formula keeps its answer, a blank stays blank", async () => {
  const first = await openSheet(procedure, "US");
  first.type("wall", "=0.083");
  first.type("od", "2");
  first.type("heat_most", "");
  first.type("dam_spacing", "30");
  first.deleteRow(26);
  const book = await open(await fileOf(first.model));
  expect(book.named("Procedure sheet", "wall")).toBe(0.083);
  expect(book.named("Procedure sheet", "od")).toBe(2);
  expect(book.named("Procedure sheet", "heat_most")).toBeFalsy();
  expect(book.named("Procedure sheet", "dam_spacing")).toBe(30);
  // Row 26: the vent, which a new sheet has at 3/16 in.
  expect(book.remark).toContain("Not in the file, so as a new sheet has it: Vent hole fitted (0.1875).");
});

test("the sheet as it was saved has no verdict of today and nothing to type in", async () => {
  const first = await openSheet(procedure, "US");
  first.deleteRow(26);
  const { model } = await open(await fileOf(first.model));
  const book = new Book(model);
  const sheetId = book.idOf("Procedure sheet as saved");
  const cells = model.getters.getCells(sheetId);
  expect(cells.length).toBeGreaterThan(300);
  for (const cell of cells) {
    expect(cell.isFormula).toBe(false);
    const position = model.getters.getCellPosition(cell.id);
    expect(model.getters.getCellText(position, { showFormula: true })).not.toMatch(/^[✓▲]/);
    expect(cell.style?.fillColor).not.toBe("#E4EEF9");
  }
  expect(book.at("Procedure sheet as saved", "A2")).toMatch(/^As saved: [✓▲]/);
});

test("a formula that a file could only keep as a value is told when the file is opened", async () => {
  const first = await openSheet(procedure, "US");
  first.typeAt("R5", "=PIVOT.VALUE(1)");
  expect((await open(await fileOf(first.model))).remark).toContain(
    "formulas that the file could only keep as values",
  );
});

test("the lines of a list that a person computed come along with their answers", async () => {
  const first = await openSheet(gas, "US");
  first.typeBeside("list_counts", 0, 1, "=60*2");
  first.deleteRow(24);
  const book = await open(await fileOf(first.model));
  expect(book.remark).toContain("or not whole");
  expect(book.named("Gas estimate", "list_counts", 1)).toBe(120);
});

test("a whole workbook: sheets that speak of each other, a person's own texts and numbers, names that a file does not take", async () => {
  const first = await openSheet(procedure, "US");
  await first.host.insert(gas.plan("SI"));
  const book = new Book(first.model);
  const long = "Line 4 of the invented creamery, second floor";
  command(first.model, "CREATE_SHEET", { sheetId: "own", name: long, position: 0, cols: 10, rows: 40 });
  command(first.model, "CREATE_SHEET", { sheetId: "log", name: "History", position: 1, cols: 10, rows: 40 });
  const cells: Readonly<Record<string, string>> = {
    A1: "='Procedure sheet'!B11*2",
    A2: "=SUM(History!A1:A3)",
    A3: "'1/2",
    A4: "'=no formula",
    A5: "TRUE",
    A6: "-1.5e-7",
    A7: "wall__1 is a name",
    A8: "=wall__1+1",
    A9: "=BEAD.STANDOFF('Procedure sheet'!B11)",
  };
  for (const [at, content] of Object.entries(cells)) book.type(long, at, content);
  ["1", "2", "4"].forEach((content, i) => {
    book.type("History", `A${String(i + 1)}`, content);
  });
  const bytes = await fileOf(first.model);
  const inFile = read(bytes).SheetNames;
  expect(inFile.every((name) => name.length <= 31 && name !== "History")).toBe(true);
  const again = await open(bytes);
  expect(again.remark).toBe("Opened “bid.xlsx”.");
  const [own = ""] = again.sheets;
  expect(own).toBe(long.slice(0, 31).trim());
  for (const at of Object.keys(cells)) expect(again.at(own, at)).toBe(book.at(long, at));
  expect(again.at(own, "A2")).toBe(7);
  // They go on to follow each other.
  again.type("Procedure sheet", "B11", "0.08");
  ["A1", "A8", "A9"].forEach((at, i) => {
    expect(again.at(own, at)).toBeCloseTo([0.16, 1.08, 0.05][i] ?? NaN, 12);
  });
});

describe("a file that Excel has saved", () => {
  test("one formula that fills a block is one formula again, without a copy of its answers", async () => {
    const cells = new Map<string, object>([
      ["0,0", { value: 0.065, type: "number" }],
      [
        "1,0",
        {
          value: "outside diameter",
          type: "formula",
          formula: "_xldudf_BEAD_FEELER_STACK(A1)",
          formulaType: "array",
          formulaRef: "A2:C3",
          formulaDynamic: true,
        },
      ],
      ["2,0", { value: "old copy", type: "string" }],
      ["0,3", { value: 7, type: "formula", formula: "_xlfn.CONCAT(A1,1)" }],
    ]);
    const book = await written({ name: "Own", cells });
    expect(book.formula("Own", "A2")).toBe("=BEAD.FEELER_STACK(A1)");
    expect(book.formula("Own", "A3")).not.toBe("old copy");
    expect(book.formula("Own", "D1")).toBe("=CONCAT(A1,1)");
  });

  test("what cannot be taken over is told once, by kind", async () => {
    const cells = new Map<string, object>([
      ["0,0", { value: 1, type: "formula", formula: "LAMBDA(1)+XYZZY(2)" }],
      ["1,0", { value: 2, type: "formula", formula: "XYZZY(3)" }],
    ]);
    const book = await written(
      {
        name: "Own",
        cells,
        dataValidations: [{ type: "date", range: "A1", operator: "greaterThan", formula1: "1" }],
      } as unknown as WriteSheet,
      { name: "Behind", rows: [["x"]], hidden: true },
    );
    expect(book.sheets).toEqual(["Own"]);
    expect(book.remark).toMatch(/^Opened “bid\.xlsx”\. Not taken over: /);
    expect(book.remark.match(/hidden sheets/g)).toHaveLength(1);
    expect(book.remark.match(/XYZZY/g)).toHaveLength(1);
    expect(book.remark).toContain("rules for typed cells that are neither a list nor a range of numbers");
  });
});

test("notes, sparklines, shapes, links, words with looks of their own and hidden rows are told, not lost silently", async () => {
  const cells = new Map<string, object>([
    ["0,0", { value: "see the note", type: "string", comment: { author: "A", text: "Ask first." } }],
    ["1,0", { value: "link", type: "string", hyperlink: { target: "https://example.com/" } }],
    [
      "2,0",
      {
        value: "two words",
        type: "richText",
        richText: [{ text: "two " }, { text: "words", font: { bold: true } }],
      },
    ],
    ["3,0", { value: 3, type: "number" }],
  ]);
  const book = await written({
    name: "Theirs",
    cells,
    rowDefs: new Map([[3, { hidden: true }]]),
    sparklines: [{ location: "B1", dataRange: "Theirs!A1:A4" }],
    textBoxes: [{ text: "drawn by hand", anchor: { from: { row: 5, col: 1 }, to: { row: 7, col: 3 } } }],
  });
  for (const kind of [
    "shapes and text boxes",
    "notes and comments",
    "links",
    "looks of single words in a cell",
    "that rows or columns were hidden (they are shown)",
    "sparklines",
  ]) {
    expect(book.remark).toContain(kind);
  }
  expect(book.remark).not.toContain("slicers");
});

test.each([
  ["a text", Buffer.from("1;2;3"), "it is no .xlsx file"],
  ["nothing", Buffer.alloc(0), "it is no .xlsx file"],
])("%s is refused with the reason", async (_, bytes, reason) => {
  await expect(opened(bytes, "bid.csv")).rejects.toThrow(reason);
});

test("any cut of a file is refused or opened, never a crash of another kind", async () => {
  const bytes = readFileSync("test/data/version-0.1/cycle-US.xlsx");
  for (let part = 1; part <= 12; part += 1) {
    const cut = bytes.subarray(0, Math.floor((bytes.length * part) / 13));
    await expect(opened(cut, "cut.xlsx")).rejects.toThrow(Error);
  }
});
