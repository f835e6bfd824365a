/**
 * Rosenthal's moving line source in a plate, which the model has to become where the arc is small, the wall thin and
 * nothing is lost: heat even through the wall, constant properties. The rise is q/(2πkh)·exp(−λξ)·K₀(λr) with
 * λ = v/2α, ξ ahead of the arc and r from it ([rosenthal-1941], [rosenthal-1946]). Base SI.
 */

import { scaledBesselK } from "./bessel";

export interface LinePlate {
  /** m */
  readonly wall: number;
  /** W/(m·K) */
  readonly conductivity: number;
  /** m²/s */
  readonly diffusivity: number;
  /** K */
  readonly meltingRise: number;
}

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

/** The power, W, whose liquidus isotherm is exactly `width` m wide at its widest, by bisection. */
export function rosenthalPower(plate: LinePlate, speed: number, width: number): number {
  const { conductivity, wall, meltingRise, diffusivity } = plate;
  const halfWidth = (speed * width) / (4 * diffusivity);
  let low = Math.log(halfWidth);
  let high = Math.log(halfWidth * halfWidth + halfWidth + 2);
  for (let i = 0; i < 80; i += 1) {
    const middle = (low + high) / 2;
    if (widestAt(Math.exp(middle)).halfWidth < halfWidth) low = middle;
    else high = middle;
  }
  return (4 * Math.PI * conductivity * wall * meltingRise) / widestAt(Math.exp(low)).resistance;
}
