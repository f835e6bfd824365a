/** Power sector by sector round a tube that warms up as it is welded. Base SI. */

import { itemAt } from "../numerics/item";
import type { ArcPlate } from "./arc-plate";
import type { MeltSection, ReadyPlate } from "./melt";
import { meltSection, powerOfMean, readyPlate } from "./melt";
import { riseAt } from "./moving-arc";
import { readyPass, ringCrest } from "./ring-bead";
import type { BeadSide } from "./ring-course";
import { meanPower, powerAt, ringCourse } from "./ring-course";
import type { RingPass } from "./ring-pass";
import { crestAt, firstGuess } from "./widest";

export interface SectorPlan {
  /** With the speed at the mean radius. */
  readonly plate: ArcPlate;
  /** At the mean radius, m. */
  readonly circumference: number;
  /** Mean of face and root, m. */
  readonly width: number;
  /** From the tube's first temperature to its liquidus, K. */
  readonly rise: number;
  /** s */
  readonly dwell: number;
  /** Ends of the sectors in turns, rising; the last may be past 1 by the overlap. */
  readonly ends: readonly number[];
}

export interface SectorPower {
  /** Mean power into the metal, W; 0 or less where the tube's own heat alone would melt it. */
  readonly power: number;
  /** How much warmer the tube is for the bead at the sector's end than at the start, K. */
  readonly warmth: number;
}

/** A plan worked out. */
export interface PlannedRing {
  readonly sectors: readonly SectorPower[];
  /** The cold tube under the arc, as a plate. */
  readonly ready: ReadyPlate;
  /** The bead on the cold tube: the power of the dwell, W, and what it melts. */
  readonly cold: MeltSection & { readonly power: number };
  /** How far behind the arc the bead is widest, m: the further of face and root. */
  readonly lag: number;
}

/** Sectors' powers, W. */
export function sectorPowers(plan: SectorPlan): readonly SectorPower[] {
  return plannedRing(plan).sectors;
}

/**
 * Sectors' powers, W: the bead's power on a cold plate, lowered as the ring's own heat comes back to the arc, then
 * corrected once by the temperature that everything superposed in time gives the bead's edge. The dwell has the power
 * of the cold plate.
 */
export function plannedRing(plan: SectorPlan): PlannedRing {
  const { plate, circumference, rise, ends } = plan;
  const bead = coldBead(plan);
  const travel = circumference * itemAt(ends, ends.length - 1);
  const course = ringCourse({ ...plan, travel, target: bead.target, sides: bead.sides });
  const turn = circumference / plate.speed;
  const means = ends.map((end, i) => meanPower(course, turn * (ends[i - 1] ?? 0), turn * end));
  const misses = edgeMisses(plan, bead, means);
  const sectors = ends.map((end, i) => ({
    power: (rise / bead.target) * (itemAt(means, i) + meanOver(misses, ends[i - 1] ?? 0, end)),
    warmth: Math.max(0, rise * (1 - powerAt(course, turn * end))),
  }));
  const [face, root] = bead.squares.map((square) => 2 * Math.sqrt(square)) as [number, number];
  const lag = Math.max(...bead.sides.map(({ edges }) => -itemAt(edges, 0).ahead));
  return { sectors, ready: bead.ready, cold: { face, root, power: rise / bead.target }, lag };
}

/** The same weld as a pass: the dwell with the cold plate's power, then the sectors' powers. */
export function plannedPass(
  { plate, circumference, dwell, ends }: SectorPlan,
  dwellPower: number,
  powers: readonly number[],
): RingPass {
  const turn = circumference / plate.speed;
  const steps = powers.map((power, i) => ({ from: dwell + turn * (ends[i - 1] ?? 0), power }));
  const end = dwell + turn * itemAt(ends, ends.length - 1);
  return { plate, circumference, dwell, steps: [{ from: 0, power: dwellPower }, ...steps], end };
}

/** The wanted bead on a cold plate. */
interface ColdBead {
  readonly ready: ReadyPlate;
  /** Melting rise per watt of its power, K/W. */
  readonly target: number;
  readonly sides: readonly [face: BeadSide, root: BeadSide];
  /** u = y² of its edges, m². */
  readonly squares: readonly [face: number, root: number];
}

function coldBead({ plate, rise, width }: SectorPlan): ColdBead {
  const ready = readyPlate(plate);
  const cold = powerOfMean(ready, rise, width);
  const { face, root } = meltSection(ready, rise, cold);
  const share = face / (face + root);
  return {
    ready,
    target: rise / cold,
    sides: [
      sideOf(ready, ready.face, (face * face) / 4, share),
      sideOf(ready, ready.root, (root * root) / 4, 1 - share),
    ],
    squares: [(face * face) / 4, (root * root) / 4],
  };
}

/** Places of the full turn at which the course is checked; a lap has one of its own. */
const CHECKS = 8;

/** Evenly over sectors that are few, so that each has as many, or over the turn: never where a lap would move them. */
function checkPlaces(ends: readonly number[]): number[] {
  const sectors = ends.filter((end) => end <= 1).length;
  const each = Math.ceil(CHECKS / sectors);
  const count = sectors > CHECKS ? CHECKS : each * sectors;
  const turn = Array.from({ length: count }, (_, i) => (i + 0.5) / count);
  const last = itemAt(ends, ends.length - 1);
  return last > 1 ? [...turn, (1 + last) / 2] : turn;
}

interface Miss {
  /** turns */
  readonly at: number;
  /** Melting rise less the edge's temperature, over the melting rise. */
  readonly miss: number;
}

/** How far the edge of the wanted bead is from melting where the sectors have the relative powers `means`. */
function edgeMisses(
  plan: SectorPlan,
  { target, sides, squares }: ColdBead,
  means: readonly number[],
): Miss[] {
  const { plate, circumference, rise, ends } = plan;
  const cold = rise / target;
  const powers = means.map((mean) => Math.max(0, mean * cold));
  const { history, face, root } = readyPass(plannedPass(plan, cold, powers));
  const weights = [face, root];
  return checkPlaces(ends).map((at) => {
    let reached = 0;
    sides.forEach((side, s) => {
      const square = itemAt(squares, s);
      const lag = -itemAt(side.edges, 0).ahead / plate.speed;
      const crest = ringCrest(history, itemAt(weights, s), at * circumference, square, lag);
      reached += (side.weight * crest.value) / rise;
    });
    return { at, miss: 1 - reached };
  });
}

/** Mean miss of the checks within a sector, or that of the nearest check where there is none. */
function meanOver(misses: readonly Miss[], from: number, to: number): number {
  const within = misses.filter(({ at }) => at >= from && at < to);
  if (within.length > 0) return within.reduce((sum, { miss }) => sum + miss, 0) / within.length;
  const middle = (from + to) / 2;
  const away = (a: Miss): number => Math.abs(a.at - middle);
  return misses.reduce((best, next) => (away(next) < away(best) ? next : best)).miss;
}

/** Places along the edge, in distances of the cold bead's widest place behind the arc; that place is the first. */
const PLACES = [1, 1.5, 2.5, 4] as const;

function sideOf({ arc }: ReadyPlate, weights: Float64Array, square: number, weight: number): BeadSide {
  const { ahead, value } = crestAt(arc, weights, square, firstGuess(arc));
  const edges = PLACES.map((place) => ({
    ahead: place * ahead,
    square,
    part: riseAt(arc, weights, place * ahead, square).value / value,
  }));
  return { edges, weight };
}
