/** Pipe sizes as people type them, and the form limits of tube welds. */

import fc from "fast-check";

import { number, refusal, table } from "../bead";
import { BY_HAND, MEMORY, evidence } from "../evidence";

const MM = 25.4;

describe("a size is read as people type it", () => {
  describe(evidence("PIPE_OD", MEMORY, "asme-b36.10m", "outside diameters in inches"), () => {
    test.each([
      [
        1.9,
        ["1-1/2", "1 1/2", "1½", "1 ½", "1-½", 1.5, "1.5", "1.5 in", '1½"', "1-1/2 in.", "1 - 1/2", "1–1/2"],
      ],
      [
        1.9,
        [" 1-1/2 ", "NPS 1-1/2", "nps 1.5", "1 1/2 inch", "1 1⁄2", "1½″", "1-1/2 INCHES", "1-2/4", "3/2"],
      ],
      [0.84, ["1/2", 0.5, "0.5", ".5", ".50", "½", '1/2"', "1/2in", "½ in", "2/4", "10/20", "1 / 2"]],
      // As long as a size may be with its blanks: forty signs.
      [1.9, [`1${" ".repeat(36)}1/2`]],
      [2.375, [2, "2", "2 in", '2"', "2.0", "NPS2", "2''"]],
      [0.405, ["1/8", 0.125, "⅛"]],
      [0.675, ["3/8", 0.375, "⅜"]],
      [1.05, ["3/4", 0.75, "¾"]],
      [1.66, ["1-1/4", 1.25, "1¼"]],
      [12.75, [12, "12 in", "12.0"]],
    ])("%d in outside: %j", (od, typed) => {
      typed.forEach((nps) => {
        expect([nps, Math.abs(number("PIPE_OD", nps) - od) < 1e-12]).toEqual([nps, true]);
      });
    });
  });

  describe(evidence("PIPE_WALL", MEMORY, "asme-b36.19m", "walls of NPS 1-1/2 in inches"), () => {
    test.each([
      [0.145, ["40S", "40s", " 40 S ", "sch 40S", "Sch. 40s", "SCHEDULE 40S", "sch40", 40, "40", "SCH 40"]],
      [0.109, ["10S", "10s", 10, "schedule 10"]],
      [0.065, ["5S", 5, "sch 5s"]],
      [0.2, ["80S", 80, "SCH.80"]],
    ])("NPS 1-1/2, %d in of wall: %j", (wall, typed) => {
      typed.forEach((schedule) => {
        const found = number("PIPE_WALL", "1-1/2", schedule);
        expect([schedule, Math.abs(found - wall) < 1e-12]).toEqual([schedule, true]);
      });
    });
  });

  test("every pipe is a tube: twice the wall fits inside, a higher schedule is no thinner", () => {
    const sizes = ["1/2", "3/4", 1, 1.25, 1.5, 2, 2.5, 3, 3.5, 4, 5, 6, 8, 10, 12];
    const schedules = ["5S", "10S", "40S", "80S"];
    sizes.forEach((nps) => {
      (["US", "SI"] as const).forEach((units) => {
        const walls = schedules.map((schedule) => number("PIPE_WALL", nps, schedule, units));
        expect([...walls].sort((a, b) => a - b)).toEqual(walls);
        expect(2 * (walls.at(-1) ?? NaN)).toBeLessThan(number("PIPE_OD", nps, units));
      });
    });
  });
});

const SIZES = "1/8, 1/4, 3/8, 1/2, 3/4, 1, 1-1/4, 1-1/2, 2, 2-1/2, 3, 3-1/2, 4, 5, 6, 8, 10, 12";
const DATE = "is a date that a spreadsheet made of a fraction; type '1/2 as text, or 0.5";
const SHAPE = "must be a nominal size such as 1/2, 1-1/2 or 2";

