/**
 * A test in a browser hangs on how busy the machine is as well: a file with a test that failed is run once more, alone.
 * What fails again is a fault. What failed once is told with its first message, since it may be a fault that shows seldom.
 */

import { readFileSync } from "node:fs";
import path from "node:path";
import { stripVTControlCharacters } from "node:util";

import { root } from "../build/project";
import type { TestRun } from "./jest";

interface Assertion {
  readonly status: string;
  readonly fullName: string;
  readonly failureMessages?: readonly string[];
}

interface Report {
  readonly testResults: readonly {
    /** The file's path. */
    readonly name: string;
    readonly status: "passed" | "failed";
    readonly assertionResults: readonly Assertion[];
  }[];
}

/** Begins the line of a test that failed once. */
export const FAILED_ONCE = "FAILED ONCE:";

/**
 * @param first A run of all files.
 * @param run Runs the files of these paths; may write over the report of the first.
 * @returns What counts: the files that passed, and the others as they were the second time.
 */
export async function onceMore(
  first: TestRun,
  run: (files: readonly string[]) => Promise<TestRun>,
): Promise<TestRun> {
  if (first.failed === 0) return first;
  const { testResults } = JSON.parse(readFileSync(first.report, "utf8")) as Report;
  const failed = testResults.filter(({ status }) => status === "failed");
  const kept = testResults.filter(({ status }) => status === "passed");
  const again = await run(failed.map(({ name }) => name));
  const told = failed.flatMap(({ name, assertionResults }) => {
    const tests = assertionResults.filter(({ status }) => status === "failed");
    const what = tests.length === 0 ? ["did not load"] : tests.map(inALine);
    return what.map((line) => `${FAILED_ONCE} ${path.relative(root, name)}: ${line}`);
  });
  return {
    ...again,
    passed: kept.reduce((sum, { assertionResults }) => sum + passedOf(assertionResults), again.passed),
    output: [...told, again.failed > 0 ? first.output : "", again.output].join("\n"),
  };
}

function passedOf(assertions: readonly Assertion[]): number {
  return assertions.filter(({ status }) => status === "passed").length;
}

/** Title and first message, without the colors that a terminal would show. */
function inALine({ fullName, failureMessages = [] }: Assertion): string {
  const message = stripVTControlCharacters(failureMessages.join(" "));
  return `${fullName}: ${message.replace(/\s+/g, " ").slice(0, 300)}`;
}
