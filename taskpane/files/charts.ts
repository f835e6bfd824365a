/** Charts as a file has them, and back. */

import type { Sheet, SheetChart } from "hucre/xlsx";

import type { Place } from "../sheets/addresses";
import { addressOf, placeOf } from "../sheets/addresses";
import { chartInk } from "../hosts/looks";
import type { ChartKind } from "../sheets/sheet";
import { cornersOf, onSheet, plainRange, rangeFrom } from "./ranges";
import type { Snapshot, SnapshotChart } from "./sheet-state";
import { plainText } from "./text";

const FILE_KINDS = {
  bar: { type: "column" },
  line: { type: "line" },
  curve: { type: "scatter", scatterStyle: "line" },
  timeBar: { type: "bar", barGrouping: "stacked", overlap: 100 },
} as const;

/** `namesKey`: what stands in a series for the names of its points, which the writer does not know; "" for none. */
export function fileChart(
  chart: SnapshotChart,
  { name: sheet, cells }: Snapshot,
  namesKey: string,
): SheetChart {
  const corner = ({ column, row }: Place): { col: number; row: number } => ({ col: column, row });
  return {
    ...FILE_KINDS[chart.kind],
    title: plainText(chart.title),
    altText: plainText(chart.title),
    series: chart.values.map((range, i) => {
      const { start, end } = cornersOf(range);
      const letter = range.replace(/\d.*$/, "");
      return {
        name: plainText(String(cells.find(({ at }) => at === addressOf(start))?.value ?? "")),
        values: onSheet(sheet, `${letter}${String(start.row + 2)}:${letter}${String(end.row + 1)}`),
        categories: onSheet(sheet, chart.labels),
        color: chartInk(i).slice(1),
        ...curveSeries(chart, i),
        ...(chart.named?.includes(i) === true && namesKey !== ""
          ? { dataLabels: { showValue: true, position: BESIDE, separator: namesKey } }
          : {}),
      };
    }),
    axes: {
      x: { title: plainText(chart.axes.x) },
      y: {
        title: plainText(chart.axes.y),
        ...(chart.logarithmic === true ? { scale: { logBase: 10 } } : {}),
      },
    },
    legend: chart.values.length > 1 ? "bottom" : false,
    anchor: { from: corner(chart.from), to: corner(chart.to) },
  };
}

/** The two markers we write: as-excel-writes.ts takes the lines of their series away. */
export const POINT = "circle";
export const MARK = "diamond";
/** Points high: more than a circle, which it lies over. */
const MARK_SIZE = 10;
/** Labels that stand there are the names of the points: as-excel-writes.ts takes them from their cells. */
const BESIDE = "t";

/** A line without points, or points without a line. */
function curveSeries(
  { kind, dots, marked }: SnapshotChart,
  i: number,
): Partial<SheetChart["series"][number]> {
  if (kind !== "curve" && kind !== "line") return {};
  const ink = { fill: chartInk(i).slice(1), line: chartInk(i).slice(1) };
  if (marked?.includes(i) === true) return { marker: { symbol: MARK, size: MARK_SIZE, ...ink } };
  return { marker: dots?.includes(i) === true ? { symbol: POINT, ...ink } : { symbol: "none" } };
}

/** The names of points: the cells that they stand in, and what these hold. */
export interface PointNames {
  readonly cells: string;
  readonly names: readonly string[];
}

/** Undefined for a chart whose points have none. */
export function pointNames({ labels, named }: SnapshotChart, sheet: Snapshot): PointNames | undefined {
  const { start, end } = cornersOf(labels);
  if (named === undefined || start.column === 0) return undefined;
  const column = start.column - 1;
  const held = new Map(sheet.cells.map(({ at, value }) => [at, String(value)]));
  const places = Array.from({ length: end.row - start.row + 1 }, (_, i) => ({ column, row: start.row + i }));
  return {
    cells: onSheet(sheet.name, rangeFrom({ column, row: start.row }, { column, row: end.row })),
    names: places.map((place) => held.get(addressOf(place)) ?? ""),
  };
}

/** A chart as the file's reader gives it. */
type ReadChart = NonNullable<Sheet["charts"]>[number];

export function chartOf(chart: ReadChart, leftOut: Set<string>): SnapshotChart[] {
  const [kind] = chart.kinds;
  const anchor = chart.anchor as SheetChart["anchor"] | undefined;
  const values = (chart.series ?? []).map(({ valuesRef }) => plainRange(valuesRef ?? ""));
  const labels = plainRange(chart.series?.[0]?.categoriesRef ?? "");
  const isKnown = chart.kinds.length === 1 && (kind === "bar" || kind === "line" || kind === "scatter");
  const isStacked = kind === "bar" && chart.barGrouping === "stacked";
  const isPlain = labels !== undefined && values.every((range) => range !== undefined);
  if (!isKnown || !isPlain || anchor?.to === undefined) {
    leftOut.add("charts that are neither of bars nor of lines or curves");
    return [];
  }
  const series = kind === "scatter" ? (chart.series ?? []) : [];
  const where = (isSo: (one: (typeof series)[number]) => boolean): number[] =>
    series.flatMap((one, i) => (isSo(one) ? [i] : []));
  const dots = where(({ marker }) => marker?.symbol === POINT || marker?.symbol === MARK);
  const marked = where(({ marker }) => marker?.symbol === MARK);
  const named = where(({ dataLabels }) => dataLabels?.position === BESIDE && dataLabels.showValue !== true);
  return [
    {
      title: chart.title ?? "",
      kind: kindOf(kind, isStacked),
      labels,
      // With the heading above, which the series has its name from.
      values: values.map(withHeading),
      axes: { x: chart.axes?.x?.title ?? "", y: chart.axes?.y?.title ?? "" },
      ...(chart.axes?.y?.scale?.logBase === undefined ? {} : { logarithmic: true }),
      ...(dots.length > 0 ? { dots } : {}),
      ...(marked.length > 0 ? { marked } : {}),
      ...(named.length > 0 ? { named } : {}),
      from: { column: anchor.from.col, row: anchor.from.row },
      to: { column: anchor.to.col, row: anchor.to.row },
    },
  ];
}

function kindOf(kind: "bar" | "line" | "scatter", isStacked: boolean): ChartKind {
  if (kind === "bar") return isStacked ? "timeBar" : "bar";
  return kind === "line" ? "line" : "curve";
}

function withHeading(range: string): string {
  const [first = "", last = first] = range.split(":");
  const { column, row } = placeOf(first);
  return rangeFrom({ column, row: Math.max(0, row - 1) }, placeOf(last));
}
