/** What the sulfur of two heats means for the bead between them. */

import { above0, atMost, isAbove, isBelow } from "../limits";
import type { Percent } from "../quantity";
import { PERCENT, plainNumber, si } from "../quantity";

/** [astm-a270-s2]: 316L tube for orbital welding, percent by mass. */
export const SULFUR_WINDOW = [si(0.005, PERCENT), si(0.017, PERCENT)] as const;
/** No stainless tube has more; a larger number is in ppm. */
export const MOST_SULFUR = si(0.1, PERCENT);

const [LEAST, MOST] = SULFUR_WINDOW;
const WINDOW = `${plainNumber(LEAST)} to ${plainNumber(MOST)} %`;

/** In words: each side inside or outside the window, what to expect of it, and of a low side beside one that is not. */
export function sulfurOfPair(one: Percent, other: Percent): string {
  const first = told(checked("sulfur", one));
  const second = told(checked("otherSulfur", other));
  const sides = first === second ? [`both sides: ${first}`] : [first, second];
  const isUneven = isBelow(one, LEAST) !== isBelow(other, LEAST);
  const toward = plainNumber(Math.min(one, other));
  return [
    ...sides,
    ...(isUneven ? [`unequal: expect the bead to shift toward the ${toward} % side`] : []),
  ].join("; ");
}

function checked(argument: string, sulfur: Percent): Percent {
  return atMost(argument, above0(argument, sulfur, PERCENT), PERCENT, MOST_SULFUR);
}

function told(sulfur: Percent): string {
  const own = `${plainNumber(sulfur)} %`;
  if (isBelow(sulfur, LEAST)) {
    return `${own} is below ${WINDOW}: expect a wide, shallow bead, less penetration and a weld pool that wanders`;
  }
  if (isAbove(sulfur, MOST))
    return `${own} is above ${WINDOW}: expect more risk of cracks along the centerline`;
  return `${own} is inside ${WINDOW}`;
}
