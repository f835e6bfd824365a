/** What a planner types, once for the shop as it is and, where it differs, for each what-if. The job is invented. */

import { COUNT, SHARE, SPEED, TIME } from "../../../src/quantity";
import type { Row } from "../layout";
import { TUBE } from "../tube";
import { choice, counted, optional, seconds, typed, words } from "../typed";

export const JOB: Row[] = [words("Job", "job", "Invented: Fennel Island creamery")];
export const PAPERS: Row[] = [words("Shop, shift", "shop", "Invented shop, day shift")];

const JOINT: readonly Row[] = [
  ...TUBE,
  optional({
    label: "Travel speed (blank: suggested)",
    name: "speed_typed",
    quantity: SPEED,
    range: { US: [0.8, 30], SI: [20, 760] },
  }),
  seconds("Purge of the bore before the arc", "purge", 120, 7200),
  seconds("Prepurge", "prepurge", 30, 600),
  seconds("Postpurge", "postpurge", 15, 600),
  typed({ label: "Unload, load, start", name: "load", content: 180, quantity: TIME, range: [1, 14_400] }),
  seconds("Walk to the next head", "walk", 15, 600),
];

const SHARED = ["shared", "fixed"] as const;
const SHOP: readonly Row[] = [
  counted("Operators", "operators", 2, "", [1, 100]),
  counted("Heads in the shop", "shop_heads", 4, "", [1, 400]),
  choice("Heads shared, or fixed to one", "heads_are", "fixed", SHARED),
  counted("Hours of a shift", "hours", 8, "h", [1, 16], { format: "0.0" }),
  typed({
    label: "Availability, fraction of the shift",
    name: "availability",
    content: 0.85,
    quantity: SHARE,
    range: [0.2, 1],
  }),
  counted("Electrode changes a shift", "changes", 6, "", [0, 60]),
  counted("Minutes for each change", "change_minutes", 5, "min", [0, 120], { above0: 0.5 }),
  counted("Test coupons a shift", "coupons", 2, "", [0, 40]),
  counted("Minutes for each coupon", "coupon_minutes", 10, "min", [0, 240], { above0: 0.5 }),
];

const MODELS = ["average", "unit"] as const;
const ORDERS = ["as listed", "grouped"] as const;
const LOT: readonly Row[] = [
  counted("Joints to make", "joints", 600, "", [1, 36_000]),
  typed({
    label: "Reject rate, fraction",
    name: "reject_rate",
    content: 0,
    quantity: SHARE,
    range: [0, 0.5],
    format: "0.0%",
  }),
  optional({
    label: "Learning rate of the load (blank: none)",
    name: "learn_rate",
    quantity: SHARE,
    range: [0.6, 1],
  }),
  choice("Learning model", "learn_model", "average", MODELS),
  optional({
    label: "Changeovers of the lot (blank: list)",
    name: "changeovers_typed",
    quantity: COUNT,
    unit: "",
    range: [0, 5000],
    format: "0",
  }),
  choice("Order of the joint list", "list_order", "as listed", ORDERS),
  counted("Minutes for each changeover", "changeover_minutes", 20, "min", [0, 480], { above0: 0.5 }),
];

/** Day numbers of this century. */
const DATES = [36_526, 73_050] as const;
export const DATE_FORMAT = "yyyy-mm-dd";
function date(label: string, name: string): Row {
  return optional({ label, name, quantity: COUNT, unit: "date", range: DATES, format: DATE_FORMAT });
}
const CALENDAR: readonly Row[] = [
  counted("Shifts a day", "shifts_a_day", 1, "", [1, 3]),
  counted("Working days a week", "days_a_week", 5, "", [1, 7]),
  date("Start (blank: a Monday)", "start_date"),
  date("Finish by (may stay blank)", "finish_by"),
  counted("Labor, an hour", "rate", 48, "money", [1, 1000], { format: "0.00" }),
];

/** Blocks of rows under a heading, in their order on the page. */
export const TYPED: readonly (readonly [heading: string, rows: readonly Row[]])[] = [
  ["Joint", JOINT],
  ["Crew and shift", SHOP],
  ["Lot", LOT],
  ["Calendar and money", CALENDAR],
];

/** What is typed for the what-ifs of the example, by the name of the row. */
export const WHAT_IFS: readonly Readonly<Record<string, string | number>>[] = [
  { scenario: "Six heads", shop_heads: 6 },
  { scenario: "Less load", load: 120 },
  {},
];
