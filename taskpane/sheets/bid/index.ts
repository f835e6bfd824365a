/**
 * The bid: a list of joints with hours, gas and price. The page for the customer is all that prints; the working page
 * around it, with every assumption and what it is worth, stays on the screen.
 */

import type { Units } from "../../../src/quantity";
import { behindThePage, cautions, checks, FROZEN_ROWS, head, mark } from "../frame";
import { jointList, linesOfList, LIST_TITLE } from "../joint-list";
import type { Row } from "../layout";
import { address, Layout } from "../layout";
import type { SheetPlan, Template } from "../sheet";
import { CHECKS } from "./checks";
import { customerPage, DRAFT } from "./customer";
import { CONSUMED, CREW, JOB, PAPERS, SUPPLY, WELDING, WORDING } from "./inputs";
import { LIST, PRICE, WORK } from "./results";
import { bySize } from "./sizes";
import { worthName, WORTHS, worthTable } from "./worth";

const GRID = { blockColumns: 6, labelColumns: 3 };
const WIDTHS = [8, 10, 12, 11, 12, 10, 13, 11, 11, 12, 12, 14, 12, 36];
/** Of a block: its value, and what that is worth. */
const WORTH_COLUMN = GRID.blockColumns - 1;

const PRINTING = [
  "Prints the customer page below and nothing else. To print the working page in Excel, select it and print the selection.",
  "Give the customer the print or its PDF, never this workbook: cost and margin are in it.",
];
const WHOLE = [
  "Joints to start, electrodes, containers and working periods are rounded up once, over the whole bid, never by line or size.",
  "A joint started over takes the time and gas of a mean joint of the list; a coupon the same gas and its typed time.",
];
const WORTH = [
  "Per +10 %: what the price before rounding up changes by where that one assumption is a tenth higher and all else stays.",
  "Containers, electrodes and working periods count exactly there, so that no step hides what an assumption is worth.",
];

function plan(units: Units): SheetPlan {
  const form = new Layout(units, GRID);
  head(form, "Bid: orbital TIG tube welds", [DRAFT]);
  form.section("Bid");
  form.blocks(JOB, PAPERS);
  form.wide(
    "Joint list",
    "list_place",
    '="type or paste the joints from row "&(ROWS({rows_above_list})+2)&" on"',
    "note",
  );
  notes(form, PRINTING);
  form.section("Price and work");
  form.blocks(PRICE, WORK);
  notes(form, WHOLE);
  form.section("Assumptions: typed");
  assumptions(form);
  const all = checks(form, CHECKS);
  form.section("By size and metal");
  const sizes = bySize(form);
  form.section("Words of the customer page: typed");
  form.blocks(WORDING, []);
  form.section("Customer page: the part that prints");
  const area = customerPage(form, sizes);
  cautions(form);
  mark(form, "bid", "bid");
  form.section(LIST_TITLE);
  // Beside the form, where nothing stands: a column of the form would make the place of the list follow its checks.
  form.rangeOf("rows_above_list", 2 * GRID.blockColumns, 1, 2 * GRID.blockColumns, form.nextRow - 1);
  jointList(form, LIST);
  linesOfList(form);
  form.nextLine();
  const labels = [...WELDING, ...CREW, ...CONSUMED, ...SUPPLY].map(
    ({ name, label }) => [name, label] as const,
  );
  worthTable(form, new Map(labels));
  behindThePage(form, all);

  return {
    template: "bid",
    title: "Bid",
    units,
    widths: WIDTHS,
    cells: form.finished(),
    names: form.names,
    lists: form.lists,
    ranges: form.ranges,
    signs: form.signs,
    charts: [],
    frozenRows: FROZEN_ROWS,
    print: { area, paper: "page" },
  };
}

function notes(form: Layout, sentences: readonly string[]): void {
  for (const sentence of sentences) form.banner(sentence, "note");
}

/** Typed cells, each with what it is worth in the price. */
function assumptions(form: Layout): void {
  const top = form.nextRow;
  for (const column of [0, GRID.blockColumns]) {
    form.cell(column, "assumption", "heading", { columns: GRID.labelColumns });
    form.cell(column + GRID.labelColumns, "typed", "columnHead");
    form.cell(column + WORTH_COLUMN, "per +10 %", "columnHead");
  }
  form.nextLine();
  const places: string[] = [];
  for (const [left, right] of [
    [WELDING, CREW],
    [CONSUMED, SUPPLY],
  ] as const) {
    const first = form.nextRow;
    form.blocks(left, right);
    const next = form.nextRow;
    places.push(...worths(form, left, WORTH_COLUMN, first));
    places.push(...worths(form, right, GRID.blockColumns + WORTH_COLUMN, first));
    form.backTo(next);
  }
  for (const side of [0, 1]) {
    const column = side * GRID.blockColumns + WORTH_COLUMN;
    form.rangeOf(`worths_${side === 0 ? "left" : "right"}`, column, top, column, form.nextRow - 1);
  }
  form.number("worths_planned", places.length);
  notes(form, WORTH);
}

function worths(form: Layout, rows: readonly Row[], column: number, first: number): string[] {
  return rows.flatMap(({ name }, i) => {
    if (!WORTHS.has(name)) return [];
    form.backTo(first + i);
    form.cell(column, `={${worthName(name)}}`, "result", { format: "#,##0" });
    return [address(column, first + i)];
  });
}

export const bid: Template = { id: "bid", title: "Bid", plan };
