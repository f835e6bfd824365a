/** What each scenario comes to: joints a shift, the lot, the calendar, labor, and what that was made from. */

import { COUNT, SPEED, TIME } from "../../../src/quantity";
import { call } from "../call";
import { scheduled, ScheduleTable } from "../schedule-table";
import { calendarDays, shiftsFor } from "./calendar";
import { crewOf, output } from "./crew";
import { DATE_FORMAT } from "./inputs";
import type { Result, Scenario } from "./scenarios";
import { AS_IT_IS, isOn, made, of, used } from "./scenarios";

/** A what-if of which nothing is typed has the schedule of the shop as it is, which no result of it then reads. */
export function scheduleOf(scenario: Scenario): ScheduleTable {
  const welded = (name: string): string =>
    scenario.end === ""
      ? used(scenario, name)
      : `IF(${isOn(scenario)},${used(scenario, name)},${used(AS_IT_IS, name)})`;
  return new ScheduleTable(
    {
      od: welded("od"),
      wall: welded("wall"),
      material: welded("material"),
      style: '"steady"',
      speed: welded("speed_typed"),
    },
    scenario.end,
  );
}

/** A value of the scenario's schedule. */
function ofSchedule(label: string): Result["content"] {
  return (scenario) => {
    const value = scheduled(label, scenario.end);
    return scenario.end === "" ? value : `IF(${isOn(scenario)},${value},"")`;
  };
}

export function workOf(scenario: Scenario): {
  readonly loadSeconds: string;
  readonly machineSeconds: string;
  readonly walkSeconds: string;
} {
  return {
    loadSeconds: of(scenario, "load_mean"),
    machineSeconds: of(scenario, "machine"),
    walkSeconds: used(scenario, "walk"),
  };
}

type Content = Result["content"];

function counted(label: string, name: string, content: Content, unit = "", format = "0"): Result {
  return { label, name, content, quantity: COUNT, unit, format };
}

/** A number less the first scenario's; the first has none. */
function difference(label: string, name: string, from: string, format: string): Result {
  const content: Content = (scenario) =>
    scenario.end === ""
      ? undefined
      : made([of(scenario, from), of(AS_IT_IS, from)], `${of(scenario, from)}-${of(AS_IT_IS, from)}`);
  return counted(label, name, content, "", `+${format};-${format};${format}`);
}

function typedNumbers(scenario: Scenario, names: string): string[] {
  return names.split(" ").map((name) => used(scenario, name));
}

/** The last working day, where a first one is typed. */
function finish(label: string, name: string, days: string): Result {
  return counted(
    label,
    name,
    (scenario) => {
      const [start, last] = [used(scenario, "start_date"), of(scenario, days)];
      return made([start, last], `${start}+${last}-1`);
    },
    "date",
    DATE_FORMAT,
  );
}

export const OUTPUT: readonly Result[] = [
  counted("Joints a shift, steady", "shift_steady", (s) => output(s, crewOf(s), "steady"), "", "0.0"),
  difference("Difference to the first", "more_steady", "shift_steady", "0.0"),
  counted("Joints a shift, random", "shift_random", (s) => output(s, crewOf(s), "random"), "", "0.0"),
  difference("Difference to the first", "more_random", "shift_random", "0.0"),
];

