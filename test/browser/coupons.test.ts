/** Coupons as a shop works with them: five typed, its efficiency read off and used in the procedure sheet of the workbook. */

import { onPaper, pagesOf } from "./on-paper";
import type { OpenPage } from "./open-page";
import { openPage } from "./open-page";
import { clearLines, insert, fillLines } from "./working";

let open: OpenPage;
beforeAll(async () => {
  open = await openPage({ width: 1700, height: 1300 });
  await insert(open, "Coupons");
});
afterAll(async () => {
  expect(open.errors).toEqual([]);
  expect(open.foreign).toEqual([]);
  await open.close();
});

/** Columns from the list's formula, and five invented coupons: OD, wall, amps, volts, travel, face, root. */
const [OD, ROOT] = [-7, -1];
const COUPONS: readonly (readonly string[])[] = [
  ["1", "0.065", "52", "9.4", "5.1", "0.181", "0.152"],
  ["1", "0.065", "54", "9.5", "5.1", "0.190", "0.166"],
  ["1", "0.065", "56", "9.5", "5.1", "0.199", "0.177"],
  ["1", "0.065", "58.5", "9.4", "5.1", "0.207", "0.187"],
  ["1", "0.065", "60.5", "9.5", "5.1", "0.216", "0.198"],
];

test("five coupons entered over the invented ones: the shop's efficiency with its interval", async () => {
  await clearLines(open, "coupon_table", [OD, ROOT], 6);
  expect(await open.value("shop_efficiency")).toBe("");
  await fillLines(open, "coupon_table", OD, COUPONS);
  expect(await open.value("coupons")).toBe("5 of 5");
  expect(await open.value("summary")).toMatch(/^✓ All 7 checks hold/);
  const [low, shop, high] = await Promise.all(
    ["shop_low", "shop_efficiency", "shop_high"].map(async (name) => Number(await open.value(name))),
  );
  expect(low).toBeGreaterThan(0.5);
  expect(shop).toBeGreaterThan(low ?? NaN);
  expect(high).toBeGreaterThan(shop ?? NaN);
  // Four times as many halve it.
  expect(await open.value("more_coupons")).toBe(15);
});

test("the picture has a dot for each, and it and the list are printed in letters of 7.5 points and more", async () => {
  for (const format of ["Letter", "A4"] as const) expect(await pagesOf(open.page, format)).toBe(2);
  const { smallest, lines } = await onPaper(open.page);
  expect(smallest).toBeGreaterThanOrEqual(7.5);
  expect(lines.filter((line) => line.includes("|0.065|"))).toHaveLength(5);
});

test("an outlier is called by its number", async () => {
  await open.editBeside("coupon_table", -5, 3, "44");
  expect(await open.value("check_outliers")).toMatch(/^▲ 1 of 5 coupons stand apart \(#3\)/);
  await open.editBeside("coupon_table", -5, 3, "56");
  expect(await open.value("check_outliers")).toBe("✓ holds");
});

test("the procedure sheet takes the efficiency from the coupon sheet, and follows a coupon that changes", async () => {
  const at = await open.page.evaluate(addressOf, "shop_efficiency");
  const shop = Number(await open.value("shop_efficiency"));
  await insert(open, "Procedure sheet");
  const before = Number(await open.value("mean_first"));
  await open.edit("efficiency", `=Coupons!${at}`);
  expect(await open.value("efficiency")).toBeCloseTo(shop, 12);
  // The current is that which melts the bead: in inverse proportion to the efficiency, 0.78 where it is blank, but for the
  // few hundredths of a volt that the arc has more with it.
  const more = (Number(await open.value("mean_first")) / before) * (shop / 0.78);
  expect(shop).toBeLessThan(0.74);
  expect(Math.abs(more - 1)).toBeLessThan(0.005);
  expect(await open.value("check_typed")).toBe("✓ holds");
});

/** Runs in the page; stands alone. */
function addressOf(name: string): string {
  interface Engine {
    readonly ringbead: {
      readonly model: {
        readonly getters: {
          getActiveSheetId(): string;
          getNamedRanges(): {
            name: string;
            range: { sheetId: string; zone: { left: number; top: number } };
          }[];
        };
      };
    };
  }
  const { getters } = (globalThis as unknown as Engine).ringbead.model;
  const zone = getters
    .getNamedRanges()
    .find((one) => one.range.sheetId === getters.getActiveSheetId() && one.name.split("__")[0] === name)
    ?.range.zone;
  if (zone === undefined) throw new Error(`no cell is named ${name}`);
  return `${String.fromCharCode(65 + zone.left)}${String(zone.top + 1)}`;
}
