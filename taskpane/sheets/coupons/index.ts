/** The coupon sheet: what a shop's own welds say of the heat flow, as one number that other sheets can take. */

import type { Quantity, Units } from "../../../src/quantity";
import { CURRENT, LENGTH, SHARE, SPEED, VOLTAGE } from "../../../src/quantity";
import { formatOf } from "../formats";
import { behindThePage, cautions, checks, FROZEN_ROWS, head, mark, release } from "../frame";
import { address, Layout } from "../layout";
import type { ChartPlan, SheetPlan, Template } from "../sheet";
import { COUPONS, LINES, SHOP, TERMS } from "./inputs";
import { points } from "./picture";
import { CANNOT_KNOW, CHECKS, COUNTED, FORMULA, NEXT, RESULT } from "./results";

const GRID = { blockColumns: 7, labelColumns: 3, columns: 17 };
/** Sizes stay what is typed: 1/2 as a text, never a date. Measured widths are numbers. */
const TEXT = "@";
const SIZES: readonly string[] = ["list_ods", "list_walls"];

/** What is typed of a coupon beside its number; the formula reads the columns from od on. */
const NOTED = ["date", "heat numbers", "operator"] as const;
interface Column {
  readonly name: string;
  readonly heading: string;
  readonly quantity: Quantity;
}
const READ: readonly Column[] = [
  { name: "list_ods", heading: "OD", quantity: LENGTH },
  { name: "list_walls", heading: "wall", quantity: LENGTH },
  { name: "list_amps", heading: "amps", quantity: CURRENT },
  { name: "list_volts", heading: "volts", quantity: VOLTAGE },
  { name: "list_travels", heading: "travel", quantity: SPEED },
  { name: "list_faces", heading: "face", quantity: LENGTH },
  { name: "list_roots", heading: "root", quantity: LENGTH },
];
/** What BEAD.COUPON_TABLE fills, from its first column on; the remark is one more. */
const FILLED: readonly (readonly [name: string, quantity: Quantity])[] = [
  ["measured", LENGTH],
  ["efficiency", SHARE],
  ["predicted", LENGTH],
  ["low", LENGTH],
  ["high", LENGTH],
];
const FIRST_READ = 1 + NOTED.length;
const FIRST_FILLED = FIRST_READ + READ.length;
const REMARK = FIRST_FILLED + FILLED.length;
/** As narrow as numbers and headings allow, so that paper takes all of it in letters one reads. */
/** The first column beside the upper blocks. */
const BESIDE = 12;
const WIDTHS = [5, 11, 14, 11, 8, 8.5, 8.5, 9.5, 9.5, 9.5, 8.5, 10.5, 11.5, 10.5, 9.5, 9.5, 44];

function plan(units: Units): SheetPlan {
  const form = new Layout(units, GRID);
  head(form, "Coupons: the shop's own arc efficiency");
  form.section("Efficiency");
  const space = beside(form);
  form.blocks([...RESULT, COUNTED], NEXT);
  for (const line of CANNOT_KNOW) {
    form.cell(0, line, "note", { columns: BESIDE });
    form.nextLine();
  }
  form.cell(0, "Coupons together: typed", "section", { columns: BESIDE });
  form.nextLine();
  form.blocks(SHOP, TERMS);
  const all = checks(form, CHECKS);
  cautions(form);
  release(form, ["Prepared", "Approved"]);
  mark(form, "coupons", "coupons");
  form.section("Coupons: type or paste below; rows may be inserted anywhere in the list");
  couponList(form);
  const lastRow = form.lastRow;
  // What is typed here is below the list, and told.
  form.nextLine();
  form.cell(0, "Coupons typed", "label");
  form.cell(
    1,
    `=SUMPRODUCT(--(${READ.map(({ name }) => `LEN({read_${name}})`).join("+")}>0))-COUNTIF({list_remark},"remark")`,
    "note",
  );
  form.name("coupons_typed", 1);
  form.nextLine();
  form.cell(0, "Coupons done", "label");
  form.cell(1, "=COUNT({list_efficiency})", "note");
  form.name("coupons_done", 1);
  form.nextLine();
  form.nextLine();
  const chart = points(form);
  behindThePage(form, all);

  return {
    template: "coupons",
    title: "Coupons",
    units,
    widths: WIDTHS,
    cells: form.finished(),
    names: form.names,
    lists: form.lists,
    ranges: form.ranges,
    signs: form.signs,
    charts: [{ ...chart, ...space }],
    frozenRows: FROZEN_ROWS,
    print: { area: `A1:${address(REMARK, lastRow)}`, paper: "list" },
  };
}

