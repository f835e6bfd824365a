/** Roots of functions of one unknown. */

const MOST_STEPS = 200;
/** Width of a bracket that no cell can show. */
const CLOSE = 1e-14;

/**
 * The root of a monotonic function between two places where its sign differs: false position whose retained end is
 * weakened as in [anderson-bjorck-1973]. Every fourth step halves the bracket instead, which bounds the number of steps
 * where false position alone would creep. The bracket is closed to `close`, relative above 1 and absolute below.
 */
export function rootBetween(
  f: (x: number) => number,
  from: number,
  to: number,
  close: number = CLOSE,
): number {
  let [a, b] = [from, to];
  let [fa, fb] = [f(a), f(b)];
  if (fa === 0) return a;
  for (let step = 0; step < MOST_STEPS && fb !== 0; step += 1) {
    const width = Math.abs(b - a);
    if (width <= close * Math.max(1, Math.abs(b))) break;
    const halve = step % 4 === 3;
    const x = halve ? (a + b) / 2 : b - (fb * (b - a)) / (fb - fa);
    const fx = f(x);
    if (fx < 0 !== fb < 0) [a, fa] = [b, fb];
    else fa *= halve ? 1 : weakening(fx, fb);
    [b, fb] = [x, fx];
  }
  return b;
}

function weakening(now: number, before: number): number {
  const kept = 1 - now / before;
  return kept > 0 ? kept : 0.5;
}
