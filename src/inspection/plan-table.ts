/**
 * Single sampling plans of [mil-std-105e]: code letters by lot and level, and the master tables of normal and tightened
 * inspection. Both tables have one acceptance number along each diagonal, a letter up and a limit down; where one has an
 * arrow instead, the plan at its end holds, sample and all.
 */

import { itemAt } from "../numerics/item";

export const LEVELS = ["S-1", "S-2", "S-3", "S-4", "I", "II", "III"] as const;
export type Level = (typeof LEVELS)[number];

export const SEVERITIES = ["normal", "tightened"] as const;
export type Severity = (typeof SEVERITIES)[number];

/** Quality limits, percent, a step apart. */
export const QUALITY_LIMITS = [0.1, 0.15, 0.25, 0.4, 0.65, 1, 1.5, 2.5, 4, 6.5, 10] as const;

/** Letters and the sample of each. */
const LETTERS = "ABCDEFGHJKLMNPQR";
const SAMPLES = [2, 3, 5, 8, 13, 20, 32, 50, 80, 125, 200, 315, 500, 800, 1250, 2000];

/** The largest lot of each row, and its letter at each level. */
const ROWS: readonly (readonly [largest: number, letters: string])[] = [
  [8, "AAAAAAB"],
  [15, "AAAAABC"],
  [25, "AABBBCD"],
  [50, "ABBCCDE"],
  [90, "BBCCCEF"],
  [150, "BBCDDFG"],
  [280, "BCDEEGH"],
  [500, "BCDEFHJ"],
  [1200, "CCEFGJK"],
  [3200, "CDEGHKL"],
  [10_000, "CDFGJLM"],
  [35_000, "CDFHKMN"],
  [150_000, "DEGJLNP"],
  [500_000, "DEGJMPQ"],
  [Infinity, "DEHKNQR"],
];

export function codeLetter(lot: number, level: Level): string {
  const [, letters] = itemAt(
    ROWS,
    ROWS.findIndex(([largest]) => lot <= largest),
  );
  return letters.charAt(LEVELS.indexOf(level));
}

/** Along the diagonals: acceptance numbers, and arrows to the letter above or below. */
const UP = "up";
const DOWN = "down";
const DIAGONALS: Readonly<Record<Severity, readonly (number | typeof UP | typeof DOWN)[]>> = {
  normal: [0, UP, DOWN, 1, 2, 3, 5, 7, 10, 14, 21],
  tightened: [DOWN, 0, DOWN, DOWN, 1, 2, 3, 5, 8, 12, 18],
};
/** The diagonal of the first acceptance number: letter and limit counted from 0. */
const FIRST_DIAGONAL = 9;

export interface Plan {
  readonly sample: number;
  readonly accept: number;
}

/** Sample and acceptance number of a letter at the place of a quality limit in the list, arrows followed. */
export function planAt(letter: string, limit: number, severity: Severity): Plan {
  return planOf(LETTERS.indexOf(letter), limit, severity);
}

function planOf(letter: number, limit: number, severity: Severity): Plan {
  const diagonals = DIAGONALS[severity];
  const diagonal = letter + limit - FIRST_DIAGONAL;
  const found = diagonal < 0 ? DOWN : (diagonals[diagonal] ?? UP);
  // No letter stands above the first one, and tightened inspection has no plan there: it leads down.
  const leadsDown = letter === 0 && (found === UP || severity === "tightened");
  if (found === DOWN || leadsDown) return planOf(letter + 1, limit, severity);
  if (found === UP) return planOf(letter - 1, limit, severity);
  return { sample: itemAt(SAMPLES, letter), accept: found };
}
