/** A chart as the engine defines it, and back. */

import type { ChartKind, ChartPlan } from "../../sheets/sheet";
import { chartInk } from "../looks";

export type Drawn = Pick<
  ChartPlan,
  "kind" | "title" | "labels" | "values" | "axes" | "logarithmic" | "dots" | "marked" | "named"
>;

/** How a curve is drawn, kept with its axis of values; the engine takes no notice of it, curve.ts does. */
export interface Curve {
  readonly logarithmic: boolean;
  readonly dots: readonly number[];
  readonly marked: readonly number[];
  readonly named: readonly number[];
}

const ENGINE_TYPES = { bar: "bar", line: "line", curve: "scatter", timeBar: "bar" } as const;

export function chartDefinition(plan: Drawn): object {
  const { kind, title, labels, values, axes, logarithmic = false, dots = [], marked = [], named = [] } = plan;
  const ids = values.map((_, i) => String(i));
  const curve: Curve = { logarithmic, dots, marked, named };
  return {
    type: ENGINE_TYPES[kind],
    title: { text: title },
    dataSource: {
      type: "range",
      dataSets: values.map((dataRange, i) => ({ dataSetId: String(i), dataRange })),
      dataSetsHaveTitle: true,
      labelRange: labels,
    },
    dataSetStyles: Object.fromEntries(ids.map((id, i) => [id, { backgroundColor: chartInk(i) }])),
    // The engine's x lies across, whichever way the bars do.
    axesDesign:
      kind === "timeBar"
        ? { x: { title: { text: axes.y } }, y: { title: { text: axes.x } } }
        : {
            x: { title: { text: axes.x } },
            y: { title: { text: axes.y }, ...(kind === "curve" ? { curve } : {}) },
          },
    legendPosition: values.length > 1 ? "bottom" : "none",
    stacked: kind === "timeBar",
    horizontal: kind === "timeBar",
    ...(kind === "curve" ? { labelsAsText: false } : {}),
    ...(kind === "line" ? { labelsAsText: true, cumulative: false, hideDataMarkers: true } : {}),
  };
}

/** The kind of one of our charts, or of one like it; undefined for any other. */
export function kindOf(definition: {
  readonly type: string;
  readonly horizontal?: unknown;
}): ChartKind | undefined {
  const { type, horizontal } = definition;
  if (type === "bar") return horizontal === true ? "timeBar" : "bar";
  if (type === "line") return "line";
  return type === "scatter" ? "curve" : undefined;
}

/** How the curve of a definition is drawn; undefined for a chart that is none of ours. */
export function curveOf(definition: object): Curve | undefined {
  const y = property(property(definition, "axesDesign"), "y");
  const curve = property(y, "curve");
  if (curve === undefined) return undefined;
  return {
    logarithmic: property(curve, "logarithmic") === true,
    dots: numbers(property(curve, "dots")),
    marked: numbers(property(curve, "marked")),
    named: numbers(property(curve, "named")),
  };
}

function numbers(list: unknown): number[] {
  return Array.isArray(list) ? list.filter((one) => typeof one === "number") : [];
}

function property(of: unknown, name: string): unknown {
  if (typeof of !== "object" || of === null) return undefined;
  return new Map<string, unknown>(Object.entries(of)).get(name);
}
