import { laminarFlow, reynolds } from "../../src/purge/bore-flow";
import type { Gas } from "../../src/gas/gas";
import { blowOutPressure } from "../../src/purge/puddle";
import { BORE_PRESSURE, FLOW, LENGTH, SHARE } from "../../src/quantity";
import { SHARP_EDGE_DISCHARGE, ventDiameter, ventPressure } from "../../src/purge/vent";
import { answer } from "../answer";
import type { Reader } from "../cells";
import { readGas } from "../gas/gas";
import { readMaterial } from "../metal/materials";

/** What both vent formulas end with: the gas that flows and the discharge coefficient of the hole. */
function readOrifice(read: Reader, gas: unknown, discharge: unknown): [Gas, number] {
  return [readGas(read, gas), read.numberOr("discharge", discharge, SHARE, SHARP_EDGE_DISCHARGE)];
}

/**
 * Reynolds number of the purge gas in the bore.
 * @customfunction PURGE_REYNOLDS
 * @param bore Inside diameter, in | mm
 * @param flow Purge flow, ft³/h | L/min
 * @param [gas] "AR" (default), "N2", "HE" or "AIR"
 * @param [units] "US" (default) or "SI"
 * @equation Re = 4ρQ/(π·μ·d); ρ and μ at 20 °C and 1 atm
 * @math \mathrm{Re} = \frac{4\rho Q}{\pi\mu d}
 * @where Re Reynolds number; ρ density of the gas at 20 °C and 1 atm (gas); Q purge flow (flow); μ dynamic viscosity of the gas at the same state; d inside diameter (bore)
 * @validity Under about 2000 the gas runs smoothly and pushes the air ahead of it; above 2300 it mixes.
 * @assumptions A round bore
 * @source Reynolds; ρ and μ are NIST values, μ of helium a handbook value
 * @unconfirmed μ of nitrogen and helium are from memory
 * @related PURGE_LAMINAR, PURGE_CHANGES, PURGE_FLOW
 * @example =BEAD.PURGE_REYNOLDS(47.5, 10, "AR", "SI") → 332.826
 */
export function purgeReynoldsCell(bore: unknown, flow: unknown, gas?: unknown, units?: unknown): number {
  return answer(units, (read) =>
    reynolds(read.number("bore", bore, LENGTH), read.number("flow", flow, FLOW), readGas(read, gas)),
  );
}

/**
 * Greatest purge flow that stays smooth (laminar) in the bore, ft³/h | L/min.
 * @customfunction PURGE_LAMINAR
 * @param bore Inside diameter, in | mm
 * @param [gas] "AR" (default), "N2", "HE" or "AIR"
 * @param [units] "US" (default) or "SI"
 * @equation Q = 2000·π·μ·d/(4ρ); ρ and μ at 20 °C and 1 atm
 * @math Q = \frac{2000\,\pi\mu d}{4\rho}
 * @where Q greatest smooth flow; μ dynamic viscosity of the gas at 20 °C and 1 atm (gas); d inside diameter (bore); ρ density of the gas at the same state
 * @validity A jet from the inlet hose can stir a bore that this calls smooth.
 * @assumptions A round bore
 * @source Reynolds; ρ and μ are NIST values, μ of helium a handbook value
 * @unconfirmed μ of nitrogen and helium are from memory
 * @related PURGE_REYNOLDS, PURGE_FLOW, PURGE_TIME
 * @example =BEAD.PURGE_LAMINAR(47.5, "AR", "SI") → 60.091
 */
export function purgeLaminarCell(bore: unknown, gas?: unknown, units?: unknown): number {
  return answer(units, (read) =>
    read.give(laminarFlow(read.number("bore", bore, LENGTH), readGas(read, gas)), FLOW),
  );
}

/**
 * Diameter of a round vent that holds a bore pressure at a purge flow, in | mm.
 * @customfunction PURGE_VENT
 * @param flow Purge flow, ft³/h | L/min
 * @param pressure Bore pressure to hold above the room, inH₂O | mbar
 * @param [gas] "AR" (default), "N2", "HE" or "AIR"
 * @param [discharge] Discharge coefficient, above 0 to 1; 0.61 (sharp edge) if left out
 * @param [units] "US" (default) or "SI"
 * @equation Q = Cd·π/4·d²·√(2Δp/ρ), solved for d
 * @math Q = C_d\,\frac{\pi}{4}\,d^2\sqrt{\frac{2\,\Delta p}{\rho}}
 * @where Q purge flow (flow); C_d discharge coefficient (discharge); d diameter of the vent; Δp bore pressure above the room (pressure); ρ density of the gas at 20 °C and 1 atm (gas)
 * @validity pressure at most 25 mbar (10 inH₂O). At small flows Cd is known to some 10 % only, so read a gauge.
 * @assumptions The gas passes for incompressible; sharp-edged hole in a thin cap, bore far wider than the hole
 * @source Orifice equation of ISO 5167 and textbooks, without the velocity of approach
 * @related PURGE_PRESSURE, PURGE_CEILING, PURGE_FLOW
 * @figure vent
 * @example =BEAD.PURGE_VENT(10, 1, "AR", , "SI") → 5.6312
 */
