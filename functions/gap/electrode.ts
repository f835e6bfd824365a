import {
  arcVolts,
  COMMON_ALLOWANCE,
  electrodeDiameter,
  electrodeLength,
  standoff,
  standoffSpread,
} from "../../src/gap/electrode";
import { COMMON_LEAVES, COMMON_TOLERANCE, feelerStack } from "../../src/gap/feeler";
import { CURRENT, LENGTH } from "../../src/quantity";
import { answer } from "../answer";

/**
 * Arc gap between electrode tip and tube, in | mm: half the wall plus an allowance.
 * @customfunction STANDOFF
 * @param wall Wall thickness, in | mm
 * @param [allowance] Added to half the wall, in | mm; 0.010 in (0.254 mm) if left out
 * @param [units] "US" (default) or "SI"
 * @equation g = t/2 + a
 * @math g = \frac{t}{2} + a
 * @where g arc gap; t wall thickness (wall); a addition to half the wall (allowance)
 * @validity wall above 0, allowance not below 0
 * @source Common practice: half the wall plus ten thousandths of an inch, set by feeler gauge
 * @related STANDOFF_SPREAD, FEELER_STACK, ELECTRODE_LENGTH, ARC_VOLTS
 * @figure standoff
 * @example =BEAD.STANDOFF(0.065) → 0.0425
 */
export function standoffCell(wall: unknown, allowance?: unknown, units?: unknown): number {
  return answer(units, (read) =>
    read.give(
      standoff(
        read.number("wall", wall, LENGTH),
        read.numberOr("allowance", allowance, LENGTH, COMMON_ALLOWANCE),
      ),
      LENGTH,
    ),
  );
}

/**
 * Least and greatest arc gap round a tube that is off size and runs out, in | mm.
 * @customfunction STANDOFF_SPREAD
 * @param standoff Arc gap as set, in | mm
 * @param odTolerance Tolerance on the outside diameter, the ± figure, in | mm
 * @param [runout] Runout of the tube under the electrode, total indicator reading, in | mm; 0 if left out
 * @param [units] "US" (default) or "SI"
 * @returns Two cells: least gap, greatest gap
 * @equation g ∓ (Δd/2 + r/2)
 * @math g \mp \left(\frac{\Delta d}{2} + \frac{r}{2}\right)
 * @where g arc gap as set (standoff); Δd tolerance on the outside diameter, the ± figure (odTolerance); r runout, total indicator reading (runout)
 * @validity Refused where the electrode could touch the tube (least gap 0 or less)
 * @assumptions The gap is set on a tube of nominal size; size and runout are off by all they may be at once, and each moves the surface by half its amount
 * @source Geometry
 * @related STANDOFF, ELECTRODE_LENGTH, ARC_VOLTS
 * @figure off-size
 * @example =BEAD.STANDOFF_SPREAD(0.0425, 0.005, 0.002) → 0.039, 0.046
 */
export function standoffSpreadCells(
  standoff: unknown,
  odTolerance: unknown,
  runout?: unknown,
  units?: unknown,
): number[][] {
  return answer(units, (read) => {
    const spread = standoffSpread(
      read.number("standoff", standoff, LENGTH),
      read.number("odTolerance", odTolerance, LENGTH),
      read.numberOr("runout", runout, LENGTH, 0),
    );
    return [spread.map((gap) => read.give(gap, LENGTH))];
  });
}

/**
 * Feeler leaves to stack for an arc gap, thickest first, in | mm.
 * @customfunction FEELER_STACK
 * @param gap Arc gap to gauge, in | mm
 * @param [leaves] Leaf thicknesses you own (a range), in | mm; a common 32-leaf inch or 0.05–1.00 mm set if left out
 * @param [tolerance] How far the stack may be off, in | mm; 0.0005 in | 0.025 mm if left out
 * @param [units] "US" (default) or "SI"
 * @returns A column of leaves
 * @equation Fewest leaves with |Σ − gap| ≤ tolerance, then the nearest sum, then the thickest first leaf; no leaf twice
 * @math \left|\sum t_i - g\right| \le \text{tolerance}
 * @where tᵢ thicknesses of the leaves in the stack (leaves); g arc gap to gauge (gap); tolerance how far the stack may be off
 * @validity Gap up to 10 mm, tolerance up to 1 mm, at most 100 leaves, told apart to 0.1 µm. #N/A if no stack fits. The default set and tolerance follow the units.
 * @source Exact search; the default sets are common practice
 * @unconfirmed The default sets are from memory
 * @related STANDOFF, STANDOFF_SPREAD
 * @example =BEAD.FEELER_STACK(0.0425) → 0.035; 0.008
 */
