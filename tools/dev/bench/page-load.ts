/** From an empty browser to the first number of the browser sheet, as it is built. */

import { existsSync } from "node:fs";
import path from "node:path";

import type { Browser } from "playwright-core";
import { chromium } from "playwright-core";

import { dist } from "../../build/project";
import { findChromium } from "../chromium";
import { serve } from "../serve";
import type { Row } from "./measure";
import { median, short } from "./measure";

const BUDGET = 1500;
const ROUNDS = 9;
const PORT = 4480;

/** One row that says so where there is no browser or nothing is built. */
export async function pageRows(): Promise<Row[]> {
  const executablePath = findChromium();
  if (executablePath === undefined || !existsSync(path.join(dist, "sheet", "index.html")))
    return [{ what: "not measured: needs Chromium and a build", ms: "" }];
  const server = await serve(PORT);
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
  const loads: Load[] = [];
  // The first also waits for the browser itself.
  for (let round = 0; round <= ROUNDS; round += 1) {
    const load = await loaded(browser, `${server.address}/sheet/`);
    if (round > 0) loads.push(load);
  }
  await browser.close();
  await server.close();
  const of = (name: keyof Load): number => short(median(loads.map((load) => load[name])));
  const ready = of("ready");
  return [
    { what: "scripts run", ms: of("scripts") },
    { what: "first number", ms: ready },
    { what: "budget", ms: BUDGET },
    ...(ready > BUDGET ? [{ what: "OVER the budget by", ms: short(ready - BUDGET) }] : []),
  ];
}

interface Load {
  /** ms from the start of the navigation to the end of the page's own scripts. */
  readonly scripts: number;
  /** … to the sheet with its computed numbers. */
  readonly ready: number;
}

/** In a context of its own, which has nothing in its cache. */
async function loaded(browser: Browser, address: string): Promise<Load> {
  const context = await browser.newContext({ viewport: { width: 1400, height: 900 } });
  const page = await context.newPage();
  await page.addInitScript(() => {
    new MutationObserver(() => {
      if (document.querySelector("html")?.dataset.ready === "true") performance.mark("ready");
    }).observe(document, { attributes: true, subtree: true, attributeFilter: ["data-ready"] });
  });
  await page.goto(address);
  await page.waitForSelector("html[data-ready]");
  const load = await page.evaluate(() => ({
    scripts:
      performance
        .getEntriesByType("navigation")
        .map((entry) => (entry as PerformanceNavigationTiming).domContentLoadedEventStart)[0] ?? NaN,
    ready: performance.getEntriesByName("ready")[0]?.startTime ?? NaN,
  }));
  await context.close();
  return load;
}
