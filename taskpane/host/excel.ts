/** Excel as a host. Formulas go in as `range.formulas`, which take English names, commas and points in every locale. */

import { TEMPLATES } from "../templates";
import type { Content, Edit, Form, FormCell } from "../templates/convert";
import type { CellPlan, ChartPlan, SheetPlan } from "../templates/sheet";
import { formName, UNITS_NAME } from "../templates/sheet";
import { addressOf, freeName, placeOf, spread } from "./addresses";
import type { Host, SelectedCell } from "./host";
import { LOOKS } from "./looks";

/** Points that one character of width takes. */
const CHARACTER_WIDTH = 5.6;

export class ExcelHost implements Host {
  readonly label = "Excel";

  insert(plan: SheetPlan): Promise<string> {
    return Excel.run({ delayForCellEdit: true }, async (context) => {
      const sheets = context.workbook.worksheets;
      sheets.load("items/name");
      await context.sync();
      const name = freeName(
        plan.title,
        sheets.items.map((sheet) => sheet.name),
      );
      const sheet = sheets.add(name);
      plan.widths.forEach((width, column) => {
        const letter = addressOf({ column, row: 0 }).replace(/\d+$/, "");
        sheet.getRange(`${letter}:${letter}`).format.columnWidth = width * CHARACTER_WIDTH;
      });
      sheet.showGridlines = false;
      for (const cell of plan.cells) writeCell(sheet, cell);
      for (const { name: cellName, at } of plan.names) sheet.names.add(cellName, sheet.getRange(at));
      for (const { at, allowed } of [...plan.lists, unitsLock(plan)]) allowOnly(sheet.getRange(at), allowed);
      for (const chart of plan.charts) addChart(sheet, chart);
      sheet.freezePanes.freezeRows(plan.frozenRows);
      sheet.pageLayout.setPrintArea(plan.print.area);
      sheet.pageLayout.orientation = plan.print.landscape ? "Landscape" : "Portrait";
      sheet.pageLayout.zoom = { horizontalFitToPages: 1, verticalFitToPages: 1 };
      sheet.activate();
      await context.sync();
      return name;
    });
  }

  readForm(): Promise<Form | undefined> {
    return Excel.run(async (context) => {
      const names = context.workbook.worksheets.getActiveWorksheet().names;
      names.load("items/name");
      await context.sync();
      const cells = names.items.map((item) => {
        const range = item.getRangeOrNullObject();
        range.load("address,formulas");
        return { name: item.name, range };
      });
      await context.sync();
      const there = cells.filter(({ range }) => !range.isNullObject);
      const form = new Map(there.map(({ name, range }) => [name, cellsIn(range)]));
      const template = TEMPLATES.find(({ id }) => form.has(formName(id)));
      const units = form.get(UNITS_NAME)?.[0]?.content;
      if (template === undefined || (units !== "US" && units !== "SI")) return undefined;
      return { template, units, cells: form };
    });
  }

  editForm(_form: Form, edits: readonly Edit[]): Promise<void> {
    return Excel.run({ delayForCellEdit: true }, async (context) => {
      const sheet = context.workbook.worksheets.getActiveWorksheet();
      for (const { at, content, format } of edits) {
        const range = sheet.getRange(at);
        if (content === "US" || content === "SI") allowOnly(range, [content]);
        if (content !== undefined) range.formulas = [[content]];
        if (format !== undefined) range.numberFormat = [[format]];
      }
      await context.sync();
    });
  }

  selectedCell(): Promise<SelectedCell | undefined> {
    return Excel.run(async (context) => {
      const cell = context.workbook.getActiveCell();
      cell.load("address,formulas,text");
      await context.sync();
      const formula = String(firstOf(cell.formulas));
      return {
        address: cell.address.replace(/^.*!/, ""),
        formula: formula.startsWith("=") ? formula : "",
        shown: String(firstOf(cell.text)),
        message: "",
      };
    });
  }

