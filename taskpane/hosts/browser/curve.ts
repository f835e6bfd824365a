/**
 * Curves: the engine draws a chart over a scale of numbers as loose points on an even scale from 0. Ours are lines, close
 * to their values or on a scale of powers of ten, and points that may have a mark of their own and a name.
 */

import type { Model, Range } from "@odoo/o-spreadsheet";
import { registries } from "@odoo/o-spreadsheet";
import type { ChartConfiguration, ChartOptions } from "chart.js";

import type { Curve } from "./engine-chart";
import { curveOf } from "./engine-chart";

/** Half of a mark's height, px: above a dot's, so that the dot is not seen beside it. */
const MARK = 7;

type Getters = Model["getters"];

/** Call once, before a model is made. */
export function drawCurves(): void {
  const { chartTypeRegistry } = registries;
  const builder = chartTypeRegistry.get("scatter");
  chartTypeRegistry.replace("scatter", {
    ...builder,
    getRuntime: (getters, definition, extractors, ...more) => {
      const runtime = builder.getRuntime(getters, definition, extractors, ...more);
      const curve = curveOf(definition);
      if (curve === undefined || !("chartJsConfig" in runtime)) return runtime;
      const numbers = extractors
        .extractData()
        .labelValues.flatMap(({ value }) => (typeof value === "number" ? [value] : []));
      draw(runtime.chartJsConfig, curve, numbers);
      markLegend(runtime.chartJsConfig, curve.marked);
      if (curve.named.length > 0 && definition.dataSource?.type === "range") {
        call(runtime.chartJsConfig, curve.named, namesBeside(getters, definition.dataSource.labelRange));
      }
      return runtime;
    },
  });
}

function draw(
  { data, options }: ChartConfiguration,
  { logarithmic, dots, marked }: Curve,
  along: number[],
): void {
  data.datasets.forEach((dataset, i) => {
    dataset.data = exact(dataset.data, along);
    if (marked.includes(i)) Object.assign(dataset, { pointStyle: "rectRot", pointRadius: MARK });
    if (dots.includes(i)) return;
    Object.assign(dataset, { showLine: true, pointRadius: 0 });
  });
  const values = options?.scales?.y;
  if (values === undefined) return;
  if (logarithmic) Object.assign(values, { type: "logarithmic", ticks: powersOfTen(values.ticks) });
  else Object.assign(values, { beginAtZero: false });
}

/** The engine's legend has a dot for every series; a series with another mark has that. */
function markLegend({ options }: ChartConfiguration, marked: readonly number[]): void {
  const labels = options?.plugins?.legend?.labels;
  const generate = labels?.generateLabels;
  if (labels === undefined || generate === undefined) return;
  labels.generateLabels = (chart) =>
    generate(chart).map((item) =>
      marked.includes(item.datasetIndex ?? NaN) ? { ...item, pointStyle: "rectRot", lineWidth: 2 } : item,
    );
}

/** What stands in the column left of the labels, line by line. */
function namesBeside(getters: Getters, labels: Range | undefined): string[] {
  if (labels === undefined || labels.invalidXc !== undefined || labels.zone.left === 0) return [];
  const { sheetId, zone } = labels;
  const beside = { ...zone, left: zone.left - 1, right: zone.left - 1 };
  return getters
    .getVisibleRangeValues(getters.getRangeFromZone(sheetId, beside))
    .map(({ value }) => String(value ?? ""));
}

/** The engine writes the values of points above them, if it is asked to; here their names instead. */
function call({ options }: ChartConfiguration, named: readonly number[], names: readonly string[]): void {
  const shown: unknown = new Map<string, unknown>(Object.entries(options?.plugins ?? {})).get(
    "chartShowValuesPlugin",
  );
  if (typeof shown !== "object" || shown === null) return;
  const callback = (_: number, { index: series }: { readonly index: number }, i: number): string =>
    named.includes(series) ? (names[i] ?? "") : "";
  Object.assign(shown, { showValues: true, callback });
}

type Points = ChartConfiguration["data"]["datasets"][number]["data"];

/** Points where their numbers lie: the engine has them from the text of the cells, rounded and with commas. */
function exact(points: Points, along: readonly number[]): Points {
  const placed = points.flatMap((point) =>
    typeof point === "object" && point !== null && !Array.isArray(point) && "y" in point ? [point] : [],
  );
  const lying = placed.filter(({ x }) => !Number.isNaN(x));
  if (lying.length !== along.length) return points;
  return lying.map((point, i) => ({ ...point, x: along[i] ?? NaN }));
}

type Ticks = NonNullable<NonNullable<ChartOptions["scales"]>[string]>["ticks"];

/** Labels at 1, 10, 100 … alone: those between would run into each other. */
function powersOfTen(ticks: Ticks): Ticks {
  const callback = (value: string | number): string => {
    const power = Number(value);
    return Number.isInteger(Math.log10(power)) ? power.toLocaleString("en-US") : "";
  };
  return { ...ticks, callback };
}
