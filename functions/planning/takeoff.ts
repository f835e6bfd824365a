/** Machine time, hours and gas of a whole list of joints. */

import { itemAt } from "../../src/numerics/item";
import type { Counted, Line } from "../../src/planning/takeoff";
import { MOST_JOINTS, Takeoff, WALLS } from "../../src/planning/takeoff";
import type { Units } from "../../src/quantity";
import {
  COUNT,
  DURATION,
  fromBase,
  LENGTH,
  plainNumber,
  SPEED,
  TIME,
  unitOf,
  VOLUME,
} from "../../src/quantity";
import { Refusal } from "../../src/refusal";
import type { Value } from "../answer";
import { toldInBoth } from "../argument";
import { family, formula } from "../formula";
import type { Gives } from "../gives";
import { columnOrWords, table, wordsColumn } from "../gives";
import type { List } from "../list";
import { TRADE_ODS } from "../sense";
import { MOST_ROWS } from "./joints";
import { LIST_ARGS, PURGE_ARGS } from "./list-args";
import { TAKEOFF_SIZES } from "./takeoff-sizes";

/** What has a row of its own: a line, why it is not counted, no line at all, or the sums at the end. */
type Row = Counted | Refusal | "" | "header" | Takeoff;

/** As a table of these columns, whose rows are written as they are counted: a list may have very many. */
const GIVEN: Gives<Iterable<Row>> = {
  ...table(
    {
      joints: columnOrWords("joints", COUNT),
      speed: columnOrWords("travel", SPEED),
      machine: columnOrWords("cycle", TIME),
      purge: columnOrWords("purge", TIME),
      time: columnOrWords("time", DURATION),
      arcGas: columnOrWords("arc gas", VOLUME),
      purgeGas: columnOrWords("purge gas", VOLUME),
      gas: columnOrWords("gas", VOLUME),
      remark: wordsColumn("remark"),
    },
    {
      more: "Joints counted; travel as suggested; cycle and purge of one joint; time and gas of the line. As many rows as joints has (of whole columns, down to the last that is filled), then the totals and how many lines are counted. A line that cannot be counted gives the reason in its remark and has no numbers; beside a header stand the headings, beside a blank line nothing.",
    },
  ),
  write: (rows, units) => {
    const written: Value[][] = [];
    for (const row of rows) written.push(cellsOf(row, units));
    return written;
  },
};

const TAKEOFF_OF_JOINTS = formula({
  id: "TAKEOFF",
  meaning: "Machine time, hours and gas of a whole list of joints, one row per line, the totals last",
  args: { ...LIST_ARGS, ...PURGE_ARGS },
  gives: GIVEN,
  tex: [
    String.raw`\text{machine} = 30\ \text{s} + \text{dwell} + \frac{\pi d}{v}\cdot\frac{360^\circ + \text{overlap}}{360^\circ} + \frac{3b}{v} + 15\ \text{s}`,
    String.raw`b = 1\ \text{mm} + 2\,h,\quad v = \text{TRAVEL\_SUGGEST}`,
    String.raw`\text{hours} = n\,(\text{machine} + \text{handling} + w\,t_p)`,
    String.raw`\text{arc gas} = n\,Q_t\cdot\text{machine},\quad \text{purge gas} = n\,Q_p\,(t_p + \text{machine})`,
  ],
  where: {
    machine: "time of one joint from prepurge to postpurge",
    dwell: "time of START_DWELL",
    d: "outside diameter (od)",
    v: "suggested travel",
    overlap: "degrees past the full turn",
    b: "fused width",
    h: "wall thickness (wall)",
    n: "joints of the line (quantity)",
    hours: "time of the line",
    handling: "unload, load and set up per joint (handlingSeconds)",
    Qₜ: "flow at the torch (torchFlow)",
    Qₚ: "flow into the bore (purgeFlow)",
    tₚ: "purge before the cycle starts: the larger of purgeAtLeast and the sweep (purgeSeconds, or PURGE_TIME of the line's bore)",
    w: "fraction of the purge that is waited for (purgeWaited)",
  },
  validity: `As TRAVEL_SUGGEST and START_DWELL. purgeWaited 0 to 1. Quantity a whole number, 1 to ${plainNumber(MOST_JOINTS)}; wall ${toldInBoth(WALLS[0], LENGTH)} to ${toldInBoth(WALLS[1], LENGTH)}, od to ${toldInBoth(TRADE_ODS.max, LENGTH)}; up to ${plainNumber(MOST_ROWS)} rows. Pipe is NPS 1-1/2 for od and sch 10S for wall, by ASME B36.19M and B36.10M. A row is a header if its words are words of a header and none of its cells reads as a number or a size.`,
  assumptions:
    "One head working by itself: CREW_OUTPUT gives the output of several. The bore purge stays on through the cycle; its time before the cycle costs gas, and hours as far as purgeWaited says.",
  source:
    "Sum over the joints; 30 s and 15 s of gas and a downslope of three bead widths are common practice",
  unconfirmed: "Suggested speed, dwell and bead width are estimates, as TRAVEL_SUGGEST and START_DWELL say",
  unchecked: "Sums over joints: the check is their arithmetic worked out by hand",
  related: ["CYCLE_TIME", "GAS_JOINT", "GAS_CYLINDER", "CREW_OUTPUT", "TRAVEL_SUGGEST"],
  synonyms: [
    "estimate",
    "joint list",
    "weld count",
    "man-hours",
    "bill of materials",
    "quantity survey",
    "estimating",
    "bid",
    "quote",
    "tender",
    "cost",
    "man hours",
    "spool list",
    "isometric",
    "take-off",
    "BOM",
  ],
  figure: "cycle",
  example: {
    args: [
      [
        ["joints", "od", "wall"],
        [120, 1, 0.065],
        [8, 2, 0.109],
      ],
      300,
    ],
    gives:
      '"joints", "travel, in/min", "cycle, s", "purge, s", "time, h", "arc gas, ft³", "purge gas, ft³", "gas, ft³", "remark"; 120, 5.138, …',
  },
  calc: ({ joints, handlingSeconds: handling, ...terms }) =>
    counted(joints, new Takeoff({ handling, ...terms })),
});

