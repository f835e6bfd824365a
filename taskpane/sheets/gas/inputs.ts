/** What an estimator types once for the whole list. Prices and list are invented. */

import {
  ANGLE,
  COUNT,
  CYLINDER_PRESSURE,
  FLOW,
  LENGTH,
  OXYGEN,
  SHARE,
  TIME,
  VOLUME,
} from "../../../src/quantity";
import type { Row } from "../layout";

export const BID: Row[] = [
  { label: "Bid", name: "bid", content: "Invented creamery", look: "inputText" },
  { label: "Prepared for", name: "customer", content: "Invented customer", look: "inputText" },
];
export const PAPERS: Row[] = [
  { label: "Drawing, revision", name: "drawing", content: "ISO-000 rev. 0 (invented)", look: "inputText" },
  { label: "Date", name: "bid_date", content: "", look: "inputText" },
];

export const WELDING: Row[] = [
  { label: "Torch flow", name: "torch_flow", content: { US: 20, SI: 10 }, look: "input", quantity: FLOW },
  { label: "Purge flow", name: "purge_flow", content: { US: 15, SI: 7 }, look: "input", quantity: FLOW },
  {
    label: "Dam spacing",
    name: "dam_spacing",
    content: { US: 24, SI: 600 },
    look: "input",
    quantity: LENGTH,
  },
  { label: "Oxygen to reach", name: "target_ppm", content: 50, look: "input", quantity: OXYGEN },
  { label: "Oxygen in the purge gas", name: "supply_ppm", content: 0, look: "input", quantity: OXYGEN },
  { label: "Overlap", name: "overlap", content: 20, look: "input", quantity: ANGLE },
  { label: "Handling per joint", name: "handling", content: 600, look: "input", quantity: TIME },
  { label: "Waste, share of the gas bought", name: "waste", content: 0.1, look: "input", quantity: SHARE },
];

export const SUPPLY: Row[] = [
  {
    label: "Supply",
    name: "supply",
    content: "cylinder",
    look: "inputText",
    unit: "",
    columns: 2,
    allowed: ["cylinder", "liquid"],
  },
  {
    label: "Cylinder water volume",
    name: "water_volume",
    content: { US: 1.76, SI: 50 },
    look: "input",
    quantity: VOLUME,
  },
  {
    label: "Cylinder pressure, full",
    name: "full_pressure",
    content: { US: 2640, SI: 200 },
    look: "input",
    quantity: CYLINDER_PRESSURE,
  },
  {
    label: "Changed at",
    name: "residual",
    content: { US: 50, SI: 3.5 },
    look: "input",
    quantity: CYLINDER_PRESSURE,
  },
  {
    label: "Liquid container, gross",
    name: "liquid_litres",
    content: 230,
    look: "input",
    quantity: COUNT,
    unit: "L",
    format: "0",
  },
  { label: "Usable share of liquid", name: "liquid_share", content: 0.9, look: "input", quantity: SHARE },
  {
    label: "Price per container",
    name: "price",
    content: 95,
    look: "input",
    quantity: COUNT,
    unit: "money",
    format: "0.00",
  },
];

/** Quantity, outside diameter and wall in each system, material. */
type Joint = readonly [
  quantity: number,
  od: { US: number; SI: number },
  wall: { US: number; SI: number },
  material: string,
];

/** An invented list of joints; blank lines are for more. */
export const JOINTS: readonly Joint[] = [
  [120, { US: 0.5, SI: 12.7 }, { US: 0.049, SI: 1.25 }, "316L"],
  [220, { US: 1, SI: 25.4 }, { US: 0.065, SI: 1.65 }, "316L"],
  [90, { US: 1.5, SI: 38.1 }, { US: 0.065, SI: 1.65 }, "316L"],
  [64, { US: 2, SI: 50.8 }, { US: 0.065, SI: 1.65 }, "316L"],
  [36, { US: 3, SI: 76.2 }, { US: 0.065, SI: 1.65 }, "304L"],
  [18, { US: 4, SI: 101.6 }, { US: 0.083, SI: 2.11 }, "304L"],
];
export const LINES = 15;
