/** docs/refusals.md: every sentence by which a formula says no, from the rules in the sources and calls that were run. */

import { mkdirSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";

import { root } from "./project.mjs";
import { GAP, refusalRules } from "./refusal-rules.mjs";
import { saidBy } from "./refused-call.mjs";

/** @typedef {import("./refused-call.mjs").Example} Example */
/** @typedef {import("./refused-call.mjs").FormulaById} FormulaById */

export const REFUSALS_PAGE = path.join(root, "docs", "refusals.md");

/**
 * The page; throws where a rule has no example or an example does not say what is stated.
 * @param {readonly Example[]} examples @param {FormulaById} formulaById
 */
export function refusalsPage(examples, formulaById) {
  const wrong = examples.flatMap((example) => {
    const said = saidBy(example, formulaById);
    return said === example.says ? [] : [`${example.call} says: ${said}`];
  });
  const groups = grouped(examples);
  wrong.push(
    ...groups.filter(({ shown }) => shown.length === 0).map(({ words }) => `no example of: ${words}`),
  );
  if (wrong.length > 0) throw new Error(`The refusals are not right:\n  ${wrong.join("\n  ")}`);
  return page(groups);
}

/** Rules of the same words are one; each example stands under the rule that says most of its sentence. @param {readonly Example[]} examples */
function grouped(examples) {
  const rules = refusalRules();
  const groups = [...new Set(rules.map(({ words }) => words))].map((words) => ({
    words,
    files: rules.filter((rule) => rule.words === words).map(({ file }) => file),
    pattern: patternOf(words),
    shown: /** @type {Example[]} */ ([]),
  }));
  for (const example of examples) {
    const [best] = groups
      .filter(({ pattern }) => pattern.test(example.says))
      .sort((a, b) => said(b.words) - said(a.words));
    if (best === undefined) throw new Error(`no rule in the sources says: ${example.says}`);
    best.shown.push(example);
  }
  return groups.sort((a, b) => (a.words.toLowerCase() < b.words.toLowerCase() ? -1 : 1));
}

/** @param {string} words */
function patternOf(words) {
  const parts = words.split(GAP).map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, "\\$&"));
  return new RegExp(`^(?:(?:#VALUE! |#N/A )?\\w+ = .+?: |\\w+: |)${parts.join(".*?")}$`, "u");
}

/** @param {string} words */
function said(words) {
  return words.replaceAll(GAP, "").length;
}

/** @param {ReturnType<typeof grouped>} groups */
function page(groups) {
  const many = groups.reduce((sum, { shown }) => sum + shown.length, 0);
  return [
    "# What a formula refuses, and in which words",
    "",
    "Made by `npm run docs` from the sources and from calls that were run; changed nowhere else.",
    "",
    "A sentence is `argument = value: rule`. The cell shows `#VALUE!` for an argument that cannot be and `#N/A` for a fair",
    "question without an answer; `BEAD.REASON` and the pane give the sentence. `TAKEOFF` writes `argument: rule` as the remark",
    "of a line it leaves out. An … in a heading stands for what is filled in, in the units asked for.",
    "",
    `${groups.length} rules, ${many} calls.`,
    ...groups.flatMap(({ words, files, shown }) => [
      "",
      `## ${words}`,
      "",
      files.map((file) => `\`${file}\``).join(", "),
      "",
      "| call | says |",
      "| --- | --- |",
      ...shown.map(({ call, says }) => `| ${code(call)} | ${code(says)} |`),
    ]),
    "",
  ].join("\n");
}

/** @param {string} text */
function code(text) {
  return `\`${text.replaceAll("|", "\\|")}\``;
}

/** Bundles formulas and examples for Node, and writes the page. */
export async function writeRefusals() {
  const { generate } = await import("./generate.mjs");
  const { run } = await import("./bench/load.mjs");
  const { typescript } = await import("./webpack.mjs");
  await generate();
  const folder = path.join(root, ".cache", "docs");
  await run({
    mode: "production",
    target: "node",
    context: root,
    entry: {
      formulas: ["./test/custom-functions-host.ts", "./generated/associate.ts", "./functions/catalogue.ts"],
      refused: "./test/refused.ts",
    },
    output: { path: folder, filename: "[name].cjs", library: { type: "commonjs2" } },
    resolve: { extensions: [".ts", ".js", ".json"] },
    module: { rules: [typescript] },
  });
  const require = createRequire(import.meta.url);
  const { formulaById } = require(path.join(folder, "formulas.cjs"));
  const { EXAMPLES } = require(path.join(folder, "refused.cjs"));
  mkdirSync(path.dirname(REFUSALS_PAGE), { recursive: true });
  writeFileSync(REFUSALS_PAGE, refusalsPage(EXAMPLES, formulaById));
}

if (process.argv[1] === import.meta.filename) void writeRefusals();
