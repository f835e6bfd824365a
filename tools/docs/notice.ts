/** NOTICE.md: whose work is in what we ship, and with what it is made, each with its version and licence. */

import { readFileSync } from "node:fs";
import path from "node:path";

import { root } from "../build/project";
import { SHIPPED } from "../build/shipped";

export interface Package {
  readonly version: string;
  readonly license: string;
}

export function installed(name: string): Package {
  return JSON.parse(readFileSync(path.join(root, "node_modules", name, "package.json"), "utf8")) as Package;
}

export function developedWith(): string[] {
  const text = readFileSync(path.join(root, "package.json"), "utf8");
  return Object.keys((JSON.parse(text) as { devDependencies: object }).devDependencies);
}

export function noticePage(): string {
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

function table(heads: readonly string[], rows: readonly (readonly string[])[]): string[] {
  return [heads, heads.map(() => "---"), ...rows].map((cells) => `| ${cells.join(" | ")} |`);
}
