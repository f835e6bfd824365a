/** The size table: starting values of a list of sizes, a row each. */

import { DESIGNATIONS } from "../../../src/metal/material";
import type { Quantity, Units } from "../../../src/quantity";
import {
  ANGLE,
  CURRENT,
  FREQUENCY,
  HEAT_INPUT,
  LENGTH,
  ROTATION,
  SHARE,
  SPEED,
  TIME,
  VOLTAGE,
} from "../../../src/quantity";
import { formatOf } from "../formats";
import { behindThePage, cautions, checks, FROZEN_ROWS, head, mark, release } from "../frame";
import { address, Layout } from "../layout";
import type { GrayedPlan, SheetPlan, Template } from "../sheet";
import { JOB, LINES, SIZES, TERMS } from "./inputs";
import { CHECKS, FORMULA, LARGEST, SUMS } from "./results";

const GRID = { blockColumns: 12, labelColumns: 4, columns: 25, frozenColumns: 4 };
/** Columns of the list: a number of one's own, what is typed, and from there on what the formula fills. */
const COLUMNS = { number: 0, od: 1, wall: 2, material: 3, filled: 4 } as const;

interface Filled {
  readonly name: string;
  readonly group: string;
  readonly quantity: Quantity;
}

function group(title: string, columns: Readonly<Record<string, Quantity>>): Filled[] {
  return Object.entries(columns).map(([name, quantity]) => ({ name, group: title, quantity }));
}

/** What BEAD.SIZE_TABLE fills, from its first column on; the remark is one more. */
const FILLED: readonly Filled[] = [
  ...group("gap", { standoff: LENGTH, electrode: LENGTH, volts: VOLTAGE }),
  ...group("travel", { bead: LENGTH, speed: SPEED, rotor: ROTATION, dwell: TIME }),
  ...group("mean current by sector", {
    mean_first: CURRENT,
    mean_second: CURRENT,
    mean_third: CURRENT,
    mean_fourth: CURRENT,
  }),
  ...group("pulse of sector 1", { peak: CURRENT, background: CURRENT, rate: FREQUENCY, share: SHARE }),
  ...group("heat", { overlap: ANGLE, heat_input: HEAT_INPUT, arc_time: TIME }),
  ...group("window of sector 1", { minimum: CURRENT, maximum: CURRENT }),
];
const REMARK = COLUMNS.filled + FILLED.length;
/** As narrow as numbers and headings allow, so that paper takes all of it in letters one reads. */
const FILLED_WIDTHS = [
  ...[9.5, 10.5, 6.5],
  ...[7, 8.5, 7, 6.5],
  ...[6.5, 6.5, 6.5, 6.5],
  ...[6.5, 6.5, 6.5, 6.5],
  ...[8.5, 7.5, 6.5],
  ...[10, 10],
];
const WIDTHS = [5, 8, 8.5, 10.5, ...FILLED_WIDTHS, 20];
/** Sizes stay what is typed: 1/2 as a text, never a date. */
const TEXT = "@";

function plan(units: Units): SheetPlan {
  const form = new Layout(units, GRID);
  head(form, "Size table: starting values by size");
  form.section("Job");
  form.blocks(JOB, TERMS);
  form.section("All sizes");
  form.blocks(SUMS, LARGEST);
  const all = checks(form, CHECKS);
  cautions(form);
  release(form, ["Prepared", "Approved"]);
  mark(form, "sizes", "size table");
  form.section("Sizes: type or paste below, as you write them; rows may be inserted anywhere in the list");
  const list = sizeList(form);
  const lastRow = form.lastRow;
  // What is typed here is below the list, and told.
  form.nextLine();
  form.cell(0, "Sizes typed", "label");
  form.cell(
    1,
    '=SUMPRODUCT(--(LEN({list_od})+LEN({list_wall})+LEN({list_material})>0))-COUNTIF({list_remark},"remark")',
    "note",
  );
  form.name("lines_typed", 1);
  form.nextLine();
  form.cell(0, "Sizes done", "label");
  form.cell(1, "=COUNT({list_rotor})", "note");
  form.name("lines_done", 1);
  form.nextLine();
  behindThePage(form, all);

  return {
    template: "sizes",
    title: "Size table",
    units,
    widths: WIDTHS,
    cells: form.finished(),
    names: form.names,
    lists: form.lists,
    ranges: form.ranges,
    signs: form.signs,
    charts: [],
    frozenRows: FROZEN_ROWS,
    frozenColumns: GRID.frozenColumns,
    grayed: [list.grayed],
    filter: list.filter,
    print: { area: `A1:${address(REMARK, lastRow)}`, paper: "list" },
  };
}

/**
 * The list. One formula, beside the header, fills what stands beside every line, headings included: it sees the list from
 * its header to the line that ends it, so that rows inserted at either edge belong to it and none can be lost.
 */
