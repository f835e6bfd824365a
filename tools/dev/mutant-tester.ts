/**
 * The process that runs tests on changed sources, for mutate.ts, which ends it when a change never ends. Not to be
 * started by hand.
 */

import path from "node:path";

import { root } from "../build/project";
import { Modules } from "./mutants/modules";
import type { Run } from "./mutants/plan";
import { firstFailure } from "./mutants/test-run";

export interface Question {
  readonly file: string;
  /** What the file reads as. */
  readonly text: string;
  readonly runs: readonly Run[];
}
export interface Answer {
  readonly status: "Killed" | "Survived" | "RuntimeError" | "CompileError";
  readonly test?: string;
}

/** A work that is longer than this, and than five times all it takes on right sources, does not end, ms. */
const LONGEST = 1500;

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
    for (const { test, only, takes } of runs) {
      modules.reset();
      try {
        modules.load(HOST);
      } catch {
        return { status: "RuntimeError", test };
      }
      const failure = await firstFailure(modules, path.join(root, test), {
        only: new Set(only),
        longest: Math.ceil(LONGEST + 5 * takes),
      });
      if (failure !== undefined) return { status: failure.loading ? "RuntimeError" : "Killed", test };
    }
    return { status: "Survived" };
  } finally {
    modules.change(place, undefined);
  }
}
