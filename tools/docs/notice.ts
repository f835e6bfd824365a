/** NOTICE.md: whose work is in what we ship, and with what it is made, each with its version and licence. */

import { readFileSync } from "node:fs";
import path from "node:path";

import { root } from "../build/project";
import { SHIPPED } from "../build/shipped";

export interface Package {
  readonly version: string;
  readonly license: string;
}

/** What changes the sources for mutation testing has a lock of its own and is installed only where it is used. */
const MUTATION = path.join("tools", "mutation");

export function installed(name: string): Package {
  return read(path.join("node_modules", name, "package.json")) as Package;
}

/** What a lock file says of a package, installed or not. */
export function locked(name: string, folder: string): Package {
  const { packages } = read(path.join(folder, "package-lock.json")) as { packages: Record<string, Package> };
  const found = packages[`node_modules/${name}`];
  if (found === undefined) throw new Error(`${folder} locks no ${name}`);
  return found;
}

/** By name, with what is known of each. */
export function developedWith(): [name: string, about: Package][] {
  return [
    ...dependencies("").map((name): [string, Package] => [name, installed(name)]),
    ...dependencies(MUTATION).map((name): [string, Package] => [name, locked(name, MUTATION)]),
  ].sort(([a], [b]) => (a < b ? -1 : 1));
}

function dependencies(folder: string): string[] {
  const { devDependencies } = read(path.join(folder, "package.json")) as { devDependencies: object };
  return Object.keys(devDependencies);
}

function read(file: string): unknown {
  return JSON.parse(readFileSync(path.join(root, file), "utf8"));
}

export function noticePage(): string {
  const shipped = SHIPPED.map(({ name, copy, inside }) => {
    const { version, license } = installed(name);
    return [inside === undefined ? name : `${name}, inside ${inside}`, version, license, `\`${copy}\``];
  });
  const tools = developedWith().map(([name, { version, license }]) => [name, version, license]);
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
