/** Chances of counts against whole-number arithmetic. */

import fc from "fast-check";

import { binomialUpTo, hypergeometric, hypergeometricUpTo } from "../../../src/numerics/binomial";
import { RUNS } from "../../arbitrary-cells";
import { expectNear } from "../../bead";

function choose(n: number, k: number): bigint {
  if (k < 0 || k > n) return 0n;
  let product = 1n;
  for (let i = 0; i < k; i += 1) product = (product * BigInt(n - i)) / BigInt(i + 1);
  return product;
}

/** A quotient of whole numbers as a double. */
function quotient(a: bigint, b: bigint): number {
  return Number((a * 10n ** 40n) / b) / 1e40;
}

describe(`whole-number arithmetic (${RUNS})`, () => {
  test("independent trials with a chance in 64ths", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 300 }),
        fc.nat(300),
        fc.integer({ min: 1, max: 63 }),
        (n, some, hit) => {
          const most = some % (n + 1);
          let ways = 0n;
          for (let k = 0; k <= most; k += 1)
            ways += choose(n, k) * BigInt(hit) ** BigInt(k) * BigInt(64 - hit) ** BigInt(n - k);
          const expected = quotient(ways, 64n ** BigInt(n));
          fc.pre(expected > 1e-20);
          expectNear(binomialUpTo(most, n, hit / 64, (64 - hit) / 64), expected, 1e-12);
        },
      ),
    );
  });

  test("one lot", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.nat(400), fc.nat(400), fc.nat(400), (lot, d, b, m) => {
        const [drawn, bad] = [d % (lot + 1), b % (lot + 1)];
        fc.pre(drawn > 0);
        const most = m % (drawn + 1);
        let ways = 0n;
        for (let k = 0; k <= most; k += 1) ways += choose(bad, k) * choose(lot - bad, drawn - k);
        const expected = quotient(ways, choose(lot, drawn));
        fc.pre(ways === 0n || expected > 1e-20);
        expectNear(hypergeometricUpTo(most, drawn, bad, lot), expected, 1e-12);
      }),
    );
  });
});

test("what cannot be drawn has no chance", () => {
  expect(hypergeometric(-1, 5, 5, 10)).toBe(0);
  expect(hypergeometric(6, 5, 7, 10)).toBe(0);
  expect(hypergeometric(4, 5, 3, 10)).toBe(0);
  expect(hypergeometric(0, 5, 8, 10)).toBe(0);
  expect(hypergeometric(3, 10, 3, 10)).toBe(1);
});

test("draws that cannot be, a lot drawn whole and a lot without bad ones", () => {
  expect(hypergeometric(-1, 3, 5, 10)).toBe(0);
  expect(hypergeometric(6, 7, 5, 10)).toBe(0);
  expect(hypergeometric(4, 3, 5, 10)).toBe(0);
  expect(hypergeometric(0, 8, 5, 10)).toBe(0);
  expect(hypergeometric(5, 10, 5, 10)).toBe(1);
  expect(hypergeometric(0, 3, 0, 10)).toBe(1);
  expect(hypergeometric(3, 3, 10, 10)).toBe(1);
});
