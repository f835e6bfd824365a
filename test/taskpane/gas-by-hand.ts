/** The gas estimate worked by hand: its invented list, and what a line of it takes. */

import { byName, number } from "../bead";

const DIFFUSIVITY: Record<string, number> = { "316L": 5.848, "304L": 5.8167 };

export interface Worked {
  readonly joints: number;
  /** Travel, mm/s. */
  readonly travel: number;
  readonly cycle: number;
  readonly purge: number;
  readonly arcGas: number;
  readonly purgeGas: number;
}

export interface HandTerms {
  /** mm³ of the unit of volume. */
  readonly volume: number;
  /** Flows, volumes a second. */
  readonly torch: number;
  readonly purge: number;
  /** Between the dams, mm. */
  readonly spacing: number;
}

/** 20 ft³/h at the torch, 15 in the bore, dams 24 in apart. */
export const US_TERMS: HandTerms = {
  volume: 304.8 ** 3,
  torch: 20 / 3600,
  purge: 15 / 3600,
  spacing: 24 * 25.4,
};
/** 10 L/min at the torch, 7 in the bore, dams 600 mm apart. */
export const SI_TERMS: HandTerms = { volume: 1e6, torch: 10 / 60, purge: 7 / 60, spacing: 600 };

export type HandLine = readonly [joints: number, od: number, wall: number, metal: string];

/** The list of the sheet, in inches and in millimeters. */
export const US_LINES: readonly HandLine[] = [
  [120, 0.5, 0.049, "316L"],
  [220, 1, 0.065, "316L"],
  [90, 1.5, 0.065, "316L"],
  [64, 2, 0.065, "316L"],
  [36, 3, 0.065, "304L"],
  [18, 4, 0.083, "304L"],
];
export const SI_LINES: readonly HandLine[] = [
  [120, 12.7, 1.25, "316L"],
  [220, 25.4, 1.65, "316L"],
  [90, 38.1, 1.65, "316L"],
  [64, 50.8, 1.65, "316L"],
  [36, 76.2, 1.65, "304L"],
  [18, 101.6, 2.11, "304L"],
];

/** One line of the bid; od and wall in mm. */
export function worked([joints, od, wall, metal]: HandLine, terms: HandTerms): Worked {
  const alpha = DIFFUSIVITY[metal] ?? NaN;
  const bead = 1 + 2 * wall;
  const travel = (1.6 * alpha) / bead;
  // The dwell by its formula, which has checks of its own.
  const dwell = number(
    "START_DWELL",
    ...byName("START_DWELL", { wall, speed: 60 * travel, material: metal, units: "SI" }),
  );
  const turn = (Math.PI * od) / travel;
  const cycle = 30 + dwell + turn * (380 / 360) + (3 * bead) / travel + 15;
  const bore = ((Math.PI / 4) * (od - 2 * wall) ** 2 * terms.spacing) / terms.volume;
  const purge = (Math.log(209_500 / 50) * bore) / terms.purge;
  return {
    joints,
    travel,
    cycle,
    purge,
    arcGas: joints * terms.torch * cycle,
    purgeGas: joints * terms.purge * (purge + cycle),
  };
}

/** The same for a line in inches. */
export function workedInches([joints, od, wall, metal]: HandLine): Worked {
  return worked([joints, od * 25.4, wall * 25.4, metal], US_TERMS);
}

export function sum(lines: readonly Worked[], part: keyof Worked): number {
  return lines.reduce((total, line) => total + line[part], 0);
}

/** Gas through torch and bore. */
export function gasOf(lines: readonly Worked[]): number {
  return sum(lines, "arcGas") + sum(lines, "purgeGas");
}

/** Hours of machine and handling, 600 s a joint. */
export function hoursOf(lines: readonly Worked[]): number {
  return lines.reduce((hours, { joints, cycle }) => hours + (joints * (cycle + 600)) / 3600, 0);
}
