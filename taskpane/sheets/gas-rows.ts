/** The rows of flows, purge and supply, the same on every sheet that asks for them. */

import {
  ANGLE,
  CYLINDER_PRESSURE,
  FLOW,
  LENGTH,
  LIQUID_VOLUME,
  OXYGEN,
  SHARE,
  VOLUME,
} from "../../src/quantity";
import type { Row } from "./layout";
import { optional, typed } from "./typed";

export const TORCH_FLOW: Row = typed({
  label: "Torch flow",
  name: "torch_flow",
  content: { US: 20, SI: 10 },
  quantity: FLOW,
  range: { US: [1, 200], SI: [0.5, 95] },
});

export const PURGE_FLOW: Row = typed({
  label: "Purge flow",
  name: "purge_flow",
  content: { US: 15, SI: 7 },
  quantity: FLOW,
  range: { US: [0.5, 400], SI: [0.25, 200] },
});

export const DAM_SPACING: Row = typed({
  label: "Dam spacing",
  name: "dam_spacing",
  content: { US: 24, SI: 600 },
  quantity: LENGTH,
  range: { US: [1, 500], SI: [25.4, 12_700] },
});

/** What is to be reached in the bore, and what the purge gas brings along: `supply` ppm in the example. */
export function oxygenRows(supply: number): Row[] {
  return [
    typed({
      label: "Oxygen to reach",
      name: "target_ppm",
      content: 50,
      quantity: OXYGEN,
      range: [1, 10_000],
    }),
    optional({
      label: "Oxygen in the purge gas",
      name: "supply_ppm",
      content: supply,
      quantity: OXYGEN,
      range: [0, 1000],
      above0: 0.1,
    }),
  ];
}

export const OVERLAP: Row = typed({
  label: "Overlap",
  name: "overlap",
  content: 20,
  quantity: ANGLE,
  range: [0, 360],
  above0: 1,
});

/** A cylinder by its water volume and pressures, and the liquid that may be bought in its place. */
export const CONTAINERS: readonly Row[] = [
  typed({
    label: "Cylinder water volume",
    name: "water_volume",
    content: { US: 1.76, SI: 50 },
    quantity: VOLUME,
    range: { US: [0.07, 2.9], SI: [3, 300] },
  }),
  typed({
    label: "Cylinder pressure, full",
    name: "full_pressure",
    content: { US: 2640, SI: 200 },
    quantity: CYLINDER_PRESSURE,
    range: { US: [460, 6500], SI: [32, 450] },
  }),
  typed({
    label: "Change-out pressure",
    name: "residual",
    content: { US: 50, SI: 3.5 },
    quantity: CYLINDER_PRESSURE,
    range: { US: [5, 450], SI: [0.3, 31] },
  }),
  typed({
    label: "Liquid container, gross",
    name: "liquid_liters",
    content: 230,
    quantity: LIQUID_VOLUME,
    range: [40, 2000],
    format: "0",
  }),
];

export const WASTE: Row = typed({
  label: "Waste, fraction bought",
  name: "waste",
  content: 0.1,
  quantity: SHARE,
  range: [0, 0.6],
});
