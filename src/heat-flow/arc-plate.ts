/** The plate that a tube wall is to a traveling arc, and what one instant of the arc's heat has become of some age. */

import type { EffectiveMetal } from "./effective";

export interface ArcPlate {
  readonly metal: EffectiveMetal;
  /** h, m */
  readonly wall: number;
  /** σ of the Gaussian arc on the face, m. */
  readonly spread: number;
  /** v of the metal under the arc, m/s. */
  readonly speed: number;
}

/** The age at which half of the change to the colder metal's properties is done, in 4α/v². */
const COOLING_AGE = 1.1785;

/** The numbers of a plate that every instant of heat needs. */
export interface Aging {
  readonly plate: ArcPlate;
  /** t_c, s */
  readonly coolingAge: number;
  /** m = H/(ρc·h), 1/s */
  readonly decay: number;
  /** 1/(2π·ρc·h), K·m²/J */
  readonly strength: number;
}

export function agingOf(plate: ArcPlate): Aging {
  const { metal, wall, speed } = plate;
  return {
    plate,
    coolingAge: (COOLING_AGE * 4 * metal.diffusivity) / (speed * speed),
    decay: metal.surfaceLoss / (metal.heatCapacity * wall),
    strength: 1 / (2 * Math.PI * metal.heatCapacity * wall),
  };
}

/**
 * Variance along the plate of the heat of one instant, m²: s² = σ² + 2ατ + 2(α_far − α)(τ − t_c·ln(1 + τ/t_c)), whose
 * rate of growth passes from 2α to 2α_far with the age τ.
 */
export function varianceAt({ plate, coolingAge }: Aging, age: number): number {
  const { metal, spread } = plate;
  const late = age - coolingAge * Math.log1p(age / coolingAge);
  return (
    spread * spread + 2 * metal.diffusivity * age + 2 * (metal.farDiffusivity - metal.diffusivity) * late
  );
}

/** Mean temperature rise through the wall × 2πs² left of 1 J, K·m²/J: e^{−mτ}·(1 + (φ − 1)·τ/(τ + t_c))/(ρc·h). */
export function strengthAt({ plate, coolingAge, decay, strength }: Aging, age: number): number {
  const far = 1 + (plate.metal.farStrength - 1) * (age / (age + coolingAge));
  return strength * far * Math.exp(-decay * age);
}
