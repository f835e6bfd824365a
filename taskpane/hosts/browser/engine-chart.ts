/** A chart as the engine defines it. */

import type { ChartPlan } from "../../sheets/sheet";
import { chartInk } from "../looks";

export function chartDefinition({
  kind,
  title,
  labels,
  values,
  axes,
}: Pick<ChartPlan, "kind" | "title" | "labels" | "values" | "axes">): object {
  const ids = values.map((_, i) => String(i));
  return {
    type: kind,
    title: { text: title },
    dataSource: {
      type: "range",
      dataSets: values.map((dataRange, i) => ({ dataSetId: String(i), dataRange })),
      dataSetsHaveTitle: true,
      labelRange: labels,
    },
    dataSetStyles: Object.fromEntries(ids.map((id, i) => [id, { backgroundColor: chartInk(i) }])),
    axesDesign: { x: { title: { text: axes.x } }, y: { title: { text: axes.y } } },
    legendPosition: values.length > 1 ? "bottom" : "none",
    stacked: false,
    ...(kind === "line" ? { labelsAsText: true, cumulative: false, hideDataMarkers: true } : {}),
  };
}
