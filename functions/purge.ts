import type { Gas } from "../src/gas";
import { laminarFlow, reynolds } from "../src/bore-flow";
import { blowOutPressure } from "../src/puddle";
import { ANY_FLOW, BORE_PRESSURE, COUNT, FLOW, LENGTH, OXYGEN, SHARE, TIME, VOLUME } from "../src/quantity";
import {
  COMMON_TARGET_PPM,
  leakOxygen,
  purgeChanges,
  purgeFlow,
  purgeOxygen,
  purgeTime,
  purgeVolume,
} from "../src/purge";
import { tintSample } from "../src/tables/tint";
import { SHARP_EDGE_DISCHARGE, ventDiameter, ventPressure } from "../src/vent";
import { answer, answerAlike } from "./answer";
import type { Reader } from "./cells";
import { readGas } from "./gas";
import { readMaterial } from "./materials";

/** What every dilution formula ends with: target, oxygen of the supply, mixed cells in series. */
function readTarget(
  read: Reader,
  ppm: unknown,
  supplyPpm: unknown,
  cells: unknown,
): [number, number, number] {
  return [read.numberOr("ppm", ppm, OXYGEN, COMMON_TARGET_PPM), ...readSupply(read, supplyPpm, cells)];
}

function readSupply(read: Reader, supplyPpm: unknown, cells: unknown): [number, number] {
  return [read.numberOr("supplyPpm", supplyPpm, OXYGEN, 0), read.numberOr("cells", cells, COUNT, 1)];
}

/** What both vent formulas end with: the gas that flows and the discharge coefficient of the hole. */
function readOrifice(read: Reader, gas: unknown, discharge: unknown): [Gas, number] {
  return [readGas(read, gas), read.numberOr("discharge", discharge, SHARE, SHARP_EDGE_DISCHARGE)];
}

/**
 * Gas volume of the purged length of bore, ft³ | L.
 * @customfunction PURGE_VOLUME
 * @param bore Inside diameter, in | mm
 * @param length Purged length, dam to dam, in | mm
 * @param [units] "US" (default) or "SI"
 * @equation V = π/4·d²·L
 * @math V = \frac{\pi}{4}\,d^2 L
 * @where V gas volume; d inside diameter (bore); L purged length (length)
 * @validity bore and length above 0; add hoses and fittings
 * @assumptions A round bore
 * @source Geometry
 * @related PURGE_TIME, PURGE_FLOW, PURGE_CHANGES
 * @example =BEAD.PURGE_VOLUME(47.498, 6096, "SI") → 10.801535
 */
export function purgeVolumeCell(bore: unknown, length: unknown, units?: unknown): number {
  return answer(units, (read) =>
    read.give(purgeVolume(read.number("bore", bore, LENGTH), read.number("length", length, LENGTH)), VOLUME),
  );
}

/**
 * Volume changes that bring air down to an oxygen level.
 * @customfunction PURGE_CHANGES
 * @param [ppm] Oxygen to reach, ppm; 50 if left out
 * @param [supplyPpm] Oxygen in the purge gas, ppm; 0 if left out
 * @param [cells] Mixed cells in series: 1 (default) fully mixed and safe, more nears plain displacement
 * @equation C = Cs + (C₀ − Cs)·e^(−N·n)·Σ (N·n)^k/k!, k from 0 to N − 1, solved for n; C₀ = 209 500 ppm
 * @math C = C_s + (C_0 - C_s)\,\exp(-Nn)\sum_{k=0}^{N-1}\frac{(Nn)^k}{k!}
 * @math C_0 = 209\,500\ \text{ppm}
 * @where C oxygen to reach (ppm); Cₛ oxygen in the purge gas (supplyPpm); C₀ oxygen in dry air; N mixed cells in series (cells); n volume changes; k index of the sum
 * @validity cells 1 to 1000; #N/A if ppm is not above supplyPpm. Leaks and dead legs need more: an oxygen meter decides.
 * @assumptions The bore starts full of dry air, flow is steady and every cell fully mixed; no leak, no dead leg
 * @source Sweep-through dilution of NFPA 69 for one cell; tanks in series for more
 * @related PURGE_TIME, PURGE_FLOW, PURGE_OXYGEN, PURGE_LEAK, PURGE_TINT
 * @figure cells
 * @example =BEAD.PURGE_CHANGES(50) → 8.3405
 */
