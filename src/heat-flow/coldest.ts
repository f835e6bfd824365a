/** How near a ring comes to melting all round: its coldest place along the joint. */

import type { RingPass } from "./ring-pass";
import { ringHistory, ringRise } from "./ring-rise";

/** Places round the ring that are looked at; the coldest of them is no colder than the ring's coldest. */
const PLACES = 12;
/** Times after the arc goes out, in the time C²/(4π²α) in which the ring evens out. */
const AFTER = [0.3, 1] as const;

/**
 * Maximum over time of the minimum round the joint, K above the first temperature, heat even through the wall. Looked
 * at when each power ends, the last with the arc, and while the ring evens out afterwards.
 */
export function coldestRise(pass: RingPass): number {
  const { circumference, end, plate, steps } = pass;
  const during = ringHistory(pass, end);
  const rises = [...steps.map(({ from }) => from).filter((from) => from > 0), end].map((time) =>
    minimumAt(during, time),
  );
  const even = (circumference / (2 * Math.PI)) ** 2 / plate.metal.farDiffusivity;
  for (const part of AFTER) {
    const after = part * even;
    rises.push(minimumAt(ringHistory(pass, end + after, after), end + after));
  }
  return Math.max(...rises);
}

function minimumAt(history: ReturnType<typeof ringHistory>, time: number): number {
  const { circumference } = history.pass;
  let minimum = Infinity;
  for (let i = 0; i < PLACES; i += 1) {
    const rise = ringRise(history, history.mean, (i * circumference) / PLACES, 0, time).value;
    minimum = Math.min(minimum, rise);
  }
  return minimum;
}
