import type { Units } from "../../src/quantity";
import { placeOf, spread } from "../../taskpane/sheets/addresses";
import { LOOKS } from "../../taskpane/hosts/looks";
import { TEMPLATES } from "../../taskpane/sheets";
import { procedure } from "../../taskpane/sheets/procedure";
import type { CellPlan, SheetPlan, Template } from "../../taskpane/sheets/sheet";
import { FakeError, FakeExcel } from "./excel-fake";
import { addressesIn } from "./excel-fake-objects";
import { failure, hostIn } from "./excel-host";
import { openSheet } from "./open-sheet";

const CASES = TEMPLATES.flatMap((template) =>
  (["US", "SI"] as Units[]).map((units): [string, Template, Units] => [
    `${template.id} ${units}`,
    template,
    units,
  ]),
);
/** Of the part that must succeed; each nicety has one of its own, and the page width one more to see that it was kept. */
const MOST_SYNCS = 5;
const NICETIES = ["worksheet.activate", "freezePanes.freezeRows", "worksheet.showGridlines"];

function whole({ at, columns, rows }: CellPlan): string {
  return spread(at, columns, rows);
}

describe.each(CASES)("inserting %s", (_, template, units) => {
  const plan = template.plan(units);
  let excel: FakeExcel;
  beforeAll(async () => {
    excel = new FakeExcel().install();
    expect(await hostIn(excel).insert(plan)).toEqual({ name: plan.title, remark: "" });
  });

  test("every cell has its content, format and look", () => {
    const sheet = excel.sheet(plan.title);
    for (const cell of plan.cells) {
      const there = sheet.cell(cell.at);
      const look = LOOKS[cell.look];
      expect([cell.at, there.formula]).toEqual([cell.at, cell.content]);
      expect([cell.at, there.format]).toEqual([cell.at, cell.format ?? "General"]);
      for (const at of addressesIn(whole(cell)).flat()) {
        const { style } = sheet.cell(at);
        expect([at, style.get("font.bold"), style.get("font.color"), style.get("fill.color")]).toEqual([
          at,
          look.bold,
          look.ink,
          look.fill,
        ]);
        expect([at, style.get("borders.EdgeBottom.color")]).toEqual([at, look.underline]);
      }
      const typed = cell.look === "input" || cell.look === "inputText";
      expect([cell.at, there.style.get("protection.locked")]).toEqual([cell.at, typed ? false : undefined]);
    }
  });

  test("nothing else is typed, no cell twice, and nothing where a formula spills", async () => {
    const sheet = excel.sheet(plan.title);
    const filled = plan.cells.filter(({ content }) => content !== "").map(({ at }) => at);
    // The first entry is the probe.
    expect([...sheet.typed.slice(1)].sort()).toEqual([...filled].sort());
    const { model } = await openSheet(template, units);
    const sheetId = model.getters.getActiveSheetId();
    let spills = 0;
    for (const { at, content } of plan.cells) {
      if (typeof content !== "string" || !content.startsWith("=")) continue;
      const { column, row } = placeOf(at);
      const zone = model.getters.getSpreadZone({ sheetId, col: column, row });
      if (zone === undefined) continue;
      spills += 1;
      const reach = spread(at, zone.right - zone.left + 1, zone.bottom - zone.top + 1);
      const within = addressesIn(reach)
        .flat()
        .filter((one) => one !== at);
      expect(within.filter((one) => sheet.typed.includes(one))).toEqual([]);
      expect(
        sheet.merged.flatMap((one) => addressesIn(one).flat()).filter((one) => within.includes(one)),
      ).toEqual([]);
    }
    expect(spills > 0).toBe(
      plan.cells.some(({ content }) =>
        /CYCLE_PHASES|SECTORS|TAKEOFF|LOG_CHECK|SIZE_TABLE|COUPON_TABLE/.test(String(content)),
      ),
    );
  });

  test("names, merged cells, lists, charts, frozen rows and printing are as planned", () => {
    const sheet = excel.sheet(plan.title);
    expect([...sheet.names]).toEqual(plan.names.map(({ name, at }) => [name, at]));
    const merged = plan.cells.filter(({ columns = 1, rows = 1 }) => columns * rows > 1).map(whole);
    expect([...sheet.merged].sort()).toEqual(merged.sort());
    for (const { at, allowed } of plan.lists) {
      for (const one of addressesIn(at).flat()) {
        expect(sheet.cell(one).style.get("dataValidation.rule")).toEqual({
          list: { inCellDropDown: true, source: allowed.join(",") },
        });
      }
    }
    const unitsCell = plan.names.find(({ name }) => name === "sheet_units")?.at ?? "";
    expect(sheet.cell(unitsCell).style.get("dataValidation.rule")).toEqual({
      list: { inCellDropDown: false, source: units },
    });
    expect(
      sheet.charts.map(({ settings }) => ({
        x: settings.get("axes.categoryAxis.title.text"),
        y: settings.get("axes.valueAxis.title.text"),
      })),
    ).toEqual(plan.charts.map(({ axes }) => axes));
    expect(sheet.charts.map(({ settings }) => settings.get("title.text"))).toEqual(
      plan.charts.map(({ title }) => title),
    );
    plan.charts.forEach(({ values, labels, from, to }, i) => {
      const series = sheet.charts[i]?.series ?? [];
      expect(series.map((one) => one.labels)).toEqual(values.map(() => labels));
      // A series begins under its heading.
      expect(series.map((one) => addressesIn(one.values).length)).toEqual(
        values.map((one) => addressesIn(one).length - 1),
      );
      expect(sheet.charts[i]?.settings.get("position")).toBe(`${from}:${to}`);
    });
    expect(sheet.settings.get("frozenRows") ?? 0).toBe(plan.frozenRows);
    expect(sheet.settings.get("frozenColumns")).toBe(plan.frozenColumns);
    expect(sheet.settings.get("autoFilter")).toBe(plan.filter);
    expect(
      sheet.conditionals
        .filter(({ settings }) => settings.get("custom.format.fill.color") === "#E6EAEC")
        .map(({ range, settings }) => ({ at: range, formula: settings.get("custom.rule.formula") })),
    ).toEqual(plan.grayed ?? []);
    expect(sheet.settings.get("pageLayout.setPrintArea")).toBe(plan.print.area);
    expect(sheet.settings.get("pageLayout.orientation")).toBe(
      plan.print.paper === "list" || plan.print.paper === "wide" ? "Landscape" : "Portrait",
    );
    expect(sheet.settings.get("pageLayout.zoom")).toEqual({
      horizontalFitToPages: 1,
      ...(plan.print.paper === "page" ? { verticalFitToPages: 1 } : {}),
    });
    // As the file of the same sheet: before a heading across the sheet, and nowhere else.
    const breaks = [...sheet.settings.keys()].flatMap((key) => /^pageBreak (A\d+)$/.exec(key)?.[1] ?? []);
    expect(breaks).toHaveLength({ procedure: 1, cycle: 1 }[plan.template as string] ?? 0);
    for (const at of breaks) {
      expect(plan.cells.find((cell) => cell.at === at)?.look).toBe("section");
    }
    const widths = [...sheet.settings.keys()].filter((key) => key.startsWith("columnWidth"));
    expect(widths.length).toBe(plan.widths.length);
    expect(excel.active).toBe(sheet);
  });

  test("takes one run that waits for a cell being edited, one undo step, few syncs and few calls", () => {
    expect(excel.runs.map(({ options }) => options)).toEqual([
      { delayForCellEdit: true, mergeUndoGroup: true },
    ]);
    const niceties = NICETIES.length + plan.charts.length + ["area", "orientation", "zoom", "kept"].length;
    expect(excel.runs[0]?.syncs).toBeLessThanOrEqual(MOST_SYNCS + niceties);
    const calls = excel.runs[0]?.calls.filter((call) => call === "range.formulas").length ?? 0;
    expect(calls).toBeLessThan(plan.cells.filter(({ content }) => content !== "").length / 2);
  });
});

