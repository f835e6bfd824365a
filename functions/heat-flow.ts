import { commonBeadWidth } from "../src/bead";
import { ARC_EFFICIENCY, commonArcVolts, wattsPerAmp } from "../src/heat-flow/arc";
import { meltPower, meltWidth } from "../src/heat-flow/melt-power";
import type { Plate } from "../src/heat-flow/plate";
import { plateOf } from "../src/heat-flow/plate";
import { ringSectors } from "../src/heat-flow/sectors";
import { startDwell } from "../src/heat-flow/start-dwell";
import { AMBIENT } from "../src/material";
import {
  ANGLE,
  COUNT,
  CURRENT,
  LENGTH,
  SHARE,
  SPEED,
  TEMPERATURE,
  TEMPERATURE_RISE,
  TIME,
  VOLTAGE,
} from "../src/quantity";
import { answer } from "./answer";
import type { Reader } from "./cells";
import { readMaterial } from "./materials";

const COMMON_SECTORS = 4;

function readPlate(read: Reader, wall: unknown, material: unknown, preheat: unknown): Plate {
  const thickness = read.number("wall", wall, LENGTH);
  const metal = readMaterial(read, material);
  return plateOf(thickness, metal, read.numberOr("preheat", preheat, TEMPERATURE, AMBIENT));
}

function readWidth(read: Reader, beadWidth: unknown, plate: Plate): number {
  return read.numberOr("beadWidth", beadWidth, LENGTH, undefined) ?? commonBeadWidth(plate.wall);
}

function readWattsPerAmp(read: Reader, volts: unknown, efficiency: unknown, plate: Plate): number {
  const across = read.numberOr("volts", volts, VOLTAGE, undefined) ?? commonArcVolts(plate.wall);
  return wattsPerAmp(across, read.numberOr("efficiency", efficiency, SHARE, ARC_EFFICIENCY));
}

/**
 * Mean current that melts a bead of a given width through the wall, from heat flow, A.
 * @customfunction AMPS_MELT
 * @param wall Wall thickness, in | mm
 * @param speed Surface travel, in/min | mm/min
 * @param [beadWidth] Fused width, mean of face and root, in | mm; 1 mm + 2 × wall if left out
 * @param [material] Designation such as "316L" (default); BEAD.MATERIALS lists them
 * @param [volts] Arc voltage, V; ARC_VOLTS at STANDOFF of the wall if left out
 * @param [efficiency] Share of the arc's power that reaches the tube; 0.78 if left out
 * @param [preheat] Temperature of the tube before the arc comes, °F | °C; 68 °F (20 °C) if left out
 * @param [units] "US" (default) or "SI"
 * @equation I = q/(ηV); q = 2πkhθ/(exp(x·K₀/K₁)·K₀), λ = v/2α, at the x with x√(1 − (K₀/K₁)²) = λb/2; K₀, K₁ of x;
 *   θ = liquidus − preheat
 * @math I = \frac{q}{\eta V}, \quad q = \frac{2 \pi k h \theta}{\exp(x K_0 / K_1)\, K_0}
 * @math x \sqrt{1 - (K_0 / K_1)^2} = \frac{\lambda b}{2}, \quad \lambda = \frac{v}{2 \alpha}
 * @where I current; q power into the plate; η arc efficiency (efficiency); V arc voltage (volts); k hot
 *   conductivity; h wall thickness (wall); θ liquidus less preheat; x where the melted edge is widest; K₀ and K₁
 *   modified Bessel functions of x; λ inverse length of the travelling heat; b bead width (beadWidth); v surface
 *   travel (speed); α hot diffusivity
 * @validity Full-penetration single passes, autogenous.
 * @assumptions The heat is uniform through the wall, k and α are constant; no surface loss, no clamp taking heat,
 *   no effect of sulphur on penetration.
 * @source Rosenthal 1941 and 1946, moving line source in a plate; arc efficiency Stenbacka, Choquet & Hurtig 2012
 *   (95 % range 0.73–0.82).
 * @unconfirmed Compared with brackets of published practice for 316L of 1 to 3.2 mm only (see SCHEDULE), with no
 *   single measured weld; prove on a coupon. Default width and voltage are estimates from common practice.
 * @related MELT_WIDTH, AMPS_SECTORS, START_DWELL, AMPS_WALL
 * @figure plate
 * @example =BEAD.AMPS_MELT(0.065, 5) → 45.3828
 */
