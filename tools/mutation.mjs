/**
 * docs/mutation.md, after `stryker run`: how many of the changes made to src/ a test noticed, and why each change that
 * none noticed is no lie about a number. A change without a reason, and a reason without its change, are errors.
 * `node tools/mutation.mjs one.json two.json` joins reports of several runs.
 */

import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";

import { root } from "./project.mjs";

/**
 * @typedef {{ status: string, replacement?: string,
 *   location: { start: { line: number, column: number }, end: { line: number, column: number } } }} Mutant
 * @typedef {{ files: Record<string, { source: string, mutants: Mutant[] }> }} Report
 * @typedef {{ file: string, code: string, becomes: string }} Change
 * @typedef {{ why: string, changes: Change[] }} Reason
 */

const REPORT = path.join(root, "test-output", "mutation", "mutation.json");
export const REASONS = path.join(root, "test", "mutation", "unnoticed.json");
const PAGE = path.join(root, "docs", "mutation.md");

/** Noticed by a failing test or by a test that no longer ends. */
const NOTICED = ["Killed", "Timeout"];
/** The sources no longer load, or a test file fails before its first test: noticed as well, and still not counted. */
const BROKEN = ["RuntimeError", "CompileError"];

/**
 * Of each file the last report counts; what an earlier one saw noticed in the same line is noticed.
 * @param {Report[]} reports @returns {Report}
 */
export function joined(reports) {
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
    return /** @type {const} */ ([file, { source, mutants: settled }]);
  });
  return { files: Object.fromEntries(files.sort(([a], [b]) => (a < b ? -1 : 1))) };
}

/** A mutant by its line as it reads, which stays when lines are added before it. @param {string} file @param {string} source @param {Mutant} mutant */
function placed(file, source, { location: { start, end }, replacement }) {
  const line = source.split("\n")[start.line - 1];
  return JSON.stringify([file, line, start.column, end.line - start.line, end.column, replacement]);
}

/** @returns {Reason[]} */
export function reasons() {
  return JSON.parse(readFileSync(REASONS, "utf8"));
}

/** What of the sources a mutant replaces. @param {string} source @param {Mutant} mutant */
function replaced(source, { location: { start, end } }) {
  const lines = source.split("\n").slice(start.line - 1, end.line);
  lines[lines.length - 1] = (lines.at(-1) ?? "").slice(0, end.column - 1);
  lines[0] = (lines[0] ?? "").slice(start.column - 1);
  return lines.join("\n");
}

/** @param {Report} report @returns {Change[]} */
export function unnoticed({ files }) {
  return Object.entries(files).flatMap(([file, { source, mutants }]) =>
    mutants
      .filter(({ status }) => ![...NOTICED, ...BROKEN].includes(status))
      .map((mutant) => ({ file, code: replaced(source, mutant), becomes: mutant.replacement ?? "" })),
  );
}

/** @param {Change} change */
function key({ file, code, becomes }) {
  return JSON.stringify([file, code, becomes]);
}

/** @param {Report} report @param {Reason[]} given */
export function mutationPage(report, given) {
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
    `**${share(all)} of ${all.noticed + all.unnoticed} changes were noticed;** the other ${all.unnoticed} stand below, each with the reason.`,
    "",
    "| File | Noticed | Unnoticed | Broken | Share |",
    "| --- | ---: | ---: | ---: | ---: |",
    ...rows.map(
      (row) => `| \`${row.file}\` | ${row.noticed} | ${row.unnoticed} | ${row.broken} | ${share(row)} |`,
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

/** @param {Mutant[]} mutants */
function counts(mutants) {
  const count = (/** @type {string[]} */ of) => mutants.filter(({ status }) => of.includes(status)).length;
  const [noticed, broken] = [count(NOTICED), count(BROKEN)];
  return { noticed, broken, unnoticed: mutants.length - noticed - broken };
}

/** @param {{ noticed: number, unnoticed: number }} counted */
function share({ noticed, unnoticed: left }) {
  return noticed + left === 0 ? "–" : `${((100 * noticed) / (noticed + left)).toFixed(1)} %`;
}

/** Code on one line, between more backticks than it holds. @param {string} code */
function inline(code) {
  const line = code.replace(/\s+/g, " ");
  const ticks = "`".repeat(1 + Math.max(0, ...(line.match(/`+/g) ?? []).map((run) => run.length)));
  return ticks.length > 1 ? `${ticks} ${line} ${ticks}` : `\`${line}\``;
}

if (process.argv[1] === import.meta.filename) {
  const places = process.argv.length > 2 ? process.argv.slice(2) : [REPORT];
  const reports = places.map((place) => /** @type {Report} */ (JSON.parse(readFileSync(place, "utf8"))));
  writeFileSync(PAGE, mutationPage(joined(reports), reasons()));
  console.log(path.relative(root, PAGE));
}
