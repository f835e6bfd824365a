/** The cycle plan as a planner works in it: three operators, four heads, two what-ifs compared, printed on one page. */

import { fixed, LOAD, machineOf, randomShared, steadyOfOne, steadyShared } from "../taskpane/cycle-by-hand";
import { onPaper, pagesOf } from "./on-paper";
import type { OpenPage } from "./open-page";
import { openPage } from "./open-page";
import { insert } from "./working";

let open: OpenPage;
beforeAll(async () => {
  open = await openPage({ width: 1900, height: 1400 });
  await insert(open, "Cycle plan");
});
afterAll(async () => {
  expect(open.errors).toEqual([]);
  expect(open.foreign).toEqual([]);
  await open.close();
});

const shop = { load: LOAD, machine: machineOf("US") };
const quick = { ...shop, load: 120 };

test("three operators with four heads of their own; shared, and loaded faster", async () => {
  await open.edit("operators", "3");
  // The example's first what-if was six heads: it becomes four that are shared.
  await open.select("shop_heads_b");
  await open.page.keyboard.press("Delete");
  await open.edit("heads_are_b", "shared");
  await open.edit("scenario_b", "Shared");
  expect(await open.value("summary")).toMatch(/^✓ All 9 checks hold/);
  const own = fixed(4, 3, (heads) => steadyOfOne(heads, shop));
  const ownQuick = fixed(4, 3, (heads) => steadyOfOne(heads, quick));
  expect(await open.value("shift_steady")).toBeCloseTo(own, 6);
  expect(await open.value("shift_steady_b")).toBeCloseTo(steadyShared(4, 3, shop), 6);
  expect(await open.value("shift_random_b")).toBeCloseTo(randomShared(4, 3, shop), 6);
  expect(await open.value("shift_steady_c")).toBeCloseTo(ownQuick, 6);
  expect(await open.value("more_steady_b")).toBeCloseTo(steadyShared(4, 3, shop) - own, 6);
  expect(await open.value("more_steady_c")).toBeCloseTo(ownQuick - own, 6);
  expect(await open.value("head_b")).toBe("Shared");
});

test("a start and a date to finish by are typed as dates, and the table says which heads are in time", async () => {
  await open.edit("start_date", "2026-03-02");
  await open.edit("finish_by", "2026-03-06");
  // Monday to Friday, days 46 083 and 46 087.
  expect([await open.value("start_date"), await open.value("finish_by")]).toEqual([46_083, 46_087]);
  expect(await open.value("summary")).toMatch(/^✓/);
  expect(Number(await open.value("spare"))).toBeGreaterThanOrEqual(0);
});

test("it prints on two pages of Letter and of A4, all that is compared on the first, in 7.5 points and more", async () => {
  for (const format of ["Letter", "A4"] as const) expect(await pagesOf(open.page, format)).toBe(2);
  const { smallest, text } = await onPaper(open.page);
  expect(smallest).toBeGreaterThanOrEqual(7.5);
  expect(text).toMatch(/What holds it back.*Bottleneck.*How many heads finish by when/s);
});
