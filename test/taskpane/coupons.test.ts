/** The coupon sheet as people work in it: the shop's number is COUPON_EFFICIENCY's, and what cannot be met is named. */

import { coupons } from "../../taskpane/sheets/coupons";
import { COUPONS, LINES } from "../../taskpane/sheets/coupons/inputs";
import { expectNear, number, table } from "../bead";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

const COUNT = COUPONS.length;
/** Columns from the formula of the list on. */
const [OD, AMPS, FACE, ROOT, MEASURED, OWN, PREDICTED, REMARK] = [-7, -5, -2, -1, 0, 1, 2, 5];

const column = (values: readonly number[]): number[][] => values.map((value) => [value]);

describe.each(["US", "SI"] as const)("in %s", (units) => {
  let sheet: OpenSheet;
  beforeAll(async () => {
    sheet = await openSheet(coupons, units);
  });
  const undone = (work: () => void): void => {
    sheet.undone(work);
    expect(sheet.value("coupons")).toBe(`${String(COUNT)} of ${String(COUNT)}`);
    expect(sheet.holds()).toBe(true);
  };
  const type = (line: number, at: number, content: string): void => {
    sheet.typeBeside("coupon_table", at, line, content);
  };

  /** By hand: COUPON_EFFICIENCY of all lines, one tube, its travel at the mean radius. */
  const byHand = (side: "mean" | "face" = "mean"): number[] => {
    const od = units === "US" ? 1 : 25.4;
    const wall = units === "US" ? 0.065 : 1.65;
    const width = column(
      COUPONS.map(({ face, root }) => (side === "face" ? face[units] : (face[units] + root[units]) / 2)),
    );
    return (
      table(
        "COUPON_EFFICIENCY",
        ...[wall, column(COUPONS.map(({ amps }) => amps)), column(COUPONS.map(({ volts }) => volts))],
        ...[(units === "US" ? 5.1 : 129.5) * (1 - wall / od), width, side, null, null, null, units],
      )[0] ?? []
    ).map(Number);
  };

  test("the shop's efficiency and both intervals are COUPON_EFFICIENCY's", () => {
    const names = ["shop_efficiency", "shop_low", "shop_high", "next_low", "next_high"];
    const expected = byHand();
    names.forEach((name, i) => {
      expectNear(Number(sheet.value(name)), expected[i] ?? NaN, 1e-11);
    });
    expect(sheet.value("more_coupons")).toBe(3 * COUNT);
  });

  test("each line: what was measured, and what the shop's efficiency predicts", () => {
    const wall = units === "US" ? 0.065 : 1.65;
    const travel = (units === "US" ? 5.1 : 129.5) * (1 - wall / (units === "US" ? 1 : 25.4));
    COUPONS.forEach(({ amps, volts, face, root }, i) => {
      expectNear(Number(sheet.beside("coupon_table", MEASURED, i + 1)), (face[units] + root[units]) / 2);
      expectNear(
        Number(sheet.beside("coupon_table", PREDICTED, i + 1)),
        number(
          "MELT_WIDTH",
          wall,
          amps,
          travel,
          null,
          volts,
          Number(sheet.value("shop_efficiency")),
          null,
          null,
          units,
        ),
        1e-9,
      );
    });
    for (let at = MEASURED; at <= REMARK; at += 1)
      expect(sheet.beside("coupon_table", at, COUNT + 1)).toBe("");
  });

  test("without roots the faces count", () => {
    undone(() => {
      for (let line = 1; line <= COUNT; line += 1) type(line, ROOT, "");
      expectNear(Number(sheet.value("shop_efficiency")), byHand("face")[0] ?? NaN, 1e-11);
      expect(sheet.holds()).toBe(true);
    });
  });

  test("a coupon that cannot be met is named, counted nowhere, and the sheet says how many", () => {
    undone(() => {
      type(2, AMPS, "20");
      expect(sheet.beside("coupon_table", REMARK, 2)).toMatch(/^width: takes [\d.]+ of the arc's power/);
      expect(sheet.beside("coupon_table", OWN, 2)).toBe("");
      expect(sheet.value("coupons")).toBe("5 of 6");
      expect(sheet.value("check_list")).toBe("▲ 1 of 6 coupons not counted; the remark beside each says why");
      expect(Number(sheet.value("shop_efficiency"))).toBeGreaterThan(0.7);
    });
  });

  test("an outlier is named and needs attention", () => {
    undone(() => {
      type(3, AMPS, "42");
      expect(sheet.beside("coupon_table", REMARK, 3)).toMatch(/^outlier: /);
      expect(sheet.value("check_outliers")).toBe(
        "▲ 1 of 6 coupons stand apart (#3): find out why before the efficiency is used",
      );
    });
  });

  test("four coupons are few, one has no interval, none no efficiency", () => {
    undone(() => {
      const clear = (line: number): void => {
        for (let at = OD; at <= ROOT; at += 1) type(line, at, "");
      };
      clear(6);
      clear(5);
      expect(sheet.value("check_count")).toBe("▲ only 4 coupons: under 5 the interval is wide");
      expect(sheet.value("more_coupons")).toBe(12);
      clear(4);
      clear(3);
      clear(2);
      expect(["shop_low", "next_high", "more_coupons"].map((name) => sheet.value(name))).toEqual([
        "",
        "",
        "",
      ]);
      expect(sheet.value("check_efficiency")).toMatch(/^▲ no efficiency with its intervals/);
      expect(Number(sheet.value("shop_efficiency"))).toBeGreaterThan(0.7);
      clear(1);
      expect(sheet.value("shop_efficiency")).toBe("");
      expect(sheet.value("check_list")).toBe("▲ no coupons to work out");
    });
  });
});

describe("rows of the list", () => {
  let sheet: OpenSheet;
  let headerRow = 0;
  beforeAll(async () => {
    sheet = await openSheet(coupons, "US");
    const { cells } = await sheet.form();
    headerRow = Number(cells.get("coupon_table")?.[0]?.at.replace(/\D+/, ""));
  });

  test("inserted at either edge and in the middle, and typed", () => {
    for (const line of [1, 4, LINES + 1]) {
      sheet.undone(() => {
        sheet.insertRowAt(headerRow + line);
        ["1", "0.065", "50", "9.4", "5.1", "0.195", "0.172"].forEach((content, i) => {
          sheet.typeBeside("coupon_table", OD + i, line, content);
        });
        expect(sheet.value("coupons")).toBe("7 of 7");
        expect(sheet.value("more_coupons")).toBe(21);
        expect(sheet.holds()).toBe(true);
      });
    }
  });

  test("a date of a welding does not make a line, a width that the sheet turned into a date is told", () => {
    sheet.undone(() => {
      sheet.typeBeside("coupon_table", OD - 3, COUNT + 1, "2026-05-04");
      expect(sheet.value("coupons")).toBe("6 of 6");
      sheet.typeBeside("coupon_table", FACE, 2, "46024");
      expect(sheet.beside("coupon_table", REMARK, 2)).toMatch(
        /^face: looks like a size that the sheet turned/,
      );
      expect(sheet.holds()).toBe(false);
    });
  });

  test("a cell that the formula fills is typed over, and something below the end: told", () => {
    sheet.undone(() => {
      sheet.typeBeside("coupon_table", PREDICTED, 2, "7");
      expect(sheet.value("check_list")).toMatch(/^▲ no table: a cell that the list's formula fills/);
      expect(sheet.value("shop_efficiency")).toBe("");
    });
    sheet.undone(() => {
      sheet.typeBeside("coupon_table", OD, LINES + 2, "1");
      expect(sheet.value("check_list")).toMatch(/^▲ something is typed below the end of the list/);
    });
  });
});
