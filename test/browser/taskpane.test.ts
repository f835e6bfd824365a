/** The pane's own page as Excel loads it, with a stand-in for the script that Office's network delivers. */

import axe from "axe-core";
import type axeModule from "axe-core";
import type { Browser, Page } from "playwright-core";

import { serve } from "../../tools/dev/serve";
import { launch } from "./launch";
import { DEVELOPMENT_URL, identityAt } from "../../tools/build/project";

/** An Excel whose selected cell holds a refusal; it knows nothing else. Runs in the page. */
const OFFICE_SCRIPT = `(() => {
  class CellError extends Error {
    constructor(code, message) { super(message); this.code = code; }
  }
  window.reported = [];
  window.CustomFunctions = {
    Error: CellError,
    ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" },
    associate: (id) => window.reported.push(id),
  };
  window.Office = {
    onReady: () => Promise.resolve({ host: "Excel", platform: "OfficeOnline" }),
    context: {
      requirements: { isSetSupported: () => false },
      officeTheme: { bodyBackgroundColor: "#262626" },
    },
  };
  const context = { sync: () => Promise.resolve() };
  const cell = {
    load() {},
    address: "Sheet1!B2",
    formulas: [["=${identityAt(DEVELOPMENT_URL).namespace}.STANDOFF(-0.065)"]],
    text: [["#VALUE!"]],
    valueTypes: [["Error"]],
    worksheet: { context, names: { items: [], load() {} } },
  };
  const event = { add() {} };
  const getActiveWorksheet = () => ({ name: "Sheet1", load() {}, names: cell.worksheet.names });
  const worksheets = { getActiveWorksheet, onCalculated: event, onChanged: event, onActivated: event };
  context.workbook = { getActiveCell: () => cell, onSelectionChanged: event, worksheets };
  window.Excel = { run: (_, work) => work(context) };
})();`;

let browser: Browser;
let page: Page;
let address: string;
let close: () => Promise<void>;
const errors: string[] = [];
const foreign: string[] = [];

beforeAll(async () => {
  const server = await serve(4380);
  ({ address, close } = server);
  browser = await launch();
  page = await browser.newPage({ viewport: { width: 300, height: 900 } });
  page.on("pageerror", (error) => errors.push(error.message));
  page.on("console", (message) => {
    if (message.type() === "error") errors.push(message.text());
  });
  await page.route(/^https:/, async (route) => {
    if (!route.request().url().startsWith("https://appsforoffice.microsoft.com/")) {
      foreign.push(route.request().url());
      await route.abort();
      return;
    }
    await route.fulfill({ contentType: "text/javascript", body: OFFICE_SCRIPT });
  });
  await page.goto(`${address}/taskpane.html`);
  await page
    .getByRole("heading", { name: "Ringbead", exact: true })
    .waitFor({ timeout: 5000 })
    .catch((problem: unknown) => {
      throw new Error([String(problem), ...errors].join("\n"));
    });
});

afterAll(async () => {
  await browser.close();
  await close();
});

test("starts under its own content policy: no script is stopped, none comes from elsewhere", () => {
  expect(errors).toEqual([]);
  expect(foreign).toEqual([]);
});

test("Excel hears every function, and the pane tells the sentence behind the selected cell's error", async () => {
  const reported = await page.evaluate(() => (globalThis as unknown as { reported: string[] }).reported);
  expect(reported).toContain("STANDOFF");
  expect(new Set(reported).size).toBe(reported.length);
  await page.getByText("B2 refuses. wall = -0.065 in: must be above 0").waitFor();
});

test("offers protection, repair and recalculation in Excel", async () => {
  await page.getByLabel("Protect the computed cells (no password)").check();
  await expect(page.getByRole("button", { name: "Repair formulas" }).count()).resolves.toBe(1);
  await expect(page.getByRole("button", { name: "Recalculate this sheet" }).count()).resolves.toBe(1);
});

test("is 300 pixels wide without sideways scrolling, and axe finds nothing", async () => {
  const overflow = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(overflow).toBeLessThanOrEqual(0);
  await page.evaluate(axe.source);
  const { violations } = await page.evaluate(
    async () => await (globalThis as unknown as { axe: typeof axeModule }).axe.run(),
  );
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`)).toEqual([]);
});

test("the policy does stop what it should: another address, a script in the page", async () => {
  const stopped = await page.evaluate(async () => {
    const found: string[] = [];
    document.addEventListener("securitypolicyviolation", ({ effectiveDirective }) => {
      found.push(effectiveDirective);
    });
    await fetch("https://elsewhere.example/").catch(() => undefined);
    const script = document.createElement("script");
    script.textContent = "window.escaped = true";
    document.body.append(script);
    await new Promise((resolve) => requestAnimationFrame(resolve));
    await new Promise((resolve) => requestAnimationFrame(resolve));
    return { found, escaped: "escaped" in globalThis };
  });
  expect(stopped).toEqual({ found: ["connect-src", "script-src-elem"], escaped: false });
  expect(foreign).toEqual([]);
});

test("the pane is dark in a dark Office on a light system", async () => {
  expect(await page.locator("main.pane").getAttribute("data-theme")).toBe("dark");
  const background = await page
    .locator("main.pane")
    .evaluate((pane) => getComputedStyle(pane).backgroundColor);
  expect(background).toBe("rgb(27, 34, 38)");
});
