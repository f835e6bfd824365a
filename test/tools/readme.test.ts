import { readFileSync } from "node:fs";

import { families, FORMULAS } from "../../functions/catalogue";
import { readmePage } from "../../tools/docs/readme";

const README = readFileSync("README.md", "utf8");

test("README.md lists every formula by its family; if not, run `npm run docs`", () => {
  expect(readmePage(README)).toBe(README);
  for (const { id } of FORMULAS) expect(README.split(`\`${id}\``)).toHaveLength(2);
});

test("a formula more or less, a family renamed or moved is another page", () => {
  const [first, second, ...rest] = families;
  if (first === undefined || second === undefined) throw new Error("no families");
  for (const others of [
    [second, ...rest],
    [second, first, ...rest],
    [{ ...first, title: "Gap" }, second, ...rest],
    [{ ...first, formulas: first.formulas.slice(1) }, second, ...rest],
  ]) {
    expect(readmePage(README, others)).not.toBe(README);
  }
});

test("only the table is made: what stands around it stays", () => {
  const [before, after] = ["# Page\n\n", "\nMore.\n"] as const;
  const page = `${before}| family | formulas |\n|---|---|\n| Old | \`GONE\` |\n${after}`;
  const made = readmePage(page, families.slice(0, 1));
  expect(made.startsWith(before)).toBe(true);
  expect(made.endsWith(`|\n${after}`)).toBe(true);
  expect(made).not.toContain("GONE");
  expect(made.split("\n").filter((line) => line.startsWith("|"))).toHaveLength(3);
  expect(() => readmePage("# Page\n")).toThrow("no table of formulas");
});
