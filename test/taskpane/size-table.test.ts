/** The size table as people work in it: rows come and go, lists are pasted. Each row is SCHEDULE's, none is lost. */

import type { Units } from "../../src/quantity";
import { readFile } from "../../taskpane/files/read";
import { snapshotOf } from "../../taskpane/hosts/browser/engine-sheet";
import { fileOf } from "../../taskpane/hosts/browser/save";
import { sizeTable } from "../../taskpane/sheets/size-table";
import { LINES, SIZES } from "../../taskpane/sheets/size-table/inputs";
import { expectNear } from "../bead";
import { rowOf } from "../schedule-rows";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

/** Columns from the formula of the list on. */
const [OD, WALL, MATERIAL, REMARK] = [-3, -2, -1, 20];
const LABELS: Readonly<Record<number, string>> = {
  0: "Standoff",
  1: "Electrode diameter",
  3: "Bead width",
  5: "Rotor speed",
  7: "Sector 1 mean",
  10: "Sector 4 mean",
  11: "Sector 1 peak",
  14: "Peak share of the pulse",
  16: "Heat input, hottest sector",
  17: "Arc time",
};
/** The sizes of the list as numbers. */
const NUMBERS: Readonly<Record<Units, readonly (readonly [od: number, wall: number])[]>> = {
  US: [
    [0.5, 0.049],
    [0.75, 0.065],
    [1, 0.065],
    [1.5, 0.065],
    [2, 0.065],
    [3, 0.065],
    [4, 0.083],
  ],
  SI: [
    [12.7, 1.25],
    [19.05, 1.65],
    [25.4, 1.65],
    [38.1, 1.65],
    [50.8, 1.65],
    [76.2, 1.65],
    [101.6, 2.11],
  ],
};
const COUNT = SIZES.length;

function expectRow(sheet: OpenSheet, line: number, given: Parameters<typeof rowOf>[0]): void {
  const scheduled = rowOf(given);
  for (const [column, label] of Object.entries(LABELS)) {
    expectNear(Number(sheet.beside("size_table", Number(column), line)), scheduled(label));
  }
}

function type(sheet: OpenSheet, line: number, cells: readonly (string | number)[]): void {
  cells.forEach((content, i) => {
    sheet.typeBeside("size_table", OD + i, line, String(content));
  });
}

