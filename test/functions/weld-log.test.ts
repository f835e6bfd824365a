/** A weld log: each limit at it and beyond, blank cells, headers, and what cannot be read. */

import { refusal, table } from "../bead";
import { BY_HAND, evidence } from "../evidence";

const LINE = [60, 60, 9, 5, 20, 2, 0.003, 0, 0.005, "accept"];
/** ampsOff, volts, travel, travelOff, heat, ppm, color, concavity, convexity, misalignment. */
const LIMITS = [0.05, 8, 10, 5, 0.04, 6, 7, 50, 3, 0.0065, 0.0065, 0.00975];

function judged(line: readonly unknown[], limits: readonly unknown[] = LIMITS): unknown[] {
  return table("LOG_CHECK", [line], ...limits)[0] ?? [];
}

function having(place: number, cell: unknown): unknown[] {
  return LINE.map((one, i) => (i === place ? cell : one));
}

describe(evidence("LOG_CHECK", BY_HAND, "9·60·60/5 = 6480 J/in, and comparisons"), () => {
  test("a line within its limits", () => {
    expect(judged(LINE)).toEqual(["✓ accept", expect.closeTo(6.48, 9), ""]);
  });
});

describe("each limit: at it fine, beyond it told", () => {
  test.each<[place: number, at: number, beyond: number, said: string]>([
    [1, 63, 63.1, "amps: must be within 5 % of 60 A"],
    [1, 57, 56.9, "amps: must be within 5 % of 60 A"],
    [3, 5.2, 5.21, "travel: must be within 4 % of 5 in/min"],
    [4, 50, 50.1, "ppm: must be at most 50 ppm"],
    [5, 3, 4, "color: must be at most 3"],
    [6, 0.0065, 0.0066, "concavity: must be at most 0.0065 in"],
    [7, 0.0065, 0.0066, "convexity: must be at most 0.0065 in"],
    [8, 0.00975, 0.0098, "misalignment: must be at most 0.00975 in"],
  ])("column %d: %d, %d", (place, at, beyond, said) => {
    expect(judged(having(place, at))[0]).toBe("✓ accept");
    expect(judged(having(place, beyond)).slice(0, 3)).toEqual(["▲ check", expect.any(Number), said]);
  });
  test("volts, from either side, and the heat input that comes of them", () => {
    const open = LIMITS.map((limit, i) => (i === 5 || i === 6 ? null : limit));
    expect(judged(having(2, 8), open)[0]).toBe("✓ accept");
    expect(judged(having(2, 7.9), open)[2]).toBe("volts: must be at least 8 V");
    expect(judged(having(2, 10.1), open)[2]).toBe("volts: must be at most 10 V");
    expect(judged(having(2, 8.3))[2]).toBe("heat input: must be at least 6 kJ/in");
    expect(judged(having(2, 9.8))[2]).toBe("heat input: must be at most 7 kJ/in");
  });
  test("several at once are all told", () => {
    expect(judged([60, 66, 9, 5, 90, 2, 0.003, 0, 0.005, ""])[2]).toBe(
      "amps: must be within 5 % of 60 A; heat input: must be at most 7 kJ/in; ppm: must be at most 50 ppm",
    );
  });
});

describe("what cannot be", () => {
  test.each<[place: number, cell: unknown, said: string]>([
    [1, -60, "amps: must be above 0"],
    [0, -1, "setAmps: must be above 0"],
    [2, -9, "volts: must be above 0"],
    [3, -5, "travel: must be above 0"],
    [4, -1, "ppm: must be at least 0 ppm"],
    [5, 2.5, "color: must be a whole number from 1 to 10"],
    [5, 11, "color: must be a whole number from 1 to 10"],
    [6, -0.001, "concavity: must be at least 0 in"],
    [1, "sixty", "amps: must be a number (A)"],
    [2, "9,1", "volts: contains a comma (decimal or thousands separator?); type 1.5 or 1500"],
    [6, "0,003", "concavity: contains a comma (decimal or thousands separator?); type 1.5 or 1500"],
    [9, "fine", "result: must be one of accept, reject"],
  ])("column %d, %p", (place, cell, said) => {
    const [status, , remark] = judged(having(place, cell));
    expect(status).toBe("▲ check");
    expect(String(remark).split("; amps: is").join()).toContain(said);
  });
  test("no heat input of amps, volts or travel that cannot be", () => {
    for (const place of [1, 2, 3]) expect(judged(having(place, -1))[1]).toBe("");
  });
});

