/**
 * Temperature of a plate of finite thickness under a Gaussian arc that has been moving for ever: per watt,
 * T(ξ, y, z) = ∫₀^∞ a(τ)·G(z, τ)·exp(−((ξ + vτ)² + y²)/2s²)/s² dτ with the instants of heat of arc-plate.ts. The
 * Gaussian source is Eagar & Tsai's (Welding Journal, 1983), images and loss Carslaw & Jaeger's (§1.9, §10.10, from
 * memory). ξ is ahead of the arc, y beside its path, z from the face.
 */

import { itemAt } from "../numerics/item";
import type { ArcPlate } from "./arc-plate";
import { agingOf, strengthAt, varianceAt } from "./arc-plate";
import { logPanels, rootPanel } from "./gauss";
import { throughWall } from "./through-wall";

/** The ages at which the integral is taken. */
export interface MovingArc {
  readonly plate: ArcPlate;
  /** vτ, m */
  readonly behind: Float64Array;
  /** 1/s², 1/m² */
  readonly precision: Float64Array;
  /** ατ/h² */
  readonly fourier: Float64Array;
  /** Weight of the rule × a(τ)/s². */
  readonly mean: Float64Array;
}

/** Ages below this part of the shortest time that counts share one panel in √τ. */
const SHORT = 0.1;
/** The minimum spread that the shortest time is taken from, in walls: a point source has no shortest time of its own. */
const MINIMUM_SPREAD = 1e-3;
/** Ages are counted up to this many times the time in which the arc outruns its heat or the loss has taken it. */
const LONGEST = 200;
/** The age up to which one panel in √τ does, s. */
export function firstAge({ metal, wall, spread }: ArcPlate): number {
  const counted = Math.max(spread, MINIMUM_SPREAD * wall);
  return (SHORT * Math.min((counted * counted) / 2, wall * wall)) / metal.diffusivity;
}

/** Width of a panel in ln τ: 8 points on it hold 1e-6 of the rise while the arc's passage is no sharper than at Péclet number 1. */
const LONGEST_PANEL = 1.8;

/** `fineness` times as many ages: to see what the number of them does to answers and time. */
export function movingArc(plate: ArcPlate, fineness = 1): MovingArc {
  const { metal, wall, spread, speed } = plate;
  const aging = agingOf(plate);
  const alpha = metal.diffusivity;
  const first = firstAge(plate);
  const fastest = Math.max(alpha, metal.farDiffusivity);
  const last = LONGEST / ((speed * speed) / (4 * fastest) + aging.decay);
  const peclet = (speed * (wall + 2 * spread)) / (4 * alpha);
  const behind: number[] = [];
  const precision: number[] = [];
  const fourier: number[] = [];
  const mean: number[] = [];
  const each = (age: number, weight: number): void => {
    const variance = varianceAt(aging, age);
    behind.push(speed * age);
    precision.push(1 / variance);
    fourier.push((alpha * age) / (wall * wall));
    mean.push((weight * strengthAt(aging, age)) / variance);
  };
  rootPanel(0, first, each);
  logPanels(first, Math.max(last, 2 * first), LONGEST_PANEL / (1 + peclet / 3) / fineness, each);
  return {
    plate,
    behind: new Float64Array(behind),
    precision: new Float64Array(precision),
    fourier: new Float64Array(fourier),
    mean: new Float64Array(mean),
  };
}

/** Weights of the ages at one depth, the part of the wall below the face. */
export function weightsAt(arc: MovingArc, part: number): Float64Array {
  return arc.mean.map((mean, i) => mean * throughWall(itemAt(arc.fourier, i), part));
}

/** Temperature rise per watt, K/W, and its derivatives by ξ and u = y². */
export interface Rise {
  readonly value: number;
  readonly byAhead: number;
  readonly byAheadTwice: number;
  readonly bySquare: number;
  readonly bySquareAndAhead: number;
}

/** The rise at ξ = `ahead` and u = y² = `square`, at the depth of the weights. */
export function riseAt(arc: MovingArc, weights: Float64Array, ahead: number, square: number): Rise {
  const { behind, precision } = arc;
  let value = 0;
  let byAhead = 0;
  let byAheadTwice = 0;
  let bySquare = 0;
  let bySquareAndAhead = 0;
  for (let i = 0; i < weights.length; i += 1) {
    const x = ahead + itemAt(behind, i);
    const p = itemAt(precision, i);
    const share = itemAt(weights, i) * Math.exp(-0.5 * p * (x * x + square));
    value += share;
    const sp = share * p;
    bySquare += sp;
    byAhead += sp * x;
    const spp = sp * p;
    byAheadTwice += spp * x * x;
    bySquareAndAhead += spp * x;
  }
  return {
    value,
    byAhead: -byAhead,
    byAheadTwice: byAheadTwice - bySquare,
    bySquare: -bySquare / 2,
    bySquareAndAhead: bySquareAndAhead / 2,
  };
}
