import { seriousViolations } from "./axe";
import type { Look, OpenPage } from "./open-page";
import { openPage } from "./open-page";

/** The pane of Excel is about 350 px wide and may be dragged down to 300; text may be twice its size. */
const LOOKS: readonly (readonly [name: string, look: Look, textSize: string])[] = [
  ["light", {}, "100%"],
  ["dark", { colorScheme: "dark" }, "100%"],
  ["forced colours", { forcedColors: "active" }, "100%"],
  ["narrow, 300 px", { width: 300, height: 900 }, "100%"],
  ["text at 200 %", {}, "200%"],
  ["narrow and dark, text at 200 %", { width: 300, height: 900, colorScheme: "dark" }, "200%"],
];

let open: OpenPage;

describe("in a page of its own", () => {
  afterEach(async () => {
    await open.close();
  });

  test.each(LOOKS)("%s: nothing serious for axe, nothing cut off at the side", async (_, look, textSize) => {
    open = await openPage(look);
    // On a narrow page the pane is hidden until it is asked for.
    const show = open.page.getByRole("button", { name: "Show the pane" });
    if (await show.isVisible()) await show.click();
    await open.page.addStyleTag({ content: `html { font-size: ${textSize} !important; }` });
    expect(await seriousViolations(open.page, "#pane", "#bar")).toEqual([]);
    const overflow = await open.page.evaluate(() => {
      const main = document.querySelector("#pane")?.shadowRoot?.querySelector("main");
      return (main?.scrollWidth ?? 0) - (main?.clientWidth ?? 0);
    });
    expect(overflow).toBeLessThanOrEqual(0);
  });
});

describe("in a workbook of its own", () => {
  beforeAll(async () => {
    open = await openPage();
  });
  afterAll(async () => {
    await open.close();
  });

  test("the whole pane by keyboard alone: every control in reading order, each with a visible focus", async () => {
    await open.page.locator("#pane").getByLabel("Sheet", { exact: true }).focus();
    const walked: string[] = [];
    for (let step = 0; step < 12; step += 1) {
      const focused = await open.page.evaluate(() => {
        const active = document.querySelector("#pane")?.shadowRoot?.activeElement;
        if (!(active instanceof HTMLElement)) return undefined;
        const { outlineStyle, outlineWidth } = getComputedStyle(active);
        const name = active.id === "" ? active.textContent.trim() : active.id;
        return { name, outlined: outlineStyle !== "none" && parseFloat(outlineWidth) >= 2 };
      });
      if (focused === undefined) break;
      expect([focused.name, focused.outlined]).toEqual([focused.name, true]);
      walked.push(focused.name);
      await open.page.keyboard.press("Tab");
    }
    expect(walked.slice(0, 5)).toEqual([
      "template",
      "units-US",
      "Insert",
      "Convert this sheet",
      "Convert this sheet",
    ]);
    expect(walked).toContain("find");
  });

  test("text from cells stays text in the pane", async () => {
    await open.newWorkbook();
    await open.edit("job", '=BEAD.REASON("<img src=x onerror=alert(1)>")');
    await open.select("job");
    await open.page
      .locator("#pane")
      .getByRole("heading", { name: /BEAD\.REASON/ })
      .waitFor();
    const images = await open.page.evaluate(
      () => document.querySelector("#pane")?.shadowRoot?.querySelectorAll("img").length,
    );
    expect(images).toBe(0);
    expect(open.errors).toEqual([]);
  });

  test("a cell of a sheet explains itself: a table's cell, a native one, a typed one, a check", async () => {
    await open.newWorkbook();
    const selected = open.page
      .locator("#pane")
      .locator("section")
      .filter({ has: open.page.getByRole("heading", { name: "Selected cell" }) });
    const beside = async (name: string, columns: number, rows: number): Promise<void> => {
      const { x, y } = await open.pointOf(name, columns, rows);
      await open.page.mouse.click(x, y);
    };
    // Sector 4's mean, with the rise that its own row shows.
    await beside("sectors", 3, 3);
    await selected.getByText(/heat has come around the tube: in this row \d+° ahead of the arc/).waitFor();
    await beside("phases", 1, 2);
    await selected.getByText(/Row 3, column 2 of the answer that the formula in E\d+ gives\./).waitFor();
    await selected.getByRole("heading", { name: /^BEAD\.CYCLE_PHASES/ }).waitFor();
    await beside("check_heat", 0, 0);
    await selected.getByText(/^A check: ✓ when it holds/).waitFor();
    await beside("wall", 0, 0);
    await selected.getByText(/is for typing\.$/).waitFor();
    expect(open.errors).toEqual([]);
  });

  test("a sheet is inserted and a formula found without a pointer", async () => {
    await open.newWorkbook();
    const pane = open.page.locator("#pane");
    await pane.getByLabel("Sheet", { exact: true }).focus();
    await open.page.keyboard.type("Cycle");
    await open.page.keyboard.press("Tab");
    await open.page.keyboard.press("ArrowDown");
    await open.page.keyboard.press("Tab");
    await open.page.keyboard.press("Enter");
    await pane.getByRole("status").getByText("Inserted “Cycle plan” in SI units").waitFor();
    expect(await open.value("sheet_units")).toBe("SI");
    await pane.getByLabel(/Words, such as/).focus();
    await open.page.keyboard.type("crew output");
    await pane.getByText("1 formula", { exact: true }).waitFor();
  });

  test("what came of a button far below the top of the pane is read beside it", async () => {
    await open.newWorkbook();
    await open.page.setViewportSize({ width: 1400, height: 600 });
    const pane = open.page.locator("#pane");
    for (const [button, told] of [
      ["Convert this sheet", /^Converted to SI/],
      ["Recalculate this sheet", /^(?!Working)./],
    ] as const) {
      await pane.getByRole("button", { name: button }).click();
      const status = pane.locator(".status").filter({ hasText: told });
      await status.waitFor();
      const [said, around] = [await status.boundingBox(), await pane.boundingBox()];
      expect(await pane.evaluate(({ scrollTop }) => scrollTop)).toBeGreaterThan(0);
      expect(said?.y).toBeGreaterThanOrEqual(around?.y ?? NaN);
      expect(said?.y).toBeLessThan((around?.y ?? NaN) + 10);
    }
  });
});
