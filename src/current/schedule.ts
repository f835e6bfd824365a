/** A complete set of starting values for one tube, each number from the others. */

import { ampsByWall } from "./amperage";
import { commonBeadWidth } from "../travel/bead";
import { COMMON_POSTPURGE, COMMON_PREPURGE, commonDownslope } from "../planning/cycle";
import { ARC_VOLTS_GAPS, arcVolts, COMMON_ALLOWANCE, electrodeDiameter, standoff } from "../gap/electrode";
import { itemAt } from "../numerics/item";
import { commonArcVolts, wattsPerAmp } from "../heat-flow/arc";
import { plateOf } from "../heat-flow/plate";
import { COMMON_SECTORS, ringSectors } from "../heat-flow/sectors";
import { startDwell } from "../heat-flow/start-dwell";
import type { Choices } from "./choices";
import { byChoices } from "./choices";
import { COMMON_SPOT_OVERLAP, heatInput, pulseRate, pulseShare } from "./heat-input";
import { above0, between, isAbove, isAt, isBelow, tube } from "../limits";
import type { Material } from "../metal/material";
import type {
  Angle,
  Current,
  Frequency,
  HeatInput,
  Length,
  Rotation,
  Share,
  Speed,
  TemperatureRise,
  Time,
  Units,
  Voltage,
} from "../quantity";
import { ANGLE, CURRENT, LENGTH, SHARE, si, TIME } from "../quantity";
import { amount, orRefusal, Refusal, rule } from "../refusal";
import { rotation, suggestedOverlap, suggestedSpeed, travelTime } from "../travel/travel";

export interface Pulse {
  /** Peak and background of each sector, the overlap last. */
  readonly peaks: readonly Current[];
  readonly backs: readonly Current[];
  readonly rate: Frequency;
  readonly share: Share;
}

export interface Schedule {
  readonly bore: Length;
  readonly standoff: Length;
  readonly electrode: Length;
  readonly volts: Voltage;
  readonly beadWidth: Length;
  readonly speed: Speed;
  readonly rotor: Rotation;
  readonly prepurge: Time;
  readonly dwell: Time;
  /** Mean current of each sector, the overlap last. */
  readonly means: readonly Current[];
  /** Rise ahead of the arc at the end of each sector, the overlap last. */
  readonly rises: readonly TemperatureRise[];
  /** None when the arc is steady. */
  readonly pulse: Pulse | undefined;
  /** The full turn alone. */
  readonly turnTime: Time;
  /** Full turn and overlap. */
  readonly rotationTime: Time;
  readonly overlap: Angle;
  readonly downslope: Time;
  readonly postpurge: Time;
  /** Arc energy over travel in the hottest sector. */
  readonly heatInput: HeatInput;
  /** Dwell, rotation and downslope. */
  readonly arcTime: Time;
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
  const plate = plateOf(wall, material);
  const dwell = choices.dwell ?? startDwell(plate, speed, beadWidth);
  const sectors = ringSectors(plate, { od, speed, beadWidth, dwell, sectors: COMMON_SECTORS, overlap });
  const means = sectors.map(({ power }) => si(power / watts, CURRENT));
  const hottest = si(Math.max(...means), CURRENT);
  const pulse =
    choices.style === "pulsed" ? pulseOf(od, wall, material, means, speed, beadWidth, choices) : undefined;
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
    means,
    rises: sectors.map(({ rise }) => rise),
    pulse,
    turnTime: travelTime(od, speed, si(0, ANGLE)),
    rotationTime,
    overlap,
    downslope,
    postpurge: COMMON_POSTPURGE,
    heatInput: heatInput(volts, hottest, speed, si(1, SHARE)),
    arcTime: si(dwell + rotationTime + downslope, TIME),
  };
}

/** Speaks of the wall where its common gap has no voltage, of the allowance where that makes the gap. */
function voltsAt(gap: Length, wall: Length, allowance: Length): Voltage {
  if (isAt(allowance, COMMON_ALLOWANCE)) return commonArcVolts(wall, "wall");
  const volts = orRefusal(() => arcVolts(gap));
  if (!(volts instanceof Refusal)) return volts;
  const [least, most] = ARC_VOLTS_GAPS;
  throw new Refusal(
    "allowance",
    amount(allowance, LENGTH),
    rule`makes the standoff ${amount(gap, LENGTH)}; arc voltage is estimated only for ${amount(least, LENGTH)} to ${amount(most, LENGTH)}`,
  );
}

/** Peak of the first sector by the rule of thumb; the share that makes its mean; later sectors in the means' proportion. */
function pulseOf(
  od: Length,
  wall: Length,
  material: Material,
  means: readonly Current[],
  speed: Speed,
  beadWidth: Length,
  { peak: chosen, background }: Choices,
): Pulse {
  const first = itemAt(means, 0);
  const peak = chosen ?? ampsByWall(wall, material);
  const back = si(background * peak, CURRENT);
  if (!isAbove(first, back) || !isBelow(first, peak)) {
    throw new Refusal(
      "od",
      amount(od, LENGTH),
      rule`the first sector needs a mean of ${amount(first, CURRENT)}, which no pulse between ${amount(back, CURRENT)} and ${amount(peak, CURRENT)} gives; ask for "steady"`,
      "unanswerable",
    );
  }
  const peaks = means.map((mean) => si((peak * mean) / first, CURRENT));
  return {
    peaks,
    backs: peaks.map((amps) => si(background * amps, CURRENT)),
    rate: pulseRate(speed, beadWidth, COMMON_SPOT_OVERLAP),
    share: pulseShare(first, peak, back),
  };
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
