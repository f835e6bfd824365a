import type { Work } from "../../src/planning/crew";
import { crewOutput, headsPerOperator, PATTERNS } from "../../src/planning/crew";
import { COUNT, DURATION, SHARE, TIME } from "../../src/quantity";
import { answerAlike } from "../answer";
import type { Reader } from "../cells";

/** Common practice: one shift, s. */
const COMMON_SHIFT = 8 * 3600;

function readWork(read: Reader, load: unknown, machine: unknown, walk: unknown): Work {
  return {
    load: read.number("loadSeconds", load, TIME),
    machine: read.number("machineSeconds", machine, TIME),
    walk: read.numberOr("walkSeconds", walk, TIME, 0),
  };
}

/**
 * Whole weld heads that one operator keeps busy.
 * @customfunction CREW_HEADS
 * @param loadSeconds Operator at the head per joint, s: unload, load, start
 * @param machineSeconds Head on its own per joint, s: purge, weld, purge
 * @param [walkSeconds] Way to the next head, s; 0 if left out
 * @equation N = ⌊(load + machine)/(load + walk)⌋, at least 1
 * @math N = \max\left(1,\ \left\lfloor\frac{\text{load} + \text{machine}}{\text{load} + \text{walk}}\right\rfloor\right)
 * @where N weld heads that one operator keeps busy; load operator at the head per joint, s (loadSeconds); machine head on its own per joint, s (machineSeconds); walk way to the next head, s (walkSeconds)
 * @validity machine above 0; #N/A if load and walk are both 0. Where times scatter heads wait for the operator: see CREW_OUTPUT, "random".
 * @assumptions Steady times: every joint takes the same
 * @source Operator–machine charts, as in Niebel, Motion and Time Study, and Groover, Work Systems
 * @related CREW_OUTPUT, CYCLE_TIME, TAKEOFF
 * @figure crew
 * @example =BEAD.CREW_HEADS(120, 900, 30) → 6
 */
export function crewHeadsCell(loadSeconds: unknown, machineSeconds: unknown, walkSeconds?: unknown): number {
  return answerAlike((read) => headsPerOperator(readWork(read, loadSeconds, machineSeconds, walkSeconds)));
}

/**
 * Joints per shift of one operator with several weld heads.
 * @customfunction CREW_OUTPUT
 * @param heads Weld heads of the one operator
 * @param loadSeconds Operator at the head per joint, s: unload, load, start
 * @param machineSeconds Head on its own per joint, s: purge, weld, purge
 * @param [hours] Length of the shift, h; 8 if left out
 * @param [availability] Share of the shift really worked, above 0 to 1; 1 if left out
 * @param [pattern] "steady" (default): every time the same; "random": times that scatter widely
 * @param [walkSeconds] Way to the next head, s; 0 if left out
 * @equation J = shift·availability·r(N); steady: r(N) = N/max(load + machine, N·(load + walk)); random, the queue M/M/1//N: r(N) = N/(machine + w(N)), w(N) = (load + walk)·(1 + r(N − 1)·w(N − 1)), r(0) = 0
 * @math J = \text{shift}\cdot\text{availability}\cdot r(N)
 * @math \text{steady:}\quad r(N) = \frac{N}{\max\bigl(\text{load} + \text{machine},\ N\,(\text{load} + \text{walk})\bigr)}
 * @math \text{random:}\quad r(N) = \frac{N}{\text{machine} + w(N)},\quad r(0) = 0
 * @math w(N) = (\text{load} + \text{walk})\,\bigl(1 + r(N-1)\,w(N-1)\bigr)
 * @where J joints per shift; N heads of the one operator (heads); r joints per second; w time that a joint's head stands, waiting and served, s; shift its length, s (hours × 3600); load operator at the head per joint, s (loadSeconds); machine head on its own per joint, s (machineSeconds); walk way to the next head, s (walkSeconds)
 * @validity heads 1 to 1000, machine above 0. Real shops lie between: "steady" is the ceiling.
 * @assumptions "steady": every joint takes the same; "random": times of operator and machine scatter exponentially about their means
 * @source Operator–machine chart; finite-source queue as tabulated by Peck & Hazelwood 1958, by mean value analysis (Reiser & Lavenberg 1980)
 * @related CREW_HEADS, CYCLE_TIME, TAKEOFF
 * @figure crew
 * @example =BEAD.CREW_OUTPUT(2, 120, 360) → 120
 */
export function crewOutputCell(
  heads: unknown,
  loadSeconds: unknown,
  machineSeconds: unknown,
  hours?: unknown,
  availability?: unknown,
  pattern?: unknown,
  walkSeconds?: unknown,
): number {
  return answerAlike((read) =>
    crewOutput(
      read.number("heads", heads, COUNT),
      readWork(read, loadSeconds, machineSeconds, walkSeconds),
      {
        seconds: read.numberOr("hours", hours, DURATION, COMMON_SHIFT),
        availability: read.numberOr("availability", availability, SHARE, 1),
      },
      read.wordOr("pattern", pattern, PATTERNS, "steady"),
    ),
  );
}
