/** docs/refusals.md: every sentence by which a formula says no, from the rules in the sources and calls that were run. */

import { EXAMPLES, NOT_SHOWN } from "../../test/refused";
import { provideCellHost } from "../build/cell-host";
import { GAP, refusalRules } from "./refusal-rules";
import type { RefusedExample } from "./refused-call";
import { saidBy } from "./refused-call";

/** Examples that are refused by the same rule. */
interface Group {
  readonly words: string;
  readonly files: readonly string[];
  readonly pattern: RegExp;
  readonly shown: RefusedExample[];
}

/** The page; throws where a rule has no example or an example does not say what is stated. */
export function refusalsPage(examples: readonly RefusedExample[] = EXAMPLES): string {
  provideCellHost();
  const wrong = examples.flatMap((example) => {
    const said = saidBy(example);
    return said === example.says ? [] : [`${example.call} says: ${said}`];
  });
  const groups = grouped(examples);
  wrong.push(
    ...groups
      .filter(({ words, shown }) => shown.length === 0 && !NOT_SHOWN.some(([known]) => known === words))
      .map(({ words }) => `no example of: ${words}`),
  );
  if (wrong.length > 0) throw new Error(`The refusals are not right:\n  ${wrong.join("\n  ")}`);
  return page(groups.filter(({ shown }) => shown.length > 0));
}

/** Rules of the same words are one; each example stands under the rule that says most of its sentence. */
function grouped(examples: readonly RefusedExample[]): Group[] {
  const rules = refusalRules();
  const groups = [...new Set(rules.map(({ words }) => words))].map((words): Group => ({
    words,
    files: rules.filter((rule) => rule.words === words).map(({ file }) => file),
    pattern: patternOf(words),
    shown: [],
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

function patternOf(words: string): RegExp {
  const parts = words.split(GAP).map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, "\\$&"));
  return new RegExp(`^(?:(?:#VALUE! |#N/A )?\\w+ = .+?: |\\w+: |)${parts.join(".*?")}$`, "u");
}

function said(words: string): number {
  return words.replaceAll(GAP, "").length;
}

function page(groups: readonly Group[]): string {
  const many = groups.reduce((sum, { shown }) => sum + shown.length, 0);
  return [
    "# What a formula refuses, and in which words",
    "",
    "Made by `npm run docs` from the sources and from calls that were run; changed nowhere else.",
    "",
    "A sentence is `argument = value: rule`. The cell shows `#VALUE!` for an argument that cannot be and `#N/A` for a fair",
    "question without an answer; `BEAD.REASON` and the pane give the sentence. `TAKEOFF` writes `argument: rule` as the remark",
    "of a line that it omits. An … in a heading stands for what is filled in, in the units asked for.",
    "",
    `${String(groups.length)} rules, ${String(many)} calls.`,
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

function code(text: string): string {
  return `\`${text.replaceAll("|", "\\|")}\``;
}
