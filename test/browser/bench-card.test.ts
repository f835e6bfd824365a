import { seriousViolations } from "./axe";
import type { Look, OpenPage } from "./open-page";
import { openPage } from "./open-page";
import { editBehindTheCard, insert, showSheet } from "./working";

const PHONE: Look = { width: 390, height: 844 };

let open: OpenPage;

/** What the card says beside a label, once it says it. */
function fact(label: string | RegExp): ReturnType<OpenPage["page"]["locator"]> {
  return open.page
    .locator("#card .numbers > div")
    .filter({ has: open.page.locator("dt", { hasText: label }) });
}

describe("in a page of its own", () => {
  afterEach(async () => {
    await open.close();
  });

  test("a phone opens with the card, the grid is a tap away and back, and an edited wall shows on the card", async () => {
    open = await openPage(PHONE);
    const { page } = open;
    await page.locator("#card").waitFor({ state: "visible" });
    expect(await page.locator(".o-grid").isVisible()).toBe(false);
    expect(await page.locator("#card h1").textContent()).toContain("1.0000 × 0.0650 in");
    const before = await fact("Standoff").locator(".large").textContent();
    expect(before).toBe(`${Number(await open.value("standoff")).toFixed(4)}in`);

    await page.locator("#bar").getByRole("button", { name: "Show the sheet" }).click();
    expect(await page.locator("#card").isVisible()).toBe(false);
    await page.locator(".o-grid").waitFor({ state: "visible" });
    await open.edit("wall", "0.083");
    await page.getByRole("button", { name: "Show the card" }).click();
    await page.locator("#card h1").filter({ hasText: "× 0.0830 in" }).waitFor();
    const standoff = Number(await open.value("standoff"));
    // Half the wall and the allowance, as the sheet's own help says: 0.083/2 + 0.010.
    expect(standoff).toBeCloseTo(0.0515, 6);
    expect(await fact("Standoff").locator(".large").textContent()).toBe(`${standoff.toFixed(4)}in`);
    expect(await fact("Rotor").locator(".large").textContent()).toBe(
      `${Number(await open.value("rpm")).toFixed(3)}rpm`,
    );
    expect(await page.locator("#card .summary").textContent()).toBe(await open.value("summary"));
    expect(open.errors).toEqual([]);
  });

  test("the card follows the sheet that is chosen, in its own units, and lists what there is to choose", async () => {
    open = await openPage({ width: 1400, height: 900 });
    const { page } = open;
    await insert(open, "Procedure sheet", "SI");
    await page.getByRole("button", { name: "Show the card" }).click();
    await page.locator("#card h1").filter({ hasText: "25.400 × 1.650 mm" }).waitFor();
    expect(await fact("Purge").locator(".large").textContent()).toBe("7.0L/min");
    await page.getByLabel("Procedure sheet", { exact: true }).selectOption({ label: "Procedure sheet" });
    await page.locator("#card h1").filter({ hasText: "1.0000 × 0.0650 in" }).waitFor();

    await page.locator("#bar").getByRole("button", { name: "Show the sheet" }).click();
    await showSheet(open, "Scratch");
    await page.getByRole("button", { name: "Show the card" }).click();
    expect(await page.locator("#card .large").count()).toBe(0);
    await page.locator("#card").getByRole("button", { name: "Procedure sheet 2" }).click();
    await page.locator("#card h1").filter({ hasText: "25.400 × 1.650 mm" }).waitFor();
  });

  test.each(["light", "dark"] as const)(
    "%s: nothing serious for axe, with and without numbers",
    async (scheme) => {
      open = await openPage({ ...PHONE, colorScheme: scheme });
      expect(await seriousViolations(open.page, "#card", "#bar")).toEqual([]);
      await open.put("wall", "-0.065");
      await open.page.locator("#card .refused").waitFor();
      expect(await seriousViolations(open.page, "#card")).toEqual([]);
      await open.page.locator("#bar").getByRole("button", { name: "Show the sheet" }).click();
      expect(await seriousViolations(open.page, "#strip")).toEqual([]);
    },
  );

  test("printed, the card is the page and takes no more than half of it", async () => {
    // As wide as what Letter has between its margins.
    open = await openPage({ width: 733, height: 960 });
    const { page } = open;
    await page.getByRole("button", { name: "Show the card" }).click();
    await page.evaluate(() => window.dispatchEvent(new Event("beforeprint")));
    await page.emulateMedia({ media: "print" });
    const printed = page.locator("#print-page");
    expect(await printed.locator(".large").count()).toBe(6);
    expect(await printed.locator("button, select").count()).toBe(0);
    expect(await page.locator("#bench").isVisible()).toBe(false);
    const box = await printed.boundingBox();
    // 11 in less 27 mm of margins, halved, at 96 px an inch.
    expect(box?.height).toBeLessThanOrEqual((11 * 96 - (27 / 25.4) * 96) / 2);
  });
});