describe("refusals", () => {
  test.each([
    // 2 January 2024 and 4 March 2026 as day numbers: what 1/2 and 3/4 turn into.
    [[45_293], `#VALUE! nps = "45293": ${DATE}`],
    [[46_085], `#VALUE! nps = "46085": ${DATE}`],
    [["2-Jan"], `#VALUE! nps = "2-Jan": ${DATE}`],
    [["Mar 4"], `#VALUE! nps = "Mar 4": ${DATE}`],
    [["DN50"], '#VALUE! nps = "DN50": DN sizes are not read; DN 50 is NPS 2'],
    [["dn 15"], '#VALUE! nps = "dn 15": DN sizes are not read; DN 15 is NPS 1/2'],
    [["DN 60"], '#VALUE! nps = "DN 60": DN sizes are not read; give the nominal pipe size in inches'],
    [["DN50x"], `#VALUE! nps = "DN50x": ${SHAPE}`],
    [["xDN50"], `#VALUE! nps = "xDN50": ${SHAPE}`],
    [["2NPS"], `#VALUE! nps = "2NPS": ${SHAPE}`],
    [["1”2"], `#VALUE! nps = "1”2": ${SHAPE}`],
    [["10-1/2"], `#N/A nps = "10-1/2": is not in this table; it has ${SIZES}`],
    [[7], `#N/A nps = "7": is not in this table; it has ${SIZES}`],
    [["1/3"], `#N/A nps = "1/3": is not in this table; it has ${SIZES}`],
    [[2.375], `#N/A nps = "2.375": is not in this table; it has ${SIZES}`],
    [[14], `#N/A nps = "14": is not in this table; it has ${SIZES}`],
    [["1/0"], `#VALUE! nps = "1/0": ${SHAPE}`],
    [[0], `#VALUE! nps = "0": ${SHAPE}`],
    [[-2], `#VALUE! nps = "-2": ${SHAPE}`],
    [["two"], `#VALUE! nps = "two": ${SHAPE}`],
    [["1/2/2024"], `#VALUE! nps = "1/2/2024": ${DATE}`],
    [["2.1.2024"], `#VALUE! nps = "2.1.2024": ${DATE}`],
    [["2024-01-02"], `#VALUE! nps = "2024-01-02": ${DATE}`],
    [["10/12/2024"], `#VALUE! nps = "10/12/2024": ${DATE}`],
    [["10.12.2024"], `#VALUE! nps = "10.12.2024": ${DATE}`],
    [["2024-10-12"], `#VALUE! nps = "2024-10-12": ${DATE}`],
    [["no 1/2/2024"], `#VALUE! nps = "no 1/2/2024": ${SHAPE}`],
    [["1/2/2024 or so"], `#VALUE! nps = "1/2/2024 or so": ${SHAPE}`],
    [["no 2.1.2024"], `#VALUE! nps = "no 2.1.2024": ${SHAPE}`],
    [["2.1.2024 or so"], `#VALUE! nps = "2.1.2024 or so": ${SHAPE}`],
    [["no 2024-01-02"], `#VALUE! nps = "no 2024-01-02": ${SHAPE}`],
    [[110_000], `#VALUE! nps = "110000": ${DATE}`],
    [[36_000], `#VALUE! nps = "36000": ${DATE}`],
    [[35_999], `#N/A nps = "35999": is not in this table; it has ${SIZES}`],
    [[110_001], `#N/A nps = "110001": is not in this table; it has ${SIZES}`],
    [["½½"], `#VALUE! nps = "½½": ${SHAPE}`],
    [[1e-9], `#VALUE! nps = "1e-9": ${SHAPE}`],
    [["9".repeat(400)], `#N/A nps = "${"9".repeat(40)}…": is not in this table; it has ${SIZES}`],
    [[""], "#VALUE! nps = blank: needs a text"],
    [[null], "#VALUE! nps = blank: needs a text"],
    [[true], "#VALUE! nps = TRUE: must be a text"],
    [[NaN], "#VALUE! nps = NaN: must be a text"],
    [[[[1], [2]]], "#VALUE! nps = a range: takes one cell, not 2 × 1 cells"],
    [["2", "mm"], '#VALUE! units = "mm": must be one of US, SI'],
  ])("PIPE_OD %j", (cells, sentence) => {
    expect(refusal("PIPE_OD", ...cells)).toBe(sentence);
  });

  // DN beside NPS in ASME B36.10M, from memory.
  test.each([
    [6, "1/8"],
    [8, "1/4"],
    [10, "3/8"],
    [15, "1/2"],
    [20, "3/4"],
    [25, "1"],
    [32, "1-1/4"],
    [40, "1-1/2"],
    [50, "2"],
    [65, "2-1/2"],
    [80, "3"],
    [90, "3-1/2"],
    [100, "4"],
    [125, "5"],
    [150, "6"],
    [200, "8"],
    [250, "10"],
    [300, "12"],
  ])("DN %d is told as NPS %s", (dn, nps) => {
    expect(refusal("PIPE_OD", `DN ${String(dn)}`)).toBe(
      `#VALUE! nps = "DN ${String(dn)}": DN sizes are not read; DN ${String(dn)} is NPS ${nps}`,
    );
  });

  test.each([
    [
      ["1/4", "5S"],
      '#N/A schedule = "5S": the standard has no such wall for NPS 1/4; this table has 10S, 40S, 80S, 10, 40, 80',
    ],
    [
      ["1/8", 5],
      '#N/A schedule = "5": the standard has no such wall for NPS 1/8; this table has 10S, 40S, 80S, 10, 40, 80',
    ],
    [[2, 160], '#N/A schedule = "160": is not in this table; it has 5S, 10S, 40S, 80S, 5, 10, 40, 80'],
    [[2, "STD"], '#N/A schedule = "STD": is not in this table; it has 5S, 10S, 40S, 80S, 5, 10, 40, 80'],
    [
      [2, "40 sch"],
      '#N/A schedule = "40 sch": is not in this table; it has 5S, 10S, 40S, 80S, 5, 10, 40, 80',
    ],
    [[2, ""], "#VALUE! schedule = blank: needs a text"],
    [[2, false], "#VALUE! schedule = FALSE: must be a text"],
    [[45_293, 40], `#VALUE! nps = "45293": ${DATE}`],
    [[7, 40], `#N/A nps = "7": is not in this table; it has ${SIZES}`],
  ])("PIPE_WALL %j", (cells, sentence) => {
    expect(refusal("PIPE_WALL", ...cells)).toBe(sentence);
  });

  test.each([
    [[2, 1], "#VALUE! wall = 1 in: must be less than half of od, 1 in"],
    [[0, 0.065], "#VALUE! od = 0 in: must be above 0"],
    [[50.8, -1.65, "SI"], "#VALUE! wall = -1.65 mm: must be above 0"],
    [[2, null], "#VALUE! wall = blank: needs a number (in)"],
  ])("ACCEPT_LIMITS %j", (cells, sentence) => {
    expect(refusal("ACCEPT_LIMITS", ...cells)).toBe(sentence);
  });
});

