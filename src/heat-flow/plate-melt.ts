/** What a current melts of a wall, and the current for a wanted bead. */

import { above0, between, isAt } from "../limits";
import type { Current, Length, Share, Temperature } from "../quantity";
import { CURRENT, LENGTH, SHARE, si } from "../quantity";
import { amount, Refusal, rule } from "../refusal";
import type { ReadyPlate } from "./melt";
import { meltDepth, meltSection, powerOfFace, powerOfMean, powerOfRoot, readyPlate } from "./melt";
import type { Weld } from "./plate";
import { fusedWidth, plateOf, riseToMelt, widestBead } from "./plate";

/** One place of a weld: the wall, the metal's temperature before the arc comes, and W into it per A. */
export interface Melt extends Weld {
  readonly preheat: Temperature;
  readonly watts: number;
}

/** Mean current at which the mean of face and root is `width`. */
export function ampsOfWidth(melt: Melt, width: Length): Current {
  const rise = riseToMelt(melt.material, melt.preheat);
  const plate = plateOf(melt);
  const power = powerOfMean(readyPlate(plate), rise, fusedWidth("beadWidth", width, plate));
  return si(power / melt.watts, CURRENT);
}

/** Mean of face and root that a current melts: the inverse of `ampsOfWidth`. */
export function widthOfAmps(melt: Melt, amps: Current): Length {
  const { face, root } = melted(melt, amps);
  return si((face + root) / 2, LENGTH);
}

export interface Section {
  readonly face: Length;
  /** 0 where the wall is not melted through. */
  readonly root: Length;
  /** Under the arc: the wall where it is melted through. */
  readonly depth: Length;
}

/** What a current melts: face, root, depth. */
export function sectionOfAmps(melt: Melt, amps: Current): Section {
  const { ready, rise, power, face, root } = melted(melt, amps);
  return {
    face: si(face, LENGTH),
    root: si(root, LENGTH),
    depth: si(meltDepth(ready, rise, power), LENGTH),
  };
}

/** Minimum mean current that melts through, with a root of some width or none. */
export function ampsThrough(melt: Melt, rootWidth: Length): Current {
  const rise = riseToMelt(melt.material, melt.preheat);
  const plate = plateOf(melt);
  between("rootWidth", rootWidth, LENGTH, 0, widestBead(plate));
  return si(powerOfRoot(readyPlate(plate), rise, rootWidth) / melt.watts, CURRENT);
}

interface Melted {
  readonly ready: ReadyPlate;
  readonly rise: number;
  readonly power: number;
  readonly face: number;
  readonly root: number;
}

/** A melt that melts something, and no more than there is an answer for. */
function melted(melt: Melt, amps: Current): Melted {
  const power = above0("amps", amps, CURRENT) * melt.watts;
  const rise = riseToMelt(melt.material, melt.preheat);
  const plate = plateOf(melt);
  const ready = readyPlate(plate);
  const { face, root } = meltSection(ready, rise, power);
  if (face === 0) {
    const minimum = powerOfFace(ready, rise, 0) / melt.watts;
    throw outside(amps, rule`melts nothing; melting starts at ${amount(minimum, CURRENT)}`);
  }
  const widest = widestBead(plate);
  const width = (face + root) / 2;
  if (!(width <= widest || isAt(width, widest))) {
    const maximum = powerOfMean(ready, rise, widest) / melt.watts;
    throw outside(amps, rule`must be at most ${amount(maximum, CURRENT)}`);
  }
  return { ready, rise, power, face, root };
}

function outside(amps: number, why: ReturnType<typeof rule>): Refusal {
  return new Refusal("amps", amount(amps, CURRENT), why, "unanswerable");
}

/** What may differ from joint to joint, and what the bead must still be then. */
export interface WindowTerms {
  readonly rootLeast: Length;
  readonly faceMost: Length;
  readonly beadWidth: Length;
  /** Either way, as a fraction of the wall. */
  readonly wallTolerance: Share;
  readonly efficiencyLow: Share;
  readonly efficiencyHigh: Share;
  /** Of the bead in the middle. */
  readonly efficiency: Share;
  readonly volts: number;
}

export interface AmpsWindow {
  readonly minimum: Current;
  readonly amps: Current;
  readonly maximum: Current;
  /** (maximum − minimum)/amps; negative where no current meets both. */
  readonly room: Share;
}

/** The currents between a root too narrow and a face too wide. */
export function ampsWindow(weld: Weld, preheat: Temperature, terms: WindowTerms): AmpsWindow {
  const { wallTolerance, efficiencyLow, efficiencyHigh, efficiency, volts } = terms;
  between("wallTolerance", wallTolerance, SHARE, 0, MOST_TOLERANCE);
  if (efficiencyLow > efficiencyHigh) {
    throw new Refusal(
      "efficiencyLow",
      amount(efficiencyLow, SHARE),
      rule`must be at most efficiencyHigh, ${amount(efficiencyHigh, SHARE)}`,
    );
  }
  const rise = riseToMelt(weld.material, preheat);
  const middle = plateOf(weld);
  // The arc's spot stays that of the nominal wall: the gap is set once.
  const ready = (part: number): ReadyPlate => readyPlate({ ...middle, wall: middle.wall * part });
  fusedWidth("beadWidth", terms.beadWidth, middle);
  between("rootLeast", terms.rootLeast, LENGTH, 0, widestBead(middle));
  fusedWidth("faceMost", terms.faceMost, middle);
  const minimum = powerOfRoot(ready(1 + wallTolerance), rise, terms.rootLeast) / (volts * efficiencyLow);
  const amps = powerOfMean(ready(1), rise, terms.beadWidth) / (volts * efficiency);
  const maximum = powerOfFace(ready(1 - wallTolerance), rise, terms.faceMost) / (volts * efficiencyHigh);
  return {
    minimum: si(minimum, CURRENT),
    amps: si(amps, CURRENT),
    maximum: si(maximum, CURRENT),
    room: si((maximum - minimum) / amps, SHARE),
  };
}

/** Half the wall: no tube is that far off. */
const MOST_TOLERANCE = 0.5;
