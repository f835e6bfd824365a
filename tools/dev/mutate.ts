/**
 * npm run mutate, npm run mutate:literals: makes the sources wrong in one place at a time and asks whether a test
 * notices. Two kinds of changes: StrykerJS's mutators, and with --literals every number wrong by a hundredth.
 *
 *     npm run mutate -- src/gap functions/gap       files with these words in their path; all of four rooms if omitted
 *     npm run mutate -- --seconds 20 src/gap        asks more tests about each change (default 3 s of tests)
 *     npm run mutate -- --left                      asks again about the changes that no test noticed
 *     npm run mutate -- --new                       only files that were not asked as they read now
 *     npm run mutate -- --join                      only writes docs/mutation.md from the two reports
 *
 * A run replaces its files in test-output/mutation/; what was noticed once in a line that still reads the same stays
 * noticed. The page is written when every change left has a reason in test/mutation/unnoticed.json.
 */

import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";

import { generate } from "../build/generate";
import { root } from "../build/project";
import type { Kind, Mutant, Report } from "../docs/mutation";
import { joined, mutationPage, NOTICED, reasons, roomOf, ROOMS } from "../docs/mutation";
import type { Edit } from "./mutants/edit";
import { asMutant, edited } from "./mutants/edit";
import { literalsOf, tellingLiterals } from "./mutants/literals";
import { mutationsOf } from "./mutants/mutators";
import { filesIn, Plan, Tracer } from "./mutants/plan";
import { Tester } from "./mutants/tester";

const FOLDER = path.join(root, "test-output", "mutation");
const PAGE = path.join(root, "docs", "mutation.md");
const REPORTS: Readonly<Record<Kind, string>> = { mutators: "mutators.json", literals: "literals.json" };
/** Tests of this many seconds are asked about a change. */
const SECONDS = "3";

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    literals: { type: "boolean", default: false },
    left: { type: "boolean", default: false },
    new: { type: "boolean", default: false },
    join: { type: "boolean", default: false },
    seconds: { type: "string", default: SECONDS },
  },
});
const kind: Kind = values.literals ? "literals" : "mutators";
const longest = 1000 * Number(values.seconds);
if (!(longest > 0)) throw new Error(`--seconds ${values.seconds}: must be above 0`);

if (!values.join) await ask();
if (values.join || (positionals.length === 0 && !values.left)) {
  const reports = { mutators: report("mutators"), literals: report("literals") };
  const unasked = { mutators: await unaskedIn("mutators"), literals: await unaskedIn("literals") };
  writeFileSync(PAGE, mutationPage(reports, reasons(), unasked));
  console.log(path.relative(root, PAGE));
}

function report(of: Kind): Report {
  const place = path.join(FOLDER, REPORTS[of]);
  return existsSync(place) ? (JSON.parse(readFileSync(place, "utf8")) as Report) : { files: {} };
}

async function ask(): Promise<void> {
  Object.assign(process.env, { RINGBEAD_RUNS: "20", RINGBEAD_SEED: "130417" });
  await generate();
  const before = report(kind);
  const files = allFiles().filter(
    (file) => positionals.length === 0 || positionals.some((part) => file.includes(part)),
  );
  const changes: { readonly file: string; readonly source: string; readonly edits: readonly Edit[] }[] = [];
  const telling = new Map<string, string>();
  let count = 0;
  for (const file of files) {
    const source = readFileSync(path.join(root, file), "utf8");
    if (values.new && before.files[file]?.source === source) continue;
    const found = await changesOf(kind, file, source, count);
    if (found.edits.length === 0) continue;
    changes.push({ file, source, edits: found.edits });
    telling.set(file, found.telling);
    count += found.edits.length;
  }
  const plan = new Plan(longest);
  await plan.measure(changes.map(({ file }) => file));
  console.log("the tests are timed");
  await plan.trace(telling, new Tracer(count));
  console.log(`${String(count)} changes`);
  const tester = new Tester();
  let id = 0;
  for (const { file, source, edits } of changes) {
    const was = before.files[file];
    const mutants: Mutant[] = [];
    for (const edit of edits) {
      const at = id++;
      const known = values.left ? was?.mutants[mutants.length] : undefined;
      if (known !== undefined && was?.source === source && known.status !== "Survived") {
        mutants.push(known);
        continue;
      }
      const { runs, all } = plan.runs(file, at);
      const { status, test } = await tester.ask({ file, text: edited(source, edit), runs });
      if (test !== undefined) plan.noticed(file, test);
      const mutant = { ...asMutant(source, edit, status), askedAll: all };
      mutants.push(mutant);
      if (status === "Survived")
        console.log(
          `unnoticed: ${file}:${String(mutant.location.start.line)}: ${source.slice(edit.start, edit.end)} → ${edit.becomes}`,
        );
    }
    const now = joined([report(kind), { files: { [file]: { source, mutants } } }]);
    mkdirSync(FOLDER, { recursive: true });
    writeFileSync(path.join(FOLDER, REPORTS[kind]), JSON.stringify(now));
    const noticed = mutants.filter(({ status }) => NOTICED.includes(status)).length;
    const left = mutants.filter(({ status }) => status === "Survived").length;
    console.log(`${file}: ${String(noticed)} of ${String(noticed + left)} noticed`);
  }
  tester.end();
}

/** The files with changes of a kind that its report does not have as they read now. */
async function unaskedIn(of: Kind): Promise<string[]> {
  const { files } = report(of);
  const unasked: string[] = [];
  for (const file of allFiles()) {
    const source = readFileSync(path.join(root, file), "utf8");
    if (files[file]?.source === source) continue;
    if ((await changesOf(of, file, source, 0)).edits.length > 0) unasked.push(file);
  }
  return unasked;
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
