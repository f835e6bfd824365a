/** The list by size and metal, and the page for the customer that shows it without cost. */

import { call } from "../call";
import { LENGTH } from "../../../src/quantity";
import type { Layout } from "../layout";
import { address } from "../layout";
import { LIST } from "./results";

/** Sizes with a row of their own, but for the last, which adds up all others where there are more. */
export const SIZES = 20;
/** One more may tell of lines that are not counted. */
const ROWS = SIZES + 1;
const FORMATS = ["0.000", "0.000", "General", "0", "0.0", "0.0", "0.0", "0.0"];
const JOINTS = 3;
const TIME = 4;
const GAS = 7;

export const LENGTH_UNIT = `&IF({sheet_units}="SI","${LENGTH.SI.unit}","${LENGTH.US.unit}")`;

/** Gives the first row of the table. */
export function bySize(form: Layout): number {
  const volume = '&IF({sheet_units}="SI","L","ft³")';
  form.across(0, [`="OD, "${LENGTH_UNIT}`, `="wall, "${LENGTH_UNIT}`], "columnHead");
  form.cell(2, "material", "columnHead");
  form.across(
    JOINTS,
    ["joints", "time, h", `="arc, "${volume}`, `="purge, "${volume}`, `="gas, "${volume}`],
    "columnHead",
  );
  form.nextLine();
  const first = form.nextRow;
  form.name("by_size", 0);
  form.guardComputed("Table by size and metal", "by_size");
  for (const [name, column] of [
    ["size_hours", TIME],
    ["size_gas", GAS],
  ] as const) {
    form.rangeOf(name, column, first, column, first + ROWS - 1);
  }
  for (let r = 0; r < ROWS; r += 1) {
    const sizes = `=${call("TAKEOFF_SIZES", { ...LIST, most: SIZES })}`;
    form.across(
      0,
      FORMATS.map((_, column) => (r + column === 0 ? sizes : "")),
      "result",
      FORMATS,
    );
    form.nextLine();
  }
  return first;
}

/** Size, metal, joints and, if the estimator says so, hours of each row of the table by size. */
export function sizesForCustomer(form: Layout, first: number): void {
  form.across(1, [`="OD, "${LENGTH_UNIT}`, `="wall, "${LENGTH_UNIT}`], "columnHead");
  form.cell(3, "material", "columnHead");
  form.cell(4, "joints", "columnHead");
  form.cell(5, '=IF({show_hours}="yes","time, h","")', "columnHead");
  form.nextLine();
  for (let r = 0; r < SIZES; r += 1) {
    const row = first + r;
    const counted = `COUNT(${address(JOINTS, row)},{price})=2`;
    form.across(
      1,
      [0, 1, 2, JOINTS].map((column) => `=IF(${counted},${address(column, row)},"")`),
      "result",
      ["General", "General", "General", "0"],
    );
    form.cell(5, `=IF(AND(${counted},{show_hours}="yes"),${address(TIME, row)},"")`, "result", {
      format: "0.0",
    });
    form.nextLine();
  }
}
