import { ampsByWall } from "../../src/current/amperage";
import { LENGTH } from "../../src/quantity";
import { answer } from "../answer";
import { readMaterial } from "../metal/materials";

/**
 * Current by the trade's rule, one ampere per thousandth of an inch of wall, A.
 * @customfunction AMPS_WALL
 * @param wall Wall thickness, in | mm
 * @param [material] Designation such as "316L" (default); BEAD.MATERIALS lists them
 * @param [units] "US" (default) or "SI"
 * @equation I = 1 A·t/0.001 in·kθ/(kθ of 316L), θ = liquidus − 20 °C; k hot
 * @math I = 1\ \text{A}\cdot\frac{t}{0.001\ \text{in}}\cdot\frac{k\,\theta}{k_{\text{316L}}\,\theta_{\text{316L}}}
 * @math \theta = \text{liquidus} - 20\ \text{°C}
 * @where I current, A; t wall thickness (wall); k thermal conductivity of the metal near 1200 K (material); θ rise from 20 °C to the liquidus; k_316L conductivity of 316L near 1200 K; θ_316L rise of 316L; liquidus temperature at which the last solid melts
 * @validity A first guess for ordinary speeds; shops run 0.8 to 1.8 A per 0.001 in
 * @assumptions A metal other than 316L takes its current in the proportion of hot conductivity × melting rise, as the heat-flow model has it for a bead as wide at the same v·b/α
 * @source Common practice for 316L; AMPS_MELT's model for the proportion of the other metals
 * @unconfirmed Nothing outside confirms that proportion for other metals
 * @related AMPS_MELT, SCHEDULE, MATERIALS
 * @example =BEAD.AMPS_WALL(0.065) → 65
 */
export function ampsWallCell(wall: unknown, material?: unknown, units?: unknown): number {
  return answer(units, (read) => ampsByWall(read.number("wall", wall, LENGTH), readMaterial(read, material)));
}
