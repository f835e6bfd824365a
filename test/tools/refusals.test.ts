import { readFileSync } from "node:fs";
import path from "node:path";

import ts from "typescript";

import { refusalRules, rulesIn } from "../../tools/docs/refusal-rules";
import { refusalsPage } from "../../tools/docs/refusals";
import { EXAMPLES } from "../refused";

const KEPT = path.join("docs", "refusals.md");

test("docs/refusals.md is what the sources and these calls make; if not, run `npm run docs`", () => {
  expect(readFileSync(KEPT, "utf8")).toBe(refusalsPage(EXAMPLES));
});

test("a rule without an example, an example without a rule and a wrong sentence are errors", () => {
  const [first, ...rest] = EXAMPLES;
  const lone = EXAMPLES.filter(({ says }) => !says.includes("no stack of these leaves"));
  expect(() => refusalsPage(lone)).toThrow("no example of: no stack of these leaves");
  expect(() => refusalsPage([...rest, { call: "=BEAD.STANDOFF(1)", says: "fine" }])).toThrow(
    "no rule in the sources says: fine",
  );
  const wrong = { call: first?.call ?? "", says: "#VALUE! wall = 1 in: must be above 0" };
  expect(() => refusalsPage([...rest, wrong])).toThrow("=BEAD.STANDOFF(0) says: #VALUE! wall = 0");
});

describe("the rules of a source", () => {
  const rules = (text: string): string[] =>
    rulesIn(ts.createSourceFile("x.ts", text, ts.ScriptTarget.ES2022, true));

  test("are its tagged templates and the words given to a refusal, with a gap for each value", () => {
    expect(rules("throw new Refusal(a, v, rule`must be at most ${most} here`)")).toEqual([
      "must be at most … here",
    ]);
    expect(rules('throw new Refusal(a, v, ["needs ", `one of ${words}`])')).toEqual(["needs one of …"]);
  });

  test("are followed through constants, functions, branches and arguments", () => {
    expect(rules('const M = "fix it"; throw new Refusal(a, v, [M])')).toEqual(["fix it"]);
    expect(
      rules(
        'function why(x) { if (x) return "one"; return y ? "two" : `three ${x}`; } new Refusal(a, v, [why(1)])',
      ),
    ).toEqual(["one", "two", "three …"]);
    expect(
      rules(
        'function no(w: string) { return new Refusal(a, v, [w]); } throw no("first"); throw no("second")',
      ),
    ).toEqual(["first", "second"]);
    expect(rules('const range = rule`${a} to ${b}`; new Refusal(a, v, ["from ", ...range])')).toEqual([
      "from … to …",
    ]);
  });

  test("are found wherever a refusal is made", () => {
    const files = new Set(refusalRules().map(({ file }) => file));
    const makers = ts.sys
      .readDirectory(".", [".ts"], undefined, ["src/**/*", "functions/**/*"])
      .filter((file) => readFileSync(file, "utf8").includes("new Refusal("))
      .map((file) => path.relative(".", file).split(path.sep).join("/"));
    expect(makers.filter((file) => !files.has(file))).toEqual([]);
    expect(makers.length).toBeGreaterThan(15);
  });
});
