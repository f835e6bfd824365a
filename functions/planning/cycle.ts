import type { Cycle } from "../../src/planning/cycle";
import { COMMON_POSTPURGE, COMMON_PREPURGE, cyclePhases, cycleTime } from "../../src/planning/cycle";
import { ANGLE, LENGTH, SPEED, TIME } from "../../src/quantity";
import { answer } from "../answer";
import type { Reader } from "../cells";

type CycleArguments = [
  od: unknown,
  speed: unknown,
  prepurge: unknown,
  dwell: unknown,
  overlap: unknown,
  downslope: unknown,
  postpurge: unknown,
  handling: unknown,
];

function readCycle(
  read: Reader,
  ...[od, speed, prepurge, dwell, overlap, downslope, postpurge, handling]: CycleArguments
): Cycle {
  return {
    od: read.number("od", od, LENGTH),
    speed: read.number("speed", speed, SPEED),
    prepurge: read.numberOr("prepurge", prepurge, TIME, COMMON_PREPURGE),
    dwell: read.numberOr("dwell", dwell, TIME, 0),
    overlap: read.numberOr("overlap", overlap, ANGLE, 0),
    downslope: read.numberOr("downslope", downslope, TIME, 0),
    postpurge: read.numberOr("postpurge", postpurge, TIME, COMMON_POSTPURGE),
    handling: read.numberOr("handling", handling, TIME, 0),
  };
}

/**
 * Time of one weld cycle from start to start, s.
 * @customfunction CYCLE_TIME
 * @param od Outside diameter, in | mm
 * @param speed Surface travel, in/min | mm/min
 * @param [prepurge] Gas before the arc, s; 30 if left out
 * @param [dwell] Arc on before the head turns, s; 0 if left out
 * @param [overlap] Degrees past the full turn; 0 if left out
 * @param [downslope] Fading of the arc, s; 0 if left out
 * @param [postpurge] Gas after the arc, s; 15 if left out
 * @param [handling] Unload, load and set up, s; 0 if left out
 * @param [units] "US" (default) or "SI"
 * @equation T = prepurge + dwell + π·d·(360° + overlap)/360°/v + downslope + postpurge + handling
 * @math T = \text{prepurge} + \text{dwell} + \frac{\pi d}{v}\cdot\frac{360^\circ + \text{overlap}}{360^\circ} + \text{downslope} + \text{postpurge} + \text{handling}
 * @where T time from start to start; d outside diameter (od); v surface travel (speed); overlap degrees past the full turn; dwell arc on before the head turns
 * @validity Times not below 0. The purge of the bore is not in it; see PURGE_TIME.
 * @assumptions One phase after the other, none at the same time; the travel is that of the tube's outside
 * @source Sum of the phases; 30 s and 15 s of gas are common practice
 * @related CYCLE_PHASES, TRAVEL_TIME, START_DWELL, PURGE_TIME, TAKEOFF
 * @figure cycle
 * @example =BEAD.CYCLE_TIME(50.8, 127, 30, 0, 0, 0, 15, 0, "SI") → 120.398224
 */
export function cycleTimeCell(
  od: unknown,
  speed: unknown,
  prepurge?: unknown,
  dwell?: unknown,
  overlap?: unknown,
  downslope?: unknown,
  postpurge?: unknown,
  handling?: unknown,
  units?: unknown,
): number {
  return answer(units, (read) =>
    cycleTime(readCycle(read, od, speed, prepurge, dwell, overlap, downslope, postpurge, handling)),
  );
}

/**
 * The phases of one weld cycle, one row each: label, starts at s, lasts s, arc on.
 * @customfunction CYCLE_PHASES
 * @param od Outside diameter, in | mm
 * @param speed Surface travel, in/min | mm/min
 * @param [prepurge] Gas before the arc, s; 30 if left out
 * @param [dwell] Arc on before the head turns, s; 0 if left out
 * @param [overlap] Degrees past the full turn; 0 if left out
 * @param [downslope] Fading of the arc, s; 0 if left out
 * @param [postpurge] Gas after the arc, s; 15 if left out
 * @param [handling] Unload, load and set up, s; 0 if left out
 * @param [units] "US" (default) or "SI"
 * @returns Seven rows: prepurge, start dwell, full turn, overlap, downslope, postpurge, handling
 * @equation Each phase starts where the one before it ends; turn = π·d/v, lap = turn·overlap/360°
 * @math \text{turn} = \frac{\pi d}{v}
 * @math \text{lap} = \text{turn}\cdot\frac{\text{overlap}}{360^\circ}
 * @where turn time of the full turn; lap time of the overlap; d outside diameter (od); v surface travel (speed); overlap degrees past the full turn
 * @validity Times not below 0; a phase of 0 s keeps its row
 * @assumptions One phase after the other, none at the same time; the travel is that of the tube's outside
 * @source Sum of the phases; 30 s and 15 s of gas are common practice
 * @related CYCLE_TIME, TRAVEL_TIME, START_DWELL, OVERLAP_SUGGEST
 * @figure cycle
 * @example =BEAD.CYCLE_PHASES(50.8, 127, 30, 2, 0, 5, 15, 0, "SI") → "Prepurge", 0, 30, FALSE; "Start dwell", 30, 2, TRUE; "Full turn", 32, 75.398, TRUE; …
 */
export function cyclePhasesCells(
  od: unknown,
  speed: unknown,
  prepurge?: unknown,
  dwell?: unknown,
  overlap?: unknown,
  downslope?: unknown,
  postpurge?: unknown,
  handling?: unknown,
  units?: unknown,
): unknown[][] {
  return answer(units, (read) =>
    cyclePhases(readCycle(read, od, speed, prepurge, dwell, overlap, downslope, postpurge, handling)).map(
      ({ label, starts, lasts, arcOn }) => [label, starts, lasts, arcOn],
    ),
  );
}
