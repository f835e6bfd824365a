/** Tables of standards: color samples, form limits, pipe. */

import { expectPrinted, number, refusal, table } from "../bead";
import { MEMORY, PUBLISHED, REFERENCE_LIBRARY, evidence } from "../evidence";

describe(
  evidence("PURGE_TINT", PUBLISHED, "aws-d18.2", "oxygen in the backing gas of each color sample"),
  () => {
    const levels = [10, 25, 50, 100, 200, 500, 1000, 5000, 12_500, 25_000];
    test.each(levels.map((ppm, i) => [i + 1, ppm]))("sample %d: %d ppm", (sample, ppm) => {
      expect(number("PURGE_TINT", ppm)).toBe(sample);
      expect(number("PURGE_TINT", ppm * (1 - 1e-9))).toBe(sample);
    });
    test.each(levels.slice(0, -1).map((ppm, i) => [ppm, i + 2]))(
      "just over %d ppm: sample %d",
      (ppm, sample) => {
        expect(number("PURGE_TINT", ppm * (1 + 1e-9))).toBe(sample);
      },
    );
    test("no oxygen: the first sample", () => {
      expect(number("PURGE_TINT", 0)).toBe(1);
    });
  },
);

test("just over the level of the last sample there is none", () => {
  expect(refusal("PURGE_TINT", 25_001)).toMatch(/^#N\/A ppm = 25001 ppm: no sample shows so much oxygen/);
});

describe(evidence("ACCEPT_LIMITS", PUBLISHED, "asme-bpe-2012", "Table MJ-8.4-1"), () => {
  test.each([
    [25.4, 1.65, ["0.165", "0.165", "0.2475"]],
    [9.525, 0.89, ["0.089", "0.089", "0.1335"]],
    [101.6, 2.11, ["0.211", "0.211", "0.38"]],
    [152.4, 2.77, ["0.277", "0.277", "0.76"]],
  ])("%d mm × %d mm", (od, wall, printed) => {
    const [row = []] = table("ACCEPT_LIMITS", od, wall, "SI");
    expect(row).toHaveLength(3);
    row.forEach((limit, i) => {
      expectPrinted(Number(limit), printed[i] ?? "");
    });
  });
  test("in inches the two exceptions are 0.015 and 0.030 in", () => {
    expectPrinted(Number(table("ACCEPT_LIMITS", 4, 0.083)[0]?.[2]), "0.015");
    expectPrinted(Number(table("ACCEPT_LIMITS", 6, 0.109)[0]?.[2]), "0.030");
  });
});

/** Outside diameter and walls in schedules 5S, 10S and 40S, mm. */
const STAINLESS_PIPE: [nps: string, od: string, five: string, ten: string, forty: string][] = [
  ["1/8", "10.3", "–", "1.24", "1.73"],
  ["1/4", "13.7", "–", "1.65", "2.24"],
  ["3/8", "17.1", "–", "1.65", "2.31"],
  ["1/2", "21.3", "1.65", "2.11", "2.77"],
  ["3/4", "26.7", "1.65", "2.11", "2.87"],
  ["1", "33.4", "1.65", "2.77", "3.38"],
  ["1¼", "42.2", "1.65", "2.77", "3.56"],
  ["1½", "48.3", "1.65", "2.77", "3.68"],
  ["2", "60.3", "1.65", "2.77", "3.91"],
  ["2½", "73.0", "2.11", "3.05", "5.16"],
  ["3", "88.9", "2.11", "3.05", "5.49"],
  ["4", "114.3", "2.11", "3.05", "6.02"],
  ["5", "141.3", "2.77", "3.40", "6.55"],
  ["6", "168.3", "2.77", "3.40", "7.11"],
  ["8", "219.1", "2.77", "3.76", "8.18"],
];

/** The rest of the walls, mm. */
const MORE_PIPE: [nps: string, schedule: string, wall: string][] = [
  ["3-1/2", "5S", "2.11"],
  ["3-1/2", "10S", "3.05"],
  ["3-1/2", "40S", "5.74"],
  ["10", "5S", "3.40"],
  ["10", "10S", "4.19"],
  ["10", "40S", "9.27"],
  ["12", "5S", "3.96"],
  ["12", "10S", "4.57"],
  ["12", "40S", "9.53"],
  ["1/8", "80S", "2.41"],
  ["1/4", "80S", "3.02"],
  ["3/8", "80S", "3.20"],
  ["1/2", "80S", "3.73"],
  ["3/4", "80S", "3.91"],
  ["1", "80S", "4.55"],
  ["1-1/4", "80S", "4.85"],
  ["1-1/2", "80S", "5.08"],
  ["2", "80S", "5.54"],
  ["2-1/2", "80S", "7.01"],
  ["3", "80S", "7.62"],
  ["3-1/2", "80S", "8.08"],
  ["4", "80S", "8.56"],
  ["5", "80S", "9.53"],
  ["6", "80S", "10.97"],
  ["8", "80S", "12.70"],
  ["10", "80S", "12.70"],
  ["12", "80S", "12.70"],
  ["10", "40", "9.27"],
  ["12", "40", "10.31"],
  ["10", "80", "15.09"],
  ["12", "80", "17.48"],
  ["10", "5", "3.40"],
  ["12", "10", "4.57"],
];

/** Half a unit in the last place, and a hair for values that sit on it: 0.375 in is 9.525 mm, printed 9.53. */
function roundsTo(inches: number, millimeters: number, decimals: number): boolean {
  return Math.abs(inches * 25.4 - millimeters) <= 0.5 * 10 ** -decimals + 1e-9;
}

describe("ASME B36.19M and B36.10M", () => {
  describe(
    evidence("PIPE_OD PIPE_WALL", REFERENCE_LIBRARY, "fluids-1.3.1", "sizes and walls of [asme-b36.19m]"),
    () => {
      test.each(STAINLESS_PIPE)("NPS %s: %s mm outside, walls %s, %s, %s", (nps, od, five, ten, forty) => {
        expectPrinted(number("PIPE_OD", nps, "SI"), od);
        expectPrinted(number("PIPE_WALL", nps, "10S", "SI"), ten);
        expectPrinted(number("PIPE_WALL", nps, "40S", "SI"), forty);
        if (five === "–") expect(() => number("PIPE_WALL", nps, "5S", "SI")).toThrow();
        else expectPrinted(number("PIPE_WALL", nps, "5S", "SI"), five);
      });
    },
  );
  describe(
    evidence("PIPE_WALL", REFERENCE_LIBRARY, "fluids-1.3.1", "walls of [asme-b36.19m] and [asme-b36.10m]"),
    () => {
      test.each(MORE_PIPE)("NPS %s, schedule %s: %s mm", (nps, schedule, wall) => {
        expectPrinted(number("PIPE_WALL", nps, schedule, "SI"), wall);
      });
    },
  );
  describe(evidence("PIPE_OD", REFERENCE_LIBRARY, "fluids-1.3.1", "sizes of [asme-b36.10m]"), () => {
    test.each([
      ["3-1/2", "101.6"],
      ["10", "273.1"],
      ["12", "323.9"],
    ])("NPS %s: %s mm outside", (nps, od) => {
      expectPrinted(number("PIPE_OD", nps, "SI"), od);
    });
  });
  test.each([
    ["5S", "5"],
    ["10S", "10"],
    ["40S", "40"],
    ["80S", "80"],
  ])("%s and %s are one wall up to NPS 8", (stainless, carbon) => {
    ["1/2", "3/4", "1", "2", "3", "4", "6", "8"].forEach((nps) => {
      expect(number("PIPE_WALL", nps, carbon)).toBe(number("PIPE_WALL", nps, stainless));
    });
  });
  test("the inches of every size and wall round to its millimeters", () => {
    [...STAINLESS_PIPE.map(([nps]) => nps), "3-1/2", "10", "12"].forEach((nps) => {
      expect([nps, roundsTo(number("PIPE_OD", nps), number("PIPE_OD", nps, "SI"), 1)]).toEqual([nps, true]);
      const thin = ["1/8", "1/4", "3/8"].includes(nps) ? [] : ["5S", "5"];
      [...thin, "10S", "40S", "80S", "10", "40", "80"].forEach((schedule) => {
        const [inches, millimeters] = [
          number("PIPE_WALL", nps, schedule),
          number("PIPE_WALL", nps, schedule, "SI"),
        ];
        expect([nps, schedule, roundsTo(inches, millimeters, 2)]).toEqual([nps, schedule, true]);
      });
    });
  });
  describe(evidence("PIPE_OD PIPE_WALL", MEMORY, "asme-b36.10m", "inches of schedule 40"), () => {
    test.each([
      ["2", 2.375, 0.154],
      ["4", 4.5, 0.237],
      ["6", 6.625, 0.28],
      ["8", 8.625, 0.322],
    ])("NPS %s is %d in outside and %d in thick in schedule 40", (nps, od, wall) => {
      expect(Math.abs(number("PIPE_OD", nps) - od)).toBeLessThan(1e-12);
      expect(Math.abs(number("PIPE_WALL", nps, 40) - wall)).toBeLessThan(1e-12);
    });
  });
});
