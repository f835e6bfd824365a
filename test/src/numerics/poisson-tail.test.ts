/** Against two methods that share nothing with it: whole-number arithmetic, and tanks stirred step by step. */

import fc from "fast-check";

import { logPoissonTail, poissonTail } from "../../../src/numerics/poisson-tail";
import { RUNS } from "../../arbitrary-cells";
import { expectNear } from "../../bead";
import { INDEPENDENT, evidence } from "../../evidence";

/** Fixed point with 400 digits behind it; x stands as x/8, so that it is exact. */
const ONE = 10n ** 400n;

/** Terms (x/8)^k/k! of the exponential series, from the first to the k-th, each to 400 digits. */
function series(eighths: bigint, terms: number): bigint[] {
  const found = [ONE];
  for (let k = 1; k < terms; k += 1) found.push(((found[k - 1] ?? 0n) * eighths) / (8n * BigInt(k)));
  return found;
}

function sum(terms: readonly bigint[]): bigint {
  return terms.reduce((total, term) => total + term, 0n);
}

/** A quotient of whole numbers as a double, to 20 significant digits. */
function quotient(a: bigint, b: bigint): number {
  const digits = 20 - (String(a).length - String(b).length);
  return Number(`${String((a * 10n ** BigInt(digits)) / b)}e-${String(digits)}`);
}

/** e^x by its series, far enough on that what is omitted does not count. */
function exponential(eighths: bigint): bigint {
  return sum(series(eighths, 4 * (Number(eighths) / 8) + 200));
}

const CASES = [
  [1, 67],
  [2, 1],
  [2, 100],
  [3, 24],
  [5, 320],
  [10, 80],
  [10, 79],
  [20, 500],
  [40, 300],
] as const;

describe(
  evidence(
    "PURGE_CHANGES PURGE_TIME PURGE_FLOW PURGE_OXYGEN",
    INDEPENDENT,
    "the sum over mixed cells in whole numbers of 400 digits",
  ),
  () => {
    test.each(CASES)("%d terms at %d/8", (terms, eighths) => {
      const exact = quotient(sum(series(BigInt(eighths), terms)), exponential(BigInt(eighths)));
      expectNear(poissonTail(terms, eighths / 8), exact);
    });

    // The exponent k·ln x − x − ln k!, written out, would be a difference of numbers near 10 000.
    test.each([
      [100, 1600],
      [300, 4000],
      [1000, 8000],
      [1000, 9600],
      [1000, 6400],
    ] as const)("%d terms at %d/8, the largest", (terms, eighths) => {
      const exact = quotient(sum(series(BigInt(eighths), terms)), exponential(BigInt(eighths)));
      expectNear(poissonTail(terms, eighths / 8), exact);
    });

    test("its logarithm is there where the chance is too small for a number", () => {
      // By hand: fewer than 2 of 2000 expected, e^−2000·(1 + 2000).
      expectNear(logPoissonTail(2, 2000), Math.log(2001) - 2000);
      expect(poissonTail(2, 2000)).toBe(0);
    });
  },
);

/** Air left in the last of some stirred tanks in a row, each holding its share of the volume: Runge–Kutta, 4th order. */
function stirredTanks(tanks: number, changes: number, steps: number): number {
  let air = Array.from({ length: tanks }, () => 1);
  const slopes = (now: readonly number[]): number[] =>
    now.map((here, i) => tanks * ((i === 0 ? 0 : (now[i - 1] ?? 0)) - here));
  const moved = (from: readonly number[], along: readonly number[], by: number): number[] =>
    from.map((here, i) => here + by * (along[i] ?? 0));
  const h = changes / steps;
  for (let step = 0; step < steps; step += 1) {
    const k1 = slopes(air);
    const k2 = slopes(moved(air, k1, h / 2));
    const k3 = slopes(moved(air, k2, h / 2));
    const k4 = slopes(moved(air, k3, h));
    air = air.map(
      (here, i) => here + (h / 6) * ((k1[i] ?? 0) + 2 * (k2[i] ?? 0) + 2 * (k3[i] ?? 0) + (k4[i] ?? 0)),
    );
  }
  return air.at(-1) ?? NaN;
}

describe(
  evidence(
    "PURGE_CHANGES PURGE_TIME PURGE_FLOW PURGE_OXYGEN",
    INDEPENDENT,
    "stirred tanks in series stepped through time (Runge–Kutta)",
  ),
  () => {
    test.each([
      [1, 1],
      [1, 5],
      [2, 0.5],
      [2, 3],
      [3, 2],
      [5, 1],
      [5, 3],
      [8, 1.5],
    ])("%d tanks after %d changes, to 1e-9 (2000 steps of the fourth order)", (tanks, changes) => {
      const left = stirredTanks(tanks, changes, 2000);
      expect(Math.abs(poissonTail(tanks, tanks * changes) - left)).toBeLessThan(1e-9);
    });
  },
);

describe(`laws (${RUNS})`, () => {
  const terms = fc.integer({ min: 1, max: 1000 });
  const x = fc.double({ min: 0, max: 3000, noNaN: true });

  test("a share between 0 and 1, all of it at 0", () => {
    fc.assert(
      fc.property(terms, x, (n, expected) => {
        const tail = poissonTail(n, expected);
        expect(tail).toBeGreaterThanOrEqual(0);
        expect(tail).toBeLessThanOrEqual(1);
        expect(poissonTail(n, 0)).toBe(1);
      }),
    );
  });

  test("never more with more expected, never less with more terms", () => {
    const rounding = 1 + 1e-10;
    fc.assert(
      fc.property(terms, x, fc.double({ min: 0, max: 100, noNaN: true }), (n, expected, more) => {
        const tail = poissonTail(n, expected);
        expect(poissonTail(n, expected + more)).toBeLessThanOrEqual(tail * rounding);
        expect(poissonTail(n + 1, expected) * rounding).toBeGreaterThanOrEqual(tail);
      }),
    );
  });
});
