/** Laws of the learning curves, and what they are handed. */

import fc from "fast-check";

import { expectNear, number, refusal } from "../bead";

const MODELS = ["average", "unit"] as const;
const rates = fc.double({ min: 0.51, max: 1, noNaN: true });
const count = fc.integer({ min: 1, max: 100_000_000 });
const first = fc.double({ min: 1e-3, max: 1e6, noNaN: true });

const time = (...cells: unknown[]): number => number("LEARN_TIME", ...cells);
const total = (...cells: unknown[]): number => number("LEARN_TOTAL", ...cells);

describe.each(MODELS)("laws of the %s model", (model) => {
  test("a run of one joint takes that joint's time", () => {
    fc.assert(
      fc.property(first, count, rates, (a, n, rate) => {
        expectNear(total(a, n, n, rate, model), time(a, n, rate, model), 1e-9);
      }),
    );
  });

  test("two runs, one after the other, take what both take together", () => {
    fc.assert(
      fc.property(first, count, count, count, rates, (a, ...rest) => {
        const [i, j, k, rate] = rest;
        const [from = 1, middle = 1, to = 1] = [i, j, k].sort((one, other) => one - other);
        fc.pre(middle < to);
        const parts = total(a, from, middle, rate, model) + total(a, middle + 1, to, rate, model);
        // A short run far on is a difference of two sums over a hundred million joints.
        expectNear(parts, total(a, from, to, rate, model), 1e-9);
      }),
    );
  });

  test("nothing is learned at a rate of 1: every joint as the first", () => {
    fc.assert(
      fc.property(first, count, (a, n) => {
        expectNear(time(a, n, 1, model), a, 1e-9);
        expectNear(total(a, 1, n, 1, model), a * n, 1e-12);
      }),
    );
  });

  test("no joint takes longer than the one before, none takes nothing, the first takes all of its time", () => {
    fc.assert(
      fc.property(first, count, rates, (a, n, rate) => {
        const now = time(a, n, rate, model);
        expect(now).toBeGreaterThan(0);
        expect(time(a, n + 1, rate, model)).toBeLessThanOrEqual(now * (1 + 1e-12));
        expectNear(time(a, 1, rate, model), a);
      }),
    );
  });

  test("a billion joints answer", () => {
    expect(total(1, 1, 1e9, 0.8, model)).toBeGreaterThan(total(1, 1, 999_999_000, 0.8, model));
  });
});

test("what falls with a doubling: the average of all, or the joint itself", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1_000_000 }), rates, (n, rate) => {
      expectNear(
        total(1, 1, 2 * n, rate, "average") / (2 * n),
        (rate * total(1, 1, n, rate, "average")) / n,
        1e-12,
      );
      expectNear(time(1, 2 * n, rate, "unit"), rate * time(1, n, rate, "unit"), 1e-12);
    }),
  );
});

test("the unit model never takes less than the average model", () => {
  fc.assert(
    fc.property(count, rates, (n, rate) => {
      const [average, unit] = MODELS.map((model) => total(1, 1, n, rate, model));
      expect(unit).toBeGreaterThanOrEqual((average ?? NaN) * (1 - 1e-12));
    }),
  );
});

test("the model omitted is the average model, in any case and with blanks around it", () => {
  expect(time(100, 4, 0.8)).toBe(time(100, 4, 0.8, " AVERAGE "));
  expect(total(100, 1, 4, 0.8, "")).toBe(total(100, 1, 4, 0.8, "average"));
});

test.each([
  ["LEARN_TIME", [-5, 4, 0.8], "#VALUE! first = -5: must be above 0"],
  ["LEARN_TIME", [100, 2.5, 0.8], "#VALUE! n = 2.5: must be a whole number from 1 to 1000000000"],
  ["LEARN_TIME", [100, 4, 1.01], "#VALUE! rate = 1.01: must be above 0.5 and at most 1"],
  ["LEARN_TIME", [100, 4, ""], "#VALUE! rate = blank: needs a number"],
  ["LEARN_TIME", [100, true, 0.8], "#VALUE! n = TRUE: must be a number"],
  ["LEARN_TIME", [[[1], [2]], 4, 0.8], "#VALUE! first = a range: takes one cell, not 2 × 1 cells"],
  ["LEARN_TOTAL", [100, 0, 4, 0.8], "#VALUE! from = 0: must be a whole number from 1 to 1000000000"],
  [
    "LEARN_TOTAL",
    [100, 1, 1e10, 0.8],
    "#VALUE! to = 10000000000: must be a whole number from 1 to 1000000000",
  ],
  ["LEARN_TOTAL", [100, 1, 4, 0.8, "crawford"], '#VALUE! model = "crawford": must be one of average, unit'],
])("%s %j: %s", (id, cells, sentence) => {
  expect(refusal(id, ...cells)).toBe(sentence);
});
