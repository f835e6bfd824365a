/** Charts as Excel is asked for them. */

import { coupons } from "../../taskpane/sheets/coupons";
import { FakeExcel } from "./excel-fake";
import { hostIn } from "./excel-host";

test("of the coupons the measured widths are points, and outliers points with a mark of their own", async () => {
  const plan = coupons.plan("US");
  const excel = new FakeExcel().install();
  await hostIn(excel).insert(plan);
  const [chart] = excel.sheet(plan.title).charts;
  const asked = (what: string): unknown[] =>
    plan.charts[0]?.values.map((_, i) => chart?.settings.get(`series.${String(i)}.${what}`)) ?? [];
  expect(chart?.series.map(({ name }) => name).slice(1)).toEqual([
    "one to one",
    "next weld, low",
    "next weld, high",
    "outlier",
  ]);
  expect(asked("chartType")).toEqual(["XYScatter", undefined, undefined, undefined, "XYScatter"]);
  expect(asked("markerStyle")).toEqual([undefined, undefined, undefined, undefined, "Diamond"]);
});
