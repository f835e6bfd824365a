import axe from "axe-core";
import type axeModule from "axe-core";

import type { Look, OpenPage } from "./open-page";
import { openPage } from "./open-page";

const PHONE: Look = { width: 390, height: 844 };

let open: OpenPage;
afterEach(async () => {
  await open.close();
});

/** What the card says beside a label, once it says it. */
function fact(label: string | RegExp): ReturnType<OpenPage["page"]["locator"]> {
  return open.page
    .locator("#card .numbers > div")
    .filter({ has: open.page.locator("dt", { hasText: label }) });
}

/** Tap for the grid, type into a named cell, tap for the card. */
async function editBehindTheCard(name: string, typed: string): Promise<void> {
  await open.page.getByRole("button", { name: "Show the sheet" }).first().click();
  await open.edit(name, typed);
  await open.page.getByRole("button", { name: "Show the card" }).click();
}

/** A cell that no phone shows without scrolling sideways. */
async function put(name: string, content: string): Promise<void> {
  await open.page.evaluate(
    (cell) => {
      const { model } = (
        globalThis as unknown as {
          ringbead: {
            model: {
              dispatch(type: string, payload: object): void;
              getters: {
                getActiveSheetId(): string;
                getNamedRanges(): {
                  name: string;
                  range: { sheetId: string; zone: { left: number; top: number } };
                }[];
              };
            };
          };
        }
      ).ringbead;
      const sheetId = model.getters.getActiveSheetId();
      const zone = model.getters
        .getNamedRanges()
        .find((one) => one.range.sheetId === sheetId && one.name.split("__")[0] === cell.name)?.range.zone;
      model.dispatch("UPDATE_CELL", { sheetId, col: zone?.left, row: zone?.top, content: cell.content });
    },
    { name, content },
  );
}

async function seriousViolations(...places: readonly string[]): Promise<string[]> {
  await open.page.evaluate(axe.source);
  return open.page.evaluate(async (ids) => {
    const { axe: checker } = globalThis as unknown as { axe: typeof axeModule };
    const { violations } = await checker.run({ include: ids.map((id) => [id]) });
    return violations
      .filter(({ impact }) => impact === "serious" || impact === "critical")
      .map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
  }, places);
}

