/**
 * Rosenthal's moving line source in a plate: heat uniform through the wall, constant properties, no surface loss. The
 * rise is q/(2πkh)·exp(−λξ)·K₀(λr) with λ = v/2α, ξ ahead of the arc and r from it ([rosenthal-1941],
 * [rosenthal-1946]).
 */

import { above0, isAbove, isBelow } from "../limits";
import type { Current, Length, Speed } from "../quantity";
import { CURRENT, LENGTH, si } from "../quantity";
import { amount, Refusal, rule } from "../refusal";
import { rootBetween } from "../numerics/root";
import { scaledBesselK } from "../numerics/bessel";
import type { Plate } from "./plate";
import { arcSpeed, fusedWidth, WIDTHS } from "./plate";

/** A place on the widest line of the isotherms, told by x = λr there. */
interface Widest {
  /** λb/2 = x·√(1 − (K₀/K₁)²) */
  readonly halfWidth: number;
  /** 4πkhθ/q = 2·exp(x·K₀/K₁)·K₀(x) */
  readonly resistance: number;
}

function widestAt(x: number): Widest {
  const { k0, gap } = scaledBesselK(x);
  const short = gap / (k0 + gap); // 1 − K₀/K₁
  return { halfWidth: x * Math.sqrt(short * (2 - short)), resistance: 2 * k0 * Math.exp(-x * short) };
}

/** 4πkhθ/q for a bead whose λb/2 is given: the place on the widest line is between y and y² + y + 2. */
export function meltResistance(halfWidth: number): number {
  const miss = (logX: number): number => Math.log(widestAt(Math.exp(logX)).halfWidth / halfWidth);
  const x = Math.exp(rootBetween(miss, Math.log(halfWidth), Math.log(halfWidth * halfWidth + halfWidth + 2)));
  return widestAt(x).resistance;
}

/** λb/2 = v·b/(4α): Rosenthal's dimensionless speed × width. */
export function dimensionlessWidth(plate: Plate, speed: Speed, width: Length): number {
  return (arcSpeed(speed) * fusedWidth(width)) / (4 * plate.diffusivity);
}

/** The power, W, whose liquidus isotherm is exactly `width` m wide at its widest. */
export function meltPower(plate: Plate, speed: Speed, width: Length): number {
  return conductance(plate) / meltResistance(dimensionlessWidth(plate, speed, width));
}

/** Fused width, m, of an arc of `amps` that puts `wattsPerAmp` into the plate: the inverse of `meltPower`. */
export function meltWidth(plate: Plate, speed: Speed, amps: Current, wattsPerAmp: number): Length {
  const power = above0("amps", amps, CURRENT) * wattsPerAmp;
  const [least, most] = WIDTHS.map((width) => meltPower(plate, speed, width) / wattsPerAmp) as [
    number,
    number,
  ];
  if (isBelow(amps, least))
    throw outside(amps, rule`melts nothing; melting starts at ${amount(least, CURRENT)}`);
  if (isAbove(amps, most)) throw outside(amps, rule`must be at most ${amount(most, CURRENT)}`);
  const [narrow, wide] = WIDTHS.map((width) => dimensionlessWidth(plate, speed, width)) as [number, number];
  const target = conductance(plate) / power;
  const miss = (logX: number): number => Math.log(widestAt(Math.exp(logX)).resistance / target);
  const x = Math.exp(rootBetween(miss, Math.log(narrow) - 1, Math.log(wide * wide + wide + 2)));
  return si((widestAt(x).halfWidth * 4 * plate.diffusivity) / speed, LENGTH);
}

/** 4πkhθ, W. */
function conductance({ conductivity, wall, meltingRise }: Plate): number {
  return 4 * Math.PI * conductivity * wall * meltingRise;
}

function outside(amps: number, why: ReturnType<typeof rule>): Refusal {
  return new Refusal("amps", amount(amps, CURRENT), why, "unanswerable");
}