/** Room for the picture to the right of the efficiency and of what is typed, from the current line on. */
function beside(form: Layout): Pick<ChartPlan, "from" | "to"> {
  const row = form.nextRow;
  const rows = RESULT.length + 1 + CANNOT_KNOW.length + 1 + TERMS.length;
  form.cell(BESIDE, "", "note", { columns: REMARK + 1 - BESIDE, rows });
  return { from: address(BESIDE, row), to: address(REMARK, row + rows - 1) };
}

/**
 * The list. One formula, beside the header, fills what stands beside every line, headings included: it sees the list from
 * its header to the line that ends it, so that rows inserted at either edge belong to it and none can be lost.
 */
function couponList(form: Layout): void {
  const header = form.nextRow;
  const end = header + LINES + 1;
  form.range("list", address(FIRST_READ, header), address(FIRST_FILLED - 1, end));
  form.rangeOf("list_below", FIRST_READ, end + 1, FIRST_FILLED - 1, end + 1);
  form.rangeOf("list_number", 0, header, 0, end);
  FILLED.forEach(([name], i) => {
    form.rangeOf(`list_${name}`, FIRST_FILLED + i, header, FIRST_FILLED + i, end);
  });
  form.rangeOf("list_remark", REMARK, header, REMARK, end);

  form.across(0, ["#", ...NOTED], "listHeading");
  READ.forEach((read, i) => {
    const { name, heading, quantity } = read;
    const column = FIRST_READ + i;
    form.rangeOf(`read_${name}`, column, header, column, end);
    form.cell(column, headed(heading, quantity), "listHead", { format: typedFormat(read, form.units) });
    // With heading and end, as the formula sees the list: conversion reaches a row inserted at either edge.
    form.name(name, column, quantity, true, LINES + 2);
  });
  form.across(FIRST_FILLED, [FORMULA, ...FILLED.slice(1).map(() => "")], "listHead", formatsOf(form));
  form.name("coupon_table", FIRST_FILLED);
  form.guardComputed("Formula of the coupon list", "coupon_table");
  FILLED.forEach(([name, quantity], i) => {
    if (quantity === LENGTH) form.name(`filled_${name}`, FIRST_FILLED + i, quantity, false, LINES + 2);
  });
  form.cell(REMARK, "", "listHeading", { lines: 2 });
  form.nextLine();
  for (let i = 0; i < LINES; i += 1) couponLine(form, i);
  form.cell(0, "end", "note");
  form.across(
    1,
    Array.from({ length: NOTED.length }, () => ""),
    "line",
  );
  form.across(
    FIRST_READ,
    READ.map(() => ""),
    "line",
    READ.map((column) => typedFormat(column, form.units)),
  );
  form.across(FIRST_FILLED, [...FILLED.map(() => ""), ""], "line", formatsOf(form));
  form.nextLine();
}

/** With its unit where the two systems have different ones. */
function headed(heading: string, { US, SI }: Quantity): string {
  return US.unit === SI.unit ? heading : `="${heading}, "&IF({sheet_units}="SI","${SI.unit}","${US.unit}")`;
}

function typedFormat({ name, quantity }: Column, units: Units): string {
  return SIZES.includes(name) ? TEXT : formatOf(quantity, units);
}

function formatsOf(form: Layout): string[] {
  return FILLED.map(([, quantity]) => (quantity === SHARE ? "0.000" : formatOf(quantity, form.units)));
}

function couponLine(form: Layout, i: number): void {
  const coupon = COUPONS[i];
  const { units } = form;
  form.cell(0, coupon === undefined ? "" : i + 1, "inputText");
  form.across(1, ["", coupon?.heats ?? "", ""], "inputText");
  const { od, wall, amps = "", volts = "", travel, face, root } = coupon ?? {};
  form.across(
    FIRST_READ,
    [od?.[units], wall?.[units], amps, volts, travel?.[units], face?.[units], root?.[units]].map(
      (one) => one ?? "",
    ),
    "input",
    READ.map((column) => typedFormat(column, units)),
  );
  form.across(
    FIRST_FILLED,
    FILLED.map(() => ""),
    "result",
    formatsOf(form),
  );
  form.cell(REMARK, "", "remark");
  form.nextLine();
}

export const coupons: Template = { id: "coupons", title: "Coupons", plan };
