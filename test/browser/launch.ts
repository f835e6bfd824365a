/** Starts the Chromium that the tests work in: the machine's, or the one that the test library brings. */

import type { Browser } from "playwright-core";
import { chromium } from "playwright-core";

const SETTINGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-background-networking",
  "--disable-component-update",
];

export function launch(): Promise<Browser> {
  const executablePath = process.env.RINGBEAD_CHROMIUM;
  return chromium.launch({
    args: SETTINGS,
    ...(executablePath === undefined ? {} : { executablePath }),
  });
}