export const LOT: readonly Result[] = [
  counted("Shifts for the lot, steady", "shifts", (s) => shiftsFor(s, of(s, "shift_steady"))),
  counted("Shifts for the lot, random", "shifts_random", (s) => shiftsFor(s, of(s, "shift_random"))),
  counted("Calendar days, steady", "days", (s) => calendarDays(s, of(s, "shifts"))),
  counted("Calendar days, random", "days_random", (s) => calendarDays(s, of(s, "shifts_random"))),
  finish("Finish, steady", "finish", "days"),
  finish("Finish, random", "finish_random", "days_random"),
  counted("Days to spare, random", "spare", (s) => {
    const [by, last] = [used(s, "finish_by"), of(s, "finish_random")];
    return made([by, last], `${by}-${last}`);
  }),
  counted(
    "Labor per joint, steady",
    "labor",
    (s) => made([of(s, "labor_lot"), used(s, "joints")], `${of(s, "labor_lot")}/${used(s, "joints")}`),
    "h",
    "0.000",
  ),
  counted(
    "Labor for the lot, steady",
    "labor_lot",
    (s) => {
      const [operators, hours, minutes] = ["operators", "hours", "changeover_minutes"].map((name) =>
        used(s, name),
      );
      const [starts, shift, changes, net] = ["starts", "shift_steady", "changeovers", "net_hours"].map(
        (name) => of(s, name),
      );
      return made(
        [operators, hours, minutes, starts, shift, changes, net].map(String),
        `${String(hours)}*(${String(operators)}*${String(starts)}/${String(shift)}+${String(changes)}*${String(minutes)}/60/${String(net)})`,
      );
    },
    "h",
    "0.0",
  ),
  counted(
    "Labor cost per joint",
    "labor_cost",
    (s) => made([of(s, "labor"), used(s, "rate")], `${of(s, "labor")}*${used(s, "rate")}`),
    "money",
    "0.00",
  ),
  difference("Difference to the first", "more_cost", "labor_cost", "0.00"),
];

export const DETAILS: readonly Result[] = [
  counted("Heads one operator keeps busy", "heads_busy", (s) =>
    made([of(s, "load_mean"), of(s, "machine"), used(s, "walk")], call("CREW_HEADS", workOf(s))),
  ),
  {
    label: "Travel speed",
    name: "speed",
    labelFormula: '=IF(TRIM({speed_typed}&"")="","Travel speed, suggested","Travel speed, typed")',
    quantity: SPEED,
    content: ofSchedule("Travel speed"),
  },
  {
    label: "Arc time",
    name: "arc_time",
    quantity: TIME,
    content: ofSchedule("Arc time"),
  },
  {
    label: "Machine time per joint",
    name: "machine",
    quantity: TIME,
    content: (s) => {
      const parts = [of(s, "arc_time"), ...typedNumbers(s, "purge prepurge postpurge")];
      return made(parts, parts.join("+"));
    },
  },
  {
    label: "Load, mean of the lot",
    name: "load_mean",
    quantity: TIME,
    content: (s) => {
      const [load, rate, starts] = [used(s, "load"), used(s, "learn_rate"), of(s, "starts")];
      const learned = `${call("LEARN_TOTAL", { first: load, from: 1, to: starts, rate, model: used(s, "learn_model") })}/${starts}`;
      return made([load, starts], `IF(ISNUMBER(${rate}),${learned},${load})`);
    },
  },
  {
    label: "Learning of the load",
    name: "learning",
    isText: true,
    content: (s) => {
      const rate = used(s, "learn_rate");
      return `IF(ISNUMBER(${of(s, "load_mean")}),IF(ISNUMBER(${rate}),TEXT(${rate},"0%")&" "&${used(s, "learn_model")},"none"),"")`;
    },
  },
  counted(
    "Net hours",
    "net_hours",
    (s) => {
      const parts = typedNumbers(s, "hours changes change_minutes coupons coupon_minutes");
      const [hours, changes, change, coupons, coupon] = parts.map(String);
      return made(
        parts,
        `${String(hours)}-(${String(changes)}*${String(change)}+${String(coupons)}*${String(coupon)})/60`,
      );
    },
    "h",
    "0.00",
  ),
  counted("Joints to start", "starts", (s) => {
    const [joints, rejected] = [used(s, "joints"), used(s, "reject_rate")];
    return made([joints, rejected], `ROUNDUP(ROUND(${joints}/(1-${rejected}),9),0)`);
  }),
  counted("Changeovers of the lot", "changeovers", (s) => {
    const typed = used(s, "changeovers_typed");
    const listed = `IF(${used(s, "list_order")}="grouped",{setups_grouped},{setups_listed})`;
    return made([used(s, "joints")], `IF(ISNUMBER(${typed}),${typed},IF(ISNUMBER(${listed}),${listed},""))`);
  }),
];
