import { bead, expectPrinted, number } from "../bead";
import { BY_HAND, MEMORY, PUBLISHED, evidence } from "../evidence";

const AIR = 209_500;
/** A bore of 12 in and 48/π in of length hold exactly one cubic foot: π/4·144 in² × 48/π in = 1728 in³. */
const ONE_CUBIC_FOOT = [12, 48 / Math.PI] as const;

describe("well-mixed dilution, n = ln(C₀/C)", () => {
  // Recomputed: ln(209 500/ppm).
  const FROM_AIR = [
    [10_000, "3.0421"],
    [5000, "3.7353"],
    [1000, "5.3447"],
    [500, "6.0379"],
    [100, "7.6473"],
    [50, "8.3405"],
    [25, "9.0336"],
    [20, "9.2567"],
    [10, "9.9499"],
    [5, "10.6430"],
    [1, "12.2525"],
  ] as const;

  describe(evidence("PURGE_CHANGES", BY_HAND, "n = ln(C₀/C), the sweep-through form of [nfpa-69]"), () => {
    test.each(FROM_AIR)("from air to %d ppm: %s changes", (ppm, changes) => {
      expectPrinted(number("PURGE_CHANGES", ppm), changes);
    });
  });

  // Recomputed: ln(209 000/ppm), for handbooks that start at 20.9 %. Only the ratio to the start counts.
  const FROM_209000 = [
    [10_000, "3.0397"],
    [5000, "3.7329"],
    [1000, "5.3423"],
    [500, "6.0355"],
    [100, "7.6449"],
    [50, "8.3381"],
    [25, "9.0312"],
    [20, "9.2544"],
    [10, "9.9475"],
    [5, "10.6407"],
    [1, "12.2501"],
  ] as const;

  describe(
    evidence(
      "PURGE_CHANGES",
      BY_HAND,
      "n = ln(C₀/C), the sweep-through form of [nfpa-69], for handbooks that start at 20.9 %",
    ),
    () => {
      test.each(FROM_209000)("from 20.9 %% to %d ppm: %s changes", (ppm, changes) => {
        expectPrinted(number("PURGE_CHANGES", ppm * (AIR / 209_000)), changes);
      });
    },
  );

  describe(evidence("PURGE_OXYGEN", BY_HAND, "209 500·e^(−n), the sweep-through form of [nfpa-69]"), () => {
    // Recomputed: 209 500·e^(−n).
    test.each([
      [4, "3837.126"],
      [5, "1411.600"],
      [6, "519.299"],
      [8, "70.279"],
      [10, "9.511"],
      [12, "1.287"],
    ])("after %d changes: %s ppm", (changes, ppm) => {
      expectPrinted(number("PURGE_OXYGEN", ...ONE_CUBIC_FOOT, 3600, changes), ppm);
    });
  });

  describe(
    evidence(
      "PURGE_CHANGES",
      BY_HAND,
      "n = ln(C₀/C), the sweep-through form of [nfpa-69], with oxygen in the supply",
    ),
    () => {
      // Recomputed: ln(209 495/(ppm − 5)).
      test.each([
        [10, "10.6430"],
        [20, "9.5444"],
        [50, "8.4458"],
        [100, "7.6986"],
      ])("with 5 ppm in the supply, to %d ppm: %s changes", (ppm, changes) => {
        expectPrinted(number("PURGE_CHANGES", ppm, 5), changes);
      });
    },
  );
});

/** What a level stands for when a source starts from another share of oxygen: only the ratios count. */
function from(start: number, level: number): number {
  return (level / start) * AIR;
}

