/** The reference in Markdown, one section a formula: what docs/reference.md holds and the help page shows. */

import { provideCellHost } from "../build/cell-host";
import { families } from "../../functions/catalogue";
import { HEAT_FLOW } from "../../functions/heat-flow/sectors";
import type { Formula } from "../../functions/formula";
import type { FormulaHelp } from "../../functions/help-text";
import { helpOf } from "../../functions/help-text";
import { NAMESPACE } from "../../functions/namespace";
import type { CheckRecord } from "./check-records";
import type { Facts } from "./facts";
import { argumentLimits } from "./limits";
import { code, inTable, linkTo, text } from "./words";

export function referencePage(facts: Facts): string {
  provideCellHost();
  const contents = families.map(
    ({ title, formulas }) => `- **${title}**: ${formulas.map(({ id }) => linkTo(id)).join(", ")}`,
  );
  return [
    "# Every formula",
    "The numbers are starting values: prove them on a test coupon. The qualified procedure, local codes and licensed practice govern.",
    `\`units\` is the last argument wherever a unit differs between the systems: \`"US"\` (default) or \`"SI"\`; units are given as \`US | SI\`. An optional argument that is omitted or blank takes its default; zero is a number. A refusal is \`#VALUE!\` (an argument that cannot be) or \`#N/A\` (no answer), with a sentence that ${linkTo("REASON")} gives in full.`,
    "The limits are the sentences with which the formula itself refuses, tried with the other arguments of its example, in both systems of units.",
    contents.join("\n"),
    ...families.flatMap((family) =>
      family.formulas.map((formula) => section(formula, helpOf(formula, family), facts)),
    ),
    "",
  ].join("\n\n");
}

function section(formula: Formula, help: FormulaHelp, { figures, records }: Facts): string {
  const { id, figure, related } = formula;
  return [
    `## ${id}`,
    text(help.meaning),
    code(signature(help)),
    figure === undefined ? "" : `![${figures.get(figure) ?? ""}](help/figures/${figure}.svg)`,
    equation(formula, help),
    argumentsTable(formula, help),
    ...statements(help, records),
    `**Example.** ${code(help.example)} → ${code(help.result)}`,
    related.length === 0 ? "" : `**Related.** ${related.map(linkTo).join(", ")}`,
  ]
    .filter((part) => part !== "")
    .join("\n\n");
}

function signature({ id, parameters }: FormulaHelp): string {
  const names = parameters.map(({ name, optional, repeating }) =>
    repeating ? `[${name}…]` : optional ? `[${name}]` : name,
  );
  return `${NAMESPACE}.${id}(${names.join(", ")})`;
}

function equation({ tex = [], where = {} }: Formula, { equation: plain }: FormulaHelp): string {
  const symbols = Object.entries(where).map(([symbol, meaning]) => `- *${symbol}* ${text(meaning)}`);
  return [
    ...tex.map((line) => `\`\`\`math\n${line}\n\`\`\``),
    symbols.join("\n"),
    plain === "" ? "" : `**Equation in one line.** ${text(plain)}`,
  ]
    .filter((part) => part !== "")
    .join("\n\n");
}

function argumentsTable(formula: Formula, { parameters }: FormulaHelp): string {
  if (parameters.length === 0) return "It takes no arguments.";
  const limits = argumentLimits(formula);
  const rows = parameters.map(({ name, description }) => {
    const told = (limits.get(name) ?? []).map(inTable).join("; ");
    return `| \`${name}\` | ${inTable(description)} | ${told} |`;
  });
  return ["| Argument | What it is | Limits |", "| --- | --- | --- |", ...rows].join("\n");
}

function statements(help: FormulaHelp, records: readonly CheckRecord[]): string[] {
  const own = records.filter(({ formulas }) => formulas.includes(help.id));
  const outside = own.filter(({ standing }) => standing === "published").length;
  const checked =
    own.length === 0
      ? ""
      : `${String(own.length)} source${own.length === 1 ? "" : "s"}, ${String(outside)} of them published: see [How the numbers are checked](how-the-numbers-are-checked.md#${help.id.toLowerCase()})`;
  const pairs: readonly (readonly [label: string, said: string])[] = [
    ["Gives", text(help.returns)],
    ["Valid for", text(help.validity)],
    ["Assumes", text(help.assumptions)],
    ["Source", text(help.source)],
    ["Not confirmed from outside", text(help.unconfirmed)],
    ["How near", help.family === HEAT_FLOW.title ? "[How near the amps are](how-near-the-amps-are.md)" : ""],
    ["Checked against", checked],
  ];
  return pairs.filter(([, said]) => said !== "").map(([label, said]) => `**${label}.** ${said}`);
}
