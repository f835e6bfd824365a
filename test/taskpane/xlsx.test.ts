/** Files of whole sheets, read back with a reader that shares no code with the writer. */

import type { CellObject, WorkBook, WorkSheet } from "@e965/xlsx";
import { read } from "@e965/xlsx";
import { strFromU8, unzipSync } from "fflate";

import type { Units } from "../../src/quantity";
import { fileOf } from "../../taskpane/hosts/browser/save";
import { addressOf, placeOf } from "../../taskpane/sheets/addresses";
import { TEMPLATES } from "../../taskpane/sheets";
import { cycle } from "../../taskpane/sheets/cycle";
import { gas } from "../../taskpane/sheets/gas";
import { procedure } from "../../taskpane/sheets/procedure";
import type { Template } from "../../taskpane/sheets/sheet";
import { PICTURES_NAME } from "../../taskpane/sheets/sheet";
import { VALUE_ONLY } from "../../taskpane/files/write";
import { computed } from "./computed";
import { addressesIn } from "./excel-fake-objects";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

interface File {
  readonly bytes: Uint8Array;
  readonly book: WorkBook;
  readonly sheet: WorkSheet;
  part(path: string): string;
  cell(at: string): CellObject | undefined;
  /** The cell of a name, some columns and rows away. */
  named(name: string, columns?: number, rows?: number): { at: string; cell: CellObject };
}

async function save(open: OpenSheet): Promise<File> {
  const bytes = await fileOf(open.model);
  const parts = unzipSync(bytes);
  const book = read(bytes, { type: "array", cellFormula: true, cellNF: true, cellStyles: true });
  const sheet = book.Sheets[book.SheetNames[0] ?? ""];
  if (sheet === undefined) throw new Error("the file has no sheet");
  const cell = (at: string): CellObject | undefined => sheet[at] as CellObject | undefined;
  return {
    bytes,
    book,
    sheet,
    cell,
    part: (path) => strFromU8(parts[path] ?? new Uint8Array()),
    named: (name, columns = 0, rows = 0) => {
      const sheetId = open.model.getters.getActiveSheetId();
      const zone = open.model.getters
        .getNamedRanges()
        .find((one) => one.range.sheetId === sheetId && one.name.split("__")[0] === name)?.range.zone;
      if (zone === undefined) throw new Error(`no cell is named ${name}`);
      const at = addressOf({ column: zone.left + columns, row: zone.top + rows });
      return { at, cell: cell(at) ?? { t: "z" } };
    },
  };
}

/** The value that a cell of a file stands for. In a formula of ours a space is an empty answer, and truth a number. */
function valueIn(cell: CellObject | undefined): unknown {
  if (cell === undefined || cell.t === "z") return "";
  if (cell.f?.includes("_xldudf_BEAD_") === true) {
    if (cell.v === "\u00a0") return "";
    if (cell.z === '"TRUE";"TRUE";"FALSE"') return cell.v === 1;
  }
  return cell.t === "e" ? cell.w : (cell.v ?? "");
}

const SHEETS = TEMPLATES.flatMap((template) =>
  (["US", "SI"] as Units[]).map((units) => [template.id, units, template] as const),
);

