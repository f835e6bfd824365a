import { readFileSync } from "node:fs";
import path from "node:path";

import { Answers, letterOf, toldBy } from "../../tools/dev/mutants/answers";
import type { Report } from "../../tools/docs/mutation";
import { mutationPage, reasons, unnoticed } from "../../tools/docs/mutation";

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
  return mutationPage({ mutators, literals }, given);
}

type Location = Record<"start" | "end", { line: number; column: number }>;

function place(line: number, column: number, toLine: number, toColumn: number): Location {
  return { start: { line, column }, end: { line: toLine, column: toColumn } };
}

test("a change that no test noticed is told with the code it replaces", () => {
  expect(unnoticed(REPORT)).toEqual([CHANGE]);
  expect(
    unnoticed({ files: { x: { source: SOURCE, mutants: [{ ...NOTICED, status: "Survived" }] } } }),
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
  expect(page).toContain("| `src` | StrykerJS's mutators | 1 | 1 | 1 | 50.0 % | 0 |");
  expect(page).toContain("| `src` | numbers × 1.01 | 1 | 1 | 0 | 50.0 % | 0 |");
  expect(page).toContain("| `functions` | numbers × 1.01 | 0 | 0 | 0 | – | 0 |");
  expect(page).toContain("| `src/x.ts` | 1 | 1 | 1 | 50.0 % | 1 | 1 | 0 | 50.0 % |");
  expect(page).toContain("\n0 passed every such test that runs them, and 2 those");
});

test("what was not asked is counted and named, and is neither noticed nor left", () => {
  const pending = { ...NOTICED, status: "Pending" };
  const part = { "src/x.ts": { source: SOURCE, mutants: [NOTICED, LEFT, pending] } };
  const none = { "functions/a.ts": { source: SOURCE, mutants: [pending, pending] } };
  const page = pageOf({ files: { ...part, ...none } }, [{ why: "It is invented", changes: [CHANGE] }]);
  expect(page).toContain("**50.0 % of 2 changes were noticed;** the other 1 stand");
  expect(page).toContain("\n3 more were not asked about.\n");
  expect(page).toContain("| `src` | StrykerJS's mutators | 1 | 1 | 0 | 50.0 % | 1 |");
  expect(page).toContain("| `functions` | StrykerJS's mutators | 0 | 0 | 0 | – | 2 |");
  expect(page).toContain(
    "\n- `src`, StrykerJS's mutators: `x.ts` (1 of 3)\n- `functions`, StrykerJS's mutators: `a.ts`\n\n",
  );
  expect(page).not.toContain("| `functions/a.ts` |");
  expect(pageOf(REPORT, [{ why: "It is invented", changes: [CHANGE] }])).toContain(
    "## Not asked\n\nAnswers hold",
  );
  expect(pageOf(REPORT, [{ why: "It is invented", changes: [CHANGE] }])).toContain("\n\nNothing.\n\n");
});

test("a reason for a change that was not asked anew stays, and is not on the page", () => {
  const report = {
    files: { "src/x.ts": { source: SOURCE, mutants: [NOTICED, { ...LEFT, status: "Pending" }] } },
  };
  const page = pageOf(report, [{ why: "It is invented", changes: [CHANGE] }]);
  expect(page).toContain("**100.0 % of 1 changes were noticed;** the other 0 stand");
  expect(page).not.toContain("It is invented");
});

test("a change without a reason and a reason without a change are errors", () => {
  expect(() => pageOf(REPORT, [])).toThrow('no reason for ["src/x.ts","d = e(","e(\\n  f)","0"]');
  const gone = { ...CHANGE, becomes: "1" };
  expect(() => pageOf(REPORT, [{ why: "Both", changes: [CHANGE, gone] }])).toThrow("no longer unnoticed");
});

const EDITS = [
  { start: 4, end: 9, becomes: "b > c" },
  { start: 15, end: 22, becomes: "0" },
];

test("answers come back for the code they are of, and for no other", () => {
  const answers = new Answers("");
  expect(answers.of("mutators", "src/x.ts", SOURCE, EDITS)).toBe("--");
  answers.put("mutators", "src/x.ts", SOURCE, EDITS, "nu");
  answers.put("literals", "src/gone.ts", SOURCE, EDITS, "ss");
  const text = answers.text(["src/x.ts"]);
  expect(text).toMatch(/^mutators src\/x\.ts [0-9a-f]{12} nu\n$/);
  const again = new Answers(text);
  expect(again.of("mutators", "src/x.ts", SOURCE, EDITS)).toBe("nu");
  expect(again.of("literals", "src/x.ts", SOURCE, EDITS)).toBe("--");
  expect(again.of("mutators", "src/x.ts", `${SOURCE}\n`, EDITS)).toBe("--");
  expect(again.of("mutators", "src/x.ts", SOURCE, EDITS.slice(1))).toBe("-");
});

test.each([
  ["n", "Killed", true],
  ["t", "Timeout", true],
  ["u", "Survived", true],
  ["s", "Survived", false],
  ["b", "RuntimeError", true],
  ["b", "CompileError", true],
])("%s stands for %s", (letter, status, askedAll) => {
  expect(letterOf(status, askedAll)).toBe(letter);
  const told = toldBy(letter);
  expect(letterOf(told.status, told.askedAll !== false)).toBe(letter);
});

test("a line that is no answer is an error", () => {
  expect(() => new Answers("mutators src/x.ts 51f0a6be9d27 nux\n")).toThrow("no answers: mutators src/x.ts");
  expect(() => toldBy("x")).toThrow("x is no answer");
});

test("every reason is of code that stands in its file still, and the page has no others", () => {
  const page = readFileSync(path.join("docs", "mutation.md"), "utf8");
  const changes = reasons().flatMap((reason) => reason.changes);
  expect(changes.length).toBeGreaterThan(0);
  const headings = page.split("\n").filter((one) => one.startsWith("### "));
  expect(headings.length).toBeGreaterThan(0);
  expect(reasons().map(({ why }) => `### ${why}`)).toEqual(expect.arrayContaining(headings));
  for (const { file, line, code } of changes) {
    const source = readFileSync(file, "utf8");
    expect([file, source]).toEqual([file, expect.stringContaining(code)]);
    expect([file, source.split("\n").map((one) => one.trim())]).toEqual([
      file,
      expect.arrayContaining([line]),
    ]);
  }
});