  putFormula(formula: string): Promise<boolean> {
    return Excel.run({ delayForCellEdit: true }, async (context) => {
      const cell = context.workbook.getActiveCell();
      cell.load("formulas");
      await context.sync();
      if (firstOf(cell.formulas) !== "") return false;
      cell.formulas = [[formula]];
      await context.sync();
      return true;
    });
  }

  onChange(listener: () => void): void {
    const notify = (): Promise<void> => {
      listener();
      return Promise.resolve();
    };
    void Excel.run(async (context) => {
      context.workbook.onSelectionChanged.add(notify);
      context.workbook.worksheets.onCalculated.add(notify);
      await context.sync();
    });
  }
}

function writeCell(sheet: Excel.Worksheet, cell: CellPlan): void {
  const range = sheet.getRange(cell.at);
  const whole = sheet.getRange(spread(cell.at, cell.columns, cell.rows));
  const look = LOOKS[cell.look];
  if (cell.format !== undefined) range.numberFormat = [[cell.format]];
  // A blank inside the reach of a spilling formula must stay empty.
  if (cell.content !== "") range.formulas = [[cell.content]];
  if (whole !== range && ((cell.columns ?? 1) > 1 || (cell.rows ?? 1) > 1)) whole.merge();
  const { format } = whole;
  if (look.bold === true) format.font.bold = true;
  if (look.italic === true) format.font.italic = true;
  if (look.size !== undefined) format.font.size = look.size;
  if (look.ink !== undefined) format.font.color = look.ink;
  if (look.fill !== undefined) format.fill.color = look.fill;
  if (look.align !== undefined) format.horizontalAlignment = ALIGNMENTS[look.align];
  if (look.wrap === true) format.wrapText = true;
  format.verticalAlignment = "Center";
  if (look.underline !== undefined) {
    const edge = format.borders.getItem("EdgeBottom");
    edge.style = "Continuous";
    edge.color = look.underline;
  }
}

function addChart(sheet: Excel.Worksheet, plan: ChartPlan): void {
  const [first] = plan.values;
  if (first === undefined) return;
  const chart = sheet.charts.add(
    plan.kind === "line" ? "Line" : "ColumnClustered",
    sheet.getRange(first),
    "Columns",
  );
  chart.title.text = plan.title;
  chart.setPosition(plan.from, plan.to);
  plan.values.forEach((values, i) => {
    const [heading = "", last = ""] = values.split(":");
    const { column, row } = placeOf(heading);
    const body = sheet.getRange(`${addressOf({ column, row: row + 1 })}:${last}`);
    const series = i === 0 ? chart.series.getItemAt(0) : chart.series.add();
    series.setValues(body);
    series.setXAxisValues(sheet.getRange(plan.labels));
  });
}

const ALIGNMENTS = { left: "Left", center: "Center", right: "Right" } as const;

function allowOnly(range: Excel.Range, values: readonly string[]): void {
  range.dataValidation.rule = { list: { inCellDropDown: values.length > 1, source: values.join(",") } };
}

/** The units cell takes no other word: retyping it would read inches as millimetres. */
function unitsLock(plan: SheetPlan): { at: string; allowed: readonly string[] } {
  const at = plan.names.find(({ name }) => name === UNITS_NAME)?.at ?? "";
  return { at, allowed: [plan.units] };
}

/** The cells of a column, from the address and formulas of its range. */
function cellsIn(range: Excel.Range): FormCell[] {
  const { column, row } = placeOf(range.address.replace(/^.*!/, "").replace(/:.*$/, ""));
  const formulas = range.formulas as Content[][];
  return formulas.map(([content = ""], i) => ({ at: addressOf({ column, row: row + i }), content }));
}

function firstOf(values: unknown): string | number | boolean {
  const [row] = values as (string | number | boolean)[][];
  return row?.[0] ?? "";
}