describe("published dilution examples", () => {
  describe(evidence("PURGE_CHANGES", MEMORY, "crowl-louvar", "sweep-through purge of 1000 ft³"), () => {
    test("1000 ft³ from 21 % to 1.25 % with nitrogen of 0.01 %: 2830 ft³", () => {
      const cubicFeet = 1000 * number("PURGE_CHANGES", from(21, 1.25), from(21, 0.01));
      // Printed to three figures, so to the nearest 10.
      expect(Math.abs(cubicFeet - 2830)).toBeLessThanOrEqual(5);
      // Recomputed: 1000·ln(20.99/1.24).
      expectPrinted(cubicFeet, "2828.934754");
    });
  });

  describe(evidence("PURGE_CHANGES", BY_HAND, "the purge of [crowl-louvar] with pure nitrogen"), () => {
    test("1000 ft³ with pure nitrogen: 1000·ln(21/1.25) = 2821.378886 ft³", () => {
      expectPrinted(1000 * number("PURGE_CHANGES", from(21, 1.25)), "2821.378886");
    });
  });

  describe(
    evidence("PURGE_CHANGES", PUBLISHED, "branan-rules", "dilution from 21 to 1 %, read off a chart"),
    () => {
      test("21 to 1 %: ln 21 = 3.044522 volumes, 3.1 off the chart", () => {
        const changes = number("PURGE_CHANGES", from(21, 1));
        expectPrinted(changes, "3.044522");
        expect(Math.abs(changes - 3.1)).toBeLessThanOrEqual(0.1);
      });
    },
  );

  describe(evidence("PURGE_CHANGES", BY_HAND, "ln(21/10) and ln(21/7.7)"), () => {
    test.each([
      [10, "0.741937"],
      [7.7, "1.003302"],
    ])("21 to %d %%: %s volumes", (percent, changes) => {
      expectPrinted(number("PURGE_CHANGES", from(21, percent)), changes);
    });
  });

  describe(evidence("PURGE_TIME PURGE_FLOW PURGE_OXYGEN", PUBLISHED, "de-nevers", "example 3.7"), () => {
    test("10 ft³ swept by 1 ft³/min to a ten-thousandth: 92.1 min", () => {
      const [bore, length] = ONE_CUBIC_FOOT;
      const seconds = number("PURGE_TIME", bore, 10 * length, 60, from(1, 1e-4));
      expectPrinted(seconds / 60, "92.1");
    });

    test("the same read backwards, as far as 92.1 min is printed: 1 ft³/min, a ten-thousandth", () => {
      const [bore, length] = ONE_CUBIC_FOOT;
      const flow = number("PURGE_FLOW", bore, 10 * length, 92.1 * 60, from(1, 1e-4)) / 60;
      expect(Math.abs(flow - 1)).toBeLessThan(0.05 / 92.1);
      // 0.05 min at 1 ft³/min are 0.005 volumes.
      const oxygen = number("PURGE_OXYGEN", bore, 10 * length, 60, 92.1 * 60);
      expect(Math.abs(oxygen / from(1, 1e-4) - 1)).toBeLessThan(0.005);
    });
  });

  describe(evidence("PURGE_LEAK", PUBLISHED, "de-nevers", "example 3.8"), () => {
    test("a leak of 1e-4 lb/min air of 0.075 lb/ft³ into 1 ft³/min drawn off: 0.00133", () => {
      const leak = 1e-4 / 0.075;
      // de Nevers counts what leaves, so the gas let in is the rest of the cubic foot.
      expectPrinted(number("PURGE_LEAK", 1 - leak, leak) / AIR, "0.00133");
    });
  });

  describe(
    evidence("PURGE_TIME", BY_HAND, "six changes of a 16 in bore at 20 ft³/h, π/4·(4/3)²·6/20 h a foot"),
    () => {
      test("16 in bore, 20 ft³/h, six changes: 25.13 min a foot", () => {
        // A trade magazine of 2012 rounds it to 25 min.
        const seconds = number("PURGE_TIME", 16, 12, 20, AIR * Math.exp(-6));
        expectPrinted(seconds / 60, "25.13");
      });
    },
  );
});

describe("a tube of 2 in × 0.065 in, 20 ft long", () => {
  const BORE = 47.498; // 50.8 − 2·1.651 mm
  const LENGTH = 6096;

  describe(evidence("PURGE_VOLUME", BY_HAND, "a tube of 2 in × 0.065 in, 20 ft long"), () => {
    test("volume: 10.801535 L", () => {
      expectPrinted(number("PURGE_VOLUME", BORE, LENGTH, "SI"), "10.801535");
    });
  });

  describe(evidence("PURGE_TIME", BY_HAND, "a tube of 2 in × 0.065 in, 20 ft long"), () => {
    test("10 L/min to 50 ppm, mixed: 9.008973 min", () => {
      expectPrinted(number("PURGE_TIME", BORE, LENGTH, 10, 50, 0, 1, null, "SI") / 60, "9.008973");
    });
  });

  describe(evidence("PURGE_FLOW PURGE_OXYGEN", BY_HAND, "a tube of 2 in × 0.065 in, 20 ft long"), () => {
    test("the flow for that time is 10 L/min, and the oxygen then 50 ppm", () => {
      const seconds = 9.008973 * 60;
      expect(Math.abs(number("PURGE_FLOW", BORE, LENGTH, seconds, 50, 0, 1, "SI") - 10)).toBeLessThan(1e-6);
      // 5e-7 min of 9 shifts the oxygen by 50·8.34·6e-8 ppm.
      expect(Math.abs(number("PURGE_OXYGEN", BORE, LENGTH, 10, seconds, 0, 1, "SI") - 50)).toBeLessThan(3e-5);
    });
  });

  describe(
    evidence("PURGE_TIME", BY_HAND, "a tube of 2 in × 0.065 in, 20 ft long: above plug flow, within 20 %"),
    () => {
      test("the most mixed cells come within 20 % of plug flow, 1.080154 min", () => {
        const minutes = number("PURGE_TIME", BORE, LENGTH, 10, 50, 0, 1000, null, "SI") / 60;
        expect(minutes).toBeGreaterThan(1.080154);
        expect(minutes).toBeLessThan(1.080154 * 1.2);
      });
    },
  );

  describe(
    evidence("PURGE_LEAK", BY_HAND, "air leaking at 0.05 L/min into 10 L/min, 209 500·0.05/10.05 ppm"),
    () => {
      test("1042.2886 ppm", () => {
        expectPrinted(number("PURGE_LEAK", 10, 0.05), "1042.2886");
      });
    },
  );
});

test("nothing is reached below the supply's own oxygen", () => {
  expect(() => bead("PURGE_CHANGES", 5, 5)).toThrow("cannot be reached");
});
