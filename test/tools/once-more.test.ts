/** Tests in a browser that failed are run once more: only what fails twice counts as failed, and nothing is passed over in silence. */

import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";

import { root } from "../../tools/build/project";
import type { TestRun } from "../../tools/dev/jest";
import { FAILED_ONCE, onceMore } from "../../tools/dev/once-more";

const file = (name: string): string => path.join(root, "test/browser", name);
const passing = { status: "passed", fullName: "it works" };
const failing = {
  status: "failed",
  fullName: "it fails",
  failureMessages: ["\u001b[31mexpected 1\u001b[39m\n  received 2"],
};

function runOf(passed: number, failed: number, output: string): TestRun {
  return { passed, failed, output, status: failed > 0 ? 1 : 0, report: "" };
}

/** A first run of a good file with two tests, one with a good and a bad test, and one that did not load. */
function firstRun(): TestRun {
  const report = path.join(mkdtempSync(path.join(tmpdir(), "report-")), "report.json");
  const testResults = [
    { name: file("good.test.ts"), status: "passed", assertionResults: [passing, passing] },
    { name: file("bad.test.ts"), status: "failed", assertionResults: [passing, failing] },
    { name: file("broken.test.ts"), status: "failed", assertionResults: [] },
  ];
  writeFileSync(report, JSON.stringify({ testResults }));
  return { ...runOf(3, 2, "what the first run wrote"), report };
}

test("a run without a failure is not repeated", async () => {
  const run = jest.fn<Promise<TestRun>, [readonly string[]]>();
  const first = runOf(5, 0, "");
  expect(await onceMore(first, run)).toBe(first);
  expect(run).not.toHaveBeenCalled();
});

test("the files with a failure, and no others, are run once more; what passes then is told and counts", async () => {
  const run = jest.fn<Promise<TestRun>, [readonly string[]]>().mockResolvedValue(runOf(4, 0, ""));
  const { passed, failed, output } = await onceMore(firstRun(), run);
  expect(run.mock.calls).toEqual([[[file("bad.test.ts"), file("broken.test.ts")]]]);
  expect({ passed, failed }).toEqual({ passed: 2 + 4, failed: 0 });
  expect(output.trim().split("\n")).toEqual([
    `${FAILED_ONCE} test/browser/bad.test.ts: it fails: expected 1 received 2`,
    `${FAILED_ONCE} test/browser/broken.test.ts: did not load`,
  ]);
});

test("what fails twice has failed, and both runs are shown", async () => {
  const again = runOf(3, 1, "what the second run wrote");
  const { passed, failed, status, output } = await onceMore(firstRun(), () => Promise.resolve(again));
  expect({ passed, failed, status }).toEqual({ passed: 2 + 3, failed: 1, status: 1 });
  expect(output).toContain("what the first run wrote");
  expect(output).toContain("what the second run wrote");
});
