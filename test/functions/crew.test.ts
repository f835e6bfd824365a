import { number, refusal } from "../bead";
import { BY_HAND, evidence } from "../evidence";

describe("CREW_HEADS", () => {
  describe(evidence("CREW_HEADS", BY_HAND, "(load + machine)/(load + walk), rounded down"), () => {
    test("(120 + 900)/(120 + 30) = 6.8, six heads", () => {
      expect(number("CREW_HEADS", 120, 900, 30)).toBe(6);
    });
    test("walking omitted is 0: 1020/120 = 8.5, eight heads", () => {
      expect(number("CREW_HEADS", 120, 900)).toBe(8);
      expect(number("CREW_HEADS", 120, 900, "")).toBe(8);
    });
    test("walking alone counts too: 900/30", () => {
      expect(number("CREW_HEADS", 0, 900, 30)).toBe(30);
    });
  });
  test("never under one, however long the load", () => {
    expect(number("CREW_HEADS", 900, 60, 300)).toBe(1);
  });
  test.each([
    [
      [0, 900],
      "#N/A loadSeconds = 0 s: must be above 0 when walkSeconds is 0; heads that need no operator have no limit",
    ],
    [[-1, 900], "#VALUE! loadSeconds = -1 s: must be 0 or more"],
    [[120, 0], "#VALUE! machineSeconds = 0 s: must be above 0"],
    [[120, 900, -5], "#VALUE! walkSeconds = -5 s: must be 0 or more"],
    [[null, 900], "#VALUE! loadSeconds = blank: needs a number (s)"],
    [[120, "long"], '#VALUE! machineSeconds = "long": must be a number (s)'],
    [[120, true], "#VALUE! machineSeconds = TRUE: must be a number (s)"],
    [[Infinity, 900], "#VALUE! loadSeconds = Infinity: must be a finite number (s)"],
  ])("%j: %s", (cells, sentence) => {
    expect(refusal("CREW_HEADS", ...cells)).toBe(sentence);
  });
});

