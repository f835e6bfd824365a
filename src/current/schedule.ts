/** A complete set of starting values for one tube, each number from the others. */

import { itemAt } from "../numerics/item";
import { ampsByWall } from "./amperage";
import { commonBeadWidth } from "../travel/bead";
import { COMMON_POSTPURGE, COMMON_PREPURGE, commonDownslope } from "../planning/cycle";
import { ARC_VOLTS_GAPS, arcVolts, COMMON_ALLOWANCE, electrodeDiameter, standoff } from "../gap/electrode";
import { commonArcVolts, wattsPerAmp } from "../heat-flow/arc";
import { dwellOf } from "../heat-flow/dwell";
import { powerOfRoot } from "../heat-flow/melt";
import { commonArcSize } from "../heat-flow/plate";
import { sectionsAtEnds } from "../heat-flow/ring-forward";
import type { WeldedRing } from "../heat-flow/ring-weld";
import { COMMON_SECTORS, weldRing } from "../heat-flow/ring-weld";
import type { Choices } from "./choices";
import { byChoices } from "./choices";
import { heatInput } from "./heat-input";
import type { Pulse } from "./pulse";
import { pulseOf } from "./pulse";
import { refuseThick, remarksOn } from "./remarks";
import { above0, between, isAt, tube } from "../limits";
import type { Material } from "../metal/material";
import { AMBIENT } from "../metal/material";
import type {
  Angle,
  Current,
  HeatInput,
  Length,
  Rotation,
  Speed,
  TemperatureRise,
  Time,
  Units,
  Voltage,
} from "../quantity";
import { ANGLE, CURRENT, LENGTH, SHARE, si, TIME } from "../quantity";
import type { Rule } from "../refusal";
import { amount, orRefusal, Refusal, rule } from "../refusal";
import { rotation, suggestedOverlap, suggestedSpeed, travelTime } from "../travel/travel";

export interface Schedule {
  readonly bore: Length;
  readonly standoff: Length;
  readonly electrode: Length;
  readonly volts: Voltage;
  readonly beadWidth: Length;
  /** Width of the arc's spot, 4σ. */
  readonly arcSize: Length;
  readonly speed: Speed;
  readonly rotor: Rotation;
  readonly prepurge: Time;
  readonly dwell: Time;
  /** Current of the dwell: that of the bead on the cold tube. */
  readonly dwellAmps: Current;
  /** Mean current of each sector, the overlap last. */
  readonly means: readonly Current[];
  /** The steady current that melts the same: the means of a steady arc, more than those of a pulsed one. */
  readonly steady: readonly Current[];
  /** Rise ahead of the arc at the end of each sector, the overlap last. */
  readonly rises: readonly TemperatureRise[];
  /** Fused widths at the end of each sector, the overlap last. */
  readonly sections: readonly Section[];
  /** Minimum mean current that melts through the cold wall. */
  readonly throughAmps: Current;
  /** None when the arc is steady. */
  readonly pulse: Pulse | undefined;
  /** The full turn alone. */
  readonly turnTime: Time;
  /** Full turn and overlap. */
  readonly rotationTime: Time;
  readonly overlap: Angle;
  readonly downslope: Time;
  readonly postpurge: Time;
  /** Arc energy over travel at the largest current of dwell and sectors. */
  readonly heatInput: HeatInput;
  /** Dwell, rotation and downslope. */
  readonly arcTime: Time;
  readonly remarks: readonly Rule[];
}

interface Section {
  readonly face: Length;
  readonly root: Length;
}

/** The schedule of a tube. What cannot be answered is refused by the tube, or by the choice that stands in the way. */
export function schedule(
  od: Length,
  wall: Length,
  material: Material,
  choices: Choices,
  units: Units,
): Schedule {
  tube(od, wall);
  refuseThick(wall);
  // Also of a steady arc, which has no pulse: what is typed must be possible, whether it counts or not.
  if (choices.peak !== undefined) above0("peak", choices.peak, CURRENT);
  between("background", choices.background, SHARE, 0, 1);
  return byChoices(od, choices, (those) => scheduleOf(od, wall, material, those, units));
}

