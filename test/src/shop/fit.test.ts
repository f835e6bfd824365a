/** Intervals that hold as often as they say, counted over many invented shops. */

import fc from "fast-check";

import { SHARE, si } from "../../../src/quantity";
import type { Fit, Spread } from "../../../src/shop/fit";
import { fitThroughOrigin, meanOf, SPREADS } from "../../../src/shop/fit";
import { decades, RUNS } from "../../arbitrary-cells";
import { expectNear } from "../../bead";

const NINETY_FIVE = si(0.95, SHARE);
const SHOPS = 4000;
/** Counted over so many shops, a share of 95 % is off by less than 1.4 % four times in 100 000. */
const OFF = 0.02;

/** A generator of fixed seed: numbers between 0 and 1 from a 32-bit counter that is stirred. */
function uniform(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Normal deviates by Box and Muller. */
function normal(seed: number): () => number {
  const next = uniform(seed);
  return () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
}

const SIZES = [3, 4, 4.5, 5, 7, 9];
const MIDDLE = SIZES.reduce((sum, x) => sum + x, 0) / SIZES.length;
const FACTOR = 0.9;
/** Deviation at a size, as each way of scattering has it. */
const DEVIATION: Readonly<Record<Spread, (x: number) => number>> = {
  percent: (x) => 0.06 * x,
  same: () => 0.3,
  growing: (x) => 0.13 * Math.sqrt(x),
};

function holds(value: number, low: number | "", high: number | ""): number {
  return Number(low) <= value && value <= Number(high) ? 1 : 0;
}

function expectShare(found: number): void {
  expect(Math.abs(found / SHOPS - 0.95)).toBeLessThan(OFF);
}

describe("95 % intervals hold 95 of 100 times", () => {
  test.each(SPREADS)("%s", (spread) => {
    const deviate = normal(20_260 + spread.length);
    const deviation = DEVIATION[spread];
    let [factor, next] = [0, 0];
    for (let shop = 0; shop < SHOPS; shop += 1) {
      const measure = (x: number): number => FACTOR * x + deviation(x) * deviate();
      const pairs = SIZES.map((predicted) => ({ predicted, measured: measure(predicted) }));
      const fit = fitThroughOrigin(pairs, spread, NINETY_FIVE);
      factor += holds(FACTOR, fit.low, fit.high);
      next += holds(measure(MIDDLE) / MIDDLE, fit.nextLow, fit.nextHigh);
    }
    expectShare(factor);
    expectShare(next);
  });

  test("of the mean of three efficiencies", () => {
    const deviate = normal(7);
    const measure = (): number => 0.78 + 0.02 * deviate();
    let [mean, next] = [0, 0];
    for (let shop = 0; shop < SHOPS; shop += 1) {
      const fit = meanOf([measure(), measure(), measure()], NINETY_FIVE);
      mean += holds(0.78, fit.low, fit.high);
      next += holds(measure(), fit.nextLow, fit.nextHigh);
    }
    expectShare(mean);
    expectShare(next);
  });
});

const pair = fc.record({ predicted: decades(0.5, 50), measured: decades(0.5, 50) });
const numbersOf = ({ value, low, high, nextLow, nextHigh }: Fit): number[] =>
  [value, low, high, nextLow, nextHigh].map(Number);

test(`other units of both change nothing, of the measured alone the factor with them (${RUNS})`, () => {
  fc.assert(
    fc.property(
      fc.array(pair, { minLength: 2, maxLength: 8 }),
      fc.constantFrom(...SPREADS),
      decades(0.01, 100),
      (pairs, spread, times) => {
        const plain = numbersOf(fitThroughOrigin(pairs, spread, NINETY_FIVE));
        const scaled = pairs.map((each) => ({ ...each, measured: each.measured * times }));
        const both = scaled.map((each) => ({ ...each, predicted: each.predicted * times }));
        const largest = Math.max(...plain.map(Math.abs));
        numbersOf(fitThroughOrigin(both, spread, NINETY_FIVE)).forEach((value, i) => {
          expect(Math.abs(value - (plain[i] ?? NaN))).toBeLessThan(1e-11 * largest);
        });
        numbersOf(fitThroughOrigin(scaled, spread, NINETY_FIVE)).forEach((value, i) => {
          expect(Math.abs(value / times - (plain[i] ?? NaN))).toBeLessThan(1e-11 * largest);
        });
      },
    ),
  );
});

test(`more confidence makes both intervals wider, and the next is wider than the mean's (${RUNS})`, () => {
  fc.assert(
    fc.property(
      fc.array(pair, { minLength: 2, maxLength: 8 }),
      fc.constantFrom(...SPREADS),
      (pairs, spread) => {
        const [less, more] = [0.8, 0.99].map((confidence) =>
          fitThroughOrigin(pairs, spread, si(confidence, SHARE)),
        );
        if (less === undefined || more === undefined) throw new Error("two fits");
        expect(Number(more.low)).toBeLessThanOrEqual(Number(less.low));
        expect(Number(more.nextHigh)).toBeGreaterThanOrEqual(Number(less.nextHigh));
        expect(Number(less.nextLow)).toBeLessThanOrEqual(Number(less.low));
        expect(less.value).toBe(more.value);
      },
    ),
  );
});

test.each(SPREADS)("one alone has a value and no interval, two have both: %s", (spread) => {
  const one = fitThroughOrigin([{ predicted: 4, measured: 3 }], spread, NINETY_FIVE);
  expect(one).toEqual({ value: 0.75, low: "", high: "", nextLow: "", nextHigh: "", count: 1 });
  const two = fitThroughOrigin(
    [1, 1].map((predicted, i) => ({ predicted, measured: 3 + i })),
    spread,
    NINETY_FIVE,
  );
  // By hand: mean 3.5, deviation √½, and one degree of freedom, whose t is tan(0.475·π).
  const reach = Math.tan(0.475 * Math.PI) * Math.SQRT1_2;
  expectNear(Number(two.high), 3.5 + reach / Math.SQRT2);
  expectNear(Number(two.nextHigh), 3.5 + reach * Math.sqrt(1.5));
});
