/** The reference in Markdown, one section a formula: what docs/reference.md holds and the help page shows. */

import { argumentLimits } from "./limits.mjs";

/**
 * @typedef {import("../metadata.mjs").FormulaHelp} FormulaHelp
 * @typedef {import("../metadata.mjs").FormulaReference} FormulaReference
 * @typedef {import("../checks-reporter.mjs").CheckRecord} CheckRecord
 * @typedef {Map<string, (...cells: unknown[]) => unknown>} Functions
 * @typedef {{ help: { namespace: string, version: string, formulas: FormulaHelp[] }, reference: FormulaReference[],
 *   functions: Functions, records: CheckRecord[], figures: Map<string, string> }} Facts `figures`: name and what it shows
 */

/** @param {Facts} facts */
export function referencePage(facts) {
  const { help } = facts;
  const families = [...new Set(help.formulas.map(({ family }) => family))];
  const contents = families.map((family) => {
    const ids = help.formulas.filter((formula) => formula.family === family).map(({ id }) => linkTo(id));
    return `- **${title(family)}**: ${ids.join(", ")}`;
  });
  return [
    "# Every formula",
    "The numbers are starting values: prove them on a test coupon. The qualified procedure, local codes and licensed practice govern.",
    `\`units\` is the last argument wherever a unit differs between the systems: \`"US"\` (default) or \`"SI"\`; units stand as \`US | SI\`. An optional argument left out or blank takes its default; zero is a number. A refusal is \`#VALUE!\` (an argument that cannot be) or \`#N/A\` (no answer), with a sentence that ${linkTo("REASON")} gives in full.`,
    "The limits are the sentences with which the formula itself refuses, tried with the other arguments of its example, in both systems of units.",
    contents.join("\n"),
    ...families.flatMap((family) =>
      help.formulas.filter((formula) => formula.family === family).map((formula) => section(formula, facts)),
    ),
    "",
  ].join("\n\n");
}

/** @param {FormulaHelp} formula @param {Facts} facts */
function section(formula, facts) {
  const { id } = formula;
  const more = facts.reference.find((one) => one.id === id);
  const figure = more?.figure ?? "";
  return [
    `## ${id}`,
    text(formula.meaning),
    `\`${signature(formula, facts.help.namespace)}\``,
    figure === "" ? "" : `![${facts.figures.get(figure) ?? ""}](help/figures/${figure}.svg)`,
    equation(formula, more),
    argumentsTable(formula, facts.functions),
    ...statements(formula, facts.records),
    `**Example.** \`${formula.example}\` → ${code(formula.result)}`,
    more === undefined || more.related.length === 0
      ? ""
      : `**Related.** ${more.related.map(linkTo).join(", ")}`,
  ]
    .filter((part) => part !== "")
    .join("\n\n");
}

/** @param {FormulaHelp} formula @param {string} namespace */
function signature({ id, parameters }, namespace) {
  const names = parameters.map(({ name, optional, repeating }) =>
    repeating ? `[${name}…]` : optional ? `[${name}]` : name,
  );
  return `${namespace}.${id}(${names.join(", ")})`;
}

/** @param {FormulaHelp} formula @param {FormulaReference | undefined} more */
function equation({ equation: plain }, more) {
  if (plain === "") return "";
  const symbols = (more?.symbols ?? []).map(({ symbol, meaning }) => `- *${symbol}* ${text(meaning)}`);
  return [
    ...(more?.math ?? []).map((line) => `\`\`\`math\n${line}\n\`\`\``),
    symbols.join("\n"),
    `**Equation in one line.** ${text(plain)}`,
  ]
    .filter((part) => part !== "")
    .join("\n\n");
}

/** @param {FormulaHelp} formula @param {Functions} functions */
function argumentsTable(formula, functions) {
  if (formula.parameters.length === 0) return "It takes no arguments.";
  const limits = argumentLimits(formula, functions);
  const rows = formula.parameters.map(({ name, description }) => {
    const told = (limits.get(name) ?? []).map(inTable).join("; ");
    return `| \`${name}\` | ${inTable(description)} | ${told} |`;
  });
  return ["| Argument | What it is | Limits |", "| --- | --- | --- |", ...rows].join("\n");
}

/** @param {FormulaHelp} formula @param {CheckRecord[]} records */
function statements(formula, records) {
  const own = records.filter(({ formulas }) => formulas.includes(formula.id));
  const outside = own.filter(({ standing }) => standing === "published").length;
  const checked =
    own.length === 0
      ? ""
      : `${own.length} source${own.length === 1 ? "" : "s"}, ${outside} of them published: see [How the numbers are checked](how-the-numbers-are-checked.md#${formula.id.toLowerCase()})`;
  /** @type {[string, string][]} */
  const pairs = [
    ["Gives", text(formula.returns)],
    ["Valid for", text(formula.validity)],
    ["Assumes", text(formula.assumptions)],
    ["Source", text(formula.source)],
    ["Not confirmed from outside", text(formula.unconfirmed)],
    ["Checked against", checked],
  ];
  return pairs.filter(([, said]) => said !== "").map(([label, said]) => `**${label}.** ${said}`);
}

/** @param {string} id */
export function linkTo(id) {
  return `[${id}](#${id.toLowerCase()})`;
}

/** Plain words as Markdown says them. @param {string} plain */
export function text(plain) {
  return plain.replace(/[\\`*<>[\]$~]/g, "\\$&");
}

/** @param {string} plain */
export function inTable(plain) {
  return text(plain).replaceAll("|", "\\|");
}

/** @param {string} plain */
function code(plain) {
  return `\`${plain}\``;
}

/** @param {string} family */
function title(family) {
  return `${family.charAt(0).toUpperCase()}${family.slice(1).replaceAll("-", " ")}`;
}
