/** The bid's list as people work in it: rows come and go, forty lines are pasted. The price follows, or there is none. */

import { bid } from "../../taskpane/sheets/bid";
import { LINES } from "../../taskpane/sheets/gas/inputs";
import { bidByHand, lineOf, USUAL, whole } from "./bid-by-hand";
import type { HandLine } from "./gas-by-hand";
import { US_LINES, US_TERMS } from "./gas-by-hand";
import type { OpenSheet } from "./open-sheet";
import { openSheet } from "./open-sheet";

/** Columns from the formula of the list on. */
const [JOINTS, REMARK] = [-4, 8];
const NEW: HandLine = [65, 0.75, 0.065, "316L"];
const LAST = US_LINES.length;

let sheet: OpenSheet;
let headerRow = 0;
beforeAll(async () => {
  sheet = await openSheet(bid, "US");
  const { cells } = await sheet.form();
  headerRow = Number(cells.get("takeoff")?.[0]?.at.replace(/\D+/, ""));
});

function typeLine(line: number, cells: readonly (string | number)[]): void {
  cells.forEach((content, i) => {
    sheet.typeBeside("takeoff", JOINTS + i, line, String(content));
  });
}

function paste(rows: readonly (readonly (string | number)[])[]): void {
  const [top, bottom] = [headerRow, headerRow + LAST - 1];
  sheet.command("DELETE_CONTENT", { target: [{ left: 1, right: 4, top, bottom }] });
  const text = rows.map((cells) => cells.join("\t")).join("\n");
  sheet.command("PASTE_FROM_OS_CLIPBOARD", {
    target: [{ left: 1, right: 1, top: headerRow, bottom: headerRow }],
    clipboardContent: { text },
  });
}

/**
 * The price as by hand; joints to start as the sheet has them, which another test checks. `changes`: of size or metal
 * from line to line.
 */
function expectPrice(lines: readonly HandLine[], changes: number): void {
  const all = lines.map(([joints, od, wall, metal]) =>
    lineOf([joints, od * 25.4, wall * 25.4, metal], US_TERMS, USUAL),
  );
  const joints = lines.reduce((sum, [quantity]) => sum + quantity, 0);
  const list = {
    joints,
    hours: all.reduce((sum, { hours }) => sum + hours, 0),
    gas: all.reduce((sum, { gas }) => sum + gas, 0),
  };
  const start = Number(sheet.value("start"));
  expect(start).toBeGreaterThan(joints);
  expect(start).toBeLessThan(1.04 * joints);
  const { exact } = bidByHand(list, { start, changes, usable: 330 * 0.95 });
  expect(sheet.value("lines")).toBe(`${String(lines.length)} of ${String(lines.length)}`);
  expect([sheet.value("joints"), sheet.value("changes")]).toEqual([joints, changes]);
  expect(Number(sheet.value("price_exact")) / exact).toBeCloseTo(1, 8);
  expect(sheet.value("price")).toBe(10 * whole(exact / 10));
  expect([sheet.value("summary"), sheet.value("draft")]).toEqual([expect.stringMatching(/^✓/), ""]);
}

function undone(work: () => void): void {
  sheet.undone(work);
  expectPrice(US_LINES, LAST - 1);
}

test("a row inserted above the first line, below the last row and in the middle, and typed", () => {
  for (const [line, lines, changes] of [
    [1, [NEW, ...US_LINES], LAST],
    [4, [...US_LINES.slice(0, 3), NEW, ...US_LINES.slice(3)], LAST],
    [LINES + 1, [...US_LINES, NEW], LAST],
  ] as const) {
    undone(() => {
      sheet.insertRowAt(headerRow + line);
      typeLine(line, NEW);
      expectPrice(lines, changes);
    });
  }
});

