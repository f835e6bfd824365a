/** The current sector by sector round a tube that warms up as it is welded: checked, and refused where no bead is. */

import { above0, atLeast0, between, tube, wholeFrom1 } from "../limits";
import { itemAt } from "../numerics/item";
import type { Angle, Count, Length, Share, Temperature, TemperatureRise, Time } from "../quantity";
import { ANGLE, COUNT, LENGTH, SHARE, si, SPEED, TEMPERATURE_RISE, TIME } from "../quantity";
import { amount, Refusal, rule } from "../refusal";
import { coldestRise } from "./coldest";
import type { ReadyPlate } from "./melt";
import { meanWidth, powerOfRoot } from "./melt";
import type { ArcPlate } from "./arc-plate";
import type { Weld } from "./plate";
import { fusedWidth, ringPlateOf, riseToMelt } from "./plate";
import type { ReadyPass } from "./ring-bead";
import { readyPass, ringCrest } from "./ring-bead";
import type { RingPass } from "./ring-pass";
import type { PlannedRing, SectorPlan } from "./sectors";
import { plannedPass, plannedRing } from "./sectors";

export interface RingWeld extends Weld {
  readonly od: Length;
  readonly beadWidth: Length;
  /** Arc on before the head turns, s. */
  readonly dwell: Time;
  readonly sectors: Count;
  /** Degrees past the full turn. */
  readonly overlap: Angle;
  readonly preheat: Temperature;
}

export interface Sector {
  /** Degrees of rotation. */
  readonly from: Angle;
  readonly to: Angle;
  /** Mean power into the tube, W. */
  readonly power: number;
  /** Power over that of the first sector. */
  readonly share: Share;
  /** How much warmer the tube is for the bead at the sector's end than at the start, K. */
  readonly rise: TemperatureRise;
}

export interface WeldedRing {
  readonly sectors: readonly Sector[];
  /** W during the dwell: the bead's on the cold tube. */
  readonly dwellPower: number;
  readonly plan: SectorPlan;
  /** The cold tube under the arc, as a plate. */
  readonly ready: ReadyPlate;
  readonly pass: ReadyPass;
  /** Rise of the ring's coldest place over the rise to melting, at most. */
  readonly coldest: number;
}

/** Quarters of the full turn, as shops set them. */
export const COMMON_SECTORS = si(4, COUNT);
export const MOST_SECTORS = si(360, COUNT);
export const MOST_OVERLAP = si(1080, ANGLE);
export const LONGEST_DWELL = si(3600, TIME);
/** v·C/(4α): from a ring that soaks as fast as the arc moves to one whose heat never catches up. */
const PECLETS = [0.02, 10_000] as const;
/** Where the tube is not warmer than this part of the rise to melting when the arc comes, none of it melts all round. */
const COOL = 0.4;
/** Sectors whose root is looked at, evenly picked. */
const LOOKED_AT = 8;

/** Sectors of equal length, the overlap as one more when there is any. */
export function weldRing(weld: RingWeld): WeldedRing {
  const { overlap, dwell, beadWidth } = weld;
  const count = wholeFrom1("sectors", weld.sectors, MOST_SECTORS);
  between("overlap", atLeast0("overlap", overlap, ANGLE), ANGLE, 0, MOST_OVERLAP);
  const rise = riseToMelt(weld.material, weld.preheat);
  const { plate, circumference } = ringOf(weld.od, weld);
  between("dwell", atLeast0("dwell", dwell, TIME), TIME, 0, LONGEST_DWELL);
  const ends = sectorEnds(count, overlap);
  const width = fusedWidth("beadWidth", beadWidth, plate);
  const plan: SectorPlan = { plate, circumference, width, rise, dwell, ends };
  const ring = plannedRing(plan);
  refuseNoRoot(plan, ring);
  refuseMolten(weld, ring, ends);
  const powers = ring.sectors.map(({ power }) => power);
  const pass = readyPass(plannedPass(plan, ring.cold.power, powers));
  const warm = Math.max(...ring.sectors.map(({ warmth }) => warmth)) > COOL * rise;
  const coldest = warm ? coldestRise(pass.history.pass) / rise : 0;
  refuseAllRound(weld.od, coldest);
  refuseUnfused(weld.od, plan, pass, ring.lag);
  const first = itemAt(powers, 0);
  const sectors = ring.sectors.map(({ power, warmth }, i) => ({
    from: si(360 * (ends[i - 1] ?? 0), ANGLE),
    to: si(i < count ? 360 * itemAt(ends, i) : 360 + overlap, ANGLE),
    power,
    share: si(power / first, SHARE),
    rise: si(warmth, TEMPERATURE_RISE),
  }));
  return { sectors, dwellPower: ring.cold.power, plan, ready: ring.ready, pass, coldest };
}

