/** A weld log, line by line. */

import type { LogLimits } from "../../src/inspection/log";
import { checkedLimits, judged } from "../../src/inspection/log";
import type { HeatInput, Units } from "../../src/quantity";
import {
  COUNT,
  HEAT_INPUT,
  LENGTH,
  OXYGEN,
  plainNumber,
  SHARE,
  SPEED,
  unitOf,
  VOLTAGE,
} from "../../src/quantity";
import type { Quantity, Of } from "../../src/quantity";
import type { Argument } from "../argument";
import { number, orComputed } from "../argument";
import { formula } from "../formula";
import { columnOrWords, table, wordsColumn } from "../gives";
import type { LogLine } from "./log-lines";
import { LOG, MOST_LINES } from "./log-lines";

/** What a line is called; a sign in front of it tells those apart that nothing else has to be read of. */
const STATUS = { fine: "✓ accept", problem: "▲ check", rejected: "× reject", open: "open" } as const;

interface Row {
  readonly status: string;
  readonly heat: HeatInput | string;
  readonly remark: string;
}

/** A limit that is not judged where it is omitted. */
function limit<Kind extends string>(what: string, of: Quantity<Kind>): Argument<Of<Kind> | undefined, true> {
  return orComputed(number(what, of), "not judged");
}

export const LOG_CHECK = formula({
  id: "LOG_CHECK",
  meaning: "A weld log judged line by line against limits",
  args: {
    log: LOG,
    ampsOff: limit("Fraction that amps may be off those set", SHARE),
    voltsLeast: limit("Minimum volts", VOLTAGE),
    voltsMost: limit("Maximum volts", VOLTAGE),
    travel: limit("Planned travel", SPEED),
    travelOff: limit("Fraction that travel may be off the planned one", SHARE),
    heatLeast: limit("Minimum heat input", HEAT_INPUT),
    heatMost: limit("Maximum heat input", HEAT_INPUT),
    ppm: limit("Maximum oxygen before the arc", OXYGEN),
    color: limit("Highest color sample", COUNT),
    concavity: limit("Maximum concavity", LENGTH),
    convexity: limit("Maximum convexity", LENGTH),
    misalignment: limit("Maximum misalignment", LENGTH),
  },
  gives: table(
    {
      status: wordsColumn("status"),
      heat: columnOrWords("heat input", HEAT_INPUT),
      remark: wordsColumn("remark"),
    },
    {
      more: "One row per line: ✓ accept, ▲ check with the reason, × reject, or open while it has no result",
    },
  ),
  tex: [String.raw`H = \frac{V\,I}{v}`],
  where: { H: "heat input", V: "volts", I: "amps", v: "travel" },
  validity: `Up to ${plainNumber(MOST_LINES)} rows, a header and blank ones among them; limits 0 or more. A line that is accepted needs every column; elsewhere blank cells are not judged. Comparisons alone: the limits are whatever is given, the inspector decides.`,
  source: "Arithmetic: comparisons; heat input as HEAT_INPUT with factor 1",
  unchecked: "Comparisons with limits that are given: the check is each limit tried, at it and beyond",
  related: ["ACCEPT_LIMITS", "COVER_HEAT", "HEAT_INPUT", "PURGE_TINT", "REJECT_RATE"],
  synonyms: [
    "weld log",
    "weld map",
    "traveler",
    "weld record",
    "inspection log",
    "inspection record",
    "acceptance",
    "joint record",
  ],
  example: {
    args: [
      [
        [60, 60.5, 9.1, 5, 20, 2, 0.003, 0, 0.005, "accept"],
        [60, 68, 9.1, 5, 20, 2, 0.003, 0, 0.005, "accept"],
      ],
      0.05,
    ],
    gives: '"✓ accept", 6.6066, ""; "▲ check", 7.4256, "amps: must be within 5 % of 60 A"',
  },
  calc: ({ log, ...given }, units) => {
    const limits = checkedLimits(given);
    return log.map((line) => {
      if (line === "") return { status: "", heat: "", remark: "" };
      return line === "header" ? headings(units) : rowOf(line, limits, units);
    });
  },
});

/** Stands beside the header of the log, so that one formula fills its columns, headings and all. */
function headings(units: Units): Row {
  return { status: "status", heat: `heat, ${unitOf(HEAT_INPUT, units)}`, remark: "remark" };
}

function rowOf({ measured, result, unread, blank }: LogLine, limits: LogLimits, units: Units): Row {
  const { heat, problems } = judged(measured, limits);
  const missing = result === "accept" ? blank.map((name) => `${name}: is blank`) : [];
  const wrong = [...unread, ...problems].map((problem) => problem.remark(units)).concat(missing);
  return { status: statusOf(result, wrong.length > 0), heat: heat ?? "", remark: wrong.join("; ") };
}

function statusOf(result: LogLine["result"], isWrong: boolean): string {
  if (result === "reject") return STATUS.rejected;
  if (isWrong) return STATUS.problem;
  return result === "accept" ? STATUS.fine : STATUS.open;
}
