/** What the cycle plan computes for the crew as typed, and what its checks look for. */

import type { Quantity } from "../../../src/quantity";
import { ANGLE, COUNT, LENGTH, SPEED, TIME } from "../../../src/quantity";
import { call, refusal } from "../call";
import type { Check } from "../frame";
import { firstOf, spilledOver, unless } from "../frame";
import type { Row } from "../layout";
import { from } from "../native";
import { scheduled, ScheduleTable } from "../schedule-table";
import { ODD_TUBE } from "../tube";

export const SCHEDULE = new ScheduleTable({
  od: "{od}",
  wall: "{wall}",
  material: "{material?}",
  style: '"steady"',
  speed: "{speed_typed?}",
});

function computed(label: string, name: string, content: string, unit: string, format: string): Row {
  return { label, name, content: `=${content}`, look: "result", quantity: COUNT, unit, format };
}

function ofSchedule(label: string, name: string, row: string, quantity: Quantity, format?: string): Row {
  return {
    label,
    name,
    content: `=${scheduled(row)}`,
    look: "result",
    quantity,
    ...(format === undefined ? {} : { format }),
  };
}

const WORK = { loadSeconds: "{load?}", machineSeconds: "{machine}", walkSeconds: "{walk?}" } as const;

/** What a crew turns out in a shift, steady or random; the stops come off the hours first. */
export function output(heads: string, load: string, pattern: "steady" | "random"): string {
  const joints = call("CREW_OUTPUT", {
    heads,
    ...WORK,
    loadSeconds: load,
    hours: "{net_hours}",
    availability: "{availability?}",
    pattern: `"${pattern}"`,
  });
  // Without hours the formula would take those of a common shift.
  return `IF(ISNUMBER({net_hours}),${joints},"")`;
}

export const WELD: Row[] = [
  ofSchedule("Bead width, fused", "bead", "Bead width", LENGTH),
  {
    ...ofSchedule("Travel speed", "speed", "Travel speed", SPEED),
    labelFormula: '=IF(TRIM({speed_typed}&"")="","Travel speed, suggested","Travel speed, typed")',
  },
  ofSchedule("Overlap, covers the bead", "overlap", "Overlap", ANGLE, "0"),
  ofSchedule("Start dwell, heat flow", "dwell", "Start dwell", TIME),
  ofSchedule("Downslope, three bead widths", "downslope", "Downslope", TIME),
  ofSchedule("Arc time", "arc_time", "Arc time", TIME),
  {
    label: "Machine time per joint",
    name: "machine",
    content: `=${from(["arc_time"], ["purge", "prepurge", "postpurge"], "{purge}+{prepurge}+{arc_time}+{postpurge}")}`,
    look: "result",
    quantity: TIME,
  },
  computed(
    "Net hours",
    "net_hours",
    from(
      [],
      ["hours", "changes", "change_minutes", "coupons", "coupon_minutes"],
      "{hours}-({changes}*{change_minutes}+{coupons}*{coupon_minutes})/60",
    ),
    "h",
    "0.00",
  ),
];

/** Half a minute off the load: what an operator could be helped by. */
const LESS_LOAD = 30;
/** Under this gain neither a head nor the operator is worth pointing at. */
const WORTH = 0.05;

