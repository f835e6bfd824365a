import { ampsByWall } from "../src/amperage";
import { LENGTH } from "../src/quantity";
import { answer } from "./answer";
import { readMaterial } from "./materials";

/**
 * Current by the trade's rule, one ampere per thousandth of an inch of wall, A.
 * @customfunction AMPS_WALL
 * @param wall Wall thickness, in | mm
 * @param [material] Designation such as "316L" (default); BEAD.MATERIALS lists them
 * @param [units] "US" (default) or "SI"
 * @equation I = 1 A · t/0.001 in · kθ/(kθ of 316L); θ = liquidus − 20 °C, k hot
 * @math I = 1\,\text{A} \cdot \frac{t}{0.001\,\text{in}} \cdot \frac{k\,\theta}{k_\text{316L}\,\theta_\text{316L}}
 * @math \theta = T_\text{liq} - 20\,\text{°C}
 * @where I current; t wall thickness (wall); k hot conductivity of the metal (material); θ rise from 20 °C to the liquidus; k_316L the same conductivity of 316L; θ_316L the same rise of 316L; T_liq liquidus of the metal
 * @validity A first guess for ordinary speeds; shops run 0.8 to 1.8 A per 0.001 in
 * @assumptions Another metal is welded with a bead as wide, at the same speed × width over diffusivity, as 316L
 * @source Common practice for 316L; other metals in the proportion of hot conductivity × melting rise
 * @unconfirmed The proportion for metals other than 316L: nothing outside confirms it.
 * @related AMPS_MELT, AMPS_SECTORS, SCHEDULE, MATERIALS
 * @example =BEAD.AMPS_WALL(0.065) → 65
 */
export function ampsWallCell(wall: unknown, material?: unknown, units?: unknown): number {
  return answer(units, (read) => ampsByWall(read.number("wall", wall, LENGTH), readMaterial(read, material)));
}
