/** A chart as a picture for a printed page. */

import type { Model } from "@odoo/o-spreadsheet";
import type { ChartConfiguration } from "chart.js";
import Chart from "chart.js/auto";

/** Twice the size on screen, so that print is sharp. */
const SHARPNESS = 2;

/** A chart drawn once more for the page: on screen only those in sight are drawn. */
export function chartPicture(
  model: Model,
  { id, width, height }: { id: string; width: number; height: number },
): Node {
  const { getters } = model;
  const chartId = getters.getChartIdFromFigureId(id);
  const runtime = chartId === undefined ? undefined : getters.getChartRuntime(chartId);
  if (runtime === undefined || !("chartJsConfig" in runtime)) return document.createTextNode("");
  const canvas = document.createElement("canvas");
  Object.assign(canvas, { width, height });
  const { options, ...config } = runtime.chartJsConfig as ChartConfiguration;
  const chart = new Chart(canvas, {
    ...config,
    options: { ...options, animation: false, responsive: false, devicePixelRatio: SHARPNESS },
  });
  const picture = document.createElement("img");
  Object.assign(picture, { src: canvas.toDataURL("image/png"), alt: "Chart of the sheet", width, height });
  chart.destroy();
  return picture;
}
