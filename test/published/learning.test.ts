/** Learning curves: printed examples of both models, and their values worked out again. */

import { expectNear, expectPrinted, number } from "../bead";
import { BY_HAND, INDEPENDENT, PUBLISHED, evidence } from "../evidence";

const time = (first: number, n: number, rate: number, model: string): number =>
  number("LEARN_TIME", first, n, rate, model);
const total = (first: number, from: number, to: number, rate: number, model: string): number =>
  number("LEARN_TOTAL", first, from, to, rate, model);

describe("printed examples", () => {
  describe(
    evidence("LEARN_TIME LEARN_TOTAL", PUBLISHED, "wideman-learning", "80 % cumulative average"),
    () => {
      test("the second unit takes 60 % of the first, four units 64 % of it on average", () => {
        expectPrinted(time(100, 2, 0.8, "average"), "60");
        expectPrinted(total(100, 1, 4, 0.8, "average") / 4, "64");
        // Recomputed: the fourth alone.
        expectPrinted(time(100, 4, 0.8, "average"), "45.3689");
      });
    },
  );

  describe(evidence("LEARN_TIME", PUBLISHED, "kerzner-project", "75 %, unit model"), () => {
    test("812 h for the first unit: about 82 h for the 250th", () => {
      expectPrinted(time(812, 250, 0.75, "unit"), "82");
      expectPrinted(time(812, 250, 0.75, "unit"), "82.095812");
    });
    test("120 h for the 100th unit: about 812 h for the first", () => {
      expectPrinted(120 / time(1, 100, 0.75, "unit"), "811.439686");
      expect(Math.abs(120 / time(1, 100, 0.75, "unit") - 812)).toBeLessThan(1);
    });
  });
});

describe(
  evidence("LEARN_TIME LEARN_TOTAL", BY_HAND, "from first·n^b and first·n^{1+b} by logarithms"),
  () => {
    test("80 % cumulative average, $120 for the first unit: $750 for units 231 to 285", () => {
      // 120·(285^.678072 − 230^.678072); with b rounded to −0.322 an exercise has it at 749.65.
      expectPrinted(total(120, 231, 285, 0.8, "average"), "750.0246");
    });
    test("85 %, 250 h for the first, 15 units: by either model", () => {
      expectPrinted(total(250, 1, 15, 0.85, "average") / 15, "132.4913");
      expectPrinted(total(250, 1, 15, 0.85, "average"), "1987.3700");
      expectPrinted(total(250, 1, 15, 0.85, "unit"), "2465.2640");
    });
    test.each([
      [2, "0.8"],
      [4, "0.64"],
      [8, "0.512"],
      [10, "0.4765"],
      [16, "0.4096"],
    ])("80 %, unit %d: factor %s", (n, factor) => {
      expectPrinted(time(1, n, 0.8, "unit"), factor);
    });
    test.each([
      [10, "0.4765098749", "4.7650987", "6.3153730"],
      [20, "0.3812078999", "7.6241580", "10.4849428"],
      [40, "0.3049663199", "12.1986528", "17.1934558"],
      [80, "0.2439730559", "19.5178445", "27.9572051"],
    ])("80 %%, %d units: average %s, totals %s and %s", (n, average, wright, crawford) => {
      expectPrinted(total(1, 1, n, 0.8, "average") / n, average);
      expectPrinted(total(1, 1, n, 0.8, "average"), wright);
      expectPrinted(total(1, 1, n, 0.8, "unit"), crawford);
    });
  },
);

/** Σ n^b one by one, the small terms first. */
function direct(from: number, to: number, b: number): number {
  let sum = 0;
  for (let n = to; n >= from; n -= 1) sum += n ** b;
  return sum;
}

describe(evidence("LEARN_TOTAL", INDEPENDENT, "all joints of the run added one by one"), () => {
  test.each([0.51, 0.6, 0.75, 0.8, 0.9, 0.99, 1])("unit model, rate %d", (rate) => {
    const b = Math.log2(rate);
    for (const [from, to] of [
      [1, 1],
      [1, 63],
      [1, 64],
      [1, 65],
      [64, 64],
      [64, 65],
      [63, 1000],
      [1, 100_000],
      [1, 1_000_000],
      [999_000, 1_000_000],
      [70, 70],
    ] as const) {
      expectNear(total(1, from, to, rate, "unit"), direct(from, to, b), 2e-12);
    }
  });
});