describe("form limits", () => {
  const limits = (...cells: unknown[]): number[] =>
    table("ACCEPT_LIMITS", ...cells)
      .flat()
      .map(Number);

  test("US and SI agree, for any tube", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 13, noNaN: true }),
        fc.double({ min: 0.01, max: 0.09, noNaN: true }),
        (od, wall) => {
          const us = limits(od, wall);
          limits(od * MM, wall * MM, "SI").forEach((limit, i) => {
            expect(Math.abs(limit / ((us[i] ?? NaN) * MM) - 1)).toBeLessThan(1e-12);
          });
        },
      ),
    );
  });
  describe(
    evidence(
      "ACCEPT_LIMITS",
      BY_HAND,
      "misalignment at and just past the tolerance of the 4 in and 6 in tube",
    ),
    () => {
      test.each([
        // A tube at, and just past, ± 0.015 in of 4 in and ± 0.030 in of 6 in; 15 % of 0.083 in is 0.01245 in.
        [4.015, 0.083, 0.015],
        [3.985, 0.083, 0.015],
        [4.016, 0.083, 0.01245],
        [3.984, 0.083, 0.01245],
        [6.03, 0.109, 0.03],
        [5.97, 0.109, 0.03],
        [6.031, 0.109, 0.01635],
        [5.969, 0.109, 0.01635],
      ])("misalignment of %d × %d in: %d in", (od, wall, misalignment) => {
        expect(limits(od, wall)[2]).toBeCloseTo(misalignment, 10);
      });
    },
  );
});
