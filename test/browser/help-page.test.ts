/** The help page: its search finds a formula by a word of the trade, and takes a person to it. */

import { seriousViolations } from "./axe";
import type { OpenPage } from "./open-page";
import { openPage } from "./open-page";

let open: OpenPage;
beforeAll(async () => {
  open = await openPage({ path: "/help.html" });
});
afterAll(async () => {
  expect(open.errors).toEqual([]);
  expect(open.foreign).toEqual([]);
  await open.close();
});

test("words of the trade find the formula, and its link leads to its place", async () => {
  const { page } = open;
  const field = page.getByRole("searchbox", { name: "Find a formula" });
  for (const [typed, id] of [
    ["standoff", "STANDOFF"],
    ["duty", "PULSE_SHARE"],
    ["travel ipm", "TRAVEL_SPEED"],
    ["dew point", "DEW_POINT"],
  ] as const) {
    await field.fill(typed);
    await page.locator("#search-found li").first().waitFor();
    expect(await page.locator("#search-found li a").first().textContent()).toBe(id);
  }
  await page.locator("#search-found").getByRole("link", { name: "DEW_POINT" }).click();
  expect(new URL(page.url()).hash).toBe("#DEW_POINT");
  expect(await page.locator("h2:target").textContent()).toBe("DEW_POINT");
});

test("what no formula has is said, and other welds are named as not covered", async () => {
  const field = open.page.getByRole("searchbox", { name: "Find a formula" });
  await field.fill("zebra");
  expect(await open.page.locator("#search-told").textContent()).toBe("No formula has these words.");
  await field.fill("fillet");
  expect(await open.page.locator("#search-told").textContent()).toContain("no fillet or socket welds");
  await field.fill("");
  expect(await open.page.locator("#search-found li").count()).toBe(0);
});

test("the contents name every formula, and nothing on the page is a serious barrier", async () => {
  const contents = await open.page.locator('article ul a[href^="#"]').allTextContents();
  const headings = await open.page.locator("article h2").allTextContents();
  const formulas = headings.filter((heading) => /^[A-Z_0-9]+$/.test(heading));
  expect(formulas.length).toBeGreaterThan(70);
  expect(formulas.filter((id) => !contents.some((text) => text.includes(id)))).toEqual([]);
  expect(await seriousViolations(open.page)).toEqual([]);
});
