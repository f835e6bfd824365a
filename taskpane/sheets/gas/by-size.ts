/** The list by size and metal: a chart, and the table that it is drawn from. */

import { call } from "../call";
import type { Layout } from "../layout";
import { address } from "../layout";
import type { ChartPlan } from "../sheet";
import { LIST } from "./results";

/** Left edge of the table, right of its chart. */
const LEFT = 5;
/** The bars' names, beside the printed page. */
const LABELS = 15;
/** Sizes with a row of their own, but for the last, which adds up all others where there are more. */
const SIZES = 10;
/** One more may tell of lines that are not counted. */
const ROWS = SIZES + 1;
const FORMATS = ["0.000", "0.000", "General", "0", "0.00", "0.0", "0.0", "0.0"];
const CHART_ROWS = 14;
/** Decimals of a bar's name: a computed size has a tail that nobody measures. */
const PLACES = "4";

export function bySize(form: Layout): ChartPlan {
  const top = form.nextRow;
  form.cell(0, "", "note", { columns: LEFT, rows: CHART_ROWS });
  const [length, volume] = ['&IF({sheet_units}="SI","mm","in")', '&IF({sheet_units}="SI","L","ft³")'];
  form.across(LEFT, [`="OD, "${length}`, `="wall, "${length}`], "columnHead");
  form.cell(LEFT + 2, "material", "heading");
  form.across(
    LEFT + 3,
    ["joints", "time, h", `="arc gas, "${volume}`, `="purge gas, "${volume}`, `="gas, "${volume}`],
    "columnHead",
  );
  form.cell(LABELS, "names of the bars", "heading");
  const heading = form.nextRow;
  form.nextLine();
  const first = form.nextRow;
  form.name("by_size", LEFT);
  form.guardComputed("Table by size and metal", "by_size");
  form.rangeOf("size_hours", LEFT + 4, first, LEFT + 4, first + ROWS - 1);
  form.rangeOf("size_gas", LEFT + 7, first, LEFT + 7, first + ROWS - 1);
  for (let r = 0; r < ROWS; r += 1) {
    const sizes = `=${call("TAKEOFF_SIZES", { ...LIST, most: SIZES })}`;
    const [od, wall, material] = [0, 1, 2].map((column) => address(LEFT + column, form.nextRow));
    form.across(
      LEFT,
      FORMATS.map((_, column) => (r + column === 0 ? sizes : "")),
      "result",
      FORMATS,
    );
    form.cell(
      LABELS,
      `=IF(ISNUMBER(${String(od)}),ROUND(${String(od)},${PLACES})&" × "&ROUND(${String(wall)},${PLACES})&" ","")&${String(material)}`,
      "note",
    );
    form.nextLine();
  }
  form.guardBlock("Names of the bars", "bar_names", [LABELS, first], [LABELS, first + ROWS - 1]);
  form.backTo(top + CHART_ROWS);
  const last = first + SIZES - 1;
  const column = (at: number, from: number): string => `${address(at, from)}:${address(at, last)}`;
  return {
    title: "Gas by size and metal: torch and purge",
    kind: "bar",
    axes: { x: "", y: "gas" },
    labels: column(LABELS, first),
    values: [column(LEFT + 5, heading), column(LEFT + 6, heading)],
    from: address(0, top),
    to: address(LEFT - 1, top + CHART_ROWS - 1),
  };
}
