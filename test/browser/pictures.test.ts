import type { Locator } from "playwright-core";

import type { Place } from "./axe";
import { seriousViolations } from "./axe";
import type { Look, OpenPage } from "./open-page";
import { openPage } from "./open-page";
import { convert, editBehindTheCard, showSheet } from "./working";

const PHONE: Look = { width: 390, height: 844 };

const PICTURES_OF_PANE: Place = { fromShadowDom: ["#pane", ".pictures"] };

let open: OpenPage;

const inPane = (id: string): Locator => open.page.locator(`#pane [data-picture="${id}"]`);
const inCard = (id: string): Locator => open.page.locator(`#card [data-picture="${id}"]`);

/** Words of the drawings that are cut off or lie over each other, and captions of more than two lines. */
function flaws(place: string): string[] {
  const host = document.querySelector(place);
  const root = host?.shadowRoot ?? host;
  const found: string[] = [];
  for (const drawn of root?.querySelectorAll("svg") ?? []) {
    const view = drawn.viewBox.baseVal;
    const texts = [...drawn.querySelectorAll("text")].map((text) => ({
      words: text.textContent,
      box: text.getBBox(),
    }));
    for (const [i, { words, box }] of texts.entries()) {
      const right = box.x + box.width;
      if (box.x < 0 || right > view.width || box.y < 0 || box.y + box.height > view.height + 1)
        found.push(`${words} is cut off`);
      for (const { words: other, box: b } of texts.slice(i + 1)) {
        // Lines of a block touch each other; letters do not.
        const isAcross = box.x < b.x + b.width && b.x < right;
        if (isAcross && Math.abs(box.y - b.y) < 10) found.push(`${words} over ${other}`);
      }
    }
  }
  for (const caption of root?.querySelectorAll("figcaption > *") ?? []) {
    const lines = Math.round(
      caption.getBoundingClientRect().height / parseFloat(getComputedStyle(caption).lineHeight),
    );
    if (lines > 2) found.push(`${caption.textContent}: ${String(lines)} lines`);
  }
  return found;
}

describe("in a page of its own", () => {
  afterEach(async () => {
    await open.close();
  });

  test("another wall behind the card: its pictures follow; a negative one leaves none of the old numbers", async () => {
    open = await openPage(PHONE);
    await inCard("section").getByText("0.0650 in", { exact: true }).waitFor();
    await inCard("ring")
      .getByRole("img", { name: /^The last quarter needs \d+ % less current/ })
      .waitFor();
    await inCard("purge")
      .getByRole("img", { name: /^Down to 50 ppm after / })
      .waitFor();
    await editBehindTheCard(open, "wall", "0.083");
    await inCard("section").getByText("0.0830 in", { exact: true }).waitFor();
    await editBehindTheCard(open, "wall", "-0.065");
    await inCard("section")
      .getByText(/^Not drawn\. Missing: .*standoff/)
      .waitFor();
    expect(await inCard("section").locator("svg").count()).toBe(0);
    expect(await inCard("ring").locator("svg").count()).toBe(0);
  });

  test("another sheet has no pictures, said in a line; a part stays folded as it was left", async () => {
    open = await openPage();
    const { page } = open;
    const pane = page.locator("#pane");
    await inPane("section").waitFor();
    await showSheet(open, "Scratch");
    await pane.getByText("Drawn from a procedure sheet, when one is shown.").waitFor();
    expect(await pane.locator("svg").count()).toBe(0);
    await showSheet(open, "Procedure sheet");
    await inPane("section").locator("svg").waitFor();
    await pane.getByRole("heading", { name: "Pictures of this joint" }).click();
    await inPane("section").waitFor({ state: "hidden" });
    await page.reload();
    await page.waitForSelector("html[data-ready]");
    await inPane("section").waitFor({ state: "attached" });
    expect(await inPane("section").isVisible()).toBe(false);
    expect(await pane.getByLabel("Sheet", { exact: true }).isVisible()).toBe(true);
  });

  test.each([
    ["pane of 300 px", { width: 300, height: 900 }, "#pane"],
    ["pane of 360 px, dark", { width: 360, height: 900, colorScheme: "dark" }, "#pane"],
    ["pane of 350 px", {}, "#pane"],
    ["card on a phone", PHONE, "#card"],
    ["card on a phone, dark", { ...PHONE, colorScheme: "dark" }, "#card"],
  ] as const)(
    "%s: nothing cut off or over another, captions of two lines at most, nothing serious for axe",
    async (_, look, place) => {
      open = await openPage(look);
      const show = open.page.getByRole("button", { name: "Show the pane" });
      if (place === "#pane" && (await show.isVisible())) await show.click();
      const pictures = open.page.locator(`${place} .picture svg`);
      await pictures.nth(2).waitFor();
      expect(await open.page.evaluate(flaws, place)).toEqual([]);
      // The rest of the pane is looked at in pane.test.ts, in more looks than these.
      const drawn = place === "#pane" ? PICTURES_OF_PANE : place;
      expect(await seriousViolations(open.page, drawn)).toEqual([]);
    },
  );
});

describe("in a workbook of its own", () => {
  beforeAll(async () => {
    open = await openPage();
  });
  beforeEach(async () => {
    await open.newWorkbook();
  });

  test("another wall is typed: the pane's section follows it, in its label and to scale", async () => {
    const section = inPane("section");
    await section.getByText("0.0650 in", { exact: true }).waitFor();
    const wallOverFace = async (): Promise<number> => {
      const height = Number(await section.locator('[data-part="wall"]').getAttribute("height"));
      const face = section.locator('[data-part="face"]');
      return height / (Number(await face.getAttribute("x2")) - Number(await face.getAttribute("x1")));
    };
    const before = await wallOverFace();
    await open.edit("wall", "0.083");
    await section.getByText("0.0830 in", { exact: true }).waitFor();
    expect(await section.getByText("0.0650 in", { exact: true }).count()).toBe(0);
    expect(await wallOverFace()).not.toBeCloseTo(before, 3);
    const standoff = Number(await open.value("standoff")).toFixed(4);
    await section
      .getByRole("img", { name: new RegExp(`wall 0\\.0830 in.*tip ${standoff} in above`) })
      .waitFor();
    expect(open.errors).toEqual([]);
  });

  test("a negative wall: the pane tells what is missing with the words of the check", async () => {
    await open.edit("wall", "-0.065");
    await inPane("section")
      .getByText(/^Not drawn\. Missing: .*standoff/)
      .waitFor();
    expect(await inPane("section").locator("p").last().textContent()).toBe(await open.value("check_tube"));
    expect(await inPane("ring").locator("svg").count()).toBe(0);
  });

  test("in millimeters nothing is cut off either", async () => {
    await convert(open, "SI");
    await inPane("section").getByText("1.651 mm", { exact: true }).waitFor();
    expect(await open.page.evaluate(flaws, "#pane")).toEqual([]);
  });

  test("they are printed with the procedure sheet, each with its words", async () => {
    const said = await open.page.evaluate(() => {
      window.dispatchEvent(new Event("beforeprint"));
      const all = [...document.querySelectorAll("#print-page .picture svg")];
      const labels = all.map((picture) => picture.getAttribute("aria-label") ?? "");
      window.dispatchEvent(new Event("afterprint"));
      return labels;
    });
    expect(said).toHaveLength(3);
    for (const words of said) expect(words.length).toBeGreaterThan(20);
  });
});
