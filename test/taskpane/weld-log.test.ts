/** The weld log as people work in it: rows come and go, cells are typed over, and what is counted is as by hand. */

import { LINES } from "../../taskpane/sheets/weld-log/inputs";
import { weldLog } from "../../taskpane/sheets/weld-log";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

/** Columns from the formula of the log on. */
const [JOINT, SET, AMPS, COLOR, RESULT, HEAT, REMARK] = [-16, -10, -9, -5, -1, 1, 2];
/** Set, actual, volts, travel, oxygen, color, concavity, convexity, misalignment, result. */
const GOOD = [60, 60, 9, 5, 20, 2, 0.003, 0.001, 0.005, "accept"];
const LOGGED = 7;

let sheet: OpenSheet;
let header = 0;
beforeAll(async () => {
  sheet = await openSheet(weldLog, "US");
  const { cells } = await sheet.form();
  header = Number(cells.get("log_check")?.[0]?.at.replace(/\D+/, ""));
});

function type(line: number, cells: readonly (string | number)[], column = SET): void {
  cells.forEach((content, i) => {
    sheet.typeBeside("log_check", column + i, line, String(content));
  });
}

function counts(): unknown[] {
  return ["logged", "inspected", "rejected", "to_check"].map((name) => sheet.value(name));
}

function undone(work: () => void): void {
  sheet.undone(work);
  expect(counts()).toEqual([LOGGED, 6, 1, 0]);
  expect(sheet.holds()).toBe(true);
}

describe("as inserted, an invented log", () => {
  test("lines, counts and the heat input of the first joint: 9.1·60.4·60/5 = 6595.68 J/in", () => {
    expect(counts()).toEqual([LOGGED, 6, 1, 0]);
    const statuses = Array.from({ length: 9 }, (_, i) => sheet.beside("log_check", 0, i));
    expect(statuses).toEqual([
      "status",
      "✓ accept",
      "✓ accept",
      "✓ accept",
      "× reject",
      "✓ accept",
      "✓ accept",
      "open",
      "",
    ]);
    expect(sheet.beside("log_check", HEAT, 1)).toBeCloseTo(6.59568, 9);
    expect(sheet.beside("log_check", HEAT)).toBe("heat, kJ/in");
  });

  test("one of six rejected: 0.4 % to 64.1 % (Clopper–Pearson by hand: 1 − 0.975^(1/6), and its other end)", () => {
    expect(sheet.value("rate")).toBeCloseTo(1 / 6, 12);
    expect(sheet.value("rate_low")).toBeCloseTo(1 - 0.975 ** (1 / 6), 10);
    // The high end p has 0.025 = (1 − p)^6 + 6p(1 − p)^5.
    const p = Number(sheet.value("rate_high"));
    expect((1 - p) ** 6 + 6 * p * (1 - p) ** 5).toBeCloseTo(0.025, 9);
  });

  test("a lot of 80 at 4 %: letter E, 13 joints, 1 may be bad; three coupons in 8 h", () => {
    expect(["letter", "sample", "accept", "refuse"].map((name) => sheet.value(name))).toEqual([
      "E",
      13,
      1,
      2,
    ]);
    expect(sheet.value("sample_so_far")).toBe("6 of 13");
    expect(sheet.value("coupons_due")).toBe(3);
    expect(sheet.value("coupons_told")).toBe("3: start, each 4 h, end, 0 after stops");
  });

  test("limits of form of a 0.065 in wall: 10, 10 and 15 %", () => {
    for (const [name, limit] of [
      ["concavity_limit", 0.0065],
      ["convexity_limit", 0.0065],
      ["misalignment_limit", 0.009_75],
    ] as const) {
      expect(sheet.value(name)).toBeCloseTo(limit, 12);
    }
  });
});

describe("rows", () => {
  test("one deleted at either end", () => {
    undone(() => {
      sheet.deleteRow(header + 1);
      expect(counts()).toEqual([6, 5, 1, 0]);
      sheet.deleteRow(header + LINES - 1);
      expect(counts()).toEqual([6, 5, 1, 0]);
      expect(sheet.holds()).toBe(true);
    });
  });

  test.each([1, 4, LINES + 1])("one inserted above line %d and typed is judged and counted", (line) => {
    undone(() => {
      sheet.insertRowAt(header + line);
      type(line, ["J-99"], JOINT);
      type(line, GOOD);
      expect(sheet.beside("log_check", 0, line)).toBe("✓ accept");
      expect(counts()).toEqual([8, 7, 1, 0]);
      type(line, [70], AMPS);
      expect(sheet.beside("log_check", 0, line)).toBe("▲ check");
      expect(sheet.value("check_log")).toBe("▲ 1 of 8 lines need attention; the remark beside each says why");
    });
  });

  test("a joint that another line has too is told, in any case", () => {
    undone(() => {
      for (const again of ["j-03", "J-03 ", " J-03"]) {
        type(8, [again], JOINT);
        expect(sheet.value("check_joints")).toBe(
          "▲ a joint is named in more than one line: name each once, a repair as J-01 R1",
        );
        expect(sheet.holds()).toBe(false);
      }
      for (const another of ["J-08 ", "8"]) {
        type(8, [another], JOINT);
        expect(sheet.value("check_joints")).toBe("✓ holds");
      }
      type(9, ["8"], JOINT);
      expect(sheet.value("check_joints")).toMatch(/^▲ a joint is named in more than one line/);
    });
    expect(sheet.value("check_joints")).toBe("✓ holds");
  });

  test("the last line of the log, and one below its end, which is told", () => {
    undone(() => {
      type(LINES, ["J-98"], JOINT);
      type(LINES, GOOD);
      expect(counts()).toEqual([8, 7, 1, 0]);
    });
    undone(() => {
      type(LINES + 2, ["J-97"], JOINT);
      expect(sheet.value("check_log")).toMatch(/^▲ something is typed below the end of the log/);
    });
  });
});

