/** Runs a set of tests and counts what passed. */

import { mkdirSync, readFileSync, rmSync } from "node:fs";
import path from "node:path";

import { root } from "../build/project";
import { runPackaged } from "./program";

export interface TestRun {
  readonly passed: number;
  readonly failed: number;
  /** What jest wrote for people. */
  readonly output: string;
  readonly status: number | null;
  /** The file with the result of every test. */
  readonly report: string;
}

/**
 * Room for new objects, in MiB: the sheet's engine makes so many short-lived ones that with Node's own 16 a sixth of the
 * time goes into collecting them.
 */
const YOUNG = "--max-semi-space-size=64";

export async function runTests(
  config: string,
  options: readonly string[] = [],
  env: NodeJS.ProcessEnv = {},
): Promise<TestRun> {
  const report = path.join(root, "test-output", `${path.basename(config, ".mjs")}.json`);
  mkdirSync(path.dirname(report), { recursive: true });
  rmSync(report, { force: true });
  const { status, output } = await runPackaged(
    "jest",
    ["--config", config, "--json", `--outputFile=${report}`, ...options],
    { NODE_OPTIONS: [process.env.NODE_OPTIONS, YOUNG].filter(Boolean).join(" "), ...env },
  );
  let counted: { numPassedTests: number; numFailedTests: number; numRuntimeErrorTestSuites: number };
  try {
    counted = JSON.parse(readFileSync(report, "utf8")) as typeof counted;
  } catch {
    throw new Error(`jest did not run:\n${output}`);
  }
  return {
    passed: counted.numPassedTests,
    // A file that does not load has no test that could fail.
    failed: counted.numFailedTests + counted.numRuntimeErrorTestSuites,
    output: withoutReport(output),
    status,
    report,
  };
}

/** jest writes the report to its output too, on a line of its own. */
function withoutReport(output: string): string {
  return output
    .split("\n")
    .filter((line) => !line.startsWith('{"num'))
    .join("\n");
}