describe.each(["US", "SI"] as const)("in %s", (units) => {
  let sheet: OpenSheet;
  beforeAll(async () => {
    sheet = await openSheet(sizeTable, units);
  });
  const undone = (work: () => void): void => {
    sheet.undone(work);
    expect(sheet.value("sizes")).toBe(`${String(COUNT)} of ${String(COUNT)}`);
    expect(sheet.holds()).toBe(true);
  };

  test("every row is SCHEDULE's of its size, and nothing stands beside a blank line", () => {
    SIZES.forEach(([, , material], i) => {
      const [od, wall] = NUMBERS[units][i] ?? [];
      expectRow(sheet, i + 1, { od, wall, material, units });
    });
    for (let column = 0; column <= REMARK; column += 1) {
      expect(sheet.beside("size_table", column, COUNT + 1)).toBe("");
    }
  });

  test("what is summed up: how many, the largest current and heat input of them", () => {
    const rows = SIZES.map(([, , material], i) => {
      const [od, wall] = NUMBERS[units][i] ?? [];
      return rowOf({ od, wall, material, units });
    });
    const means = rows.flatMap((row) => [1, 2, 3, 4].map((sector) => row(`Sector ${String(sector)} mean`)));
    expectNear(Number(sheet.value("largest_mean")), Math.max(...means));
    expectNear(
      Number(sheet.value("largest_heat")),
      Math.max(...rows.map((row) => row("Heat input, hottest sector"))),
    );
    expect([sheet.value("sizes"), sheet.value("remarked")]).toEqual([
      `${String(COUNT)} of ${String(COUNT)}`,
      0,
    ]);
  });

  test("steady, and with the shop's efficiency: every row follows, and the checks hold", () => {
    const [od, wall] = NUMBERS[units][2] ?? [];
    sheet.having({ style: "steady" }, () => {
      expectNear(
        Number(sheet.beside("size_table", 7, 3)),
        rowOf({ od, wall, style: "steady", units })("Sector 1 mean"),
      );
      expect([11, 12, 13, 14].map((column) => sheet.beside("size_table", column, 3))).toEqual([
        "",
        "",
        "",
        "",
      ]);
      expect(sheet.holds()).toBe(true);
    });
    sheet.having({ efficiency: "0.7" }, () => {
      expectRow(sheet, 3, { od, wall, efficiency: 0.7, units });
      expect(sheet.holds()).toBe(true);
    });
  });

  test("a size that cannot be: its row says why, the others stand, and the sheet says how many", () => {
    undone(() => {
      type(sheet, 2, [units === "US" ? "1/8" : "3.2", units === "US" ? "0.065" : "1.65", "316L"]);
      expect(sheet.beside("size_table", REMARK, 2)).toMatch(/^wall: must be less than half of od/);
      for (let column = 0; column < REMARK; column += 1)
        expect(sheet.beside("size_table", column, 2)).toBe("");
      expect(sheet.value("sizes")).toBe("6 of 7");
      expect(sheet.value("check_list")).toBe(
        "▲ 1 of 7 sizes without a schedule; the remark beside each says why",
      );
    });
  });

  test("a remark beside numbers needs attention, and is counted", () => {
    undone(() => {
      type(sheet, 2, [units === "US" ? "2" : "50.8", units === "US" ? "0.154" : "3.91", "316L"]);
      expect(sheet.beside("size_table", REMARK, 2)).toMatch(/^Thick wall: /);
      expect(sheet.value("remarked")).toBe(1);
      expect(sheet.value("check_remarks")).toBe(
        "▲ 1 of 7 sizes with a remark: read it before the size is welded",
      );
    });
  });

  test("the last lines cleared, all of them, and one typed again", () => {
    undone(() => {
      for (let line = 1; line <= COUNT; line += 1) type(sheet, line, ["", "", ""]);
      expect(sheet.value("check_list")).toBe("▲ no sizes to work out");
      expect([sheet.value("largest_mean"), sheet.value("largest_heat")]).toEqual(["", ""]);
      type(sheet, 5, [units === "US" ? "1" : "25.4", units === "US" ? "0.065" : "1.65"]);
      expect(sheet.value("sizes")).toBe("1 of 1");
      expect(sheet.holds()).toBe(true);
    });
  });
});

