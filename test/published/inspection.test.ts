/** Odds, intervals, starts and coupons: printed values, famous problems, and chances added up one by one. */

import { expectNear, expectPrinted, number, table } from "../bead";
import { BY_HAND, evidence, INDEPENDENT, MEMORY, PUBLISHED, REFERENCE_LIBRARY } from "../evidence";

describe(evidence("SAMPLE_ODDS", PUBLISHED, "kiermeier-2008", "a sample of 20, and the plan found"), () => {
  test.each([
    [20, 0, 0.05, "0.358"],
    [20, 0, 0.15, "0.039"],
  ])("n %d, c %d, p %d: %s", (sample, accept, bad, printed) => {
    expectPrinted(number("SAMPLE_ODDS", sample, accept, bad), printed);
  });
  test("the first plan with 0.95 at 5 % and 0.075 at 15 %: n 80, c 7", () => {
    const holds = (n: number, c: number): boolean =>
      number("SAMPLE_ODDS", n, c, 0.05) >= 0.95 && number("SAMPLE_ODDS", n, c, 0.15) <= 0.075;
    const plans = Array.from({ length: 80 }, (_, i) => i + 1).flatMap((n) =>
      Array.from({ length: Math.min(n, 12) }, (_, c) => [n, c] as const).filter(([, c]) => holds(n, c)),
    );
    expect(plans).toEqual([[80, 7]]);
  });
});

describe(evidence("SAMPLE_ODDS", INDEPENDENT, "the sums in a general statistics library"), () => {
  test.each([
    [80, 7, 0.05, null, "0.9534084725"],
    [80, 7, 0.15, null, "0.0727174929"],
    [13, 1, 0.04, null, "0.9068104408"],
    [5, 1, 5, 50, "0.9282476543"],
  ])("n %d, c %d, bad %d, lot %p: %s", (sample, accept, bad, lot, printed) => {
    expectPrinted(number("SAMPLE_ODDS", sample, accept, bad, lot), printed);
  });
  test("two samples of 8, none or one and less than two in both, at 4 %: 0.8948572205", () => {
    const exactly1 = number("SAMPLE_ODDS", 8, 1, 0.04) - number("SAMPLE_ODDS", 8, 0, 0.04);
    const both = number("SAMPLE_ODDS", 8, 0, 0.04) * (1 + exactly1);
    expectPrinted(both, "0.8948572205");
  });
  test.each([
    [100, 20, 1, "0.2"],
    [100, 20, 5, "0.6806905580"],
    [100, 20, 10, "0.9048837276"],
    [50, 10, 5, "0.6894372180"],
    [200, 40, 4, "0.5935011158"],
  ])("lot %d, a sample of %d sees one of %d bad ones: %s", (lot, sample, bad, printed) => {
    expectPrinted(1 - number("SAMPLE_ODDS", sample, 0, bad, lot), printed);
  });
  test("10 good of yield 0.6 need exactly 12: 0.0532102349", () => {
    const enough = (n: number): number => 1 - number("SAMPLE_ODDS", n, 9, 0.6);
    expectPrinted(enough(12) - enough(11), "0.0532102349");
  });
});

describe(
  evidence("SAMPLE_SIZE", MEMORY, "feller-probability", "all good to prove under 10, 5 and 1 %: 29, 59, 299"),
  () => {
    test.each([
      [0.1, 29],
      [0.05, 59],
      [0.01, 299],
    ])("%d of a very large lot: %d", (share, sample) => {
      expect(number("SAMPLE_SIZE", 1e9, 1e9 * share)).toBe(sample);
    });
  },
);

describe(evidence("SAMPLE_SIZE", PUBLISHED, "jovanovic-levy-1997", "the rule of three"), () => {
  test.each([100, 300, 1000])("%d all good: fewer than three in so many", (sample) => {
    const bad = Math.round((3 / sample) * 1e9);
    expect(number("SAMPLE_SIZE", 1e9, bad)).toBeLessThanOrEqual(sample);
    expect(number("SAMPLE_SIZE", 1e9, bad)).toBeGreaterThan(0.98 * sample);
  });
});

describe(evidence("SAMPLE_SIZE", INDEPENDENT, "the chances in a general statistics library"), () => {
  test.each([
    [50, [48, 39, 22, 12]],
    [100, [95, 78, 45, 25]],
    [500, [475, 388, 225, 129]],
  ])("lot %d, fewer than 1, 2, 5 and 10 bad: %p", (lot, samples) => {
    expect([1, 2, 5, 10].map((bad) => number("SAMPLE_SIZE", lot, bad))).toEqual(samples);
  });
});

