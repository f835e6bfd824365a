/**
 * npm run mutate:literals: every number in src/, functions/, the ready sheets and the Excel host is made wrong by a
 * hundredth, one at a time and all in this process, and the tests that are about its file are asked whether they notice.
 * A part of a path narrows it down: `npm run mutate:literals -- src/gap`.
 */

import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";

import { generate } from "../build/generate";
import { root } from "../build/project";
import type { Mutant, Report } from "../docs/mutation";
import type { Literal } from "./literals/mutants";
import { literalsOf, mutated } from "./literals/mutants";
import { Modules } from "./literals/modules";
import { firstFailure } from "./literals/test-run";

const ROOMS = ["src", "functions", "taskpane/sheets", "taskpane/hosts/excel"];
/** Tests that ask about the whole at length, or need a module mocked, are not asked here: others must notice. */
const NOT_ASKED =
  /host-model|bounded-work|any-cells|takeoff\.test|typed-matrix|\/tools\/|\/types\/|\/office\/|\/browser\//;
export const LITERALS_REPORT = path.join(root, "test-output", "mutation", "literals.json");

process.env.RINGBEAD_RUNS = "20";
process.env.RINGBEAD_SEED = "130417";
await generate();

const modules = new Modules(root);
const tests = filesIn("test", ".test.ts")
  .filter((file) => !NOT_ASKED.test(file))
  .map((file) => ({ file, reached: modules.reachedBy(path.join(root, file)) }));
const wanted = process.argv.slice(2);
const files = ROOMS.flatMap((room) => filesIn(room, ".ts")).filter(
  (file) => wanted.length === 0 || wanted.some((part) => file.includes(part)),
);

/** The tests that reach a file, those that are about it first. */
function testsOf(file: string): string[] {
  const place = path.join(root, file);
  const room = path.dirname(file);
  const name = path.basename(file, ".ts");
  const nearness = (test: string): number =>
    test.includes(`${room}/${name}.`) ? 0 : test.includes(room) ? 1 : test.includes(name) ? 2 : 3;
  return tests
    .filter(({ reached }) => reached.has(place))
    .map(({ file: test }) => test)
    .sort((a, b) => nearness(a) - nearness(b));
}

const broken = new Set<string>();
async function failing(all: readonly string[], file?: string, text?: string): Promise<string | undefined> {
  for (const test of all) {
    if (broken.has(test)) continue;
    modules.reset(file === undefined ? undefined : path.join(root, file), text);
    modules.load(path.join(root, "test/custom-functions-host.ts"));
    const failure = await firstFailure(modules, path.join(root, test));
    if (failure !== undefined) return `${test}: ${failure}`;
  }
  return undefined;
}

// A test that fails on the sources as they are can notice nothing.
for (const { file } of tests) {
  const failure = await failing([file]);
  if (failure === undefined) continue;
  broken.add(file);
  console.log(`not asked, since it fails here: ${failure}`);
}

const report: Record<string, Report["files"][string]> = {};
for (const file of files) {
  const source = readFileSync(path.join(root, file), "utf8");
  const about = testsOf(file);
  const mutants: Mutant[] = [];
  for (const literal of literalsOf(file, source)) {
    const noticed = await failing(about, file, mutated(source, literal));
    mutants.push(asMutant(source, literal, noticed === undefined ? "Survived" : "Killed"));
    if (noticed === undefined) console.log(`unnoticed: ${file}: ${literal.code} → ${literal.becomes}`);
  }
  if (mutants.length === 0) continue;
  report[file] = { source, mutants };
  const survived = mutants.filter(({ status }) => status === "Survived").length;
  console.log(`${file}: ${String(mutants.length - survived)} of ${String(mutants.length)} noticed`);
}
mkdirSync(path.dirname(LITERALS_REPORT), { recursive: true });
writeFileSync(LITERALS_REPORT, JSON.stringify({ files: report }));

function asMutant(source: string, { start, end, becomes }: Literal, status: string): Mutant {
  return {
    status,
    replacement: becomes,
    location: { start: placeOf(source, start), end: placeOf(source, end) },
  };
}

function placeOf(source: string, at: number): { readonly line: number; readonly column: number } {
  const lines = source.slice(0, at).split("\n");
  return { line: lines.length, column: (lines.at(-1) ?? "").length + 1 };
}

function filesIn(folder: string, ending: string): string[] {
  return readdirSync(path.join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(ending))
    .map((name) => `${folder}/${name.replaceAll("\\", "/")}`)
    .sort();
}
