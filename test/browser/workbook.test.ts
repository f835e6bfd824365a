/** A workbook has a life: stored as it is edited, restored, opened from a file, kept apart by tabs. By a person's actions. */

import type { BrowserContext, Download, Page } from "playwright-core";

import type { OpenPage } from "./open-page";
import { openPage, storesNothing } from "./open-page";
import { convert, insert, showSheet } from "./working";

let open: OpenPage;
async function close(): Promise<void> {
  await open.close();
}

function stored(page: Page): ReturnType<Page["locator"]> {
  return page.locator("#stored", { hasText: /^Stored on this computer \d/ });
}

function notice(page: Page): ReturnType<Page["locator"]> {
  return page.locator("#notice");
}

async function reload(page: Page): Promise<void> {
  await page.reload();
  await page.waitForSelector("html[data-ready]");
}

/** The page again in another tab. */
async function anotherTab(context: BrowserContext, address: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(address);
  await page.waitForSelector("html[data-ready]");
  return page;
}

async function saved(page: Page): Promise<Download> {
  const [download] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Control+s")]);
  return download;
}

describe("stored in the browser", () => {
  beforeEach(async () => {
    open = await openPage();
  });
  afterEach(close);

  test("what was typed is there after a reload, with the time, and can be started afresh", async () => {
    await open.edit("wall", "0.083");
    await stored(open.page).waitFor();
    await reload(open.page);
    expect(await open.value("wall")).toBe(0.083);
    await notice(open.page)
      .getByText(/^Restored from \d/)
      .waitFor();
    await notice(open.page).getByRole("button", { name: "Start afresh" }).click();
    await open.page.locator("#workbook-name", { hasText: "Workbook 2" }).waitFor();
    expect(await open.value("wall")).toBe(0.065);
    // The first one is not lost by that.
    await open.page.locator("#workbook-name").click();
    await open.page.locator("#workbooks").getByRole("button", { name: "Workbook", exact: true }).click();
    await open.page.locator("#workbook-name", { hasText: /^Workbook$/ }).waitFor();
    expect(await open.value("wall")).toBe(0.083);
    expect(open.errors).toEqual([]);
  });

  test("a workbook has the name it is given, and all can be forgotten", async () => {
    await open.edit("wall", "0.083");
    await open.page.locator("#workbook-name").click();
    await open.page.getByLabel("Name", { exact: true }).fill("Line 4, invented");
    await open.page.getByRole("button", { name: "Rename" }).click();
    await open.page.locator("#workbook-name", { hasText: "Line 4, invented" }).waitFor();
    await stored(open.page).waitFor();
    await reload(open.page);
    expect(await open.page.locator("#workbook-name").textContent()).toBe("Line 4, invented");
    expect(await open.value("wall")).toBe(0.083);
    await open.page.locator("#workbook-name").click();
    await open.page.getByRole("button", { name: "Forget all that is stored" }).click();
    await notice(open.page)
      .getByText(/^Nothing is stored/)
      .waitFor();
    await reload(open.page);
    expect(await open.value("wall")).toBe(0.065);
  });

  test("nothing is to be undone on a fresh or restored page; an insert and a conversion are one step each", async () => {
    const sheets = (): Promise<string[]> => open.page.locator(".o-sheet").allInnerTexts();
    const first = await sheets();
    await open.select("job");
    for (let i = 0; i < 4; i += 1) await open.page.keyboard.press("Control+z");
    expect(await sheets()).toEqual(first);
    expect(await open.value("summary")).toMatch(/^✓/);
    await convert(open, "SI");
    await open.select("job");
    await open.page.keyboard.press("Control+z");
    expect([await open.value("sheet_units"), await open.value("wall")]).toEqual(["US", 0.065]);
    expect(await open.value("summary")).toMatch(/^✓/);
    // Forward again, the guarded units cell with the rest, and back.
    await open.page.keyboard.press("Control+y");
    expect([await open.value("sheet_units"), await open.value("wall")]).toEqual(["SI", 1.651]);
    expect(await open.value("summary")).toMatch(/^✓/);
    await open.page.keyboard.press("Control+z");
    expect([await open.value("sheet_units"), await open.value("wall")]).toEqual(["US", 0.065]);
    // What is guarded still is.
    await open.edit("standoff", "1");
    expect(await open.value("standoff")).toBeCloseTo(0.0425, 12);
    await open.select("job");
    await insert(open, "Procedure sheet");
    expect(await sheets()).toHaveLength(first.length + 1);
    await open.select("job");
    await open.page.keyboard.press("Control+z");
    expect(await sheets()).toEqual(first);
  });

  test("two tabs never have the same workbook: the second has one of its own, and both are kept", async () => {
    await open.edit("wall", "0.083");
    await stored(open.page).waitFor();
    const second = await anotherTab(open.page.context(), open.page.url());
    await notice(second)
      .getByText(/^“Workbook” is open in another tab\. This tab has its own workbook, “Workbook 2”\.$/)
      .waitFor();
    await second.close();
    await reload(open.page);
    expect(await open.page.locator("#workbook-name").textContent()).toBe("Workbook");
    expect(await open.value("wall")).toBe(0.083);
  });

  test("closing asks only while something is not stored yet", async () => {
    const asked: string[] = [];
    open.page.on("dialog", (dialog) => {
      asked.push(dialog.type());
      void dialog.accept();
    });
    await open.edit("wall", "0.083");
    await stored(open.page).waitFor();
    await Promise.all([open.page.waitForEvent("close"), open.page.close({ runBeforeUnload: true })]);
    expect(asked).toEqual([]);
  });

  test("a file holds the whole workbook, and opening it gives it back, by the chooser and by a drop", async () => {
    await open.edit("wall", "0.083");
    await insert(open, "Procedure sheet", "SI");
    const download = await saved(open.page);
    const place = await download.path();
    const [chooser] = await Promise.all([
      open.page.waitForEvent("filechooser"),
      open.page.getByRole("button", { name: "Open a file…" }).click(),
    ]);
    await chooser.setFiles({
      name: "line 4.xlsx",
      mimeType: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
      buffer: (await import("node:fs")).readFileSync(place),
    });
    await notice(open.page).getByText("Opened “line 4.xlsx”.").waitFor();
    expect(await open.page.locator(".o-sheet").allInnerTexts()).toEqual([
      expect.stringContaining("Procedure sheet 2"),
      expect.stringContaining("Procedure sheet"),
      expect.stringContaining("Scratch"),
    ]);
    expect(await open.value("sheet_units")).toBe("SI");
    await showSheet(open, "Procedure sheet");
    expect(await open.value("wall")).toBe(0.083);
    expect(await open.value("standoff")).toBeCloseTo(0.0515, 12);
    // It is a live form: it converts, and its checks judge.
    await open.edit("wall", "-1");
    expect(await open.value("summary")).toMatch(/^▲/);
    expect(open.errors).toEqual([]);
  });

  test("what is no workbook is told so, and the open one stays", async () => {
    await open.edit("wall", "0.083");
    for (const [name, text, reason] of [
      ["bid.csv", "1;2", "it is no .xlsx file"],
      ["torn.xlsx", "PK\u0003\u0004torn", ""],
    ] as const) {
      const [chooser] = await Promise.all([
        open.page.waitForEvent("filechooser"),
        open.page.getByRole("button", { name: "Open a file…" }).click(),
      ]);
      await chooser.setFiles({ name, mimeType: "text/plain", buffer: Buffer.from(text) });
      await notice(open.page).getByText(`▲ “${name}” was not opened: ${reason}`).waitFor();
    }
    expect(await open.value("wall")).toBe(0.083);
  });
});

