import { ExcelHost } from "../../taskpane/hosts/excel/excel-host";
import { convert } from "../../taskpane/sheets/convert";
import { procedure } from "../../taskpane/sheets/procedure";
import { FakeError, FakeExcel } from "./excel-fake";
import { failure, hostIn } from "./excel-host";

describe("converting a sheet", () => {
  async function inserted(protect: boolean): Promise<{ excel: FakeExcel; host: ExcelHost }> {
    const excel = new FakeExcel().install();
    const host = hostIn(excel);
    await host.insert(procedure.plan("US"), { protect });
    return { excel, host };
  }

  async function converted(host: ExcelHost): Promise<void> {
    const form = await host.readForm();
    if (form === undefined) throw new Error("no form");
    const conversion = convert(form);
    if ("problem" in conversion) throw new Error(conversion.problem);
    await host.editForm(form, conversion.edits);
  }

  test.each([false, true])("rewrites typed numbers, formats and units (protected: %s)", async (protect) => {
    const { excel, host } = await inserted(protect);
    const sheet = excel.sheet("Procedure sheet");
    const options = sheet.protection?.options;
    await converted(host);
    const at = (name: string): string => sheet.names.get(name) ?? "";
    expect(sheet.cell(at("sheet_units")).formula).toBe("SI");
    expect(sheet.cell(at("sheet_units")).style.get("dataValidation.rule")).toEqual({
      list: { inCellDropDown: false, source: "SI" },
    });
    expect(sheet.cell(at("wall")).formula).toBeCloseTo(1.651, 12);
    expect(sheet.cell(at("wall")).format).toBe("0.000");
    expect(sheet.protection?.options).toEqual(options);
  });

  test("a sheet under a password is left alone, and says so", async () => {
    const { excel, host } = await inserted(true);
    const sheet = excel.sheet("Procedure sheet");
    sheet.protection = { options: {}, password: "theirs" };
    expect(await failure(converted(host))).toMatch(/^this sheet is protected with a password/);
    expect(sheet.cell(sheet.names.get("wall") ?? "").formula).toBe(0.065);
  });

  test("a failure halfway takes everything back and leaves the protection", async () => {
    const { excel, host } = await inserted(true);
    const sheet = excel.sheet("Procedure sheet");
    const before = [...sheet.cells].map(([at, { formula, format }]) => [at, formula, format]);
    const error = new FakeError("GeneralException");
    let formats = 0;
    excel.failing = {
      // Fails once, in the middle.
      get call() {
        return "range.numberFormat";
      },
      get error() {
        formats += 1;
        if (formats === 1) excel.failing = undefined;
        return error;
      },
    };
    expect(await failure(converted(host))).toMatch(/^Excel gave no reason/);
    expect([...sheet.cells].map(([at, { formula, format }]) => [at, formula, format])).toEqual(before);
    expect(sheet.protection).toBeDefined();
  });
});

describe("repairing", () => {
  /** A sheet that was opened while the add-in was away. */
  function opened(): { excel: FakeExcel; sheet: NonNullable<FakeExcel["active"]> } {
    const excel = new FakeExcel().install();
    const sheet = excel.sheet("Sheet1");
    excel.enteredBeforeKnown = 2;
    excel.enter(sheet, "B2", "=BEAD.STANDOFF(0.065)");
    excel.enter(sheet, "B3", '=IF(B2="_xldudf_BEAD_X(","",BEAD.STANDOFF(B9))');
    excel.enter(sheet, "C5", "=_xldudf_BEAD_STANDOFF_SPREAD(0.0425,0.005,0.004)");
    excel.enter(sheet, "D7", "=SUM(A1:A3)");
    excel.enter(sheet, "D8", "BEAD.STANDOFF(1)");
    excel.enteredBeforeKnown = 0;
    return { excel, sheet };
  }

  test("enters our formulas again, in the spelling people type, and nothing else", async () => {
    const { excel, sheet } = opened();
    sheet.typed.length = 0;
    expect(await hostIn(excel).repairFormulas()).toBe(3);
    expect(sheet.typed).toEqual(["B2", "B3", "C5"]);
    expect(sheet.cell("B2").value).toBe("0.0.0");
    expect(sheet.cell("B3").formula).toBe('=IF(B2="_xldudf_BEAD_X(","",BEAD.STANDOFF(B9))');
    expect(sheet.cell("C5").formula).toBe("=BEAD.STANDOFF_SPREAD(0.0425,0.005,0.004)");
  });

  test("never writes a cell that another's answer fills", async () => {
    const { excel, sheet } = opened();
    excel.enter(sheet, "D5", "=BEAD.STANDOFF_SPREAD(0.0425,0.005,0.004)");
    sheet.spilled.set("D5", "C5");
    sheet.typed.length = 0;
    expect(await hostIn(excel).repairFormulas()).toBe(3);
    expect(sheet.typed).not.toContain("D5");
  });

  test("works on a protected sheet and leaves it protected; an empty sheet has nothing to repair", async () => {
    const { excel, sheet } = opened();
    sheet.protection = { options: { allowInsertRows: true } };
    expect(await hostIn(excel).repairFormulas()).toBe(3);
    expect(sheet.protection).toEqual({ options: { allowInsertRows: true } });
    const empty = new FakeExcel().install();
    expect(await hostIn(empty).repairFormulas()).toBe(0);
  });

  test("as many formulas as one call of Excel takes well, and no more", async () => {
    const { excel, sheet } = opened();
    for (let row = 1; row <= 4997; row += 1) excel.enter(sheet, `H${String(row)}`, "=BEAD.VERSION()");
    expect(await hostIn(excel).repairFormulas()).toBe(5000);
    excel.enter(sheet, "H4998", "=BEAD.VERSION()");
    sheet.typed.length = 0;
    expect(await failure(hostIn(excel).repairFormulas())).toBe(
      "this sheet has 5001 Ringbead formulas, too many to re-enter at once",
    );
    expect(sheet.typed).toEqual([]);
  });

  test("a sheet of up to 200 000 cells is searched, a larger one not", async () => {
    for (const [corner, said] of [
      ["T10000", 0],
      ["U9600", "this sheet uses 201600 cells, too many to search"],
    ] as const) {
      const excel = new FakeExcel().install();
      const sheet = excel.sheet("Sheet1");
      excel.enter(sheet, "A1", "first");
      excel.enter(sheet, corner, "last");
      const repairing = hostIn(excel).repairFormulas();
      expect(typeof said === "number" ? await repairing : await failure(repairing)).toBe(said);
    }
  });

  test("recalculates the sheet being shown", async () => {
    const { excel } = opened();
    await hostIn(excel).recalculate();
    expect(excel.calculated).toBe(1);
  });
});