export function purgeChangesCell(ppm?: unknown, supplyPpm?: unknown, cells?: unknown): number {
  return answerAlike((read) => purgeChanges(...readTarget(read, ppm, supplyPpm, cells)));
}

/**
 * Time to purge a bore down to an oxygen level, s.
 * @customfunction PURGE_TIME
 * @param bore Inside diameter, in | mm
 * @param length Purged length, dam to dam, in | mm
 * @param flow Purge flow, ft³/h | L/min
 * @param [ppm] Oxygen to reach, ppm; 50 if left out
 * @param [supplyPpm] Oxygen in the purge gas, ppm; 0 if left out
 * @param [cells] Mixed cells in series: 1 (default) fully mixed and safe, more nears plain displacement
 * @param [units] "US" (default) or "SI"
 * @equation t = n·V/Q, n of PURGE_CHANGES
 * @math t = \frac{n V}{Q}
 * @where t time to purge; n volume changes, of PURGE_CHANGES; V volume of the bore, of PURGE_VOLUME; Q purge flow (flow)
 * @validity As PURGE_CHANGES. An oxygen meter at the vent decides.
 * @assumptions As PURGE_CHANGES; a tight volume vented at the top
 * @source Sweep-through dilution of NFPA 69 for one cell; tanks in series for more
 * @related PURGE_CHANGES, PURGE_VOLUME, PURGE_FLOW, PURGE_OXYGEN, PURGE_LAMINAR
 * @figure cells
 * @example =BEAD.PURGE_TIME(47.498, 6096, 10, 50, 0, 1, "SI") → 540.538
 */
export function purgeTimeCell(
  bore: unknown,
  length: unknown,
  flow: unknown,
  ppm?: unknown,
  supplyPpm?: unknown,
  cells?: unknown,
  units?: unknown,
): number {
  return answer(units, (read) =>
    purgeTime(
      read.number("bore", bore, LENGTH),
      read.number("length", length, LENGTH),
      read.number("flow", flow, FLOW),
      ...readTarget(read, ppm, supplyPpm, cells),
    ),
  );
}

/**
 * Purge flow that reaches an oxygen level in a given time, ft³/h | L/min.
 * @customfunction PURGE_FLOW
 * @param bore Inside diameter, in | mm
 * @param length Purged length, dam to dam, in | mm
 * @param seconds Time to purge in, s
 * @param [ppm] Oxygen to reach, ppm; 50 if left out
 * @param [supplyPpm] Oxygen in the purge gas, ppm; 0 if left out
 * @param [cells] Mixed cells in series: 1 (default) fully mixed and safe, more nears plain displacement
 * @param [units] "US" (default) or "SI"
 * @equation Q = n·V/t, n of PURGE_CHANGES
 * @math Q = \frac{n V}{t}
 * @where Q purge flow; n volume changes, of PURGE_CHANGES; V volume of the bore, of PURGE_VOLUME; t time to purge in (seconds)
 * @validity As PURGE_CHANGES. The vent must pass this flow without raising the bore pressure.
 * @assumptions As PURGE_CHANGES
 * @source Sweep-through dilution of NFPA 69 for one cell; tanks in series for more
 * @related PURGE_CHANGES, PURGE_TIME, PURGE_VENT, PURGE_LAMINAR
 * @figure cells
 * @example =BEAD.PURGE_FLOW(47.498, 6096, 540.538, 50, 0, 1, "SI") → 10
 */
export function purgeFlowCell(
  bore: unknown,
  length: unknown,
  seconds: unknown,
  ppm?: unknown,
  supplyPpm?: unknown,
  cells?: unknown,
  units?: unknown,
): number {
  return answer(units, (read) =>
    read.give(
      purgeFlow(
        read.number("bore", bore, LENGTH),
        read.number("length", length, LENGTH),
        read.number("seconds", seconds, TIME),
        ...readTarget(read, ppm, supplyPpm, cells),
      ),
      FLOW,
    ),
  );
}