/** The rows one by one, none of which is kept here. */
function* counted({ rows, kindOf, lineOf }: List<Line>, sums: Takeoff): Generator<Row> {
  let row: readonly unknown[] = [];
  const read = (): Line => lineOf(row);
  for (let i = 0; i < rows.length; i += 1) {
    row = itemAt(rows, i);
    const kind = kindOf(row);
    yield kind === "line" ? sums.add(read) : kind;
  }
  yield sums;
}

function cellsOf(row: Row, units: Units): Value[] {
  if (row === "header") return headings(units);
  if (row === "") return withoutNumbers("");
  if (row instanceof Refusal) return withoutNumbers(row.remark(units));
  if (row instanceof Takeoff) return totals(row, units);
  const { quantity, speed, machine, purge, seconds, arcGas, purgeGas } = row;
  return [
    fromBase(quantity, COUNT, units),
    fromBase(speed, SPEED, units),
    fromBase(machine, TIME, units),
    fromBase(purge, TIME, units),
    fromBase(seconds, DURATION, units),
    fromBase(arcGas, VOLUME, units),
    fromBase(purgeGas, VOLUME, units),
    fromBase(arcGas + purgeGas, VOLUME, units),
    "",
  ];
}

function withoutNumbers(remark: string): Value[] {
  return ["", "", "", "", "", "", "", "", remark];
}

/** Stands beside the header of the list, so that one formula fills its columns, headings and all. */
function headings(units: Units): Value[] {
  const volume = unitOf(VOLUME, units);
  return [
    "joints",
    `travel, ${unitOf(SPEED, units)}`,
    "cycle, s",
    "purge, s",
    "time, h",
    `arc gas, ${volume}`,
    `purge gas, ${volume}`,
    `gas, ${volume}`,
    "remark",
  ];
}

function totals(
  { joints, seconds, arcGas, purgeGas, counted: told, omitted }: Takeoff,
  units: Units,
): Value[] {
  const lines = told + omitted;
  const remark =
    lines === 0
      ? "no lines to count"
      : `${String(told)} of ${String(lines)} line${lines === 1 ? "" : "s"} counted`;
  return [
    fromBase(joints, COUNT, units),
    "",
    "",
    "",
    fromBase(seconds, DURATION, units),
    fromBase(arcGas, VOLUME, units),
    fromBase(purgeGas, VOLUME, units),
    fromBase(arcGas + purgeGas, VOLUME, units),
    remark,
  ];
}

export const TAKEOFF = family("Takeoff", [TAKEOFF_OF_JOINTS, TAKEOFF_SIZES]);