describe("the selected cell", () => {
  async function sentence(formula: string, cells: Record<string, unknown> = {}): Promise<string> {
    const excel = new FakeExcel().install();
    const sheet = excel.sheet("Sheet1");
    for (const [at, value] of Object.entries(cells)) {
      const type = String(value).startsWith("#") ? "Error" : "Double";
      Object.assign(sheet.cell(at), { formula: value, value, type });
    }
    Object.assign(sheet.cell("A1"), { formula, value: "#VALUE!", type: "Error" });
    return (await hostIn(excel).selectedCell())?.message ?? "no cell";
  }

  test.each<[string, string, Record<string, unknown>, string]>([
    ["a constant", "=BEAD.STANDOFF(-0.065)", {}, "wall = -0.065 in: must be above 0"],
    ["a cell", '=BEAD.STANDOFF($B$2,,"SI")', { B2: -1.65 }, "wall = -1.65 mm: must be above 0"],
    [
      "a cell that may be blank",
      '=BEAD.STANDOFF(IF($B$2="","",$B$2))',
      { B2: -1 },
      "wall = -1 in: must be above 0",
    ],
    ["a blank cell", "=BEAD.STANDOFF(B2)", {}, "wall = blank: needs a number (in)"],
    [
      "a cell that holds an error",
      "=BEAD.STANDOFF(B2)",
      { B2: "#DIV/0!" },
      "wall = #DIV/0!: the referenced cell contains an error; fix it first",
    ],
    ["the stored spelling", "=_xldudf_BEAD_STANDOFF(-1)", {}, "wall = -1 in: must be above 0"],
    ["a cell in place of another that is blank", '=BEAD.STANDOFF(IF(B2="","",B3))', { B2: 1, B3: -1 }, ""],
    ["more than a call", "=1+BEAD.STANDOFF(-1)", {}, ""],
    ["two calls", "=BEAD.STANDOFF(-1)+BEAD.STANDOFF(-2)", {}, ""],
    ["a computed argument", "=BEAD.STANDOFF(B2*2)", { B2: -1 }, ""],
    ["a range in one cell's place", "=BEAD.STANDOFF(B2:B3)", { B2: -1 }, ""],
    ["another sheet", "=BEAD.STANDOFF(Other!B2)", {}, ""],
  ])("explains %s", async (_, formula, cells, expected) => {
    expect(await sentence(formula, cells)).toBe(expected);
  });

  test("tells address, formula and what it shows; takes a formula only when empty", async () => {
    const excel = new FakeExcel().install();
    const host = hostIn(excel);
    expect(await host.putFormula("=BEAD.STANDOFF(0.065)")).toBe(true);
    expect(await host.putFormula("=BEAD.STANDOFF(1)")).toBe(false);
    expect(await host.selectedCell()).toEqual({
      address: "A1",
      formula: "=BEAD.STANDOFF(0.065)",
      shown: "0.0.0",
      message: "",
    });
  });

  test.each(["US", "SI"] as const)(
    "tells the units of the form it stands on, %s, and none elsewhere",
    async (units) => {
      const excel = new FakeExcel().install();
      const host = hostIn(excel);
      await host.putFormula("=BEAD.STANDOFF(0.065)");
      expect((await host.selectedCell())?.units).toBeUndefined();
      await host.insert(procedure.plan(units));
      excel.enter(excel.sheet("Procedure sheet"), "A1", "=BEAD.STANDOFF(0.065)");
      expect((await host.selectedCell())?.units).toBe(units);
    },
  );

  test("the version of the running functions is theirs, or unknown", async () => {
    expect(await hostIn(new FakeExcel().install()).functionsVersion()).toMatch(/^\d+\.\d+\.\d+$/);
    expect(await new ExcelHost().functionsVersion()).toBeUndefined();
  });
});
