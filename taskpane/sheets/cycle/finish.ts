/** How many heads finish by when: every scenario with every number of heads, so that nobody has to try. */

import type { Layout } from "../layout";
import { address } from "../layout";
import { calendarDays, shiftsFor } from "./calendar";
import type { Pattern } from "./crew";
import { crewOf, output } from "./crew";
import type { Scenario } from "./scenarios";
import { headOf, isOn, LEFT, made, RIGHT, SCENARIOS, used } from "./scenarios";

const HEADS = [1, 2, 3, 4, 5, 6, 7, 8, 10, 12];
const PATTERNS: readonly Pattern[] = ["steady", "random"];
/** Where the joints of the first scenario stand, at steady times and beside them at random ones. */
const JOINTS: Readonly<Record<Pattern, number>> = { steady: RIGHT + 1, random: RIGHT + 5 };
/** Behind the page, a column of the shifts for each scenario and pattern, then one of the days. */
const BEHIND = { shifts: 1, days: 1 + 2 * SCENARIOS.length } as const;

type Behind = keyof typeof BEHIND;

function behindName(what: Behind, pattern: Pattern, { end }: Scenario): string {
  return `finish_${what}_${pattern}${end}`;
}

function joints(pattern: Pattern, { end }: Scenario): string {
  return `finish_joints_${pattern}${end}`;
}

/** Heads down; for each scenario the calendar days, steady to random, and whether that is in time; joints a shift. */
export function finishTable(form: Layout): void {
  form.section("How many heads finish by when, scenario by scenario");
  form.cell(LEFT, "calendar days, steady–random", "heading", { columns: RIGHT });
  form.cell(RIGHT, "joints a shift", "heading");
  form.cell(JOINTS.steady, "at steady times", "heading", { columns: SCENARIOS.length });
  form.cell(JOINTS.random, "at random times", "heading", { columns: SCENARIOS.length });
  form.nextLine();
  for (const column of [LEFT, RIGHT]) form.cell(column, "heads in the shop", "columnHead");
  for (const first of [LEFT + 1, JOINTS.steady, JOINTS.random]) {
    form.across(
      first,
      SCENARIOS.map((scenario) => `=${headOf(scenario)}`),
      "columnHead",
    );
  }
  form.nextLine();
  const top = form.nextRow;
  form.name("finish_heads", LEFT);
  HEADS.forEach((count, i) => {
    const row = form.nextRow;
    form.cell(LEFT, count, "result", { format: "0" });
    form.cell(RIGHT, `=${address(LEFT, row)}`, "result", { format: "0" });
    for (const scenario of SCENARIOS) {
      form.cell(LEFT + 1 + scenario.place, `=${finishOf(scenario, i + 1)}`, "result");
      const crew = { ...crewOf(scenario), heads: `$${address(LEFT, row)}` };
      for (const pattern of PATTERNS) {
        const made = output(scenario, crew, pattern);
        form.cell(JOINTS[pattern] + scenario.place, `=IF(${isOn(scenario)},${made},"")`, "result", {
          format: "0.0",
        });
      }
    }
    form.nextLine();
  });
  const last = form.nextRow - 1;
  form.guardBlock("Heads and finish", "finish_rows", [LEFT + 1, top], [JOINTS.random + 3, last]);
  for (const scenario of SCENARIOS) {
    for (const pattern of PATTERNS) {
      const column = JOINTS[pattern] + scenario.place;
      form.rangeOf(joints(pattern, scenario), column, top, column, last);
    }
  }
  form.cell(
    LEFT,
    "✓ in time at random times too, ~ at steady times only, ▲ at neither; no sign without dates",
    "note",
    { columns: RIGHT + SCENARIOS.length },
  );
  form.nextLine();
}

/** Days as one reads them: 3–4 ✓. */
function finishOf(scenario: Scenario, row: number): string {
  const [steady, random] = PATTERNS.map(
    (pattern) => `INDEX({${behindName("days", pattern, scenario)}},${String(row)},1)`,
  );
  const [start, by] = [used(scenario, "start_date"), used(scenario, "finish_by")];
  const last = (days: string | undefined): string => `${start}+${String(days)}-1<=${by}`;
  const sign = `IF(COUNT(${start},${by})<2,"",IF(${last(random)}," ✓",IF(${last(steady)}," ~"," ▲")))`;
  const days = `${String(steady)}&IF(${String(steady)}=${String(random)},"","–"&${String(random)})`;
  return made([String(steady), String(random)], `${days}&${sign}`);
}

/** Behind the page: shifts and calendar days for the lot by heads. */
export function finishShifts(form: Layout): void {
  form.cell(0, "Shifts and days by heads", "heading");
  form.nextLine();
  const top = form.nextRow;
  HEADS.forEach((count, i) => {
    form.cell(0, `${String(count)} heads`, "label");
    for (const scenario of SCENARIOS) {
      PATTERNS.forEach((pattern, p) => {
        const column = 2 * scenario.place + p;
        const made = `INDEX({${joints(pattern, scenario)}},${String(i + 1)},1)`;
        const shifts = address(BEHIND.shifts + column, form.nextRow);
        form.cell(BEHIND.shifts + column, `=${shiftsFor(scenario, made)}`, "note");
        form.cell(BEHIND.days + column, `=${calendarDays(scenario, shifts)}`, "note");
      });
    }
    form.nextLine();
  });
  for (const scenario of SCENARIOS) {
    PATTERNS.forEach((pattern, p) => {
      for (const what of ["shifts", "days"] as const) {
        const column = BEHIND[what] + 2 * scenario.place + p;
        form.rangeOf(behindName(what, pattern, scenario), column, top, column, form.nextRow - 1);
      }
    });
  }
}

/** Whether a scenario that is filled in has all its numbers of joints. */
export function isFinishWhole(scenario: Scenario): string {
  const blocks = PATTERNS.map((pattern) => `{${joints(pattern, scenario)}}`);
  return `COUNT(${blocks.join(",")})=${String(PATTERNS.length * HEADS.length)}`;
}
