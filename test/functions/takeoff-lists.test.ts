/** A list as people paste it: headers, titles, blank lines, whole columns, numbers and sizes as text. */

import { bead, number } from "../bead";
import {
  ERROR_CELL,
  GOOD,
  HEADINGS,
  JOINTS,
  MACHINE,
  NOTHING,
  refusedBy,
  REMARK,
  SPEED,
  takeoff,
  TIME,
} from "./takeoff-rows";

const [LINE = []] = takeoff([GOOD]).lines;

describe("a header", () => {
  test.each([
    [["joints", "OD", "wall", "material"]],
    [["Qty.", "O.D. (in)", "Wall, in", "Mat'l"]],
    [["QTY", "Tube OD [mm]", "W.T.", ""]],
    [["No. of joints", "Outside diameter", "Wall thickness", "Alloy"]],
    [["#", "size", "gauge", null]],
    [["pcs", null, "thk"]],
    [["ea", "in", "in", "spec"]],
  ])("%j has the headings of the results beside it and is no line", (header) => {
    const { lines, sums } = takeoff([header, GOOD]);
    expect(lines).toEqual([HEADINGS, LINE]);
    expect(sums).toEqual(takeoff([GOOD]).sums);
  });

  test("in SI has the headings in SI", () => {
    const [headings] = takeoff(
      [
        ["joints", "od", "wall"],
        [8, 25.4, 1.65],
      ],
      { units: "SI" },
    ).lines;
    expect(headings).toEqual(
      HEADINGS.map((heading) =>
        String(heading).replace("in/min", "mm/min").replace("ft³", "L").replace("ft³", "L"),
      ),
    );
  });

  test("that was pasted once more with the next list is one too", () => {
    const header = ["joints", "od", "wall"];
    const { lines, sums } = takeoff([header, GOOD, header, GOOD]);
    expect(lines).toEqual([HEADINGS, LINE, HEADINGS, LINE]);
    expect(sums[REMARK]).toBe("2 of 2 lines counted");
    expect(sums[JOINTS]).toBe(16);
  });

  test("alone is no line to count", () => {
    const { lines, sums } = takeoff([["joints", "od", "wall"]]);
    expect(lines).toEqual([HEADINGS]);
    expect(sums).toEqual([0, "", "", "", 0, 0, 0, 0, "no lines to count"]);
  });
});

describe("what only looks like a header is a line that is told", () => {
  test.each<[cells: unknown[], sentence: string]>([
    [["TBD", "", ""], "quantity: must be a number"],
    [["TBD", "OD", "wall"], "quantity: must be a number"],
    [["joints", "TBD", "wall"], "quantity: must be a number"],
    [["Building 7, process water", "", ""], "quantity: must be a number"],
    [["joints", "", ""], "quantity: must be a number"],
    [["", "", "", "material"], "quantity: needs a number"],
    [["10 pcs", "OD", "wall"], "quantity: must be a number"],
    [["ca. 12", "Ø25", "1,65"], "quantity: must be a number"],
    [["joints", "OD", 0.065], "quantity: must be a number"],
    [["joints", "1/2", "wall"], "quantity: must be a number"],
    [["joints", "½", "wall"], "quantity: must be a number"],
    [["joints", ERROR_CELL, "wall"], "quantity: must be a number"],
    [["joints", true, "wall"], "quantity: must be a number"],
    [["joints", "od", "...", "()"], "quantity: must be a number"],
  ])("%j: %s", (cells, sentence) => {
    for (const rows of [
      [cells, GOOD],
      [GOOD, cells],
    ]) {
      const { lines, sums } = takeoff(rows);
      expect(lines[rows.indexOf(cells)]).toEqual([...NOTHING.slice(0, REMARK), sentence]);
      expect(lines[rows.indexOf(GOOD)]).toEqual(LINE);
      expect(sums[REMARK]).toBe("1 of 2 lines counted");
    }
  });

  test("a title above the header is told, the header is one", () => {
    const { lines, sums } = takeoff([
      ["Job 12", null, null],
      [null, null, null],
      ["qty", "od", "wall"],
      GOOD,
    ]);
    expect(lines.map((line) => line[REMARK])).toEqual(["quantity: must be a number", "", "remark", ""]);
    expect(sums[REMARK]).toBe("1 of 2 lines counted");
  });
});

