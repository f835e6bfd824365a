/** One operator and several weld heads. */

import { COMMON_SHIFT, crewOutput, headsPerOperator, MOST_HEADS, PATTERNS } from "../../src/planning/crew";
import { COUNT, DURATION, plainNumber, SHARE, si, TIME } from "../../src/quantity";
import { number, orDefault, word } from "../argument";
import { family, formula } from "../formula";
import { scalar } from "../gives";

const LOAD = number("Operator at the head per joint", TIME, "unload, load, start");
const MACHINE = number("Machine time per joint", TIME, "purge, weld, purge");
const WALK = orDefault(number("Walk to the next head", TIME), si(0, TIME));
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
  meaning: "Joints per shift of one operator with several weld heads",
  args: {
    heads: number("Weld heads of the one operator", COUNT),
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
  },
  gives: scalar(COUNT),
  tex: [
    String.raw`J = \text{shift}\cdot\text{availability}\cdot\max\left(r(N),\ \frac{1}{\text{load} + \text{machine}}\right)`,
    String.raw`\text{steady:}\quad r(N) = \frac{N}{\max\bigl(\text{load} + \text{machine},\ N\,(\text{load} + \text{walk})\bigr)}`,
    String.raw`\text{random:}\quad r(N) = \frac{N}{\text{machine} + w(N)},\quad r(0) = 0`,
    String.raw`w(N) = (\text{load} + \text{walk})\,\bigl(1 + r(N-1)\,w(N-1)\bigr)`,
  ],
  where: {
    J: "joints per shift",
    N: "heads of the one operator (heads)",
    r: "joints per second of an operator who walks; one who stays at one head makes 1/(load + machine)",
    w: "time that a joint's head stands, waiting and served, s",
    shift: "its length, s (hours × 3600)",
    ...WORK_WHERE,
  },
  validity: `heads 1 to ${plainNumber(MOST_HEADS)}, machine above 0. Real shops lie between: "steady" is the ceiling.`,
  assumptions:
    '"steady": every joint takes the same; "random": times of operator and machine scatter exponentially about their means',
  source:
    "Operator–machine chart; finite-source queue as tabulated by [peck-hazelwood-1958], by mean value analysis ([reiser-lavenberg-1980])",
  related: ["CREW_HEADS", "CYCLE_TIME", "TAKEOFF"],
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
  calc: ({ heads, loadSeconds: load, machineSeconds: machine, hours, availability, pattern, walkSeconds }) =>
    crewOutput(heads, { load, machine, walk: walkSeconds }, { seconds: hours, availability }, pattern),
});

export const CREW = family("Crew", [CREW_HEADS, CREW_OUTPUT]);
