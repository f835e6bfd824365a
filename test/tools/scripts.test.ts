/** The text of the scripts for other spreadsheets: what their hosts read of it, and what the build's check finds. */

import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";

import ts from "typescript";

import { FORMULAS } from "../../functions/catalogue";
import { HELP } from "../../functions/help";
import project from "../../package.json";
import { scriptErrors } from "../../tools/build/safe-script";
import { scriptsErrors } from "../../tools/build/scripts/checked";
import { comment, told } from "../../tools/build/scripts/help-tags";
import { builtScripts } from "./built-scripts";
import { googleSheets, javascriptMacros } from "./script-hosts";

const built = builtScripts();
const FILES = ["google-sheets.js", "javascript-macros.js"] as const;

/** Every comment that a host may take for the help of a formula. */
const helpComments = (script: string): string[] => script.match(/\/\*\*.*?\*\//gs) ?? [];

describe.each(FILES)("%s", (file) => {
  const script = built[file];

  test("says first what it is and of which version, where it goes, and that the numbers are to be proved", () => {
    const [first = ""] = script.split("\n");
    expect(first.startsWith(`\uFEFF// Ringbead ${project.version}: `)).toBe(true);
    const head = script.slice(0, script.indexOf("/**"));
    for (const words of [
      /put all of this file in place/,
      /test coupon/,
      /qualified procedure/,
      /oxygen meter/,
    ])
      expect(head).toMatch(words);
    expect(script).toMatch(/\/\/ Permission is hereby granted[^]*\/\/ SOFTWARE\.\s*$/);
  });

  test("is one script of the language alone: no module, nothing newer than ES2019, nothing run as text, no address", () => {
    const source = ts.createSourceFile(file, script, ts.ScriptTarget.ES2019, true);
    expect(ts.isExternalModule(source)).toBe(false);
    const newer: string[] = [];
    const visit = (node: ts.Node): void => {
      const { kind } = node;
      if (
        kind === ts.SyntaxKind.QuestionQuestionToken ||
        kind === ts.SyntaxKind.QuestionDotToken ||
        kind === ts.SyntaxKind.PrivateIdentifier ||
        kind === ts.SyntaxKind.PropertyDeclaration ||
        kind === ts.SyntaxKind.BigIntLiteral
      )
        newer.push(node.getText());
      ts.forEachChild(node, visit);
    };
    visit(source);
    expect(newer).toEqual([]);
    expect(scriptErrors(file, script)).toEqual([]);
    expect(script).not.toMatch(/toLocale|localeCompare|\bIntl\b/);
  });

  test("has a comment for each formula and no other, with its help in full", () => {
    const comments = helpComments(script);
    expect(comments).toHaveLength(FORMULAS.length);
    HELP.forEach(({ meaning, parameters, returns }, i) => {
      for (const words of [meaning, ...parameters.map(({ description }) => description), returns])
        expect(comments[i]).toContain(told(words));
      expect(comments[i]).toMatch(/^ \* @customfunction$/m);
      expect(comments[i]).not.toContain("BEAD.S");
    });
  });
});

const SAYS_SO = /if omitted|default|\(optional\)/;

test("an argument that a host may take for left out says so", () => {
  const [sheets = "", macros = ""] = FILES.map((file) => built[file]);
  for (const { id, parameters } of HELP) {
    for (const { name, optional, repeating } of parameters) {
      const shown = new RegExp(`\\bfunction BEAD_${id}\\(`);
      const tag = (script: string): string =>
        helpComments(script.slice(0, shown.exec(script)?.index))
          .at(-1)
          ?.match(new RegExp(`@param \\{\\S+\\} \\[?${name}\\b.*`))?.[0] ?? "";
      if (optional) expect([id, name, tag(sheets)]).toEqual([id, name, expect.stringMatching(SAYS_SO)]);
      if (!repeating) expect([id, name, tag(macros).includes(`[${name}]`)]).toEqual([id, name, optional]);
    }
  }
});

test("help speaks of other formulas by their names in a script, and comments end where they should", () => {
  expect(told("see BEAD.MATERIALS; BEAD. alone stays")).toBe("see BEAD_MATERIALS; BEAD. alone stays");
  expect(comment(["one", "", "two"])).toBe("/**\n * one\n *\n * two\n */");
});

describe("the models of the hosts", () => {
  const open = { omitted: undefined, blank: "" } as const;

  test("Google Sheets offers what has the tag and no final underscore, and hands over as its guide says", () => {
    const host = googleSheets(`
      /** Seen. @customfunction */
      function SEEN(...cells) { return JSON.stringify(cells); }
      /** Private. @customfunction */
      function HIDDEN_() {}
      /** No formula. */
      function OTHER() {}
      /** Throws. @customfunction */
      function THROWS() { throw new Error("why"); }`);
    expect(host.names).toEqual(["SEEN", "THROWS"]);
    expect(host.call("SEEN", [1, undefined, [["x"]], [[1, 2]], undefined], open)).toEqual({
      value: '[1,null,"x",[[1,2]]]',
    });
    expect(host.call("THROWS", [], open)).toEqual({ error: "#ERROR!", message: "why" });
  });

  test("JavaScript macros registers what its comment tells in full", () => {
    const one = (tags: string, parameters = "x"): string =>
      `/**\n * Twice.\n${tags}\n */\nApi.AddCustomFunction(function TWICE(${parameters}) { return 2 * x; });`;
    const named = (script: string): readonly string[] => javascriptMacros(script).names;
    const right = " * @customfunction\n * @param {any} x A number\n * @returns {number}";
    expect(named(one(right))).toEqual(["TWICE"]);
    expect(named(one(right, "x, y"))).toEqual([]);
    expect(named(one(right.replace("any", "range")))).toEqual([]);
    expect(named(one(right.replace(" * @returns {number}", " *")))).toEqual([]);
    expect(named(one(right.replace("@customfunction", "Formula")))).toEqual([]);
    expect(named("Api.AddCustomFunction(function BARE() {});")).toEqual([]);
    expect(javascriptMacros(one(right)).call("TWICE", [4], open)).toEqual({ value: 8 });
  });

  test("a look at what no host has ends the script", () => {
    expect(() => googleSheets("var page = window;")).toThrow("the script looks for window");
    expect(() => javascriptMacros("new Intl.NumberFormat();")).toThrow("the script looks for Intl");
  });
});

describe("the check of the built scripts", () => {
  const errors = (sheets: string, macros: string): string[] => {
    const folder = mkdtempSync(path.join(os.tmpdir(), "ringbead-"));
    mkdirSync(path.join(folder, "scripts"));
    writeFileSync(path.join(folder, "scripts", "google-sheets.js"), sheets);
    writeFileSync(path.join(folder, "scripts", "javascript-macros.js"), macros);
    try {
      return scriptsErrors(
        folder,
        FORMULAS.filter(({ id }) => id === "STANDOFF"),
      );
    } finally {
      rmSync(folder, { recursive: true });
    }
  };
  const right = "function BEAD_STANDOFF(wall) { return 0.0425; }";

  test("is satisfied where the example of each formula gives what it says", () => {
    expect(errors(right, `Api.AddCustomFunction(${right});`)).toEqual([]);
  });

  test("finds a formula that is not there, a wrong example, one that throws, and text that is run", () => {
    expect(errors("", `Api.AddCustomFunction(${right.replace("0.0425", "0.5")});`)).toEqual([
      "google-sheets.js: STANDOFF is not in it",
      "javascript-macros.js: STANDOFF: its example says 0.0425, gives 0.5",
    ]);
    const throwing = "function BEAD_STANDOFF() { throw new Error('no'); }";
    expect(errors(throwing, `Api.AddCustomFunction(${right});\nif (false) eval("1");`)).toEqual([
      "google-sheets.js: STANDOFF: its example does not run (no)",
      "javascript-macros.js runs text: eval",
    ]);
  });
});