function scheduleOf(od: Length, wall: Length, material: Material, choices: Choices, units: Units): Schedule {
  const gap = standoff(wall, choices.allowance);
  const volts = choices.volts ?? voltsAt(gap, wall, choices.allowance);
  const watts = wattsPerAmp(volts, choices.efficiency);
  const beadWidth = choices.beadWidth ?? commonBeadWidth(wall);
  const speed = choices.speed ?? suggestedSpeed(beadWidth, material);
  const overlap = choices.overlap ?? suggestedOverlap(od, wall, beadWidth);
  const weld = { wall, speed, material, arcSize: choices.arcSize ?? commonArcSize(gap) };
  const dwell = choices.dwell ?? dwellOf(weld, beadWidth);
  const ring = weldRing({
    ...weld,
    od,
    beadWidth,
    dwell,
    sectors: COMMON_SECTORS,
    overlap,
    preheat: AMBIENT,
  });
  const sections = promised(od, beadWidth, ring);
  const steady = ring.sectors.map(({ power }) => si(power / watts, CURRENT));
  const pulse =
    choices.style === "pulsed"
      ? pulseOf({
          od,
          steady,
          speed,
          beadWidth,
          peak: choices.peak ?? ampsByWall(wall, material),
          background: choices.background,
        })
      : undefined;
  const means = pulse?.means ?? steady;
  // The minimum that melts through is told as the means are: of a pulse that melts more than its mean, less.
  const part = itemAt(means, 0) / itemAt(steady, 0);
  const dwellAmps = si(ring.dwellPower / watts, CURRENT);
  const hottest = si(Math.max(dwellAmps, ...means), CURRENT);
  const { rise } = ring.plan;
  const rotationTime = travelTime(od, speed, overlap);
  const downslope = commonDownslope(beadWidth, speed);
  return {
    bore: si(od - 2 * wall, LENGTH),
    standoff: gap,
    electrode: electrodeFor(wall, si(Math.max(hottest, ...(pulse?.peaks ?? [])), CURRENT), units),
    volts,
    beadWidth,
    speed,
    rotor: rotation(od, speed),
    prepurge: COMMON_PREPURGE,
    dwell,
    dwellAmps,
    means,
    rises: ring.sectors.map((sector) => sector.rise),
    sections,
    throughAmps: si((part * powerOfRoot(ring.ready, rise, 0)) / watts, CURRENT),
    steady,
    arcSize: weld.arcSize,
    pulse,
    turnTime: travelTime(od, speed, si(0, ANGLE)),
    rotationTime,
    overlap,
    downslope,
    postpurge: COMMON_POSTPURGE,
    heatInput: heatInput(volts, hottest, speed, si(1, SHARE)),
    arcTime: si(dwell + rotationTime + downslope, TIME),
    remarks: remarksOn(wall, ring.coldest, choices.volts !== undefined),
  };
}

/** How far the bead at a sector's end, where it is widest, may be off the wanted width, as a part of it. */
export const PROMISE = 0.14;

/** What the schedule melts at the end of each sector; refused where that is not the bead it was made for. */
function promised(od: Length, beadWidth: Length, { plan, pass }: WeldedRing): Section[] {
  return sectionsAtEnds(pass, plan).map((section, i) => {
    const width = (section.face + section.root) / 2;
    if (section.root > 0 && Math.abs(width / beadWidth - 1) <= PROMISE) return section;
    const end = itemAt(plan.ends, i);
    throw new Refusal(
      "od",
      amount(od, LENGTH),
      rule`is too small for this bead: by ${amount(Math.round(360 * end), ANGLE)} four sectors make it ${amount(width, LENGTH)} wide, face and root, in place of ${amount(beadWidth, LENGTH)}`,
      "unanswerable",
    );
  });
}

/** Speaks of the wall where its common gap has no voltage, of the allowance where that makes the gap. */
function voltsAt(gap: Length, wall: Length, allowance: Length): Voltage {
  if (isAt(allowance, COMMON_ALLOWANCE)) return commonArcVolts(wall);
  const volts = orRefusal(() => arcVolts(gap));
  if (!(volts instanceof Refusal)) return volts;
  const [least, most] = ARC_VOLTS_GAPS;
  throw new Refusal(
    "allowance",
    amount(allowance, LENGTH),
    rule`makes the standoff ${amount(gap, LENGTH)}; arc voltage is estimated only for ${amount(least, LENGTH)} to ${amount(most, LENGTH)}`,
  );
}

function electrodeFor(wall: Length, amps: Current, units: Units): Length {
  const diameter = orRefusal(() => electrodeDiameter(amps, units));
  if (!(diameter instanceof Refusal)) return diameter;
  throw new Refusal(
    "wall",
    amount(wall, LENGTH),
    rule`calls for ${amount(amps, CURRENT)}, which no standard electrode is listed for`,
    "unanswerable",
  );
}
