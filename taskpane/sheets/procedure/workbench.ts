/**
 * Beside the printed page: what a few percent more or less current do to the bead, and the current around the tube as a
 * picture. Not printed.
 */

import { SHARE } from "../../../src/quantity";
import { call } from "../call";
import type { Layout } from "../layout";
import { address } from "../layout";
import { sound } from "../native";
import type { ChartPlan } from "../sheet";
import { typed } from "../typed";
import { courseChart } from "./course";
import { oxygenChart } from "./oxygen";
import { SECTORS } from "./sectors";

/** Left edge of the workbench: column J, a narrow one apart from the form. */
const LEFT = 9;
export const WORKBENCH_WIDTHS = [3, 12, 12, 14, 12, 26, 12];
const STEPS = [-2, -1, 0, 1, 2];
const STEP = typed({
  label: "Step",
  name: "whatif_step",
  content: 0.05,
  quantity: SHARE,
  unit: "",
  range: [0.005, 0.25],
  format: "0%",
});
const CHART_ROWS = 16;

export function workbench(form: Layout, firstRow: number): ChartPlan[] {
  form.backTo(firstRow);
  form.cell(LEFT, "What if: current a few percent up or down", "section", { columns: 6 });
  form.nextLine();
  form.row(STEP, LEFT);
  whatIf(form);
  const [first, second] = [form.nextRow + 1, form.nextRow + 2 + CHART_ROWS];
  form.backTo(second + CHART_ROWS + 1);
  const course = courseChart(form, LEFT, ...corners(first));
  form.nextLine();
  return [course, oxygenChart(form, LEFT, ...corners(second))];
}

/** Opposite corners of a chart whose first row is given. */
function corners(row: number): [from: string, to: string] {
  return [address(LEFT, row), address(LEFT + 5, row + CHART_ROWS - 1)];
}

function whatIf(form: Layout): void {
  form.across(
    LEFT,
    [
      "change",
      "mean A",
      '="face, "&IF({sheet_units}="SI","mm","in")',
      '="root, "&IF({sheet_units}="SI","mm","in")',
      "heat input",
      '=IF({sheet_units}="SI","kJ/mm","kJ/in")',
    ],
    "columnHead",
  );
  form.nextLine();
  const top = form.nextRow;
  // Currents of the same rows stand further down: two lines of headings between.
  const currentsOf = (row: number): number => row + STEPS.length + 2;
  for (const step of STEPS) {
    const row = form.nextRow;
    const [change, amps, face] = [0, 1, 2].map((column) => address(LEFT + column, row)) as [
      string,
      string,
      string,
    ];
    const heat = address(LEFT + 5, row);
    const bead = call("RING_BEAD", {
      od: "{od}",
      wall: "{wall}",
      speed: "{speed}",
      amps: `${address(LEFT + 1, currentsOf(row))}:${address(LEFT + 4, currentsOf(row))}`,
      dwell: "{dwell}",
      overlap: "{overlap}",
      material: "{material?}",
      volts: "{volts}",
      efficiency: "{efficiency?}",
      arcSize: "{arc_spot}",
      dwellAmps: address(LEFT + 5, currentsOf(row)),
    });
    form.across(
      LEFT,
      [
        `=${String(step)}*{whatif_step}`,
        `=IF(ISNUMBER({mean_first}),{mean_first}*(1+${change}),"")`,
        `=IF(ISNUMBER(${amps}),IFERROR(INDEX(${bead},1,${FACE}),"refused"),"")`,
        `=IF(ISNUMBER(${face}),INDEX(${bead},1,${ROOT}),"")`,
        `=IF(OR(COUNT(${heat},{heat_most})<2,NOT(${sound(["heat_most"])})),"no maximum to judge by",IF(${heat}<={heat_most}*(1+1E-9),"within the maximum","ABOVE the maximum"))`,
        // Of dwell and sectors all, which go with the current.
        `=IF(ISNUMBER({heat}),{heat}*(1+${change}),"")`,
      ],
      "result",
      ["+0%;-0%;0%", "0.0", "0.000", "0.000", "General", "0.000"],
    );
    form.nextLine();
  }
  form.guardBlock("What if", "whatif_rows", [LEFT, top], [LEFT + 5, form.nextRow - 1]);
  steadyCurrents(form, top);
}

/** Columns of RING_BEAD. */
const FACE = "4";
const ROOT = "5";

/** What the bead of a change is computed from: the steady currents of sectors and dwell, changed. */
function steadyCurrents(form: Layout, firstChange: number): void {
  form.cell(LEFT, "Steady current that melts the same as the pulse, A", "section", { columns: 6 });
  form.nextLine();
  form.across(LEFT, ["change", "sector 1", "sector 2", "sector 3", "sector 4", "start dwell"], "columnHead");
  form.nextLine();
  const top = form.nextRow;
  STEPS.forEach((step, i) => {
    if (step === 0) form.name("steady_first", LEFT + 1);
    const change = address(LEFT, firstChange + i);
    const changed = (label: string, otherwise: string): string => {
      const value = `IFERROR(INDEX({schedule_values},MATCH("${label}",{schedule_labels},0)),${otherwise})`;
      return `=IFERROR(${value}*(1+${change}),"")`;
    };
    form.across(
      LEFT,
      [
        `=${change}`,
        // A steady arc has no equivalent beside its means.
        ...SECTORS.slice(0, 4).map(([sector], s) =>
          changed(`${sector} steady equivalent`, `{sector_${String(s + 1)}_mean}`),
        ),
        changed("Start dwell current", '""'),
      ],
      "result",
      ["+0%;-0%;0%", "0.0", "0.0", "0.0", "0.0", "0.0"],
    );
    form.nextLine();
  });
  form.guardBlock("Steady currents", "steady_rows", [LEFT, top], [LEFT + 5, form.nextRow - 1]);
}
