/** What a planner types. The job is invented and says so. */

import { DESIGNATIONS } from "../../../src/metal/material";
import { COUNT, LENGTH, SHARE, SPEED, TIME } from "../../../src/quantity";
import type { Row } from "../layout";

export const JOB: Row[] = [
  { label: "Job", name: "job", content: "Invented: Fennel Island creamery", look: "inputText" },
];
export const PAPERS: Row[] = [
  { label: "Shop, shift", name: "shop", content: "Invented shop, day shift", look: "inputText" },
];

function count(label: string, name: string, content: number, unit: string, format = "0"): Row {
  return { label, name, content, look: "input", quantity: COUNT, unit, format };
}

export const JOINT: Row[] = [
  { label: "Outside diameter", name: "od", content: { US: 1, SI: 25.4 }, look: "input", quantity: LENGTH },
  { label: "Wall", name: "wall", content: { US: 0.065, SI: 1.65 }, look: "input", quantity: LENGTH },
  {
    label: "Material",
    name: "material",
    content: "316L",
    look: "inputText",
    unit: "",
    allowed: DESIGNATIONS,
  },
  {
    label: "Travel speed (blank: suggested)",
    name: "speed_typed",
    content: "",
    look: "input",
    quantity: SPEED,
  },
  { label: "Purge of the bore before the arc", name: "purge", content: 120, look: "input", quantity: TIME },
  { label: "Prepurge", name: "prepurge", content: 30, look: "input", quantity: TIME },
  { label: "Postpurge", name: "postpurge", content: 15, look: "input", quantity: TIME },
  { label: "Unload, load, start", name: "load", content: 180, look: "input", quantity: TIME },
  { label: "Walk to the next head", name: "walk", content: 15, look: "input", quantity: TIME },
];

export const SHOP: Row[] = [
  count("Joints to make", "joints", 600, ""),
  count("Operators", "operators", 2, ""),
  count("Heads per operator", "heads", 2, ""),
  count("Hours of a shift", "hours", 8, "h", "0.0"),
  {
    label: "Availability, share of the shift",
    name: "availability",
    content: 0.85,
    look: "input",
    quantity: SHARE,
  },
  count("Electrode changes a shift", "changes", 6, ""),
  count("Minutes for each change", "change_minutes", 5, "min"),
  count("Test coupons a shift", "coupons", 2, ""),
  count("Minutes for each coupon", "coupon_minutes", 10, "min"),
];

export const CALENDAR: Row[] = [count("Shifts a day", "shifts_a_day", 1, "")];
export const RATE: Row[] = [
  count("Working days a week", "days_a_week", 5, ""),
  count("Labour, an hour", "rate", 48, "money", "0.00"),
];
