/** What a weld log computes beside its lines, and what its checks look for. */

import type { Quantity } from "../../../src/quantity";
import { COUNT, LENGTH, SHARE } from "../../../src/quantity";
import { call, refusal } from "../call";
import type { Check } from "../frame";
import { firstOf, spilledOver, unless } from "../frame";
import type { Row } from "../layout";
import { from } from "../native";
import { qualified } from "../qualification";
import { ODD_TUBE } from "../tube";

const ACCEPT = { od: "{od}", wall: "{wall}" } as const;
const PLAN = { lot: "{lot}", aql: "{aql}", level: "{level?}", severity: "{severity?}" } as const;
const ODDS = { sample: "{sample}", accept: "{accept}", bad: "{bad}", lot: "{lot}" } as const;
const PROOF = { lot: "{lot}", bad: "{bad}", confidence: "{confidence?}" } as const;
const RATE = { rejected: "{rejected}", inspected: "{inspected}", confidence: "{confidence?}" } as const;
const DUE = { hours: "{hours}", every: "{every?}", idles: "{idles?}", changes: "{changes?}" } as const;

/** The log from its header to the line that ends it, and the limits. */
export const LOG = {
  log: "{log}",
  ampsOff: "{amps_off?}",
  voltsLeast: "{volts_least?}",
  voltsMost: "{volts_most?}",
  travel: "{travel_planned?}",
  travelOff: "{travel_off?}",
  heatLeast: "{covered_heat_least}",
  heatMost: "{covered_heat_most}",
  ppm: "{oxygen_most?}",
  color: "{color_most?}",
  concavity: "{concavity_limit}",
  convexity: "{convexity_limit}",
  misalignment: "{misalignment_limit}",
} as const;

function result(
  label: string,
  name: string,
  content: string,
  quantity: Quantity,
  more: Partial<Row> = {},
): Row {
  return { label, name, content: `=${content}`, look: "result", quantity, ...more };
}

function inUse(label: string, form: string): Row {
  const typed = `{${form}_typed}`;
  return result(
    label,
    `${form}_limit`,
    `IF(TRIM(${typed}&"")="",{accept_${form}},{${form}_typed_read})`,
    LENGTH,
  );
}

/** By the table of form limits, and in use. */
export const FORM: Row[] = [
  result("Table: concavity, convexity, offset", "accept_concavity", call("ACCEPT_LIMITS", ACCEPT), LENGTH, {
    fills: ["accept_convexity", "accept_misalignment"],
  }),
  inUse("Concavity in use", "concavity"),
  inUse("Convexity in use", "convexity"),
  inUse("Misalignment in use", "misalignment"),
];

function count(label: string, name: string, content: string): Row {
  return result(label, name, content, COUNT, { format: "0", unit: "" });
}

function lines(word: string): string {
  return `SUMPRODUCT(--(TRIM({list_result})="${word}"))`;
}

/** Blank where the log is refused as a whole: no line is judged then, which is not that none needs attention. */
function toCheck(): string {
  return 'IF(ISERROR(INDEX({list_status},1,1)),"",SUMPRODUCT(--(LEFT({list_status},1)="▲")))';
}

/** A number of its own, since no rate is there before the first result. */
function rate(label: string, name: string, column: number): Row {
  const content = `IF({inspected}=0,"",INDEX(${call("REJECT_RATE", RATE)},1,${String(column)}))`;
  return result(label, name, content, SHARE, { format: "0.0%" });
}

export const COUNTED: Row[] = [
  count("Joints logged", "logged", "SUMPRODUCT(--(LEN({list_joint})>0))-1"),
  count("Inspected", "inspected", `${lines("accept")}+${lines("reject")}`),
  count("Rejected", "rejected", lines("reject")),
  count("Lines to check", "to_check", toCheck()),
  rate("Reject rate, estimate", "rate", 2),
  rate("Reject rate, low", "rate_low", 1),
  rate("Reject rate, high", "rate_high", 3),
];

