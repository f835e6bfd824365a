import fc from "fast-check";

import { RUNS } from "../arbitrary-cells";
import { bead, expectNear, expectPrinted, number, refusal, table } from "../bead";
import { BY_HAND, evidence } from "../evidence";

type Row = (number | string | boolean)[];

const NOTHING: Row = ["", "", "", "", ""];
const GOOD = [8, 1, 0.065];
const ERROR_CELL = { type: "Error", basicValue: "#N/A", errorType: "NotAvailable" };

/** The rows of the list, and the last row with the sums. */
function takeoff(joints: unknown[][], ...terms: unknown[]): { lines: Row[]; sums: Row } {
  const rows = table("TAKEOFF", joints, ...terms);
  return { lines: rows.slice(0, -1), sums: rows.at(-1) ?? [] };
}

/** The remark beside a line that follows a good one. */
function remark(line: unknown[], units?: string): unknown {
  const { lines, sums } = takeoff([GOOD, line], null, null, null, null, null, units);
  expect(lines[1]?.slice(0, 4)).toEqual(["", "", "", ""]);
  expect(sums[4]).toBe("1 line omitted");
  return lines[1]?.[4];
}

describe(evidence("TAKEOFF", BY_HAND, "two lines and their sums; the dwell by [mpmath-1.3.0]"), () => {
  // Handling 300 s, torch 10 L/min, bore 5 L/min from 60 s before, overlap 36°.
  // The dwell alone comes from that library: x√(1 − (K₀/K₁)²) = 0.4 at x = 0.478435251,
  // 4πkhθ/q = 2·exp(x·K₀/K₁)·K₀ = 2.499311211 = E₁(0.048377105), so t = b²/(16α·0.048377105) = 1.291933459·b²/α.
  const { lines, sums } = takeoff(
    [
      [8, 50.8, 1.651, "316L"],
      [25, 25.4, 2.1, 2205],
    ],
    300,
    10,
    5,
    60,
    36,
    "SI",
  );

  test("8 joints of 50.8 × 1.651 mm, 316L", () => {
    // b = 1 + 2·1.651 = 4.302 mm; v = 1.6·5.848/4.302 = 2.17498838 mm/s = 130.499303 mm/min.
    // dwell 1.291933459·4.302²/5.848 = 4.08859; turn 1.1·π·50.8/v = 80.71409; downslope 3·4.302/v = 5.93382 s.
    // machine 30 + 4.08859 + 80.71409 + 5.93382 + 15 = 135.73650 s; 8·435.73650/3600 = 0.96830333 h.
    // gas 10·135.73650/60 + 5·195.73650/60 = 22.622750 + 16.311375 = 38.934125 L; ·8 = 311.47300 L.
    const [speed, machine, hours, gas, said] = lines[0] ?? [];
    expectPrinted(speed as number, "130.499303");
    expectPrinted(machine as number, "135.73650");
    expectPrinted(hours as number, "0.96830333");
    expectPrinted(gas as number, "311.47300");
    expect(said).toBe("");
  });

  test("25 joints of 25.4 × 2.1 mm, 2205 as a cell's number", () => {
    // b = 5.2 mm; v = 1.6·5.933/5.2 = 1.82553846 mm/s; dwell 1.291933459·5.2²/5.933 = 5.88806;
    // turn 1.1·π·25.4/v = 48.08231; downslope 15.6/v = 8.54542; machine 107.51579 s; 25·407.51579/3600 = 2.8299708 h.
    // gas 10·107.51579/60 + 5·167.51579/60 = 17.919299 + 13.959649 = 31.878948 L; ·25 = 796.97371 L.
    const [speed, machine, hours, gas, said] = lines[1] ?? [];
    expectPrinted(speed as number, "109.53231");
    expectPrinted(machine as number, "107.51579");
    expectPrinted(hours as number, "2.8299708");
    expectPrinted(gas as number, "796.97371");
    expect(said).toBe("");
  });

  test("the sums: 0.9683033 + 2.8299708 h, 311.47300 + 796.97371 L", () => {
    expect(sums.slice(0, 2)).toEqual(["", ""]);
    expectPrinted(sums[2] as number, "3.798274");
    expectPrinted(sums[3] as number, "1108.4467");
    expect(sums[4]).toBe("all lines counted");
  });
});

