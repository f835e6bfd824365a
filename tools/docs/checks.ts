/** The page "How the numbers are checked", from what the tests of a full run recorded of themselves. */

import { FORMULAS } from "../../functions/catalogue";
import { HELP } from "../../functions/help";
import type { FormulaHelp } from "../../functions/help-text";
import { withCitations } from "../../src/sources";
import type { CheckRecord } from "./check-records";
import type { Facts } from "./facts";
import { inTable, text } from "./words";

/** What each standing says, the strongest first. */
const STANDINGS: readonly (readonly [name: string, meaning: string])[] = [
  ["published", "a published value, compared with a copy of its source"],
  ["reference library", "the same equation as a general reference library evaluates it"],
  ["web page", "a page of the web without an author: weaker than anything published"],
  [
    "from memory",
    "a published value or equation recalled and not compared with a copy: it may be misremembered",
  ],
  ["common practice", "a fact of the trade without a source of its own"],
  ["worked out by hand", "arithmetic written out beside the check from the equation alone"],
  [
    "independent method",
    "another way to the same answer, programmed for the test: it shows that the equation is solved right, not that it is the right one",
  ],
  [
    "input data",
    "a number that the formula is fed with, compared with its source: no check of what the formula makes of it",
  ],
];
/** What comes from outside the project and its equation. */
const OUTSIDE = ["published", "reference library", "web page", "from memory", "common practice"];

export function checksPage({ records }: Facts): string {
  const unknown = records.filter(({ standing }) => !STANDINGS.some(([name]) => name === standing));
  if (unknown.length > 0)
    throw new Error(`no such standing: ${unknown.map(({ standing }) => standing).join(", ")}`);
  const nothing = HELP.filter(({ id }) => ofFormula(records, id, OUTSIDE).length === 0);
  return [
    "# How the numbers are checked",
    "Made from the records of the tests: each line below is a check that ran and passed. A check may be held against several values of its source; “checks” counts the tests.",
    STANDINGS.map(([name, meaning]) => `- **${name}**: ${meaning}`).join("\n"),
    `No formula has been compared with a measured weld. Nothing from outside is recorded for ${nothing.map(({ id }) => `[${id}](#${id.toLowerCase()})`).join(", ")}; what is recorded for them shows only that the equation is worked out right, and each says why below. The works are listed in [Sources](sources.md).`,
    `| Formula | ${STANDINGS.map(([standing]) => capital(standing)).join(" | ")} |\n| --- ${STANDINGS.map(() => "| ---").join(" ")} |\n` +
      HELP.map(({ id }) => summary(records, id)).join("\n"),
    ...HELP.map((formula) => section(formula, records)),
    "",
  ].join("\n\n");
}

function ofFormula(
  records: readonly CheckRecord[],
  id: string,
  standings: readonly string[],
): readonly CheckRecord[] {
  return records.filter(({ formulas, standing }) => formulas.includes(id) && standings.includes(standing));
}

function summary(records: readonly CheckRecord[], id: string): string {
  const counts = STANDINGS.map(([standing]) => {
    const checks = ofFormula(records, id, [standing]).reduce((sum, one) => sum + one.checks, 0);
    return checks === 0 ? "–" : String(checks);
  });
  return `| [${id}](#${id.toLowerCase()}) | ${counts.join(" | ")} |`;
}

function capital(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}

const UNCHECKED = new Map(FORMULAS.map(({ id, unchecked = "" }) => [id, unchecked]));

function section({ id, unconfirmed, source }: FormulaHelp, records: readonly CheckRecord[]): string {
  const rows = STANDINGS.flatMap(([standing]) => ofFormula(records, id, [standing])).map(
    ({ standing, source: against, checks }) => `| ${standing} | ${inTable(against)} | ${String(checks)} |`,
  );
  return [
    `## ${id}`,
    `Its help names: ${text(source)}`,
    rows.length === 0
      ? "No check is recorded."
      : ["| Standing | Held against | Checks |", "| --- | --- | --- |", ...rows].join("\n"),
    unconfirmed === "" ? "" : `**Not confirmed from outside.** ${text(unconfirmed)}`,
    (UNCHECKED.get(id) ?? "") === ""
      ? ""
      : `**No check from outside.** ${text(withCitations(UNCHECKED.get(id) ?? ""))}`,
  ]
    .filter((part) => part !== "")
    .join("\n\n");
}