describe("CREW_OUTPUT", () => {
  describe(
    evidence("CREW_OUTPUT", BY_HAND, "steady times: joints a shift from the cycle, or from the operator"),
    () => {
      test("3 heads on a cycle of 120 + 600 s, 8 h at 0.85, are 3·28 800·0.85/720 = 102 joints", () => {
        expect(number("CREW_OUTPUT", 3, 120, 600, 8, 0.85, "steady")).toBeCloseTo(102, 10);
      });
      test("10 heads wait for the operator, 28 800/(120 + 24) = 200 joints", () => {
        expect(number("CREW_OUTPUT", 10, 120, 600, 8, 1, "steady", 24)).toBeCloseTo(200, 10);
      });
    },
  );
  describe(evidence("CREW_OUTPUT", BY_HAND, "one head: nowhere to walk to"), () => {
    test("28 800/(120 + 600) = 40 joints, whatever the walk to a next head would be", () => {
      for (const pattern of ["steady", "random"]) {
        for (const walk of [0, 30, 3600]) {
          expect(number("CREW_OUTPUT", 1, 120, 600, 8, 1, pattern, walk)).toBeCloseTo(40, 10);
        }
      }
    });
    test("nor does an operator walk for less: two heads an hour apart make no fewer joints than one", () => {
      // Walking, 28 800/(120 + 3600) = 7.7 joints.
      expect(number("CREW_OUTPUT", 2, 120, 600, 8, 1, "steady", 3600)).toBeCloseTo(40, 10);
      expect(number("CREW_OUTPUT", 2, 120, 600, 8, 1, "random", 3600)).toBeCloseTo(40, 10);
      // 28 800/(120 + 240) = 80 with a walk that pays.
      expect(number("CREW_OUTPUT", 2, 120, 600, 8, 1, "steady", 240)).toBeCloseTo(80, 10);
    });
  });
  describe(evidence("CREW_OUTPUT", BY_HAND, "several operators share the heads"), () => {
    test("7 heads, 2 operators: 7·28 800/720 = 280 joints, the operators could serve 2·28 800/180 = 320", () => {
      expect(number("CREW_OUTPUT", 7, 120, 600, 8, 1, "steady", 60, 2)).toBeCloseTo(280, 10);
    });
    test("9 heads, 2 operators: those 320, since the heads could make 9·28 800/720 = 360", () => {
      expect(number("CREW_OUTPUT", 9, 120, 600, 8, 1, "steady", 60, 2)).toBeCloseTo(320, 10);
    });
    test("3 heads, 3 operators or 5: nobody walks or waits, 3·28 800/720 = 120, scattered or not", () => {
      for (const pattern of ["steady", "random"]) {
        for (const operators of [3, 5]) {
          expect(number("CREW_OUTPUT", 3, 120, 600, 8, 1, pattern, 300, operators)).toBeCloseTo(120, 10);
        }
      }
    });
    test("3 heads an hour apart, 2 operators: each stays at one, 2·28 800/720 = 80", () => {
      expect(number("CREW_OUTPUT", 3, 120, 600, 8, 1, "steady", 3600, 2)).toBeCloseTo(80, 10);
      expect(number("CREW_OUTPUT", 3, 120, 600, 8, 1, "random", 3600, 2)).toBeCloseTo(80, 10);
    });
    test("3 heads at random, 2 operators, load = machine = 60 s: weights 1, 3, 3, 3/2, 8.5 in all", () => {
      // r = 1: 1, 3·1, 3·2/2, 3·2·1/(2·2); busy operators (3 + 2·3 + 2·1.5)/8.5 = 12/8.5, a joint a minute each.
      expect(number("CREW_OUTPUT", 3, 60, 60, 8, 1, "random", 0, 2)).toBeCloseTo((480 * 12) / 8.5, 9);
    });
  });
  describe(evidence("CREW_OUTPUT", BY_HAND, "random times: the queue of two heads"), () => {
    test("2 heads at random, load = machine = 60 s, p0 = 1/(1 + 2 + 2) = 1/5, 0.8 of 480 joints", () => {
      // Finite source with r = 1: weights 1, 2·1, 2·1·1; the operator is busy for 4/5 of the shift, a joint a minute.
      expect(number("CREW_OUTPUT", 2, 60, 60, 8, 1, "random")).toBeCloseTo(384, 10);
    });
  });
  test("operators omitted are one", () => {
    for (const pattern of ["steady", "random"]) {
      const cells = [5, 100, 600, 8, 0.9, pattern, 40];
      expect(number("CREW_OUTPUT", ...cells)).toBe(number("CREW_OUTPUT", ...cells, 1));
      expect(number("CREW_OUTPUT", ...cells, "")).toBe(number("CREW_OUTPUT", ...cells, 1));
    }
  });
  test("hours, availability and pattern omitted are 8, 1 and steady", () => {
    expect(number("CREW_OUTPUT", 3, 120, 600)).toBe(number("CREW_OUTPUT", 3, 120, 600, 8, 1, "Steady ", 0));
  });
  test.each([
    [[0, 120, 600], "#VALUE! heads = 0: must be a whole number from 1 to 10000"],
    [[2.5, 120, 600], "#VALUE! heads = 2.5: must be a whole number from 1 to 10000"],
    [[10_001, 120, 600], "#VALUE! heads = 10001: must be a whole number from 1 to 10000"],
    [[2, -120, 600], "#VALUE! loadSeconds = -120 s: must be 0 or more"],
    [[2, 120, 0], "#VALUE! machineSeconds = 0 s: must be above 0"],
    [[2, 120, 600, 0], "#VALUE! hours = 0 h: must be above 0"],
    [[2, 120, 600, 8, 0], "#VALUE! availability = 0: must be above 0 and at most 1"],
    [[2, 120, 600, 8, 85], "#VALUE! availability = 85: must be above 0 and at most 1"],
    [[2, 120, 600, 8, 1, "poisson"], '#VALUE! pattern = "poisson": must be one of steady, random'],
    [[2, 120, 600, 8, 1, "steady", -1], "#VALUE! walkSeconds = -1 s: must be 0 or more"],
    [["", 120, 600], "#VALUE! heads = blank: needs a number"],
    [[2, 120, 600, 8, 1, "steady", 0, 0], "#VALUE! operators = 0: must be a whole number from 1 to 1000"],
    [[2, 120, 600, 8, 1, "random", 0, 1.5], "#VALUE! operators = 1.5: must be a whole number from 1 to 1000"],
    [
      [2, 120, 600, 8, 1, "steady", 0, 1001],
      "#VALUE! operators = 1001: must be a whole number from 1 to 1000",
    ],
    [[2, 120, 600, 8, 1, "steady", 0, "two"], '#VALUE! operators = "two": must be a number'],
    [[2, 120, 600, 8, 1, "steady", 0, true], "#VALUE! operators = TRUE: must be a number"],
  ])("%j: %s", (cells, sentence) => {
    expect(refusal("CREW_OUTPUT", ...cells)).toBe(sentence);
  });
});
