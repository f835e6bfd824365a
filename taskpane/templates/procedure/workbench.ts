/**
 * Beside the printed page: what a few per cent more or less current do to the bead, and the current round the tube as a
 * picture. Not printed.
 */

import type { Layout } from "../layout";
import { address } from "../layout";
import type { ChartPlan } from "../sheet";
import { sectorArguments } from "./sectors";

/** Left edge of the workbench: column J, a narrow one apart from the form. */
const LEFT = 9;
export const WORKBENCH_WIDTHS = [3, 12, 12, 14, 12, 20, 12];
const STEPS = [-2, -1, 0, 1, 2];
/** Sectors of the picture: fine enough to look like a curve. */
const FINE = 24;

export function workbench(form: Layout, firstRow: number): ChartPlan[] {
  form.backTo(firstRow);
  form.cell(LEFT, "What if: current a few per cent up or down", "section", { columns: 6 });
  form.nextLine();
  form.cell(LEFT, "Step", "label");
  form.cell(LEFT + 1, 0.05, "input", { format: "0%" });
  form.name("whatif_step", LEFT + 1);
  form.nextLine();
  whatIf(form);
  const chartTop = form.nextRow + 1;
  const chartBottom = chartTop + 15;
  form.backTo(chartBottom + 2);
  return [courseChart(form, address(LEFT, chartTop), address(LEFT + 5, chartBottom))];
}

function whatIf(form: Layout): void {
  form.across(
    LEFT,
    [
      "change",
      "mean A",
      '="bead width, "&IF({sheet_units}="SI","mm","in")',
      '=IF({sheet_units}="SI","kJ/mm","kJ/in")',
      "heat input",
    ],
    "columnHead",
  );
  form.nextLine();
  for (const step of STEPS) {
    const row = form.nextRow;
    const [change, amps, heat] = [address(LEFT, row), address(LEFT + 1, row), address(LEFT + 3, row)];
    form.across(
      LEFT,
      [
        `=${String(step)}*{whatif_step}`,
        `=IF(ISNUMBER({mean_first}),{mean_first}*(1+${change}),"")`,
        `=BEAD.MELT_WIDTH({wall},${amps},{speed},{material?},{volts_typed?},,,{sheet_units})`,
        `=IF(ISNUMBER(${amps}),60*{volts}*${amps}/(1000*{speed})*IF({heat_factor}="",1,{heat_factor}),"")`,
        `=IF(NOT(ISNUMBER(${heat})),"",IF({heat_most}="","no maximum typed",IF(${heat}<={heat_most},"within the maximum","ABOVE the maximum")))`,
      ],
      "result",
      ["+0%;-0%;0%", "0.0", "0.000", "0.000", "General"],
    );
    form.nextLine();
  }
}

/** Two lines over the degrees of rotation: what the warming tube needs, and what four sectors set. */
function courseChart(form: Layout, from: string, to: string): ChartPlan {
  form.cell(LEFT, "Current round the tube: data of the chart", "section", { columns: 6 });
  form.nextLine();
  form.across(LEFT, ["from °", "to °", "needed, A", "share", "warmer ahead"], "columnHead");
  form.cell(LEFT + 5, "set, A", "columnHead");
  const heading = form.nextRow;
  form.nextLine();
  const top = form.nextRow;
  form.name("course", LEFT);
  for (let i = 0; i < FINE; i += 1) {
    const row = form.nextRow;
    const spilled =
      i === 0 ? [`=BEAD.AMPS_SECTORS(${sectorArguments(FINE, "0")})`, "", "", "", ""] : ["", "", "", "", ""];
    form.across(
      LEFT,
      [
        ...spilled,
        `=IF(ISNUMBER(${address(LEFT, row)}),LOOKUP(${address(LEFT, row)},{sector_starts},{means}),"")`,
      ],
      "result",
      ["0", "0", "0.0", "0.000", "0", "0.0"],
    );
    form.nextLine();
  }
  const column = (offset: number, first: number): string =>
    `${address(LEFT + offset, first)}:${address(LEFT + offset, top + FINE - 1)}`;
  return {
    title: "Mean current round the tube, A, over degrees of rotation",
    kind: "line",
    labels: column(0, top),
    values: [column(2, heading), column(5, heading)],
    from,
    to,
  };
}
