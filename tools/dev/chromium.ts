/** Finds a Chromium for the browser tests, or installs one. */

import { existsSync } from "node:fs";
import path from "node:path";

import { run } from "./program";

const PROGRAMS = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome"];
const APPLICATIONS = [
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe",
];

/** Path of a browser that is there, or undefined. */
export function findChromium(): string | undefined {
  const folders = (process.env.PATH ?? "").split(path.delimiter);
  const onPath = PROGRAMS.flatMap((program) => folders.map((folder) => path.join(folder, program)));
  return [...onPath, ...APPLICATIONS].find((file) => existsSync(file));
}

/**
 * Path of a browser, installed first if need be: Debian's package where this is root on Debian, else the one that the
 * test library brings. Undefined stands for the latter.
 */
export async function ensureChromium(): Promise<string | undefined> {
  const found = findChromium();
  if (found !== undefined) return found;
  if (process.getuid?.() === 0 && existsSync("/usr/bin/apt-get")) {
    console.log("installing Debian's Chromium for the browser tests (about a minute, once)");
    run("apt-get", ["update", "-qq"]);
    run("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "chromium"]);
    return findChromium();
  }
  const { chromium } = await import("playwright-core");
  if (!existsSync(chromium.executablePath())) {
    console.log("installing a Chromium for the browser tests (once)");
    run("npx", ["playwright-core", "install", "chromium"]);
  }
  return chromium.executablePath();
}
