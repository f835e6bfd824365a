/** Every row is SCHEDULE's, whatever the list looks like; a row that cannot be says why and spoils no other. */

import { bead, expectNear, number, refusal, table } from "../bead";
import { rowOf } from "../schedule-rows";
import { ERROR_CELL } from "./takeoff-rows";

type Cell = number | string | boolean;

/** The label of SCHEDULE behind each column, in order. */
const LABELS = [
  "Standoff",
  "Electrode diameter",
  "Arc voltage",
  "Bead width",
  "Travel speed",
  "Rotor speed",
  "Start dwell",
  "Sector 1 mean",
  "Sector 2 mean",
  "Sector 3 mean",
  "Sector 4 mean",
  "Sector 1 peak",
  "Sector 1 background",
  "Pulse rate",
  "Peak share of the pulse",
  "Overlap",
  "Heat input, hottest sector",
  "Arc time",
] as const;
const PULSE: readonly string[] = LABELS.slice(11, 15);
const [MINIMUM, MAXIMUM, REMARK] = [LABELS.length, LABELS.length + 1, LABELS.length + 2];
const NOTHING: Cell[] = Array.from({ length: REMARK + 1 }, () => "");

function sizes(rows: readonly (readonly unknown[])[], ...more: unknown[]): Cell[][] {
  return table("SIZE_TABLE", rows, ...more);
}

function refused(sentence: string): Cell[] {
  return [...NOTHING.slice(0, REMARK), sentence];
}

const GOOD = [1, 0.065];
const LINE = sizes([GOOD])[0] ?? [];

/** The trade's sizes, in and mm, with the metals of their lists. */
const US_SIZES = [
  [0.25, 0.035],
  [0.5, 0.049, "316L"],
  [1, 0.065, "304L"],
  [1.5, 0.065, 2205],
  [2, 0.083, "TI-2"],
  [4, 0.083],
  [6.625, 0.134, "CS"],
] as const;
const SI_SIZES = [
  [6.35, 0.89],
  [19, 1.5],
  [53, 1.5, "304L"],
  [60.3, 2.77, "625"],
  [114.3, 3.05],
] as const;

function expectRow(
  row: readonly Cell[],
  size: readonly unknown[],
  style: string,
  efficiency: number,
  units: string,
): void {
  const [od, wall, material] = size as [number, number, string | undefined];
  const scheduled = rowOf({ od, wall, material: material ?? null, style, efficiency, units });
  LABELS.forEach((label, i) => {
    if (style === "steady" && PULSE.includes(label)) expect(row[i]).toBe("");
    else expect(row[i]).toBe(scheduled(label));
  });
  const [speed, bead, volts, arcSize] = ["Travel speed", "Bead width", "Arc voltage", "Arc spot"].map(
    scheduled,
  );
  const window = table(
    "AMPS_WINDOW",
    ...[wall, speed, null, 1.5 * (bead ?? NaN), null],
    ...[(efficiency * 0.73) / 0.78, Math.min(1, (efficiency * 0.82) / 0.78), material, volts, arcSize, units],
  )[0];
  const plate = number("AMPS_MELT", wall, speed, bead, material, volts, efficiency, null, arcSize, units);
  const scale = scheduled("Sector 1 mean") / plate;
  expectNear(Number(row[MINIMUM]), scale * Number(window?.[0]), 1e-11);
  expectNear(Number(row[MAXIMUM]), scale * Number(window?.[2]), 1e-11);
}

describe("each row is SCHEDULE's of its size, with the window of AMPS_WINDOW", () => {
  test.each([
    ["pulsed", 0.78],
    ["steady", 0.7],
  ])("%s, efficiency %d", (style, efficiency) => {
    for (const [list, units] of [
      [US_SIZES, "US"],
      [SI_SIZES, "SI"],
    ] as const) {
      const found = sizes(list, style, efficiency, units);
      expect(found).toHaveLength(list.length);
      found.forEach((row, i) => {
        expectRow(row, list[i] ?? [], style, efficiency, units);
      });
    }
  });

  test("an efficiency so high that the strongest arc has all of its power", () => {
    expectRow(sizes([GOOD], null, 1)[0] ?? [], GOOD, "pulsed", 1, "US");
  });

  test("alone or among others, and twice in one list, a size has the same row", () => {
    expect(sizes([[2, 0.083], GOOD, [0.5, 0.049], GOOD])).toEqual([
      ...sizes([[2, 0.083]]),
      LINE,
      ...sizes([[0.5, 0.049]]),
      LINE,
    ]);
  });

  test("what SCHEDULE says of a size is its remark", () => {
    const thick = sizes([[2, 0.154]])[0]?.[REMARK];
    const said = table("SCHEDULE", 2, 0.154).map(([label]) => String(label));
    expect(said.filter((label) => String(thick).includes(label)).length).toBeGreaterThan(0);
    expect(String(thick)).toMatch(/^Thick wall: /);
  });
});