describe("a list as people have it", () => {
  test("a header keeps its row and says so; it is no line omitted", () => {
    const { lines, sums } = takeoff([["joints", "OD", "wall", "material"], GOOD]);
    expect(lines).toEqual([["", "", "", "", "header"], takeoff([GOOD]).lines[0]]);
    expect(sums).toEqual(takeoff([GOOD]).sums);
  });

  test("blank lines stay blank, also before the header and after the list", () => {
    const blanks = [
      [null, "", undefined],
      ["  ", null, ""],
    ];
    const { lines, sums } = takeoff([...blanks, ["pcs", null, "t"], ...blanks, GOOD, ...blanks]);
    const { lines: alone, sums: sum } = takeoff([GOOD]);
    expect(lines).toEqual([
      NOTHING,
      NOTHING,
      ["", "", "", "", "header"],
      NOTHING,
      NOTHING,
      alone[0],
      NOTHING,
      NOTHING,
    ]);
    expect(sums).toEqual(sum);
  });

  test("a first row with any digit is a line, so that a misread one is counted as omitted", () => {
    for (const first of [
      ["ca. 12", "Ø25", "1,65"],
      ["10 pcs", "OD", "wall"],
      ["joints", "OD", 0.065],
      ["joints", "½", "wall"],
      ["joints", ERROR_CELL, "wall"],
      ["joints", true, "wall"],
      ["", "", "", "material"],
    ]) {
      const { lines, sums } = takeoff([first, GOOD]);
      expect(lines[0]?.[4]).toMatch(/^(quantity|od): /);
      expect(sums[4]).toBe("1 line omitted");
    }
  });

  test("only the first row can be a header", () => {
    expect(remark(["joints", "od", "wall"])).toBe("quantity: must be a number");
  });

  test("numbers stored as text count as the numbers they say", () => {
    for (const row of [
      ["8", "1", "0.065"],
      [" 8 ", "\u00a01.0", "+.065"],
      ["8.", "1e0", "6.5E-2"],
    ]) {
      expect(takeoff([row])).toEqual(takeoff([GOOD]));
    }
  });

  test("mixed materials, case and blanks ignored, 316L where none is named", () => {
    const materials = ["304L", " cs ", "ti-2", 2205, "2205", 625, "C70600", "", null];
    const { lines, sums } = takeoff(materials.map((material) => [1, 1, 0.065, material]));
    expect(lines.map(([speed]) => speed)).toEqual(
      materials.map((material) => number("TRAVEL_SUGGEST", 0.065, null, material)),
    );
    expect(sums[4]).toBe("all lines counted");
  });

  test("a row of zeros is a blank line: some hosts hand blank cells of a range over as 0", () => {
    const { lines, sums } = takeoff([GOOD, [0, 0, 0, 0], [...GOOD.slice(0, 3), 0]]);
    expect(lines[1]).toEqual(["", "", "", "", ""]);
    expect(lines[2]).toEqual(lines[0]);
    expect(sums[4]).toBe("all lines counted");
  });

  test("without terms there is no gas, and hours are those of the machine", () => {
    const { lines } = takeoff([GOOD]);
    expectNear((lines[0]?.[2] as number) * 3600, 8 * (lines[0]?.[1] as number));
    expect(lines[0]?.[3]).toBe(0);
  });
});

