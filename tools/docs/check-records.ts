/** What each passed check says it was held against, from jest's report of a full run: test/evidence.ts wrote the titles. */

import { readFileSync } from "node:fs";

/** A source that formulas were checked against in a run. */
export interface CheckRecord {
  readonly formulas: readonly string[];
  readonly standing: string;
  readonly source: string;
  readonly checks: number;
}

/** A test's result as jest reports it. */
export interface TestResult {
  readonly status: string;
  readonly title: string;
  readonly ancestorTitles: readonly string[];
}

const TITLE = /^([A-Z0-9_]+(?: [A-Z0-9_]+)*) \| ([^|]+) \| ([^|]+)$/;

export function recordsOf(tests: readonly TestResult[]): CheckRecord[] {
  const found = new Map<string, CheckRecord>();
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

/** Only the report of a run of all such tests says what there is. */
export function recordsIn(report: string): CheckRecord[] {
  const { testResults } = JSON.parse(readFileSync(report, "utf8")) as {
    testResults: { assertionResults: TestResult[] }[];
  };
  return recordsOf(testResults.flatMap(({ assertionResults }) => assertionResults));
}

function key({ formulas, standing, source }: CheckRecord): string {
  return [...formulas, standing, source].join(" ");
}