export const LOOKED_AT: Row[] = [
  {
    ...result("Plan: letter, sample, accept, reject", "letter", call("SAMPLE_PLAN", PLAN), COUNT),
    fills: ["sample", "accept", "refuse"],
    format: "0",
    unit: "",
  },
  {
    label: "Inspected of the sample",
    name: "sample_so_far",
    content: '=IF(COUNT({inspected},{sample})<2,"",{inspected}&" of "&{sample})',
    look: "text",
  },
  result("Chance to pass with that many bad", "pass_odds", call("SAMPLE_ODDS", ODDS), SHARE, {
    format: "0.0%",
  }),
  count("All good proves fewer: sample", "proving", call("SAMPLE_SIZE", PROOF)),
  count("Coupons due in the period", "coupons_due", call("COUPONS", DUE)),
  {
    label: "Coupons",
    name: "coupons_told",
    content: `=${from(
      ["coupons_due"],
      ["hours", "every", "idles", "changes"],
      '{coupons_due}&": start, each "&{every}&" h, end, "&({idles}+{changes})&" after stops"',
    )}`,
    look: "text",
  },
];

/** Common practice: no limit of form is so much of a wall. */
const MOST_OF_WALL = 0.3;

/** How many lines name a joint that another line names; one with blanks around it is not counted as itself. */
const TWICE =
  "SUMPRODUCT((LEN({list_joint})>0)*(COUNTIF({list_joint},TRIM({list_joint}))+(LEN({list_joint})<>LEN(TRIM({list_joint})))>1))";

/** Columns in which 0 can be what was measured. */
const MEASURED_AS_0 = ["oxygen", "concavity", "convexity", "misalignment"] as const;

export const CHECKS: readonly Check[] = [
  {
    label: "Tube and limits",
    name: "check_limits",
    problem: firstOf(
      ODD_TUBE,
      refusal("ACCEPT_LIMITS", ACCEPT),
      unless(
        "COUNT({accept_concavity},{accept_convexity},{accept_misalignment})=3",
        spilledOver("the limits of form"),
      ),
      unless(
        `MAX({concavity_limit},{convexity_limit},{misalignment_limit})<=${String(MOST_OF_WALL)}*{wall_read}`,
        "a limit of form is over 30 % of the wall: check its units",
      ),
      unless("{volts_least}<={volts_most}", "the minimum of volts is above their maximum"),
      unless("INT({color_most})={color_most}", "the color sample is a whole number"),
    ),
  },
  qualified(),
  {
    // Alone, since it compares each with each: only a joint that is typed makes it compute again.
    label: "Joints",
    name: "check_joints",
    problem: unless(
      `${TWICE}=0`,
      "a joint is named in more than one line: name each once, a repair as J-01 R1",
    ),
  },
  {
    label: "Log",
    name: "check_log",
    problem: firstOf(
      refusal("LOG_CHECK", LOG),
      unless('IFERROR({log_check}="status",FALSE)', spilledOver("the verdicts of the log")),
      unless(
        "SUMPRODUCT(LEN({list_below}))=0",
        "something is typed below the end of the log: insert rows above the end and move it there",
      ),
      unless(
        "SUMPRODUCT((LEN({list_joint})=0)*(LEN({list_amps})+LEN({list_result})>0))=0",
        "a line has numbers but no joint: name it",
      ),
      // Of a host that hands a blank cell over as 0 the formula of the log cannot tell one from the other; this can.
      unless(
        `SUMPRODUCT((TRIM({list_result})="accept")*(${MEASURED_AS_0.map((name) => `(LEN({list_${name}})=0)`).join("+")}>0))=0`,
        "an accepted line has a blank where a number was measured: fill it in",
      ),
      unless(
        "{to_check}=0",
        '={to_check}&" of "&{logged}&" lines need attention; the remark beside each says why"',
      ),
    ),
  },
  {
    label: "Reject rate",
    name: "check_rate",
    problem: `IF({inspected}=0,"",${firstOf(refusal("REJECT_RATE", RATE), unless("COUNT({rate_low},{rate},{rate_high})=3", "a reject rate is missing"))})`,
  },
  {
    label: "Sample",
    name: "check_sample",
    problem: firstOf(
      refusal("SAMPLE_PLAN", PLAN),
      unless("COUNT({sample},{accept},{refuse})=3", spilledOver("the sampling plan")),
      refusal("SAMPLE_ODDS", ODDS),
      refusal("SAMPLE_SIZE", PROOF),
      unless(
        "{rejected}<={accept}",
        '="more joints were rejected ("&{rejected}&") than the plan accepts ("&{accept}&"): the lot does not pass"',
      ),
    ),
  },
  {
    label: "Coupons due",
    name: "check_coupons",
    problem: firstOf(refusal("COUPONS", DUE), unless("ISNUMBER({coupons_due})", "no number of coupons")),
  },
];