export function feelerStackCells(
  gap: unknown,
  leaves?: unknown[][],
  tolerance?: unknown,
  units?: unknown,
): number[][] {
  return answer(units, (read) => {
    const stack = feelerStack(
      read.number("gap", gap, LENGTH),
      read.numbersOr("leaves", leaves, LENGTH) ?? COMMON_LEAVES[read.units],
      read.numberOr("tolerance", tolerance, LENGTH, COMMON_TOLERANCE[read.units]),
    );
    return stack.map((leaf) => [read.give(leaf, LENGTH)]);
  });
}

/**
 * Electrode length from its seat to the tip, in | mm.
 * @customfunction ELECTRODE_LENGTH
 * @param reach From tube centre to the electrode's seat in the rotor, in | mm
 * @param od Outside diameter of the tube, in | mm
 * @param standoff Arc gap, in | mm
 * @param [units] "US" (default) or "SI"
 * @equation L = R − d/2 − g
 * @math L = R - \frac{d}{2} - g
 * @where L electrode length from seat to tip; R reach from tube centre to the seat (reach); d outside diameter (od); g arc gap (standoff)
 * @validity reach above od/2 + standoff
 * @assumptions The electrode points straight at the tube's centre
 * @source Geometry
 * @related STANDOFF, STANDOFF_SPREAD, ELECTRODE_DIAMETER
 * @figure electrode-length
 * @example =BEAD.ELECTRODE_LENGTH(1.5, 1, 0.0425) → 0.9575
 */
export function electrodeLengthCell(reach: unknown, od: unknown, standoff: unknown, units?: unknown): number {
  return answer(units, (read) =>
    read.give(
      electrodeLength(
        read.number("reach", reach, LENGTH),
        read.number("od", od, LENGTH),
        read.number("standoff", standoff, LENGTH),
      ),
      LENGTH,
    ),
  );
}

/**
 * Smallest standard tungsten electrode that carries a current, nominal diameter in | mm.
 * @customfunction ELECTRODE_DIAMETER
 * @param amps Current, direct, electrode negative, in argon, A
 * @param [units] "US" (default) or "SI"
 * @equation Smallest of 0.5 (5–20 A), 1.0 (15–80), 1.6 (70–150), 2.4 (150–250), 3.2 (250–400), 4.0 mm (400–500)
 * @validity 5 to 500 A; #N/A outside. Nominal sizes of each series: 1/16 in in US, 1.6 mm in SI.
 * @assumptions Direct current, electrode negative, in argon
 * @source AWS A5.12 current ranges for DCEN
 * @unconfirmed The ranges are from memory, not compared with a copy of the standard
 * @related AMPS_WALL, AMPS_MELT, ELECTRODE_LENGTH, SCHEDULE
 * @example =BEAD.ELECTRODE_DIAMETER(65) → 0.04
 */
export function electrodeDiameterCell(amps: unknown, units?: unknown): number {
  return answer(units, (read) =>
    read.give(electrodeDiameter(read.number("amps", amps, CURRENT), read.units), LENGTH),
  );
}

/**
 * Arc voltage for a gap in argon, V.
 * @customfunction ARC_VOLTS
 * @param standoff Arc gap, in | mm
 * @param [units] "US" (default) or "SI"
 * @equation U = 8.5 V + 0.8 V/mm · g
 * @math U = 8.5\ \text{V} + 0.8\ \tfrac{\text{V}}{\text{mm}}\cdot g
 * @where U arc voltage; g arc gap (standoff)
 * @validity Argon, electrode negative, 50–150 A, gap 0.5 to 3 mm (0.0197 to 0.118 in); a gap outside is refused. Measure at the head: leads add their own drop.
 * @assumptions The current does not change the voltage
 * @source An estimate from common practice
 * @unconfirmed No published table confirms it
 * @related STANDOFF, AMPS_MELT, HEAT_INPUT
 * @figure standoff
 * @example =BEAD.ARC_VOLTS(0.0425) → 9.3636
 */
export function arcVoltsCell(standoff: unknown, units?: unknown): number {
  return answer(units, (read) => arcVolts(read.number("standoff", standoff, LENGTH)));
}
