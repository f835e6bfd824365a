/** The heat that comes round the ring against its own definition, a plain sum over turns, and that sum's quadrature. */

import { roundTheRing, roundTheRingOver } from "../../../src/heat-flow/ring-kernel";
import { INDEPENDENT, evidence } from "../../evidence";
import { integralBetween } from "../../quadrature";

/** Slow rings and fast ones. */
const PECLETS = [0.3, 2, 9, 60];
/** Where heat was let out, in turns behind the arc. */
const PLACES = [0, 0.03, 0.4, 0.5, 1, 1.7];
/** Ages about the one at which images give way to waves, P/π. */
const AGES = [0.01, 0.2, 0.9, 1.1, 3, 20];

/** Σ over n ≠ 0 of exp(−P(x + n)²/u)/u, as far as any of it counts. */
function plainSum(peclet: number, x: number, u: number): number {
  const reach = Math.ceil(x + Math.sqrt((50 * u) / peclet)) + 1;
  let sum = 0;
  for (let n = -reach; n <= reach; n += 1) {
    if (n !== 0) sum += Math.exp((-peclet * (x + n) ** 2) / u) / u;
  }
  return sum;
}

const CASES = PECLETS.flatMap((peclet) => PLACES.map((x) => [peclet, x] as const));

describe(
  evidence("AMPS_SECTORS", INDEPENDENT, "the sum over turns, term by term, and its integral by quadrature"),
  () => {
    test.each(CASES)("at P = %p, %p turns behind", (peclet, x) => {
      for (const age of AGES) {
        const u = (age * peclet) / Math.PI;
        const straight = Math.exp((-peclet * x * x) / u) / u;
        const expected = plainSum(peclet, x, u);
        // The waves hold the straight heat too, and lose its rounding when it is taken off; e^−36 is neglected.
        const rounding = 4e-14 * (expected + straight) + 1e-15 / u;
        expect(Math.abs(roundTheRing(peclet, x, u) - expected)).toBeLessThanOrEqual(rounding);
      }
    });

    test.each(CASES)("of a dwell, at P = %p, %p turns behind", (peclet, x) => {
      const change = peclet / Math.PI;
      for (const [from, to] of [
        [0.3, 0.8],
        [0.5, 2],
        [1.5, 6],
      ] as const) {
        const whole = integralBetween((u) => plainSum(peclet, x, u), from * change, to * change, 400);
        const found = roundTheRingOver(peclet, x, from * change, to * change);
        expect(Math.abs(found - whole)).toBeLessThan(1e-9 * (1 + whole));
      }
    });
  },
);

test("no age, no heat; no dwell, none either", () => {
  for (const x of [0, 0.4, 1]) {
    expect(roundTheRing(2, x, 0)).toBe(0);
    expect(Math.abs(roundTheRingOver(2, x, 0.5, 0.5))).toBeLessThan(1e-14);
  }
  expect(roundTheRingOver(2, 0, 0, 0)).toBe(0);
});