describe("blank cells", () => {
  test("in a line that is accepted each is told, a 0 that a host makes of a blank too", () => {
    expect(judged(having(2, ""))).toEqual(["▲ check", "", "volts: is blank"]);
    expect(judged(having(5, 0))[2]).toBe("color: is blank");
  });
  test("in an open line and in a rejected one they are not", () => {
    expect(judged([60, "", "", "", "", "", "", "", "", ""])).toEqual(["open", "", ""]);
    expect(judged([60, 60, "", "", "", "", "", "", "", "reject"])).toEqual(["× reject", "", ""]);
  });
  test("a rejected line stays rejected, with what was wrong", () => {
    expect(judged([60, 90, 9, 5, 20, 2, 0, 0, 0, "Reject "]).slice(0, 1)).toEqual(["× reject"]);
  });
  test("a limit that is not given judges nothing", () => {
    expect(judged([60, 600, 90, 50, 2e5, 10, 9, 9, 9, "accept"], [])[0]).toBe("✓ accept");
    expect(judged(having(1, 90), [0.05])[0]).toBe("▲ check");
    expect(judged(having(3, 50), [null, null, null, 5])[0]).toBe("✓ accept");
  });
  test("a blank line, of zeros too, and a header", () => {
    const header = ["set", "amps", "volts", "travel, mm/min", "ppm", "color", "a", "b", "c", "result"];
    const blank = LINE.map(() => "");
    const zeros = LINE.map(() => 0);
    expect(table("LOG_CHECK", [header, blank, zeros, LINE], ...LIMITS)).toEqual([
      ["status", "heat, kJ/in", "remark"],
      ["", "", ""],
      ["", "", ""],
      ["✓ accept", expect.closeTo(6.48, 9), ""],
    ]);
    // Words further down are a line that cannot be read.
    expect(table("LOG_CHECK", [LINE, header])[1]?.[0]).toBe("▲ check");
  });
  test("a first line of numbers as text is a line, and one with a digit among its words is no header", () => {
    expect(judged(LINE.map(String))).toEqual(["✓ accept", expect.closeTo(6.48, 9), ""]);
    for (const cell of ["60 A", "A 60", "no. 7 x"])
      expect([cell, judged(LINE.map(() => cell))[0]]).toEqual([cell, "▲ check"]);
  });
  test.each([0, 1, 2, 3, 5, 9])("column %d has no 0: it is a blank cell", (place) => {
    const name = ["setAmps", "amps", "volts", "travel", "ppm", "color"][place];
    const [status, , remark] = judged(having(place, 0), []);
    expect([status, remark]).toEqual(name === undefined ? ["open", ""] : ["▲ check", `${name}: is blank`]);
  });
});

test("no limit is less than 0", () => {
  LIMITS.forEach((_, i) => {
    const limits = LIMITS.map((limit, j) => (i === j ? -1 : limit));
    expect(refusal("LOG_CHECK", [LINE], ...limits)).toMatch(/ = -1.*: must be 0 or more$/);
  });
});

test("the columns must be all there, and the log no longer than it can be", () => {
  expect(refusal("LOG_CHECK", [[60, 60]])).toMatch(/^#VALUE! log = 2 columns: must be 10 columns: setAmps, /);
  const long = Array.from({ length: 5001 }, () => LINE);
  expect(refusal("LOG_CHECK", long)).toBe(
    "#VALUE! log = 5001 rows: must be at most 5000 rows; take the log in parts",
  );
  expect(table("LOG_CHECK", long.slice(1), ...LIMITS)).toHaveLength(5000);
});