describe("on one phone, one after the other", () => {
  beforeAll(async () => {
    open = await openPage(PHONE);
  });
  afterAll(async () => {
    await open.close();
  });

  // First: a browser outlines what has the focus until a pointer is used.
  test("by keyboard alone: the card's own button leads to the sheet", async () => {
    await open.page.locator("#card .to-sheet").focus();
    const { outlineStyle } = await open.page.evaluate(() => {
      const active = document.activeElement;
      return { outlineStyle: active === null ? "" : getComputedStyle(active).outlineStyle };
    });
    expect(outlineStyle).toBe("solid");
    await open.page.keyboard.press("Enter");
    await open.page.locator(".o-grid").waitFor({ state: "visible" });
    await open.page.getByRole("button", { name: "Show the card" }).click();
  });

  test("a negative wall: the card gives the check's words and none of the old numbers, until the wall is right again", async () => {
    const { page } = open;
    const numbers = await page.locator("#card .large").allTextContents();
    expect(numbers).toHaveLength(6);
    await editBehindTheCard(open, "wall", "-0.065");
    const refused = page.locator("#card .refused");
    await refused.waitFor();
    expect(await refused.locator("strong").allTextContents()).toEqual([await open.value("check_tube")]);
    expect(await refused.textContent()).toContain("must be above 0");
    for (const what of ["standoff", "electrode length", "rotor speed", "current by sector", "heat input"])
      expect(await refused.textContent()).toContain(what);
    expect(await page.locator("#card .summary").textContent()).toMatch(/^▲ \d+ of 16 need attention/);
    // Only what was typed is left: the purge flow.
    expect(await page.locator("#card .large").allTextContents()).toEqual(["15.0ft³/h"]);
    expect(await page.locator("#card .times").count()).toBe(0);
    await editBehindTheCard(open, "wall", "0.065");
    await refused.waitFor({ state: "detached" });
    expect(await page.locator("#card .large").allTextContents()).toEqual(numbers);
  });

  test("a heat input above its maximum has its sign and the check's words beside the number", async () => {
    await fact("Heat input").getByText("✓ maximum 8.00").waitFor();
    const most = await open.put("heat_most", "4");
    await fact("Heat input").getByText("▲ maximum 4.00").waitFor();
    expect(await fact("Heat input").locator(".attention").textContent()).toBe(await open.value("check_heat"));
    await open.put("heat_most", most);
    await fact("Heat input").getByText("✓ maximum 8.00").waitFor();
  });

  test("pulsed tells peak and background of every sector, steady one current", async () => {
    const sectors = open.page.locator("#card .sectors b");
    expect(await fact("Peak/background").locator(".large").textContent()).toBe("65.0/19.5A");
    expect(await sectors.allTextContents()).toHaveLength(4);
    for (const text of await sectors.allTextContents()) expect(text).toMatch(/^\d+\.\d\/\d+\.\d$/);
    await open.put("style", "steady");
    await fact("Current, steady").waitFor();
    const mean = Number(await open.value("mean_first")).toFixed(1);
    expect(await fact("Current, steady").locator(".large").textContent()).toBe(`${mean}A`);
    for (const text of await sectors.allTextContents()) expect(text).toMatch(/^\d+\.\d$/);
    expect(await fact("Current, steady").textContent()).not.toContain("pulse");
  });
});
