/** Power around a ring whose arc runs into its own heat. */

import { itemAt } from "../numerics/item";
import { roundTheRing, roundTheRingOver } from "./ring-kernel";

/** One ring, by the numbers that count. */
export interface Ring {
  /** P = v·C/(4α) */
  readonly peclet: number;
  /** 4πkhθ/q of the bead. */
  readonly resistance: number;
  /** Time the arc stands still first, in turns of travel. */
  readonly dwell: number;
  /** How far it travels, turns. */
  readonly turns: number;
}

/** Steps to the earliest heat from around the ring, which comes near u = P, and to the bell of a pass over the same place, 1/√P wide. */
const STEPS_TO_FIRST_HEAT = 8;
const STEPS_TO_BELL = 5;
const FEWEST_STEPS = 20;
/** Gregory's end weights, fourth order: how much of its neighbors' half cells each of the first points carries. */
const FIRST_WEIGHTS = [3 / 8, 7 / 6, 23 / 24] as const;

/** The power over the bead's power on an even grid of time, from the start of rotation. */
export interface Course {
  readonly step: number;
  readonly powers: Float64Array;
}

/**
 * Solves p(t) = 1 − (heat of the dwell + ∫₀ᵗ p(τ)·k(t − τ) dτ)/resistance, with k the heat that comes around the ring: a
 * Volterra equation of the second kind. k depends on t − τ alone, so one row of it serves all times; it vanishes at
 * t = τ with all its derivatives, so each new power follows from those before and the trapezoidal rule is exact to
 * rounding there. At τ = 0 the rule is corrected to the fourth order. The step follows the narrowest thing k does.
 */
export function ringCourse({ peclet, resistance, dwell, turns }: Ring): Course {
  const step = 1 / stepsPerTurn(peclet);
  const points = Math.ceil(turns / step) + 3;
  const kernel = new Float64Array(points);
  const powers = new Float64Array(points);
  for (let i = 0; i < points; i += 1) {
    const t = i * step;
    kernel[i] = (roundTheRing(peclet, t, t) * step) / resistance;
    let heat = roundTheRingOver(peclet, t, t, t + dwell) / resistance;
    for (let j = 0; j < i; j += 1) heat += itemAt(powers, j) * itemAt(kernel, i - j);
    for (const [j, weight] of FIRST_WEIGHTS.entries()) {
      if (j < i) heat -= (1 - weight) * itemAt(powers, j) * itemAt(kernel, i - j);
    }
    powers[i] = 1 - heat;
  }
  return { step, powers };
}

function stepsPerTurn(peclet: number): number {
  return Math.ceil(Math.max(STEPS_TO_FIRST_HEAT / peclet, STEPS_TO_BELL * Math.sqrt(peclet), FEWEST_STEPS));
}

/** The course at a time up to its last turn, by the cubic through the four nearest points. */
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

/** Mean of the course between two times; of no time at all, the power then. */
export function meanPower(course: Course, from: number, to: number): number {
  if (to <= from) return powerAt(course, from);
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
