/** What an estimator types once for the whole list. Prices and list are invented. */

import { COUNT, SHARE } from "../../../src/quantity";
import { CONTAINERS, DAM_SPACING, OVERLAP, oxygenRows, PURGE_FLOW, TORCH_FLOW, WASTE } from "../gas-rows";
import type { Row } from "../layout";
import { choice, seconds, typed, words } from "../typed";

export const BID: Row[] = [
  words("Bid", "bid", "Invented creamery"),
  words("Prepared for", "customer", "Invented customer"),
];
export const PAPERS: Row[] = [
  words("Drawing, revision", "drawing", "ISO-000 rev. 0 (invented)"),
  words("Date", "bid_date", ""),
];

export const WELDING: Row[] = [
  TORCH_FLOW,
  PURGE_FLOW,
  DAM_SPACING,
  ...oxygenRows(0),
  OVERLAP,
  seconds("Handling per joint", "handling", 600, 14_400),
  WASTE,
];

export const SUPPLY: Row[] = [
  choice("Supply", "supply", "cylinder", ["cylinder", "liquid"], { columns: 2 }),
  ...CONTAINERS,
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
