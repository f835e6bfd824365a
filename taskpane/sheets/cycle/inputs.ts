/** What a planner types. The job is invented and says so. */

import { SHARE, SPEED, TIME } from "../../../src/quantity";
import type { Row } from "../layout";
import { TUBE } from "../tube";
import { counted, optional, seconds, typed, words } from "../typed";

export const JOB: Row[] = [words("Job", "job", "Invented: Fennel Island creamery")];
export const PAPERS: Row[] = [words("Shop, shift", "shop", "Invented shop, day shift")];

export const JOINT: Row[] = [
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

export const SHOP: Row[] = [
  counted("Joints to make", "joints", 600, "", [1, 36_000]),
  counted("Operators", "operators", 2, "", [1, 100]),
  counted("Heads per operator", "heads", 2, "", [1, 20]),
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

export const CALENDAR: Row[] = [counted("Shifts a day", "shifts_a_day", 1, "", [1, 3])];
export const RATE: Row[] = [
  counted("Working days a week", "days_a_week", 5, "", [1, 7]),
  counted("Labor, an hour", "rate", 48, "money", [1, 1000], { format: "0.00" }),
];