describe.each(SHEETS)("a file of %s in %s", (_, units, template: Template) => {
  let open: OpenSheet;
  let file: File;
  beforeAll(async () => {
    open = await openSheet(template, units);
    file = await save(open);
  });

  test("holds every value of the sheet", () => {
    const all = computed(open);
    expect(all.filter(({ value }) => value !== "").length).toBeGreaterThan(150);
    for (const { at, value } of all) expect([at, valueIn(file.cell(at))]).toEqual([at, value]);
  });

  test("keeps our formulas in stored form, tables place by place, in no array", () => {
    const stored = Object.entries(file.sheet).flatMap(([at, one]) => {
      const { f, F } = one as CellObject;
      return typeof f === "string" ? [{ at, f, F }] : [];
    });
    const ours = stored.filter(({ f }) => f.includes("_xldudf_BEAD_"));
    expect(ours.length).toBeGreaterThan(15);
    for (const { at, f, F } of ours) expect([at, F, f.includes("BEAD.")]).toEqual([at, undefined, false]);
    for (const { at, f } of stored) expect([at, f.includes("__")]).toEqual([at, false]);
  });

  test("says how it is to be opened: as Excel's, without computing everything again", () => {
    expect(file.part("docProps/app.xml")).toContain("<Application>Microsoft Excel</Application>");
    expect(file.part("docProps/app.xml")).toMatch(/<AppVersion>\d{2}\.\d{4}<\/AppVersion><\/Properties>$/);
    expect(file.part("xl/workbook.xml")).toContain('<calcPr calcId="191029"/>');
    expect(file.part("xl/workbook.xml")).not.toContain("fullCalcOnLoad");
  });

  test("has the parts of styles that Excel writes: every look rests on the one named Normal", () => {
    const styles = file.part("xl/styles.xml");
    expect(styles).toMatch(/<cellStyleXfs count="1"><xf [^>]*\/><\/cellStyleXfs>/);
    expect(styles).toContain('<cellStyle name="Normal" xfId="0" builtinId="0"/>');
    const looks = /<cellXfs count="(\d+)">(.*)<\/cellXfs>/.exec(styles);
    const xfs = looks?.[2]?.match(/<xf [^>]*>/g) ?? [];
    expect(xfs.length).toBe(Number(looks?.[1]));
    for (const xf of xfs) expect(xf).toContain('xfId="0"');
  });

  test("says in a cell that stays in sight that the numbers do not follow without the add-in", () => {
    const words = "Tinted cells are typed; the rest follows only with Ringbead.";
    const at = Object.entries(file.sheet).find(([, one]) => (one as CellObject).v === words)?.[0] ?? "";
    expect(Number(/\d+$/.exec(at)?.[0])).toBeLessThanOrEqual(template.plan(units).frozenRows);
  });

  test("has the form's names, each of this sheet only", () => {
    const plan = template.plan(units);
    const names = (file.book.Workbook?.Names ?? []).filter(({ Name }) => !Name.startsWith("_xlnm"));
    expect(names.map(({ Name }) => Name).sort()).toEqual(plan.names.map(({ name }) => name).sort());
    for (const { name, at } of plan.names) {
      const found = names.find(({ Name }) => Name === name);
      const range = at.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
      expect([name, found?.Sheet, found?.Ref]).toEqual([name, 0, `'${plan.title}'!${range}`]);
    }
  });

  test("is laid out as planned: widths, merged cells, formats, lists, charts, page", () => {
    const plan = template.plan(units);
    plan.widths.forEach((width, i) => {
      expect(Math.abs((file.sheet["!cols"]?.[i]?.width ?? 0) - width)).toBeLessThan(0.1);
    });
    const wide = plan.cells.filter(({ columns = 1, rows = 1 }) => columns * rows > 1);
    expect(file.sheet["!merges"]?.length).toBe(wide.length);
    for (const { at, format } of plan.cells) {
      if (format === undefined || format === "General" || typeof file.cell(at)?.v !== "number") continue;
      expect([at, file.cell(at)?.z]).toEqual([at, format]);
    }
    const xml = file.part("xl/worksheets/sheet1.xml");
    const guarded = [...xml.matchAll(/<dataValidation [^>]*sqref="([^"]*)"/g)].flatMap(([, at = ""]) =>
      addressesIn(at).flat(),
    );
    const unitsAt = plan.names.find(({ name }) => name === "sheet_units")?.at ?? "";
    const planned = [...plan.lists, ...plan.ranges, { at: unitsAt }].flatMap(({ at }) =>
      addressesIn(at).flat(),
    );
    expect(guarded.sort()).toEqual(planned.sort());
    expect(xml.match(/<cfRule /g)?.length ?? 0).toBe(2 * plan.signs.length + (plan.grayed ?? []).length);
    for (const { at, formula } of plan.grayed ?? []) {
      const text = formula.slice(1).replaceAll("&", "&amp;").replaceAll(">", "&gt;");
      expect(xml).toMatch(new RegExp(`<conditionalFormatting sqref="${at}"><cfRule type="expression"`));
      expect(xml.replaceAll("&quot;", '"')).toContain(`<formula>${text}</formula>`);
    }
    expect(/<autoFilter ref="([^"]*)"/.exec(xml)?.[1]).toBe(plan.filter);
    expect(/ xSplit="(\d+)"/.exec(xml)?.[1]).toBe(plan.frozenColumns?.toString());
    const area = file.book.Workbook?.Names?.find(({ Name }) => Name === "_xlnm.Print_Area");
    // Pictures that the sheet keeps room for are printed with it.
    const room = plan.names.find(({ name }) => name === PICTURES_NAME)?.at.replace(/^.*:/, "");
    const printed = `'${plan.title}'!${plan.print.area.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2")}`;
    const [first = "", last = ""] = (area?.Ref ?? "").replaceAll("$", "").split(":");
    if (room === undefined) expect(area?.Ref).toBe(printed);
    else {
      expect(first).toBe(`'${plan.title}'!A1`);
      expect(placeOf(last).column).toBe(placeOf(plan.print.area.replace(/^.*:/, "")).column);
      expect(placeOf(last).row).toBeLessThanOrEqual(placeOf(room).row);
      expect(placeOf(last).row).toBeGreaterThan(placeOf(plan.print.area.replace(/^.*:/, "")).row);
    }
    expect(xml).toContain('fitToWidth="1"');
    expect(xml).toContain(`fitToHeight="${plan.print.paper === "page" ? "1" : "0"}"`);
    expect(xml).toMatch(
      plan.print.paper !== "list" && plan.print.paper !== "wide"
        ? /<pageSetup orientation="portrait"/
        : /<pageSetup orientation="landscape"/,
    );
    expect(xml).toContain("<oddFooter>&amp;L&amp;A · &amp;D&amp;RPage &amp;P of &amp;N</oddFooter>");
    expect(xml).toContain(`ySplit="${String(plan.frozenRows)}"`);
    plan.charts.forEach(({ title }, i) => {
      expect(file.part(`xl/charts/chart${String(i + 1)}.xml`)).toContain(title);
    });
  });
});

