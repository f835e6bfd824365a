/** The tables, on the console and kept in docs/benchmarks.md. */

import { writeFileSync } from "node:fs";
import path from "node:path";

import prettier from "prettier";

import { root } from "../../build/project";
import type { Row } from "./measure";

export interface Table {
  readonly title: string;
  readonly about: string;
  readonly rows: readonly Row[];
}

const KEPT = path.join(root, "docs", "benchmarks.md");

export function print(tables: readonly Table[]): void {
  for (const { title, rows } of tables) {
    console.log(`\n${title}`);
    console.table(rows);
  }
}

export async function write(where: string, tables: readonly Table[]): Promise<void> {
  const text = [
    "# How fast it is",
    "",
    "Repeat with `npm run bench`; `npm run bench -- --write` writes this page, `--note` adds a word on the machine. Medians.",
    "The ratios are of one run and carry over to other machines; the times do not.",
    "",
    `Measured ${new Date().toISOString().slice(0, 10)} on ${where}.`,
    ...tables.flatMap(({ title, about, rows }) => ["", `## ${title}`, "", about, "", markdown(rows)]),
    "",
  ].join("\n");
  const settings = await prettier.resolveConfig(KEPT);
  writeFileSync(KEPT, await prettier.format(text, { ...settings, parser: "markdown" }));
  console.log(`\nkept in ${path.relative(process.cwd(), KEPT)}`);
}

function markdown(rows: readonly Row[]): string {
  const heads = Object.keys(rows[0] ?? {});
  const numeric = heads.map((head) => typeof rows[0]?.[head] === "number");
  return [
    heads,
    numeric.map((right) => (right ? "---:" : "---")),
    ...rows.map((row) => heads.map((head) => String(row[head]))),
  ]
    .map((cells) => `| ${cells.join(" | ")} |`)
    .join("\n");
}
