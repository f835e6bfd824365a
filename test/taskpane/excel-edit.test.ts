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

  test("every run waits for a cell that is being edited", async () => {
    const { excel, host } = await inserted(true);
    await converted(host);
    await host.repairFormulas();
    expect(excel.runs.length).toBeGreaterThan(3);
    for (const { options } of excel.runs) expect(options.delayForCellEdit).toBe(true);
  });

  test("a sheet under a password is left alone, and says so", async () => {
    const { excel, host } = await inserted(true);
    const sheet = excel.sheet("Procedure sheet");
    sheet.protection = { options: {}, password: "theirs" };
    expect(await failure(converted(host))).toMatch(/^this sheet is protected with a password/);
    expect(sheet.cell(sheet.names.get("wall") ?? "").formula).toBe(0.065);
  });

  test("a protection that cannot be put back, and edits that cannot be taken back, are said", async () => {
    const { excel, host } = await inserted(true);
    const error = new FakeError("GeneralException");
    excel.failing = { call: "protection.protect", error };
    expect(await failure(converted(host))).toBe("the sheet was edited, but could not be protected again");
    const again = await inserted(true);
    again.excel.failing = { call: "range.numberFormat", error };
    expect(await failure(converted(again.host))).toMatch(
      /^Excel gave no reason: .*; the edits already made could not be undone: use Undo$/,
    );
  });

  test("a failure halfway takes everything back and leaves the protection", async () => {
    const { excel, host } = await inserted(true);
    const sheet = excel.sheet("Procedure sheet");
    // A blank cell that the sheet never spoke of is as one that was written blank.
    const filled = (): unknown[] =>
      [...sheet.cells]
        .filter(([, { formula, format }]) => formula !== "" || format !== "General")
        .map(([at, { formula, format }]) => [at, formula, format]);
    const before = filled();
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
    expect(filled()).toEqual(before);
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

  async function repaired(excel: FakeExcel): Promise<number> {
    const { count, refused } = await hostIn(excel).repairFormulas();
    expect(refused).toEqual([]);
    return count;
  }

  test("enters our formulas again, in the spelling people type, and nothing else", async () => {
    const { excel, sheet } = opened();
    sheet.typed.length = 0;
    expect(await repaired(excel)).toBe(3);
    expect(sheet.typed).toEqual(["B2", "B3", "C5"]);
    expect(sheet.cell("B2").value).toBe("0.0.0");
    expect(sheet.cell("B3").formula).toBe('=IF(B2="_xldudf_BEAD_X(","",BEAD.STANDOFF(B9))');
    expect(sheet.cell("C5").formula).toBe("=BEAD.STANDOFF_SPREAD(0.0425,0.005,0.004)");
  });

  test("never writes a cell that another's answer fills", async () => {
    const { excel, sheet } = opened();
    excel.enter(sheet, "D5", "=BEAD.STANDOFF_SPREAD(0.0425,0.005,0.004)");
    sheet.spilled.set("C5", "C5");
    sheet.spilled.set("D5", "C5");
    sheet.typed.length = 0;
    expect(await repaired(excel)).toBe(3);
    expect(sheet.typed).toContain("C5");
    expect(sheet.typed).not.toContain("D5");
  });

  test("works on a protected sheet and leaves it protected; an empty sheet has nothing to repair", async () => {
    const { excel, sheet } = opened();
    sheet.protection = { options: { allowInsertRows: true } };
    expect(await repaired(excel)).toBe(3);
    expect(sheet.protection).toEqual({ options: { allowInsertRows: true } });
    const empty = new FakeExcel().install();
    expect(await repaired(empty)).toBe(0);
  });

  test.each([
    ["=X.XLL!_xldudf_BEAD_STANDOFF(0.065)", "=BEAD.STANDOFF(0.065)"],
    ["=[2]!_xldudf_BEAD_STANDOFF(A1)+[13]!_xldudf_BEAD_STANDOFF(A2)", "=BEAD.STANDOFF(A1)+BEAD.STANDOFF(A2)"],
    ["='C:\\Add-ins\\An add-in''s.xla'!_xldudf_BEAD_STANDOFF(1)", "=BEAD.STANDOFF(1)"],
    [
      "=IF(A1>0,'https://host.example/x (1).xlam'!_xldudf_bead_standoff(1),\"X.XLL!_xldudf_BEAD_Y(\")",
      '=IF(A1>0,BEAD.STANDOFF(1),"X.XLL!_xldudf_BEAD_Y(")',
    ],
    ["=2*Book1.xlsx!BEAD.STANDOFF(1)", "=2*BEAD.STANDOFF(1)"],
    ["=Other!A1+'My sheet'!B2+_xldudf_BEAD_STANDOFF(1)", "=Other!A1+'My sheet'!B2+BEAD.STANDOFF(1)"],
    ["=@X.XLL!_xldudf_BEAD_STANDOFF(1)", "=@BEAD.STANDOFF(1)"],
  ])("takes the name of another add-in or workbook off: %s", async (stored, typed) => {
    const excel = new FakeExcel().install();
    const sheet = excel.sheet("Sheet1");
    excel.enter(sheet, "B2", stored);
    expect(await repaired(excel)).toBe(1);
    expect(sheet.cell("B2").formula).toBe(typed);
  });

  test("what Excel refuses is left as it was and named; all else is entered", async () => {
    const { excel, sheet } = opened();
    excel.enter(sheet, "E1", "=BEAD.STANDOFF(Gone!A1)");
    excel.enter(sheet, "E9", "=_xldudf_BEAD_STANDOFF([Gone.xlsx]S!A1)");
    sheet.protection = { options: {} };
    sheet.typed.length = 0;
    excel.refused = ["E1", "E9"];
    expect(await hostIn(excel).repairFormulas()).toEqual({ count: 3, refused: ["E1", "E9"] });
    expect(new Set(sheet.typed)).toEqual(new Set(["B2", "B3", "C5"]));
    expect(sheet.cell("E9").formula).toBe("=_xldudf_BEAD_STANDOFF([Gone.xlsx]S!A1)");
    expect(sheet.cell("C5").value).toBe("0.0.0");
    expect(sheet.protection).toEqual({ options: {} });
  });

  test("a cell being edited is no refused formula: it is said, and nothing is searched for the culprit", async () => {
    const { excel, sheet } = opened();
    sheet.protection = { options: {} };
    excel.failing = { call: "range.formulas", error: new FakeError("InvalidOperationInCellEditMode") };
    expect(await failure(hostIn(excel).repairFormulas())).toMatch(/^a cell is being edited/);
    expect(excel.runs.at(-1)?.calls.filter((call) => call === "range.formulas").length).toBe(1);
    expect(sheet.protection).toEqual({ options: {} });
  });

  test("as many formulas as one call of Excel takes well, and no more", async () => {
    const { excel, sheet } = opened();
    for (let row = 1; row <= 4997; row += 1) excel.enter(sheet, `H${String(row)}`, "=BEAD.VERSION()");
    expect(await repaired(excel)).toBe(5000);
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
      const repairing = repaired(excel);
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
    ["a call that Excel stored with an @", "=@BEAD.STANDOFF(-1)", {}, "wall = -1 in: must be above 0"],
    ["another add-in's name", "=@X.XLL!_xldudf_BEAD_STANDOFF(-1)", {}, "wall = -1 in: must be above 0"],
    ["the stored spelling", "=_xldudf_BEAD_STANDOFF(-1)", {}, "wall = -1 in: must be above 0"],
    ["a cell in place of another that is blank", '=BEAD.STANDOFF(IF(B2="","",B3))', { B2: 1, B3: -1 }, ""],
    ["a cell in place of another that is wrong", '=BEAD.STANDOFF(IF(B2="","",B3))', { B2: -1, B3: 1 }, ""],
    ["more than a call", "=1+BEAD.STANDOFF(-1)", {}, ""],
    ["two calls", "=BEAD.STANDOFF(-1)+BEAD.STANDOFF(-2)", {}, ""],
    ["a computed argument", "=BEAD.STANDOFF(B2*2)", { B2: -1 }, ""],
    ["a range in one cell's place", "=BEAD.STANDOFF(B2:B3)", { B2: -1 }, ""],
    ["another sheet", "=BEAD.STANDOFF(Other!B2)", {}, ""],
    [
      "a cell far out, of a name in small letters",
      "=bead.standoff(AB$120)",
      { AB120: -1 },
      "wall = -1 in: must be above 0",
    ],
    [
      "blanks wherever they may be",
      '= @ BEAD.STANDOFF( IF( B2 = "" , "" , B2 ) ) ',
      { B2: -1 },
      "wall = -1 in: must be above 0",
    ],
    ["FALSE", "=BEAD.STANDOFF(false)", {}, "wall = FALSE: must be a number (in)"],
    ["TRUE", "=BEAD.STANDOFF( True )", {}, "wall = TRUE: must be a number (in)"],
    [
      "a text with a comma, a bracket and a quote in it",
      '=BEAD.STANDOFF(0.065,,"a,b)""{")',
      {},
      'units = "a,b)"{": must be one of US, SI',
    ],
    [
      "a list in braces",
      "=BEAD.FEELER_STACK(0.0425,{0.01, 0.02; 0.03, -0.04})",
      {},
      "leaves = -0.04 in: must be above 0",
    ],
    [
      "a list of texts in braces",
      '=BEAD.STANDOFF({"x,y"})',
      {},
      'wall = "x,y": must be a number or a size such as 1.5, 1-1/2 or 38.1 mm',
    ],
    [
      "cells of several columns",
      "=BEAD.FEELER_STACK(0.0425,$B$2:C3)",
      { B2: 1, C3: -2 },
      "leaves = -2 in: must be above 0",
    ],
    ["no argument at all", "=BEAD.STANDOFF()", {}, "wall = blank: needs a number (in)"],
    ["a formula that there is not", "=BEAD.WALDO(-1)", {}, ""],
    ["a name", "=BEAD.STANDOFF(_B2)", { B2: -1 }, ""],
    ["a name that begins as an address", "=BEAD.STANDOFF(B2_x)", { B2: -1 }, ""],
    ["a column without a row", "=BEAD.STANDOFF(B)", { B2: -1 }, ""],
    ["a list with a cell in it", "=BEAD.STANDOFF({1,B2})", { B2: -1 }, ""],
    ["a list that goes on", "=BEAD.STANDOFF({-1}*2)", {}, ""],
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

  test("a cell that another's answer fills is explained from there, with its place in the answer", async () => {
    const excel = new FakeExcel().install();
    const sheet = excel.sheet("Sheet1");
    excel.enter(sheet, "C5", "=BEAD.STANDOFF_SPREAD(0.0425,0.005,0.004)");
    for (const at of ["C5", "D5", "D7"]) sheet.spilled.set(at, "C5");
    Object.assign(sheet.cell("D7"), { formula: 0.004, value: 0.004, type: "Double" });
    excel.activeAddress = "D7";
    expect(await hostIn(excel).selectedCell()).toEqual({
      address: "D7",
      formula: "=BEAD.STANDOFF_SPREAD(0.0425,0.005,0.004)",
      shown: "0.004",
      message: "",
      filled: { from: "C5", row: 3, column: 2 },
    });
    excel.activeAddress = "C5";
    expect((await hostIn(excel).selectedCell())?.filled).toBeUndefined();
    // An older Excel knows no such answers.
    excel.supported = ["1.9"];
    excel.activeAddress = "D7";
    expect(await hostIn(excel).selectedCell()).toMatchObject({ formula: "", shown: "0.004" });
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
      expect((await host.readForm())?.units).toBe(units);
    },
  );

  test.each(["mm", "us", "", 1])(
    "a form whose units cell says %j is none, and tells no units",
    async (units) => {
      const excel = new FakeExcel().install();
      const host = hostIn(excel);
      await host.insert(procedure.plan("US"));
      const sheet = excel.sheet("Procedure sheet");
      expect((await host.readForm())?.units).toBe("US");
      excel.enter(sheet, sheet.names.get("sheet_units") ?? "", units);
      expect(await host.readForm()).toBeUndefined();
      excel.enter(sheet, "A1", "=BEAD.STANDOFF(0.065)");
      expect(await host.selectedCell()).toMatchObject({ formula: "=BEAD.STANDOFF(0.065)", units: undefined });
    },
  );

  test("tells what cells of the sheet show", async () => {
    const excel = new FakeExcel().install();
    const sheet = excel.sheet("Sheet1");
    excel.enter(sheet, "A1", "amps");
    excel.enter(sheet, "C2", 45.5);
    expect(await hostIn(excel).textsAt(["C2", "A1"])).toEqual(["45.5", "amps"]);
  });

  test("the version of the running functions is theirs, or unknown", async () => {
    expect(await hostIn(new FakeExcel().install()).functionsVersion()).toMatch(/^\d+\.\d+\.\d+$/);
    expect(await new ExcelHost().functionsVersion()).toBeUndefined();
  });
});