export function ampsMeltCell(
  wall: unknown,
  speed: unknown,
  beadWidth?: unknown,
  material?: unknown,
  volts?: unknown,
  efficiency?: unknown,
  preheat?: unknown,
  units?: unknown,
): number {
  return answer(units, (read) => {
    const plate = readPlate(read, wall, material, preheat);
    const travel = read.number("speed", speed, SPEED);
    const power = meltPower(plate, travel, readWidth(read, beadWidth, plate));
    return power / readWattsPerAmp(read, volts, efficiency, plate);
  });
}

/**
 * Fused width that a current melts, from heat flow, in | mm: the inverse of AMPS_MELT.
 * @customfunction MELT_WIDTH
 * @param wall Wall thickness, in | mm
 * @param amps Mean current, A
 * @param speed Surface travel, in/min | mm/min
 * @param [material] Designation such as "316L" (default); BEAD.MATERIALS lists them
 * @param [volts] Arc voltage, V; ARC_VOLTS at STANDOFF of the wall if left out
 * @param [efficiency] Share of the arc's power that reaches the tube; 0.78 if left out
 * @param [preheat] Temperature of the tube before the arc comes, °F | °C; 68 °F (20 °C) if left out
 * @param [units] "US" (default) or "SI"
 * @equation b = 2x√(1 − (K₀/K₁)²)/λ at the x with exp(x·K₀/K₁)·K₀ = 2πkhθ/(ηVI), λ = v/2α; K₀, K₁ of x
 * @math b = \frac{2 x \sqrt{1 - (K_0 / K_1)^2}}{\lambda}
 * @math \exp(x K_0 / K_1)\, K_0 = \frac{2 \pi k h \theta}{\eta V I}, \quad \lambda = \frac{v}{2 \alpha}
 * @where b melted width; x where the melted edge is widest; K₀ and K₁ modified Bessel functions of x; λ inverse
 *   length of the travelling heat; k hot conductivity; h wall thickness (wall); θ liquidus less preheat; η arc
 *   efficiency (efficiency); V arc voltage (volts); I current (amps); v surface travel (speed); α hot diffusivity
 * @validity As AMPS_MELT. A width under one wall thickness is no full-penetration bead: the heat is then not
 *   uniform through the wall.
 * @source Rosenthal 1941 and 1946, moving line source in a plate; the power of Wells 1952 agrees within 8 % for
 *   v·b/4α from 0.05 to 5
 * @unconfirmed No measured weld stands behind the width.
 * @related AMPS_MELT, AMPS_SECTORS, HEAT_INPUT
 * @figure plate
 * @example =BEAD.MELT_WIDTH(0.065, 45, 5) → 0.16701
 */
export function meltWidthCell(
  wall: unknown,
  amps: unknown,
  speed: unknown,
  material?: unknown,
  volts?: unknown,
  efficiency?: unknown,
  preheat?: unknown,
  units?: unknown,
): number {
  return answer(units, (read) => {
    const plate = readPlate(read, wall, material, preheat);
    const current = read.number("amps", amps, CURRENT);
    const travel = read.number("speed", speed, SPEED);
    const watts = readWattsPerAmp(read, volts, efficiency, plate);
    return read.give(meltWidth(plate, travel, current, watts), LENGTH);
  });
}

/**
 * Current sector by sector round the tube, which warms up as it is welded: a row each, the overlap as one more.
 * @customfunction AMPS_SECTORS
 * @param od Outside diameter, in | mm
 * @param wall Wall thickness, in | mm
 * @param speed Surface travel, in/min | mm/min
 * @param [sectors] Equal sectors of the full turn; 4 if left out
 * @param [overlap] Degrees past the full turn; 0 if left out
 * @param [dwell] Arc on before the head turns, s; START_DWELL of the same bead if left out
 * @param [beadWidth] Fused width, mean of face and root, in | mm; 1 mm + 2 × wall if left out
 * @param [material] Designation such as "316L" (default); BEAD.MATERIALS lists them
 * @param [volts] Arc voltage, V; ARC_VOLTS at STANDOFF of the wall if left out
 * @param [efficiency] Share of the arc's power that reaches the tube; 0.78 if left out
 * @param [preheat] Temperature of the tube before the arc comes, °F | °C; 68 °F (20 °C) if left out
 * @param [units] "US" (default) or "SI"
 * @returns Columns: from °; to °; mean amps; share of the first sector's amps; rise ahead of the arc at the
 *   sector's end °F | °C
 * @equation q(t) = q(b)·(1 − T(t)/θ), T the rise that all heat so far, dwell included, sends round the
 *   circumference π(d − t); I = mean of q/(ηV)
 * @math q(t) = q(b) \left( 1 - \frac{T(t)}{\theta} \right)
 * @math I = \overline{\frac{q}{\eta V}}, \quad \text{round } \pi (d - t_w)
 * @where q power into the tube, q(b) that of the bead on a cold plate; b bead width (beadWidth); t time; T rise
 *   ahead of the arc from all heat so far; θ liquidus less preheat; I mean current of a sector; η arc efficiency
 *   (efficiency); V arc voltage (volts); d outside diameter (od); t_w wall thickness (wall)
 * @validity As AMPS_MELT, on a tube that starts evenly warm. Travel of the outside is taken at the mean diameter.
 *   overlap up to 1080°, 1 to 360 sectors. #N/A where the tube's own heat would melt it ahead of the arc.
 * @source Rosenthal's line source with images round the ring, solved as a Volterra equation to 0.1 %; the warming
 *   it answers is what Kou & Le 1984 measured on small girth welds
 * @unconfirmed No measured weld: it is compared with a finite-difference run of the same ring; only the trend round
 *   a small ring is published.
 * @related AMPS_MELT, START_DWELL, SCHEDULE, MELT_WIDTH
 * @figure sectors
 * @example =BEAD.AMPS_SECTORS(1, 0.065, 5) → 0, 90, 45.383, 1, 0.0; 90, 180, 45.337, 0.9990, 13.8; 180, 270, 43.944, 0.9683, 187.4; 270, 360, 39.611, 0.8728, 458.5
 */