test("the first line deleted, and the last", () => {
  undone(() => {
    sheet.deleteRow(headerRow + 1);
    expectPrice(US_LINES.slice(1), LAST - 2);
  });
  undone(() => {
    sheet.deleteRow(headerRow + LAST);
    expectPrice(US_LINES.slice(0, -1), LAST - 2);
  });
});

test("forty lines pasted with their own header, sizes as people write them: all counted, by size too", () => {
  undone(() => {
    const sizes: readonly (readonly [written: string, od: number, wall: number, metal: string])[] = [
      ["1/2", 0.5, 0.049, "316L"],
      ["3/4", 0.75, 0.065, "316L"],
      ["1", 1, 0.065, "316L"],
      ["1-1/2", 1.5, 0.065, "316L"],
      ["2", 2, 0.065, "304L"],
    ];
    const forty = Array.from({ length: 40 }, (_, i) => {
      const [written, od, wall, metal] = sizes[i % sizes.length] ?? (["1", 1, 0.065, "316L"] as const);
      return { pasted: [i + 1, written, wall, metal], line: [i + 1, od, wall, metal] satisfies HandLine };
    });
    paste([["Qty", "OD", "Wall", "Material"], ...forty.map(({ pasted }) => pasted)]);
    // Every line is of another size than the one before.
    expectPrice(
      forty.map(({ line }) => line as HandLine),
      39,
    );
    // 1 + 6 + … + 36 of the first size.
    expect([0, 1, 2, 3].map((column) => sheet.beside("by_size", column))).toEqual([0.5, 0.049, "316L", 148]);
    expect(sheet.beside("by_size", 2, 5)).toBe("");
    // Five sizes, all joints as one number: 40·41/2.
    expect(sheet.value("joints")).toBe(820);
  });
});

test("a line that cannot be counted is told in its remark, and there is no price", () => {
  undone(() => {
    typeLine(2, [220, 1, 0.6, "316L"]);
    expect(sheet.beside("takeoff", REMARK, 2)).toMatch(/^wall: must be .*half of od/);
    expect(sheet.value("lines")).toBe("5 of 6");
    expect(sheet.value("check_list")).toMatch(/^▲ 1 of 6 lines not counted/);
    for (const name of ["joints", "start", "hours", "cost", "price", "customer_price"]) {
      expect([name, sheet.value(name)]).toEqual([name, ""]);
    }
    expect(sheet.value("draft")).toMatch(/^▲ Draft/);
  });
});

test("more sizes than the page has rows: the last row adds up the others", () => {
  undone(() => {
    const lines = Array.from({ length: 25 }, (_, i): HandLine => [10, 1 + i / 16, 0.065, "316L"]);
    paste(lines);
    expectPrice(lines, 24);
    expect(sheet.beside("by_size", 2, 19)).toBe("other sizes");
    // Nineteen sizes have a row of their own.
    expect(sheet.beside("by_size", 3, 19)).toBe(60);
  });
});

test("an empty list has no price", () => {
  undone(() => {
    sheet.command("DELETE_CONTENT", {
      target: [{ left: 1, right: 4, top: headerRow, bottom: headerRow + LAST - 1 }],
    });
    expect(sheet.value("check_list")).toBe("▲ no lines to count");
    expect([sheet.value("price"), sheet.value("customer_price")]).toEqual(["", ""]);
  });
});

test("a conversion in between leaves hours and joints as they were", async () => {
  const own = await openSheet(bid, "US");
  const before = ["joints", "start", "joint_hours", "labor_cost"].map((name) => Number(own.value(name)));
  expect(await own.convert()).toBe("");
  ["joints", "start", "joint_hours", "labor_cost"].forEach((name, i) => {
    expect(Number(own.value(name)) / (before[i] ?? NaN)).toBeCloseTo(1, 8);
  });
  expect(own.holds()).toBe(true);
  expect(await own.convert()).toBe("");
  expect(Number(own.beside("takeoff", -3, 1))).toBe(0.5);
  expect(own.holds()).toBe(true);
});
