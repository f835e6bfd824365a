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
 * @math N = \max\left(1, \left\lfloor \frac{t_\text{load} + t_\text{machine}}{t_\text{load} + t_\text{walk}} \right\rfloor\right)
 * @where N whole weld heads; t_load operator at the head per joint (loadSeconds); t_machine head on its own per joint (machineSeconds); t_walk way to the next head (walkSeconds)
 * @validity machine above 0; load and walk not both 0
 * @assumptions Steady times. Where times scatter heads wait for the operator: see CREW_OUTPUT, "random".
 * @source Operator–machine charts, as in Niebel, Motion and Time Study, and Groover, Work Systems
 * @related CREW_OUTPUT, CYCLE_TIME, CYCLE_PHASES, PURGE_TIME
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
 * @equation steady: r = heads/max(load + machine, heads·(load + walk)); random: queue M/M/1//heads, service s = load + walk, run machine: r(n) = n/(machine + s·(1 + c(n − 1))), c(n) = r(n)·s·(1 + c(n − 1)), c(0) = 0, r = r(heads); joints = r × shift × availability
 * @math J = r\,S\,a
 * @math r = \frac{N}{\max\left(t_\text{load} + t_\text{machine},\; N\,s\right)} \quad \text{(steady)}
 * @math r = r_N, \quad r_n = \frac{n}{t_\text{machine} + s\,(1 + c_{n-1})}, \quad c_n = r_n\,s\,(1 + c_{n-1}), \quad c_0 = 0 \quad \text{(random)}
 * @math s = t_\text{load} + t_\text{walk}
 * @where J joints in the shift; r joints per unit of time; S length of the shift (hours); a share of the shift really worked (availability); N weld heads (heads); t_load operator at the head per joint (loadSeconds); t_machine head on its own per joint (machineSeconds); t_walk way to the next head (walkSeconds); s operator's time per joint; n number of heads, added one at a time up to N; r_n joints per unit of time of n heads; r_N joints per unit of time of all heads; c_n heads that stand or are being served, of n; c_n−1 the same with one head fewer; c₀ the same with no head
 * @validity heads 1 to 1000, machine above 0
 * @assumptions One operator serves one head at a time. "steady" supposes every time the same, "random" exponential times. Real shops lie between: "steady" is the ceiling.
 * @source Operator–machine chart; finite-source queue as tabulated by Peck & Hazelwood 1958, by mean value analysis (Reiser & Lavenberg 1980)
 * @related CREW_HEADS, CYCLE_TIME, PURGE_TIME, TAKEOFF
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
