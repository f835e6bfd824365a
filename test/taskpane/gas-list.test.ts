/** The joint list as people work in it: rows come and go, lists are pasted. No line is lost, and the totals are as by hand. */

import { gas } from "../../taskpane/sheets/gas";
import { LINES } from "../../taskpane/sheets/gas/inputs";
import type { HandLine } from "./gas-by-hand";
import { gasOf, hoursOf, SI_LINES, SI_TERMS, sum, US_LINES, worked, workedInches } from "./gas-by-hand";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

const [FIRST, SECOND, THIRD, ...REST] = US_LINES as [HandLine, HandLine, HandLine, ...HandLine[]];
const LAST = US_LINES.length;
const NEW: HandLine = [65, 0.75, 0.065, "316L"];
/** Columns from the formula of the list on. */
const [JOINTS, REMARK] = [-4, 8];

let sheet: OpenSheet;
let headerRow = 0;
beforeAll(async () => {
  sheet = await openSheet(gas, "US");
  const { cells } = await sheet.form();
  headerRow = Number(cells.get("takeoff")?.[0]?.at.replace(/\D+/, ""));
});

/** Types one line of the list, the header being line 0. */
function type(line: number, cells: readonly (string | number)[], columns = JOINTS): void {
  cells.forEach((content, i) => {
    sheet.typeBeside("takeoff", columns + i, line, String(content));
  });
}

function rowOf(line: number): number {
  return headerRow + line;
}

/** Presses Delete on the typed cells of some lines. */
function clear(first: number, last = first): void {
  const zone = { left: 1, right: 4, top: rowOf(first) - 1, bottom: rowOf(last) - 1 };
  sheet.command("DELETE_CONTENT", { target: [zone] });
}

/** Totals and "n of n" as by hand, and all checks hold. */
function expectTotals(lines: readonly HandLine[]): void {
  const all = lines.map(workedInches);
  expect(sheet.value("lines")).toBe(`${String(lines.length)} of ${String(lines.length)}`);
  expect(sheet.value("joints")).toBe(sum(all, "joints"));
  expect(Number(sheet.value("gas_used")) / gasOf(all)).toBeCloseTo(1, 8);
  expect(Number(sheet.value("hours")) / hoursOf(all)).toBeCloseTo(1, 8);
  expect(sheet.value("summary")).toMatch(/^✓/);
}

/** Leaves the list as it was found. */
function undone(work: () => void): void {
  sheet.undone(work);
  expectTotals(US_LINES);
}

