/** The gas estimate: a list of joints priced in argon, on a page to bid with. */

import { DESIGNATIONS } from "../../../src/metal/material";
import type { Units } from "../../../src/quantity";
import { COUNT, LENGTH } from "../../../src/quantity";
import { formatOf } from "../formats";
import { cautions, checks, FROZEN_ROWS, head, mark, release } from "../frame";
import { address, Layout } from "../layout";
import type { ChartPlan, SheetPlan, Template } from "../sheet";
import { BID, JOINTS, LINES, PAPERS, SUPPLY, WELDING } from "./inputs";
import { CHECKS, COST, ofLines, TAKEOFF_ARGUMENTS, TOTALS } from "./results";

const GRID = { blockColumns: 5, labelColumns: 3 };
const WIDTHS = [9, 10, 10, 10, 12, 12, 12, 12, 12, 26];
/** Column L on holds what BEAD.TAKEOFF gives for the list, beside the printed page. */
const TAKEOFF = 11;
const WORKBENCH_WIDTHS = [3, 12, 12, 12, 12, 36];

const HEADINGS = [
  "joints",
  '="OD, "&IF({sheet_units}="SI","mm","in")',
  '="wall, "&IF({sheet_units}="SI","mm","in")',
  "material",
  "cycle, s",
  "purge, s",
  '="arc gas, "&IF({sheet_units}="SI","L","ft³")',
  '="purge gas, "&IF({sheet_units}="SI","L","ft³")',
  '="line gas, "&IF({sheet_units}="SI","L","ft³")',
  "remark",
];

/** Headings over text, which starts at the left as they do. */
const TEXT_COLUMNS = ["material", "remark"];

function plan(units: Units): SheetPlan {
  const form = new Layout(units, GRID);
  head(
    form,
    "Gas estimate: orbital TIG tube welds",
    "An estimate from starting values, prove on a test coupon. The qualified procedure governs.",
  );
  form.section("Bid");
  form.blocks(BID, PAPERS);
  form.section("Shared by all joints: typed");
  form.blocks(WELDING, SUPPLY);
  form.blocks(
    [
      {
        label: "Volume changes to the target",
        name: "changes",
        content: "=BEAD.PURGE_CHANGES({target_ppm?},{supply_ppm?})",
        look: "result",
        quantity: COUNT,
        format: "0.00",
      },
    ],
    [],
  );
  form.section("Joints: type or paste below; insert rows inside the list for more");
  const chart = jointList(form);
  form.section("Gas and cost");
  form.blocks(TOTALS, COST);
  checks(form, CHECKS);
  form.section("Gas by line");
  const spaces = form.chartSpace(14, ["left"]);
  cautions(form);
  release(form, ["Prepared", "Approved"]);
  mark(form, "gas", "gas estimate");

  return {
    template: "gas",
    title: "Gas estimate",
    units,
    widths: [...WIDTHS, ...WORKBENCH_WIDTHS],
    cells: form.finished(),
    names: form.names,
    lists: form.lists,
    charts: spaces.map((space) => ({ ...chart, ...space })),
    frozenRows: FROZEN_ROWS,
    print: { area: `A1:J${String(form.lastRow)}`, landscape: false },
  };
}

/** The columns of the list, and its ranges by name. */
const COLUMNS = {
  list_joints: 0,
  list_od: 1,
  list_walls: 2,
  list_cycle: 4,
  list_purge: 5,
  list_arc: 6,
  list_purge_gas: 7,
  list_gas: 8,
  takeoff_cycle: TAKEOFF + 1,
  takeoff_gas: TAKEOFF + 3,
  takeoff_remarks: TAKEOFF + 4,
} as const;

/** Purge volume of a line's bore in the volume unit of the sheet, from lengths in in or mm. */
const BORE_VOLUME = 'PI()/4*({list_od}-2*{list_walls})^2*{dam_spacing}/IF({sheet_units}="SI",1000000,1728)';
/** Seconds in the time unit of a flow: minutes in SI, hours in US. */
const FLOW_TIME = 'IF({sheet_units}="SI",60,3600)';

