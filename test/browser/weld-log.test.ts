/** The weld log as an inspector works in it: three joints entered, one outside of acceptance, hours to the coupons due. */

import { onPaper, pagesOf } from "./on-paper";
import type { OpenPage } from "./open-page";
import { openPage } from "./open-page";
import { clearLines, insert, fillLines } from "./working";

let open: OpenPage;
beforeAll(async () => {
  open = await openPage({ width: 1900, height: 1300 });
  await insert(open, "Weld log");
});
afterAll(async () => {
  expect(open.errors).toEqual([]);
  expect(open.foreign).toEqual([]);
  await open.close();
});

/** Columns from the log's formula: the first and last that are typed, and the remark. */
const [JOINT, RESULT] = [-16, -1];
/** Invented; the second joint is misaligned by more than 15 % of the wall of 0.065 in, 0.00975 in. */
const JOINTS = [
  "K-1 H7 H7 P-1 C-1 W1 60 60.2 9.1 5 20 2 0.002 0.001 0.004 accept",
  "K-2 H7 H8 P-1 C-1 W1 60 59.9 9.1 5 22 2 0.002 0.001 0.012 accept",
  "K-3 H8 H8 P-1 C-1 W1 60 60.1 9.2 5 21 1 0.003 0.001 0.005 accept",
].map((line) => line.split(" "));

test("three joints entered, one outside of acceptance: its line and the sheet say so", async () => {
  await clearLines(open, "log_check", [JOINT, RESULT], 7);
  expect(await open.value("logged")).toBe(0);
  await fillLines(open, "log_check", JOINT, JOINTS);
  expect([await open.value("logged"), await open.value("inspected"), await open.value("to_check")]).toEqual([
    3, 3, 1,
  ]);
  expect(await open.value("check_log")).toBe(
    "▲ 1 of 3 lines need attention; the remark beside each says why",
  );
  const { lines } = await onPaper(open.page);
  expect(lines.slice(0, 3).map((line) => line.split("|").slice(16, 17))).toEqual([
    ["✓ accept"],
    ["▲ check"],
    ["✓ accept"],
  ]);
  expect(lines[1]).toMatch(/misalignment: must be at most 0\.00975 in$/);
});

test("rejected, the line needs no more attention; twelve hours and a stop are five coupons", async () => {
  await open.editBeside("log_check", RESULT, 2, "reject");
  expect([await open.value("rejected"), await open.value("to_check")]).toEqual([1, 0]);
  await open.edit("hours", "12");
  await open.edit("idles", "1");
  // At the start, after 4 and 8 h, at the end, and after the stop.
  expect(await open.value("coupons_due")).toBe(5);
  expect(await open.value("coupons_told")).toBe("5: start, each 4 h, end, 1 after stops");
});

test("printed in letters of 7.5 points and more, the log under its headings", async () => {
  for (const format of ["Letter", "A4"] as const) {
    expect(await pagesOf(open.page, format)).toBeLessThanOrEqual(3);
  }
  const { smallest, text } = await onPaper(open.page);
  expect(smallest).toBeGreaterThanOrEqual(7.5);
  expect(text).toContain("misaligned");
});
