/** Curves as the browser sheet draws them: lines close to their values, or on a scale of powers of ten. */

import type { Chart, ChartConfiguration } from "chart.js";

import { drawCurves } from "../../taskpane/hosts/browser/curve";
import { coupons } from "../../taskpane/sheets/coupons";
import { procedure } from "../../taskpane/sheets/procedure";
import type { Template } from "../../taskpane/sheets/sheet";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

beforeAll(drawCurves);

async function curves(template: Template): Promise<ChartConfiguration[]> {
  return curvesOf(await openSheet(template, "US"));
}

function curvesOf({ model: { getters } }: OpenSheet): ChartConfiguration[] {
  return getters.getFigures(getters.getActiveSheetId()).flatMap(({ id }) => {
    const chartId = getters.getChartIdFromFigureId(id);
    if (chartId === undefined || getters.getChartDefinition(chartId).type !== "scatter") return [];
    const runtime = getters.getChartRuntime(chartId);
    return "chartJsConfig" in runtime ? [runtime.chartJsConfig] : [];
  });
}

interface Point {
  readonly x: number;
  readonly y: number;
}

function points({ data }: ChartConfiguration, series: number): Point[] {
  return (data.datasets[series]?.data ?? []) as Point[];
}

describe("the procedure sheet", () => {
  test("currents are lines without points, each level over its sector, on a scale close to them", async () => {
    const [course] = await curves(procedure);
    if (course === undefined) throw new Error("no curve");
    expect(course.data.datasets).toEqual([
      expect.objectContaining({ showLine: true, pointRadius: 0 }),
      expect.objectContaining({ showLine: true, pointRadius: 0 }),
    ]);
    expect(course.options?.scales?.y).toMatchObject({ beginAtZero: false });
    expect(course.options?.scales?.y).not.toHaveProperty("type", "logarithmic");
    const set = points(course, 1);
    expect([set[0]?.x, set.at(-1)?.x]).toEqual([0, 360]);
    // Two currents at 90°: the line goes straight up or down there.
    const quarter = set.filter(({ x }) => x === 90);
    expect(quarter).toHaveLength(2);
    expect(quarter[0]?.y).not.toBe(quarter[1]?.y);
    expect(new Set(set.map(({ y }) => y)).size).toBe(4);
  });

  test("oxygen falls by powers of ten, which alone are labeled", async () => {
    const [, oxygen] = await curves(procedure);
    const scale = oxygen?.options?.scales?.y;
    expect(scale).toMatchObject({ type: "logarithmic" });
    const label = scale?.ticks?.callback as ((value: number) => string) | undefined;
    expect([10, 1000, 100_000].map((ppm) => label?.(ppm))).toEqual(["10", "1,000", "100,000"]);
    expect([20, 50, 5000].map((ppm) => label?.(ppm))).toEqual(["", "", ""]);
    if (oxygen === undefined) return;
    // A straight line there: equal factors take equal times.
    const fall = points(oxygen, 0);
    const slope = (a?: Point, b?: Point): number =>
      Math.log((a?.y ?? NaN) / (b?.y ?? NaN)) / ((b?.x ?? NaN) - (a?.x ?? NaN));
    expect(slope(fall[0], fall[1]) / slope(fall[5], fall[13])).toBeCloseTo(1, 9);
  });
});

