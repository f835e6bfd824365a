/** The list of joints that a sheet is made from: what is typed or pasted, and what one formula fills beside it. */

import { DESIGNATIONS } from "../../src/metal/material";
import { COUNT, LENGTH } from "../../src/quantity";
import type { Cells } from "./call";
import { call, refusal } from "./call";
import { firstOf, unless } from "./frame";
import type { Layout } from "./layout";
import { address } from "./layout";
import { JOINTS, LINES } from "./gas/inputs";

/** Columns of the list: a number of one's own, what is typed, and from there on what the formula fills. */
const COLUMNS = { number: 0, joints: 1, od: 2, wall: 3, material: 4, filled: 5 } as const;
/** What BEAD.TAKEOFF fills, from its first column on, and the format of each. */
const FILLED = [
  "joints",
  "travel",
  "cycle",
  "purge",
  "hours",
  "arc_gas",
  "purge_gas",
  "gas",
  "remark",
] as const;
const FORMATS = ["0", "0.00", "0.0", "0.0", "0.00", "0.0", "0.0", "0.0", "General"];
/** Sizes stay what is typed: 1/2 as a text, never a date. */
const TEXT = "@";
/** What stands above the list. */
export const LIST_TITLE =
  "Joints: type or paste below, sizes as you write them; rows may be inserted anywhere in the list";

/**
 * The list. One formula, beside the header, fills what stands beside every line, headings and totals: it sees the list
 * from its header to the line that ends it, so that rows inserted at either edge belong to it and none can be lost.
 */
export function jointList(form: Layout, terms: Cells<"TAKEOFF">): void {
  const header = form.nextRow;
  const [top, last, end] = [header + 1, header + LINES, header + LINES + 1];
  form.range("list", address(COLUMNS.joints, header), address(COLUMNS.material, end));
  form.rangeOf("list_below", COLUMNS.joints, end + 1, COLUMNS.material, end + 1);
  // From the header to the end: a row inserted at either edge is counted too.
  for (const [name, column] of Object.entries(COLUMNS)) {
    form.rangeOf(`list_${name}`, column, header, column, end);
  }
  FILLED.forEach((name, i) => {
    const column = COLUMNS.filled + i;
    form.rangeOf(`list_${name === "joints" ? "counted" : name}`, column, header, column, end);
    form.range(`total_${name}`, address(column, end + 1), address(column, end + 1));
  });

  const length = '&IF({sheet_units}="SI","mm","in")';
  form.across(0, ["#", "joints", `="OD, "${length}`, `="wall, "${length}`], "columnHead");
  form.cell(COLUMNS.material, "material", "heading");
  form.cell(COLUMNS.filled, `=${call("TAKEOFF", terms)}`, "columnHead");
  form.name("takeoff", COLUMNS.filled);
  form.guardComputed("Formula of the joint list", "takeoff");
  FILLED.slice(1).forEach((_, i) => {
    form.cell(COLUMNS.filled + 1 + i, "", i === FILLED.length - 2 ? "heading" : "columnHead");
  });
  // With heading and end, as the formula sees the list: conversion reaches a row inserted at either edge.
  form.name("list_counts", COLUMNS.joints, COUNT, true, LINES + 2);
  form.name("list_ods", COLUMNS.od, LENGTH, true, LINES + 2);
  form.name("list_walls", COLUMNS.wall, LENGTH, true, LINES + 2);
  form.nextLine();
  form.lists.push({
    at: `${address(COLUMNS.material, top)}:${address(COLUMNS.material, last)}`,
    allowed: DESIGNATIONS,
  });
  for (let i = 0; i < LINES; i += 1) listLine(form, i);
  form.cell(0, "end", "note");
  form.across(
    1,
    Array.from({ length: 4 }, () => ""),
    "line",
  );
  form.across(
    COLUMNS.filled,
    FILLED.map(() => ""),
    "line",
    FORMATS,
  );
  form.nextLine();
  form.cell(0, "All", "label");
  form.across(
    COLUMNS.filled,
    FILLED.map(() => ""),
    "result",
    FORMATS,
  );
  form.nextLine();
}

function listLine(form: Layout, i: number): void {
  const joint = JOINTS[i];
  const [quantity, od, wall, material] = joint ?? ["", undefined, undefined, ""];
  form.cell(COLUMNS.number, joint === undefined ? "" : i + 1, "inputText");
  form.cell(COLUMNS.joints, quantity, "input", { format: "0" });
  form.cell(COLUMNS.od, od?.[form.units] ?? "", "input", { format: TEXT });
  form.cell(COLUMNS.wall, wall?.[form.units] ?? "", "input", { format: TEXT });
  form.cell(COLUMNS.material, material, "inputText");
  form.across(
    COLUMNS.filled,
    FILLED.slice(0, -1).map(() => ""),
    "result",
    FORMATS,
  );
  form.cell(COLUMNS.filled + FILLED.length - 1, "", "verdict");
  form.nextLine();
}

/** Below the list: how many lines hold anything, and how many of them are counted. */
export function linesOfList(form: Layout): void {
  form.cell(0, "Lines typed", "label");
  form.cell(
    1,
    `=SUMPRODUCT(--(LEN({list_joints})+LEN({list_od})+LEN({list_wall})+LEN({list_material})>0))-COUNTIF({list_remark},"remark")`,
    "note",
  );
  form.name("lines_typed", 1);
  form.nextLine();
  form.cell(0, "Lines counted", "label");
  form.cell(1, "=COUNT({list_cycle})", "note");
  form.name("lines_counted", 1);
  form.nextLine();
}

/** Fewer than the day numbers of this century, which a sheet makes of a fraction. */
const MOST_OF_A_LINE = 36_000;

/** The first sentence that is wrong with the list; "" where every line is counted. */
export function listProblem(terms: Cells<"TAKEOFF">): string {
  return firstOf(
    unless("{lines_typed}>0", "no lines to count"),
    refusal("TAKEOFF", terms),
    unless(
      "COUNT({total_hours},{total_gas},{total_joints})=3",
      "no totals: a cell that the list's formula fills is not empty, or the formula was deleted",
    ),
    unless(
      `MAX({list_counted})<=${String(MOST_OF_A_LINE)}`,
      `a line has more than ${String(MOST_OF_A_LINE)} joints: check that no size stands in the column of joints`,
    ),
    unless(
      "SUMPRODUCT(LEN({list_below}))=0",
      "something is typed below the end of the list: insert rows above the end and move it there",
    ),
    unless(
      "{lines_counted}={lines_typed}",
      '=({lines_typed}-{lines_counted})&" of "&{lines_typed}&" lines not counted; the remark beside each says why"',
    ),
  );
}
