import { ARC_EFFICIENCY } from "../../src/heat-flow/arc";
import type { HeatedTube } from "../../src/heat-flow/dam";
import { damDistance, damTemperature } from "../../src/heat-flow/dam";
import { AMBIENT } from "../../src/metal/material";
import { CURRENT, LENGTH, SHARE, SPEED, TEMPERATURE, TIME, VOLTAGE } from "../../src/quantity";
import { answer } from "../answer";
import type { Reader } from "../cells";
import { readMaterial } from "../metal/materials";

type HeatedTubeArguments = [
  od: unknown,
  wall: unknown,
  amps: unknown,
  volts: unknown,
  speed: unknown,
  extraSeconds: unknown,
  efficiency: unknown,
  material: unknown,
  ambient: unknown,
];

function readHeatedTube(
  read: Reader,
  ...[od, wall, amps, volts, speed, extraSeconds, efficiency, material, ambient]: HeatedTubeArguments
): HeatedTube {
  return {
    od: read.number("od", od, LENGTH),
    wall: read.number("wall", wall, LENGTH),
    amps: read.number("amps", amps, CURRENT),
    volts: read.number("volts", volts, VOLTAGE),
    speed: read.number("speed", speed, SPEED),
    extraSeconds: read.numberOr("extraSeconds", extraSeconds, TIME, 0),
    efficiency: read.numberOr("efficiency", efficiency, SHARE, ARC_EFFICIENCY),
    material: readMaterial(read, material),
    ambient: read.numberOr("ambient", ambient, TEMPERATURE, AMBIENT),
  };
}

/**
 * Greatest temperature that a place on the tube ever sees, for a purge dam there, °F | °C.
 * @customfunction DAM_TEMPERATURE
 * @param distance From the weld along the tube, in | mm
 * @param od Outside diameter, in | mm
 * @param wall Wall thickness, in | mm
 * @param amps Mean current, A
 * @param volts Arc voltage, V
 * @param speed Surface travel, in/min | mm/min
 * @param [extraSeconds] Arc on beside the one turn (dwell, lap), s; 0 if left out
 * @param [efficiency] Share of the arc's power that reaches the tube; 0.78 if left out
 * @param [material] Designation such as "316L" (default); BEAD.MATERIALS lists them
 * @param [ambient] Temperature of the tube before, °F | °C; 68 °F (20 °C) if left out
 * @param [units] "US" (default) or "SI"
 * @equation T − T₀ = max over t of f(t) − f(t − t_on); f(t) = q√(κt)/(A·k)·ierfc(x/(2√(κt))), f(t) = 0 for t ≤ 0; q = ηVI, κ = k/(ρ·cp), A = π(d − h)h, t_on = π·d/v + extra
 * @math T - T_0 = \max_t\,\bigl(f(t) - f(t - t_{\text{on}})\bigr)
 * @math f(t) = \frac{q\sqrt{\kappa t}}{A\,k}\,\operatorname{ierfc}\frac{x}{2\sqrt{\kappa t}},\quad f(t) = 0\ \text{for}\ t \le 0
 * @math q = \eta V I,\quad \kappa = \frac{k}{\rho\,c_p}
 * @math A = \pi(d - h)h,\quad t_{\text{on}} = \frac{\pi d}{v} + \text{extra}
 * @where T greatest temperature; T₀ temperature before (ambient); t time since the arc started; tₒₙ time the arc is on; f rise under an arc that never stops; x distance from the weld (distance); q power into the tube, W; η share of the arc's power that reaches it (efficiency); V arc voltage (volts); I mean current (amps); k conductivity at 25 °C (material); κ diffusivity at 25 °C; ρ density; cₚ specific heat; A section of the tube's wall; d outside diameter (od); h wall thickness (wall); v surface travel (speed); extra arc on beside the one turn (extraSeconds); ierfc integral of the complementary error function
 * @validity Some wall widths from the weld, where the heat has evened out round the tube
 * @assumptions The weld is one source, even round the tube, of constant power while the arc is on, half of it each way. Cold k and ρ·cp, no surface loss, tube long on both sides: on the hot side.
 * @source Carslaw & Jaeger §2.9, constant flux; common practice keeps water-soluble dams 6 in (150 mm) or more away: the larger of the two governs
 * @unconfirmed Compared with finite differences of the same rod, with no weld
 * @related DAM_DISTANCE, AMPS_MELT, MATERIALS, TRAVEL_TIME
 * @figure dams
 * @example =BEAD.DAM_TEMPERATURE(6, 1, 0.065, 46, 9.4, 5) → 144.818
 */
export function damTemperatureCell(
  distance: unknown,
  od: unknown,
  wall: unknown,
  amps: unknown,
  volts: unknown,
  speed: unknown,
  extraSeconds?: unknown,
  efficiency?: unknown,
  material?: unknown,
  ambient?: unknown,
  units?: unknown,
): number {
  return answer(units, (read) => {
    const place = read.number("distance", distance, LENGTH);
    const heated = readHeatedTube(
      read,
      od,
      wall,
      amps,
      volts,
      speed,
      extraSeconds,
      efficiency,
      material,
      ambient,
    );
    return read.give(damTemperature(place, heated), TEMPERATURE);
  });
}

/**
 * Least distance from the weld that never gets above a temperature, for a purge dam, in | mm.
 * @customfunction DAM_DISTANCE
 * @param limit Greatest temperature the dam stands, °F | °C
 * @param od Outside diameter, in | mm
 * @param wall Wall thickness, in | mm
 * @param amps Mean current, A
 * @param volts Arc voltage, V
 * @param speed Surface travel, in/min | mm/min
 * @param [extraSeconds] Arc on beside the one turn (dwell, lap), s; 0 if left out
 * @param [efficiency] Share of the arc's power that reaches the tube; 0.78 if left out
 * @param [material] Designation such as "316L" (default); BEAD.MATERIALS lists them
 * @param [ambient] Temperature of the tube before, °F | °C; 68 °F (20 °C) if left out
 * @param [units] "US" (default) or "SI"
 * @equation The x at which DAM_TEMPERATURE is the limit
 * @validity As DAM_TEMPERATURE. #N/A if the limit is above what the weld itself reaches by this reckoning.
 * @assumptions As DAM_TEMPERATURE, on the hot side: the distance comes out too long rather than too short
 * @source As DAM_TEMPERATURE. Common practice keeps water-soluble dams 6 in (150 mm) or more away: the larger of the two governs
 * @unconfirmed As DAM_TEMPERATURE: compared with finite differences of the same rod, with no weld
 * @related DAM_TEMPERATURE, AMPS_MELT, MATERIALS
 * @figure dams
 * @example =BEAD.DAM_DISTANCE(212, 1, 0.065, 46, 9.4, 5) → 3.20066
 */
export function damDistanceCell(
  limit: unknown,
  od: unknown,
  wall: unknown,
  amps: unknown,
  volts: unknown,
  speed: unknown,
  extraSeconds?: unknown,
  efficiency?: unknown,
  material?: unknown,
  ambient?: unknown,
  units?: unknown,
): number {
  return answer(units, (read) => {
    const most = read.number("limit", limit, TEMPERATURE);
    const heated = readHeatedTube(
      read,
      od,
      wall,
      amps,
      volts,
      speed,
      extraSeconds,
      efficiency,
      material,
      ambient,
    );
    return read.give(damDistance(most, heated), LENGTH);
  });
}