/** The first line of each column: an array over the whole list. Text in place of a number where a line is left out. */
const ARRAYS = [
  '=IF(ISNUMBER({takeoff_cycle}),{takeoff_cycle},"")',
  `=IF(ISNUMBER({takeoff_cycle}),IF({purge_flow}>0,{changes}*${BORE_VOLUME}/{purge_flow}*${FLOW_TIME},0),"")`,
  '=IF(ISNUMBER({takeoff_cycle}),{takeoff_gas},"")',
  `=IF(ISNUMBER({takeoff_cycle}),{list_joints}*{purge_flow}*({list_purge}+{takeoff_cycle})/${FLOW_TIME},"")`,
  '=IF(ISNUMBER({takeoff_cycle}),{list_arc}+{list_purge_gas},"")',
];
const ARRAY_FORMATS = ["0.0", "0.0", "0.0", "0.0", "0.0"];
const REMARKS = '=IF({takeoff_remarks}="","",{takeoff_remarks})';
const TAKEOFF_FORMATS = ["0.00", "0.0", "0.00", "0.0", "General"];

/**
 * The list, one formula for all of its lines: what BEAD.TAKEOFF says stands beside the page, the printed columns are
 * native arrays over it, so that rows inserted inside the list join in by themselves. A last empty line belongs to the
 * list, so that inserting above it is still inside.
 */
function jointList(form: Layout): Omit<ChartPlan, "from" | "to"> {
  const headings = form.nextRow;
  const [top, last] = [headings + 1, headings + LINES + 1];
  for (const [name, at] of Object.entries(COLUMNS)) form.range(name, address(at, top), address(at, last));
  form.range("list", address(0, top), address(3, last));

  HEADINGS.forEach((heading, column) => {
    form.cell(column, heading, TEXT_COLUMNS.includes(heading) ? "heading" : "columnHead");
  });
  form.across(TAKEOFF, ["speed", "cycle, s", "hours", "arc gas", "remark"], "columnHead");
  form.nextLine();
  form.name("od", 1, LENGTH, true, LINES + 1);
  form.name("wall", 2, LENGTH, true, LINES + 1);
  form.lists.push({ at: `${address(3, top)}:${address(3, last)}`, allowed: DESIGNATIONS });
  for (let i = 0; i <= LINES; i += 1) listLine(form, i);

  form.name("takeoff_hours", TAKEOFF + 2);
  form.name("takeoff_left_out", TAKEOFF + 4);
  form.across(TAKEOFF, ["", "", "", "", ""], "result", TAKEOFF_FORMATS);
  form.cell(0, "All lines", "label", { columns: 6 });
  const sums = ["list_arc", "list_purge_gas", "list_gas"].map((column) => `=${ofLines(`SUM({${column}})`)}`);
  form.across(6, sums, "result", ["0.0", "0.0", "0.0"]);
  form.name("arc_gas", 6);
  form.name("purge_gas", 7);
  form.name("total_gas", 8);
  form.nextLine();
  const series = (at: number): string => `${address(at, headings)}:${address(at, last)}`;
  return {
    title: "Gas by line of the list, over the outside diameter",
    kind: "bar",
    labels: `${address(1, top)}:${address(1, last)}`,
    values: [series(COLUMNS.list_arc), series(COLUMNS.list_purge_gas)],
  };
}

function listLine(form: Layout, i: number): void {
  const joint = JOINTS[i];
  const [quantity, od, wall, material] = joint ?? ["", undefined, undefined, ""];
  const length = formatOf(LENGTH, form.units);
  form.cell(0, quantity, "input", { format: "0" });
  form.cell(1, od?.[form.units] ?? "", "input", { format: length });
  form.cell(2, wall?.[form.units] ?? "", "input", { format: length });
  form.cell(3, material, "inputText");
  const first = i === 0;
  form.across(4, first ? ARRAYS : ARRAYS.map(() => ""), "result", ARRAY_FORMATS);
  form.cell(4 + ARRAYS.length, first ? REMARKS : "", "verdict");
  const takeoff = `=BEAD.TAKEOFF(${TAKEOFF_ARGUMENTS})`;
  if (first) {
    form.name("takeoff", TAKEOFF);
    form.name("list_first", 4);
  }
  form.across(TAKEOFF, [first ? takeoff : "", "", "", "", ""], "result", TAKEOFF_FORMATS);
  form.nextLine();
}

export const gas: Template = {
  id: "gas",
  title: "Gas estimate",
  purpose:
    "A list of joints priced in argon: arc and purge gas by line, containers to order, cost per joint.",
  plan,
};
