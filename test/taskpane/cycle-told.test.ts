/** What the cycle plan says of what cannot be, and which of its results do not stand then. */

import { cycle } from "../../taskpane/sheets/cycle";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

let sheet: OpenSheet;
beforeAll(async () => {
  sheet = await openSheet(cycle, "US");
});
afterEach(() => {
  expect(sheet.holds()).toBe(true);
});

/** What is typed, how it is told, and what does not stand. */
test.each<[Record<string, string>, RegExp, string]>([
  [{ operators: "0" }, /Operators: 0 is not between 1 and 100/, "shift_steady shifts days labor labor_lot"],
  [{ joints: "0" }, /Joints to make: 0 is not between 1 and/, "shifts shifts_random days labor_lot"],
  [
    { joints_b: "-600" },
    /Joints to make, what-if B: -600 is not between 1 and/,
    "shifts_b days_b labor_lot_b",
  ],
  [
    { hours: "80" },
    /Hours of a shift: 80 is not between 1 and 16 h/,
    "net_hours shift_steady shifts days labor",
  ],
  [{ days_a_week: "9" }, /Working days a week: 9 is not between 1 and 7/, "days"],
  [{ shifts_a_day: "4" }, /Shifts a day: 4 is not between 1 and 3/, "days"],
  [{ prepurge: "-30" }, /Prepurge: -30 is not 0, or between 1 and 600 s/, "machine shift_steady shifts days"],
  [{ prepurge: "0.0208333" }, /type seconds: the sheet turns 0:30 into a fraction of a day/, "machine days"],
  [{ changes: "-6" }, /Electrode changes a shift: -6 is not between 0 and 60/, "net_hours shifts days"],
  [{ rate: "-48" }, /Labor, an hour: -48 is not between 1 and 1000/, "labor_cost"],
  [
    { availability: "85" },
    /Availability, fraction of the shift: 85 is not between 0\.2 and 1/,
    "shifts days",
  ],
  [{ shop_heads: "2.5" }, /whole numbers/, ""],
  [{ joints: "10.5" }, /whole numbers/, ""],
  [{ heads_are: "rented" }, /“rented” is not one of the words/, ""],
  [{ hours: "13", shifts_a_day: "2" }, /the shifts of a day are longer than the day/, ""],
  [{ changes: "60", change_minutes: "8" }, /changes and coupons take the whole shift/, "shifts days labor"],
  [{ start_date: "January" }, /Start .*: “January” is text/, "finish"],
  [{ learn_rate: "80" }, /Learning rate of the load .*: 80 is not between 0\.6 and 1/, ""],
])("%j is told", (typed, sentence, empty) => {
  sheet.having(typed, () => {
    expect(sheet.value("summary")).toMatch(/^▲ /);
    expect(sheet.value("summary")).toMatch(sentence);
    for (const name of empty.split(" ").filter((one) => one !== "")) {
      expect([name, typeof sheet.value(name)]).toEqual([name, "string"]);
    }
  });
});