describe("the remark says why a line is omitted, in the units of the sheet", () => {
  const MATERIALS = "304L, 316L, 2205, CS, TI-2, TI-6-4, 625, C-276, C12200, C70600";
  test.each<[line: unknown[], sentence: string]>([
    [[8, 1, 0.5], "wall: must be less than half of od, 0.5 in"],
    [[8, 1, 0.6], "wall: must be less than half of od, 0.5 in"],
    [[8, 1, 0], "wall: must be above 0"],
    [[8, 1, -0.065], "wall: must be above 0"],
    [[8, 1, 1e-5], "wall: must be between 0.0000393701 in and 3.93701 in"],
    [[8, 300, 4], "wall: must be between 0.0000393701 in and 3.93701 in"],
    [[8, 0, 0.065], "od: must be above 0"],
    [[8, 394, 0.065], "od: must be at most 393.701 in"],
    [[0, 1, 0.065], "quantity: must be a whole number from 1 to 1000000000"],
    [[-1, 1, 0.065], "quantity: must be a whole number from 1 to 1000000000"],
    [[2.5, 1, 0.065], "quantity: must be a whole number from 1 to 1000000000"],
    [[1e9 + 1, 1, 0.065], "quantity: must be a whole number from 1 to 1000000000"],
    [["", 1, 0.065], "quantity: needs a number"],
    [[8, null, 0.065], "od: needs a number (in)"],
    [[8, 1, " "], "wall: needs a number (in)"],
    [[8, 1], "wall: needs a number (in)"],
    [["", "", "", "CS"], "quantity: needs a number"],
    [[8, 1, "0,065"], "wall: contains a comma (decimal or thousands separator?); type 1.5 or 1500"],
    [["1,000", 1, 0.065], "quantity: contains a comma (decimal or thousands separator?); type 1.5 or 1500"],
    [[8, "1 in", 0.065], "od: must be a number (in)"],
    [[8, "1/2", 0.065], "od: must be a number (in)"],
    [[8, "1e400", 0.065], "od: must be a finite number (in)"],
    [[8, 1e301, 0.065], "od: is out of range (limit 1e300)"],
    [[8, NaN, 0.065], "od: must be a finite number (in)"],
    [[true, 1, 0.065], "quantity: must be a number"],
    [[8, {}, 0.065], "od: must be a number (in)"],
    [[8, 1, ERROR_CELL], "wall: the referenced cell contains an error; fix it first"],
    [[8, 1, 0.065, { code: "#REF!" }], "material: the referenced cell contains an error; fix it first"],
    [[8, 1, 0.065, "unobtainium"], `material: must be one of ${MATERIALS}`],
    [[8, 1, 0.065, 316], `material: must be one of ${MATERIALS}`],
  ])("%#: %s", (line, sentence) => {
    expect(remark(line)).toBe(sentence);
  });

  test.each<[line: unknown[], sentence: string]>([
    [[8, 25.4, 15], "wall: must be less than half of od, 12.7 mm"],
    [[8, 10_001, 2], "od: must be at most 10000 mm"],
    [[8, 25.4, 0.0009], "wall: must be between 0.001 mm and 100 mm"],
    [[8, 25.4, "thin"], "wall: must be a number (mm)"],
  ])("%j in SI: %s", (line, sentence) => {
    expect(remark(line, "SI")).toBe(sentence);
  });

  test("a text as long as a cell can hold, or longer, is not repeated", () => {
    for (const text of ["x".repeat(100_000), `${"1".repeat(100_000)}x`, `${"1,".repeat(50_000)}x`]) {
      expect(remark([8, text, 0.065])).toBe("od: must be a number (in)");
    }
  });

  test("a limit that the value would round to is shown with more digits: 0.99999999 in has a half of 0.499999995", () => {
    expect(remark([8, 0.999_999_99, 0.5])).toBe("wall: must be less than half of od, 0.499999995 in");
  });

  test("the limits themselves are allowed", () => {
    const { sums } = takeoff(
      [
        [1e9, 10_000, 100],
        [1, 25.4, 0.001],
      ],
      null,
      null,
      null,
      null,
      null,
      "SI",
    );
    expect(sums[4]).toBe("all lines counted");
  });

  test("the good lines are counted whatever stands beside them", () => {
    const bad = [8, 1, 0.6];
    const { lines, sums } = takeoff([bad, GOOD, bad, GOOD], 300, 20);
    const [line] = takeoff([GOOD], 300, 20).lines;
    expect([lines[1], lines[3]]).toEqual([line, line]);
    expectNear(sums[2] as number, 2 * (line?.[2] as number));
    expectNear(sums[3] as number, 2 * (line?.[3] as number));
    expect(sums[4]).toBe("2 lines omitted");
  });

  test("where no line can be used the sums are 0 and say so", () => {
    expect(
      takeoff([
        ["joints", "od", "wall"],
        [8, 1, 0.6],
        [8, "", 0.6],
        ["a", 1, 1],
      ]).sums,
    ).toEqual(["", "", 0, 0, "3 lines omitted"]);
  });

  test("a header alone is no line to count", () => {
    expect(table("TAKEOFF", [["joints", "od", "wall"]])).toEqual([
      ["", "", "", "", "header"],
      ["", "", 0, 0, "no lines to count"],
    ]);
  });
});

