/**
 * Fills a new sheet from its plan with what it cannot be without. Nothing here waits for Excel: every call is queued and
 * one sync carries them out.
 */

import type { CellPlan, SheetPlan } from "../../sheets/sheet";
import { UNITS_NAME } from "../../sheets/sheet";
import { addressOf, spread } from "../../sheets/addresses";
import { LOOKS } from "../looks";
import { isTextAt, TEXT_FORMAT } from "../ranges";
import { blocksOf } from "./blocks";
import type { Naming } from "./naming";
import { allowOnly, colorSigns, grayRows, lockUnits, warnOutside } from "./rules";

/** Points that one character of width takes. */
const CHARACTER_WIDTH = 5.6;
/** Points that a line of text takes. */
const LINE_HEIGHT = 15;
const ALIGNMENTS = { left: "Left", center: "Center", right: "Right" } as const;

export function fillSheet(sheet: Excel.Worksheet, plan: SheetPlan, naming: Naming): void {
  plan.widths.forEach((width, column) => {
    const letters = addressOf({ column, row: 0 }).replace(/\d+$/, "");
    sheet.getRange(`${letters}:${letters}`).format.columnWidth = width * CHARACTER_WIDTH;
  });
  for (const { address, cells } of blocksOf(plan.cells, ({ format }) => format)) {
    sheet.getRange(address).numberFormat = cells.map((row) => row.map(({ format }) => format));
  }
  for (const { address, cells } of blocksOf(plan.cells, contentKey)) {
    sheet.getRange(address).formulas = cells.map((row) =>
      row.map(({ content, format }) => entered(content, format, naming)),
    );
  }
  for (const cell of plan.cells.filter(isMerged)) sheet.getRange(wholeOf(cell)).merge();
  for (const { address, look } of dressed(plan.cells)) dress(sheet.getRange(address), look);
  for (const { at, lines = 1 } of plan.cells) {
    if (lines > 1) sheet.getRange(at).format.rowHeight = lines * LINE_HEIGHT;
  }
  for (const { name, at } of plan.names) sheet.names.add(name, sheet.getRange(at));
  for (const { at, allowed } of plan.lists) allowOnly(sheet.getRange(at), allowed);
  const units = plan.names.find(({ name }) => name === UNITS_NAME);
  if (units !== undefined) lockUnits(sheet.getRange(units.at), plan.units);
  for (const range of plan.ranges) warnOutside(sheet.getRange(range.at), range, isTextAt(plan, range.at));
  for (const at of plan.signs) colorSigns(sheet.getRange(at), at);
  for (const { at, formula } of plan.grayed ?? []) grayRows(sheet.getRange(at), formula);
}

function contentKey({ content }: CellPlan): string | undefined {
  return content === "" ? undefined : "content";
}

/**
 * What is typed for a content. A text that Excel would take for a number, a date or a formula gets an apostrophe, unless
 * the cell is kept as text.
 */
export function entered<Other>(
  content: string | Other,
  format: string | undefined,
  naming: Naming,
): string | Other {
  if (format === TEXT_FORMAT) return String(content);
  if (typeof content !== "string") return content;
  if (content.startsWith("=")) return naming.toExcel(content);
  if (content === "") return content;
  const mistakable =
    /^[+\-'@]/.test(content) || /^\d+\s*[-/.:]\s*\d/.test(content) || Number.isFinite(Number(content));
  return mistakable ? `'${content}` : content;
}

function isMerged({ columns = 1, rows = 1 }: CellPlan): boolean {
  return columns > 1 || rows > 1;
}

function wholeOf({ at, columns, rows }: CellPlan): string {
  return spread(at, columns, rows);
}

/** Each block of one look, and each merged cell for itself. */
function dressed(cells: readonly CellPlan[]): { address: string; look: CellPlan["look"] }[] {
  const single = blocksOf(cells, (cell) => (isMerged(cell) ? undefined : cell.look));
  return [
    ...single.flatMap(({ address, cells: rows }) => {
      const look = rows[0]?.[0]?.look;
      return look === undefined ? [] : [{ address, look }];
    }),
    ...cells.filter(isMerged).map((cell) => ({ address: wholeOf(cell), look: cell.look })),
  ];
}

function dress(range: Excel.Range, kind: CellPlan["look"]): void {
  const look = LOOKS[kind];
  const { format } = range;
  if (look.bold === true) format.font.bold = true;
  if (look.italic === true) format.font.italic = true;
  if (look.size !== undefined) format.font.size = look.size;
  if (look.ink !== undefined) format.font.color = look.ink;
  if (look.fill !== undefined) format.fill.color = look.fill;
  if (look.align !== undefined) format.horizontalAlignment = ALIGNMENTS[look.align];
  if (look.wrap === true) format.wrapText = true;
  format.verticalAlignment = "Center";
  for (const side of look.underline === undefined ? [] : (["EdgeBottom", "InsideHorizontal"] as const)) {
    const edge = format.borders.getItem(side);
    edge.style = "Continuous";
    edge.color = look.underline ?? "";
  }
  // Counts once the sheet is protected.
  if (kind === "input" || kind === "inputText") format.protection.locked = false;
}
