/** The current around the tube as a picture: what the warming tube needs, and the steps that four sectors set. */

import { call } from "../call";
import type { Layout } from "../layout";
import { address } from "../layout";
import type { ChartPlan } from "../sheet";

/** Sectors of the picture: fine enough to look like a curve. */
export const FINE = 24;
/** Two ends of each, so that a current that holds over a sector is drawn as a step. */
export const ENDS = 2 * FINE;

/** In steady current, so that both lines mean the same melting. */
export function courseChart(form: Layout, left: number, from: string, to: string): ChartPlan {
  neededTable(form, left);
  form.nextLine();
  form.cell(left, "Current around the tube: data of the chart", "section", { columns: 6 });
  form.nextLine();
  form.across(left, ["rotation, °", "needed, A", "set, A"], "columnHead");
  const heading = form.nextRow;
  form.nextLine();
  const top = form.nextRow;
  form.name("steps", left);
  for (let i = 0; i < ENDS; i += 1) {
    const [sector, end] = [String(Math.floor(i / 2) + 1), String((i % 2) + 1)];
    const start = `INDEX({course_table},${sector},1)`;
    form.across(
      left,
      [
        `=IF(ISNUMBER(${start}),INDEX({course_table},${sector},${end}),"")`,
        `=IF(ISNUMBER(${start}),INDEX({course_table},${sector},3),"")`,
        `=IF(ISNUMBER(${start}),LOOKUP(${start},{sector_starts},{means})*{steady_first}/{mean_first},"")`,
      ],
      "result",
      ["0", "0.0", "0.0"],
    );
    form.nextLine();
  }
  const bottom = top + ENDS - 1;
  form.rangeOf("course_needed", left + 1, top, left + 1, bottom);
  form.rangeOf("course_set", left + 2, top, left + 2, bottom);
  form.guardBlock("Current around the tube, drawn", "course_rows", [left, top], [left + 2, bottom]);
  const column = (offset: number, first: number): string =>
    `${address(left + offset, first)}:${address(left + offset, bottom)}`;
  return {
    title: "Current around the tube, steady equivalent: what it needs and what four sectors set",
    kind: "curve",
    axes: { x: "rotation, °", y: "current, A" },
    labels: column(0, top),
    values: [column(1, heading), column(2, heading)],
    from,
    to,
  };
}

function neededTable(form: Layout, left: number): void {
  form.cell(left, "Current that the tube needs, in fine sectors", "section", { columns: 6 });
  form.nextLine();
  form.across(left, ["from °", "to °", "needed, A", "fraction", "rise ahead"], "columnHead");
  form.nextLine();
  const top = form.nextRow;
  form.name("course", left);
  form.rangeOf("course_table", left, top, left + 2, top + FINE - 1);
  const needed = call("AMPS_SECTORS", {
    od: "{od}",
    wall: "{wall}",
    speed: "{speed}",
    sectors: FINE,
    overlap: 0,
    dwell: "{dwell}",
    beadWidth: "{bead}",
    material: "{material?}",
    volts: "{volts}",
    efficiency: "{efficiency?}",
  });
  for (let i = 0; i < FINE; i += 1) {
    form.across(left, [i === 0 ? `=${needed}` : "", "", "", "", ""], "result", [
      "0",
      "0",
      "0.0",
      "0.000",
      "0",
    ]);
    form.nextLine();
  }
  // The table has one formula in the sheet, and one a cell in a file.
  form.guardComputed("Current around the tube", "course");
}
