/** Machine time, hours and gas of a whole list of joints. */

import type { Counted } from "../../src/planning/takeoff";
import { MOST_JOINTS, Takeoff, WALLS } from "../../src/planning/takeoff";
import { COMMON_TARGET_PPM } from "../../src/purge/purge";
import type { Count, Duration, Speed, Time, Units, Volume } from "../../src/quantity";
import {
  COUNT,
  DURATION,
  FLOW,
  LENGTH,
  OXYGEN,
  plainNumber,
  si,
  SPEED,
  TIME,
  unitOf,
  VOLUME,
} from "../../src/quantity";
import { Refusal } from "../../src/refusal";
import { number, orComputed, orDefault, toldInBoth } from "../argument";
import { FLOW_OF_PURGE, FLOW_OF_TORCH, OVERLAP_OR_NONE } from "../arguments";
import { family, formula } from "../formula";
import { columnOrWords, table, wordsColumn } from "../gives";
import { TRADE_ODS } from "../sense";
import { JOINTS, MOST_ROWS } from "./joints";

interface Row {
  readonly joints: Count | string;
  readonly speed: Speed | string;
  readonly machine: Time | string;
  readonly purge: Time | string;
  readonly time: Duration | string;
  readonly arcGas: Volume | string;
  readonly purgeGas: Volume | string;
  readonly gas: Volume | string;
  readonly remark: string;
}

const TAKEOFF_OF_JOINTS = formula({
  id: "TAKEOFF",
  meaning: "Machine time, hours and gas of a whole list of joints, one row per line, the totals last",
  args: {
    joints: JOINTS,
    handlingSeconds: orDefault(number("Unload, load and set up per joint", TIME), si(0, TIME)),
    torchFlow: orDefault(FLOW_OF_TORCH, si(0, FLOW)),
    purgeFlow: orDefault(FLOW_OF_PURGE, si(0, FLOW)),
    purgeSeconds: orComputed(
      number("Purge of the bore before the cycle", TIME),
      "PURGE_TIME of the damSpacing, or 0 without one",
    ),
    overlap: OVERLAP_OR_NONE,
    damSpacing: orComputed(number("Length of bore from dam to dam", LENGTH), "no purge time of its own"),
    ppm: orDefault(number("Oxygen to reach", OXYGEN), COMMON_TARGET_PPM),
    supplyPpm: orDefault(number("Oxygen in the purge gas", OXYGEN), si(0, OXYGEN)),
  },
  gives: table(
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
  tex: [
    String.raw`\text{machine} = 30\ \text{s} + \text{dwell} + \frac{\pi d}{v}\cdot\frac{360^\circ + \text{overlap}}{360^\circ} + \frac{3b}{v} + 15\ \text{s}`,
    String.raw`b = 1\ \text{mm} + 2\,h,\quad v = \text{TRAVEL\_SUGGEST}`,
    String.raw`\text{hours} = n\,(\text{machine} + \text{handling})`,
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
    tₚ: "purge before the cycle starts (purgeSeconds, or PURGE_TIME of the line's bore)",
  },
  validity: `As TRAVEL_SUGGEST and START_DWELL. Quantity a whole number, 1 to ${plainNumber(MOST_JOINTS)}; wall ${toldInBoth(WALLS[0], LENGTH)} to ${toldInBoth(WALLS[1], LENGTH)}, od to ${toldInBoth(TRADE_ODS.max, LENGTH)}; up to ${plainNumber(MOST_ROWS)} rows. A row is a header if its words are words of a header and none of its cells reads as a number or a size.`,
  assumptions:
    "One head working by itself: CREW_OUTPUT gives the output of several. The bore purge stays on through the cycle.",
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
  calc: ({ joints, handlingSeconds: handling, ...terms }, units) => {
    const sums = new Takeoff({ handling, ...terms });
    const listed = joints.map((row) => {
      if (row === "header") return headings(units);
      return row === "" ? withoutNumbers("") : rowOf(sums.add(row), units);
    });
    return [...listed, totals(sums)];
  },
});

function withoutNumbers(remark: string): Row {
  return {
    joints: "",
    speed: "",
    machine: "",
    purge: "",
    time: "",
    arcGas: "",
    purgeGas: "",
    gas: "",
    remark,
  };
}

/** Stands beside the header of the list, so that one formula fills its columns, headings and all. */
function headings(units: Units): Row {
  const volume = unitOf(VOLUME, units);
  return {
    joints: "joints",
    speed: `travel, ${unitOf(SPEED, units)}`,
    machine: "cycle, s",
    purge: "purge, s",
    time: "time, h",
    arcGas: `arc gas, ${volume}`,
    purgeGas: `purge gas, ${volume}`,
    gas: `gas, ${volume}`,
    remark: "remark",
  };
}

function rowOf(line: Counted | Refusal, units: Units): Row {
  if (line instanceof Refusal) return withoutNumbers(line.remark(units));
  const { quantity, speed, machine, purge, seconds, arcGas, purgeGas } = line;
  const gas = si(arcGas + purgeGas, VOLUME);
  return { joints: quantity, speed, machine, purge, time: seconds, arcGas, purgeGas, gas, remark: "" };
}

function totals({ joints, seconds, arcGas, purgeGas, counted, omitted }: Takeoff): Row {
  const lines = counted + omitted;
  const remark =
    lines === 0
      ? "no lines to count"
      : `${String(counted)} of ${String(lines)} line${lines === 1 ? "" : "s"} counted`;
  const gas = si(arcGas + purgeGas, VOLUME);
  return { ...withoutNumbers(remark), joints, time: seconds, arcGas, purgeGas, gas };
}

export const TAKEOFF = family("Takeoff", [TAKEOFF_OF_JOINTS]);
