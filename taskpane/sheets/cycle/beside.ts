/** Beside the printed page: the joint list that changeovers are counted from, and the phases of the cycle as it is. */

import { DESIGNATIONS } from "../../../src/metal/material";
import { ANGLE, COUNT, LENGTH, TIME } from "../../../src/quantity";
import { call } from "../call";
import type { Layout, Row } from "../layout";
import { address } from "../layout";
import { scheduled } from "../schedule-table";
import type { Drawn } from "./pictures";
import { AS_IT_IS, used } from "./scenarios";

/** Left edge: a narrow column apart from the form. */
const LEFT = 16;
export const BESIDE_WIDTHS = [3, 23, 11, 11, 12];
const LINES = 20;
/** Sizes stay what is typed: 1/2 as a text, never a date. */
const TEXT = "@";
const PHASES = 7;

interface Sizes {
  readonly US: string;
  readonly SI: string;
}
/** An invented order of work: what a shop might weld in one lot. */
const JOINTS: readonly (readonly [quantity: number, od: Sizes, wall: Sizes, material: string])[] = [
  [180, { US: "1", SI: "25.4" }, { US: "0.065", SI: "1.65" }, "316L"],
  [120, { US: "1-1/2", SI: "38.1" }, { US: "0.065", SI: "1.65" }, "316L"],
  [200, { US: "1", SI: "25.4" }, { US: "0.065", SI: "1.65" }, "316L"],
  [100, { US: "2", SI: "50.8" }, { US: "0.065", SI: "1.65" }, "316L"],
];

/** The list, in the order in which it is welded; one formula counts its changes of set-up. */
export function jointList(form: Layout): void {
  form.cell(LEFT, "Joint list in the order of work, for changeovers", "section", {
    columns: 4,
  });
  form.nextLine();
  const header = form.nextRow;
  const length = '&IF({sheet_units}="SI","mm","in")';
  form.across(LEFT, ["joints", `="OD, "${length}`, `="wall, "${length}`, "material"], "columnHead");
  form.range("joint_list", address(LEFT, header), address(LEFT + 3, header + LINES + 1));
  form.name("joint_counts", LEFT, COUNT, true, LINES + 2);
  form.name("joint_ods", LEFT + 1, LENGTH, true, LINES + 2);
  form.name("joint_walls", LEFT + 2, LENGTH, true, LINES + 2);
  form.nextLine();
  form.lists.push({
    at: `${address(LEFT + 3, header + 1)}:${address(LEFT + 3, header + LINES)}`,
    allowed: DESIGNATIONS,
  });
  for (let i = 0; i < LINES; i += 1) {
    const [quantity, od, wall, material] = JOINTS[i] ?? ["", undefined, undefined, ""];
    form.cell(LEFT, quantity, "input", { format: "0" });
    form.cell(LEFT + 1, od?.[form.units] ?? "", "input", { format: TEXT });
    form.cell(LEFT + 2, wall?.[form.units] ?? "", "input", { format: TEXT });
    form.cell(LEFT + 3, material, "inputText");
    if (i === 0) form.name("joint_metal", LEFT + 3);
    form.nextLine();
  }
  form.across(LEFT, ["", "", "", ""], "line");
  form.nextLine();
  form.across(LEFT, ["as listed, grouped"], "label");
  form.cell(LEFT + 1, `=${call("SETUP_COUNT", { joints: "{joint_list}" })}`, "result", { format: "0" });
  form.name("setups_listed", LEFT + 1);
  form.guardComputed("Changes of the joint list", "setups_listed");
  form.cell(LEFT + 2, "", "result", { format: "0" });
  form.name("setups_grouped", LEFT + 2);
  form.nextLine();
}

function weld(
  label: string,
  name: string,
  row: string,
  quantity: NonNullable<Row["quantity"]>,
  format?: string,
): Row {
  return {
    label,
    name,
    content: `=${scheduled(row)}`,
    look: "result",
    quantity,
    ...(format === undefined ? {} : { format }),
  };
}

const WELD: readonly Row[] = [
  weld("Bead width, fused", "bead", "Bead width", LENGTH),
  weld("Overlap, covers the bead", "overlap", "Overlap", ANGLE, "0"),
  weld("Start dwell, heat flow", "dwell", "Start dwell", TIME),
  weld("Downslope", "downslope", "Downslope", TIME),
];

const CYCLE = {
  od: used(AS_IT_IS, "od"),
  speed: "{speed}",
  prepurge: `${used(AS_IT_IS, "purge")}+${used(AS_IT_IS, "prepurge")}`,
  dwell: "{dwell}",
  overlap: "{overlap}",
  downslope: "{downslope}",
  postpurge: used(AS_IT_IS, "postpurge"),
  handling: "{load_mean}",
} as const;

/** The weld as it is and its phases; gives the first row of their table. */
export function weldCycle(form: Layout): number {
  form.cell(LEFT, "One cycle, as it is: bore purge in prepurge, load in handling", "section", { columns: 4 });
  form.nextLine();
  for (const row of WELD) form.row(row, LEFT);
  form.across(LEFT, ["Phase", "starts, s", "lasts, s", "arc on"], "columnHead");
  form.nextLine();
  const top = form.nextRow;
  form.cell(LEFT, `=${call("CYCLE_PHASES", CYCLE)}`, "text");
  form.name("phases", LEFT);
  form.guardComputed("Phases of a cycle", "phases");
  for (let r = 0; r < PHASES; r += 1) {
    if (r > 0) form.cell(LEFT, "", "text");
    form.across(LEFT + 1, ["", "", ""], "result", ["0.0", "0.0", "General"]);
    form.nextLine();
  }
  form.rangeOf("phases_last", LEFT + 2, top, LEFT + 2, form.nextRow - 1);
  return top;
}

/** Behind the page: the phases beside each other, for a bar. `phases`: the first row of their table. */
export function timeBar(form: Layout, phases: number): Drawn {
  form.cell(0, "The cycle as one bar", "heading");
  form.nextLine();
  const top = form.nextRow;
  const all = Array.from({ length: PHASES }, (_, i) => i);
  const beside = (column: number): string[] => all.map((i) => `=${address(column, phases + i)}`);
  form.across(0, beside(LEFT), "columnHead");
  form.nextLine();
  form.across(0, [...beside(LEFT + 2), "cycle"], "note", [...all.map(() => "0.0"), "General"]);
  form.nextLine();
  form.guardBlock("The cycle as one bar", "bar_rows", [0, top], [PHASES - 1, top + 1]);
  return {
    title: "One cycle: bore purge in prepurge, load in handling",
    kind: "timeBar",
    axes: { x: "", y: "time, s" },
    labels: `${address(PHASES, top + 1)}:${address(PHASES, top + 1)}`,
    values: all.map((i) => `${address(i, top)}:${address(i, top + 1)}`),
  };
}

/** Where the picture of the cycle stands, below what is beside the page. */
export function cycleSpace(form: Layout): { readonly from: string; readonly to: string } {
  const row = form.nextRow + 1;
  return { from: address(LEFT, row), to: address(LEFT + 3, row + 11) };
}
