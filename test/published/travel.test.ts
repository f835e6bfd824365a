import { expectPrinted, number, table } from "../bead";
import { BY_HAND, COMMON_PRACTICE, evidence } from "../evidence";

describe(
  evidence("TRAVEL_TIME CYCLE_PHASES", BY_HAND, "one turn of 50.8 mm at 5 in/min, π·50.8/127 min"),
  () => {
    test("75.398224 s, alone and as a phase of the cycle", () => {
      expectPrinted(number("TRAVEL_TIME", 50.8, 127, 0, "SI"), "75.398224");
      expectPrinted(number("TRAVEL_TIME", 2, 5), "75.398224");
      const turn = table("CYCLE_PHASES", 2, 5).find(([label]) => label === "Full turn");
      expectPrinted(turn?.[2] as number, "75.398224");
    });
  },
);

describe(
  evidence(
    "CYCLE_TIME",
    BY_HAND,
    "one turn of 50.8 mm at 5 in/min with gas, dwell, overlap, downslope and handling, added up",
  ),
  () => {
    test("30 s before, 75.398224 s of turn and 15 s after", () => {
      expectPrinted(number("CYCLE_TIME", 2, 5), "120.398224");
      // 4 + 1.1·75.398224 + 6 + 300.
      expectPrinted(number("CYCLE_TIME", 50.8, 127, 0, 4, 36, 6, 0, 300, "SI"), "392.938046");
    });
  },
);

describe(evidence("TRAVEL_RPM TRAVEL_SPEED", BY_HAND, "5 in/min round 2 in, 5/(2π) turns a minute"), () => {
  test("0.795775 turns a minute", () => {
    expectPrinted(number("TRAVEL_RPM", 2, 5), "0.795775");
    expectPrinted(number("TRAVEL_SPEED", 2, 0.795775), "5.0000");
  });
});

describe(evidence("TRAVEL_SUGGEST", BY_HAND, "v = 1.6·α/b for 0.065 in of 316L"), () => {
  test("0.065 in of 316L: 5.138 in/min", () => {
    // b = 1 + 2·1.651 = 4.302 mm; v = 1.6·5.848/4.302 = 2.174988 mm/s; ·60/25.4 = 5.13776 in/min.
    expectPrinted(number("TRAVEL_SUGGEST", 0.065), "5.138");
    expectPrinted(number("TRAVEL_SUGGEST", 1.651, null, null, "SI") / 60, "2.174988");
  });
});

describe(evidence("OVERLAP_SUGGEST", BY_HAND, "a bead of 0.16937 in on 1 in, 360·0.16937/π degrees"), () => {
  test("19.41°, so 20°", () => {
    expect(number("OVERLAP_SUGGEST", 1, 0.065)).toBe(20);
  });
});

describe("amps by wall", () => {
  describe(evidence("AMPS_WALL", COMMON_PRACTICE, "1 A per 0.001 in of stainless wall"), () => {
    test.each([
      [0.035, 35],
      [0.049, 49],
      [0.065, 65],
      [0.083, 83],
      [0.109, 109],
    ])("%d in: %d A", (wall, amps) => {
      expect(number("AMPS_WALL", wall)).toBeCloseTo(amps, 10);
    });
  });

  describe(evidence("AMPS_WALL", COMMON_PRACTICE, "ranges of [amps-by-wall-chart]"), () => {
    // Ranges of the chart: 0.020–0.040 in 15–50 A, 0.040–0.060 in 40–80 A, 0.060–0.093 in 60–110 A,
    // 0.093–0.125 in 90–150 A.
    test.each([
      [0.02, 0.04, 15, 50],
      [0.04, 0.06, 40, 80],
      [0.06, 0.093, 60, 110],
      [0.093, 0.125, 90, 150],
    ])("from %d to %d in: %d to %d A", (thin, thick, least, most) => {
      expect(number("AMPS_WALL", thin)).toBeGreaterThanOrEqual(least - 1e-9);
      expect(number("AMPS_WALL", thick)).toBeLessThanOrEqual(most + 1e-9);
    });
  });
});
