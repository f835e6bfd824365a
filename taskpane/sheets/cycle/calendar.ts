/** From joints a shift to shifts and calendar days. Weeks begin on Monday; days off follow their last working day. */

import type { Layout } from "../layout";
import type { Scenario } from "./scenarios";
import { made, of, SCENARIOS, used } from "./scenarios";

/**
 * Whole shifts for the joints to start and the changeovers of the lot. During a changeover one operator's heads stand while
 * the others go on.
 */
export function shiftsFor(scenario: Scenario, joints: string): string {
  const [starts, changes, net] = ["starts", "changeovers", "net_hours"].map((name) => of(scenario, name));
  const [minutes, operators] = ["changeover_minutes", "operators"].map((name) => used(scenario, name));
  const lost = `${String(changes)}*${String(minutes)}/60/(${String(operators)}*${String(net)})`;
  const parts = [starts, changes, net, minutes, operators].map(String);
  return made([joints, ...parts], `ROUNDUP(ROUND(${String(starts)}/${joints}+${lost},9),0)`);
}

/** Calendar days from the first working day to the last, both counted; a start on a day off waits for Monday. */
export function calendarDays(scenario: Scenario, shifts: string): string {
  const [daily, weekly] = [used(scenario, "shifts_a_day"), used(scenario, "days_a_week")];
  const passed = `MIN(${weekly},{weekday${scenario.end}})+ROUNDUP(${shifts}/${daily},0)-1`;
  return made(
    [shifts, daily, weekly],
    `INT((${passed})/${weekly})*7+MOD(${passed},${weekly})+1-{weekday${scenario.end}}`,
  );
}

/** Behind the page: on which day of the week each scenario starts, Monday 0. Day 2 of a spreadsheet was a Monday. */
export function weekdays(form: Layout): void {
  form.cell(0, "Day of the week of the start", "label");
  for (const scenario of SCENARIOS) {
    const start = used(scenario, "start_date");
    form.cell(1 + scenario.place, `=IF(ISNUMBER(${start}),MOD(INT(${start})-2,7),0)`, "note");
    form.rangeOf(
      `weekday${scenario.end}`,
      1 + scenario.place,
      form.nextRow,
      1 + scenario.place,
      form.nextRow,
    );
  }
  form.nextLine();
}