test("a single answer of ours and a native formula, as stored", async () => {
  const open = await openSheet(procedure, "US");
  const file = await save(open);
  const { cell } = file.named("electrode_length");
  expect(cell.f).toMatch(/^_xldudf_BEAD_ELECTRODE_LENGTH\(IF\(\$B\$\d+="","",\$B\$\d+\),/);
  expect(cell.v).toBe(open.value("electrode_length"));
  expect(file.named("cycle").cell.f).toMatch(/^IF\(COUNT\(G\d+:G\d+\)<7,"",SUM\(G\d+:G\d+\)\)$/);
});

test("a cell of a table of ours looks up its place, counted so that inserted rows count too", async () => {
  const file = await save(await openSheet(cycle, "US"));
  const first = file.named("phases").at;
  const { cell, at } = file.named("phases", 2, 3);
  const [column, row] = [first.slice(0, 1), at.slice(1)];
  expect(cell.f?.startsWith("INDEX(_xldudf_BEAD_CYCLE_PHASES(")).toBe(true);
  expect(cell.f?.endsWith(`,ROWS(${column}$${first.slice(1)}:${column}${row}),3)`)).toBe(true);
});

test("a native column over a list is stored line by line, its total as an array of one cell", async () => {
  const open = await openSheet(gas, "US");
  open.typeBeside("takeoff", 12, 1, "=B63:B66*2");
  open.typeBeside("takeoff", 12, 6, "=SUM(B63:B68*2)");
  const file = await save(open);
  const [first, fourth] = [file.named("takeoff", 12, 1).cell, file.named("takeoff", 12, 4).cell];
  expect([first.f, fourth.f]).toEqual(["B63:B66*2", "B63:B66*2"]);
  expect([first.v, fourth.v, fourth.F]).toEqual([240, 128, undefined]);
  const { cell, at } = file.named("takeoff", 12, 6);
  expect([cell.F, cell.D]).toEqual([at, true]);
  expect(cell.v).toBe(2 * (120 + 220 + 90 + 64 + 36 + 18));
});

test("every formula of a sheet is stored as one: a verdict kept as its value would stand whatever is typed", async () => {
  for (const [id, units, template] of SHEETS) {
    const file = await save(await openSheet(template, units));
    const kept = template
      .plan(units)
      .cells.filter(({ content }) => typeof content === "string" && content.startsWith("="))
      .filter(({ at }) => file.cell(at)?.f === undefined);
    expect([id, kept]).toEqual([id, []]);
  }
});

test("the cells that a sheet counts to be formulas are as many in the file", async () => {
  for (const [id, units, template] of SHEETS) {
    const open = await openSheet(template, units);
    const file = await save(open);
    const own = new Set(
      template
        .plan(units)
        .cells.filter(({ content }) => String(content).startsWith("="))
        .map(({ at }) => at),
    );
    const counted = Object.values(file.sheet)
      .flatMap((one) => [...String((one as CellObject).f).matchAll(/ISFORMULA\((\$\w+\$\d+:\$\w+\$\d+)\)/g)])
      .map(([, block = ""]) => block.replaceAll("$", ""));
    expect(counted.length).toBeGreaterThan(3);
    for (const block of new Set(counted)) {
      const cells = addressesIn(block).flat();
      const stored = cells.filter((at) => file.cell(at)?.f !== undefined);
      expect([id, block, stored]).toEqual([id, block, cells.filter((at) => own.has(at))]);
    }
  }
});

test("a formula that a file cannot hold keeps its value and says so", async () => {
  const open = await openSheet(gas, "US");
  open.typeBeside("takeoff", 12, 1, "=ROUND(BEAD.FEELER_STACK(0.0425),3)");
  const { cell } = (await save(open)).named("takeoff", 12, 1);
  expect([cell.f, cell.v]).toEqual([undefined, 0.035]);
  expect(cell.c?.[0]?.t).toContain(VALUE_ONLY);
});

test("a sheet as a person left it: typed values, inserted rows, a refusal, formulas of their own", async () => {
  const open = await openSheet(gas, "SI");
  open.typeBeside("takeoff", -2, 1, "-1.65");
  open.insertRow("takeoff", 3);
  open.typeBeside("takeoff", 12, 0, "=Scratch!A1+7");
  open.typeBeside("takeoff", 12, 1, "=BEAD.STANDOFF(-1)");
  const file = await save(open);
  for (const { at, value } of computed(open)) expect([at, valueIn(file.cell(at))]).toEqual([at, value]);
  const inserted = file.named("takeoff", 0, 4);
  expect(inserted.cell.f).toMatch(/^INDEX\(_xldudf_BEAD_TAKEOFF\(/);
  const elsewhere = file.named("takeoff", 12, 0).cell;
  expect([elsewhere.f, elsewhere.v]).toEqual(["'Scratch'!A1+7", 7]);
  const refused = file.named("takeoff", 12, 1).cell;
  expect([refused.t, refused.w]).toEqual(["e", "#VALUE!"]);
});
