/** The course of a shift, moment by moment. */

import type { Moment } from "../../src/planning/course";
import { course, MOST_HEADS_SHOWN } from "../../src/planning/course";
import { ONE_OPERATOR } from "../../src/planning/crew";
import { COUNT, DURATION, plainNumber, si, TIME } from "../../src/quantity";
import { number, orDefault } from "../argument";
import { formula } from "../formula";
import { column, table } from "../gives";
import type { Gives } from "../gives";
import { LOAD, MACHINE, WALK } from "./work";

const AN_HOUR = si(3600, DURATION);
const A_MINUTE = si(60, TIME);

const FIXED = table(
  { time: column("time", TIME), joints: column("joints done", COUNT) },
  {
    more: "Then a column for each operator: the number of the head they are at, -1 on the way to the next, 0 waiting for one. Then a column for each head: 2 while its machine runs, 1 while an operator is at it, 0 while it waits for one. A row for each moment from 0 on.",
  },
);

const GIVES: Gives<readonly Moment[]> = {
  ...FIXED,
  write: (moments, units) =>
    moments.map(({ time, joints, operators, heads }) => [
      ...(FIXED.write([{ time, joints }], units) as number[][]).flat(),
      ...operators,
      ...heads,
    ]),
};

export const CREW_COURSE = formula({
  id: "CREW_COURSE",
  meaning: "Who is at which head and who waits for whom, moment by moment, at steady times",
  args: {
    heads: number("Weld heads", COUNT),
    loadSeconds: LOAD,
    machineSeconds: MACHINE,
    walkSeconds: WALK,
    hours: orDefault(number("How long to look", DURATION), AN_HOUR),
    stepSeconds: orDefault(number("From one moment to the next", TIME), A_MINUTE),
    operators: orDefault(number("Operators who serve the heads in turn", COUNT), ONE_OPERATOR),
  },
  gives: GIVES,
  tex: [
    String.raw`S(j) = \max\bigl(S(j - N) + \text{load} + \text{machine},\ S(j - c) + \text{load} + \text{walk}\bigr)`,
    String.raw`S(j) = 0\quad\text{where}\ j \le \min(N, c)`,
  ],
  where: {
    S: "start of a joint, s",
    j: "joints in the order they start",
    N: "heads",
    c: "operators",
    load: "operator at the head per joint, s (loadSeconds)",
    machine: "time of the machine per joint, s (machineSeconds)",
    walk: "way to the next head, s (walkSeconds)",
  },
  validity: `heads and operators 1 to ${plainNumber(MOST_HEADS_SHOWN)}, machine above 0; hours up to 480 steps and 5000 joints. Over a long time the joints done come to those of CREW_OUTPUT, "steady".`,
  assumptions:
    "Every time the same; all heads empty at first; heads served in turn. Where the walk takes longer than the machine runs each operator stays at one head, and with as many operators as heads nobody walks.",
  source: "Operator–machine chart, as in [niebel-motion] and [groover-work]",
  unchecked: "A chart drawn from times: the checks are charts by hand and the joints of a long course",
  related: ["CREW_OUTPUT", "CREW_HEADS", "CYCLE_PHASES"],
  synonyms: [
    "timeline",
    "Gantt",
    "operator machine chart",
    "man-machine chart",
    "who waits",
    "simulation",
    "idle",
  ],
  figure: "crew",
  example: {
    args: [2, 120, 360, 0, 0.2, 120],
    gives:
      "0, 0, 1, 1, 0; 120, 0, 2, 2, 1; 240, 0, 0, 2, 2; 360, 0, 0, 2, 2; 480, 1, 1, 1, 2; 600, 2, 2, 2, 1; 720, 2, 0, 2, 2",
  },
  calc: ({
    heads,
    operators,
    loadSeconds: load,
    machineSeconds: machine,
    walkSeconds: walk,
    hours,
    stepSeconds,
  }) => course({ heads, operators, work: { load, machine, walk }, lasts: hours, step: stepSeconds }),
});
