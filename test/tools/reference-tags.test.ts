/** The typeset equations say what the plain ones say, in symbols that are explained. */

import temml from "temml";

import type { FormulaHelp, FormulaReference, Metadata } from "../../tools/metadata.mjs";
import { readMetadata } from "../../tools/metadata.mjs";

/** Equations whose plain text tells a rule or a table that typesetting would not make clearer. */
const TOLD_IN_WORDS = ["SCHEDULE"];

/** The circle constant, and the sign of a difference. */
const NEED_NO_WORD = ["π", "Δ"];

let metadata: Metadata;
beforeAll(async () => {
  metadata = await readMetadata("help.html");
});

function each(check: (about: FormulaHelp, more: FormulaReference) => void): void {
  const { help, reference } = metadata;
  expect(reference.map(({ id }) => id)).toEqual(help.formulas.map(({ id }) => id));
  help.formulas.forEach((about, i) => {
    const more = reference[i];
    if (more !== undefined) check(about, more);
  });
}

/** The texts of all elements of one name in the MathML of an equation. */
function texts(line: string, name: "mi" | "mn"): string[] {
  const mathml = temml.renderToString(line, { displayMode: true, throwOnError: true });
  return [...mathml.matchAll(new RegExp(`<${name}[^>]*>([^<]+)</${name}>`, "g"))].map(([, text = ""]) =>
    text.normalize("NFKC").replace(/[^\p{L}\p{N}.]/gu, ""),
  );
}

/** The numbers in a plain text, subscripts and exponents apart from what stands before them. */
function numbers(text: string): string[] {
  const plain = text
    .normalize("NFKC")
    .replace(/(\d)\s(?=\d{3})/g, "$1")
    .replace(/\d+L\b/g, "");
  return [...plain.matchAll(/\d+(?:\.\d+)?/g)].map(([number]) => number);
}

test("every line can be typeset, and every formula with an equation has one", () => {
  each(({ id, equation }, { math }) => {
    for (const line of math) expect(texts(line, "mi").length + texts(line, "mn").length).toBeGreaterThan(0);
    const told = math.length > 0 || !equation.includes("=") || TOLD_IN_WORDS.includes(id);
    expect([id, told]).toEqual([id, true]);
  });
});

test("its numbers are the plain equation's numbers", () => {
  each(({ id, equation }, { math }) => {
    const plain = numbers(equation);
    const set = math.flatMap((line) => texts(line, "mn")).map((number) => number.replace(/\s/g, ""));
    const strange = set.filter((number) => !plain.includes(number) && !["0", "1"].includes(number));
    expect([id, strange]).toEqual([id, []]);
  });
});

test("every symbol is explained, and nothing is explained that is not there", () => {
  each(({ id }, { math, symbols }) => {
    const letters = new Set(
      math.flatMap((line) => texts(line, "mi")).filter((text) => /^\p{L}$/u.test(text) && !NEED_NO_WORD.includes(text)),
    );
    const subscripts = new Set(
      math.flatMap((line) => [...line.matchAll(/_\{?([A-Za-z])\}?/g)].map(([, letter = ""]) => letter)),
    );
    const said = symbols.map(({ symbol, meaning }) => `${symbol} ${meaning}`).join(" ");
    const unexplained = [...letters].filter(
      (letter) => !subscripts.has(letter) && !new RegExp(`(^| )${letter}[₀-₉_ (]`, "u").test(said),
    );
    expect([id, unexplained]).toEqual([id, []]);
    const absent = symbols.filter(({ symbol }) => !letters.has(symbol.charAt(0)));
    expect([id, absent.map(({ symbol }) => symbol)]).toEqual([id, []]);
    for (const { meaning } of symbols) expect(meaning).not.toBe("");
  });
});

test("every formula leads to others", () => {
  each(({ id }, { related }) => {
    expect([id, related.length >= 1]).toEqual([id, true]);
  });
});
