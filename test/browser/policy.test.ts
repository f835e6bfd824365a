/** The content policies hold in a browser: for each page what is written into it and what lies elsewhere is stopped. */

import type { Browser, Page } from "playwright-core";

import { serve } from "../../tools/dev/serve";
import { launch } from "./launch";

const ELSEWHERE = "https://elsewhere.example/";

let browser: Browser;
let page: Page;
let address: string;
let close: () => Promise<void>;
let left: string[];

beforeAll(async () => {
  ({ address, close } = await serve(4480));
  browser = await launch();
});
afterAll(async () => {
  await browser.close();
  await close();
});
beforeEach(async () => {
  left = [];
  page = await browser.newPage();
  // Office's script is not there: the page stands without it.
  await page.route(/^https:/, async (route) => {
    if (route.request().url().startsWith(ELSEWHERE)) left.push(route.request().url());
    await route.abort();
  });
});
afterEach(async () => {
  await page.close();
});

/** Tries what hostile text would try, and tells which directives stopped something. Runs in the page. */
async function attempts(elsewhere: string): Promise<{ stopped: string[]; escaped: boolean }> {
  const stopped: string[] = [];
  document.addEventListener("securitypolicyviolation", ({ effectiveDirective }) => {
    stopped.push(effectiveDirective);
  });
  const script = document.createElement("script");
  script.textContent = "window.escaped = true";
  const handler = document.createElement("p");
  handler.setAttribute("onclick", "window.escaped = true");
  const outside = document.createElement("script");
  outside.src = `${elsewhere}a.js`;
  const image = document.createElement("img");
  image.src = `${elsewhere}a.png`;
  const frame = document.createElement("iframe");
  frame.src = `${elsewhere}a.html`;
  const base = document.createElement("base");
  base.href = elsewhere;
  const form = document.createElement("form");
  form.action = elsewhere;
  form.method = "post";
  document.head.append(base);
  document.body.append(script, handler, outside, image, frame, form);
  handler.click();
  form.submit();
  await fetch(elsewhere).catch(() => undefined);
  // A form is stopped only when the page comes to it; the wait ends as soon as it is, and long before the test's.
  for (let turns = 0; turns < 100 && !stopped.includes("form-action"); turns += 1) {
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  return { stopped: [...new Set(stopped)].sort(), escaped: "escaped" in globalThis };
}

test.each(["/sheet/", "/taskpane.html", "/help.html"])("%s", async (path) => {
  await page.goto(`${address}${path}`, { waitUntil: "load" });
  const { stopped, escaped } = await page.evaluate(attempts, ELSEWHERE);
  expect(escaped).toBe(false);
  expect(stopped).toEqual([
    "base-uri",
    "connect-src",
    "form-action",
    "frame-src",
    "img-src",
    "script-src-attr",
    "script-src-elem",
  ]);
  expect(left).toEqual([]);
});
