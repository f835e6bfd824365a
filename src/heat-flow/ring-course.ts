/** The power round a ring whose arc runs into its own heat, in powers of the bead on a cold plate. */

import { itemAt } from "../numerics/item";
import type { Aging, ArcPlate } from "./arc-plate";
import { agingOf, strengthAt, varianceAt } from "./arc-plate";
import { logPanels } from "./gauss";
import { roundRing } from "./ring-images";

/** One place on the edge of the wanted bead, as the arc carries it along. */
export interface BeadEdge {
  /** m ahead of the arc, 0 or negative. */
  readonly ahead: number;
  /** u = y², m² */
  readonly square: number;
  /** Its temperature under a steady arc on a cold plate over the melting rise: 1 where the bead is widest. */
  readonly part: number;
}

/** A side of the bead: where it may be widest, and its say in the power. */
export interface BeadSide {
  readonly edges: readonly BeadEdge[];
  /** Of all sides together 1. */
  readonly weight: number;
}

export interface Ring {
  readonly plate: ArcPlate;
  /** At the mean radius, m. */
  readonly circumference: number;
  /** s */
  readonly dwell: number;
  /** How far the arc travels, m. */
  readonly travel: number;
  /** Melting rise per watt of the bead's power on a cold plate, K/W. */
  readonly target: number;
  readonly sides: readonly BeadSide[];
}

/** The relative power on an even grid of time, from the start of the travel. */
export interface Course {
  /** s */
  readonly step: number;
  readonly powers: Float64Array;
}

/** Steps to the bell of a pass over the same place, 1/√P of a turn wide with P = v·C/(4α), and in a turn. */
const STEPS_TO_BELL = 5;
const FEWEST_STEPS = 24;
/** The dwell's heat is split at this width in ln τ. */
const DWELL_PANEL = 2;
/** Ages under this part of the dwell add nothing: their heat has not been round the ring. */
const BRIEF = 0.02;
/** A dwell under this part of a step is none: its ages would span too many decades to no effect. */
const BRIEFEST = 1e-6;
/** Gregory's end weights, fourth order: how much of its neighbors' half cells each of the first points carries. */
const FIRST_WEIGHTS = [3 / 8, 7 / 6, 23 / 24] as const;

/**
 * Solves p(t) = min over the edge of (1 − R(t))/part with R = (heat of the dwell + ∫₀ᵗ p(τ)·k(t − τ) dτ)/target, a
 * Volterra equation of the second kind whose kernel is the heat that comes round the ring. The kernel vanishes at
 * t = τ, so each power follows from those before it. The minimum over the edge lets the widest place move back to where
 * the ring is hotter; face and root are weighted together.
 */
export function ringCourse(ring: Ring): Course {
  const { plate, circumference, travel, sides } = ring;
  const aging = agingOf(plate);
  const spread = Math.min(plate.metal.diffusivity, plate.metal.farDiffusivity);
  const peclet = (plate.speed * circumference) / (4 * spread);
  const turn = circumference / plate.speed;
  const step = turn / Math.ceil(Math.max(STEPS_TO_BELL * Math.sqrt(peclet), FEWEST_STEPS));
  const powers = new Float64Array(Math.ceil(travel / plate.speed / step) + 3);
  const heats = sides.map(({ edges }) =>
    edges.map((edge) => edgeHeat(ring, aging, edge, step, powers.length)),
  );
  for (let i = 0; i < powers.length; i += 1) {
    let power = 0;
    sides.forEach(({ edges, weight }, s) => {
      let lowest = Infinity;
      edges.forEach(({ part }, e) => {
        const heat = heatBy(itemAt(itemAt(heats, s), e), powers, i);
        lowest = Math.min(lowest, (1 - heat) / part);
      });
      power += weight * lowest;
    });
    powers[i] = power;
  }
  return { step, powers };
}

/** What reaches one place of the edge by way of the ring, over the melting rise, on the grid of time. */
interface EdgeHeat {
  /** From the dwell. */
  readonly dwell: Float64Array;
  /** From a step of the travel, by its age. */
  readonly kernel: Float64Array;
}

function edgeHeat(ring: Ring, aging: Aging, edge: BeadEdge, step: number, points: number): EdgeHeat {
  const { plate, circumference, dwell, target } = ring;
  const heat = { dwell: new Float64Array(points), kernel: new Float64Array(points) };
  for (let i = 0; i < points; i += 1) {
    const time = i * step;
    const along = plate.speed * time + edge.ahead;
    const worth = (age: number): number => byTheRing(aging, circumference, along, edge.square, age) / target;
    if (i > 0) heat.kernel[i] = step * worth(time);
    if (dwell < BRIEFEST * step) continue;
    let sum = 0;
    logPanels(Math.max(time, BRIEF * dwell), time + dwell, DWELL_PANEL, (age, weight) => {
      sum += weight * worth(age);
    });
    heat.dwell[i] = sum;
  }
  return heat;
}

const folded = new Float64Array(3);

/** What 1 J is worth after `age` to a place `along` m further round, by way of the ring and not straight, K/J. */
function byTheRing(aging: Aging, circumference: number, along: number, square: number, age: number): number {
  const variance = varianceAt(aging, age);
  roundRing(circumference, along, square, variance, folded);
  const straight = Math.exp(-(along * along + square) / (2 * variance));
  const round = Math.max(0, itemAt(folded, 0) - straight);
  return (round * strengthAt(aging, age)) / variance;
}

function heatBy({ dwell, kernel }: EdgeHeat, powers: Float64Array, i: number): number {
  let heat = itemAt(dwell, i);
  for (let j = 0; j < i; j += 1) {
    const weight = j < FIRST_WEIGHTS.length ? itemAt(FIRST_WEIGHTS, j) : 1;
    heat += weight * itemAt(powers, j) * itemAt(kernel, i - j);
  }
  return heat;
}

/** The course at `time` s after the start of the travel, by the cubic through the four nearest points. */
export function powerAt({ step, powers }: Course, time: number): number {
  const place = time / step;
  const first = Math.max(Math.floor(place) - 1, 0);
  const s = place - first;
  return (
    (-itemAt(powers, first) * (s - 1) * (s - 2) * (s - 3)) / 6 +
    (itemAt(powers, first + 1) * s * (s - 2) * (s - 3)) / 2 -
    (itemAt(powers, first + 2) * s * (s - 1) * (s - 3)) / 2 +
    (itemAt(powers, first + 3) * s * (s - 1) * (s - 2)) / 6
  );
}

/** Gauss's two points, which are exact for a cubic. */
const GAUSS = 0.5 / Math.sqrt(3);

/** Mean of the course between two times. */
export function meanPower(course: Course, from: number, to: number): number {
  let sum = 0;
  let start = from;
  while (start < to) {
    const next = (Math.floor(start / course.step + 1e-9) + 1) * course.step;
    const end = next < to ? next : to;
    const [middle, width] = [(start + end) / 2, end - start];
    const pair = powerAt(course, middle - GAUSS * width) + powerAt(course, middle + GAUSS * width);
    sum += (pair / 2) * width;
    start = end;
  }
  return sum / (to - from);
}