describe("in one page, each in a new workbook", () => {
  beforeAll(async () => {
    open = await openPage();
  });
  beforeEach(async () => {
    await open.newWorkbook();
  });
  afterAll(close);

  test("a clipboard of the engine's own kind that is malformed loses nothing", async () => {
    await open.edit("wall", "0.083");
    await open.select("job");
    await open.page.evaluate(() => {
      const data = new DataTransfer();
      data.setData("text/html", "<div data-osheet-clipboard-id='x' data-osheet-clipboard='{broken'>1</div>");
      data.setData("text/plain", "1");
      document.activeElement?.dispatchEvent(
        new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true }),
      );
    });
    await open.page.waitForTimeout(500);
    expect(await open.page.locator(".o-grid-overlay").isVisible()).toBe(true);
    expect(await open.value("wall")).toBe(0.083);
    await open.edit("wall", "0.065");
    expect(await open.value("standoff")).toBeCloseTo(0.0425, 12);
  });

  test("when the engine gives up, the grid comes back with the work in it", async () => {
    await open.edit("wall", "0.083");
    await open.page.evaluate(() => {
      document.querySelector("#sheet .o-spreadsheet")?.remove();
    });
    await open.page.locator(".o-grid-overlay").waitFor();
    expect(await open.value("wall")).toBe(0.083);
    await open.edit("wall", "0.065");
    expect(await open.value("standoff")).toBeCloseTo(0.0425, 12);
  });

  test("print shows what the sheet shows at that moment, without a button pressed before", async () => {
    const printed = (): Promise<string> =>
      open.page.evaluate(() => {
        window.dispatchEvent(new Event("beforeprint"));
        const text = document.getElementById("print-page")?.textContent ?? "";
        window.dispatchEvent(new Event("afterprint"));
        return text;
      });
    expect(await printed()).toContain("0.0425");
    await open.edit("wall", "0.083");
    expect(await printed()).toContain("0.0515");
    expect(await open.page.locator("#print-page").count()).toBe(0);
  });

  test("F6 goes round bar, grid and pane, and the pane can be hidden", async () => {
    const place = (): Promise<string | undefined> =>
      open.page.evaluate(() =>
        ["bar", "sheet", "pane"].find(
          (id) => document.getElementById(id)?.contains(document.activeElement) === true,
        ),
      );
    await open.select("job");
    const seen: (string | undefined)[] = [];
    for (let i = 0; i < 4; i += 1) {
      await open.page.keyboard.press("F6");
      seen.push(await place());
    }
    expect(seen).toEqual(["pane", "bar", "sheet", "pane"]);
    await open.page.keyboard.press("Shift+F6");
    expect(await place()).toBe("sheet");
    // Keys go to the selected cell again.
    await open.page.keyboard.type("Invented job 2");
    await open.page.keyboard.press("Enter");
    expect(await open.value("job")).toBe("Invented job 2");
    await open.page.getByRole("button", { name: "Hide the pane" }).click();
    expect(await open.page.locator("#pane").isVisible()).toBe(false);
    await open.page.getByRole("button", { name: "Show the pane" }).click();
    expect(await open.page.locator("#pane").isVisible()).toBe(true);
  });
});

