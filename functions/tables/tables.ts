import { LENGTH } from "../../src/quantity";
import { weldLimits } from "../../src/tables/acceptance";
import { pipeOd, pipeWall } from "../../src/tables/pipe";
import { answer } from "../answer";

/**
 * Outside diameter of a nominal pipe size, in | mm.
 * @customfunction PIPE_OD
 * @param nps Nominal pipe size as text or number: "1/2", "1-1/2", "1 1/2", 1.5, "2 in"
 * @param [units] "US" (default) or "SI"
 * @equation Table: inches as printed | millimetres as printed, which are rounded from the inches
 * @validity NPS 1/8 to 12; #N/A for other sizes. Pipe, not tube: NPS 2 is 2.375 in outside. B36.10M prints 273.0 and 323.8 mm for NPS 10 and 12.
 * @source ASME B36.19M and B36.10M; millimetres compared with a general open reference library (fluids 1.3.1)
 * @unconfirmed The inches are from memory; each rounds to its millimetres
 * @related PIPE_WALL, ACCEPT_LIMITS, SCHEDULE
 * @example =BEAD.PIPE_OD("1-1/2", "SI") → 48.3
 */
export function pipeOdCell(nps: unknown, units?: unknown): number {
  return answer(units, (read) => read.give(pipeOd(read.text("nps", nps), read.units), LENGTH));
}

/**
 * Nominal wall of a pipe size and schedule, in | mm.
 * @customfunction PIPE_WALL
 * @param nps Nominal pipe size as text or number: "1/2", "1-1/2", "1 1/2", 1.5, "2 in"
 * @param schedule Schedule as text or number: "5S", "10S", "40S", "80S", 5, 10, 40 or 80
 * @param [units] "US" (default) or "SI"
 * @equation Table: inches as printed | millimetres as printed, which are rounded from the inches
 * @validity NPS 1/8 to 12; #N/A if the standard has no such wall. 40 and 40S part at NPS 12, 80 and 80S at NPS 10. Mill tolerance, commonly 12.5 %, is not in it.
 * @source ASME B36.19M (with S) and B36.10M (without); millimetres compared with a general open reference library (fluids 1.3.1)
 * @unconfirmed The inches are from memory; each rounds to its millimetres
 * @related PIPE_OD, ACCEPT_LIMITS, SCHEDULE
 * @example =BEAD.PIPE_WALL(2, "10S") → 0.109
 */
export function pipeWallCell(nps: unknown, schedule: unknown, units?: unknown): number {
  return answer(units, (read) =>
    read.give(pipeWall(read.text("nps", nps), read.text("schedule", schedule), read.units), LENGTH),
  );
}

/**
 * Greatest concavity, convexity and misalignment of a hygienic tube butt weld, in | mm.
 * @customfunction ACCEPT_LIMITS
 * @param od Outside diameter of the tube, in | mm
 * @param wall Nominal wall, in | mm
 * @param [units] "US" (default) or "SI"
 * @returns One row: concavity, convexity, misalignment on the outside
 * @equation concavity ≤ 10 %·t, convexity ≤ 10 %·t, misalignment ≤ 15 %·t, but 0.015 in for a 4 in tube and 0.030 in for a 6 in tube
 * @math \text{concavity} \le 10\,\%\cdot t,\quad \text{convexity} \le 10\,\%\cdot t
 * @math \text{misalignment} \le \begin{cases} 0.015\ \text{in} & \text{for a 4 in tube} \\ 0.030\ \text{in} & \text{for a 6 in tube} \\ 15\,\%\cdot t & \text{otherwise} \end{cases}
 * @where t nominal wall (wall); misalignment of the two surfaces on the outside
 * @validity Wall under half of od. Inside misalignment is 15 % of wall for every size. Inside and outside concavity together may not thin the wall under its minimum. A tube within ± 0.015 in of 4 in or ± 0.030 in of 6 in counts as that size. The edition of the contract governs.
 * @source ASME BPE-2012 Table MJ-8.4-1
 * @related PIPE_OD, PIPE_WALL, SCHEDULE
 * @example =BEAD.ACCEPT_LIMITS(50.8, 1.65, "SI") → 0.165, 0.165, 0.2475
 */
export function acceptLimitsCells(od: unknown, wall: unknown, units?: unknown): number[][] {
  return answer(units, (read) => {
    const limits = weldLimits(read.number("od", od, LENGTH), read.number("wall", wall, LENGTH));
    const row = [limits.concavity, limits.convexity, limits.misalignment];
    return [row.map((limit) => read.give(limit, LENGTH))];
  });
}
