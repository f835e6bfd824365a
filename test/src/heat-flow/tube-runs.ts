/**
 * The runs of test/data/tube-runs.jsonl: an independent nonlinear 3-D solution of tube welds (enthalpy method, k(T) and
 * cp(T), latent heat, Gaussian arc, losses of both faces). Computed data, no measurement.
 */

import { readFileSync } from "node:fs";

import type { MetalNumbers } from "../../../src/heat-flow/effective";
import { effectiveMetal, ROOM } from "../../../src/heat-flow/effective";
import type { RingPass } from "../../../src/heat-flow/ring-pass";
import { meanRadiusSpeed } from "../../../src/heat-flow/ring-pass";

export interface Run {
  readonly id: string;
  /** mm, mm/s, s, W */
  readonly od: number;
  readonly wall: number;
  readonly metal: string;
  readonly speed: number;
  readonly sigma: number;
  readonly dwell: number;
  readonly power: readonly number[];
  readonly pulseHz?: number;
  readonly peakShare?: number;
  readonly backOverPeak?: number;
}

export interface WidthRun extends Run {
  readonly deg: readonly number[];
  readonly face: readonly number[];
  readonly root: readonly number[];
}

export interface DamRun extends Run {
  readonly losses: boolean;
  readonly axial: readonly number[];
  readonly peak: readonly number[];
}

const RUNS = readFileSync("test/data/tube-runs.jsonl", "utf8")
  .trim()
  .split("\n")
  .map((line) => JSON.parse(line) as WidthRun | DamRun);

export const DAM_RUNS = RUNS.filter((run): run is DamRun => "axial" in run);
/** With pulsed current, and their steady twins. */
export const PULSE_RUNS = RUNS.filter((run): run is WidthRun => "deg" in run && run.id.startsWith("pulse"));
/** Steady current only. */
export const WIDTH_RUNS = RUNS.filter((run): run is WidthRun => "deg" in run && !run.id.startsWith("pulse"));

/** k = k0 + k1·T, cp = c0 + c1·T with T in K; kg/m³, K, J/kg: as the runs were computed. */
const LINES = {
  "316L": { k0: 9.248, k1: 0.01571, c0: 459.88, c1: 0.133, density: 7955, liquidus: 1723, latentHeat: 270e3 },
  "304L": { k0: 8.116, k1: 0.01618, c0: 469.4, c1: 0.1348, density: 7894, liquidus: 1728, latentHeat: 265e3 },
  "titanium-like": {
    k0: 2.5,
    k1: 0.0145,
    c0: 518,
    c1: 0.135,
    density: 4420,
    liquidus: 1923,
    latentHeat: 286e3,
  },
  "carbon-steel-like": {
    k0: 62,
    k1: -0.02,
    c0: 440,
    c1: 0.2,
    density: 7850,
    liquidus: 1783,
    latentHeat: 247e3,
  },
} as const;

export function numbersOf(name: string): MetalNumbers {
  const line = LINES[name as keyof typeof LINES];
  const middle = (ROOM + line.liquidus) / 2;
  const k = (kelvin: number): number => line.k0 + line.k1 * kelvin;
  const c = (kelvin: number): number => line.c0 + line.c1 * kelvin;
  return {
    meanConductivity: k(middle),
    liquidusConductivity: k(line.liquidus),
    coldConductivity: k(298.15),
    coldHeatCapacity: c(298.15) * line.density,
    sensibleHeat: c(middle) * (line.liquidus - ROOM),
    latentHeat: line.latentHeat,
    density: line.density,
    liquidus: line.liquidus,
  };
}

/** K from 20 °C to the liquidus. */
export function riseOf({ metal }: Run): number {
  return numbersOf(metal).liquidus - ROOM;
}

export function passOf(run: Run): RingPass {
  const [od, wall] = [run.od / 1000, run.wall / 1000];
  const speed = meanRadiusSpeed(od, wall, run.speed / 1000);
  const circumference = Math.PI * (od - wall);
  const quarter = circumference / speed / 4;
  return {
    plate: { metal: effectiveMetal(numbersOf(run.metal)), wall, spread: run.sigma / 1000, speed },
    circumference,
    dwell: run.dwell,
    steps: run.power.map((power, i) => ({ from: i === 0 ? 0 : run.dwell + i * quarter, power })),
    end: run.dwell + 4 * quarter,
  };
}

/** A place of a run that counts: mm. */
export interface Place {
  readonly run: WidthRun;
  readonly deg: number;
  readonly face: number;
  readonly root: number;
}

const LAST_FINISHED = 320;

/** Places up to 320° with a bead of 0.7 to 1.4 × (1 mm + 2 walls) and a root of at least 0.7 walls; every `stride`th. */
export function placesOf(run: WidthRun, stride: number): Place[] {
  const usual = 1 + 2 * run.wall;
  return run.deg
    .map((deg, i) => ({ run, deg, face: run.face[i] ?? 0, root: run.root[i] ?? 0 }))
    .filter((_, i) => i % stride === 0)
    .filter(({ deg, face, root }) => {
      const bead = (face + root) / 2 / usual;
      return deg <= LAST_FINISHED && bead >= 0.7 && bead <= 1.4 && root >= 0.7 * run.wall;
    });
}

export const STAINLESS = ["316L", "304L"] as const;
export const ALIKE = ["titanium-like", "carbon-steel-like"] as const;

/** 95th percentile of the sizes of the errors. */
export function percentile95(errors: readonly number[]): number {
  const sorted = errors.map(Math.abs).sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(0.95 * sorted.length))] ?? NaN;
}
