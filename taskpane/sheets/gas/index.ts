/** The gas estimate: a list of joints priced in argon, on a page to bid with. */

import { DESIGNATIONS } from "../../../src/metal/material";
import type { Units } from "../../../src/quantity";
import { COUNT, LENGTH } from "../../../src/quantity";
import { call } from "../call";
import { behindThePage, cautions, checks, FROZEN_ROWS, head, mark, release } from "../frame";
import { address, Layout } from "../layout";
import type { ChartPlan, SheetPlan, Template } from "../sheet";
import { BID, JOINTS, LINES, PAPERS, SUPPLY, WELDING } from "./inputs";
import { CHECKS, COST, LIST, TOTALS } from "./results";

const GRID = { blockColumns: 6, labelColumns: 3 };
const WIDTHS = [8, 10, 12, 11, 12, 9, 13, 11, 11, 10, 12, 14, 12, 36];
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

function plan(units: Units): SheetPlan {
  const form = new Layout(units, GRID);
  head(form, "Gas estimate: orbital TIG tube welds");
  form.section("Bid");
  form.blocks(BID, PAPERS);
  form.section("Shared by all joints: typed");
  form.blocks(WELDING, SUPPLY);
  form.section("Gas and cost");
  form.blocks(TOTALS, COST);
  const all = checks(form, CHECKS);
  form.section("Gas by line");
  const spaces = form.chartSpace(14, ["left"]);
  cautions(form);
  release(form, ["Prepared", "Approved"]);
  mark(form, "gas", "gas estimate");
  form.section(
    "Joints: type or paste below, sizes as you write them; rows may be inserted anywhere in the list",
  );
  const chart = jointList(form);
  const lastRow = form.lastRow;
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
  behindThePage(form, all);

  return {
    template: "gas",
    title: "Gas estimate",
    units,
    widths: WIDTHS,
    cells: form.finished(),
    names: form.names,
    lists: form.lists,
    ranges: form.ranges,
    signs: form.signs,
    charts: spaces.map((space) => ({ ...chart, ...space })),
    frozenRows: FROZEN_ROWS,
    print: { area: `A1:N${String(lastRow)}`, paper: "list" },
  };
}

/**
 * The list. One formula, beside the header, fills what stands beside every line, headings and totals: it sees the list
 * from its header to the line that ends it, so that rows inserted at either edge belong to it and none can be lost.
 */
function jointList(form: Layout): Omit<ChartPlan, "from" | "to"> {
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
  form.cell(COLUMNS.filled, `=${call("TAKEOFF", LIST)}`, "columnHead");
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

  const series = (name: (typeof FILLED)[number]): string => {
    const column = COLUMNS.filled + FILLED.indexOf(name);
    return `${address(column, header)}:${address(column, header + JOINTS.length)}`;
  };
  return {
    title: "Gas by line of the list: torch and purge",
    kind: "bar",
    axes: { x: "outside diameter", y: "gas" },
    labels: `${address(COLUMNS.od, top)}:${address(COLUMNS.od, header + JOINTS.length)}`,
    values: [series("arc_gas"), series("purge_gas")],
  };
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

export const gas: Template = { id: "gas", title: "Gas estimate", plan };
