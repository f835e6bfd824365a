/**
 * docs/mutation.md: how many of the changes made to the sources a test noticed, by room and kind of change, and why each
 * change that none noticed is no lie about a number. A change without a reason, and a reason without its change, are
 * errors. Reports of several runs are joined.
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
  /** Every quick test that runs the code was asked; otherwise only those that the time allowed. */
  readonly askedAll?: boolean;
  readonly location: { readonly start: Place; readonly end: Place };
}
export interface Report {
  readonly files: Readonly<Record<string, { readonly source: string; readonly mutants: readonly Mutant[] }>>;
}
/** StrykerJS's mutators, and numbers made wrong by a hundredth. */
export type Kind = "mutators" | "literals";
export interface Change {
  readonly file: string;
  /** The line in which it begins. */
  readonly line: string;
  readonly code: string;
  readonly becomes: string;
}
export interface Reason {
  readonly why: string;
  readonly changes: readonly Change[];
}

interface Room {
  readonly folder: string;
  /** The tests that are asked, by their folder. */
  readonly tests: readonly string[];
  /** StrykerJS's mutators that are not used there. */
  readonly omitted: readonly string[];
}

const CALCULATED = ["test/src", "test/published", "test/functions"];
/** Where changes are made. Text of sources, records and sheets is data: generated pages and files are compared with it. */
export const ROOMS: readonly Room[] = [
  { folder: "src/sources", tests: CALCULATED, omitted: ["StringLiteral"] },
  { folder: "src", tests: CALCULATED, omitted: [] },
  { folder: "functions", tests: CALCULATED, omitted: ["StringLiteral"] },
  { folder: "taskpane/sheets", tests: ["test/taskpane"], omitted: ["StringLiteral"] },
  { folder: "taskpane/hosts/excel", tests: ["test/taskpane"], omitted: ["StringLiteral"] },
];

export function roomOf(file: string): Room {
  const room = ROOMS.find(({ folder }) => file.startsWith(`${folder}/`));
  if (room === undefined) throw new Error(`${file} is in no room`);
  return room;
}

export const REASONS = path.join(root, "test", "mutation", "unnoticed.json");

/** Noticed by a failing test or by a test that no longer ends. */
export const NOTICED = ["Killed", "Timeout"];
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
    mutants.filter(isLeft).map((mutant) => ({
      file,
      line: (source.split("\n")[mutant.location.start.line - 1] ?? "").trim(),
      code: replaced(source, mutant),
      becomes: mutant.replacement ?? "",
    })),
  );
}

function isLeft({ status }: Mutant): boolean {
  return ![...NOTICED, ...BROKEN].includes(status);
}

function key({ file, line, code, becomes }: Change): string {
  return JSON.stringify([file, line, code, becomes]);
}

