/** Collects, while the tests run, what each passed check says it was held against: test/evidence.ts wrote the titles. */

import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";

import { root } from "./project.mjs";

/**
 * A source that a formula was checked against in this run.
 * @typedef {{ formulas: string[], standing: string, source: string, checks: number }} CheckRecord
 */

export const RECORDS = path.join(root, "test-output", "checks.json");

const TITLE = /^([A-Z0-9_]+(?: [A-Z0-9_]+)*) \| ([^|]+) \| ([^|]+)$/;

/** @typedef {{ status: string, title: string, ancestorTitles: string[] }} TestResult */

/** @param {TestResult[]} tests @returns {CheckRecord[]} */
export function recordsOf(tests) {
  /** @type {Map<string, CheckRecord>} */
  const found = new Map();
  for (const { status, title, ancestorTitles } of tests) {
    if (status !== "passed") continue;
    for (const heading of [...ancestorTitles, title]) {
      const [, formulas = "", standing = "", source = ""] = TITLE.exec(heading) ?? [];
      if (formulas === "") continue;
      const record = found.get(heading) ?? { formulas: formulas.split(" "), standing, source, checks: 0 };
      found.set(heading, { ...record, checks: record.checks + 1 });
    }
  }
  return [...found.values()].sort((a, b) => (key(a) < key(b) ? -1 : 1));
}

/** @param {CheckRecord} record */
function key({ formulas, standing, source }) {
  return [...formulas, standing, source].join(" ");
}

/** A reporter as jest wants one. Only a run of all such tests may say what there is: `npm test` and `npm run docs`. */
export default class ChecksReporter {
  /** @param {unknown} _contexts @param {{ testResults: { testResults: TestResult[] }[] }} results */
  onRunComplete(_contexts, results) {
    if (process.env.RINGBEAD_RECORD !== "checks") return;
    const records = recordsOf(results.testResults.flatMap(({ testResults }) => testResults));
    mkdirSync(path.dirname(RECORDS), { recursive: true });
    writeFileSync(RECORDS, `${JSON.stringify(records, null, 1)}\n`);
  }
}