/**
 * Oxygen in the bore after a time of purging, ppm.
 * @customfunction PURGE_OXYGEN
 * @param bore Inside diameter, in | mm
 * @param length Purged length, dam to dam, in | mm
 * @param flow Purge flow, ft³/h | L/min
 * @param seconds Time purged, s
 * @param [supplyPpm] Oxygen in the purge gas, ppm; 0 if left out
 * @param [cells] Mixed cells in series: 1 (default) fully mixed and safe, more nears plain displacement
 * @param [units] "US" (default) or "SI"
 * @equation C = Cs + (C₀ − Cs)·e^(−N·n)·Σ (N·n)^k/k!, k from 0 to N − 1, n = Q·t/V; C₀ = 209 500 ppm
 * @math C = C_s + (C_0 - C_s)\,\exp(-Nn)\sum_{k=0}^{N-1}\frac{(Nn)^k}{k!}
 * @math n = \frac{Q t}{V},\quad C_0 = 209\,500\ \text{ppm}
 * @where C oxygen in the bore; Cₛ oxygen in the purge gas (supplyPpm); C₀ oxygen in dry air; N mixed cells in series (cells); n volume changes; k index of the sum; Q purge flow (flow); t time purged (seconds); V volume of the bore, of PURGE_VOLUME
 * @validity cells 1 to 1000. Never a substitute for an oxygen meter.
 * @assumptions As PURGE_CHANGES: no leak
 * @source Sweep-through dilution of NFPA 69 for one cell; tanks in series for more
 * @related PURGE_CHANGES, PURGE_TIME, PURGE_LEAK, PURGE_TINT
 * @figure cells
 * @example =BEAD.PURGE_OXYGEN(47.498, 6096, 10, 540.538, 0, 1, "SI") → 50.000
 */
export function purgeOxygenCell(
  bore: unknown,
  length: unknown,
  flow: unknown,
  seconds: unknown,
  supplyPpm?: unknown,
  cells?: unknown,
  units?: unknown,
): number {
  return answer(units, (read) =>
    purgeOxygen(
      read.number("bore", bore, LENGTH),
      read.number("length", length, LENGTH),
      read.number("flow", flow, FLOW),
      read.number("seconds", seconds, TIME),
      ...readSupply(read, supplyPpm, cells),
    ),
  );
}

/**
 * Oxygen that a steady air leak leaves in the bore however long it is purged, ppm.
 * @customfunction PURGE_LEAK
 * @param flow Purge flow, any unit
 * @param leak Air leaking in, same unit as flow
 * @equation C = 209 500 ppm·q/(Q + q)
 * @math C = 209\,500\ \text{ppm}\cdot\frac{q}{Q + q}
 * @where C oxygen that stays in the bore; Q purge flow (flow); q air leaking in, same unit (leak)
 * @validity flow above 0, leak not below 0
 * @assumptions Fully mixed, a steady leak of dry air, no oxygen in the purge gas itself
 * @source Steady dilution, as in de Nevers, Fluid Mechanics for Chemical Engineers, example 3.8
 * @related PURGE_CHANGES, PURGE_OXYGEN, PURGE_TINT
 * @example =BEAD.PURGE_LEAK(10, 0.05) → 1042.2886
 */
export function purgeLeakCell(flow: unknown, leak: unknown): number {
  return answerAlike((read) =>
    leakOxygen(read.number("flow", flow, ANY_FLOW), read.number("leak", leak, ANY_FLOW)),
  );
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

/**
 * Colour sample of AWS D18.2 to expect at an oxygen level in the purge gas, 1 to 10.
 * @customfunction PURGE_TINT
 * @param ppm Oxygen in the purge gas, ppm
 * @equation Sample of the smallest listed level that is not under ppm: 10, 25, 50, 100, 200, 500, 1000, 5000, 12 500, 25 000 ppm
 * @validity 0 to 25 000 ppm; #N/A above. Moisture, heat and surface shift the colour.
 * @assumptions A tube as in the samples, which are of 316L
 * @source AWS D18.2
 * @related PURGE_OXYGEN, PURGE_CHANGES, PURGE_LEAK
 * @example =BEAD.PURGE_TINT(50) → 3
 */
export function purgeTintCell(ppm: unknown): number {
  return answerAlike((read) => tintSample(read.number("ppm", ppm, OXYGEN)));
}