describe("rows of the list", () => {
  test("the first line deleted", () => {
    undone(() => {
      sheet.deleteRow(rowOf(1));
      expectTotals(US_LINES.slice(1));
    });
  });

  test("the last line deleted, and the last row before the end", () => {
    undone(() => {
      sheet.deleteRow(rowOf(LAST));
      expectTotals(US_LINES.slice(0, -1));
      sheet.deleteRow(rowOf(LINES - 1));
      expectTotals(US_LINES.slice(0, -1));
    });
  });

  test("the first line cleared, and a line in the middle", () => {
    undone(() => {
      clear(1);
      expectTotals(US_LINES.slice(1));
      clear(3);
      expectTotals([SECOND, ...REST]);
    });
  });

  test("a row inserted above the first line and typed", () => {
    undone(() => {
      sheet.insertRowAt(rowOf(1));
      expectTotals(US_LINES);
      type(1, NEW);
      expectTotals([NEW, ...US_LINES]);
      expect(sheet.beside("takeoff", REMARK, 1)).toBe("");
    });
  });

  test("a row inserted below the last row of the list and typed", () => {
    undone(() => {
      sheet.insertRowAt(rowOf(LINES + 1));
      type(LINES + 1, NEW);
      expectTotals([...US_LINES, NEW]);
    });
  });

  test("a row inserted in the middle and typed", () => {
    undone(() => {
      sheet.insertRowAt(rowOf(4));
      type(4, NEW);
      expectTotals([FIRST, SECOND, THIRD, NEW, ...REST]);
    });
  });

  test("a line that cannot be, in a row inserted at either edge, is told and not counted", () => {
    for (const line of [1, LINES + 1]) {
      undone(() => {
        sheet.insertRowAt(rowOf(line));
        type(line, [5, 1, 0.6, "316L"]);
        expect(sheet.value("lines")).toBe("6 of 7");
        expect(sheet.beside("takeoff", REMARK, line)).toMatch(/^wall: /);
        expect(sheet.value("check_list")).toBe("▲ 1 of 7 lines not counted; the remark beside each says why");
      });
    }
  });

  test("a line typed in the line that ends the list is counted; below it nothing is, and that is told", () => {
    undone(() => {
      type(LINES + 1, NEW);
      expectTotals([...US_LINES, NEW]);
    });
    undone(() => {
      type(LINES + 2, ["1"], -3);
      expect(sheet.value("check_list")).toMatch(/^▲ something is typed below the end of the list/);
    });
  });

  test("a row between the end and the totals takes the totals away, and that is told", () => {
    undone(() => {
      sheet.insertRowAt(rowOf(LINES + 2));
      expect(sheet.value("check_list")).toMatch(/^▲ no totals/);
      expect(sheet.value("cost")).toBe("");
    });
  });

  test("sorted by joints: each line keeps its cells, the totals stay", () => {
    undone(() => {
      const top = rowOf(1) - 1;
      const zone = { left: 1, right: 4, top, bottom: top + LAST - 1 };
      sheet.command("SORT_CELLS", { col: 1, row: top, zone, sortDirection: "asc" });
      const joints = US_LINES.map((_, i) => sheet.beside("takeoff", JOINTS, i + 1));
      expect(joints).toEqual([18, 36, 64, 90, 120, 220]);
      expect(joints).toEqual(US_LINES.map((_, i) => sheet.beside("takeoff", 0, i + 1)));
      expectTotals(US_LINES);
    });
  });

  test("a cell that the list's formula fills is typed over: no totals, and that is told", () => {
    undone(() => {
      type(2, ["7"], 2);
      expect(sheet.value("takeoff")).toBe("#SPILL!");
      expect(sheet.value("check_list")).toMatch(/^▲ no totals: a cell that the list's formula fills/);
      for (const name of ["joints", "gas_used", "hours", "cost"]) expect(sheet.value(name)).toBe("");
    });
  });
});

describe("what a line may hold", () => {
  test("an empty list has no totals and says so, a price or not", () => {
    undone(() => {
      clear(1, LAST);
      expect(sheet.value("check_list")).toBe("▲ no lines to count");
      const totals =
        "joints gas_used purge_share gas_bought hours containers_exact containers cost cost_per_joint";
      for (const name of totals.split(" ")) expect([name, sheet.value(name)]).toEqual([name, ""]);
      expect(sheet.holds()).toBe(false);
      type(1, [5, 1]);
      expect(sheet.value("lines")).toBe("0 of 1");
      expect(sheet.value("check_list")).toMatch(/^▲ 1 of 1 lines? not counted/);
      for (const name of totals.split(" ")) expect([name, sheet.value(name)]).toEqual([name, ""]);
    });
  });

  test.each<[string, readonly (string | number)[], RegExp]>([
    ["a wall that leaves no bore", [220, 1, 0.6, "316L"], /^wall: must be .*half of od/],
    ["no wall", [220, 1, "", "316L"], /^wall: /],
    ["TBD", ["TBD", "", "", ""], /^quantity: /],
    ["half a joint", [0.5, 1, 0.065, "316L"], /^quantity: /],
    ["a metal that is none", [220, 1, 0.065, "unobtainium"], /^material: /],
    ["a comma", [220, "25,4", "1,65", "316L"], /^od: .*comma/],
    ["a date", [220, "3-Jan", 0.065, "316L"], /^od: /],
  ])("%s in the second line: no numbers beside it, its reason, and the rest counted", (_, cells, reason) => {
    undone(() => {
      clear(2);
      type(2, cells);
      const rest = [FIRST, THIRD, ...REST].map(workedInches);
      expect(sheet.beside("takeoff", REMARK, 2)).toMatch(reason);
      expect(sheet.beside("takeoff", 2, 2)).toBe("");
      expect(sheet.value("lines")).toBe("5 of 6");
      expect(sheet.value("joints")).toBe(sum(rest, "joints"));
      expect(Number(sheet.value("gas_used")) / gasOf(rest)).toBeCloseTo(1, 8);
      expect(sheet.holds()).toBe(false);
    });
  });

  test("a size in the column of joints, which a sheet turned into a date, is told", () => {
    undone(() => {
      type(1, ["46024"]);
      expect(sheet.value("check_list")).toMatch(/^▲ a line has more than 36000 joints/);
    });
  });

  test("numbers as text, other names of metals and sizes as people write them", () => {
    const same: readonly (readonly string[])[] = [
      ['="220"', "1", "0.065", "316L"],
      ["220", "1 in", "0.065 in", "SS316L"],
      ["220", '1"', "1.651 mm", "316"],
      ["220", "25.4 mm", '0.065"', "TP316L"],
      ["220", "1.0", ".065", "1.4404"],
      ["220", " 1 ", "0.0650", "s31603"],
    ];
    for (const cells of same) {
      undone(() => {
        type(2, cells);
        expectTotals(US_LINES);
      });
    }
  });
});

describe("a pasted list", () => {
  /** Pastes rows of cells, tabs between them, from the first line of the list on. */
  function paste(rows: readonly (readonly (string | number)[])[]): void {
    const line = { left: 1, right: 1, top: rowOf(1) - 1, bottom: rowOf(1) - 1 };
    const text = rows.map((cells) => cells.join("\t")).join("\n");
    sheet.command("PASTE_FROM_OS_CLIPBOARD", { target: [line], clipboardContent: { text } });
  }

  test("a title, a header, blank rows, sizes as people write them and names of metals: each line read or told", () => {
    undone(() => {
      clear(1, LAST);
      paste([
        ["Weld map, skid 3", "", "", ""],
        ["Qty", "OD (in)", "Wall (in)", "Material"],
        ["", "", "", ""],
        ["12", "1/2", "0.049", "SS316L"],
        [" 8 ", '3/4"', ".065", "316"],
        ["6", "1-1/2", "0.065 in", "304/304L"],
        ["", "", "", ""],
        ["4", "2 in", "1.651 mm", "TP304L"],
        ["2", "2,5", "0.065", "316L"],
        ["TBD", "3", "0.065", "316L"],
        ["1", "4", "0.083", "304L"],
      ]);
      const read: HandLine[] = [
        [12, 0.5, 0.049, "316L"],
        [8, 0.75, 0.065, "316L"],
        [6, 1.5, 0.065, "304L"],
        [4, 2, 0.065, "304L"],
        [1, 4, 0.083, "304L"],
      ];
      const remarks = Array.from({ length: 11 }, (_, i) => sheet.beside("takeoff", REMARK, i + 1));
      expect(remarks).toEqual([
        expect.stringMatching(/^quantity: /),
        "remark",
        "",
        "",
        "",
        "",
        "",
        "",
        expect.stringMatching(/^od: .*comma/),
        expect.stringMatching(/^quantity: /),
        "",
      ]);
      // The title and the two lines that cannot be read are told; the header is no line.
      expect(sheet.value("lines")).toBe("5 of 8");
      expect(sheet.value("check_list")).toBe("▲ 3 of 8 lines not counted; the remark beside each says why");
      const all = read.map(workedInches);
      expect(sheet.value("joints")).toBe(sum(all, "joints"));
      expect(Number(sheet.value("gas_used")) / gasOf(all)).toBeCloseTo(1, 8);
      expect(Number(sheet.value("hours")) / hoursOf(all)).toBeCloseTo(1, 8);
    });
  });

  test("its header and blank rows alone are no reason for attention", () => {
    undone(() => {
      clear(1, LAST);
      paste([["joints", "OD, in", "wall, in", "material"], [], [FIRST[0], "1/2", "0.049", "316L"], [], []]);
      expectTotals([FIRST]);
    });
  });

  test.each([54, LINES])("%d lines: all of them counted", (count) => {
    undone(() => {
      const lines = Array.from({ length: count }, (_, i): HandLine => {
        const [, od, wall, metal] = US_LINES[i % LAST] ?? FIRST;
        return [i + 1, od, wall, metal];
      });
      paste(lines);
      expectTotals(lines);
    });
  });

  test("more lines than the list has: what does not fit is told", () => {
    undone(() => {
      paste(Array.from({ length: LINES + 2 }, () => SECOND));
      expect(sheet.holds()).toBe(false);
    });
  });
});

describe("conversion", () => {
  test("there and back: gas, hours and cost stay, sizes come back as they were", async () => {
    const own = await openSheet(gas, "US");
    const edges = [LINES + 1, 3, 1];
    for (const line of edges) {
      own.insertRowAt(headerRow + line);
      NEW.forEach((content, i) => {
        own.typeBeside("takeoff", JOINTS + i, line, String(content));
      });
    }
    const names = ["joints", "hours", "purge_share", "cost"];
    const before = names.map((name) => Number(own.value(name)));
    const liters = Number(own.value("gas_used")) * 28.316_846_592;
    expect(await own.convert()).toBe("");
    for (const line of [1, 4, LINES + 3]) expect(Number(own.beside("takeoff", -3, line))).toBe(19.05);
    names.forEach((name, i) => {
      expect(own.value(name)).toBeCloseTo(before[i] ?? NaN, 8);
    });
    expect(own.value("lines")).toBe("9 of 9");
    expect(Number(own.value("gas_used")) / liters).toBeCloseTo(1, 9);
    expect(own.holds()).toBe(true);
    expect(own.beside("takeoff", -3)).toBe("OD, mm");
    expect(await own.convert()).toBe("");
    expect([own.beside("takeoff", -3), Number(own.beside("takeoff", -3, 1))]).toEqual(["OD, in", 0.75]);
    expect(own.holds()).toBe(true);
  });

  test("a list in millimeters by hand, a size in inches among them", async () => {
    const si = await openSheet(gas, "SI");
    si.typeBeside("takeoff", -3, 2, "1 in");
    const all = SI_LINES.map((line) => worked(line, SI_TERMS));
    expect(Number(si.value("gas_used")) / gasOf(all)).toBeCloseTo(1, 8);
    expect(si.holds()).toBe(true);
    // A fraction is inches: in millimeters it is refused unless it says so.
    si.typeBeside("takeoff", -3, 2, "1-1/2");
    expect(si.beside("takeoff", REMARK, 2)).toMatch(/^od: .*fraction/);
    expect(si.value("lines")).toBe("5 of 6");
  });
});
