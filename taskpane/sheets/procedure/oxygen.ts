/** The oxygen in the bore as the purge runs, on a scale of powers of ten, and the target as a level line. */

import { call } from "../call";
import type { Layout } from "../layout";
import { address } from "../layout";
import type { ChartPlan } from "../sheet";
import { TO_TARGET } from "./results";

/** Oxygen that the curve passes through, ppm: the air of the start, then 1, 2 and 5 of each power of ten. */
const LEVELS = [
  200_000, 100_000, 50_000, 20_000, 10_000, 5_000, 2_000, 1_000, 500, 200, 100, 50, 20, 10,
] as const;

export function oxygenChart(form: Layout, left: number, from: string, to: string): ChartPlan {
  form.cell(left, "Oxygen in the bore by time: data of the chart", "section", { columns: 6 });
  form.nextLine();
  form.across(left, ["mixed, s", "ppm", "target, ppm"], "columnHead");
  const heading = form.nextRow;
  form.nextLine();
  const top = form.nextRow;
  form.name("levels", left);
  for (const level of LEVELS) {
    // Blank where the purge gas itself has more: the curve ends there.
    const seconds = address(left, form.nextRow);
    const ppm = address(left + 1, form.nextRow);
    const time = call("PURGE_TIME", { ...TO_TARGET, ppm: String(level) });
    form.across(
      left,
      [
        `=IFERROR(${time},"")`,
        `=IF(ISNUMBER(${seconds}),${String(level)},"")`,
        `=IF(ISNUMBER(${ppm}),{target_ppm},"")`,
      ],
      "result",
      ["0.0", "#,##0", "#,##0"],
    );
    form.nextLine();
  }
  const bottom = top + LEVELS.length - 1;
  form.guardBlock("Oxygen in the bore by time", "level_rows", [left, top], [left + 2, bottom]);
  const column = (offset: number, first: number): string =>
    `${address(left + offset, first)}:${address(left + offset, bottom)}`;
  return {
    title: "Oxygen in the bore as the purge runs, and the target",
    kind: "curve",
    logarithmic: true,
    axes: { x: "purge time, s", y: "oxygen, ppm" },
    labels: column(0, top),
    values: [column(1, heading), column(2, heading)],
    from,
    to,
  };
}
