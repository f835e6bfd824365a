/** NOTICE.md: whose work is in what we ship, and with what it is made, each with its version and licence. */

import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";

import { root } from "./project.mjs";
import { SHIPPED } from "./shipped.mjs";

export const NOTICE_PAGE = path.join(root, "NOTICE.md");

/** @param {string} name @returns {{ version: string, license: string }} */
export function installed(name) {
  return JSON.parse(readFileSync(path.join(root, "node_modules", name, "package.json"), "utf8"));
}

/** @returns {string[]} */
export function developedWith() {
  return Object.keys(JSON.parse(readFileSync(path.join(root, "package.json"), "utf8")).devDependencies);
}

export function noticePage() {
  const shipped = SHIPPED.map(({ name, copy, inside }) => {
    const { version, license } = installed(name);
    return [inside === undefined ? name : `${name}, inside ${inside}`, version, license, `\`${copy}\``];
  });
  const tools = developedWith().map((name) => {
    const { version, license } = installed(name);
    return [name, version, license];
  });
  return [
    "# Whose work this stands on",
    "",
    "Made by `npm run docs` from the installed packages; changed nowhere else. Ringbead itself is under the MIT licence, in",
    "`LICENSE`, shipped as `licence.txt`.",
    "",
    "## In what is shipped",
    "",
    "The functions and the pane hold nobody else's code. The browser sheet holds these; the text of each licence is",
    "shipped beside it.",
    "",
    ...table(["package", "version", "licence", "its text, in `dist/`"], shipped),
    "",
    "## What it is made and tested with",
    "",
    "Not shipped, apart from those above.",
    "",
    ...table(["package", "version", "licence"], tools),
    "",
  ].join("\n");
}

/** @param {string[]} heads @param {string[][]} rows */
function table(heads, rows) {
  return [heads, heads.map(() => "---"), ...rows].map((cells) => `| ${cells.join(" | ")} |`);
}

export function writeNotice() {
  writeFileSync(NOTICE_PAGE, noticePage());
}

if (process.argv[1] === import.meta.filename) writeNotice();
