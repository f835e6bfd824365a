/**
 * docs/mutation.md: how many of the changes made to the sources a test noticed, by room and kind of change, and why each
 * change that none noticed is no lie about a number. A change without a reason, and a reason without its change, are
 * errors, and what was not asked is named.
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
/** Every change of a kind, file by file. */
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
  /** The tests that are asked, by how their paths begin. */
  readonly tests: readonly string[];
  /** StrykerJS's mutators that are not used there. */
  readonly omitted: readonly string[];
}

const CALCULATED = ["test/src", "test/published", "test/functions"];
/** Other tests compare whole sheets in several hosts, and take minutes. */
const ABOUT_SHEETS =
  "bench-card bid convert coupons curve cycle gas notes pages procedure size-table templates weld-log"
    .split(" ")
    .map((name) => `test/taskpane/${name}`);
/** Where changes are made. Text of sources, records and sheets is data: generated pages and files are compared with it. */
export const ROOMS: readonly Room[] = [
  { folder: "src/sources", tests: CALCULATED, omitted: ["StringLiteral"] },
  { folder: "src", tests: CALCULATED, omitted: [] },
  { folder: "functions", tests: CALCULATED, omitted: ["StringLiteral"] },
  { folder: "taskpane/sheets", tests: ABOUT_SHEETS, omitted: ["StringLiteral"] },
  {
    folder: "taskpane/hosts/excel",
    tests: ["test/taskpane/excel", "test/taskpane/associated"],
    omitted: ["StringLiteral"],
  },
];

export function roomOf(file: string): Room {
  const room = ROOMS.find(({ folder }) => file.startsWith(`${folder}/`));
  if (room === undefined) throw new Error(`${file} is in no room`);
  return room;
}

export const REASONS = path.join(root, "test", "mutation", "unnoticed.json");

/** Noticed by a failing test or by a test that no longer ends. */
const NOTICED = ["Killed", "Timeout"];
/** The sources no longer load, or a test file fails before its first test: noticed as well, and still not counted. */
const BROKEN = ["RuntimeError", "CompileError"];
const UNASKED = "Pending";

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

export function unnoticed(report: Report): Change[] {
  return changesOf(report, isLeft);
}

function changesOf({ files }: Report, which: (mutant: Mutant) => boolean): Change[] {
  return Object.entries(files).flatMap(([file, { source, mutants }]) =>
    mutants.filter(which).map((mutant) => ({
      file,
      line: (source.split("\n")[mutant.location.start.line - 1] ?? "").trim(),
      code: replaced(source, mutant),
      becomes: mutant.replacement ?? "",
    })),
  );
}

function isUnasked({ status }: Mutant): boolean {
  return status === UNASKED;
}

function isLeft({ status }: Mutant): boolean {
  return ![...NOTICED, ...BROKEN, UNASKED].includes(status);
}

function key({ file, line, code, becomes }: Change): string {
  return JSON.stringify([file, line, code, becomes]);
}

export function mutationPage(reports: Readonly<Record<Kind, Report>>, given: readonly Reason[]): string {
  const left = [...unnoticed(reports.mutators), ...unnoticed(reports.literals)];
  const explained = new Set(given.flatMap(({ changes }) => changes.map(key)));
  const found = new Set(left.map(key));
  // What was found out about a change stays known until it is asked about anew.
  const unasked = new Set(
    [...changesOf(reports.mutators, isUnasked), ...changesOf(reports.literals, isUnasked)].map(key),
  );
  const wrong = [
    ...left.filter((change) => !explained.has(key(change))).map((change) => `no reason for ${key(change)}`),
    ...[...explained]
      .filter((one) => !found.has(one) && !unasked.has(one))
      .map((one) => `no longer unnoticed: ${one}`),
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
    `${String(all.unasked)} more were not asked about.`,
    "",
    "| Room | Change | Noticed | Unnoticed | Broken | Share | Not asked |",
    "| --- | --- | ---: | ---: | ---: | ---: | ---: |",
    ...ROOMS.flatMap(({ folder }) =>
      (["mutators", "literals"] as const).map((kind) => {
        const of = counts(mutantsIn(reports[kind], folder));
        return `| \`${folder}\` | ${KINDS[kind]} | ${told(of)} | ${String(of.unasked)} |`;
      }),
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
    "first, until one fails or they have used the processor for long enough: 0.4 to 3 s, more where a file was asked again. What comes",
    "late in a long file of tests is not asked, nor are the files that try whole sheets and random calls at length; random tests try 20",
    "cases. Of the unnoticed changes",
    `${String(asked.length - some)} passed every such test that runs them, and ${String(some)} those for which the time sufficed; more tests could only notice`,
    "more. Text of the works cited, the records, the sheets and the Excel host is data, which generated pages, metadata and files are",
    "compared with.",
    "",
    "## File by file",
    "",
    "| File | Mutators: noticed | Unnoticed | Broken | Share | Numbers: noticed | Unnoticed | Broken | Share |",
    "| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |",
    ...[...new Set([...askedIn(reports.mutators), ...askedIn(reports.literals)])]
      .sort()
      .map(
        (file) =>
          `| \`${file}\` | ${told(counts(reports.mutators.files[file]?.mutants ?? []))} | ${told(counts(reports.literals.files[file]?.mutants ?? []))} |`,
      ),
    "",
    "## Not asked",
    "",
    "Answers hold for a file as it reads now: one that was changed since stands here until it is asked anew. Where only some changes of",
    "a file were asked, it was every second, third and so on, as they stand in it.",
    "",
    ...notAsked(reports),
    "",
    "## Unnoticed, and why",
    "",
    "Reasons are judgments from reading the code, most of them for changes of one kind together; none is a proof.",
    ...given.flatMap(({ why, changes }) => {
      const here = changes.filter((change) => found.has(key(change)));
      return here.length === 0 ? [] : ["", `### ${why}`, "", ...listed(here)];
    }),
    "",
  ].join("\n");
}

const KINDS: Readonly<Record<Kind, string>> = {
  mutators: "StrykerJS's mutators",
  literals: "numbers × 1.01",
};

function askedIn({ files }: Report): string[] {
  return Object.keys(files).filter((file) => files[file]?.mutants.some((mutant) => !isUnasked(mutant)));
}

/** By room and kind, the files with changes that no run asked about, and how many where others of the file were asked. */
function notAsked(reports: Readonly<Record<Kind, Report>>): string[] {
  const lines = ROOMS.flatMap(({ folder }) =>
    (["mutators", "literals"] as const).flatMap((kind) => {
      const files = Object.entries(reports[kind].files).flatMap(([file, { mutants }]) => {
        const { unasked } = counts(mutants);
        if (unasked === 0 || roomOf(file).folder !== folder) return [];
        const name = `\`${file.slice(folder.length + 1)}\``;
        return [
          unasked === mutants.length ? name : `${name} (${String(unasked)} of ${String(mutants.length)})`,
        ];
      });
      return files.length === 0 ? [] : [`- \`${folder}\`, ${KINDS[kind]}: ${files.join(", ")}`];
    }),
  );
  return lines.length === 0 ? ["Nothing."] : lines;
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
  readonly unasked: number;
}

function counts(mutants: readonly Mutant[]): Counted {
  const count = (of: readonly string[]): number => mutants.filter(({ status }) => of.includes(status)).length;
  const [noticed, broken, unasked] = [count(NOTICED), count(BROKEN), count([UNASKED])];
  return { noticed, broken, unasked, unnoticed: mutants.length - noticed - broken - unasked };
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
