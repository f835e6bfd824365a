/** A complete set of starting values for one tube, each number from the others. */

import { ampsByWall } from "./amperage";
import { commonBeadWidth } from "../travel/bead";
import { COMMON_POSTPURGE, COMMON_PREPURGE, commonDownslope } from "../planning/cycle";
import { COMMON_ALLOWANCE, electrodeDiameter, standoff } from "../gap/electrode";
import { element } from "../numerics/item";
import { ARC_EFFICIENCY, commonArcVolts, wattsPerAmp } from "../heat-flow/arc";
import type { Plate } from "../heat-flow/plate";
import { plateOf } from "../heat-flow/plate";
import type { RingPass, Sector } from "../heat-flow/sectors";
import { ringSectors } from "../heat-flow/sectors";
import { startDwell } from "../heat-flow/start-dwell";
import { heatInput, pulseRate, pulseShare } from "./heat-input";
import { tube } from "../limits";
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
  Time,
  Units,
  Voltage,
} from "../quantity";
import { ANGLE, COUNT, CURRENT, LENGTH, si, SPEED, TIME } from "../quantity";
import { amount, orRefusal, Refusal, rule } from "../refusal";
import { rotation, suggestedOverlap, suggestedSpeed, travelTime } from "../travel/travel";

/** Common practice of pulsed tube welding: background over peak, and by how much successive spots overlap. */
const BACKGROUND = 0.3;
const SPOT_OVERLAP = 0.75;
const SECTORS = 4;

export type Style = "pulsed" | "steady";

export interface Pulse {
  /** Peak and background of each sector, A. */
  readonly peaks: readonly Current[];
  readonly backs: readonly Current[];
  readonly rate: Frequency;
  readonly share: Share;
}

export interface Schedule {
  readonly standoff: Length;
  readonly electrode: Length;
  readonly volts: Voltage;
  readonly beadWidth: Length;
  readonly speed: Speed;
  readonly turns: Rotation;
  readonly prepurge: Time;
  readonly dwell: Time;
  /** Mean current of each sector, A. */
  readonly means: readonly Current[];
  /** None when the arc is steady. */
  readonly pulse: Pulse | undefined;
  /** Full turn and overlap, s. */
  readonly rotationTime: Time;
  readonly overlap: Angle;
  readonly downslope: Time;
  readonly postpurge: Time;
  /** Arc energy over travel in the hottest sector, J/m. */
  readonly heatInput: HeatInput;
  /** Dwell, rotation and downslope, s. */
  readonly arcTime: Time;
}

export function schedule(od: Length, wall: Length, material: Material, style: Style, units: Units): Schedule {
  tube(od, wall);
  const volts = commonArcVolts(wall, "wall");
  const beadWidth = commonBeadWidth(wall);
  const speed = suggestedSpeed(beadWidth, material);
  const overlap = suggestedOverlap(od, wall, beadWidth);
  const plate = plateOf(wall, material);
  const dwell = startDwell(plate, speed, beadWidth);
  const sectors = sectorsOf(plate, {
    od,
    speed,
    beadWidth,
    dwell,
    sectors: si(SECTORS, COUNT),
    overlap: si(0, ANGLE),
  });
  const means = sectors.map(({ power }) => power / wattsPerAmp(volts, ARC_EFFICIENCY));
  const hottest = Math.max(...means);
  const pulse =
    style === "pulsed" ? pulseOf(od, means, ampsByWall(wall, material), speed, beadWidth) : undefined;
  const rotationTime = travelTime(od, speed, overlap);
  const downslope = commonDownslope(beadWidth, speed);
  return {
    standoff: standoff(wall, COMMON_ALLOWANCE),
    electrode: si(electrodeFor(wall, Math.max(hottest, ...(pulse?.peaks ?? [])), units), LENGTH),
    volts,
    beadWidth,
    speed,
    turns: rotation(od, speed),
    prepurge: si(COMMON_PREPURGE, TIME),
    dwell,
    means,
    pulse,
    rotationTime,
    overlap,
    downslope,
    postpurge: si(COMMON_POSTPURGE, TIME),
    heatInput: heatInput(volts, si(hottest, CURRENT), speed, 1),
    arcTime: si(dwell + rotationTime + downslope, TIME),
  };
}

/** Peak of the first sector by the rule of thumb; the share that makes its mean; later sectors in the means' proportion. */
function pulseOf(
  od: number,
  means: readonly Current[],
  peak: number,
  speed: number,
  beadWidth: number,
): Pulse {
  const first = element(means, 0);
  const back = BACKGROUND * peak;
  if (!(first > back && first < peak)) {
    throw new Refusal(
      "od",
      amount(od, LENGTH),
      rule`the first sector needs a mean of ${amount(first, CURRENT)}, which no pulse between ${amount(back, CURRENT)} and ${amount(peak, CURRENT)} gives; ask for "steady"`,
      "unanswerable",
    );
  }
  const peaks = means.map((mean) => (peak * mean) / first);
  return {
    peaks,
    backs: peaks.map((amps) => BACKGROUND * amps),
    rate: pulseRate(si(speed, SPEED), si(beadWidth, LENGTH), SPOT_OVERLAP),
    share: pulseShare(first, si(peak, CURRENT), back),
  };
}

/** Speaks of the tube where the ring refuses its speed or dwell: those were suggested here, nobody typed them. */
function sectorsOf(plate: Plate, pass: RingPass): Sector[] {
  const sectors = orRefusal(() => ringSectors(plate, pass));
  if (!(sectors instanceof Refusal)) return sectors;
  throw new Refusal(
    "od",
    amount(pass.od, LENGTH),
    rule`has no suggested schedule with this wall; at ${amount(pass.speed, SPEED)} after a dwell of ${amount(pass.dwell, TIME)} the ring is too small, and melts ahead of the arc, or too large to reckon with`,
    "unanswerable",
  );
}

function electrodeFor(wall: number, amps: number, units: Units): number {
  const diameter = orRefusal(() => electrodeDiameter(si(amps, CURRENT), units));
  if (!(diameter instanceof Refusal)) return diameter;
  throw new Refusal(
    "wall",
    amount(wall, LENGTH),
    rule`calls for ${amount(amps, CURRENT)}, which no standard electrode is listed for`,
    "unanswerable",
  );
}
