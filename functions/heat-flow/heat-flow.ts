import { commonBeadWidth } from "../../src/travel/bead";
import { ARC_EFFICIENCY, commonArcVolts, wattsPerAmp } from "../../src/heat-flow/arc";
import { meltPower, meltWidth } from "../../src/heat-flow/melt-power";
import type { Plate } from "../../src/heat-flow/plate";
import { plateOf } from "../../src/heat-flow/plate";
import { ringSectors } from "../../src/heat-flow/sectors";
import { startDwell } from "../../src/heat-flow/start-dwell";
import { AMBIENT } from "../../src/metal/material";
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
} from "../../src/quantity";
import { answer } from "../answer";
import type { Reader } from "../cells";
import { readMaterial } from "../metal/materials";

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
 * @equation I = q/(ηV); q = 2πkhθ/(exp(x·K₀/K₁)·K₀), λ = v/(2α), θ = liquidus − preheat, at the x with x√(1 − (K₀/K₁)²) = λb/2; K₀, K₁ of x
 * @math I = \frac{q}{\eta V}
 * @math q = \frac{2\pi k h\theta}{\exp\left(x\,\frac{K_0}{K_1}\right) K_0},\quad \theta = \text{liquidus} - \text{preheat}
 * @math x\sqrt{1 - \left(\frac{K_0}{K_1}\right)^2} = \frac{\lambda b}{2},\quad \lambda = \frac{v}{2\alpha}
 * @where I mean current, A; q power into the tube, W; η share of the arc's power that reaches it (efficiency); V arc voltage (volts); k conductivity near 1200 K (material); h wall thickness (wall); θ rise to the liquidus; liquidus temperature at which the last solid melts; preheat temperature before the arc comes; x distance of the isotherm's widest place from the arc, times λ; K₀ modified Bessel function of the second kind and order 0, of x; K₁ the same of order 1; λ of the moving source, 1/length; b fused width (beadWidth); v surface travel (speed); α diffusivity near 1200 K
 * @validity Full-penetration single passes, autogenous; prove on a coupon
 * @assumptions Takes the heat as uniform through the wall and k and α as constant; no surface loss, no clamp taking heat, no effect of sulphur on penetration
 * @source Rosenthal 1941 and 1946, moving line source in a plate; arc efficiency Stenbacka, Choquet & Hurtig 2012 (95 % range 0.73–0.82)
 * @unconfirmed Compared with brackets of published practice for 316L of 1 to 3.2 mm only (see SCHEDULE), with no single measured weld. Default width and voltage are estimates from common practice.
 * @related MELT_WIDTH, AMPS_SECTORS, AMPS_WALL, START_DWELL, TRAVEL_SUGGEST
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
 * @equation b = 2x√(1 − (K₀/K₁)²)/λ at the x with exp(x·K₀/K₁)·K₀ = 2πkhθ/(ηVI), λ = v/(2α), θ = liquidus − preheat; K₀, K₁ of x
 * @math b = \frac{2x}{\lambda}\sqrt{1 - \left(\frac{K_0}{K_1}\right)^2},\quad \lambda = \frac{v}{2\alpha}
 * @math \exp\left(x\,\frac{K_0}{K_1}\right) K_0 = \frac{2\pi k h\theta}{\eta V I},\quad \theta = \text{liquidus} - \text{preheat}
 * @where b fused width; x distance of the isotherm's widest place from the arc, times λ; λ of the moving source, 1/length; K₀ modified Bessel function of the second kind and order 0, of x; K₁ the same of order 1; v surface travel (speed); α diffusivity near 1200 K (material); k conductivity near 1200 K (material); h wall thickness (wall); θ rise to the liquidus; liquidus temperature at which the last solid melts; preheat temperature before the arc comes; η share of the arc's power that reaches the tube (efficiency); V arc voltage (volts); I mean current (amps)
 * @validity As AMPS_MELT. A width under one wall thickness is no full-penetration bead: the heat is then not uniform through the wall.
 * @assumptions As AMPS_MELT
 * @source Rosenthal 1941 and 1946, moving line source in a plate; the power of Wells 1952 agrees within 8 % for v·b/4α from 0.05 to 5
 * @unconfirmed As AMPS_MELT: no single measured weld. The default voltage is an estimate from common practice.
 * @related AMPS_MELT, AMPS_SECTORS, PULSE_RATE, TRAVEL_SUGGEST
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
 * @returns Columns: from °; to °; mean amps; share of the first sector's amps; rise ahead of the arc at the sector's end °F | °C
 * @equation q(t) = q_b·(1 − T(t)/θ), T(t) = 1/(4πkh)·∫ q(t − u)·Σ exp(−(s + nC)²/(4αu))/u du, u from 0 to t + D, n ≠ 0; s = v·min(u, t), C = π(d − h); I = mean of q/(ηV); q_b the power of AMPS_MELT, D the dwell
 * @math q(t) = q_b\left(1 - \frac{T(t)}{\theta}\right)
 * @math T(t) = \frac{1}{4\pi k h}\int_0^{t + D} q(t - u)\sum_{n \ne 0}\exp\left(-\frac{(s + nC)^2}{4\alpha u}\right)\frac{\mathrm{d}u}{u}
 * @math s = v\min(u, t),\quad C = \pi(d - h),\quad I = \frac{\bar{q}}{\eta V}
 * @where q power into the tube, q_b until the head turns, W; q_b power of the bead in a plate, of AMPS_MELT, W; t time since the head turns; T rise ahead of the arc by all heat that came round the tube; θ rise from preheat to the liquidus; k conductivity near 1200 K (material); h wall thickness (wall); D dwell before the head turns (dwell); u time since a piece of heat went in; n turns round the tube, forwards and backwards; s way of the arc since; C mean circumference; α diffusivity near 1200 K; v surface travel (speed); d outside diameter (od); I mean current of a sector, A; η share of the arc's power that reaches the tube (efficiency); V arc voltage (volts)
 * @validity As AMPS_MELT. overlap up to 1080°, 1 to 360 sectors. #N/A where the tube's own heat would melt it ahead of the arc.
 * @assumptions As AMPS_MELT, on a tube that starts evenly warm. Travel of the outside is taken at the mean diameter.
 * @source Rosenthal's line source with images round the ring, solved as a Volterra equation to 0.1 %; the warming it answers is what Kou & Le 1984 measured on small girth welds
 * @unconfirmed Compared with a finite-difference run of the same ring, no weld. Default width and voltage are estimates from common practice.
 * @related AMPS_MELT, START_DWELL, OVERLAP_SUGGEST, SCHEDULE
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
 * @equation E₁(b²/(16αt)) = 4πkhθ/q; q the power of AMPS_MELT
 * @math E_1\left(\frac{b^2}{16\alpha t}\right) = \frac{4\pi k h\theta}{q}
 * @where E₁ exponential integral; b fused width (beadWidth); α diffusivity near 1200 K (material); t dwell; k conductivity near 1200 K (material); h wall thickness (wall); θ rise from preheat to the liquidus; q power into the tube, of AMPS_MELT, W
 * @validity As AMPS_MELT. preheat does not change it: the power of AMPS_MELT falls in the same proportion.
 * @assumptions As AMPS_MELT, at the bead's own power from the first moment
 * @source Standing line source in a plate, Carslaw & Jaeger §10.4
 * @unconfirmed As AMPS_MELT: no measured weld. The default width is an estimate from common practice.
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
