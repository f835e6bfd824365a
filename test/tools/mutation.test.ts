import { readFileSync } from "node:fs";
import path from "node:path";

import type { Kind, Report } from "../../tools/docs/mutation";
import { joined, mutationPage, reasons, unnoticed } from "../../tools/docs/mutation";

/** A source of two changes, the second over two lines; invented. */
const SOURCE = "a = b < c;\nd = e(\n  f);\n";
const NOTICED = { status: "Killed", replacement: "b > c", location: place(1, 5, 1, 10) };
const LEFT = { status: "Survived", replacement: "0", location: place(2, 5, 3, 5) };
const BROKEN = { status: "RuntimeError", replacement: "", location: place(1, 1, 1, 2) };
const REPORT = { files: { "src/x.ts": { source: SOURCE, mutants: [NOTICED, LEFT, BROKEN] } } };
const CHANGE = { file: "src/x.ts", line: "d = e(", code: "e(\n  f)", becomes: "0" };

/** A number in the same file, unnoticed by the tests that the time allowed. */
const NUMBER = {
  status: "Survived",
  replacement: "(7 * 1.01)",
  askedAll: false,
  location: place(1, 1, 1, 2),
};
const NUMBERS: Report = { files: { "src/x.ts": { source: "7;\n", mutants: [NUMBER, NOTICED] } } };
const WRONG = { file: "src/x.ts", line: "7;", code: "7", becomes: "(7 * 1.01)" };

function pageOf(
  mutators: Report,
  given: Parameters<typeof mutationPage>[1],
  literals: Report = { files: {} },
): string {
  const unasked: Record<Kind, string[]> = { mutators: ["functions/a.ts", "functions/b.ts"], literals: [] };
  return mutationPage({ mutators, literals }, given, unasked);
}

type Location = Record<"start" | "end", { line: number; column: number }>;

function place(line: number, column: number, toLine: number, toColumn: number): Location {
  return { start: { line, column }, end: { line: toLine, column: toColumn } };
}

test("a change that no test noticed is told with the code it replaces", () => {
  expect(unnoticed(REPORT)).toEqual([CHANGE]);
  expect(
    unnoticed({ files: { x: { source: SOURCE, mutants: [{ ...NOTICED, status: "NoCoverage" }] } } }),
  ).toEqual([{ file: "x", line: "a = b < c;", code: "b < c", becomes: "b > c" }]);
});

test("the page counts what was noticed and gives every reason", () => {
  const page = pageOf(REPORT, [{ why: "It is invented", changes: [CHANGE] }]);
  expect(page).toContain("**50.0 % of 2 changes were noticed;** the other 1 stand");
  expect(page).toContain("| `src/x.ts` | 1 | 1 | 1 | 50.0 % |");
  expect(page).toContain("### It is invented\n\n- `src/x.ts`, `d = e(`: `e( f)` → `0`");
});

test("both kinds of changes are counted, by room and together; what was not asked of every test is told", () => {
  const page = pageOf(REPORT, [{ why: "It is invented", changes: [CHANGE, WRONG] }], NUMBERS);
  expect(page).toContain("**50.0 % of 4 changes were noticed;** the other 2 stand");
  expect(page).toContain("| `src` | StrykerJS's mutators | 1 | 1 | 1 | 50.0 % |");
  expect(page).toContain("| `src` | numbers × 1.01 | 1 | 1 | 0 | 50.0 % |");
  expect(page).toContain("| `functions` | numbers × 1.01 | 0 | 0 | 0 | – |");
  expect(page).toContain("| `src/x.ts` | 1 | 1 | 1 | 50.0 % | 1 | 1 | 0 | 50.0 % |");
  expect(page).toContain("\n0 passed every such test that runs them, and 2 those");
  expect(page).toContain("- Not asked, StrykerJS's mutators: 2 files of `functions`\n");
  expect(page).toContain("- Not asked, numbers × 1.01: nothing\n");
});

test("a change without a reason and a reason without a change are errors", () => {
  expect(() => pageOf(REPORT, [])).toThrow('no reason for ["src/x.ts","d = e(","e(\\n  f)","0"]');
  const gone = { ...CHANGE, becomes: "1" };
  expect(() => pageOf(REPORT, [{ why: "Both", changes: [CHANGE, gone] }])).toThrow("no longer unnoticed");
});

test("of several runs the last one of a file counts, and what any of them noticed in the same line", () => {
  const early = { files: { "src/x.ts": { source: SOURCE, mutants: [{ ...LEFT, status: "Killed" }] } } };
  const moved = { ...LEFT, location: place(3, 5, 4, 5) };
  const late = { files: { "src/x.ts": { source: `new line;\n${SOURCE}`, mutants: [moved] } } };
  expect(unnoticed(joined([early, late]))).toEqual([]);
  expect(unnoticed(joined([late, early]))).toEqual([]);
  const other = { files: { "src/x.ts": { source: SOURCE.replace("d =", "q ="), mutants: [LEFT] } } };
  expect(unnoticed(joined([early, other]))).toEqual([{ ...CHANGE, line: "q = e(" }]);
  expect(
    unnoticed(joined([other, { files: { "src/a.ts": { source: SOURCE, mutants: [LEFT] } } }])),
  ).toHaveLength(2);
});

test("every reason is of code that stands in its file still, and is on the page", () => {
  const page = readFileSync(path.join("docs", "mutation.md"), "utf8");
  const changes = reasons().flatMap((reason) => reason.changes);
  expect(changes.length).toBeGreaterThan(0);
  for (const { why } of reasons()) expect(page).toContain(`### ${why}\n`);
  for (const { file, line, code } of changes) {
    const source = readFileSync(file, "utf8");
    expect([file, source]).toEqual([file, expect.stringContaining(code)]);
    expect([file, source.split("\n").map((one) => one.trim())]).toEqual([
      file,
      expect.arrayContaining([line]),
    ]);
  }
});
