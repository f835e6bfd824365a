/** Operators and weld heads. */

import {
  COMMON_SHIFT,
  crewOutput,
  headsPerOperator,
  MOST_HEADS,
  MOST_OPERATORS,
  ONE_OPERATOR,
  PATTERNS,
} from "../../src/planning/crew";
import { COUNT, DURATION, plainNumber, SHARE, si } from "../../src/quantity";
import { number, orDefault, word } from "../argument";
import { family, formula } from "../formula";
import { scalar } from "../gives";
import { CREW_COURSE } from "./course";
import { LOAD, MACHINE, WALK } from "./work";

const WORK_WHERE = {
  load: "operator at the head per joint, s (loadSeconds)",
  machine: "time of the machine per joint, s (machineSeconds)",
  walk: "way to the next head, s (walkSeconds)",
};

const CREW_HEADS = formula({
  id: "CREW_HEADS",
  meaning: "Whole weld heads that one operator keeps busy",
  args: { loadSeconds: LOAD, machineSeconds: MACHINE, walkSeconds: WALK },
  gives: scalar(COUNT),
  tex: [
    String.raw`N = \max\left(1,\ \left\lfloor\frac{\text{load} + \text{machine}}{\text{load} + \text{walk}}\right\rfloor\right)`,
  ],
  where: { N: "weld heads that one operator keeps busy", ...WORK_WHERE },
  validity:
    'machine above 0; #N/A if load and walk are both 0. Where times scatter, heads wait for the operator: see CREW_OUTPUT, "random".',
  assumptions: "Steady times: every joint takes the same",
  source: "Operator–machine charts, as in [niebel-motion] and [groover-work]",
  related: ["CREW_OUTPUT", "CYCLE_TIME", "TAKEOFF"],
  synonyms: [
    "machines per operator",
    "staffing",
    "manning",
    "operators",
    "crew",
    "manpower",
    "labor",
    "how many heads",
    "welders",
  ],
  figure: "crew",
  example: { args: [120, 900, 30], gives: "6" },
  calc: ({ loadSeconds: load, machineSeconds: machine, walkSeconds: walk }) =>
    headsPerOperator({ load, machine, walk }),
});

const CREW_OUTPUT = formula({
  id: "CREW_OUTPUT",
  meaning: "Joints per shift of one operator, or several together, with several weld heads",
  args: {
    heads: number("Weld heads of the one operator, or of all who share them", COUNT),
    loadSeconds: LOAD,
    machineSeconds: MACHINE,
    hours: orDefault(number("Length of the shift", DURATION), COMMON_SHIFT),
    availability: orDefault(
      number("Fraction of the shift actually worked, above 0 to 1", SHARE),
      si(1, SHARE),
    ),
    pattern: word(
      '"steady" (default): every time the same; "random": times that scatter widely',
      PATTERNS,
      "steady",
    ),
    walkSeconds: WALK,
    operators: orDefault(number("Operators who share the heads", COUNT), ONE_OPERATOR),
  },
  gives: scalar(COUNT),
  tex: [
    String.raw`J = \text{shift}\cdot\text{availability}\cdot\max_{k \le c}\left(\frac{k}{\text{load} + \text{machine}} + r(N - k,\ c - k)\right)`,
    String.raw`\text{steady:}\quad r(N, c) = \min\left(\frac{N}{\text{load} + \text{machine}},\ \frac{c}{\text{load} + \text{walk}}\right)`,
    String.raw`\text{random:}\quad r(N, c) = \frac{\sum_n \min(n, c)\,p(n)}{\text{load} + \text{walk}},\quad p(n + 1) = p(n)\,\frac{(N - n)\,(\text{load} + \text{walk})}{\min(n + 1,\ c)\,\text{machine}}`,
  ],
  where: {
    J: "joints per shift",
    N: "weld heads (heads)",
    c: "operators who share them (operators)",
    k: "operators who stay at one head each and walk nowhere, as many as makes most; N if c is N or more",
    r: "joints per second of operators who walk to whichever head calls",
    p: "chance that n heads stand, waiting or served",
    n: "heads that stand",
    shift: "its length, s (hours × 3600)",
    ...WORK_WHERE,
  },
  validity: `heads 1 to ${plainNumber(MOST_HEADS)}, operators 1 to ${plainNumber(MOST_OPERATORS)}, machine above 0. Real shops lie between: "steady" is the ceiling.`,
  assumptions:
    '"steady": every joint takes the same; "random": times of operator and machine scatter exponentially about their means. Operators who share go to whichever head has called longest, all equally near.',
  source:
    "Operator–machine chart; finite-source queue as tabulated by [peck-hazelwood-1958], one operator by mean value analysis ([reiser-lavenberg-1980])",
  related: ["CREW_HEADS", "CREW_COURSE", "CYCLE_TIME", "TAKEOFF"],
  synonyms: [
    "welds per day",
    "joints per shift",
    "productivity",
    "throughput",
    "crew",
    "labor",
    "shift",
    "output",
    "utilization",
    "welds per shift",
    "welds per hour",
  ],
  figure: "crew",
  example: { args: [2, 120, 360], gives: "120" },
  calc: ({
    heads,
    loadSeconds: load,
    machineSeconds: machine,
    hours,
    availability,
    pattern,
    walkSeconds: walk,
    operators,
  }) => crewOutput(heads, { load, machine, walk }, { seconds: hours, availability }, pattern, operators),
});

export const CREW = family("Crew", [CREW_HEADS, CREW_OUTPUT, CREW_COURSE]);
