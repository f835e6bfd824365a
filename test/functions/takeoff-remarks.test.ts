/** Why a line is not counted, in the units of the sheet, and why a whole list is refused. */

import { expectNear } from "../bead";
import type { Terms } from "./takeoff-rows";
import { ERROR_CELL, GOOD, refusedBy, remark, REMARK, SUMMED, takeoff } from "./takeoff-rows";

const MATERIALS = "304L, 316L, 2205, CS, TI-2, TI-6-4, 625, C-276, C12200, C70600";
const COMMA = "contains a comma (decimal or thousands separator?); type 1.5 or 1500";
const SIZE = "must be a number or a size such as 1.5, 1-1/2 or 38.1 mm";
const DATE = "looks like a size that the sheet turned into a date; type it as 0 1/2, '1/2 or 0.5";
const FIX = "the referenced cell contains an error; fix it first";

test.each<[line: unknown[], sentence: string]>([
  [[8, 1, 0.5], "wall: must be less than half of od, 0.5 in"],
  [[8, 1, 0.6], "wall: must be less than half of od, 0.5 in"],
  [[8, 1, 0], "wall: must be above 0"],
  [[8, 1, -0.065], "wall: must be above 0"],
  [[8, 1, 1e-5], "wall: no tube of this trade has such a wall (minimum 0.00393701 in)"],
  [[8, 2, 1.65], 'wall: no tube of this trade has such a wall (maximum 1 in); for millimeters give "SI"'],
  [[8, 2, "1-5/8"], "wall: no tube of this trade has such a wall (maximum 1 in)"],
  [
    [8, 100, 26],
    'od: no tube of this trade has such an outside diameter (maximum 20 in); for millimeters give "SI"',
  ],
  [
    [8, 12.7, 0.049],
    "wall: no tube of this trade has so thin a wall for its od (maximum 200 walls); check the units of both",
  ],
  [[8, 509, 4], "od: no tube of this trade has such an outside diameter (maximum 20 in)"],
  [[8, 0, 0.065], "od: must be above 0"],
  [[0, 1, 0.065], "quantity: must be a whole number from 1 to 1000000000"],
  [[-1, 1, 0.065], "quantity: must be a whole number from 1 to 1000000000"],
  [[2.5, 1, 0.065], "quantity: must be a whole number from 1 to 1000000000"],
  [[1e9 + 10, 1, 0.065], "quantity: must be a whole number from 1 to 1000000000"],
  [["", 1, 0.065], "quantity: needs a number"],
  [[8, null, 0.065], "od: needs a number (in)"],
  [[8, 1, " "], "wall: needs a number (in)"],
  [[8, 1], "wall: needs a number (in)"],
  [["", "", "", "CS"], "quantity: needs a number"],
  [[8, 1, "0,065"], `wall: ${COMMA}`],
  [["1,000", 1, 0.065], `quantity: ${COMMA}`],
  [["1 000", 1, 0.065], "quantity: must be a number"],
  [["8 ea", 1, 0.065], "quantity: must be a number"],
  [[8, "2 cm", 0.065], `od: ${SIZE}`],
  [[8, "1/3", 0.065], "od: is no fraction of an inch; type it with decimals"],
  [[8, "1/2/2026", 0.065], "od: looks like a date; type a size such as 1.5, 1-1/2 or 38.1 mm"],
  [[8, 46_024, 0.065], `od: ${DATE}`],
  [[8, "46024", 0.065], `od: ${DATE}`],
  [[8, 1, 46_024], `wall: ${DATE}`],
  [[8, "1e400", 0.065], "od: must be a finite number (in)"],
  [[8, "1e400 in", 0.065], "od: is out of range (limit 1e300)"],
  [[8, 1e301, 0.065], "od: is out of range (limit 1e300)"],
  [[8, NaN, 0.065], "od: must be a finite number (in)"],
  [[true, 1, 0.065], "quantity: must be a number"],
  [[8, {}, 0.065], "od: must be a number (in)"],
  [[8, 1, ERROR_CELL], `wall: ${FIX}`],
  [[8, 1, 0.065, { code: "#REF!" }], `material: ${FIX}`],
  [[8, 1, 0.065, "unobtainium"], `material: must be one of ${MATERIALS}`],
  [[8, 1, 0.065, "304/316L"], `material: must be one of ${MATERIALS}`],
  [[8, 1, 0.065, 317], `material: must be one of ${MATERIALS}`],
])("%#: %s", (line, sentence) => {
  expect(remark(line)).toBe(sentence);
});

test.each<[line: unknown[], sentence: string]>([
  [[8, 25.4, 15], "wall: must be less than half of od, 12.7 mm"],
  [[8, 509, 2], "od: no tube of this trade has such an outside diameter (maximum 508 mm)"],
  [[8, 100, 26], "wall: no tube of this trade has such a wall (maximum 25.4 mm)"],
  [[8, 25.4, 0.065], 'wall: no tube of this trade has such a wall (minimum 0.1 mm); for inches give "US"'],
  [[8, 25.4, 0.003], "wall: no tube of this trade has such a wall (minimum 0.1 mm)"],
  [[8, 25.4, "thin"], "wall: must be a number or a size such as 38.1, 38.1 mm or 1-1/2 in"],
  [[8, "1/2", 1], "od: is a fraction, which is a size in inches; type 1/2 in, or millimeters"],
  [[8, "12,700", 1], `od: ${COMMA}`],
])("%j in SI: %s", (line, sentence) => {
  expect(remark(line, "SI")).toBe(sentence);
});

