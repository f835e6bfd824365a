/**
 * docs/mutation.md, after `stryker run`: how many of the changes made to src/ a test noticed, and why each change that
 * none noticed is no lie about a number. A change without a reason, and a reason without its change, are errors.
 * Reports of several runs are joined.
 */

import { readFileSync } from "node:fs";
import path from "node:path";

import { root } from "../build/project";

interface Place {
  readonly line: number;
  readonly column: number;
}
export interface Mutant {
  readonly status: string;
  readonly replacement?: string;
  readonly location: { readonly start: Place; readonly end: Place };
}
export interface Report {
  readonly files: Readonly<Record<string, { readonly source: string; readonly mutants: readonly Mutant[] }>>;
}
export interface Change {
  readonly file: string;
  readonly code: string;
  readonly becomes: string;
}
export interface Reason {
  readonly why: string;
  readonly changes: readonly Change[];
}

export const REASONS = path.join(root, "test", "mutation", "unnoticed.json");

/** Noticed by a failing test or by a test that no longer ends. */
const NOTICED = ["Killed", "Timeout"];
/** The sources no longer load, or a test file fails before its first test: noticed as well, and still not counted. */
const BROKEN = ["RuntimeError", "CompileError"];

/** Of each file the last report counts; what an earlier one saw noticed in the same line is noticed. */
export function joined(reports: readonly Report[]): Report {
  const noticed = new Set(
    reports.flatMap(({ files }) =>
      Object.entries(files).flatMap(([file, { source, mutants }]) =>
        mutants
          .filter(({ status }) => NOTICED.includes(status))
          .map((mutant) => placed(file, source, mutant)),
      ),
    ),
  );
  const last = new Map(reports.flatMap(({ files }) => Object.entries(files)));
  const files = [...last].map(([file, { source, mutants }]) => {
    const settled = mutants.map((mutant) =>
      noticed.has(placed(file, source, mutant)) ? { ...mutant, status: "Killed" } : mutant,
    );
    return [file, { source, mutants: settled }] as const;
  });
  return { files: Object.fromEntries(files.sort(([a], [b]) => (a < b ? -1 : 1))) };
}

/** A mutant by its line as it reads, which stays when lines are added before it. */
function placed(file: string, source: string, { location: { start, end }, replacement }: Mutant): string {
  const line = source.split("\n")[start.line - 1];
  return JSON.stringify([file, line, start.column, end.line - start.line, end.column, replacement]);
}

export function reasons(): Reason[] {
  return JSON.parse(readFileSync(REASONS, "utf8")) as Reason[];
}

/** What of the sources a mutant replaces. */
function replaced(source: string, { location: { start, end } }: Mutant): string {
  const lines = source.split("\n").slice(start.line - 1, end.line);
  lines[lines.length - 1] = (lines.at(-1) ?? "").slice(0, end.column - 1);
  lines[0] = (lines[0] ?? "").slice(start.column - 1);
  return lines.join("\n");
}

export function unnoticed({ files }: Report): Change[] {
  return Object.entries(files).flatMap(([file, { source, mutants }]) =>
    mutants
      .filter(({ status }) => ![...NOTICED, ...BROKEN].includes(status))
      .map((mutant) => ({ file, code: replaced(source, mutant), becomes: mutant.replacement ?? "" })),
  );
}

function key({ file, code, becomes }: Change): string {
  return JSON.stringify([file, code, becomes]);
}

export function mutationPage(report: Report, given: readonly Reason[]): string {
  const left = unnoticed(report);
  const explained = new Set(given.flatMap(({ changes }) => changes.map(key)));
  const found = new Set(left.map(key));
  const wrong = [
    ...left.filter((change) => !explained.has(key(change))).map((change) => `no reason for ${key(change)}`),
    ...[...explained].filter((one) => !found.has(one)).map((one) => `no longer unnoticed: ${one}`),
  ];
  if (wrong.length > 0) throw new Error(`${path.relative(root, REASONS)}:\n${wrong.join("\n")}`);
  const rows = Object.entries(report.files).map(([file, { mutants }]) => ({ file, ...counts(mutants) }));
  const all = counts(Object.values(report.files).flatMap(({ mutants }) => mutants));
  return [
    "# Would a test notice?",
    "",
    "Made by `npm run mutate` (StrykerJS): each file of `src/` is made wrong in one place at a time, and the tests that call it run.",
    "_Noticed_: a test failed, or no longer ended. _Broken_: the sources no longer loaded, or a test file failed before its first",
    "test; not counted, though it would not pass either. _Share_: noticed of noticed and unnoticed. A file may have been run with",
    "only the tests that are about it: more tests could only notice more.",
    "",
    `**${share(all)} of ${String(all.noticed + all.unnoticed)} changes were noticed;** the other ${String(all.unnoticed)} stand below, each with the reason.`,
    "",
    "| File | Noticed | Unnoticed | Broken | Share |",
    "| --- | ---: | ---: | ---: | ---: |",
    ...rows.map(
      (row) =>
        `| \`${row.file}\` | ${String(row.noticed)} | ${String(row.unnoticed)} | ${String(row.broken)} | ${share(row)} |`,
    ),
    "",
    "## Unnoticed, and why",
    ...given.flatMap(({ why, changes }) => [
      "",
      `### ${why}`,
      "",
      ...changes.map(({ file, code, becomes }) => `- \`${file}\`: ${inline(code)} → ${inline(becomes)}`),
    ]),
    "",
  ].join("\n");
}

interface Counted {
  readonly noticed: number;
  readonly unnoticed: number;
}

function counts(mutants: readonly Mutant[]): Counted & { readonly broken: number } {
  const count = (of: readonly string[]): number => mutants.filter(({ status }) => of.includes(status)).length;
  const [noticed, broken] = [count(NOTICED), count(BROKEN)];
  return { noticed, broken, unnoticed: mutants.length - noticed - broken };
}

function share({ noticed, unnoticed: left }: Counted): string {
  return noticed + left === 0 ? "–" : `${((100 * noticed) / (noticed + left)).toFixed(1)} %`;
}

/** Code on one line, between more backticks than it holds. */
function inline(code: string): string {
  const line = code.replace(/\s+/g, " ");
  const ticks = "`".repeat(1 + Math.max(0, ...(line.match(/`+/g) ?? []).map((run) => run.length)));
  return ticks.length > 1 ? `${ticks} ${line} ${ticks}` : `\`${line}\``;
}