describe("a window that no current or not the suggested one keeps is remarked", () => {
  test.each([
    ["copper, which spreads the heat", [2, 0.065, "C12200"], /^Closed window: /],
    ["a foil, whose root is narrow at once", [2, 0.012], /Current below the window: /],
  ])("%s", (_, size, says) => {
    const [row = []] = sizes([size]);
    expect(String(row[REMARK])).toMatch(says);
    const closed = Number(row[MINIMUM]) > Number(row[MAXIMUM]);
    expect(closed).toBe(says.source.startsWith("^Closed"));
    expect(closed || Number(row[7]) < Number(row[MINIMUM])).toBe(true);
  });

  test("an open one with the current inside has no remark", () => {
    expect(Number(LINE[MINIMUM])).toBeLessThan(Number(LINE[7]));
    expect(Number(LINE[MAXIMUM])).toBeGreaterThan(Number(LINE[7]));
    expect(LINE[REMARK]).toBe("");
  });
});

describe("sizes as people write them", () => {
  test.each([
    ["numbers as text", ["1", " 0.065 "]],
    ["inches by name", ["1 in", "0.065 in"]],
    ["inch marks", ['1"', '0.065"']],
    ["millimeters", ["25.4 mm", "1.651 mm"]],
    ["a blank material", [1, 0.065, ""]],
    ["a material that a host gives as 0", [1, 0.065, 0]],
  ])("%s", (_, cells) => {
    sizes([cells])[0]?.forEach((cell, i) => {
      if (typeof cell === "number") expectNear(cell, Number(LINE[i]), 1e-9);
      else expect(cell).toBe(LINE[i]);
    });
  });

  test("mixed numbers, with and without a mark", () => {
    const plain = sizes([[1.5, 0.065]]);
    for (const od of ["1 1/2", "1-1/2", "1 1/2 in", '1½"', "38.1 mm"]) {
      sizes([[od, 0.065]])[0]?.forEach((cell, i) => {
        if (typeof cell === "number") expectNear(cell, Number(plain[0]?.[i]), 1e-9);
      });
    }
  });
});

