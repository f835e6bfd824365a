/**
 * npm run mutate, npm run mutate:literals: makes the sources wrong in one place at a time and asks whether a test
 * notices. Two kinds of changes: StrykerJS's mutators, and with --literals every number wrong by a hundredth.
 *
 *     npm run mutate -- src/gap functions/gap       files with these words in their path; all of four rooms if omitted
 *     npm run mutate -- --seconds 20 src/gap        asks more tests about each change (default 3 s of tests)
 *     npm run mutate -- --new                       only changes that were not asked in their files as they read now
 *     npm run mutate -- --left                      asks again about the changes that no test noticed
 *     npm run mutate -- --every 3                   only the first change of a file, the fourth, the seventh …
 *     npm run mutate -- --join                      asks nothing, only writes docs/mutation.md
 *
 * Answers are kept in test/mutation/answers.txt; what was noticed once stays noticed while its file reads the same. The
 * page is written when every change left has a reason in test/mutation/unnoticed.json.
 */

import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";

import { generate } from "../build/generate";
import { root } from "../build/project";
import type { Kind, Report } from "../docs/mutation";
import { mutationPage, reasons, roomOf, ROOMS } from "../docs/mutation";
import { Answers, LEFT, letterOf, NOTICED, toldBy, UNASKED } from "./mutants/answers";
import type { Edit } from "./mutants/edit";
import { asMutant, edited } from "./mutants/edit";
import { literalsOf, tellingLiterals } from "./mutants/literals";
import { mutationsOf } from "./mutants/mutators";
import { filesIn, Plan, Tracer } from "./mutants/plan";
import { Tester } from "./mutants/tester";

const PAGE = path.join(root, "docs", "mutation.md");
/** Tests of this many seconds are asked about a change. */
const SECONDS = "3";

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    literals: { type: "boolean", default: false },
    left: { type: "boolean", default: false },
    new: { type: "boolean", default: false },
    join: { type: "boolean", default: false },
    every: { type: "string", default: "1" },
    seconds: { type: "string", default: SECONDS },
  },
});
const kind: Kind = values.literals ? "literals" : "mutators";
const longest = 1000 * Number(values.seconds);
if (!(longest > 0)) throw new Error(`--seconds ${values.seconds}: must be above 0`);
const every = Number(values.every);
if (!(every >= 1)) throw new Error(`--every ${values.every}: must be 1 or more`);

let answers = Answers.kept();
if (!values.join) await ask();
if (values.join || (positionals.length === 0 && !values.left)) {
  writeFileSync(
    PAGE,
    mutationPage({ mutators: await report("mutators"), literals: await report("literals") }, reasons()),
  );
  console.log(path.relative(root, PAGE));
}

/** Every change of a kind to the sources as they read now, and its answer. */
async function report(of: Kind): Promise<Report> {
  const files: Record<string, Report["files"][string]> = {};
  for (const file of allFiles()) {
    const source = readFileSync(path.join(root, file), "utf8");
    const { edits } = await changesOf(of, file, source, 0);
    const letters = answers.of(of, file, source, edits);
    const mutants = edits.map((edit, i) => asMutant(source, edit, toldBy(letters.charAt(i))));
    if (mutants.length > 0) files[file] = { source, mutants };
  }
  return { files };
}

interface Asked {
  readonly file: string;
  readonly source: string;
  readonly edits: readonly Edit[];
  /** Answers of earlier runs. */
  readonly before: string;
}

function isWanted(before: string, index: number): boolean {
  const letter = before.charAt(index);
  return (
    index % every === 0 && (!values.new || letter === UNASKED) && (!values.left || LEFT.includes(letter))
  );
}

async function ask(): Promise<void> {
  Object.assign(process.env, { RINGBEAD_RUNS: "20", RINGBEAD_SEED: "130417" });
  await generate();
  const files = allFiles().filter(
    (file) => positionals.length === 0 || positionals.some((part) => file.includes(part)),
  );
  const changes: Asked[] = [];
  const telling = new Map<string, string>();
  let [count, wanted] = [0, 0];
  for (const file of files) {
    const source = readFileSync(path.join(root, file), "utf8");
    const found = await changesOf(kind, file, source, count);
    const before = answers.of(kind, file, source, found.edits);
    const here = found.edits.filter((_, i) => isWanted(before, i)).length;
    if (here === 0) continue;
    changes.push({ file, source, edits: found.edits, before });
    telling.set(file, found.telling);
    count += found.edits.length;
    wanted += here;
  }
  const plan = new Plan(longest);
  await plan.measure(changes.map(({ file }) => file));
  console.log("the tests are timed");
  await plan.trace(telling, new Tracer(count));
  console.log(`${String(wanted)} changes`);
  const tester = new Tester();
  let from = 0;
  for (const one of changes) {
    const letters = await answersTo(one, from, plan, tester);
    from += one.edits.length;
    // Another run may have kept answers since.
    answers = Answers.kept();
    answers.put(kind, one.file, one.source, one.edits, letters);
    answers.keep(allFiles());
    const told = (of: string): number => Array.from(letters).filter((letter) => of.includes(letter)).length;
    console.log(`${one.file}: ${String(told(NOTICED))} of ${String(told(NOTICED + LEFT))} noticed`);
  }
  tester.end();
}

/** The letters of a file, whose changes are numbered `from`. */
async function answersTo(
  { file, source, edits, before }: Asked,
  from: number,
  plan: Plan,
  tester: Tester,
): Promise<string> {
  const letters = Array.from(before);
  for (const [i, edit] of edits.entries()) {
    if (!isWanted(before, i)) continue;
    const { runs, all } = plan.runs(file, from + i);
    const { status, test } = await tester.ask({ file, text: edited(source, edit), runs });
    if (test !== undefined) plan.noticed(file, test);
    const letter = letterOf(status, all);
    if (!(LEFT.includes(letter) && NOTICED.includes(before.charAt(i)))) letters[i] = letter;
    if (letters[i] === letter && LEFT.includes(letter))
      console.log(
        `unnoticed: ${file}:${String(source.slice(0, edit.start).split("\n").length)}: ${source.slice(edit.start, edit.end)} → ${edit.becomes}`,
      );
  }
  return letters.join("");
}

function allFiles(): string[] {
  return [...new Set(ROOMS.flatMap(({ folder }) => filesIn(folder, ".ts")))];
}

async function changesOf(
  of: Kind,
  file: string,
  source: string,
  from: number,
): Promise<{ readonly edits: readonly Edit[]; readonly telling: string }> {
  if (of === "mutators") {
    return mutationsOf(file, source, roomOf(file).omitted, from);
  }
  const edits = literalsOf(file, source);
  return { edits, telling: tellingLiterals(source, edits, from) };
}
