/** Chromium and nickel equivalents of a heat, from its mill certificate. */

import { above0, atLeast0, isAbove } from "../limits";
import type { Percent, Share } from "../quantity";
import { PERCENT, SHARE, si } from "../quantity";
import { amount, Refusal, rule } from "../refusal";

/** What a certificate says, percent by mass. */
export interface Heat {
  readonly cr: Percent;
  readonly ni: Percent;
  readonly mo: Percent;
  readonly mn: Percent;
  readonly si: Percent;
  readonly c: Percent;
  readonly n: Percent;
  readonly cu: Percent;
  readonly nb: Percent;
}

type Weights = Partial<Record<keyof Heat, number>>;
interface Method {
  readonly chromium: Weights;
  readonly nickel: Weights;
}

/** What a percent of each element counts; what is not named counts nothing. */
const WEIGHTS = {
  /** [kotecki-siewert-1992]. */
  "WRC-1992": { chromium: { cr: 1, mo: 1, nb: 0.7 }, nickel: { ni: 1, c: 35, n: 20, cu: 0.25 } },
  /** [schaeffler-1949]. */
  Schaeffler: { chromium: { cr: 1, mo: 1, si: 1.5, nb: 0.5 }, nickel: { ni: 1, c: 30, mn: 0.5 } },
  /** [hammar-svensson-1979], without its titanium. */
  "Hammar-Svensson": {
    chromium: { cr: 1, mo: 1.37, si: 1.5, nb: 2 },
    nickel: { ni: 1, mn: 0.31, c: 22, n: 14.2, cu: 1 },
  },
} as const satisfies Record<string, Method>;

export const METHODS = ["WRC-1992", "Schaeffler", "Hammar-Svensson"] as const;
export type MethodName = (typeof METHODS)[number];

export interface Equivalents {
  readonly chromium: Percent;
  readonly nickel: Percent;
  readonly ratio: Share;
}

const WHOLE = si(100, PERCENT);
const ELEMENTS = ["cr", "ni", "mo", "mn", "si", "c", "n", "cu", "nb"] as const satisfies (keyof Heat)[];

/** Chromium equivalent, nickel equivalent, percent, and their ratio: sums of the elements, each with its weight. */
export function equivalents(heat: Heat, method: MethodName): Equivalents {
  above0("cr", heat.cr, PERCENT);
  above0("ni", heat.ni, PERCENT);
  let sum = 0;
  for (const element of ELEMENTS) {
    sum += atLeast0(element, heat[element], PERCENT);
    if (!isAbove(sum, WHOLE)) continue;
    throw new Refusal(
      element,
      amount(heat[element], PERCENT),
      rule`is too much: the elements sum to more than ${amount(WHOLE, PERCENT)}; ppm are divided by 10000`,
    );
  }
  const weights: Method = WEIGHTS[method];
  const chromium = weighed(heat, weights.chromium);
  const nickel = weighed(heat, weights.nickel);
  return { chromium, nickel, ratio: si(chromium / nickel, SHARE) };
}

function weighed(heat: Heat, weights: Weights): Percent {
  return si(
    ELEMENTS.reduce((sum, element) => sum + (weights[element] ?? 0) * heat[element], 0),
    PERCENT,
  );
}