function sizeList(form: Layout): { readonly filter: string; readonly grayed: GrayedPlan } {
  groupTitles(form);
  const header = form.nextRow;
  const [top, last, end] = [header + 1, header + LINES, header + LINES + 1];
  form.range("list", address(COLUMNS.od, header), address(COLUMNS.material, end));
  form.rangeOf("list_below", COLUMNS.od, end + 1, COLUMNS.material, end + 1);
  form.rangeOf("list_filled", COLUMNS.filled, header, REMARK - 1, end);
  const means = FILLED.findIndex(({ quantity }) => quantity === CURRENT);
  form.rangeOf("list_means", COLUMNS.filled + means, header, COLUMNS.filled + means + 3, end);
  // From the header to the end: a row inserted at either edge is counted too.
  for (const [name, column] of [
    ["od", COLUMNS.od],
    ["wall", COLUMNS.wall],
    ["material", COLUMNS.material],
    ["remark", REMARK],
    ...FILLED.map(({ name }, i) => [name, COLUMNS.filled + i] as const),
  ] as const) {
    form.rangeOf(`list_${name}`, column, header, column, end);
  }

  // On two lines, since the button of the filter takes the end of the first.
  const length = '&CHAR(10)&IF({sheet_units}="SI","mm","in")';
  form.across(0, ["#", `="OD,"${length}`, `="wall,"${length}`, "material"], "listHeading");
  // With the formats of their columns, which conversion changes as a whole.
  form.across(COLUMNS.filled, [FORMULA, ...FILLED.slice(1).map(() => "")], "listHead", formatsOf(form));
  form.name("size_table", COLUMNS.filled);
  form.guardComputed("Formula of the size list", "size_table");
  form.cell(REMARK, "", "listHeading", { lines: 3 });
  // With heading and end, as the formula sees the list: conversion reaches a row inserted at either edge.
  form.name("list_ods", COLUMNS.od, LENGTH, true, LINES + 2);
  form.name("list_walls", COLUMNS.wall, LENGTH, true, LINES + 2);
  // So that conversion gives them the other system's decimals.
  FILLED.forEach(({ name, quantity }, i) => {
    const differs = formatOf(quantity, "US") !== formatOf(quantity, "SI");
    if (differs) form.name(`filled_${name}`, COLUMNS.filled + i, quantity, false, LINES + 2);
  });
  form.nextLine();
  form.lists.push({
    at: `${address(COLUMNS.material, top)}:${address(COLUMNS.material, last)}`,
    allowed: DESIGNATIONS,
  });
  for (let i = 0; i < LINES; i += 1) sizeLine(form, i);
  form.cell(0, "end", "note");
  form.across(1, ["", "", ""], "line");
  form.across(COLUMNS.filled, [...FILLED.map(() => ""), ""], "line", formatsOf(form));
  form.nextLine();
  const rotor = COLUMNS.filled + FILLED.findIndex(({ name }) => name === "rotor");
  return {
    // By what is typed: a button of the filter would cover the headings of the narrow columns beside it.
    filter: `${address(0, header)}:${address(COLUMNS.material, last)}`,
    grayed: { at: `${address(0, top)}:${address(REMARK, last)}`, formula: cannotBe(rotor, top) },
  };
}

/** A line with a reason and no numbers. A file keeps an empty answer as a space that no line breaks at. */
function cannotBe(rotor: number, row: number): string {
  const [number, remark] = [rotor, REMARK].map((column) => `$${address(column, row)}`);
  return `=AND(LEN(SUBSTITUTE(${String(remark)},"\u00a0",""))>0,NOT(ISNUMBER(${String(number)})))`;
}

/** What belongs together, over its columns. */
function groupTitles(form: Layout): void {
  FILLED.forEach(({ group: title }, i) => {
    if (FILLED[i - 1]?.group === title) return;
    const columns = FILLED.filter((one) => one.group === title).length;
    form.cell(COLUMNS.filled + i, title, "heading", { columns });
  });
  form.nextLine();
}

function formatsOf(form: Layout): string[] {
  return FILLED.map(({ quantity }) => formatOf(quantity, form.units));
}

function sizeLine(form: Layout, i: number): void {
  const size = SIZES[i];
  const [od, wall, material] = size ?? [undefined, undefined, ""];
  form.cell(COLUMNS.number, size === undefined ? "" : i + 1, "inputText");
  form.cell(COLUMNS.od, od?.[form.units] ?? "", "input", { format: TEXT });
  form.cell(COLUMNS.wall, wall?.[form.units] ?? "", "input", { format: TEXT });
  form.cell(COLUMNS.material, material, "inputText");
  form.across(
    COLUMNS.filled,
    FILLED.map(() => ""),
    "result",
    formatsOf(form),
  );
  form.cell(REMARK, "", "remark");
  form.nextLine();
}

export const sizeTable: Template = { id: "sizes", title: "Size table", plan };