export const CREW: Row[] = [
  computed("Heads one operator keeps busy", "heads_busy", call("CREW_HEADS", WORK), "", "0"),
  computed("Joints a shift of one operator", "one_steady", output("{heads?}", "{load}", "steady"), "", "0.0"),
  computed(
    "Gained by one more head",
    "gain_head",
    from(["one_steady"], [], `${output("{heads}+1", "{load}", "steady")}-{one_steady}`),
    "",
    "0.0",
  ),
  computed(
    `Gained by ${String(LESS_LOAD)} s less load`,
    "gain_load",
    from(
      ["one_steady"],
      [],
      `${output("{heads?}", `MAX(1,{load}-${String(LESS_LOAD)})`, "steady")}-{one_steady}`,
    ),
    "",
    "0.0",
  ),
  {
    label: "Bottleneck",
    name: "bottleneck",
    content: `=IF(COUNT({gain_head},{gain_load})<2,"no cycle to judge",IF(MAX({gain_head},{gain_load})<${String(WORTH)}*{one_steady},"Balanced",IF({gain_head}>={gain_load},"The heads","The operator")))`,
    look: "text",
  },
  computed(
    "Joints a shift, steady",
    "shift_steady",
    from(["one_steady"], ["operators"], "{operators}*{one_steady}"),
    "",
    "0.0",
  ),
  computed(
    "Joints a shift, random",
    "shift_random",
    from([], ["operators"], `{operators}*${output("{heads?}", "{load}", "random")}`),
    "",
    "0.0",
  ),
  computed(
    "Shifts for the lot, steady",
    "shifts",
    from(["shift_steady"], ["joints"], "ROUNDUP(ROUND({joints}/{shift_steady},9),0)"),
    "",
    "0",
  ),
  computed(
    "Shifts for the lot, random",
    "shifts_random",
    from(["shift_random"], ["joints"], "ROUNDUP(ROUND({joints}/{shift_random},9),0)"),
    "",
    "0",
  ),
  computed(
    "Calendar days, steady",
    "days",
    from(
      ["shifts"],
      ["shifts_a_day", "days_a_week"],
      "INT((ROUNDUP({shifts}/{shifts_a_day},0)-1)/{days_a_week})*7+MOD(ROUNDUP({shifts}/{shifts_a_day},0)-1,{days_a_week})+1",
    ),
    "",
    "0",
  ),
  computed(
    "Labor per joint, steady",
    "labor",
    from(["shift_steady"], ["operators", "hours"], "{operators}*{hours}/{shift_steady}"),
    "h",
    "0.000",
  ),
  computed(
    "Labor for the lot, steady",
    "labor_lot",
    from(["labor"], ["joints"], "{labor}*{joints}"),
    "h",
    "0.0",
  ),
  computed(
    "Labor cost per joint",
    "labor_cost",
    from(["labor"], ["rate"], "{labor}*{rate}"),
    "money",
    "0.00",
  ),
];

const WHOLE = ["joints", "operators", "heads", "shifts_a_day", "days_a_week", "changes", "coupons"];

export const CHECKS: readonly Check[] = [
  {
    label: "Tube and schedule",
    name: "check_tube",
    problem: firstOf(ODD_TUBE, SCHEDULE.refusal, SCHEDULE.blocked),
    rows: 2,
  },
  {
    label: "Whole numbers",
    name: "check_whole",
    problem: unless(
      `AND(${WHOLE.map((name) => `INT({${name}})={${name}}`).join(",")})`,
      "joints, operators, heads, shifts, days, changes and coupons are whole numbers",
    ),
  },
  {
    label: "Hours",
    name: "check_hours",
    problem: firstOf(
      unless("ISNUMBER({net_hours})", "no hours to work with"),
      unless("{net_hours}>0", "changes and coupons take the whole shift"),
      unless("{hours}*{shifts_a_day}<=24", "the shifts of a day are longer than the day"),
    ),
  },
  {
    label: "Crew",
    name: "check_crew",
    problem: firstOf(
      unless("ISNUMBER({machine})", "no machine time"),
      refusal("CREW_HEADS", WORK),
      refusal("CREW_OUTPUT", {
        heads: "{heads?}",
        ...WORK,
        hours: "{net_hours}",
        availability: "{availability?}",
      }),
      unless(
        "COUNT({one_steady},{shift_steady},{shift_random},{shifts},{shifts_random},{days},{labor},{labor_lot},{labor_cost})=9",
        "a result of the plan is missing",
      ),
      unless(
        "COUNT({outputs_rows})+COUNT({two_way_rows})=53",
        "a table of joints a shift is missing a number",
      ),
      unless("COUNT({phases_last})=7", spilledOver("the phases of a cycle")),
    ),
  },
];
