/** npm run pictures: takes the pictures in docs/ of the built browser sheet, so that they can be taken again. */

import { mkdirSync } from "node:fs";
import path from "node:path";

import { chromium } from "playwright-core";

import { root } from "../build/project";
import { ensureChromium } from "./chromium";
import { serve } from "./serve";

interface Picture {
  readonly file: string;
  readonly width: number;
  readonly height: number;
  readonly colorScheme?: "dark";
  readonly forcedColors?: "active";
  readonly sheet?: string;
  /** As it is set out for paper: the top of it, as much as a Letter page holds between its margins. */
  readonly onPaper?: true;
}

/** Letter less margins of half an inch, in CSS pixels. */
const PAPER = { width: 720, height: 960 };

const PICTURES: readonly Picture[] = [
  { file: "browser-sheet.png", width: 1280, height: 900 },
  { file: "browser-sheet-dark.png", width: 1280, height: 900, colorScheme: "dark" },
  { file: "browser-sheet-narrow.png", width: 420, height: 1100 },
  { file: "pane-forced-colours.png", width: 1000, height: 900, forcedColors: "active" },
  { file: "gas-estimate.png", width: 1280, height: 1150, sheet: "Gas estimate" },
  { file: "cycle-plan.png", width: 1280, height: 1150, sheet: "Cycle plan" },
  { file: "printed-procedure.png", ...PAPER, onPaper: true },
  { file: "printed-bid.png", ...PAPER, sheet: "Bid", onPaper: true },
];

const executablePath = await ensureChromium();
const folder = path.join(root, "docs");
mkdirSync(folder, { recursive: true });
const server = await serve(4380);
const browser = await chromium.launch({
  args: ["--no-sandbox"],
  ...(executablePath === undefined ? {} : { executablePath }),
});
for (const picture of PICTURES) {
  const { file, width, height, colorScheme = "light", forcedColors = "none", sheet, onPaper } = picture;
  const viewport = onPaper === true ? { width: 1280, height } : { width, height };
  const page = await browser.newPage({ viewport, colorScheme, forcedColors });
  await page.goto(`${server.address}/sheet/`);
  await page.waitForSelector("html[data-ready]");
  if (sheet !== undefined) {
    await page.getByLabel("Sheet", { exact: true }).selectOption({ label: sheet });
    await page.getByRole("button", { name: "Insert", exact: true }).click();
    await page.getByText(`Inserted “${sheet}”`).waitFor();
    await page.locator("#pane").evaluate((pane) => {
      pane.scrollTop = 0;
    });
  }
  if (onPaper === true) {
    await page.evaluate(() => window.dispatchEvent(new Event("beforeprint")));
    await page.emulateMedia({ media: "print" });
    await page.setViewportSize({ width, height });
  }
  await page.waitForTimeout(500);
  await page.screenshot({ path: path.join(folder, file) });
  console.log(`docs/${file}`);
}
await browser.close();
await server.close();
