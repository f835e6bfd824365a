/** The tables, on the console and kept in docs/benchmarks.md. */

import { writeFileSync } from "node:fs";
import path from "node:path";

import prettier from "prettier";

import { root } from "../project.mjs";

/** @typedef {{ title: string, about: string, rows: import("./measure.mjs").Row[] }} Table */

const KEPT = path.join(root, "docs", "benchmarks.md");

/** @param {readonly Table[]} tables */
export function print(tables) {
  for (const { title, rows } of tables) {
    console.log(`\n${title}`);
    console.table(rows);
  }
}

/** @param {string} where @param {readonly Table[]} tables */
export async function write(where, tables) {
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

/** @param {import("./measure.mjs").Row[]} rows */
function markdown(rows) {
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
