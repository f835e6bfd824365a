import type { Work } from "../src/crew";
import { crewOutput, headsPerOperator, PATTERNS } from "../src/crew";
import { COUNT, DURATION, SHARE, TIME } from "../src/quantity";
import { answerAlike } from "./answer";
import type { Reader } from "./cells";

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
 * @math N = \left\lfloor \frac{\text{load} + \text{machine}}{\text{load} + \text{walk}} \right\rfloor
 * @where N heads
 * @validity Steady times; machine above 0. Where times scatter heads wait for the operator: see CREW_OUTPUT,
 *   "random".
 * @source Operator–machine charts, as in Niebel, Motion and Time Study, and Groover, Work Systems
 * @related CREW_OUTPUT, CYCLE_TIME
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
 * @equation steady: heads/max(load + machine, heads·(load + walk)); random: queue M/M/1//heads, service load +
 *   walk, run machine; × shift × availability
 * @math \text{steady:}\quad \frac{\text{heads}}{\max(\text{load} + \text{machine},\ \text{heads} \cdot (\text{load}
 *   + \text{walk}))}
 * @validity heads 1 to 1000, machine above 0. Real shops lie between: "steady" is the ceiling, "random" supposes
 *   exponential times.
 * @source Operator–machine chart; finite-source queue as tabulated by Peck & Hazelwood 1958, by mean value analysis
 *   (Reiser & Lavenberg 1980)
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
