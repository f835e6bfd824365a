/** NOTICE.md: whose work is in what we ship, and with what it is made, each with its version and licence. */

import { readFileSync } from "node:fs";
import path from "node:path";

import { root } from "../build/project";
import type { Installed } from "../build/shipped";
import { installed, SHIPPED, sourceOf } from "../build/shipped";

/** What changes the sources for mutation testing has a lock of its own and is installed only where it is used. */
const MUTATION = path.join("tools", "mutation");

/** What a lock file says of a package, installed or not. */
export function locked(name: string, folder: string): Installed {
  const { packages } = read(path.join(folder, "package-lock.json")) as {
    packages: Record<string, Installed>;
  };
  const found = packages[`node_modules/${name}`];
  if (found === undefined) throw new Error(`${folder} locks no ${name}`);
  return found;
}

/** By name, with what is known of each. */
export function developedWith(): [name: string, about: Installed][] {
  return [
    ...dependencies("").map((name): [string, Installed] => [name, installed(name)]),
    ...dependencies(MUTATION).map((name): [string, Installed] => [name, locked(name, MUTATION)]),
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
  const shipped = SHIPPED.map((one) => {
    const { name, copy, inside } = one;
    const { version, license } = installed(name);
    const title = inside === undefined ? name : `${name}, inside ${inside}`;
    return [title, version, license, sourceOf(one), `\`${copy}\``];
  });
  const tools = developedWith().map(([name, { version, license }]) => [name, version, license]);
  return [
    "# Whose work this stands on",
    "",
    "Made by `npm run docs` from the installed packages; changed nowhere else. Ringbead itself is under the MIT license, in",
    "`LICENSE`, shipped as `licence.txt`.",
    "",
    "## In what is shipped",
    "",
    "The functions and the pane hold nobody else's code. The browser sheet holds these; the text of each license is",
    "shipped beside it. The build fails where webpack bundles anything else, and writes `notices.html` with what it bundled",
    "and how to build the browser sheet with another version of its engine.",
    "",
    ...table(["package", "version", "license", "source", "text of the license, in `dist/`"], shipped),
    "",
    "## What it is made and tested with",
    "",
    "Not shipped, apart from those above.",
    "",
    ...table(["package", "version", "license"], tools),
    "",
  ].join("\n");
}

function table(heads: readonly string[], rows: readonly (readonly string[])[]): string[] {
  return [heads, heads.map(() => "---"), ...rows].map((cells) => `| ${cells.join(" | ")} |`);
}
