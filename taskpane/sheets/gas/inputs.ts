/** What an estimator types once for the whole list. Prices and list are invented. */

import {
  ANGLE,
  COUNT,
  CYLINDER_PRESSURE,
  FLOW,
  LENGTH,
  LIQUID_VOLUME,
  OXYGEN,
  SHARE,
  VOLUME,
} from "../../../src/quantity";
import type { Row } from "../layout";
import { choice, optional, seconds, typed, words } from "../typed";

export const BID: Row[] = [
  words("Bid", "bid", "Invented creamery"),
  words("Prepared for", "customer", "Invented customer"),
];
export const PAPERS: Row[] = [
  words("Drawing, revision", "drawing", "ISO-000 rev. 0 (invented)"),
  words("Date", "bid_date", ""),
];

export const WELDING: Row[] = [
  typed({
    label: "Torch flow",
    name: "torch_flow",
    content: { US: 20, SI: 10 },
    quantity: FLOW,
    range: { US: [1, 200], SI: [0.5, 95] },
  }),
  typed({
    label: "Purge flow",
    name: "purge_flow",
    content: { US: 15, SI: 7 },
    quantity: FLOW,
    range: { US: [0.5, 400], SI: [0.25, 200] },
  }),
  typed({
    label: "Dam spacing",
    name: "dam_spacing",
    content: { US: 24, SI: 600 },
    quantity: LENGTH,
    range: { US: [1, 500], SI: [25.4, 12_700] },
  }),
  typed({ label: "Oxygen to reach", name: "target_ppm", content: 50, quantity: OXYGEN, range: [1, 10_000] }),
  optional({
    label: "Oxygen in the purge gas",
    name: "supply_ppm",
    content: 0,
    quantity: OXYGEN,
    range: [0, 1000],
    above0: 0.1,
  }),
  typed({ label: "Overlap", name: "overlap", content: 20, quantity: ANGLE, range: [0, 360], above0: 1 }),
  seconds("Handling per joint", "handling", 600, 14_400),
  typed({
    label: "Waste, fraction bought",
    name: "waste",
    content: 0.1,
    quantity: SHARE,
    range: [0, 0.6],
  }),
];

export const SUPPLY: Row[] = [
  choice("Supply", "supply", "cylinder", ["cylinder", "liquid"], { columns: 2 }),
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
  typed({
    label: "Usable fraction of the liquid",
    name: "liquid_share",
    content: 0.9,
    quantity: SHARE,
    range: [0.3, 1],
  }),
  typed({
    label: "Price per container",
    name: "price",
    content: 95,
    quantity: COUNT,
    unit: "money",
    range: [1, 100_000],
    format: "0.00",
  }),
];

/** Quantity, outside diameter and wall in each system, material. */
type Joint = readonly [
  quantity: number,
  od: { US: string; SI: string },
  wall: { US: string; SI: string },
  material: string,
];

/** An invented list of joints, sizes as people write them; blank lines are for more. */
export const JOINTS: readonly Joint[] = [
  [120, { US: "1/2", SI: "12.7" }, { US: "0.049", SI: "1.25" }, "316L"],
  [220, { US: "1", SI: "25.4" }, { US: "0.065", SI: "1.65" }, "316L"],
  [90, { US: "1-1/2", SI: "38.1" }, { US: "0.065", SI: "1.65" }, "316L"],
  [64, { US: "2", SI: "50.8" }, { US: "0.065", SI: "1.65" }, "316L"],
  [36, { US: "3", SI: "76.2" }, { US: "0.065", SI: "1.65" }, "304L"],
  [18, { US: "4", SI: "101.6" }, { US: "0.083", SI: "2.11" }, "304L"],
];
/** Lines of the list, blank ones included. */
export const LINES = 200;
