/**
 * How hot the tube gets away from the weld. The ring of the weld is taken as one source, uniform around the tube, that
 * heats both sides for as long as the arc burns; cold properties, no surface loss, so it errs on the hot side.
 */

import { above0, atLeast0, temperature, tube } from "../limits";
import type { Material } from "../metal/material";
import type { Current, Length, Share, Speed, Temperature, Time, Voltage } from "../quantity";
import { CURRENT, LENGTH, si, TEMPERATURE, TIME } from "../quantity";
import { amount, Refusal, rule } from "../refusal";
import { rootBetween } from "../numerics/root";
import { wattsPerAmp } from "./arc";
import { ierfc } from "../numerics/error-function";
import { arcSpeed } from "./plate";

export interface HeatedTube {
  readonly od: Length;
  readonly wall: Length;
  readonly amps: Current;
  readonly volts: Voltage;
  readonly speed: Speed;
  /** Arc on beside the one turn: dwell and overlap, s. */
  readonly extraSeconds: Time;
  readonly efficiency: Share;
  readonly material: Material;
  /** K */
  readonly ambient: Temperature;
}

/** The weld as the tube on either side feels it. */
interface Source {
  /** Power over section and conductivity, K/m. */
  readonly gradient: number;
  readonly diffusivity: number;
  readonly seconds: number;
}

function sourceOf(heated: HeatedTube): Source {
  const { od, wall, amps, volts, speed, extraSeconds, efficiency, material } = heated;
  tube(od, wall);
  temperature("ambient", heated.ambient);
  const power = above0("amps", amps, CURRENT) * wattsPerAmp(volts, efficiency);
  const section = Math.PI * (od - wall) * wall;
  const turn = (Math.PI * od) / arcSpeed(speed);
  return {
    gradient: power / (section * material.coldConductivity.value),
    diffusivity: material.coldConductivity.value / material.coldHeatCapacity.value,
    seconds: turn + atLeast0("extraSeconds", extraSeconds, TIME),
  };
}

/** Maximum temperature that a place reaches, K. */
export function damTemperature(distance: Length, heated: HeatedTube): Temperature {
  const source = sourceOf(heated);
  return si(heated.ambient + peakRise(source, atLeast0("distance", distance, LENGTH)), TEMPERATURE);
}

/** What a change of unit may leave between two equal temperatures, K. */
const ROUNDING = 1e-9;

/** The nearest place that never gets above `limit`, m from the weld. */
export function damDistance(limit: Temperature, heated: HeatedTube): Length {
  const source = sourceOf(heated);
  const allowed = limit - heated.ambient;
  if (!(allowed > ROUNDING)) {
    throw new Refusal(
      "limit",
      amount(limit, TEMPERATURE),
      rule`must be above ambient, ${amount(heated.ambient, TEMPERATURE)}`,
    );
  }
  const hottest = peakRise(source, 0);
  if (allowed > hottest) {
    throw new Refusal(
      "limit",
      amount(limit, TEMPERATURE),
      rule`the weld itself only reaches ${amount(heated.ambient + hottest, TEMPERATURE)} by this calculation`,
      "unanswerable",
    );
  }
  // All the heat in one instant would warm every place more, so where that is down to the limit the rest is too.
  const far = instantReach(source) / allowed;
  const miss = (x: number): number => Math.log(peakRise(source, x) / allowed);
  return si(rootBetween(miss, 0, far), LENGTH);
}

/** Peak rise × distance if all the heat came at once: q·t/(A·ρc·√(2πe)), K·m. */
function instantReach({ gradient, diffusivity, seconds }: Source): number {
  return (gradient * diffusivity * seconds) / Math.sqrt(2 * Math.PI * Math.E);
}

/** Places so far, by x²/(4κ·t_on), that the heat comes as from one instant; the error is far under the inverse of this. */
const FAR = 1e8;
/** Places so near that the peak is where the heat ends. */
const NEAR = 1e-12;

function peakRise(source: Source, x: number): number {
  const reach = x / Math.sqrt(4 * source.diffusivity * source.seconds);
  const ratio = reach * reach;
  if (ratio > FAR) return instantReach(source) / x;
  if (ratio < NEAR) return riseAt(source, x, 1);
  const after = secondsAfter(ratio);
  return riseAt(source, x, 1 + after) - riseAt(source, x, after);
}

/**
 * Constant flux into a half-space, Carslaw & Jaeger §2.9, half the power each way: q·√(κt)/(A·k)·ierfc(x/2√κt), at a
 * time told in heating times.
 */
function riseAt({ gradient, diffusivity, seconds }: Source, x: number, time: number): number {
  const depth = Math.sqrt(diffusivity * seconds * time);
  return gradient * depth * ierfc(x / (2 * depth));
}

/**
 * When the peak comes, in heating times after the heat ends. There both solutions change equally fast:
 * x²/(4κ·t_on) = ½·a(1 + a)·ln((1 + a)/a).
 */
function secondsAfter(ratio: number): number {
  const miss = (logA: number): number => {
    const a = Math.exp(logA);
    return Math.log((a * (1 + a) * Math.log1p(1 / a)) / (2 * ratio));
  };
  return Math.exp(rootBetween(miss, -40, 30));
}