describe("the coupon sheet", () => {
  /** Invented: the third of six coupons at 42 A, far fewer than the others melt as much with. */
  const AMPS = -5;

  async function picture(
    typed: Readonly<Record<number, string>>,
    numbers: Readonly<Record<number, string>> = {},
  ): Promise<{ open: OpenSheet; chart: ChartConfiguration }> {
    const open = await openSheet(coupons, "US");
    for (const [line, amps] of Object.entries(typed))
      open.typeBeside("coupon_table", AMPS, Number(line), amps);
    for (const [line, called] of Object.entries(numbers))
      open.typeBeside("coupon_table", -11, Number(line), called);
    const [chart] = curvesOf(open);
    if (chart === undefined) throw new Error("no curve");
    return { open, chart };
  }

  /** Drawn beside a point of a series. */
  function name({ options }: ChartConfiguration, series: number, point: number): string {
    const shown = (options?.plugins as Record<string, unknown> | undefined)?.chartShowValuesPlugin as {
      showValues: boolean;
      callback(value: number, dataset: { index: number }, point: number): string;
    };
    expect(shown.showValues).toBe(true);
    return shown.callback(0, { index: series }, point);
  }

  test("an outlier has a mark of its own where its dot is, and no other coupon has one", async () => {
    const { open, chart } = await picture({ 3: "42" });
    expect(chart.data.datasets.map(({ label }) => label)).toEqual([
      "measured",
      "one to one",
      "next weld, low",
      "next weld, high",
      "outlier",
    ]);
    const marks = points(chart, 4).filter(({ y }) => Number.isFinite(y));
    const [predicted, measured] = [open.beside("coupon_table", 2, 3), open.beside("coupon_table", 0, 3)];
    expect(marks).toEqual([{ x: predicted, y: measured }]);
    expect(points(chart, 0)).toContainEqual({ x: predicted, y: measured });
    expect(chart.data.datasets[4]).toMatchObject({ pointStyle: "rectRot" });
    expect(chart.data.datasets[4]).not.toHaveProperty("showLine", true);
    expect(chart.data.datasets[0]).not.toHaveProperty("pointStyle");
    const drawn = { data: chart.data, isDatasetVisible: () => true } as unknown as Chart;
    const legend = chart.options?.plugins?.legend?.labels?.generateLabels?.(drawn) ?? [];
    expect(legend.map(({ text, pointStyle }) => [text, pointStyle])).toEqual([
      ["measured", "circle"],
      ["one to one", "circle"],
      ["next weld, low", "circle"],
      ["next weld, high", "circle"],
      ["outlier", "rectRot"],
    ]);
  });

  test("without one there is no mark", async () => {
    const { chart } = await picture({});
    expect(points(chart, 4).filter(({ y }) => Number.isFinite(y))).toEqual([]);
  });

  test("each dot is called by its coupon's number, in the order of predicted widths, and nothing else is called", async () => {
    const { open, chart } = await picture({ 3: "42" }, { 2: "A-7", 5: "" });
    const lines = [1, 2, 3, 4, 5, 6];
    const widths = new Map(lines.map((line) => [line, Number(open.beside("coupon_table", 2, line))]));
    const order = [...lines].sort((one, other) => (widths.get(one) ?? 0) - (widths.get(other) ?? 0));
    const called: Readonly<Record<number, string>> = { 2: "A-7", 5: "line 5" };
    expect(lines.map((_, point) => name(chart, 0, point))).toEqual(
      order.map((line) => called[line] ?? String(line)),
    );
    // Behind the last the point of the last comes again, without its name.
    expect(points(chart, 0)[6]).toEqual(points(chart, 0)[5]);
    expect(name(chart, 0, 6)).toBe("");
    for (const series of [1, 2, 3, 4]) expect(name(chart, series, 0)).toBe("");
  });

  test("names follow rows and columns that are inserted", async () => {
    const { open } = await picture({});
    open.insertRowAt(1);
    open.command("ADD_COLUMNS_ROWS", {
      sheetName: open.model.getters.getSheetName(open.model.getters.getActiveSheetId()),
      dimension: "COL",
      base: 0,
      quantity: 1,
      position: "before",
    });
    const [chart] = curvesOf(open);
    if (chart === undefined) throw new Error("no curve");
    expect([0, 1, 2, 3, 4, 5].map((point) => name(chart, 0, point)).sort()).toEqual([
      "1",
      "2",
      "3",
      "4",
      "5",
      "6",
    ]);
  });
});