describe("rows of the list", () => {
  let sheet: OpenSheet;
  let headerRow = 0;
  beforeAll(async () => {
    sheet = await openSheet(sizeTable, "US");
    const { cells } = await sheet.form();
    headerRow = Number(cells.get("size_table")?.[0]?.at.replace(/\D+/, ""));
  });

  test("inserted at either edge and in the middle, and typed", () => {
    for (const line of [1, 4, LINES + 1]) {
      sheet.undone(() => {
        sheet.insertRowAt(headerRow + line);
        type(sheet, line, ["1", "0.065", "304L"]);
        expect(sheet.value("sizes")).toBe("8 of 8");
        expectRow(sheet, line, { od: 1, wall: 0.065, material: "304L" });
        expect(sheet.holds()).toBe(true);
      });
    }
  });

  test("a header pasted once more is no size, and has the headings beside it", () => {
    sheet.undone(() => {
      type(sheet, COUNT + 1, ["O.D. (in)", "Wall", "Mat'l"]);
      expect(sheet.beside("size_table", REMARK, COUNT + 1)).toBe("remark");
      expect(sheet.value("sizes")).toBe("7 of 7");
      expect(sheet.holds()).toBe(true);
    });
  });

  test.each([
    ["a date", ["3-Jan", "0.065"], /^od: looks like a date; type a size/],
    ["a decimal comma", ["25,4", "1,65"], /^od: contains a comma/],
    ["no wall", ["1", ""], /^wall: needs a number/],
    ["millimeters among inches", ["25.4", "1.65"], /^od: no tube of this trade/],
    ["a metal that is none", ["1", "0.065", "unobtainium"], /^material: /],
  ])("%s: its reason, and the rest", (_, cells, reason) => {
    sheet.undone(() => {
      type(sheet, 2, ["", "", ""]);
      type(sheet, 2, cells);
      expect(sheet.beside("size_table", REMARK, 2)).toMatch(reason);
      expect(sheet.value("sizes")).toBe("6 of 7");
      expect(sheet.holds()).toBe(false);
    });
  });

  test("a cell that the formula fills is typed over: no table, and that is told", () => {
    sheet.undone(() => {
      sheet.typeBeside("size_table", 3, 2, "7");
      expect(sheet.value("size_table")).toBe("#SPILL!");
      expect(sheet.value("check_list")).toMatch(/^▲ no table: a cell that the list's formula fills/);
    });
  });

  test("typed below the end: told", () => {
    sheet.undone(() => {
      sheet.typeBeside("size_table", OD, LINES + 2, "1");
      expect(sheet.value("check_list")).toMatch(/^▲ something is typed below the end of the list/);
    });
  });

  test("every column of the list is typed, and the material is the third", () => {
    expect([OD, WALL, MATERIAL].map((column) => sheet.beside("size_table", column, 1))).toEqual([
      "1/2",
      "0.049",
      "316L",
    ]);
  });
});

describe("what helps to read the list", () => {
  let sheet: OpenSheet;
  beforeAll(async () => {
    sheet = await openSheet(sizeTable, "US");
  });
  /** The cell with the formula of the list. */
  const formulaAt = (): { readonly sheetId: string; readonly col: number; readonly row: number } => {
    const { getters } = sheet.model;
    const found = getters.getNamedRanges().find(({ name }) => name.startsWith("size_table__"));
    if (found === undefined) throw new Error("the sheet has no list");
    return { sheetId: found.range.sheetId, col: found.range.zone.left, row: found.range.zone.top };
  };
  const fill = (column: number, line: number): string | undefined => {
    const { sheetId, col, row } = formulaAt();
    const position = { sheetId, col: col + column, row: row + line };
    return sheet.model.getters.getCellComputedStyle(position).fillColor;
  };

  test("the row of a size that cannot be is gray from end to end, and no other, blank ones among them", () => {
    type(sheet, 2, ["1/4", "0.2", "316L"]);
    expect([fill(0, 2), fill(REMARK, 2)]).toEqual(["#E6EAEC", "#E6EAEC"]);
    expect([fill(0, 1), fill(0, 3), fill(0, COUNT + 1), fill(REMARK, COUNT + 1)]).not.toContain("#E6EAEC");
  });

  test("a filter by material hides the other lines, and what is summed up stays", () => {
    const { sheetId, col, row } = formulaAt();
    const before = sheet.value("largest_heat");
    sheet.command("UPDATE_FILTER", {
      sheetId,
      col: col + MATERIAL,
      row,
      value: { filterType: "values", hiddenValues: ["304l"] },
    });
    const hidden = Array.from({ length: COUNT }, (_, i) =>
      sheet.model.getters.isRowHidden(sheetId, row + 1 + i),
    );
    expect(hidden).toEqual(SIZES.map(([, , material]) => material === "304L"));
    expect(sheet.value("largest_heat")).toBe(before);
  });

  test("a file keeps the filter, the gray and the frozen columns, and an opened one has them again", async () => {
    const { sheets } = await readFile(await fileOf(sheet.model));
    const [read] = sheets;
    const snapshot = snapshotOf(sheet.model, sheet.model.getters.getActiveSheetId());
    expect(read?.filter).toBe(snapshot.filter);
    expect(read?.grayed).toEqual(snapshot.grayed);
    expect([read?.frozenColumns, snapshot.frozenColumns]).toEqual([4, 4]);
    expect(snapshot.grayed).toHaveLength(1);
  });
});