describe("a list as people paste it", () => {
  const HEADINGS = [
    ...["standoff, in", "electrode, in", "volts, V", "bead, in", "travel, in/min", "rotor, rpm", "dwell, s"],
    ...["mean 1, A", "mean 2, A", "mean 3, A", "mean 4, A", "peak 1, A", "back 1, A"],
    ...["pulse rate, Hz", "peak share", "overlap, °", "heat input, kJ/in", "arc time, s"],
    ...["minimum 1, A", "maximum 1, A", "remark"],
  ];

  test("a header has the headings beside it, in the units of the call", () => {
    expect(sizes([["OD", "Wall, in"], GOOD])).toEqual([HEADINGS, LINE]);
    const [metric] = sizes(
      [
        ["Tube OD [mm]", "W.T."],
        [25.4, 1.651],
      ],
      null,
      null,
      "SI",
    );
    expect(metric?.slice(0, 5)).toEqual([
      "standoff, mm",
      "electrode, mm",
      "volts, V",
      "bead, mm",
      "travel, mm/min",
    ]);
  });

  test("blank rows stay blank, as text, as nothing and as zeros", () => {
    expect(sizes([[null, ""], GOOD, [0, 0], ["  ", undefined]])).toEqual([NOTHING, LINE, NOTHING, NOTHING]);
  });

  test("a column of text: every row says why, and a whole column below it costs nothing", () => {
    const why = refused("od: must be a number or a size such as 1.5, 1-1/2 or 38.1 mm");
    expect(
      sizes(
        [
          ["tube", "thin"],
          ["hose", "thick"],
        ].map(([a, b]) => [`${String(a)} A`, b]),
      ),
    ).toEqual([why, why]);
    const column: unknown[][] = Array.from({ length: 1_048_576 }, () => [null, null]);
    column[0] = GOOD;
    expect(sizes(column)).toEqual([LINE]);
  });

  test.each([
    [
      "a date that the sheet made of 1/2",
      [46_024, 0.065],
      "od: looks like a size that the sheet turned into a date; type it as 0 1/2, '1/2 or 0.5",
    ],
    [
      "a decimal comma",
      ["1,5", 0.065],
      "od: contains a comma (decimal or thousands separator?); type 1.5 or 1500",
    ],
    [
      "millimeters in inches",
      [25.4, 1.65],
      'od: no tube of this trade has such an outside diameter (maximum 20 in); for millimeters give "SI"',
    ],
    [
      "one of them in millimeters",
      [12.7, 0.049],
      "wall: no tube of this trade has so thin a wall for its od (maximum 200 walls); check the units of both",
    ],
    ["a solid rod", [0.25, 0.125], "wall: must be less than half of od, 0.125 in"],
    ["no wall", [1, ""], "wall: needs a number (in)"],
    ["a negative wall", [1, -0.065], "wall: must be above 0"],
    ["zero", [1, 0], "wall: must be above 0"],
    [
      "another metal",
      [1, 0.065, "brass"],
      "material: must be one of 304L, 316L, 2205, CS, TI-2, TI-6-4, 625, C-276, C12200, C70600",
    ],
    ["an error", [ERROR_CELL, 0.065], "od: the referenced cell contains an error; fix it first"],
    ["a truth value", [true, 0.065], "od: must be a number (in)"],
  ])("%s is told in its row and spoils no other", (_, cells, sentence) => {
    expect(sizes([GOOD, cells, GOOD])).toEqual([LINE, refused(sentence), LINE]);
  });

  test("a tube without a schedule says what SCHEDULE says", () => {
    const [row = []] = sizes([[1, 0.25]]);
    const said = refusal("SCHEDULE", 1, 0.25);
    expect(row.slice(0, REMARK)).toEqual(NOTHING.slice(0, REMARK));
    expect(said).toContain(String(row[REMARK]).replace(/^\w+: /, ""));
  });
});

describe("the list as a whole is refused", () => {
  test.each([
    ["nothing", [], "#VALUE! sizes = blank: needs rows of od, wall and, if you like, material"],
    [
      "blank cells",
      [[[null, ""]]],
      "#VALUE! sizes = blank: needs rows of od, wall and, if you like, material",
    ],
    [
      "one column",
      [[[1], [2]]],
      "#VALUE! sizes = 1 column: must be 2 or 3 columns: od, wall and, if you like, material",
    ],
    [
      "a quantity in front",
      [[[8, 1, 0.065, "316L"]]],
      "#VALUE! sizes = 4 columns: must be 2 or 3 columns: od, wall and, if you like, material",
    ],
    [
      "more rows than there is an answer for",
      [Array.from({ length: 2001 }, () => GOOD)],
      "#VALUE! sizes = 2001 rows: must be at most 2000 rows; take the list in parts",
    ],
    ["another style", [[GOOD], "hot"], '#VALUE! style = "hot": must be one of pulsed, steady'],
    ["efficiency in percent", [[GOOD], null, 78], "#VALUE! efficiency = 78: must be above 0 and at most 1"],
  ])("%s", (_, cells, says) => {
    expect(refusal("SIZE_TABLE", ...cells)).toBe(says);
  });
});

test("more different sizes than are kept still have their own rows", () => {
  const foils = Array.from({ length: 2000 }, (_, i) => [1, -1 - i]);
  for (const part of [0, 2000, 4000]) {
    expect(sizes(foils.map(([od, wall]) => [od, Number(wall) - part]))[0]).toEqual(
      refused("wall: must be above 0"),
    );
  }
  expect(sizes([GOOD])).toEqual([LINE]);
});

test("a list of two thousand equal sizes is one size's work: its rows are all the same", () => {
  const found = bead(
    "SIZE_TABLE",
    Array.from({ length: 2000 }, () => GOOD),
  ) as Cell[][];
  expect(found).toHaveLength(2000);
  expect(found.every((row) => row.every((cell, i) => cell === LINE[i]))).toBe(true);
});
