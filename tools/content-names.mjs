/**
 * Names the files that a page loads by their content, so that a browser never runs an old one with a new page. The names
 * that a manifest, a workbook or a person relies on stay as they are: taskpane.html, functions.js, functions.json,
 * help.html, manifest.xml and the icons.
 */

import { createHash } from "node:crypto";
import { copyFileSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";

/** @type {Record<string, string[]>} */
const LOADED_BY = {
  "taskpane.html": ["listen.js", "pane.css", "taskpane.js"],
  "help.html": ["help.css"],
  "sheet/index.html": ["sheet.css", "sheet.js"],
};
/** The browser sheet asks for the pane's styles by this name too. */
const ALSO_BY_NAME = ["pane.css"];
const DIGITS = 10;

/** @param {string} dist */
export function nameByContent(dist) {
  for (const [page, files] of Object.entries(LOADED_BY)) {
    const pageFile = path.join(dist, page);
    let html = readFileSync(pageFile, "utf8");
    for (const file of files) {
      const from = path.join(path.dirname(pageFile), file);
      const name = contentName(file, readFileSync(from));
      if (!html.includes(`"${file}"`)) throw new Error(`${page} does not load ${file}`);
      html = html.replaceAll(`"${file}"`, `"${name}"`);
      copyFileSync(from, path.join(path.dirname(pageFile), name));
      if (!ALSO_BY_NAME.includes(file)) rmSync(from);
    }
    writeFileSync(pageFile, html);
  }
}

/** taskpane.js → taskpane.0123456789.js @param {string} file @param {Buffer} content */
export function contentName(file, content) {
  const { name, ext } = path.parse(file);
  return `${name}.${createHash("sha256").update(content).digest("hex").slice(0, DIGITS)}${ext}`;
}