export function purgeVentCell(
  flow: unknown,
  pressure: unknown,
  gas?: unknown,
  discharge?: unknown,
  units?: unknown,
): number {
  return answer(units, (read) =>
    read.give(
      ventDiameter(
        read.number("flow", flow, FLOW),
        read.number("pressure", pressure, BORE_PRESSURE),
        ...readOrifice(read, gas, discharge),
      ),
      LENGTH,
    ),
  );
}

/**
 * Bore pressure that a round vent holds at a purge flow, inH₂O | mbar above the room.
 * @customfunction PURGE_PRESSURE
 * @param flow Purge flow, ft³/h | L/min
 * @param ventDiameter Diameter of the vent, in | mm
 * @param [gas] "AR" (default), "N2", "HE" or "AIR"
 * @param [discharge] Discharge coefficient, above 0 to 1; 0.61 (sharp edge) if left out
 * @param [units] "US" (default) or "SI"
 * @equation Δp = ρ/2·(Q/(Cd·π/4·d²))²
 * @math \Delta p = \frac{\rho}{2}\left(\frac{Q}{C_d\,\frac{\pi}{4}\,d^2}\right)^2
 * @where Δp bore pressure above the room; ρ density of the gas at 20 °C and 1 atm (gas); Q purge flow (flow); C_d discharge coefficient (discharge); d diameter of the vent (ventDiameter)
 * @validity As PURGE_VENT; a vent that would hold more than 25 mbar (10 inH₂O) is refused. Compare with PURGE_CEILING and keep well under it.
 * @assumptions As PURGE_VENT
 * @source Orifice equation of ISO 5167 and textbooks, without the velocity of approach
 * @related PURGE_VENT, PURGE_CEILING, PURGE_FLOW
 * @figure vent
 * @example =BEAD.PURGE_PRESSURE(20, 0.1875) → 0.69914
 */
export function purgePressureCell(
  flow: unknown,
  ventDiameter: unknown,
  gas?: unknown,
  discharge?: unknown,
  units?: unknown,
): number {
  return answer(units, (read) =>
    read.give(
      ventPressure(
        read.number("flow", flow, FLOW),
        read.number("ventDiameter", ventDiameter, LENGTH),
        ...readOrifice(read, gas, discharge),
      ),
      BORE_PRESSURE,
    ),
  );
}

/**
 * Bore pressure at which the molten root blows out, inH₂O | mbar above the room.
 * @customfunction PURGE_CEILING
 * @param rootWidth Width of the molten root, in | mm
 * @param [material] Designation such as "316L" (default); BEAD.MATERIALS lists them
 * @param [units] "US" (default) or "SI"
 * @equation Δp = 2σ/w, σ of the liquid metal
 * @math \Delta p = \frac{2\sigma}{w}
 * @where Δp bore pressure above the room; σ surface tension of the liquid metal (material); w width of the molten root (rootWidth)
 * @validity A ceiling, no target: stay well under it. Sulphur lowers σ further.
 * @assumptions A long root, which bulges to a half-cylinder as wide as it is. The metal's own weight is left out: about 1 mbar for 1.6 mm of steel, it lowers the ceiling at the bottom of the tube, where it hangs outward.
 * @source Young–Laplace for a half-cylinder; σ and its source in MATERIALS
 * @unconfirmed No measured blow-out stands beside it. σ of some metals is from memory or an estimate; MATERIALS marks them.
 * @related PURGE_PRESSURE, PURGE_VENT, MATERIALS
 * @figure puddle
 * @example =BEAD.PURGE_CEILING(4, "316L", "SI") → 7.965
 */
export function purgeCeilingCell(rootWidth: unknown, material?: unknown, units?: unknown): number {
  return answer(units, (read) =>
    read.give(
      blowOutPressure(read.number("rootWidth", rootWidth, LENGTH), readMaterial(read, material)),
      BORE_PRESSURE,
    ),
  );
}