describe("refused as a whole", () => {
  const NEEDS = "quantity, od, wall and, if you like, material";
  test.each<[cells: unknown[], sentence: string]>([
    [[null], `#VALUE! joints = blank: needs rows of ${NEEDS}`],
    [[[["", null, " "]]], `#VALUE! joints = blank: needs rows of ${NEEDS}`],
    [[[]], `#VALUE! joints = blank: needs rows of ${NEEDS}`],
    [[120], `#VALUE! joints = 1 column: must be 3 or 4 columns: ${NEEDS}`],
    [[[[120, 1]]], `#VALUE! joints = 2 columns: must be 3 or 4 columns: ${NEEDS}`],
    [[[[1, 120, 1, 0.065, "CS"]]], `#VALUE! joints = 5 columns: must be 3 or 4 columns: ${NEEDS}`],
    [[[GOOD], -1], "#VALUE! handlingSeconds = -1 s: must be 0 or more"],
    [[[GOOD], 0, -1], "#VALUE! torchFlow = -1 ft³/h: must be 0 or more"],
    [[[GOOD], 0, 0, -1], "#VALUE! purgeFlow = -1 ft³/h: must be 0 or more"],
    [[[GOOD], 0, 0, 0, -1], "#VALUE! purgeSeconds = -1 s: must be 0 or more"],
    [[[GOOD], 0, 0, 0, 0, -1], "#VALUE! overlap = -1°: must be 0 or more"],
    [[[GOOD], "5 min"], '#VALUE! handlingSeconds = "5 min": must be a number (s)'],
    [
      [[[1e9, 1, 0.065]], 1e300],
      "#VALUE! result = beyond what a cell can hold: some argument is far too large or too small",
    ],
  ])("%#: %s", (cells, sentence) => {
    expect(refusal("TAKEOFF", ...cells)).toBe(sentence);
  });

  test("a list longer than 200000 rows", () => {
    const rows = Array.from({ length: 200_000 }, () => [""] as unknown[]);
    rows[0] = [8, 1, 0.065];
    expect(takeoff(rows).sums).toEqual(takeoff([GOOD]).sums);
    expect(refusal("TAKEOFF", [...rows, [""]])).toBe(
      "#VALUE! joints = 200001 rows: must be at most 200000 rows; take the list in parts",
    );
  });

  test("REASON finds nothing to refuse where a line is omitted: the remark tells", () => {
    expect(bead("REASON", "TAKEOFF", [[GOOD, [8, 1, 0.6]]])).toBe("fine");
  });
});

const line = fc.tuple(
  fc.integer({ min: 1, max: 500 }),
  fc.double({ min: 0.1, max: 12, noNaN: true }),
  fc.double({ min: -0.01, max: 0.5, noNaN: true }),
  fc.constantFrom("316L", "304L", 2205, "CS", "TI-2", "", null, "zinc"),
);
const list = fc.array(line, { minLength: 1, maxLength: 30 });
const terms = fc.tuple(...[600, 60, 60, 900, 90].map((max) => fc.double({ min: 0, max, noNaN: true })));