export function ampsSectorsCells(
  od: unknown,
  wall: unknown,
  speed: unknown,
  sectors?: unknown,
  overlap?: unknown,
  dwell?: unknown,
  beadWidth?: unknown,
  material?: unknown,
  volts?: unknown,
  efficiency?: unknown,
  preheat?: unknown,
  units?: unknown,
): number[][] {
  return answer(units, (read) => {
    const diameter = read.number("od", od, LENGTH);
    const plate = readPlate(read, wall, material, preheat);
    const travel = read.number("speed", speed, SPEED);
    const width = readWidth(read, beadWidth, plate);
    const rows = ringSectors(plate, {
      od: diameter,
      speed: travel,
      beadWidth: width,
      dwell: read.numberOr("dwell", dwell, TIME, undefined) ?? startDwell(plate, travel, width),
      sectors: read.numberOr("sectors", sectors, COUNT, COMMON_SECTORS),
      overlap: read.numberOr("overlap", overlap, ANGLE, 0),
    });
    const watts = readWattsPerAmp(read, volts, efficiency, plate);
    return rows.map(({ from, to, power, share, rise }) => [
      from,
      to,
      power / watts,
      share,
      read.give(rise, TEMPERATURE_RISE),
    ]);
  });
}

/**
 * Time the arc stands still to melt out to half the bead width before the head turns, s.
 * @customfunction START_DWELL
 * @param wall Wall thickness, in | mm
 * @param speed Surface travel, in/min | mm/min
 * @param [beadWidth] Fused width, mean of face and root, in | mm; 1 mm + 2 × wall if left out
 * @param [material] Designation such as "316L" (default); BEAD.MATERIALS lists them
 * @param [preheat] Temperature of the tube before the arc comes, °F | °C; 68 °F (20 °C) if left out
 * @param [units] "US" (default) or "SI"
 * @equation E₁(b²/16αt) = 4πkhθ/q, q the power of AMPS_MELT
 * @math E_1\!\left( \frac{b^2}{16 \alpha t} \right) = \frac{4 \pi k h \theta}{q}
 * @where E₁ the exponential integral; b bead width (beadWidth); α hot diffusivity; t dwell; k hot conductivity; h
 *   wall thickness (wall); θ liquidus less preheat; q power of AMPS_MELT
 * @validity As AMPS_MELT, at the bead's own power from the first moment. preheat does not change it: the power of
 *   AMPS_MELT falls in the same proportion.
 * @source Standing line source in a plate, Carslaw & Jaeger §10.4
 * @unconfirmed No measured weld stands behind the dwell.
 * @related AMPS_MELT, AMPS_SECTORS, CYCLE_TIME
 * @figure plate
 * @example =BEAD.START_DWELL(0.065, 5) → 4.27072
 */
export function startDwellCell(
  wall: unknown,
  speed: unknown,
  beadWidth?: unknown,
  material?: unknown,
  preheat?: unknown,
  units?: unknown,
): number {
  return answer(units, (read) => {
    const plate = readPlate(read, wall, material, preheat);
    const travel = read.number("speed", speed, SPEED);
    return startDwell(plate, travel, readWidth(read, beadWidth, plate));
  });
}
