/** The size table as a planner works in it: eight sizes pasted as people write them, one that cannot be, filtered, printed. */

import { onPaper, pagesOf } from "./on-paper";
import type { OpenPage } from "./open-page";
import { openPage } from "./open-page";
import { clearLines, insert, pasteLines } from "./working";

let open: OpenPage;
beforeAll(async () => {
  open = await openPage({ width: 1700, height: 1300 });
  await insert(open, "Size table");
});
afterAll(async () => {
  expect(open.errors).toEqual([]);
  expect(open.foreign).toEqual([]);
  await open.close();
});

/** Columns from the list's formula. */
const [OD, MATERIAL] = [-3, -1];
/** Pixels from the middle of a heading to the button of its filter. */
const BUTTON = 28;
/** Fractions, a mixed number, a pipe size with its schedule, and in the fifth line a wall that leaves no bore. */
const SIZES = [
  "1/2\t0.049\t316L",
  "3/4\t0.065\t316L",
  "1-1/2\t0.065\t316L",
  "NPS 1\tsch 10S\t316L",
  "1/4\t0.2\t316L",
  "2\t0.065\t304L",
  "3\t0.065\t304L",
  "4\t0.083\t304L",
];

const POSSIBLE = SIZES.filter((line) => !line.startsWith("1/4"));
const THIRTY = Array.from({ length: 30 }, (_, i) => POSSIBLE[i % POSSIBLE.length] ?? "");

test("eight sizes pasted: seven have a schedule, the eighth is told with its reason", async () => {
  await clearLines(open, "size_table", [OD, MATERIAL], 7);
  expect(await open.value("check_list")).toBe("▲ no sizes to work out");
  await pasteLines(open, "size_table", OD, SIZES);
  expect(await open.value("sizes")).toBe("7 of 8");
  expect(await open.value("check_list")).toBe(
    "▲ 1 of 8 sizes without a schedule; the remark beside each says why",
  );
});

test("printed: a page and the list, in letters of 7.5 points and more, the impossible size gray", async () => {
  for (const format of ["Letter", "A4"] as const) expect(await pagesOf(open.page, format)).toBe(2);
  const { smallest, lines, gray } = await onPaper(open.page);
  expect(smallest).toBeGreaterThanOrEqual(7.5);
  expect(lines.filter((line) => /316L|304L/.test(line))).toHaveLength(8);
  expect(gray).toHaveLength(1);
  expect(gray[0]).toMatch(/^5?\|1\/4\|0\.2\|316L\|{21}.*wall/);
});

test("thirty sizes are one page of the list, sixty are two", async () => {
  await pasteLines(open, "size_table", OD, THIRTY);
  expect(await open.value("sizes")).toBe("30 of 30");
  for (const format of ["Letter", "A4"] as const) expect(await pagesOf(open.page, format)).toBe(2);
  await pasteLines(open, "size_table", OD, [...THIRTY, ...THIRTY]);
  expect(await open.value("sizes")).toBe("60 of 60");
  for (const format of ["Letter", "A4"] as const) expect(await pagesOf(open.page, format)).toBe(3);
});

test("the filter shows the lines of one material, and paper has those alone", async () => {
  const { x, y } = await open.pointOf("size_table", MATERIAL, 0);
  // The button stands at the right end of the heading.
  await open.page.mouse.click(x + BUTTON, y);
  const menu = open.page.locator(".o-filter-menu");
  await menu.waitFor();
  await menu.getByText("316L", { exact: true }).click();
  await menu.getByRole("button", { name: "Confirm" }).click();
  const { lines } = await onPaper(open.page);
  expect(lines.filter((line) => line.includes("304L"))).toHaveLength(
    2 * THIRTY.filter((line) => line.includes("304L")).length,
  );
  expect(lines.filter((line) => line.includes("316L"))).toEqual([]);
  // What is hidden counts as before.
  expect(await open.value("sizes")).toBe("60 of 60");
});
