/** What a program on the machine melts, pulse and all, with what arc and wall may make of it. */

import { ARC_EFFICIENCY, EFFICIENCIES, wattsPerAmp } from "../heat-flow/arc";
import type { BeadAt, Program } from "../heat-flow/ring-forward";
import { ringBead, sectorCurrents } from "../heat-flow/ring-forward";
import { above0, between, isAbove } from "../limits";
import { itemAt } from "../numerics/item";
import type { Current, Frequency, Length, Share, Voltage } from "../quantity";
import { CURRENT, FREQUENCY, LENGTH, SHARE, si } from "../quantity";
import { amount, orRefusal, Refusal, rule } from "../refusal";
import { pulseExcess } from "./pulse";

export interface PulsedProgram extends Omit<Program, "amps" | "overlapAmps" | "watts"> {
  /** One a sector. */
  readonly peaks: readonly Current[];
  /** Past the full turn; that of the last sector where it is undefined. */
  readonly overlapPeak: Current | undefined;
  /** Fraction of the pulse time at peak; 1 is a steady arc. */
  readonly share: Share;
  /** Background over peak. */
  readonly background: Share;
  readonly rate: Frequency;
  /** Bead that the pulse's spots follow each other in. */
  readonly beadWidth: Length;
  readonly volts: Voltage;
  readonly efficiency: Share;
  /** Wall off by, either way. */
  readonly wallTolerance: Share;
}

export interface ProgramBead extends BeadAt {
  readonly mean: Current;
  /** Root in the thickest wall under the weakest arc. */
  readonly rootLeast: Length;
  /** Face in the thinnest wall under the strongest arc; undefined where that melts the tube all round. */
  readonly faceMost: Length | undefined;
}

/** Travel in beads from one pulse to the next, up to which the rule of what a pulse melts was fitted. */
const MOST_PER_PULSE = 0.5;

/**
 * Mean current, steady equivalent and fused widths of each sector. Mean I = Ip·(β + s(1 − β)); steady equivalent
 * I·(1 + 0.37·D·v/(f·b)) as the schedule has it; widths by `ringBead`. The band: the wall off by its tolerance, the arc
 * as far off as the published range of efficiencies lies about its mean.
 */
export function programBead(program: PulsedProgram): ProgramBead[] {
  const { peaks, overlapPeak, share, background, rate, speed, beadWidth, volts, efficiency, wallTolerance } =
    program;
  sectorCurrents("peaks", peaks);
  if (overlapPeak !== undefined) sectorCurrents("overlapPeak", [overlapPeak]);
  between("share", above0("share", share, SHARE), SHARE, 0, 1);
  between("background", background, SHARE, 0, 1);
  between("wallTolerance", wallTolerance, SHARE, 0, MOST_TOLERANCE);
  above0("rate", rate, FREQUENCY);
  above0("beadWidth", beadWidth, LENGTH);
  const perPulse = speed / (rate * beadWidth);
  if (share < 1 && isAbove(perPulse, MOST_PER_PULSE)) {
    const least = si(speed / (MOST_PER_PULSE * beadWidth), FREQUENCY);
    throw new Refusal(
      "rate",
      amount(rate, FREQUENCY),
      rule`must be at least ${amount(least, FREQUENCY)}, a pulse per half bead of travel`,
    );
  }
  const ofPeak = background + share * (1 - background);
  const melts = 1 + (share < 1 ? pulseExcess(share, background, perPulse) : 0);
  const steady = (peak: Current): Current => si(peak * ofPeak * melts, CURRENT);
  const amps = peaks.map(steady);
  const overlapAmps = overlapPeak === undefined ? undefined : steady(overlapPeak);
  const watts = wattsPerAmp(volts, efficiency);
  const bead = (wall: number, part: number): BeadAt[] =>
    ringBead({ ...program, amps, overlapAmps, wall: si(wall, LENGTH), watts: watts * part });
  const { wall } = program;
  // No arc gives the tube more than all of its power.
  const arc = (of: number): number => Math.min(1 / efficiency, of / ARC_EFFICIENCY);
  // The program itself first: what is wrong with it is told with its own numbers.
  const set = bead(wall, 1);
  const thick = bead(wall * (1 + wallTolerance), arc(EFFICIENCIES[0]));
  const thin = orRefusal(() => bead(wall * (1 - wallTolerance), arc(EFFICIENCIES[1])));
  return set.map((at, i) => ({
    ...at,
    mean: si(at.amps / melts, CURRENT),
    rootLeast: itemAt(thick, i).root,
    faceMost: thin instanceof Refusal ? undefined : itemAt(thin, i).face,
  }));
}

/** A wall that is off by more is another wall. */
const MOST_TOLERANCE = 0.5;
