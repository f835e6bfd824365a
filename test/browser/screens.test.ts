import { LOOKS, SIGN_LOOKS } from "../../taskpane/hosts/looks";
import type { OpenPage } from "./open-page";
import { openPage, storesNothing } from "./open-page";
import { insert, showSheet } from "./working";

const SCREENS = [
  [390, 844],
  [700, 900],
  [1024, 768],
  [1280, 800],
  [1920, 1080],
] as const;

let open: OpenPage;
afterEach(async () => {
  await open.close();
});

interface Box {
  readonly name: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Everything in the bar and the notice that a person sees, and the parts of the page below each other. */
function boxes(): { inBar: Box[]; parts: Box[]; width: number; height: number; scrolls: boolean } {
  const box = (one: Element): Box => {
    const { left, right, top, bottom } = one.getBoundingClientRect();
    return { name: one.id === "" ? one.tagName : one.id, left, right, top, bottom };
  };
  const seen = (selector: string): Box[] =>
    [...document.querySelectorAll(selector)]
      .filter((one) => one.checkVisibility({ visibilityProperty: true }))
      .map(box);
  return {
    inBar: seen("#bar > :not(#bar-actions), #bar-actions > *"),
    parts: seen("#bar, #notice, #strip, #sheet, #card, #pane"),
    width: window.innerWidth,
    height: window.innerHeight,
    scrolls: document.documentElement.scrollHeight > window.innerHeight,
  };
}

function overlaps(all: readonly Box[]): string[] {
  return all.flatMap((one, i) =>
    all
      .slice(i + 1)
      .filter(
        (other) =>
          one.left < other.right - 0.5 &&
          other.left < one.right - 0.5 &&
          one.top < other.bottom - 0.5 &&
          other.top < one.bottom - 0.5,
      )
      .map((other) => `${one.name} and ${other.name}`),
  );
}

async function expectInOrder(): Promise<void> {
  const { inBar, parts, width, height, scrolls } = await open.page.evaluate(boxes);
  expect(inBar.length).toBeGreaterThan(4);
  for (const { name, left, right, top, bottom } of [...inBar, ...parts])
    expect([name, left >= 0, right <= width, top >= 0, bottom <= height]).toEqual([
      name,
      true,
      true,
      true,
      true,
    ]);
  expect(overlaps(inBar)).toEqual([]);
  expect(overlaps(parts)).toEqual([]);
  expect(scrolls).toBe(false);
}

test.each(SCREENS)(
  "%d × %d: nothing clipped or overlapping, the pane opens and closes, its whole width used",
  async (width, height) => {
    open = await openPage({ width, height });
    const { page } = open;
    await expectInOrder();
    expect(await page.locator("#pane").isVisible()).toBe(width >= 1100);
    const toggle = page.locator("#pane-toggle");
    for (const isShown of width >= 1100 ? [false, true] : [true, false]) {
      await toggle.click();
      expect(await page.locator("#pane").isVisible()).toBe(isShown);
      await expectInOrder();
    }
    if (width >= 1400) return;
    await page.getByRole("button", { name: "More" }).click();
    const actions = await page.locator("#bar-actions").boundingBox();
    expect(actions?.x).toBeGreaterThanOrEqual(0);
    expect((actions?.x ?? 0) + (actions?.width ?? 0)).toBeLessThanOrEqual(width);
    await page.getByRole("button", { name: "Save as .xlsx" }).waitFor({ state: "visible" });
    await page.keyboard.press("Tab");
    await page.keyboard.press("Escape");
    expect(await page.locator("#bar-actions").isVisible()).toBe(false);
  },
);

test("1024 px: the form is seen in its whole width, columns A to H, while the pane is hidden", async () => {
  open = await openPage({ width: 1024, height: 768 });
  const grid = await open.page.locator(".o-grid-overlay").boundingBox();
  const { widths, shown } = await open.page.evaluate(() => {
    const { getters } = (
      globalThis as unknown as {
        ringbead: {
          model: {
            getters: {
              getActiveSheetId(): string;
              getColSize(sheetId: string, column: number): number;
              getVisibleRect(zone: object): { x: number; width: number };
            };
          };
        };
      }
    ).ringbead.model;
    const sheetId = getters.getActiveSheetId();
    const column = (index: number): object => ({ left: index, right: index, top: 9, bottom: 9 });
    const all = [0, 1, 2, 3, 4, 5, 6, 7];
    return {
      widths: all.map((index) => getters.getColSize(sheetId, index)),
      shown: all.map((index) => getters.getVisibleRect(column(index)).width),
    };
  });
  expect(shown).toEqual(widths);
  expect(widths.reduce((sum, one) => sum + one, 0)).toBeLessThanOrEqual(grid?.width ?? 0);
});

test.each([
  ["work is stored", undefined],
  ["the browser stores nothing", storesNothing],
] as const)("on a phone where %s, bar and notice take at most 16 %% of the height", async (_, before) => {
  open = await openPage({ width: 390, height: 844, ...(before === undefined ? {} : { before }) });
  const { page } = open;
  await page.locator("#bar").getByRole("button", { name: "Show the sheet" }).click();
  if (before !== undefined) {
    await open.edit("wall", "0.083");
    await page.locator("#stored", { hasText: /^▲ Not stored/ }).waitFor();
  }
  // A label that is typed over is refused in the notice.
  const { x, y } = await open.pointOf("wall", -1);
  await page.mouse.click(x, y);
  await page.keyboard.type("x");
  await page.keyboard.press("Enter");
  const notice = page.locator("#notice");
  await notice.waitFor({ state: "visible" });
  const box = await notice.boundingBox();
  expect((box?.y ?? 0) + (box?.height ?? 844)).toBeLessThanOrEqual(0.16 * 844);
  await expectInOrder();
});

test.each(["light", "dark"] as const)(
  "%s: the strip follows an edit, stays while one scrolls, and is silent, not printed, and not there without a form",
  async (colorScheme) => {
    open = await openPage({ width: 1280, height: 800, colorScheme });
    const { page } = open;
    const strip = page.locator("#strip");
    const item = (label: string): ReturnType<OpenPage["page"]["locator"]> =>
      strip.locator("dl > div").filter({ hasText: label }).locator("dd");
    const standoff = async (): Promise<string> => `${Number(await open.value("standoff")).toFixed(4)} in`;
    expect(await item("Standoff").textContent()).toBe(await standoff());
    expect(await item("Heat input").textContent()).toBe(
      `✓ ${Number(await open.value("heat")).toFixed(2)} kJ/in`,
    );
    await open.edit("wall", "0.083");
    await item("Standoff").filter({ hasText: "0.0515 in" }).waitFor();
    expect(await standoff()).toBe("0.0515 in");
    await open.pointOf("check_cycle");
    expect(await strip.isVisible()).toBe(true);
    expect(await item("Standoff").textContent()).toBe("0.0515 in");
    await open.edit("wall", "-0.065");
    await item("Standoff").filter({ hasText: "—" }).waitFor();
    expect(await strip.textContent()).toMatch(/▲ \d+ of 16 need attention$/);
    expect(await strip.getAttribute("aria-live")).toBe("off");
    await page.emulateMedia({ media: "print", colorScheme });
    expect(await strip.isVisible()).toBe(false);
    await page.emulateMedia({ media: "screen", colorScheme });
    await showSheet(open, "Scratch");
    await strip.waitFor({ state: "hidden" });
  },
);

test.each([
  ["Gas estimate", ["Gas to buy", "Containers", "Gas cost"], "gas_bought"],
  ["Cycle plan", ["Joints a shift, steady", "Bottleneck"], "shift_steady"],
] as const)("the strip of a %s sheet has its own numbers", async (template, labels, first) => {
  open = await openPage({ width: 1280, height: 800 });
  await insert(open, template);
  await open.page.locator("#strip dt").filter({ hasText: labels[0] }).waitFor();
  expect(await open.page.locator("#strip dt").allTextContents()).toEqual(labels);
  const shown = await open.page.locator("#strip dd").first().textContent();
  expect(Number(shown?.split(" ")[0])).toBeCloseTo(Number(await open.value(first)), 1);
});

test("dark: every ink of the sheets keeps 4.5 : 1 on its fill as the grid is turned over", async () => {
  open = await openPage({ width: 1280, height: 800, colorScheme: "dark" });
  const paper = "#FFFFFF";
  const pairs = [
    ...Object.entries({ ...LOOKS, ...SIGN_LOOKS }).map(([name, { ink, fill }]) => ({ name, ink, fill })),
  ].flatMap(({ name, ink, fill }) => (ink === undefined ? [] : [{ name, ink, fill: fill ?? paper }]));
  expect(pairs.length).toBeGreaterThan(15);
  const ratios = await open.page.evaluate((all) => {
    const grid = document.querySelector(".o-grid > canvas");
    const { filter } = getComputedStyle(grid ?? document.body);
    const canvas = document.createElement("canvas");
    const context = canvas.getContext("2d", { willReadFrequently: true });
    if (context === null) throw new Error("nothing to draw on");
    // Relative luminance and contrast as WCAG 2 defines them.
    const luminance = (color: string): number => {
      context.filter = filter;
      context.fillStyle = color;
      context.fillRect(0, 0, 20, 20);
      const [red = 0, green = 0, blue = 0] = [...context.getImageData(10, 10, 1, 1).data].map((part) =>
        part / 255 <= 0.04045 ? part / 255 / 12.92 : ((part / 255 + 0.055) / 1.055) ** 2.4,
      );
      return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
    };
    return {
      filter,
      paper: luminance("#FFFFFF"),
      ratios: all.map(({ name, ink, fill }) => {
        const [one, other] = [luminance(ink), luminance(fill)];
        return { name, ratio: (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05) };
      }),
    };
  }, pairs);
  expect(ratios.filter).toContain("invert");
  expect(ratios.paper).toBeLessThan(0.05);
  expect(ratios.ratios.filter(({ ratio }) => ratio < 4.5)).toEqual([]);
});
