import { ANY_FLOW, COUNT, FLOW, LENGTH, OXYGEN, TIME, VOLUME } from "../../src/quantity";
import {
  COMMON_TARGET_PPM,
  leakOxygen,
  purgeChanges,
  purgeFlow,
  purgeOxygen,
  purgeTime,
  purgeVolume,
} from "../../src/purge/purge";
import { tintSample } from "../../src/tables/tint";
import { answer, answerAlike } from "../answer";
import type { Reader } from "../cells";

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
