/**
 * Names the files that a page loads by their content, so that a browser never runs an old one with a new page. The names
 * that a manifest, a workbook or a person relies on stay as they are: taskpane.html, functions.js, functions.json,
 * help.html, manifest.xml and the icons.
 */

import { createHash } from "node:crypto";
import { copyFileSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";

/** By folder: what its pages load. */
const LOADED_IN: Readonly<Record<string, readonly string[]>> = {
  ".": ["listen.js", "pane.css", "taskpane.js", "help.css", "help-search.js"],
  sheet: ["sheet.css", "sheet.js"],
};
/** The browser sheet asks for the pane's styles by this name too. */
const ALSO_BY_NAME = ["pane.css"];
const DIGITS = 10;

export function nameByContent(dist: string): void {
  for (const [folder, files] of Object.entries(LOADED_IN)) {
    const here = path.join(dist, folder);
    const pages = readdirSync(here)
      .filter((name) => name.endsWith(".html"))
      .map((name) => path.join(here, name));
    for (const file of files) {
      const from = path.join(here, file);
      const name = contentName(file, readFileSync(from));
      const loading = pages.filter((page) => readFileSync(page, "utf8").includes(`"${file}"`));
      if (loading.length === 0) throw new Error(`no page loads ${file}`);
      for (const page of loading) {
        writeFileSync(page, readFileSync(page, "utf8").replaceAll(`"${file}"`, `"${name}"`));
      }
      copyFileSync(from, path.join(here, name));
      if (!ALSO_BY_NAME.includes(file)) rmSync(from);
    }
  }
}

/** taskpane.js → taskpane.0123456789.js */
export function contentName(file: string, content: Buffer): string {
  const { name, ext } = path.parse(file);
  return `${name}.${createHash("sha256").update(content).digest("hex").slice(0, DIGITS)}${ext}`;
}