/** The page; `unasked` are the files whose changes of a kind no run asked about. */
export function mutationPage(
  reports: Readonly<Record<Kind, Report>>,
  given: readonly Reason[],
  unasked: Readonly<Record<Kind, readonly string[]>>,
): string {
  const left = [...unnoticed(reports.mutators), ...unnoticed(reports.literals)];
  const explained = new Set(given.flatMap(({ changes }) => changes.map(key)));
  const found = new Set(left.map(key));
  const wrong = [
    ...left.filter((change) => !explained.has(key(change))).map((change) => `no reason for ${key(change)}`),
    ...[...explained].filter((one) => !found.has(one)).map((one) => `no longer unnoticed: ${one}`),
  ];
  if (wrong.length > 0) throw new Error(`${path.relative(root, REASONS)}:\n${wrong.join("\n")}`);
  const all = counts([...mutantsIn(reports.mutators), ...mutantsIn(reports.literals)]);
  const asked = [...mutantsIn(reports.mutators), ...mutantsIn(reports.literals)].filter(isLeft);
  const some = asked.filter(({ askedAll }) => askedAll !== true).length;
  return [
    "# Would a test notice?",
    "",
    "Made by `npm run mutate` and `npm run mutate:literals`: the sources are made wrong in one place at a time, and tests run. Two kinds",
    "of changes: those of StrykerJS's mutators (another operator, a condition that always holds, an empty list, a missing step), and",
    "every number made wrong by a hundredth, zero by 0.01.",
    "",
    `**${share(all)} of ${String(all.noticed + all.unnoticed)} changes were noticed;** the other ${String(all.unnoticed)} stand below, each with the reason.`,
    "",
    "| Room | Change | Noticed | Unnoticed | Broken | Share |",
    "| --- | --- | ---: | ---: | ---: | ---: |",
    ...ROOMS.flatMap(({ folder }) =>
      (["mutators", "literals"] as const).map(
        (kind) => `| \`${folder}\` | ${KINDS[kind]} | ${told(counts(mutantsIn(reports[kind], folder)))} |`,
      ),
    ),
    "",
    "_Noticed_: a test failed, or no longer ended. _Broken_: the sources no longer loaded, or a test file failed before its first test;",
    "not counted, though it would not pass either. _Share_: noticed of noticed and unnoticed.",
    "",
    "## How it ran",
    "",
    ...ROOMS.map(
      ({ folder, tests, omitted }) =>
        `- \`${folder}\`: tests of ${tests.map((room) => `\`${room}\``).join(", ")}${omitted.length === 0 ? "" : `; no ${omitted.join(", ")} changes`}`,
    ),
    "",
    "StrykerJS makes the changes; `tools/dev/mutate.ts` runs the tests.",
    "All tests run in one process, each file on sources loaded anew. Only tests that run the changed code are asked, near and quick ones",
    "first, until one fails or some seconds of tests have passed: from half a second to three, more where a room was asked again. The long",
    "ones that try whole sheets and random calls are not asked, and random tests try 20 cases. Of the unnoticed changes",
    `${String(asked.length - some)} passed every such test that runs them, and ${String(some)} those for which the time sufficed; more tests could only notice`,
    "more. Text of the works cited, the records, the sheets and the Excel host is data, which generated pages, metadata and files are",
    "compared with.",
    "",
    ...(["mutators", "literals"] as const).map(
      (kind) => `- Not asked, ${KINDS[kind]}: ${notAsked(unasked[kind])}`,
    ),
    "",
    "## File by file",
    "",
    "| File | Mutators: noticed | Unnoticed | Broken | Share | Numbers: noticed | Unnoticed | Broken | Share |",
    "| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |",
    ...[...new Set([...Object.keys(reports.mutators.files), ...Object.keys(reports.literals.files)])]
      .sort()
      .map(
        (file) =>
          `| \`${file}\` | ${told(counts(reports.mutators.files[file]?.mutants ?? []))} | ${told(counts(reports.literals.files[file]?.mutants ?? []))} |`,
      ),
    "",
    "## Unnoticed, and why",
    "",
    "Reasons are judgments from reading the code, most of them for changes of one kind together; none is a proof.",
    ...given.flatMap(({ why, changes }) => ["", `### ${why}`, "", ...listed(changes)]),
    "",
  ].join("\n");
}

const KINDS: Readonly<Record<Kind, string>> = {
  mutators: "StrykerJS's mutators",
  literals: "numbers × 1.01",
};

function notAsked(files: readonly string[]): string {
  const told = ROOMS.flatMap(({ folder }) => {
    const within = files.filter((file) => roomOf(file).folder === folder);
    return within.length === 0 ? [] : [`${String(within.length)} files of \`${folder}\``];
  });
  return told.length === 0 ? "nothing" : told.join(", ");
}

/** A line for each file and line of code. */
function listed(changes: readonly Change[]): string[] {
  const places = new Map<string, { readonly line: string; readonly of: string[] }>();
  for (const { file, line, code, becomes } of changes) {
    const place = places.get(`${file}\n${line}`) ?? { line, of: [] };
    place.of.push(`${inline(code)} → ${inline(becomes)}`);
    places.set(`${file}\n${line}`, place);
  }
  return [...places].map(
    ([place, { line, of }]) => `- \`${place.split("\n")[0] ?? ""}\`, ${inline(line)}: ${of.join("; ")}`,
  );
}

function mutantsIn({ files }: Report, folder = ""): Mutant[] {
  return Object.entries(files)
    .filter(([file]) => folder === "" || roomOf(file).folder === folder)
    .flatMap(([, { mutants }]) => mutants);
}

interface Counted {
  readonly noticed: number;
  readonly unnoticed: number;
  readonly broken: number;
}

function counts(mutants: readonly Mutant[]): Counted {
  const count = (of: readonly string[]): number => mutants.filter(({ status }) => of.includes(status)).length;
  const [noticed, broken] = [count(NOTICED), count(BROKEN)];
  return { noticed, broken, unnoticed: mutants.length - noticed - broken };
}

function told(of: Counted): string {
  return [String(of.noticed), String(of.unnoticed), String(of.broken), share(of)].join(" | ");
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
