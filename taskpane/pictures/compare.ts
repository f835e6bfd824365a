/** Findings in words, worked out from the numbers; compared in the digits that a person sees. */

import type { Sector } from "./ring";

/** Below this a difference is told without its percentage, which would read 0. */
const LEAST_PERCENT = 0.5;
/** The names of a turn in quarters, which other sectors do not have. */
const QUARTER = 90;

/** How the current at the end of the turn compares with that at its beginning. */
export function currentFinding(sectors: readonly Sector[]): string {
  const [first, last] = [sectors[0], sectors.at(-1)];
  if (first === undefined || last === undefined) return "";
  const areQuarters = sectors.every(({ from, to }) => to - from === QUARTER);
  const part = areQuarters ? "quarter" : "sector";
  if (sectors.every(({ mean }) => mean.shown === first.mean.shown)) {
    return `Every ${part} needs the same current`;
  }
  if (last.mean.shown === first.mean.shown) return `The last ${part} needs as much current as the first`;
  return `The last ${part} needs ${difference(last.mean.value, first.mean.value)} current than the first`;
}

/** "13 % less" or "4 % more" than another number that it does not equal. */
function difference(one: number, other: number): string {
  const percent = 100 * Math.abs(one / other - 1);
  const word = one < other ? "less" : "more";
  return percent < LEAST_PERCENT ? `slightly ${word}` : `${String(Math.round(percent))} % ${word}`;
}

/** Where the tube is warmest ahead of the arc. */
export function heatFinding(sectors: readonly Sector[]): string {
  const most = Math.max(...sectors.map(({ rise }) => rise.value));
  const warmest = sectors.find(({ rise }) => rise.value === most);
  if (warmest === undefined || isNone(warmest.rise.shown)) {
    return "No heat has come around: the tube ahead of the arc stays cold.";
  }
  return `Tint: heat that has come around, up to +${warmest.rise.shown}.`;
}

/** Whether a number reads 0 in its own digits. */
function isNone(shown: string): boolean {
  return !/[1-9]/.test(shown);
}
