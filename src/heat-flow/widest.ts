/** The hottest place of a line beside the arc's path, and the line on which the hottest place just melts. */

import type { MovingArc } from "./moving-arc";
import { riseAt } from "./moving-arc";

/** The maximum over ξ at one distance from the path. */
export interface Crest {
  /** m; 0 or negative */
  readonly ahead: number;
  /** K/W */
  readonly value: number;
  /** By u = y², K/(W·m²) */
  readonly bySquare: number;
  /** How the place moves with u, 1/m. */
  readonly aheadBySquare: number;
}

const MOST_STEPS = 60;
/** A step along ξ below this part of wall and spread is taken by the quadratic alone: the error goes as its cube. */
const CLOSE = 1e-4;

/** The crest at u = y²: Newton on ∂T/∂ξ = 0, held between the last places where T rose and fell. */
export function crestAt(arc: MovingArc, weights: Float64Array, square: number, guess: number): Crest {
  const scale = arc.plate.wall + arc.plate.spread;
  let low = -Infinity;
  let high = 0;
  let ahead = Math.min(guess, 0);
  for (let step = 0; ; step += 1) {
    const rise = riseAt(arc, weights, ahead, square);
    const move = rise.byAheadTwice < 0 ? -rise.byAhead / rise.byAheadTwice : NaN;
    if (Math.abs(move) < CLOSE * scale || step === MOST_STEPS) {
      return {
        ahead: ahead + move,
        value: rise.value + (rise.byAhead * move) / 2,
        bySquare: rise.bySquare + rise.bySquareAndAhead * move,
        aheadBySquare: -rise.bySquareAndAhead / rise.byAheadTwice,
      };
    }
    if (rise.byAhead > 0) low = ahead;
    else high = ahead;
    // At most twice as far back: much further the heat of all ages has long gone, and nothing shows the way.
    const furthest = low === -Infinity ? 2 * ahead - scale : low;
    const next = ahead + move;
    if (next > furthest && next < high) ahead = next;
    else ahead = low === -Infinity ? furthest : (low + high) / 2;
  }
}

/** Where ln T is this close to its aim the width is exact to rounding. */
const EXACT = 1e-12;

/**
 * u = y² of the line whose crest is `target`, m²; 0 where not even the path itself reaches it. `crestOf` gives the
 * crest at u, which falls with u; u is first looked for at `guess`. Newton on ln T of u, along which ln T is nearly
 * straight: the last step, from a miss of `close`, leaves a miss of its square.
 */
export function squareWhere(
  crestOf: (square: number) => { readonly value: number; readonly bySquare: number },
  target: number,
  close = EXACT,
  guess = 0,
): number {
  let [low, high] = [-Infinity, Infinity];
  let square = guess;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const crest = crestOf(square);
    const miss = Math.log(crest.value / target);
    if (square === 0 && miss <= 0) return 0;
    const next = Math.max(0, square - (miss * crest.value) / crest.bySquare);
    if (Math.abs(miss) < close) return next;
    if (miss > 0) low = square;
    else high = square;
    square = next > low && next < high ? next : (Math.max(0, low) + high) / 2;
  }
  return square;
}

/** The crest at any u, each looked for where the one before says it has moved to. */
export function crestsOf(arc: MovingArc, weights: Float64Array): (square: number) => Crest {
  let at = 0;
  let crest: Crest | undefined;
  return (square) => {
    const guess = crest === undefined ? firstGuess(arc) : crest.ahead + crest.aheadBySquare * (square - at);
    at = square;
    crest = crestAt(arc, weights, square, guess);
    return crest;
  };
}

/** u = y² of the line that the arc of a plate just melts where it takes `target` K/W, m²; 0 where nothing melts. */
export function squareAt(arc: MovingArc, weights: Float64Array, target: number): number {
  return squareWhere(crestsOf(arc, weights), target);
}

/** Where the crest is first looked for: not far behind the arc. */
export function firstGuess({ plate }: MovingArc): number {
  return -(plate.wall + plate.spread) / 4;
}