describe("what is typed stays, and what is wrong is told beside it", () => {
  test.each<[column: number, content: string, remark: RegExp]>([
    [AMPS, "56", /^amps: must be within 5 % of 60 A$/],
    [AMPS, "sixty", /^amps: must be a number \(A\)$/],
    [SET, "", /^setAmps: is blank$/],
    [COLOR, "4", /^color: must be at most 3$/],
    [RESULT, "ok", /^result: must be one of accept, reject$/],
  ])("column %d, %j", (column, content, remark) => {
    undone(() => {
      type(2, [content], column);
      expect(String(sheet.beside("log_check", column, 2))).toBe(content);
      expect(sheet.beside("log_check", 0, 2)).toBe("▲ check");
      expect(sheet.beside("log_check", REMARK, 2)).toMatch(remark);
      expect(sheet.holds()).toBe(false);
    });
  });

  test("a status typed over: no verdicts, and that is told", () => {
    undone(() => {
      type(3, ["fine"], 0);
      expect(sheet.value("check_log")).toMatch(/^▲ the verdicts of the log cannot be shown/);
    });
  });

  test("numbers without a joint are told", () => {
    undone(() => {
      type(8, [60, 60], SET);
      expect(sheet.value("check_log")).toBe("▲ a line has numbers but no joint: name it");
    });
  });

  test("two rejected of a sample that allows one: the lot does not pass", () => {
    undone(() => {
      type(5, ["reject"], RESULT);
      expect(sheet.value("check_sample")).toMatch(
        /^▲ more joints were rejected \(2\) than the plan accepts \(1\)/,
      );
    });
  });

  test("a log refused as a whole has no count of lines to check, not a count of 0", () => {
    undone(() => {
      sheet.type("amps_off", "thin");
      expect(sheet.message("log_check")).toContain('ampsOff = "thin"');
      expect(counts()).toEqual([LOGGED, 6, 1, ""]);
      expect(sheet.value("check_log")).toContain('ampsOff = "thin"');
    });
  });

  test("nothing inspected: no rate, and no error", () => {
    undone(() => {
      for (let line = 1; line <= LOGGED; line += 1) type(line, [""], RESULT);
      expect(["inspected", "rate_low", "rate", "rate_high"].map((name) => sheet.value(name))).toEqual([
        0,
        "",
        "",
        "",
      ]);
      expect(sheet.value("check_rate")).toBe("✓ holds");
    });
  });
});

describe("qualification", () => {
  test.each<[typed: Record<string, string>, said: RegExp]>([
    [
      { coupon_wall: "0.03" },
      /^▲ Wall of this tube is not covered by the coupon: 0.065 is not from 0.03 to 0.06$/,
    ],
    [{ coupon_od: "3" }, /^▲ Diameter of this tube is not covered by the coupon: 1 is not from 2.875 up/],
    [{ coupon_od: "0.1" }, /^▲ the wall of the coupon leaves no bore/],
    [{ wall_rule: "ISO 15614-1", coupon_wall: "0.12" }, /^▲ Wall of this tube is not covered/],
  ])("%j", (typed, said) => {
    sheet.having(typed, () => {
      expect(sheet.value("check_qualified")).toMatch(said);
    });
  });

  test("a coupon of 0.035 in covers up to 0.07 in", () => {
    sheet.having({ coupon_wall: "0.035" }, () => {
      expect(sheet.value("check_qualified")).toBe("✓ holds");
      expect(sheet.value("covered")).toBe("covered: wall and diameter");
    });
  });

  test("the heat input that is covered judges every line", () => {
    sheet.having({ coupon_heat: "6.5" }, () => {
      expect(sheet.beside("log_check", REMARK, 1)).toBe("heat input: must be at most 6.5 kJ/in");
    });
    sheet.having({ heat_rule: "ISO 15614-1", coupon_heat: "10" }, () => {
      expect(sheet.beside("log_check", REMARK, 1)).toBe("heat input: must be at least 7.5 kJ/in");
    });
  });
});

test("a full log of 500 lines is judged whole", () => {
  const rows = Array.from({ length: LINES }, (_, i) =>
    [`K-${String(i)}`, "", "", "", "", "", ...GOOD].join("\t"),
  );
  undone(() => {
    const at = { left: 0, right: 0, top: header, bottom: header };
    sheet.command("PASTE_FROM_OS_CLIPBOARD", { target: [at], clipboardContent: { text: rows.join("\n") } });
    expect(counts()).toEqual([LINES, LINES, 0, 0]);
    expect(sheet.beside("log_check", 0, LINES)).toBe("✓ accept");
    expect(sheet.holds()).toBe(true);
  });
});

test("there and back: travel and sizes come back, verdicts stay", async () => {
  const own = await openSheet(weldLog, "US");
  own.insertRowAt(header + 1);
  ["J-00", "", "", "", "", "", ...GOOD].forEach((content, i) => {
    own.typeBeside("log_check", JOINT + i, 1, String(content));
  });
  expect(await own.convert()).toBe("");
  expect(Number(own.beside("log_check", -7, 1))).toBeCloseTo(127, 9);
  expect(Number(own.beside("log_check", -4, 1))).toBeCloseTo(0.0762, 12);
  expect(own.beside("log_check", HEAT)).toBe("heat, kJ/mm");
  expect(own.holds()).toBe(true);
  expect(await own.convert()).toBe("");
  expect([own.beside("log_check", -7, 1), own.beside("log_check", -4, 1)]).toEqual([5, 0.003]);
  expect(own.holds()).toBe(true);
});
