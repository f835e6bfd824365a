/** Temperature of a ring while it is welded and after: every instant of the arc's heat, as it was, added up. */

import { itemAt } from "../numerics/item";
import { agingOf, strengthAt, varianceAt } from "./arc-plate";
import { logPanels, rootPanel } from "./gauss";
import { firstAge } from "./moving-arc";
import { roundRing } from "./ring-images";
import type { HeatGiven, RingPass } from "./ring-pass";
import { heatGiven } from "./ring-pass";
import { throughWall } from "./through-wall";

/** The ages at which the heat of a pass is added up: each stands for the cell of ages that its weight spans. */
export interface RingHistory {
  readonly pass: RingPass;
  readonly given: HeatGiven;
  readonly age: Float64Array;
  /** s², m² */
  readonly variance: Float64Array;
  /** a(τ)/s², K/J */
  readonly mean: Float64Array;
  /** Where the cell ends, s. */
  readonly cellEnd: Float64Array;
}

/** Width of a panel in ln τ: with 8 points a cell is a tenth of its age, so that a change of power is placed well. */
const LONGEST_PANEL = 0.8;

/** A pass made ready for heat of the ages from `from` to `until`, s; with `fineness` times as many of them. */
export function ringHistory(pass: RingPass, until: number, from = 0, fineness = 1): RingHistory {
  const aging = agingOf(pass.plate);
  const age: number[] = [];
  const variance: number[] = [];
  const mean: number[] = [];
  const cellEnd: number[] = [];
  let end = from;
  const each = (tau: number, weight: number): void => {
    end += weight;
    const square = varianceAt(aging, tau);
    age.push(tau);
    variance.push(square);
    mean.push(strengthAt(aging, tau) / square);
    cellEnd.push(end);
  };
  const first = Math.max(from, Math.min(firstAge(pass.plate), until / 2));
  if (first > from) rootPanel(from, first, each);
  logPanels(first, until, LONGEST_PANEL / fineness, each);
  return {
    pass,
    given: heatGiven(pass),
    age: new Float64Array(age),
    variance: new Float64Array(variance),
    mean: new Float64Array(mean),
    cellEnd: new Float64Array(cellEnd),
  };
}

/** The ages' weights at one depth, the part of the wall below the face, K/J. */
export function historyWeights({ pass, age, mean }: RingHistory, part: number): Float64Array {
  const { metal, wall } = pass.plate;
  const rate = metal.diffusivity / (wall * wall);
  return mean.map((weight, i) => weight * throughWall(rate * itemAt(age, i), part));
}

export interface RingRise {
  /** When, s from the ignition of the arc. */
  readonly time: number;
  /** K */
  readonly value: number;
  /** K/s */
  readonly byTime: number;
  /** K/s² */
  readonly byTimeTwice: number;
  /** Along the ring, K/m */
  readonly byAlong: number;
  /** By u = y², K/m² */
  readonly bySquare: number;
}

/** Room for the ring's sum and its slopes, so that no node has to make its own. */
const folded = new Float64Array(3);

/**
 * T(x, y, z, t) = ∫₀ᵗ q(t − τ)·a(τ)·G(z, τ)·Σₙexp(−((x − x_arc(t − τ) + nC)² + y²)/2s²)/s² dτ at `along` m round the
 * ring, u = y² = `square`, the depth of the weights and `time`, after the ignition. Each node carries the heat its whole cell was given.
 */
export function ringRise(
  history: RingHistory,
  weights: Float64Array,
  along: number,
  square: number,
  time: number,
): RingRise {
  const { pass, given, age, variance, cellEnd } = history;
  const { circumference, dwell } = pass;
  const { speed } = pass.plate;
  const { from, power, before } = given;
  let value = 0;
  let byTime = 0;
  let byTimeTwice = 0;
  let byAlong = 0;
  let bySquare = 0;
  let step = from.length - 1;
  while (time <= itemAt(from, step)) step -= 1;
  let later = itemAt(power, step);
  let heatLater = itemAt(before, step) + later * (time - itemAt(from, step));
  for (let i = 0; i < age.length && heatLater > 0; i += 1) {
    const edge = time - itemAt(cellEnd, i);
    while (step > 0 && edge <= itemAt(from, step)) step -= 1;
    const earlier = itemAt(power, step);
    const heatEarlier = step > 0 ? itemAt(before, step) + earlier * (edge - itemAt(from, step)) : 0;
    const s2 = itemAt(variance, i);
    const source = time - itemAt(age, i);
    const moving = source > dwell;
    const travel = moving ? speed * (source - dwell) : 0;
    roundRing(circumference, along - travel, square, s2, folded);
    const sum = itemAt(folded, 0);
    const worth = itemAt(weights, i);
    const heatIn = heatLater - heatEarlier;
    const heat = heatIn * worth;
    const slope = heat * itemAt(folded, 1);
    value += heat * sum;
    bySquare -= (heat * sum) / (2 * s2);
    byAlong += slope;
    byTime += (later - earlier) * worth * sum;
    if (moving) {
      byTime -= slope * speed;
      byTimeTwice +=
        speed * worth * (heatIn * speed * itemAt(folded, 2) - 2 * (later - earlier) * itemAt(folded, 1));
    }
    later = earlier;
    heatLater = heatEarlier;
  }
  return { time, value, byTime, byTimeTwice, byAlong, bySquare };
}
