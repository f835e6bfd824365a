/**
 * How hot the tube gets beside the weld: a moving arc round the ring, heat even through the wall, properties of the
 * cold metal, then one correction for what the metal near the joint does differently because it is hot.
 */

import { rootBetween } from "../numerics/root";
import type { EffectiveMetal, MetalNumbers } from "./effective";
import { ROOM } from "./effective";
import type { RingPass } from "./ring-pass";
import { meanRadiusSpeed } from "./ring-pass";
import { ringPeak } from "./ring-peak";
import { squareWhere } from "./widest";

export interface DamWeld {
  /** m */
  readonly od: number;
  readonly wall: number;
  /** m/s at the outside. */
  readonly speed: number;
  /** W into the metal. */
  readonly power: number;
  /** Arc on beside the one turn, s: taken as a dwell where the turn begins and ends. */
  readonly extraSeconds: number;
  /** σ of the arc, m. */
  readonly spread: number;
  readonly metal: MetalNumbers;
  /** H of both faces together, W/(m²·K). */
  readonly surfaceLoss: number;
}

/**
 * Still air outside and a gentle purge inside, W/(m²·K): films of 15 and 5 and, near 300 °C, radiation of 10 with
 * emissivities of 0.4 and 0.2. An estimate that fits the independent solution, on the hot side within 45 mm.
 */
export const STILL_AIR_LOSS = 30;

/** The weld as a pass round the ring with the properties of the cold metal. */
export function damPass(weld: DamWeld): RingPass {
  const { od, wall, speed, power, extraSeconds, spread, surfaceLoss } = weld;
  const circumference = Math.PI * (od - wall);
  const plate = {
    metal: coldMetal(weld.metal, surfaceLoss),
    wall,
    spread,
    speed: meanRadiusSpeed(od, wall, speed),
  };
  const end = extraSeconds + circumference / plate.speed;
  return { plate, circumference, dwell: extraSeconds, steps: [{ from: 0, power }], end };
}

function coldMetal(metal: MetalNumbers, surfaceLoss: number): EffectiveMetal {
  const diffusivity = metal.coldConductivity / metal.coldHeatCapacity;
  return {
    diffusivity,
    heatCapacity: metal.coldHeatCapacity,
    farDiffusivity: diffusivity,
    farStrength: 1,
    surfaceLoss,
    liquidus: metal.liquidus,
  };
}

/** Maximum temperature rise, K, that a place `distance` m beside the joint ever sees, anywhere round the tube. */
export function damRise(distance: number, weld: DamWeld): number {
  return hotRise(ringPeak(damPass(weld), distance).rise, weld.metal);
}

/** The distance, m, beyond which no place ever gets more than `rise` K warmer; 0 where not even the joint does. */
export function damReach(rise: number, weld: DamWeld): number {
  const pass = damPass(weld);
  const peakAt = (square: number): { value: number; bySquare: number } => {
    const { rise: value, bySquare } = ringPeak(pass, Math.sqrt(square));
    return { value, bySquare };
  };
  return Math.sqrt(squareWhere(peakAt, coldRise(rise, weld.metal), CLOSE));
}

/** Where ln T is this close to its aim: the peak itself is found no closer. */
const CLOSE = 1e-9;

/**
 * What hot metal takes off the rise of the cold one: R·(1 + c·x³/(1 + x³/4)) = linear rise, x = R/θ, fitted to the
 * independent solution for 316L without loss (5 to 45 mm, rises of 150 to 1350 K, within 3 %). For other metals c is
 * scaled, as an estimate, by how much √(k·c) at the liquidus exceeds that of the cold metal.
 */
const HOT_EXCESS = 0.79;

function hotCoefficient(metal: MetalNumbers): number {
  const heat = (metal.sensibleHeat * metal.density) / (metal.liquidus - ROOM);
  const ratio = (metal.liquidusConductivity * heat) / (metal.coldConductivity * metal.coldHeatCapacity);
  return HOT_EXCESS * (Math.sqrt(ratio) - 1);
}

/** The linear rise that belongs to a true one, K. */
export function coldRise(rise: number, metal: MetalNumbers): number {
  const cube = (rise / (metal.liquidus - ROOM)) ** 3;
  return rise * (1 + (hotCoefficient(metal) * cube) / (1 + cube / 4));
}

/** The true rise that belongs to a linear one, K. */
export function hotRise(linear: number, metal: MetalNumbers): number {
  if (linear === 0) return 0;
  const coefficient = 1 + 4 * Math.abs(hotCoefficient(metal));
  return rootBetween(
    (rise) => coldRise(rise, metal) / linear - 1,
    linear / coefficient,
    linear * coefficient,
  );
}
