import type { Cycle } from "../src/cycle";
import { COMMON_POSTPURGE, COMMON_PREPURGE, cyclePhases, cycleTime } from "../src/cycle";
import { ANGLE, LENGTH, SPEED, TIME } from "../src/quantity";
import { answer } from "./answer";
import type { Reader } from "./cells";

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
 * @math T = t_\text{pre} + t_\text{dwell} + \frac{\pi\,d}{v} \cdot \frac{360^\circ + \varphi}{360^\circ} + t_\text{slope} + t_\text{post} + t_\text{hand}
 * @where T time from start to start; t_pre gas before the arc (prepurge); t_dwell arc on before the head turns (dwell); d outside diameter (od); v surface travel (speed); φ degrees past the full turn (overlap); t_slope fading of the arc (downslope); t_post gas after the arc (postpurge); t_hand unload, load and set up (handling)
 * @validity Times not below 0. The purge of the bore is not in it; see PURGE_TIME.
 * @assumptions The speed is steady over the full turn and the overlap; the phases follow one another without a pause.
 * @source Sum of the phases; 30 s and 15 s of gas are common practice
 * @unconfirmed 30 s and 15 s of gas are shop custom: no code or table confirms them.
 * @related CYCLE_PHASES, TRAVEL_TIME, START_DWELL, PURGE_TIME, CREW_HEADS
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
 * @equation Each phase starts where the one before it ends; turn π·d/v, overlap turn·overlap/360°
 * @math t_\text{turn} = \frac{\pi\,d}{v}
 * @math t_\text{lap} = t_\text{turn} \cdot \frac{\varphi}{360^\circ}
 * @where t_turn length of the full turn; d outside diameter (od); v surface travel (speed); t_lap length of the overlap; φ degrees past the full turn (overlap)
 * @validity Times not below 0; a phase of 0 s keeps its row
 * @assumptions The speed is steady over the full turn and the overlap; the phases follow one another without a pause.
 * @source Sum of the phases; 30 s and 15 s of gas are common practice
 * @unconfirmed 30 s and 15 s of gas are shop custom: no code or table confirms them.
 * @related CYCLE_TIME, TRAVEL_TIME, OVERLAP_SUGGEST, START_DWELL
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
