/** What the checks of the cycle plan look for, scenario by scenario. */

import { refusal } from "../call";
import type { Check } from "../frame";
import { firstOf, spilledOver, unless } from "../frame";
import { quote } from "../guards";
import type { Layout } from "../layout";
import { address } from "../layout";
import { oddTube } from "../tube";
import { scheduleOf, workOf } from "./results";
import { isFinishWhole } from "./finish";
import type { Scenario } from "./scenarios";
import { isOn, of, SCENARIOS, used } from "./scenarios";

type Problem = (scenario: Scenario) => string;

interface Question {
  readonly label: string;
  readonly name: string;
  /** Each gives a sentence, or "" where nothing is wrong. */
  readonly problems: readonly Problem[];
  /** What is asked once, for all scenarios. */
  readonly once?: readonly string[];
  readonly rows?: number;
}

const WHOLE =
  "joints operators shop_heads shifts_a_day days_a_week changes coupons changeovers_typed start_date finish_by";
/** All that a scenario must come to. */
const NEEDED =
  "shift_steady shift_random shifts shifts_random days days_random labor labor_lot labor_cost starts changeovers load_mean";

const isThere = (scenario: Scenario, names: string): string =>
  `COUNT(${names
    .split(" ")
    .map((name) => of(scenario, name))
    .join(",")})=${String(names.split(" ").length)}`;

/** Asked only while there is a cycle. */
const whereWelded = (problem: string): string => `IF(ISNUMBER({machine}),${problem},"")`;

const QUESTIONS: readonly Question[] = [
  {
    label: "Tube and schedule",
    name: "tube",
    rows: 2,
    problems: [
      (s) => oddTube(used(s, "od"), used(s, "wall")),
      (s) => firstOf(scheduleOf(s).refusal, scheduleOf(s).blocked),
    ],
    // A what-if of which nothing is typed keeps its schedule ready, and what blocks it is told as well.
    once: SCENARIOS.filter(({ end }) => end !== "").map(
      (s) => `IF(ISNUMBER({machine}),IF(${isOn(s)},"",${scheduleOf(s).blocked}),"")`,
    ),
  },
  {
    label: "Whole numbers",
    name: "whole",
    problems: [
      (s) =>
        unless(
          `AND(${WHOLE.split(" ")
            .map((name) => `IF(ISNUMBER(${used(s, name)}),INT(${used(s, name)})=${used(s, name)},TRUE)`)
            .join(",")})`,
          "joints, operators, heads, shifts, days, changes, coupons and dates are whole numbers",
        ),
    ],
  },
  {
    label: "Hours",
    name: "hours",
    problems: [
      (s) => unless(`ISNUMBER(${of(s, "net_hours")})`, "no hours to work with"),
      (s) =>
        `IF(ISNUMBER(${of(s, "net_hours")}),${unless(`${of(s, "net_hours")}>0`, "changes and coupons take the whole shift")},"")`,
      (s) =>
        `IF(COUNT(${used(s, "hours")},${used(s, "shifts_a_day")})<2,"",${unless(`${used(s, "hours")}*${used(s, "shifts_a_day")}<=24`, "the shifts of a day are longer than the day")})`,
    ],
  },
  {
    label: "Crew",
    name: "crew",
    rows: 2,
    problems: [
      (s) => `IF(ISNUMBER(${of(s, "machine")}),${refusal("CREW_HEADS", workOf(s))},"no machine time")`,
      (s) =>
        `IF(COUNT(${of(s, "machine")},${of(s, "net_hours")},${used(s, "shop_heads")})<3,"",${refusal(
          "CREW_OUTPUT",
          {
            heads: used(s, "shop_heads"),
            ...workOf(s),
            hours: `MAX(0.001,${of(s, "net_hours")})`,
            availability: used(s, "availability"),
            operators: used(s, "operators"),
          },
        )})`,
      (s) =>
        `IF(ISNUMBER(${of(s, "machine")}),${unless(isThere(s, NEEDED), "a result of the plan is missing")},"")`,
    ],
    once: [
      ...SCENARIOS.map((s) =>
        whereWelded(
          `IF(${isOn(s)},${unless(isFinishWhole(s), "the table of heads is missing a number")},"")`,
        ),
      ),
      whereWelded(unless("COUNT({phases_last})=7", spilledOver("the phases of a cycle"))),
      whereWelded(unless("NOT(ISERROR({course}))", spilledOver("the first hour"))),
    ],
  },
  {
    label: "Joint list",
    name: "list",
    problems: [],
    once: [
      refusal("SETUP_COUNT", { joints: "{joint_list}" }),
      unless("COUNT({setups_listed},{setups_grouped})=2", spilledOver("the changes of the joint list")),
    ],
  },
  {
    label: "Calendar",
    name: "calendar",
    problems: [
      (s) =>
        `IF(AND(ISNUMBER(${used(s, "finish_by")}),NOT(ISNUMBER(${used(s, "start_date")}))),"a finish is wanted, but no start is typed","")`,
      (s) =>
        `IF(ISNUMBER(${of(s, "spare")}),${unless(`${of(s, "spare")}>=0`, `=IF(${of(s, "finish")}<=${used(s, "finish_by")},"in time only at steady times","too late")`)},"")`,
    ],
  },
];

export const CHECKS: readonly Check[] = QUESTIONS.map(({ label, name, rows }) => ({
  label,
  name: `check_${name}`,
  // A file keeps a blank answer as a space, which a program without the add-in would join.
  problem: `IF(SUMPRODUCT(LEN(SUBSTITUTE({found_${name}},"\u00a0","")))=0,"",TEXTJOIN("; ",TRUE,{found_${name}}))`,
  ...(rows === undefined ? {} : { rows }),
}));

/** Said of a scenario whose cells cannot be judged. */
const CANNOT = quote("cannot be judged: fix the checks above first");

/** Behind the page: each problem of each scenario in a cell of its own. */
export function problemCells(form: Layout): void {
  form.cell(0, "Checks, scenario by scenario", "heading");
  form.nextLine();
  for (const { label, name, problems, once = [] } of QUESTIONS) {
    const top = form.nextRow;
    for (const problem of problems) {
      form.cell(0, label, "label");
      const first = address(1, form.nextRow);
      for (const scenario of SCENARIOS) {
        form.cell(1 + scenario.place, problemOf(scenario, problem(scenario), first), "note");
      }
      form.nextLine();
    }
    for (const problem of once) {
      form.cell(0, label, "label");
      form.cell(1, `=IFERROR(${problem},${CANNOT})`, "note");
      form.nextLine();
    }
    form.rangeOf(`found_${name}`, 1, top, SCENARIOS.length, form.nextRow - 1);
  }
}

/**
 * A what-if says that it is one, and nothing that is wrong with the first just so. `first`: the cell of that one's sentence.
 * Each sentence is made by one call, not by one to compare and one to show, and none has a bar in it.
 */
function problemOf(scenario: Scenario, problem: string, first: string): string {
  const said = `IFERROR(${problem},${CANNOT})`;
  if (scenario.end === "") return `=${said}`;
  const called = `"|${scenario.called}: "&`;
  const own = `SUBSTITUTE(SUBSTITUTE(${called}${said}&"|",${called}"|",""),${called}${first}&"|","")`;
  return `=IF(${isOn(scenario)},SUBSTITUTE(${own},"|",""),"")`;
}
