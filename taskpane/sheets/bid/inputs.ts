/** What an estimator types for a bid. Names, prices and times are invented. */

import { COUNT, DURATION, SHARE, VOLUME } from "../../../src/quantity";
import { CONTAINERS, DAM_SPACING, OVERLAP, oxygenRows, PURGE_FLOW, TORCH_FLOW, WASTE } from "../gas-rows";
import type { Between, Row } from "../layout";
import { choice, counted, seconds, typed, words } from "../typed";

/** Columns that a line of words has, from the labels to the edge of the form. */
const WIDE = 9;

function wideWords(label: string, name: string, content: string): Row {
  return { ...words(label, name, content), columns: WIDE };
}

/** None, or at least a tenth: a sheet takes 5% for 0.05. */
function money(label: string, name: string, content: number, range: Between): Row {
  const above0 = range[0] === 0 ? { above0: 0.1 } : {};
  return typed({ ...above0, label, name, content, quantity: COUNT, unit: "money", range, format: "0.00" });
}

function fraction(label: string, name: string, content: number, range: Between): Row {
  return typed({ label, name, content, quantity: SHARE, range });
}

export const JOB: Row[] = [
  words("Job", "job", "Invented creamery, skid 3"),
  words("Bid to", "customer", "Invented customer"),
  words("Bid by", "bidder", "Invented tube shop"),
];
export const PAPERS: Row[] = [
  words("Drawing, revision", "drawing", "ISO-000 rev. 0 (invented)"),
  words("Bid number, date", "bid_number", "B-000 (invented)"),
  words("Currency", "currency", "money (invented)"),
];
export const WORDING: Row[] = [
  wideWords(
    "Scope, line 1",
    "scope_one",
    "Orbital TIG welding of the tube joints listed, ends ready to weld.",
  ),
  wideWords("Scope, line 2", "scope_two", "Bore purged with argon; test coupons by the qualified procedure."),
  wideWords("Scope, line 3", "scope_three", "Weld log and visual inspection of every joint."),
  wideWords("Not included, line 1", "excluded_one", "Tube, fittings, supports, cutting and end preparation."),
  wideWords("Not included, line 2", "excluded_two", "Radiography, passivation, pressure test, scaffolding."),
  wideWords("Not included, line 3", "excluded_three", "Taxes, freight, waiting time caused by others."),
  wideWords("Validity", "validity", "30 days from the date above."),
];

/** Assumptions: each is worth something in the price. */
export const WELDING: Row[] = [
  TORCH_FLOW,
  PURGE_FLOW,
  DAM_SPACING,
  ...oxygenRows(5),
  seconds("Purge at least", "purge_least", 60, 7200),
  fraction("Fraction of the purge waited for", "purge_waited", 1, [0, 1]),
  OVERLAP,
  seconds("Handling per joint", "handling", 600, 14_400),
];
export const CREW: Row[] = [
  money("Labor rate per hour, whole crew", "labor_rate", 85, [1, 5000]),
  counted("Time per change of set-up", "setup_minutes", 30, "min", [0, 600], { above0: 1 }),
  choice("Order of work", "work_order", "as listed", ["as listed", "grouped"], { columns: 2 }),
  typed({
    label: "Working period",
    name: "period_hours",
    content: 8,
    quantity: DURATION,
    range: [2, 24],
    format: "0.0",
  }),
  typed({
    label: "Coupon every",
    name: "coupon_every",
    content: 4,
    quantity: DURATION,
    range: [0.5, 24],
    format: "0.0",
  }),
  counted("Time per coupon", "coupon_minutes", 30, "min", [0, 480], { above0: 1 }),
  money("Material per coupon", "coupon_price", 12, [0, 5000]),
  fraction("Expected reject rate", "reject_rate", 0.02, [0, 0.5]),
  fraction("Confidence of having enough", "confidence", 0.5, [0.1, 0.99]),
];
export const CONSUMED: Row[] = [
  money("Material per joint started over", "reject_price", 15, [0, 20_000]),
  counted("Joints per electrode", "joints_per_electrode", 25, "joints", [1, 1000]),
  money("Price per electrode", "electrode_price", 6, [0, 1000]),
  money("Other cost, lump sum", "other_cost", 1200, [0, 1_000_000]),
  // Which of the two it is stands in the label: the same fraction of the cost is a lower price.
  {
    ...fraction("Margin, fraction of the price or the cost", "margin", 0.2, [0, 0.9]),
    labelFormula: '="Margin, fraction of the "&IF({margin_of}="cost","cost","price")',
  },
  choice("Margin is a fraction of the", "margin_of", "price", ["price", "cost"]),
  money("Price rounded up to a multiple of", "price_step", 10, [0.1, 10_000]),
  choice("Customer page shows hours", "show_hours", "yes", ["yes", "no"]),
];
export const SUPPLY: Row[] = [
  choice("Supply", "supply", "contents", ["contents", "water volume", "liquid"], { columns: 2 }),
  typed({
    label: "Cylinder contents, nominal",
    name: "contents",
    content: { US: 330, SI: 10_000 },
    quantity: VOLUME,
    range: { US: [10, 700], SI: [1000, 20_000] },
    format: "0",
  }),
  fraction("Usable fraction, contents or liquid", "usable_share", 0.95, [0.3, 1]),
  ...CONTAINERS,
  WASTE,
  money("Price per container", "container_price", 95, [1, 20_000]),
];
