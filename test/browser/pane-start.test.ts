/** The pane's page where Excel does not answer as it should: it is never white, and says what to do. */

import type { Browser, Page } from "playwright-core";

import { WORDS } from "../../taskpane/hosts/excel/start";
import { serve } from "../../tools/dev/serve";
import { launch } from "./launch";

const OFFICE = "https://appsforoffice.microsoft.com/";

/** As much of Office's script as a start needs. Runs in the page. */
function office(onReady: string, more = ""): string {
  return `window.CustomFunctions = { associate() {} };
    window.Office = { onReady: () => ${onReady}, context: { requirements: { isSetSupported: () => false } } };
    window.Excel = { run: () => Promise.reject(new Error("no workbook")) };
    ${more}`;
}
const NEVER = "new Promise((resolve) => { window.answer = () => resolve({ host: 'Excel' }); })";

let browser: Browser;
let page: Page;
let address: string;
let close: () => Promise<void>;

beforeAll(async () => {
  ({ address, close } = await serve(4580));
  browser = await launch();
});
afterAll(async () => {
  await browser.close();
  await close();
});
beforeEach(async () => {
  page = await browser.newPage({ viewport: { width: 300, height: 900 } });
});
afterEach(async () => {
  await page.close();
});

/** Opens the pane's page with this for Office's script; without one the script does not come. */
async function open(script?: string): Promise<void> {
  await page.route(`${OFFICE}**`, (route) => {
    const isScript = route.request().url().endsWith("office.js");
    if (!isScript) return route.fulfill({ contentType: "text/html", body: "<p>Trust this server?</p>" });
    return script === undefined
      ? route.abort()
      : route.fulfill({ contentType: "text/javascript", body: script });
  });
  await page.goto(`${address}/taskpane.html`);
}

const startingText = (): Promise<string> => page.locator("#starting p").innerText();

test("a page whose own script does not come keeps the text it was delivered with", async () => {
  await page.route(/taskpane\.[0-9a-f]+\.js$/, (route) => route.abort());
  await open(office(NEVER));
  expect(await startingText()).toMatch(/^Waiting for Excel\. If this text stays, .* open it again/s);
  await page.getByRole("heading", { name: "Ringbead" }).waitFor();
});

test("the text is there while Office's script is still on its way", async () => {
  let deliver: () => void = () => undefined;
  const delivered = new Promise<void>((resolve) => (deliver = resolve));
  await page.route(`${OFFICE}**`, async (route) => {
    await delivered;
    await route.abort();
  });
  await page.goto(`${address}/taskpane.html`, { waitUntil: "commit" });
  // By a script of the page's own: what the testing program adds to a page comes only when it is loaded.
  await page.waitForFunction(() => {
    const line = document.querySelector<HTMLElement>("#starting p");
    return line?.innerText.startsWith("Waiting for Excel") === true && line.getClientRects().length > 0;
  });
  expect(await page.evaluate(() => document.readyState)).toBe("loading");
  deliver();
  await page.getByText(WORDS.noScript).waitFor();
});

test("no Office script", async () => {
  await open();
  expect(await startingText()).toBe(WORDS.noScript);
});

test("not Excel: a page in a browser leads to the browser sheet", async () => {
  await open(office("Promise.resolve({ host: null, platform: null })"));
  await page.getByText(WORDS.elsewhere).waitFor();
  await page.getByRole("link", { name: "Open the browser sheet" }).click();
  await page.waitForURL(`${address}/sheet/`);
});

test("framed by another page outside Office: nothing to click, and a warning", async () => {
  await page.route(`${address}/stranger.html`, (route) =>
    route.fulfill({ contentType: "text/html", body: '<iframe src="taskpane.html"></iframe>' }),
  );
  await page.route(`${OFFICE}**`, (route) =>
    route.fulfill({ contentType: "text/javascript", body: office("Promise.resolve({ host: null })") }),
  );
  await page.goto(`${address}/stranger.html`);
  const frame = page.frameLocator("iframe");
  await frame.getByText(WORDS.framed).waitFor();
  expect(await frame.locator("button, a, input").count()).toBe(0);
});

test("a host that is silent for ten seconds, and answers after all", async () => {
  // Stopped, so that a busy machine's own seconds do not count.
  await page.clock.install({ time: 0 });
  await page.clock.pauseAt(1000);
  await open(office(NEVER));
  await page.clock.runFor(9_900);
  expect(await startingText()).toMatch(/^Waiting for Excel/);
  await page.clock.runFor(200);
  expect(await startingText()).toBe(WORDS.silent);
  await page.clock.resume();
  await page.evaluate(() => {
    (globalThis as unknown as { answer: () => void }).answer();
  });
  await page.getByRole("button", { name: "Repair formulas" }).waitFor();
  expect(await page.locator("#starting").count()).toBe(0);
  expect(await page.locator("main").count()).toBe(1);
});

test("a server that Office does not know: Office's own question is seen, and the words point to it", async () => {
  await page.clock.install();
  await open(
    office(
      NEVER,
      `const frame = document.createElement("iframe"); frame.src = "${OFFICE}trust.html"; document.body.prepend(frame);`,
    ),
  );
  await page.frameLocator("iframe").getByText("Trust this server?").waitFor();
  await page.clock.runFor(10_000);
  expect(await startingText()).toContain("If Office shows a question about trusting this server, answer it");
});

test("a start that fails is said with its reason", async () => {
  await open(office("Promise.reject(new Error('out of order'))"));
  await page.getByText("The pane could not start: out of order.").waitFor();
});
