/** The weld log: a line a joint, judged as it is typed; counts, what the sample proves, coupons, qualification. */

import { RESULTS } from "../../../src/inspection/log";
import type { Units } from "../../../src/quantity";
import { LENGTH, SPEED } from "../../../src/quantity";
import { call } from "../call";
import { formatOf } from "../formats";
import { behindThePage, cautions, checks, FROZEN_ROWS, head, mark, release } from "../frame";
import { address, closeTogether, Layout } from "../layout";
import type { SheetPlan, Template } from "../sheet";
import { qualification } from "../qualification";
import { UNITS_NAME } from "../sheet";
import { LOG_CAUTIONS } from "./cautions";
import type { LogColumn } from "./inputs";
import {
  ARC_LIMITS,
  COUPON,
  FORM_LIMITS,
  JOB,
  JOINTS,
  LINES,
  LOT,
  MEASURED_COLUMNS,
  PAPERS,
  PERIOD,
  WORD_COLUMNS,
} from "./inputs";
import { CHECKS, COUNTED, FORM, LOG, LOOKED_AT } from "./results";

const GRID = { blockColumns: 8, labelColumns: 4, columns: 19 };
/** As narrow as numbers and headings allow, so that paper takes all of it in letters one reads. */
const WIDTHS = [8, 9, 9, 10.5, 8, 9.5, 7.5, 7.5, 8.5, 8.5, 8, 8.5, 10.5, 10.5, 11.5, 8.5, 10, 8, 37];
const TYPED = [...WORD_COLUMNS, ...MEASURED_COLUMNS];
/** The columns that LOG_CHECK takes, and the first of those that it fills: status, heat input, remark. */
const MEASURED = { first: WORD_COLUMNS.length, last: TYPED.length - 1 };
const STATUS = TYPED.length;
const [HEAT, REMARK] = [STATUS + 1, STATUS + 2];

function plan(units: Units): SheetPlan {
  const form = new Layout(units, GRID);
  head(form, "Weld log: orbital TIG tube welds");
  form.section("Log");
  form.blocks(JOB, PAPERS);
  form.section("Joints so far, and how many to look at");
  form.blocks(COUNTED, LOOKED_AT);
  form.section("Acceptance limits: typed, form limits from the table where blank; the contract governs");
  form.blocks([...FORM_LIMITS, ...FORM], ARC_LIMITS);
  qualification(form, COUPON);
  form.section("Lot and working period: typed");
  form.blocks(LOT, PERIOD);
  const toCheck = form.nextRow;
  const all = checks(form, CHECKS);
  cautions(form);
  for (const caution of LOG_CAUTIONS) form.banner(caution, "caution", 2);
  release(form, ["Logged by", "Inspected by"]);
  mark(form, "log", "weld log");
  form.section(
    "Joints: type below; rows may be inserted anywhere in the log. No formula changes what is typed",
  );
  logLines(form);
  const lastRow = form.lastRow;
  behindThePage(form, all);

  return {
    template: "log",
    title: "Weld log",
    units,
    widths: WIDTHS,
    cells: form.finished().map((cell) => closeTogether(cell, "A", [FROZEN_ROWS, toCheck])),
    names: form.names,
    lists: form.lists,
    ranges: form.ranges,
    signs: form.signs,
    charts: [],
    frozenRows: FROZEN_ROWS,
    print: { area: `A1:S${String(lastRow)}`, paper: "list" },
  };
}

/**
 * The log. One formula, beside the header, judges all lines: it sees them from the header to the line that ends the log,
 * so that a row inserted at either edge belongs to it and no line has a formula to lose.
 */
function logLines(form: Layout): void {
  const header = form.nextRow;
  const [top, last, end] = [header + 1, header + LINES, header + LINES + 1];
  form.rangeOf("log", MEASURED.first, header, MEASURED.last, end);
  form.rangeOf("list_below", 0, end + 1, REMARK, end + 1);
  TYPED.forEach(({ name }, i) => {
    form.rangeOf(`list_${name}`, i, header, i, end);
  });
  form.rangeOf("list_status", STATUS, header, STATUS, end);
  form.signs.push(`${address(STATUS, top)}:${address(STATUS, last)}`);
  form.lists.push({
    at: `${address(MEASURED.last, top)}:${address(MEASURED.last, last)}`,
    allowed: RESULTS,
  });

  TYPED.forEach((column, i) => {
    form.cell(
      i,
      headingOf(column),
      column.words === true ? "listHeading" : "listHead",
      formatIn(form, column),
    );
  });
  form.cell(STATUS, `=${call("LOG_CHECK", LOG)}`, "listHeading", { lines: 2 });
  form.name("log_check", STATUS);
  form.guardComputed("Formula of the log", "log_check");
  form.cell(HEAT, "", "listHead");
  form.cell(REMARK, "", "listHeading");
  // With heading and end, as the formula sees the log: conversion reaches a row inserted at either edge.
  TYPED.forEach(({ name, quantity }, i) => {
    if (i === 0 || i >= MEASURED.first) form.name(`log_${name}`, i, quantity, true, LINES + 2);
  });
  form.nextLine();
  for (let i = 0; i < LINES; i += 1) logLine(form, i);
  TYPED.forEach((column, i) => {
    form.cell(i, "", "line", formatIn(form, column));
  });
  filled(form, "line");
  form.nextLine();
  // The row below stays empty: what is typed there is told.
  form.nextLine();
  form.cell(0, "End of the log", "note");
  form.nextLine();
}

/** Lengths and speeds say the unit that they are typed in. */
function headingOf({ heading, quantity }: LogColumn): string {
  if (quantity !== LENGTH && quantity !== SPEED) return heading;
  return `="${heading}, "&IF({${UNITS_NAME}}="SI","${quantity.SI.unit}","${quantity.US.unit}")`;
}

function logLine(form: Layout, i: number): void {
  TYPED.forEach((column, c) => {
    const given = JOINTS[i]?.[c] ?? "";
    const content = typeof given === "object" ? given[form.units] : given;
    form.cell(c, content, column.words === true ? "inputText" : "input", formatIn(form, column));
  });
  filled(form, "verdict");
  form.nextLine();
}

/** From heading to end the same, so that conversion finds it and a row inserted at either edge has it. */
function formatIn(form: Layout, { quantity }: LogColumn): { readonly format?: string } {
  return quantity === undefined ? {} : { format: formatOf(quantity, form.units) };
}

/** Cells that the formula of the log fills. */
function filled(form: Layout, look: "verdict" | "line"): void {
  form.cell(STATUS, "", look);
  form.cell(HEAT, "", look === "line" ? "line" : "result", { format: "0.000" });
  form.cell(REMARK, "", look === "line" ? "line" : "remark");
}

export const weldLog: Template = { id: "log", title: "Weld log", plan };
