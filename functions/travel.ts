import { commonBeadWidth } from "../src/bead";
import { tube } from "../src/limits";
import { ANGLE, LENGTH, ROTATION, SPEED } from "../src/quantity";
import { rotation, suggestedOverlap, suggestedSpeed, travelSpeed, travelTime } from "../src/travel";
import { answer } from "./answer";
import { readMaterial } from "./materials";

/**
 * Surface travel of the arc at a rotor speed, in/min | mm/min.
 * @customfunction TRAVEL_SPEED
 * @param od Outside diameter, in | mm
 * @param rpm Rotor speed, turns per minute
 * @param [units] "US" (default) or "SI"
 * @equation v = π·d·n
 * @math v = \pi d n
 * @where v surface travel; d outside diameter (od); n rotor speed (rpm)
 * @validity od and rpm above 0
 * @assumptions A round tube, the travel measured on its outside.
 * @source Geometry
 * @related TRAVEL_RPM, TRAVEL_TIME, TRAVEL_SUGGEST, HEAT_INPUT
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
 * @assumptions A round tube, the travel measured on its outside.
 * @source Geometry
 * @related TRAVEL_SPEED, TRAVEL_SUGGEST, TRAVEL_TIME
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
 * @equation t = π·d·(360° + overlap)/360°/v, v per second
 * @math t = \frac{\pi d}{v} \cdot \frac{360^{\circ} + \varphi}{360^{\circ}}
 * @where t time of the turn and the overlap; d outside diameter (od); v surface travel per second (speed); φ degrees past the full turn (overlap)
 * @validity od and speed above 0, overlap not below 0
 * @assumptions Travel at one speed, measured on the outside.
 * @source Geometry
 * @related OVERLAP_SUGGEST, TRAVEL_SPEED, CYCLE_TIME, CYCLE_PHASES
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
 * @equation v = 1.6·α/b, so that v·b/(4α) = 0.4 (α hot, v per second); b = 1 mm + 2 × wall if left out
 * @math v = \frac{1.6\,\alpha}{b}
 * @math \frac{v b}{4 \alpha} = 0.4
 * @math b = 1\ \text{mm} + 2 t
 * @where v suggested travel per second; α hot thermal diffusivity (material); b fused width aimed at (beadWidth), by the last line if left out; t wall thickness (wall)
 * @validity wall and beadWidth above 0. A starting value for full-penetration single passes.
 * @assumptions One α, that of the hot metal near 1200 K (927 °C), stands for the whole heating.
 * @source Dimensionless speed of Rosenthal's plate
 * @unconfirmed The level 0.4 and the default width are estimates from common practice; no published table confirms them.
 * @related TRAVEL_RPM, MELT_WIDTH, AMPS_MELT, SCHEDULE, MATERIALS
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
 * @equation 360°·b/(π·d), rounded up to a multiple of 5°; b = 1 mm + 2 × wall if left out
 * @math \varphi = 5^{\circ} \left\lceil \frac{360^{\circ}\,b}{5^{\circ}\,\pi d} \right\rceil
 * @math b = 1\ \text{mm} + 2 t
 * @where φ overlap past the full turn; b fused width (beadWidth), by the last line if left out; d outside diameter (od); t wall thickness (wall)
 * @validity wall under half of od; beadWidth above 0
 * @assumptions The overlap is measured on the outside.
 * @source Geometry; one bead width of overlap is common practice
 * @unconfirmed The default width is an estimate from common practice; no published table confirms it.
 * @related TRAVEL_TIME, CYCLE_PHASES, MELT_WIDTH, SCHEDULE
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
