/** Machine time, hours and gas of a whole list of joints. */

import type { Counted } from "../../src/planning/takeoff";
import { LARGEST_OD, MOST_JOINTS, Takeoff, WALLS } from "../../src/planning/takeoff";
import type { Duration, Speed, Time, Units, Volume } from "../../src/quantity";
import { DURATION, FLOW, LENGTH, plainNumber, si, SPEED, TIME, VOLUME } from "../../src/quantity";
import { Refusal } from "../../src/refusal";
import { number, orDefault, toldInBoth } from "../argument";
import { FLOW_OF_PURGE, FLOW_OF_TORCH, OVERLAP_OR_NONE } from "../arguments";
import { family, formula } from "../formula";
import { columnOrBlank, table, wordsColumn } from "../gives";
import { JOINTS, MOST_ROWS } from "./joints";

interface Row {
  readonly speed: Speed | "";
  readonly machine: Time | "";
  readonly time: Duration | "";
  readonly gas: Volume | "";
  readonly remark: string;
}

const [THINNEST, THICKEST] = WALLS;

const TAKEOFF_OF_JOINTS = formula({
  id: "TAKEOFF",
  meaning: "Machine time, hours and gas of a whole list of joints, one row per line, the totals last",
  args: {
    joints: JOINTS,
    handlingSeconds: orDefault(number("Unload, load and set up per joint", TIME), si(0, TIME)),
    torchFlow: orDefault(FLOW_OF_TORCH, si(0, FLOW)),
    purgeFlow: orDefault(FLOW_OF_PURGE, si(0, FLOW)),
    purgeSeconds: orDefault(number("Purge of the bore before the cycle starts", TIME), si(0, TIME)),
    overlap: OVERLAP_OR_NONE,
  },
  gives: table(
    {
      speed: columnOrBlank("suggested speed", SPEED),
      machine: columnOrBlank("machine time per joint", TIME),
      time: columnOrBlank("time of the line", DURATION),
      gas: columnOrBlank("gas of the line", VOLUME),
      remark: wordsColumn("remark"),
    },
    {
      more: 'As many rows as joints has, then the totals: time, gas, and how many lines are omitted. A line that cannot be counted gives the reason in its remark and has no numbers; a header has the remark "header", a blank line none.',
    },
  ),
  tex: [
    String.raw`\text{machine} = 30\ \text{s} + \text{dwell} + \frac{\pi d}{v}\cdot\frac{360^\circ + \text{overlap}}{360^\circ} + \frac{3b}{v} + 15\ \text{s}`,
    String.raw`b = 1\ \text{mm} + 2\,h,\quad v = \text{TRAVEL\_SUGGEST}`,
    String.raw`\text{hours} = n\,(\text{machine} + \text{handling})`,
    String.raw`\text{gas} = n\,\bigl(Q_t\cdot\text{machine} + Q_p\,(t_p + \text{machine})\bigr)`,
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
    gas: "volume for the line",
    Qₜ: "flow at the torch (torchFlow)",
    Qₚ: "flow into the bore (purgeFlow)",
    tₚ: "purge before the cycle starts (purgeSeconds)",
  },
  validity: `As TRAVEL_SUGGEST and START_DWELL. Quantity a whole number, 1 to ${plainNumber(MOST_JOINTS)}; wall ${toldInBoth(THINNEST, LENGTH)} to ${toldInBoth(THICKEST, LENGTH)}, od to ${toldInBoth(LARGEST_OD, LENGTH)}; up to ${plainNumber(MOST_ROWS)} rows. The first row that is not blank is a header if it has no digit in quantity, od and wall.`,
  assumptions:
    "One head working by itself: CREW_OUTPUT gives the output of several. The bore purge stays on through the cycle.",
  source:
    "Sum over the joints; 30 s and 15 s of gas and a downslope of three bead widths are common practice",
  unconfirmed: "Suggested speed, dwell and bead width are estimates, as TRAVEL_SUGGEST and START_DWELL say",
  related: ["CYCLE_TIME", "GAS_JOINT", "GAS_CYLINDER", "CREW_OUTPUT", "TRAVEL_SUGGEST"],
  synonyms: ["estimate", "joint list", "weld count", "man-hours", "bill of materials", "quantity survey"],
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
    gives: '"", "", "", "", "header"; 5.138, …',
  },
  calc: ({ joints, handlingSeconds: handling, ...terms }, units) => {
    const sums = new Takeoff({ handling, ...terms });
    const listed = joints.map((row) =>
      typeof row === "string" ? withoutNumbers(row) : rowOf(sums.add(row), units),
    );
    return [...listed, totals(sums)];
  },
});

function withoutNumbers(remark: string): Row {
  return { speed: "", machine: "", time: "", gas: "", remark };
}

function rowOf(line: Counted | Refusal, units: Units): Row {
  if (line instanceof Refusal) return withoutNumbers(line.remark(units));
  const { speed, machine, seconds, gas } = line;
  return { speed, machine, time: seconds, gas, remark: "" };
}

function totals({ seconds, gas, counted, omitted }: Takeoff): Row {
  const all = counted > 0 ? "all lines counted" : "no lines to count";
  const remark = omitted > 0 ? `${String(omitted)} line${omitted === 1 ? "" : "s"} omitted` : all;
  return { speed: "", machine: "", time: seconds, gas, remark };
}

export const TAKEOFF = family("Takeoff", [TAKEOFF_OF_JOINTS]);