test("a phone opens with the card, the grid is a tap away and back, and an edited wall shows on the card", async () => {
  open = await openPage(PHONE);
  const { page } = open;
  await page.locator("#card").waitFor({ state: "visible" });
  expect(await page.locator(".o-grid").isVisible()).toBe(false);
  expect(await page.locator("#card h1").textContent()).toContain("1.0000 × 0.0650 in");
  const before = await fact("Standoff").locator(".large").textContent();
  expect(before).toBe(`${Number(await open.value("standoff")).toFixed(4)}in`);

  await page.getByRole("button", { name: "Show the sheet" }).first().click();
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

test("a negative wall: the card gives the check's words and none of the old numbers, until the wall is right again", async () => {
  open = await openPage(PHONE);
  const { page } = open;
  const numbers = await page.locator("#card .large").allTextContents();
  expect(numbers).toHaveLength(6);
  await editBehindTheCard("wall", "-0.065");
  const refused = page.locator("#card .refused");
  await refused.waitFor();
  expect(await refused.locator("strong").allTextContents()).toEqual([await open.value("check_tube")]);
  expect(await refused.textContent()).toContain("must be above 0");
  for (const what of ["standoff", "electrode length", "rotor speed", "current by sector", "heat input"])
    expect(await refused.textContent()).toContain(what);
  expect(await page.locator("#card .summary").textContent()).toMatch(/^▲ \d+ of 14 need attention/);
  // Only what was typed is left: the purge flow.
  expect(await page.locator("#card .large").allTextContents()).toEqual(["15.0ft³/h"]);
  expect(await page.locator("#card .times").count()).toBe(0);
  await editBehindTheCard("wall", "0.065");
  await refused.waitFor({ state: "detached" });
  expect(await page.locator("#card .large").allTextContents()).toEqual(numbers);
});

test("a heat input above its maximum has its sign and the check's words beside the number", async () => {
  open = await openPage(PHONE);
  await fact("Heat input").getByText("✓ maximum 8.00").waitFor();
  await put("heat_most", "4");
  await fact("Heat input").getByText("▲ maximum 4.00").waitFor();
  expect(await fact("Heat input").locator(".attention").textContent()).toBe(await open.value("check_heat"));
});

test("pulsed tells peak and background of every sector, steady one current", async () => {
  open = await openPage(PHONE);
  const sectors = open.page.locator("#card .sectors b");
  expect(await fact("Peak/background").locator(".large").textContent()).toBe("65.0/19.5A");
  expect(await sectors.allTextContents()).toHaveLength(4);
  for (const text of await sectors.allTextContents()) expect(text).toMatch(/^\d+\.\d\/\d+\.\d$/);
  await put("style", "steady");
  await fact("Current, steady").waitFor();
  const mean = Number(await open.value("mean_first")).toFixed(1);
  expect(await fact("Current, steady").locator(".large").textContent()).toBe(`${mean}A`);
  for (const text of await sectors.allTextContents()) expect(text).toMatch(/^\d+\.\d$/);
  expect(await fact("Current, steady").textContent()).not.toContain("pulse");
});

test("the card follows the sheet that is chosen, in its own units, and lists what there is to choose", async () => {
  open = await openPage({ width: 1400, height: 900 });
  const { page } = open;
  const pane = page.locator("#pane");
  await pane.locator("#units-SI").check();
  await pane.getByRole("button", { name: "Insert", exact: true }).click();
  await pane.getByRole("status").getByText("in SI units").waitFor();
  await page.getByRole("button", { name: "Show the card" }).click();
  await page.locator("#card h1").filter({ hasText: "25.400 × 1.650 mm" }).waitFor();
  expect(await fact("Purge").locator(".large").textContent()).toBe("7.0L/min");
  await page.getByLabel("Procedure sheet", { exact: true }).selectOption({ label: "Procedure sheet" });
  await page.locator("#card h1").filter({ hasText: "1.0000 × 0.0650 in" }).waitFor();

  await page.getByRole("button", { name: "Show the sheet" }).first().click();
  await page.locator(".o-sheet").filter({ hasText: "Scratch" }).click();
  await page.getByRole("button", { name: "Show the card" }).click();
  expect(await page.locator("#card .large").count()).toBe(0);
  await page.locator("#card").getByRole("button", { name: "Procedure sheet 2" }).click();
  await page.locator("#card h1").filter({ hasText: "25.400 × 1.650 mm" }).waitFor();
});

test.each(["light", "dark"] as const)(
  "%s: nothing serious for axe, with and without numbers",
  async (scheme) => {
    open = await openPage({ ...PHONE, colorScheme: scheme });
    expect(await seriousViolations("#card", "#bar")).toEqual([]);
    await put("wall", "-0.065");
    await open.page.locator("#card .refused").waitFor();
    expect(await seriousViolations("#card")).toEqual([]);
    await open.page.getByRole("button", { name: "Show the sheet" }).first().click();
    expect(await seriousViolations("#strip")).toEqual([]);
  },
);

test("by keyboard alone: the card's own button leads to the sheet", async () => {
  open = await openPage(PHONE);
  await open.page.locator("#card .to-sheet").focus();
  const { outlineStyle } = await open.page.evaluate(() => {
    const active = document.activeElement;
    return { outlineStyle: active === null ? "" : getComputedStyle(active).outlineStyle };
  });
  expect(outlineStyle).toBe("solid");
  await open.page.keyboard.press("Enter");
  await open.page.locator(".o-grid").waitFor({ state: "visible" });
});

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