describe(`laws of the list (${RUNS})`, () => {
  test("a list is the sum of its lines", () => {
    fc.assert(
      fc.property(list, terms, (joints, given) => {
        const { lines, sums } = takeoff(joints, ...given);
        const alone = joints.map((one) => takeoff([one], ...given));
        expect(lines).toEqual(alone.map((one) => one.lines[0]));
        for (const column of [2, 3]) {
          expectNear(
            sums[column] as number,
            alone.reduce((sum, one) => sum + (one.sums[column] as number), 0),
          );
        }
        const out = alone.filter((one) => one.sums[4] === "1 line omitted").length;
        const said = out === 1 ? "1 line omitted" : `${String(out)} lines omitted`;
        expect(sums[4]).toBe(out === 0 ? "all lines counted" : said);
      }),
    );
  });

  test("in any order the sums are the same and every line keeps its numbers", () => {
    fc.assert(
      fc.property(
        list,
        terms,
        fc.array(fc.nat(), { minLength: 30, maxLength: 30 }),
        (joints, given, draws) => {
          const order = joints.map((_, i) => ({ i, key: draws[i] ?? 0 })).sort((a, b) => a.key - b.key);
          const before = takeoff(joints, ...given);
          const after = takeoff(
            order.map(({ i }) => joints[i] ?? []),
            ...given,
          );
          expect(after.lines).toEqual(order.map(({ i }) => before.lines[i]));
          expectNear(after.sums[2] as number, before.sums[2] as number);
          expectNear(after.sums[3] as number, before.sums[3] as number);
          expect(after.sums[4]).toBe(before.sums[4]);
        },
      ),
    );
  });

  test("the same list in inches and in millimeters takes the same time and gas", () => {
    // 1 in = 25.4 mm; 1 ft³ = 28.316846592 L; 1 ft³/h = 28.316846592/60 L/min (NIST SP 811).
    const CUBIC_FOOT = 28.316846592;
    fc.assert(
      fc.property(list, terms, (joints, [handling, torch = 0, purge = 0, before, overlap]) => {
        const us = takeoff(joints, handling, torch, purge, before, overlap);
        const si = takeoff(
          joints.map(([quantity, od, wall, material]) => [quantity, od * 25.4, wall * 25.4, material]),
          handling,
          (torch * CUBIC_FOOT) / 60,
          (purge * CUBIC_FOOT) / 60,
          before,
          overlap,
          "SI",
        );
        [...us.lines, us.sums].forEach((row, r) => {
          const same = [...si.lines, si.sums][r] ?? [];
          [25.4, 1, 1, CUBIC_FOOT].forEach((factor, column) => {
            const [value, expected] = [row[column], same[column]];
            if (typeof value === "number") expectNear(value * factor, expected as number);
            else expect(expected).toBe("");
          });
        });
        expect(us.sums[4]).toBe(si.sums[4]);
      }),
    );
  });

  test("a line takes what the single formulas say, dwell and downslope included", () => {
    fc.assert(
      fc.property(line, terms, ([quantity, od, wall, material], given) => {
        fc.pre(wall > 0.001 && wall < od / 2 && material !== "zinc");
        const [handling, torchFlow, purgeFlow, purgeSeconds, overlap] = given;
        const speed = number("TRAVEL_SUGGEST", wall, null, material);
        const dwell = number("START_DWELL", wall, speed, null, material);
        const downslope = (3 * (1 / 25.4 + 2 * wall) * 60) / speed;
        const machine = number("CYCLE_TIME", od, speed, 30, dwell, overlap, downslope, 15);
        const gas = number("GAS_JOINT", torchFlow, machine, purgeFlow, (purgeSeconds ?? 0) + machine);
        const [row = []] = takeoff([[quantity, od, wall, material]], ...given).lines;
        const expected = [speed, machine, (quantity * (machine + (handling ?? 0))) / 3600, quantity * gas];
        expected.forEach((value, column) => {
          expectNear(row[column] as number, value);
        });
      }),
    );
  });

  test("any range, header and blanks and all, gives a row for every row and one more", () => {
    const anyRow = fc.tuple(...[0, 1, 2].map(() => fc.oneof(fc.double(), fc.string(), fc.constant(null))));
    fc.assert(
      fc.property(fc.array(anyRow, { maxLength: 20 }), (rows) => {
        const { lines } = takeoff([...rows, GOOD]);
        expect(lines).toHaveLength(rows.length + 1);
      }),
    );
  });
});

describe("long lists", () => {
  /** Reads of single cells that a list costs. */
  function cellsRead(length: number): number {
    let reads = 0;
    const row = (): unknown[] =>
      new Proxy([...GOOD, "CS"], {
        get: (target, key): unknown => {
          if (typeof key === "string" && /^\d+$/.test(key)) reads += 1;
          return Reflect.get(target, key) as unknown;
        },
      });
    takeoff(Array.from({ length }, row));
    return reads;
  }

  test("another thousand lines read as many cells more as the thousand before", () => {
    const [few = NaN, more = NaN, most = NaN] = [1000, 2000, 3000].map(cellsRead);
    expect(most - more).toBe(more - few);
    expect(more - few).toBeGreaterThanOrEqual(4000);
  });

  test("100 000 lines are answered, a thousandth of them omitted", () => {
    const joints = Array.from({ length: 100_000 }, (_, i) => [8, 1, i % 1000 === 0 ? 0.5 : 0.065]);
    const { lines, sums } = takeoff(joints, 300);
    const hours = takeoff([GOOD], 300).sums[2] as number;
    expect(lines).toHaveLength(100_000);
    expect(lines.filter((one) => one[4] !== "")).toHaveLength(100);
    // Adding up so many numbers may round off a little.
    expectNear(sums[2] as number, 99_900 * hours, 1e-10);
    expect(sums[4]).toBe("100 lines omitted");
  });
});