test("a text as long as a cell can hold, or longer, is not repeated", () => {
  for (const text of ["x".repeat(100_000), `${"1".repeat(100_000)}x`, `${"1,".repeat(50_000)}x`]) {
    expect(remark([8, text, 0.065])).toBe(`od: ${SIZE}`);
  }
});

test("a limit that the value would round to is shown with more digits: 0.99999999 in has a half of 0.499999995", () => {
  expect(remark([8, 0.999_999_99, 0.5])).toBe("wall: must be less than half of od, 0.499999995 in");
});

test("the limits themselves are counted", () => {
  for (const [units, lines] of [
    [
      "SI",
      [
        [1e9, 508, 15],
        [1, 20, 0.1],
      ],
    ],
    [
      "US",
      [
        [1e9, 20, 15 / 25.4],
        [1, 20 / 25.4, 0.1 / 25.4],
      ],
    ],
  ] as const) {
    expect(takeoff(lines, { units }).sums[REMARK]).toBe("2 of 2 lines counted");
  }
});

test("the good lines are counted whatever stands beside them", () => {
  const bad = [8, 1, 0.6];
  const terms = { handlingSeconds: 300, torchFlow: 20, purgeFlow: 10, purgeSeconds: 60 };
  const { lines, sums } = takeoff([bad, GOOD, bad, GOOD], terms);
  const [line = []] = takeoff([GOOD], terms).lines;
  expect([lines[1], lines[3]]).toEqual([line, line]);
  for (const column of SUMMED) expectNear(sums[column] as number, 2 * (line[column] as number));
  expect(sums[REMARK]).toBe("2 of 4 lines counted");
});

test("one line is counted in the singular", () => {
  expect(takeoff([GOOD]).sums[REMARK]).toBe("1 of 1 line counted");
  expect(takeoff([[8, 1, 0.6]]).sums[REMARK]).toBe("0 of 1 line counted");
});

test("where no line can be used the sums are 0 and say so", () => {
  expect(
    takeoff([
      ["joints", "od", "wall"],
      [8, 1, 0.6],
      [8, "", 0.6],
      ["a", 1, 1],
    ]).sums,
  ).toEqual([0, "", "", "", 0, 0, 0, 0, "0 of 3 lines counted"]);
});

describe("refused as a whole", () => {
  const NEEDS = "quantity, od, wall and, if you like, material";
  test.each<[joints: unknown, sentence: string]>([
    [null, `#VALUE! joints = blank: needs rows of ${NEEDS}`],
    [[["", null, " "]], `#VALUE! joints = blank: needs rows of ${NEEDS}`],
    [[], `#VALUE! joints = blank: needs rows of ${NEEDS}`],
    [120, `#VALUE! joints = 1 column: must be 3 or 4 columns: ${NEEDS}`],
    [[[120, 1]], `#VALUE! joints = 2 columns: must be 3 or 4 columns: ${NEEDS}`],
    [[[1, 120, 1, 0.065, "CS"]], `#VALUE! joints = 5 columns: must be 3 or 4 columns: ${NEEDS}`],
  ])("%#: %j, %s", (joints, sentence) => {
    expect(refusedBy(joints)).toBe(sentence);
  });

  test.each<[terms: Terms, sentence: string]>([
    [{ handlingSeconds: -1 }, "#VALUE! handlingSeconds = -1 s: must be 0 or more"],
    [{ torchFlow: -1 }, "#VALUE! torchFlow = -1 ft³/h: must be 0 or more"],
    [{ purgeFlow: -1 }, "#VALUE! purgeFlow = -1 ft³/h: must be 0 or more"],
    [{ purgeSeconds: -1 }, "#VALUE! purgeSeconds = -1 s: must be 0 or more"],
    [{ overlap: -1 }, "#VALUE! overlap = -1°: must be 0 or more"],
    [{ damSpacing: 0 }, "#VALUE! damSpacing = 0 in: must be above 0"],
    [{ damSpacing: -24 }, "#VALUE! damSpacing = -24 in: must be above 0"],
    [{ ppm: -1 }, "#VALUE! ppm = -1 ppm: must be 0 or more"],
    [{ supplyPpm: -1 }, "#VALUE! supplyPpm = -1 ppm: must be 0 or more"],
    [
      { damSpacing: 24, purgeFlow: 10, ppm: 5, supplyPpm: 5 },
      "#N/A ppm = 5 ppm: cannot be reached; must be above supplyPpm, 5 ppm",
    ],
    [{ handlingSeconds: "5 min" }, '#VALUE! handlingSeconds = "5 min": must be a number (s)'],
  ])("%j: %s", (terms, sentence) => {
    expect(refusedBy([GOOD], terms)).toBe(sentence);
  });

  test("sums beyond what a cell can hold", () => {
    expect(refusedBy([[1e9, 1, 0.065]], { handlingSeconds: 1e300 })).toBe(
      "#VALUE! result = beyond what a cell can hold: some argument is far too large or too small",
    );
  });
});
