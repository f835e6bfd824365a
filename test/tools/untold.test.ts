import { readFileSync } from "node:fs";
import path from "node:path";

import ts from "typescript";

import { root } from "../../tools/build/project";
import { untold } from "../../tools/build/untold";

function of(file: string, text = readFileSync(path.join(root, file), "utf8")): string {
  return untold(path.join(root, file), text);
}

/** Whether a text is a program: what is taken out may leave no comma behind. */
function isProgram(text: string): boolean {
  const { diagnostics = [] } = ts.transpileModule(text, { reportDiagnostics: true });
  return diagnostics.length === 0;
}

const RECORDS = ["functions/gap/standoff.ts", "functions/heat-flow/melt.ts", "functions/planning/takeoff.ts"];

describe("a record for the functions alone", () => {
  test.each(RECORDS)("%s: no words of the help, the same lines", (file) => {
    const text = of(file);
    expect(isProgram(text)).toBe(true);
    expect(text).not.toMatch(
      /meaning:|validity:|source:|example:|synonyms:|related:|tex:|where:|String\.raw/,
    );
    expect(text.split("\n")).toHaveLength(readFileSync(path.join(root, file), "utf8").split("\n").length);
  });

  test("words are left out of arguments, columns and tables, but not of functions of the same name", () => {
    const made = [
      'import { number, orComputed } from "../argument";',
      'import { column, table } from "../gives";',
      'const a = orComputed(number("Wall thickness", LENGTH, "of the tube"), "as usual");',
      'const t = table({ x: column("heading", LENGTH) }, { more: "and more" });',
    ].join("\n");
    expect(of("functions/gap/made.ts", made).split("\n").slice(2)).toEqual([
      'const a = orComputed(number("", LENGTH, ""), "");',
      'const t = table({ x: column("", LENGTH) }, {});',
    ]);
    const own = 'const number = (name: string) => name;\nnumber("amps");\n';
    expect(of("functions/gap/made.ts", own)).toBe(own);
  });
});

test("a number keeps its value alone, and its lines", () => {
  const made = [
    'import { estimate, published } from "../sourced";',
    "const a = published(",
    "  12 * KJ,",
    '  "kim-1975",',
    '  "as printed",',
    ");",
    'const b = estimate(3, "that of a");',
  ].join("\n");
  expect(of("src/metal/made.ts", made).split("\n").slice(1)).toEqual([
    "const a = { value: 12 * KJ }",
    "",
    "",
    "",
    ";",
    "const b = { value: 3 };",
  ]);
  expect(isProgram(of("src/metal/material.ts"))).toBe(true);
});
