/** The page is killed at a random moment of editing, again and again: of what was typed, no more than the last second is lost. */

import type { Page } from "playwright-core";

import type { OpenPage } from "./open-page";
import { openPage } from "./open-page";

/** More on demand: each takes some two seconds. */
const KILLS = Number(process.env.RINGBEAD_KILLS ?? 8);
const SECOND = 1_000;
/** How long a person edits before the page dies, at most, ms. */
const LONGEST = 2_500;

let open: OpenPage;
beforeAll(async () => {
  open = await openPage();
});
afterAll(async () => {
  await open.close();
});

/** Types a rising count into one cell until the page dies; gives what was typed, and when. */
async function editUntilKilled(
  page: Page,
  from: number,
  lifetime: number,
): Promise<{ count: number; at: number }[]> {
  const grid = await page.locator(".o-grid-overlay").boundingBox();
  await page.mouse.click((grid?.x ?? 0) + 150, (grid?.y ?? 0) + 150);
  const typed: { count: number; at: number }[] = [];
  const end = Date.now() + lifetime;
  for (let count = from; Date.now() < end; count += 1) {
    await page.keyboard.type(String(count));
    await page.keyboard.press("Enter");
    typed.push({ count, at: Date.now() });
    await page.keyboard.press("ArrowUp");
  }
  return typed;
}

function largest(page: Page): Promise<number> {
  return page.evaluate(() => {
    const { getters } = (
      globalThis as unknown as {
        ringbead: {
          model: {
            getters: {
              getActiveSheetId(): string;
              getEvaluatedCell(at: object): { value: unknown };
            };
          };
        };
      }
    ).ringbead.model;
    const sheetId = getters.getActiveSheetId();
    const values = Array.from({ length: 40 }, (_, row) =>
      Array.from({ length: 4 }, (_, col) => Number(getters.getEvaluatedCell({ sheetId, col, row }).value)),
    ).flat();
    return Math.max(0, ...values.filter((value) => value >= 1000));
  });
}

test(
  `${String(KILLS)} times`,
  async () => {
    const context = open.page.context();
    const address = open.page.url();
    let page = open.page;
    let count = 1000;
    for (let kill = 0; kill < KILLS; kill += 1) {
      await page.locator(".o-sheet", { hasText: "Scratch" }).click();
      const typed = await editUntilKilled(page, count, Math.random() * LONGEST);
      const killed = Date.now();
      await page.close({ runBeforeUnload: false });
      page = await context.newPage();
      await page.goto(address);
      await page.waitForSelector("html[data-ready]");
      await page.locator(".o-sheet", { hasText: "Scratch" }).click();
      const safe = typed.filter(({ at }) => at < killed - SECOND).at(-1)?.count ?? 0;
      const found = await largest(page);
      expect(found).toBeGreaterThanOrEqual(safe);
      count = Math.max(count, (typed.at(-1)?.count ?? count) + 1);
    }
  },
  20_000 + KILLS * 20_000,
);
