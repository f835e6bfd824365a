/** The joint list as a person works in it: rows come and go by menu and keyboard, and the totals stay those by hand. */

import type { HandLine } from "../taskpane/gas-by-hand";
import { gasOf, sum, US_LINES, workedInches } from "../taskpane/gas-by-hand";
import type { OpenPage } from "./open-page";
import { openPage } from "./open-page";
import { clearLines, dragOver, insert, removeSheet } from "./working";

let open: OpenPage;
beforeAll(async () => {
  open = await openPage();
});
beforeEach(async () => {
  await insert(open, "Gas estimate");
});
afterEach(async () => {
  expect(open.errors).toEqual([]);
  await removeSheet(open);
});
afterAll(async () => {
  await open.close();
});

/** Columns from the list's formula. */
const JOINTS = -4;
const NEW: HandLine = [65, 0.75, 0.065, "316L"];

async function type(line: number, cells: HandLine): Promise<void> {
  for (const [i, content] of cells.entries())
    await open.editBeside("takeoff", JOINTS + i, line, String(content));
}

async function expectTotals(lines: readonly HandLine[]): Promise<void> {
  const all = lines.map(workedInches);
  expect(await open.value("lines")).toBe(`${String(lines.length)} of ${String(lines.length)}`);
  expect(await open.value("joints")).toBe(sum(all, "joints"));
  expect(Number(await open.value("gas_used")) / gasOf(all)).toBeCloseTo(1, 6);
  expect(await open.value("summary")).toMatch(/^✓/);
}

const LAST = US_LINES.length;

test("the first line deleted, then the last", async () => {
  await open.rowMenu("takeoff", 1, /^Delete row/);
  await expectTotals(US_LINES.slice(1));
  await open.rowMenu("takeoff", LAST - 1, /^Delete row/);
  await expectTotals(US_LINES.slice(1, -1));
});

test("the first line cleared by the Delete key", async () => {
  await clearLines(open, "takeoff", [JOINTS, -1], 1);
  await expectTotals(US_LINES.slice(1));
});

test("a row inserted above the first line, and one in the middle", async () => {
  await open.rowMenu("takeoff", 1, "Insert row above");
  await type(1, NEW);
  await expectTotals([NEW, ...US_LINES]);
  await open.rowMenu("takeoff", 4, "Insert row above");
  await type(4, NEW);
  await expectTotals([NEW, NEW, ...US_LINES]);
});

test("a row inserted below the last line", async () => {
  await open.rowMenu("takeoff", LAST, "Insert row below");
  await type(LAST + 1, NEW);
  await expectTotals([...US_LINES, NEW]);
});

test("a sorted list keeps its totals", async () => {
  await dragOver(open, "takeoff", [JOINTS, -1], [1, LAST]);
  await open.page.getByText("Data", { exact: true }).click();
  await open.page.locator(".o-menu-item").filter({ hasText: "Sort range" }).hover();
  await open.page
    .locator(".o-menu-item")
    .filter({ hasText: /Ascending/ })
    .click();
  await expectTotals(US_LINES);
});
