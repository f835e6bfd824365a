/**
 * The process that runs tests on changed sources, for mutate.ts, which ends it when a change never ends. Not to be
 * started by hand.
 */

import path from "node:path";

import { root } from "../build/project";
import { Modules } from "./mutants/modules";
import type { Run } from "./mutants/plan";
import type { Failure } from "./mutants/test-run";
import { firstFailure, used } from "./mutants/test-run";

export interface Question {
  readonly file: string;
  /** What the file reads as. */
  readonly text: string;
  readonly runs: readonly Run[];
}
export interface Answer {
  readonly status: "Killed" | "Timeout" | "Survived" | "RuntimeError" | "CompileError";
  readonly test?: string;
}

/** A work that is longer than this, and than five times all it takes on right sources, does not end, ms. */
const LONGEST = 1500;
/** Where other programs work too, a test gets this many times as long before it counts as endless. */
const PATIENCE = 4;

const modules = new Modules(root);
const HOST = path.join(root, "test/custom-functions-host.ts");
console.log = console.warn = console.error = () => undefined;

process.on("message", (question: Question) => {
  void answered(question).then((answer) => process.send?.(answer));
});

async function answered({ file, text, runs }: Question): Promise<Answer> {
  const place = path.join(root, file);
  try {
    modules.change(place, text);
  } catch {
    return { status: "CompileError" };
  }
  try {
    for (const run of runs) {
      const failure = await failureOf(run, LONGEST + 5 * run.takes);
      if (failure !== undefined) return { status: failure, test: run.test };
    }
    return { status: "Survived" };
  } finally {
    modules.change(place, undefined);
  }
}

async function failureOf({ test, only }: Run, longest: number): Promise<Answer["status"] | undefined> {
  const asked = { only: new Set(only), longest: Math.ceil(longest) };
  const began = used();
  let failure = await failureIn(test, asked);
  // It was not slow: others had the processor.
  if (failure?.ranOut === true && used() - began < longest / 2) {
    failure = await failureIn(test, { ...asked, longest: Math.ceil(PATIENCE * longest) });
  }
  if (failure === undefined) return undefined;
  if (failure.loading) return "RuntimeError";
  return failure.ranOut ? "Timeout" : "Killed";
}

async function failureIn(
  test: string,
  asked: { readonly only: ReadonlySet<number>; readonly longest: number },
): Promise<Failure | undefined> {
  modules.reset();
  try {
    modules.load(HOST);
  } catch (problem) {
    return { title: String(problem), loading: true, ranOut: false };
  }
  return firstFailure(modules, path.join(root, test), asked);
}
