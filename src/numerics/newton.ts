/** Roots of functions whose slope is known. */

export interface Point {
  readonly value: number;
  readonly slope: number;
}

const MOST_STEPS = 100;
/** A step below this part of the stretch is the last: what it leaves goes as its square. */
const LAST_STEP = 1e-7;

/**
 * The root of a falling function between two places, or the one of them beyond which it lies: Newton's steps from
 * `guess`, and halves of the bracket where they lead out of it. Neither end is asked for unless a step leads there.
 */
export function fallingRoot(f: (x: number) => Point, from: number, to: number, guess: number): number {
  let [low, high] = [-Infinity, Infinity];
  let x = guess;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const { value, slope } = f(x);
    if (value > 0) low = x;
    else high = x;
    if (low >= to || high <= from) return x;
    const newton = Math.min(Math.max(x - value / slope, from), to);
    if (Math.abs(newton - x) < LAST_STEP * (to - from)) return newton;
    x = newton > low && newton < high ? newton : (Math.max(low, from) + Math.min(high, to)) / 2;
  }
  return x;
}