/** An overlap under a degree has the power of its first degree, °: a mean over next to nothing is none. */
const SHORTEST_OVERLAP = 1;

/** Ends of sectors in turns. */
export function sectorEnds(count: number, overlap: Angle): number[] {
  const ends = Array.from({ length: count }, (_, i) => (i + 1) / count);
  return overlap > 0 ? [...ends, 1 + Math.max(overlap, SHORTEST_OVERLAP) / 360] : ends;
}

/** The tube as a ring that the model answers for. */
export function ringOf(od: Length, weld: Weld): Pick<RingPass, "plate" | "circumference"> {
  tube(od, weld.wall);
  const circumference = Math.PI * (above0("od", od, LENGTH) - weld.wall);
  const plate = ringPlateOf(od, weld);
  const peclet = (plate.speed * circumference) / (4 * plate.metal.diffusivity);
  const [smallest, largest] = PECLETS;
  const told = (limit: number): ReturnType<typeof amount> => amount(odAt(limit, plate, weld), LENGTH);
  if (peclet < smallest) {
    const why = rule`is too small a ring for this travel; must be at least ${told(smallest)}`;
    throw new Refusal("od", amount(od, LENGTH), why, "unanswerable");
  }
  if (peclet > largest) {
    const why = rule`is too large a ring for this travel; must be at most ${told(largest)}`;
    throw new Refusal("od", amount(od, LENGTH), why, "unanswerable");
  }
  return { plate, circumference };
}

/** The outside diameter with v·(1 − h/d)·π(d − h)/(4α) = peclet: (d − h)² = k·d. */
function odAt(peclet: number, { metal }: ArcPlate, { wall, speed }: Weld): number {
  const k = (4 * metal.diffusivity * peclet) / (Math.PI * speed);
  const sum = 2 * wall + k;
  return (sum + Math.sqrt(sum * sum - 4 * wall * wall)) / 2;
}

function refuseNoRoot({ rise, width }: SectorPlan, { cold, ready }: PlannedRing): void {
  if (cold.root > 0) return;
  const minimum = meanWidth(ready, rise, powerOfRoot(ready, rise, 0));
  throw new Refusal(
    "beadWidth",
    amount(width, LENGTH),
    rule`leaves no root: the wall melts through from ${amount(minimum, LENGTH)}`,
    "unanswerable",
  );
}

/** Where the tube's own heat alone would melt the bead there is no current that keeps it. */
function refuseMolten({ dwell, speed }: RingWeld, ring: PlannedRing, ends: readonly number[]): void {
  const molten = ring.sectors.findIndex(({ power }) => power <= 0);
  if (molten < 0) return;
  if (molten === 0) {
    throw new Refusal(
      "dwell",
      amount(dwell, TIME),
      rule`shorten the dwell; heats the tube so much that the first sector needs no current`,
      "unanswerable",
    );
  }
  throw new Refusal(
    "speed",
    amount(speed, SPEED),
    rule`the tube's own heat melts it ahead of the arc within ${amount(Math.round(360 * itemAt(ends, molten)), ANGLE)} of rotation; increase travel speed, reduce overlap or target a narrower bead`,
    "unanswerable",
  );
}

export function refuseAllRound(od: Length, coldest: number): void {
  if (coldest < 1) return;
  throw new Refusal(
    "od",
    amount(od, LENGTH),
    rule`is too small for this bead: the whole ring reaches the liquidus; increase travel speed, reduce overlap or target a narrower bead`,
    "unanswerable",
  );
}

/** The sectors' own currents must melt through: a ring can hold its bead's mean width by its face alone. */
function refuseUnfused(od: Length, plan: SectorPlan, { history, root }: ReadyPass, lag: number): void {
  const { ends, circumference, plate, rise } = plan;
  const stride = Math.ceil(ends.length / LOOKED_AT);
  for (let i = ends.length - 1; i >= 0; i -= stride) {
    const travel = Math.max(0, circumference * itemAt(ends, i) - lag);
    if (ringCrest(history, root, travel, 0, lag / plate.speed).value > rise) continue;
    throw new Refusal(
      "od",
      amount(od, LENGTH),
      rule`is too small for this wall: the tube's own heat widens the face, and the current that keeps the width leaves no root at ${amount(Math.round(360 * itemAt(ends, i)), ANGLE)}`,
      "unanswerable",
    );
  }
}
