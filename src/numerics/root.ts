/** Roots of functions of one unknown. */

const MOST_STEPS = 200;
/** Where a step no longer moves the root that a cell can show. */
const CLOSE = 1e-14;

/**
 * The root of a monotonic function between two places where its sign differs: false position whose idle end is
 * weakened as Anderson & Björck (1973) do, halved whenever that is slow.
 */
export function rootBetween(f: (x: number) => number, from: number, to: number): number {
  let [a, b] = [from, to];
  let [fa, fb] = [f(a), f(b)];
  if (fa === 0) return a;
  for (let step = 0; step < MOST_STEPS && fb !== 0; step += 1) {
    const width = Math.abs(b - a);
    if (width <= CLOSE * Math.max(1, Math.abs(b))) break;
    const slow = step % 4 === 3;
    const x = slow ? (a + b) / 2 : b - (fb * (b - a)) / (fb - fa);
    const fx = f(x);
    if (fx < 0 !== fb < 0) [a, fa] = [b, fb];
    else fa *= slow ? 1 : weakening(fx, fb);
    [b, fb] = [x, fx];
  }
  return b;
}

function weakening(now: number, before: number): number {
  const kept = 1 - now / before;
  return kept > 0 ? kept : 0.5;
}
