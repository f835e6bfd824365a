/** Maxima of smooth functions of one unknown. */

export interface Maximum {
  readonly at: number;
  readonly value: number;
}

const MOST_STEPS = 60;
/** Golden section leaves this part of a bracket on the shorter side. */
const SHORTER = (3 - Math.sqrt(5)) / 2;

/**
 * The maximum between two places with one hill between them, to within `close` of its place: vertices of parabolas,
 * and golden section where they lead nowhere [brent-1973]. The value is then off by the square of `close` only.
 */
export function maximumBetween(f: (x: number) => number, from: number, to: number, close: number): Maximum {
  let [low, high] = [from, to];
  let best = evaluated(f, low + SHORTER * (high - low));
  let second = best;
  let third = best;
  let [step, before] = [0, 0];
  for (let i = 0; i < MOST_STEPS && Math.max(high - best.at, best.at - low) > 2 * close; i += 1) {
    const vertex = Math.abs(before) > close ? towardVertex(best, second, third) : NaN;
    const inside = best.at + vertex > low && best.at + vertex < high;
    if (inside && Math.abs(vertex) < Math.abs(before) / 2) [before, step] = [step, vertex];
    else {
      before = best.at < (low + high) / 2 ? high - best.at : low - best.at;
      step = SHORTER * before;
    }
    const stride = Math.max(Math.abs(step), close);
    const next = evaluated(f, best.at + (step < 0 ? -stride : stride));
    if (next.value >= best.value) {
      if (next.at >= best.at) low = best.at;
      else high = best.at;
      [third, second, best] = [second, best, next];
    } else {
      if (next.at < best.at) low = next.at;
      else high = next.at;
      if (next.value >= second.value || second === best) [third, second] = [second, next];
      else if (next.value >= third.value || third === best || third === second) third = next;
    }
  }
  return best;
}

function evaluated(f: (x: number) => number, at: number): Maximum {
  return { at, value: f(at) };
}

/** From the highest of three points to the vertex of the parabola through them; NaN where they lie on a line. */
function towardVertex(best: Maximum, second: Maximum, third: Maximum): number {
  const r = (best.at - second.at) * (best.value - third.value);
  const q = (best.at - third.at) * (best.value - second.value);
  const top = (best.at - third.at) * q - (best.at - second.at) * r;
  return -top / (2 * (q - r));
}