describe(evidence("REJECT_RATE", REFERENCE_LIBRARY, "binom-intervals", "exact intervals of ten"), () => {
  test.each([
    [0, "0.0000000", "0.3084971"],
    [1, "0.002528579", "0.4450161"],
    [2, "0.025210726", "0.5560955"],
    [3, "0.066739511", "0.6524529"],
    [4, "0.121552258", "0.7376219"],
  ])("%d of 10: %s to %s", (rejected, low, high) => {
    const [row = []] = table("REJECT_RATE", rejected, 10);
    expectPrinted(Number(row[0]), low);
    expectNear(Number(row[1]), rejected / 10);
    expectPrinted(Number(row[2]), high);
  });
  test.each([
    [0.9, ".49310", ".96323"],
    [0.95, ".44390", ".97479"],
    [0.99, ".35180", ".98915"],
  ])("8 of 10 with confidence %d: %s to %s", (confidence, low, high) => {
    const [row = []] = table("REJECT_RATE", 8, 10, confidence);
    expectPrinted(Number(row[0]), low);
    expectPrinted(Number(row[2]), high);
  });
});

describe(evidence("REJECT_RATE", MEMORY, "binom-intervals", "Mendel's peas, 682 of 925"), () => {
  test("0.7076683 to 0.7654066", () => {
    const [row = []] = table("REJECT_RATE", 682, 925);
    expectPrinted(Number(row[0]), "0.7076683");
    expectPrinted(Number(row[2]), "0.7654066");
  });
});

describe(evidence("REJECT_RATE", BY_HAND, "one side: none bad, 1 − 0.05^(1/n)"), () => {
  test.each([29, 59, 299, 300])("0 of %d", (inspected) => {
    expectNear(Number(table("REJECT_RATE", 0, inspected, 0.9)[0]?.[2]), 1 - 0.05 ** (1 / inspected), 1e-11);
  });
});

describe(evidence("REJECT_RATE", INDEPENDENT, "quantiles in a general statistics library"), () => {
  test.each([
    [0, 20, "0.1391083407"],
    [1, 20, "0.2161061642"],
    [2, 60, "0.1012358949"],
  ])("%d of %d, one side at 95 %: under %s", (rejected, inspected, printed) => {
    expectPrinted(Number(table("REJECT_RATE", rejected, inspected, 0.9)[0]?.[2]), printed);
  });
  test("4 of 20 at 90 %: 0.0713538843 to 0.4010281173", () => {
    const [row = []] = table("REJECT_RATE", 4, 20, 0.9);
    expectPrinted(Number(row[0]), "0.0713538843");
    expectPrinted(Number(row[2]), "0.4010281173");
  });
});

describe(evidence("JOINTS_START", MEMORY, "feller-probability", "throws of dice for even odds"), () => {
  test("de Méré: one six in 4 throws, a double six in 25", () => {
    expect(number("JOINTS_START", 1, 1 / 6)).toBe(4);
    expect(number("JOINTS_START", 1, 1 / 36)).toBe(25);
  });
  // Pepys and Newton: 0.6651, 0.6187 and 0.5973, each rounded.
  test.each([
    [1, 6, 0.66505, 0.66515],
    [2, 12, 0.61865, 0.61875],
    [3, 18, 0.59725, 0.59735],
  ])("%d sixes of %d dice", (sixes, dice, under, over) => {
    expect(number("JOINTS_START", sixes, 1 / 6, under)).toBe(dice);
    expect(number("JOINTS_START", sixes, 1 / 6, over)).toBe(dice + 1);
  });
});

test("even odds are enough where no confidence is given: one joint at a yield of a half, as heads in one toss", () => {
  expect(number("JOINTS_START", 1, 0.5)).toBe(1);
});

describe(evidence("JOINTS_START", INDEPENDENT, "binomial sums in a general statistics library"), () => {
  test.each([
    [50, 0.8, 0.5, 62],
    [50, 0.8, 0.95, 69],
    [100, 0.97, 0.9, 105],
    [100, 0.97, 0.95, 106],
  ])("%d good at %d, confidence %d: %d", (good, share, confidence, starts) => {
    expect(number("JOINTS_START", good, share, confidence)).toBe(starts);
  });
});

describe(evidence("JOINTS_START", BY_HAND, "stages in turn: 0.95·0.96·0.98·0.95·0.85 = 0.7217112"), () => {
  test("five stages make what their product makes", () => {
    expect(number("JOINTS_START", 72, [[0.95, 0.96, 0.98, 0.95, 0.85]])).toBe(
      number("JOINTS_START", 72, 0.7217112),
    );
  });
});

describe(
  evidence("COUPONS", PUBLISHED, "nfpa-99", "at the start, every 4 hours, at the end, idle, changes"),
  () => {
    test.each([
      [4, 2],
      [8, 3],
      [8.05, 4],
      [8.1, 4],
      [10, 4],
      [12, 4],
      [1, 2],
    ])("%d h: %d", (hours, coupons) => {
      expect(number("COUPONS", hours)).toBe(coupons);
    });
    test("one more after each idle time and change", () => {
      expect(number("COUPONS", 8, 4, 2, 3)).toBe(8);
      expect(number("COUPONS", 8, 2)).toBe(5);
    });
  },
);