describe("inserting", () => {
  const plan = procedure.plan("US");

  test("waits for Excel to know the formulas, and enters none before", async () => {
    const excel = new FakeExcel().install();
    excel.enteredBeforeKnown = 2;
    const waits: number[] = [];
    await hostIn(excel, waits).insert(plan);
    expect(waits).toEqual([250, 250]);
    const sheet = excel.sheet(plan.title);
    expect(sheet.typed.slice(0, 3)).toEqual(["A1", "A1", "A1"]);
    expect([...sheet.cells.values()].filter(({ value }) => value === "#NAME?")).toEqual([]);
  });

  test("gives up in words when Excel never comes to know them, and leaves nothing", async () => {
    const excel = new FakeExcel().install();
    excel.enteredBeforeKnown = Infinity;
    const waits: number[] = [];
    const said = await failure(hostIn(excel, waits).insert(plan));
    expect(said).toMatch(
      /^Excel does not know the formulas after 20 s \(=BEAD\.VERSION\(\) gives an error\): close this pane/,
    );
    expect(said).toMatch(/; the half-made sheet was removed$/);
    expect(waits.reduce((sum, one) => sum + one, 0)).toBe(20_000);
    expect(excel.runs.map(({ options }) => options.mergeUndoGroup)).toEqual([true, undefined]);
    expect(excel.sheets.map(({ name }) => name)).toEqual(["Sheet1"]);
  });

  test("takes the next free name, whatever the case, and touches no other sheet", async () => {
    const excel = new FakeExcel().install();
    const theirs = excel.add("procedure SHEET");
    excel.enter(theirs, "A1", "mine");
    expect((await hostIn(excel).insert(plan)).name).toBe("Procedure sheet 2");
    expect((await hostIn(excel).insert(plan)).name).toBe("Procedure sheet 3");
    expect([...theirs.cells.values()].map(({ formula }) => formula)).toEqual(["mine"]);
  });

  test("a sheet of that name that another person makes meanwhile is never taken away", async () => {
    const excel = new FakeExcel().install();
    excel.failing = {
      get call() {
        const adding = excel.runs.at(-1)?.calls.at(-1) === "worksheets.add";
        if (adding && excel.sheets.length === 1) excel.enter(excel.add(plan.title), "A1", "theirs");
        return "";
      },
      error: new FakeError("GeneralException"),
    };
    expect((await hostIn(excel).insert(plan)).name).toBe(`${plan.title} 2`);
    expect(excel.sheets.map(({ name }) => name)).toEqual(["Sheet1", plan.title, `${plan.title} 2`]);
    expect(excel.sheet(plan.title).cell("A1").formula).toBe("theirs");
  });

  test("a long title, or one with signs that Excel forbids, still gives a name", async () => {
    const excel = new FakeExcel().install();
    const long: SheetPlan = { ...plan, title: "'Tube: 1/2 [in] * gas and cylinders for a whole skid'" };
    expect((await hostIn(excel).insert(long)).name).toBe("Tube 1 2 in gas and cylinders f");
    expect((await hostIn(excel).insert(long)).name).toBe("Tube 1 2 in gas and cylinders 2");
  });

  test("text that Excel would take for a number, a date or a formula stays text", async () => {
    const excel = new FakeExcel().install();
    const texts = ["+1", "-x", "304", "1/2", "'quoted", "@name"];
    const cells = texts.map((content, i): CellPlan => ({ at: `A${String(i + 1)}`, content, look: "label" }));
    await hostIn(excel).insert({ ...plan, cells, names: [], lists: [], ranges: [], signs: [], charts: [] });
    const sheet = excel.sheet(plan.title);
    expect(cells.map(({ at }) => sheet.cell(at).formula)).toEqual(texts);
  });

  test("a workbook whose structure is protected is left alone, and says so", async () => {
    const excel = new FakeExcel().install();
    excel.workbookProtected = true;
    expect(await failure(hostIn(excel).insert(plan))).toMatch(/^the structure of this workbook is protected/);
    expect(excel.runs.flatMap(({ calls }) => calls)).not.toContain("worksheets.add");
  });

  test("without undo groups, or where one refuses, the sheet comes all the same", async () => {
    const old = new FakeExcel().install();
    old.supported = ["1.9"];
    await hostIn(old).insert(plan);
    expect(old.runs.map(({ options }) => options.mergeUndoGroup)).toEqual([undefined]);

    const refusing = new FakeExcel().install();
    refusing.failing = { call: "range.merge", error: new FakeError("UndoNotSupported") };
    const inserting = hostIn(refusing).insert(plan);
    expect(await failure(inserting)).toMatch(/the half-made sheet was removed$/);
    expect(refusing.runs.map(({ options }) => options.mergeUndoGroup)).toEqual([
      true,
      undefined,
      undefined,
      undefined,
    ]);
    expect(refusing.sheets.length).toBe(1);
  });

  test("protection comes last, allows rows and formats, and is not fatal", async () => {
    const excel = new FakeExcel().install();
    const inserted = await hostIn(excel).insert(plan, { protect: true });
    expect(inserted.remark).toBe("Its computed cells are protected (no password).");
    expect(excel.sheet(plan.title).protection?.options).toMatchObject({
      allowFormatCells: true,
      allowInsertRows: true,
    });

    const failing = new FakeExcel().install();
    failing.failing = { call: "protection.protect", error: new FakeError("GeneralException") };
    const { name, remark } = await hostIn(failing).insert(plan, { protect: true });
    expect(remark).toMatch(/^It could not be protected: Excel gave no reason/);
    expect(failing.sheet(name).names.size).toBe(plan.names.length);
  });

  test("an add-in under development writes its own namespace and reads it back as BEAD", async () => {
    const excel = new FakeExcel();
    excel.namespace = "BEADDEV";
    excel.install();
    const host = hostIn(excel);
    await host.insert(plan);
    const formulas = [...excel.sheet(plan.title).cells.values()].map(({ formula }) => String(formula));
    expect(formulas.filter((formula) => formula.startsWith("=") && formula.includes("BEAD.")).length).toBe(0);
    expect(formulas.some((formula) => formula.includes("BEADDEV.ELECTRODE_LENGTH("))).toBe(true);
    const form = await host.readForm();
    expect(String(form?.cells.get("electrode_length")?.[0]?.content)).toMatch(/^=BEAD\.ELECTRODE_LENGTH\(/);
  });
});

describe("a failure at each step in turn", () => {
  const plan = procedure.plan("US");
  const all = async (): Promise<string[]> => {
    const excel = new FakeExcel().install();
    await hostIn(excel).insert(plan);
    return [...new Set(excel.runs.flatMap(({ calls }) => calls))];
  };

  test("leaves no sheet behind and is said", async () => {
    const steps = await all();
    expect(steps.length).toBeGreaterThan(20);
    for (const call of steps) {
      const excel = new FakeExcel().install();
      excel.failing = { call, error: new FakeError("InvalidOperationInCellEditMode") };
      const said = await failure(hostIn(excel).insert(plan));
      expect([call, said]).toEqual([
        call,
        expect.stringMatching(/^a cell is being edited: press Enter or Esc/),
      ]);
      const left = excel.sheets.map(({ name }) => name);
      // The one call that the removal needs as well.
      if (call === "worksheet.load") {
        expect(left).toEqual(["Sheet1", plan.title]);
        expect(said).toContain(`“${plan.title}” could not be removed: delete it yourself`);
      } else expect([call, left]).toEqual([call, ["Sheet1"]]);
    }
  });

  test.each([
    ["AccessDenied", /^Excel does not allow it: the workbook or the sheet is protected/],
    ["GeneralException", /^Excel gave no reason/],
    ["SomethingNew", /^Excel says “SomethingNew”/],
  ])("%s in words", async (code, words) => {
    const excel = new FakeExcel().install();
    excel.failing = { call: "range.merge", error: new FakeError(code) };
    expect(await failure(hostIn(excel).insert(plan))).toMatch(words);
  });
});

describe("the fake itself", () => {
  test("refuses to read what was not loaded, and does nothing before a sync", async () => {
    const excel = new FakeExcel().install();
    await Excel.run({}, async (context) => {
      const sheet = context.workbook.worksheets.getActiveWorksheet();
      const cell = sheet.getRange("A1");
      cell.formulas = [["x"]];
      expect(excel.sheet("Sheet1").typed).toEqual([]);
      expect(() => cell.formulas).toThrow("was not loaded");
      cell.load("formulas");
      expect(() => cell.formulas).toThrow("was not loaded");
      await context.sync();
      expect(cell.formulas).toEqual([["x"]]);
    });
  });
});
