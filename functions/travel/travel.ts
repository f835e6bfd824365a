import { commonBeadWidth } from "../../src/travel/bead";
import { tube } from "../../src/limits";
import { ANGLE, LENGTH, ROTATION, SPEED } from "../../src/quantity";
import { rotation, suggestedOverlap, suggestedSpeed, travelSpeed, travelTime } from "../../src/travel/travel";
import { answer } from "../answer";
import { readMaterial } from "../metal/materials";

/**
 * Surface travel of the arc at a rotor speed, in/min | mm/min.
 * @customfunction TRAVEL_SPEED
 * @param od Outside diameter, in | mm
 * @param rpm Rotor speed, turns per minute
 * @param [units] "US" (default) or "SI"
 * @equation v = π·d·n
 * @math v = \pi d\,n
 * @where v surface travel; d outside diameter (od); n rotor speed (rpm)
 * @validity od and rpm above 0
 * @source Geometry
 * @related TRAVEL_RPM, TRAVEL_TIME, TRAVEL_SUGGEST
 * @example =BEAD.TRAVEL_SPEED(1, 1.6) → 5.0265
 */
export function travelSpeedCell(od: unknown, rpm: unknown, units?: unknown): number {
  return answer(units, (read) =>
    read.give(travelSpeed(read.number("od", od, LENGTH), read.number("rpm", rpm, ROTATION)), SPEED),
  );
}

/**
 * Rotor speed for a surface travel, turns per minute.
 * @customfunction TRAVEL_RPM
 * @param od Outside diameter, in | mm
 * @param speed Surface travel, in/min | mm/min
 * @param [units] "US" (default) or "SI"
 * @equation n = v/(π·d)
 * @math n = \frac{v}{\pi d}
 * @where n rotor speed; v surface travel (speed); d outside diameter (od)
 * @validity od and speed above 0
 * @source Geometry
 * @related TRAVEL_SPEED, TRAVEL_TIME, TRAVEL_SUGGEST
 * @example =BEAD.TRAVEL_RPM(50.8, 127, "SI") → 0.795775
 */
export function travelRpmCell(od: unknown, speed: unknown, units?: unknown): number {
  return answer(units, (read) =>
    read.give(rotation(read.number("od", od, LENGTH), read.number("speed", speed, SPEED)), ROTATION),
  );
}

/**
 * Time of one turn and the overlap, s.
 * @customfunction TRAVEL_TIME
 * @param od Outside diameter, in | mm
 * @param speed Surface travel, in/min | mm/min
 * @param [overlap] Degrees past the full turn; 0 if left out
 * @param [units] "US" (default) or "SI"
 * @equation t = π·d·(360° + overlap)/360°/v
 * @math t = \frac{\pi d}{v}\cdot\frac{360^\circ + \text{overlap}}{360^\circ}
 * @where t time of the turn and the overlap; d outside diameter (od); v surface travel (speed); overlap degrees past the full turn
 * @validity od and speed above 0, overlap not below 0
 * @source Geometry
 * @related TRAVEL_SPEED, OVERLAP_SUGGEST, CYCLE_TIME
 * @figure overlap
 * @example =BEAD.TRAVEL_TIME(50.8, 127, 0, "SI") → 75.398224
 */
export function travelTimeCell(od: unknown, speed: unknown, overlap?: unknown, units?: unknown): number {
  return answer(units, (read) =>
    travelTime(
      read.number("od", od, LENGTH),
      read.number("speed", speed, SPEED),
      read.numberOr("overlap", overlap, ANGLE, 0),
    ),
  );
}

/**
 * Suggested travel speed for a wall, in/min | mm/min.
 * @customfunction TRAVEL_SUGGEST
 * @param wall Wall thickness, in | mm
 * @param [beadWidth] Fused width aimed at, in | mm; 1 mm + 2 × wall if left out
 * @param [material] Designation such as "316L" (default); BEAD.MATERIALS lists them
 * @param [units] "US" (default) or "SI"
 * @equation v = 1.6·α/b, so that v·b/(4α) = 0.4; α hot
 * @math v = \frac{1.6\,\alpha}{b},\quad\text{so that}\quad \frac{v\,b}{4\alpha} = 0.4
 * @where v surface travel; α diffusivity of the metal near 1200 K (material); b fused width aimed at (beadWidth)
 * @validity A starting value for full-penetration single passes
 * @assumptions As AMPS_MELT: heat uniform through the wall, α constant
 * @source Dimensionless speed of Rosenthal's plate; the target 0.4 and the default width are common practice
 * @unconfirmed The level 0.4 and the default width are estimates from common practice; no published table confirms the width
 * @related AMPS_MELT, MELT_WIDTH, TRAVEL_RPM, SCHEDULE
 * @figure plate
 * @example =BEAD.TRAVEL_SUGGEST(0.065) → 5.138
 */
export function travelSuggestCell(
  wall: unknown,
  beadWidth?: unknown,
  material?: unknown,
  units?: unknown,
): number {
  return answer(units, (read) => {
    const common = commonBeadWidth(read.number("wall", wall, LENGTH));
    const width = read.numberOr("beadWidth", beadWidth, LENGTH, common);
    return read.give(suggestedSpeed(width, readMaterial(read, material)), SPEED);
  });
}

/**
 * Overlap past the start that covers one bead width, degrees, in steps of 5.
 * @customfunction OVERLAP_SUGGEST
 * @param od Outside diameter, in | mm
 * @param wall Wall thickness, in | mm
 * @param [beadWidth] Fused width, in | mm; 1 mm + 2 × wall if left out
 * @param [units] "US" (default) or "SI"
 * @equation o = 5°·⌈360°·b/(5°·π·d)⌉: rounded up to whole steps
 * @math o = 5^\circ\left\lceil\frac{360^\circ\, b}{5^\circ\,\pi d}\right\rceil
 * @where o overlap, degrees; b fused width (beadWidth); d outside diameter (od)
 * @validity wall under half of od
 * @source Geometry; one bead width of overlap is common practice
 * @unconfirmed The default width is an estimate from common practice
 * @related TRAVEL_TIME, AMPS_SECTORS, CYCLE_PHASES, SCHEDULE
 * @figure overlap
 * @example =BEAD.OVERLAP_SUGGEST(1, 0.065) → 20
 */
export function overlapSuggestCell(od: unknown, wall: unknown, beadWidth?: unknown, units?: unknown): number {
  return answer(units, (read) => {
    const [diameter, thickness] = [read.number("od", od, LENGTH), read.number("wall", wall, LENGTH)];
    tube(diameter, thickness);
    const width = read.numberOr("beadWidth", beadWidth, LENGTH, commonBeadWidth(thickness));
    return suggestedOverlap(diameter, thickness, width);
  });
}