describe("blank rows", () => {
  const blanks = [
    [null, "", undefined],
    ["  ", null, ""],
  ];

  test("stay blank, also before the header and after the list", () => {
    const { lines, sums } = takeoff([...blanks, ["pcs", "od", "wall"], ...blanks, GOOD, ...blanks]);
    expect(lines).toEqual([NOTHING, NOTHING, HEADINGS, NOTHING, NOTHING, LINE, NOTHING, NOTHING]);
    expect(sums).toEqual(takeoff([GOOD]).sums);
  });

  test("may be zeros: some hosts hand blank cells of a range over as 0", () => {
    const { lines, sums } = takeoff([GOOD, [0, 0, 0, 0], [...GOOD, 0]]);
    expect(lines).toEqual([LINE, NOTHING, LINE]);
    expect(sums[REMARK]).toBe("2 of 2 lines counted");
  });

  test.each([null, "", 0])("whole columns, six rows of 1 048 576 filled, the rest %j", (blank) => {
    const list: unknown[][] = [
      ["joints", "od", "wall", "material"],
      GOOD,
      [2, "1/2", 0.049],
      GOOD,
      ["TBD"],
      GOOD,
    ];
    const column = Array.from({ length: 1_048_576 }, (_, i) =>
      [0, 1, 2, 3].map((cell) => list[i]?.[cell] ?? blank),
    );
    const { lines, sums } = takeoff(column);
    expect(lines).toHaveLength(6);
    expect(sums).toEqual(takeoff(list.map((row) => [0, 1, 2, 3].map((cell) => row[cell] ?? null))).sums);
    expect(sums[REMARK]).toBe("4 of 5 lines counted");
    expect(sums[JOINTS]).toBe(26);
  });

  test("a list of 200 000 rows has as many results; one that goes on beyond is refused, not cut", () => {
    const rows = Array.from({ length: 200_001 }, () => ["", "", ""] as unknown[]);
    rows[0] = GOOD;
    expect(takeoff(rows.slice(0, -1)).lines).toHaveLength(200_000);
    expect(takeoff(rows).lines).toHaveLength(1);
    rows[200_000] = GOOD;
    expect(refusedBy(rows)).toBe(
      "#VALUE! joints = 200001 rows: must be at most 200000 rows; take the list in parts",
    );
  });
});

describe("numbers and sizes as text", () => {
  test.each([
    [["8", "1", "0.065"]],
    [[" 8 ", "\u00a01.0", "+.065"]],
    [["8.", "1e0", "6.5E-2"]],
    [[8, '1"', "0.065 in"]],
    [["8", "25.4 mm", "1.651mm"]],
  ])("%j is the line of numbers", (row) => {
    const [line = []] = takeoff([row]).lines;
    line.forEach((value, i) => {
      if (typeof value === "number") expect(value).toBeCloseTo(LINE[i] as number, 10);
      else expect(value).toBe(LINE[i]);
    });
  });

  test("a pasted column of fractions counts every line", () => {
    const sizes = ["1/4", "3/8", "1/2", "3/4", "1", "1-1/2", "1 1/2", "2", '2-1/2"', "3 in", 4];
    const values = [0.25, 0.375, 0.5, 0.75, 1, 1.5, 1.5, 2, 2.5, 3, 4];
    const { lines, sums } = takeoff(sizes.map((od) => [1, od, 0.049]));
    expect(lines).toEqual(takeoff(values.map((od) => [1, od, 0.049])).lines);
    expect(sums[REMARK]).toBe("11 of 11 lines counted");
  });

  test("mixed materials by any of their names, 316L where none is named", () => {
    const materials = [
      "304L",
      " cs ",
      "ti-2",
      2205,
      "2205",
      625,
      "C70600",
      "",
      null,
      316,
      "SS316L",
      "304/304L",
    ];
    const meant = ["304L", "CS", "TI-2", 2205, 2205, 625, "C70600", null, null, "316L", "316L", "304L"];
    const { lines, sums } = takeoff(materials.map((material) => [1, 1, 0.065, material]));
    expect(lines.map((line) => line[SPEED])).toEqual(
      meant.map((material) => number("TRAVEL_SUGGEST", 0.065, null, material)),
    );
    expect(sums[REMARK]).toBe("12 of 12 lines counted");
  });
});

test("without terms there is no gas and no purge, and hours are those of the machine", () => {
  expect((LINE[TIME] as number) * 3600).toBeCloseTo(8 * (LINE[MACHINE] as number), 9);
  expect(LINE.slice(5, 8)).toEqual([0, 0, 0]);
});

test("REASON finds nothing to refuse where a line is omitted: the remark tells", () => {
  expect(bead("REASON", "TAKEOFF", [[GOOD, [8, 1, 0.6]]])).toBe("fine");
});