describe("where the browser does not store", () => {
  afterEach(close);

  test("a refusal is told, and closing asks", async () => {
    open = await openPage({ before: storesNothing });
    await open.edit("wall", "0.083");
    await open.page
      .locator("#stored", { hasText: /^▲ Not stored \(this browser keeps nothing for this page\)/ })
      .waitFor();
    expect(await open.value("wall")).toBe(0.083);
    const asked = new Promise<string>((resolve) => {
      open.page.on("dialog", (dialog) => {
        resolve(dialog.type());
        void dialog.accept();
      });
    });
    await open.page.close({ runBeforeUnload: true });
    expect(await asked).toBe("beforeunload");
  });

  test("a full disk is told, the work stays, and it is stored as soon as there is room", async () => {
    open = await openPage({
      before: () => {
        type Put = (this: IDBObjectStore, value: unknown) => unknown;
        const put = Reflect.get(IDBObjectStore.prototype, "put") as Put;
        Object.assign(IDBObjectStore.prototype, {
          put(this: IDBObjectStore, value: unknown) {
            if (!("isFull" in globalThis)) return put.call(this, value);
            throw new DOMException("no room left on this device", "QuotaExceededError");
          },
        });
        Object.assign(globalThis, { isFull: true });
      },
    });
    await open.edit("wall", "0.083");
    await open.page
      .locator("#stored", { hasText: /^▲ Not stored \(no room left on this device\)/ })
      .waitFor();
    await open.page.evaluate(() => Reflect.deleteProperty(globalThis, "isFull"));
    await stored(open.page).waitFor();
    await reload(open.page);
    expect(await open.value("wall")).toBe(0.083);
  });
});
