/** The bid as an estimator works in it: inserted, forty lines pasted, a cylinder picked, the customer page printed alone. */

import { onPaper, pagesOf } from "./on-paper";
import type { OpenPage } from "./open-page";
import { openPage } from "./open-page";
import { clearLines, insert, pasteLines } from "./working";

let open: OpenPage;
beforeAll(async () => {
  open = await openPage({ width: 1500, height: 1200 });
  await insert(open, "Bid");
});
afterAll(async () => {
  expect(open.errors).toEqual([]);
  expect(open.foreign).toEqual([]);
  await open.close();
});

/** Columns from the list's formula. */
const [JOINTS, MATERIAL] = [-4, -1];
const SIZES = ["1/2\t0.049", "3/4\t0.065", "1\t0.065", "1-1/2\t0.065", "2\t0.065"];

test("forty lines pasted over the invented ones, with their header; another cylinder; a price", async () => {
  await clearLines(open, "takeoff", [JOINTS, MATERIAL], 6);
  expect(await open.value("check_list")).toBe("▲ no lines to count");
  expect([await open.value("price"), await open.value("customer_price")]).toEqual(["", ""]);
  const lines = Array.from(
    { length: 40 },
    (_, i) => `${String(i + 1)}\t${SIZES[i % SIZES.length] ?? ""}\t316L`,
  );
  await pasteLines(open, "takeoff", JOINTS, ["Qty\tOD\tWall\tMaterial", ...lines]);
  // 40·41/2 joints.
  expect(await open.value("lines")).toBe("40 of 40");
  expect(await open.value("joints")).toBe(820);
  await open.edit("contents", "250");
  await open.edit("usable_share", "0.9");
  expect(await open.value("usable")).toBeCloseTo(225, 9);
  expect(await open.value("summary")).toMatch(/^✓ All 9 checks hold/);
  const price = Number(await open.value("price"));
  expect(price).toBeGreaterThan(Number(await open.value("cost")));
  expect(await open.value("customer_price")).toBe(price);
});

test("prints the customer page alone, on one page of Letter and of A4, with nothing of the inside", async () => {
  for (const format of ["Letter", "A4"] as const) expect(await pagesOf(open.page, format)).toBe(1);
  const { text } = await onPaper(open.page);
  expect(text).toContain("Bid: orbital TIG welds of tube");
  expect(text).toContain(Number(await open.value("price")).toLocaleString("en-US"));
  expect(text).toContain("820");
  expect(text).not.toMatch(/cost|margin|labor|reject|electrode|container|per \+10|check/i);
  expect(text).not.toContain(Number(await open.value("cost")).toFixed(0));
});

test("prints a draft, and no price, while a line is not counted", async () => {
  await open.editBeside("takeoff", -2, 3, "9");
  const { text } = await onPaper(open.page);
  expect(text).toContain("Draft, not for the customer");
  expect(await open.value("customer_price")).toBe("");
});
