/** A chart over fixed blocks of cells: names and spills behind a chart are what Excel stumbles over. */

import type { CellPlan, ChartPlan } from "../../sheets/sheet";
import { addressOf, placeOf } from "../../sheets/addresses";
import { chartInk } from "../looks";

const KINDS = {
  line: "Line",
  curve: "XYScatterLinesNoMarkers",
  bar: "ColumnClustered",
  timeBar: "BarStacked",
} as const;

/** Height of a mark that stands out, points: more than a dot's. */
const MARK = 10;

/** Queues a chart; gives what takes it away again. */
export function addChart(
  sheet: Excel.Worksheet,
  plan: ChartPlan,
  cells: readonly CellPlan[],
): (() => void) | undefined {
  const [first] = plan.values;
  if (first === undefined) return undefined;
  const chart = sheet.charts.add(KINDS[plan.kind], sheet.getRange(first), "Columns");
  chart.title.text = plan.title;
  chart.setPosition(plan.from, plan.to);
  chart.axes.categoryAxis.title.text = plan.axes.x;
  chart.axes.valueAxis.title.text = plan.axes.y;
  if (plan.logarithmic === true) chart.axes.valueAxis.scaleType = "Logarithmic";
  chart.legend.visible = plan.values.length > 1;
  chart.legend.position = "Bottom";
  plan.values.forEach((values, i) => {
    const [heading = "", last = ""] = values.split(":");
    const { column, row } = placeOf(heading);
    const series = i === 0 ? chart.series.getItemAt(0) : chart.series.add(headingText(cells, heading));
    series.setValues(sheet.getRange(`${addressOf({ column, row: row + 1 })}:${last}`));
    series.setXAxisValues(sheet.getRange(plan.labels));
    if (plan.dots?.includes(i) === true) series.chartType = "XYScatter";
    if (plan.marked?.includes(i) === true) {
      series.markerStyle = "Diamond";
      series.markerSize = MARK;
      series.markerBackgroundColor = chartInk(i);
      series.markerForegroundColor = chartInk(i);
    }
    if (plan.kind === "curve" || plan.kind === "line") series.format.line.color = chartInk(i);
    else series.format.fill.setSolidColor(chartInk(i));
  });
  return () => {
    chart.delete();
  };
}

/** The words above a column, where they are words and no formula. */
function headingText(cells: readonly CellPlan[], at: string): string {
  const content = String(cells.find((cell) => cell.at === at)?.content ?? "");
  return content.startsWith("=") ? "" : content;
}
