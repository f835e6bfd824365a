/** What only the printed reference takes from the records in functions/: each says what the others say. */

import temml from "temml";

import { FORMULAS } from "../../functions/catalogue";
import { HELP } from "../../functions/help";
import type { Formula } from "../../functions/formula";
import type { FormulaHelp } from "../../functions/help-text";
import type { Said } from "./mathml";
import { numbersIn, read } from "./mathml";

/** Equations that nothing is typeset of, and why. */
const NOT_TYPESET: Readonly<Record<string, string>> = {
  DAM_DISTANCE: "the inverse of another formula, in words",
  ELECTRODE_DIAMETER: "a table",
  MILL_RATIO: "sums of elements, one pair for each method",
  MILL_SULFUR: "a range, in words",
  PIPE_OD: "a table",
  PIPE_WALL: "a table",
  PURGE_TINT: "a table",
  SAMPLE_PLAN: "tables",
  TUBE_TOLERANCE: "a table",
  SETUP_COUNT: "a count, in words",
};
const FIGURES =
  "standoff electrode-length off-size sectors bead-section ring plate dams vent puddle cells pulse cycle crew overlap".split(
    " ",
  );
/** Names with digits in them, of a metal and of a kind of queue. */
const NAMES = /316L|M\/M\/1/g;

interface Reference {
  readonly id: string;
  readonly math: readonly string[];
  readonly symbols: readonly { readonly symbol: string; readonly meaning: string }[];
  readonly related: readonly string[];
  readonly figure: string;
}

interface Entry {
  readonly help: FormulaHelp;
  readonly reference: Reference;
}

const entries = HELP.map((help): Entry => {
  const { id, tex = [], where = {}, related, figure = "" } = recordOf(help.id);
  const symbols = Object.entries(where).map(([symbol, meaning]) => ({ symbol, meaning }));
  return { help, reference: { id, math: tex, symbols, related, figure } };
});

function recordOf(id: string): Formula {
  const found = FORMULAS.find((formula) => formula.id === id);
  if (found === undefined) throw new Error(`no formula ${id}`);
  return found;
}

test("there is an entry for every formula", () => {
  expect(entries.length).toBeGreaterThan(50);
});

/** Every complaint of a check, a line each. */
function complaints(check: (entry: Entry) => readonly string[]): string[] {
  return entries.flatMap((entry) => check(entry).map((what) => `${entry.reference.id}: ${what}`));
}

function typeset(tex: string): string {
  return temml.renderToString(tex, { displayMode: true, throwOnError: true });
}

/** What all the lines of an equation say together, numbers in order of size. */
function saidBy(math: readonly string[]): Said {
  const lines = math.map((line) => read(typeset(line)));
  return {
    symbols: new Set(lines.flatMap(({ symbols }) => [...symbols])),
    words: new Set(lines.flatMap(({ words }) => [...words])),
    numbers: lines.flatMap(({ numbers }) => numbers).sort((a, b) => a - b),
  };
}

/** The clauses that calculate something; others are remarks: "ρ at 20 °C". */
function calculations(equation: string): string[] {
  const all = equation.replace(NAMES, "").split(";");
  return all.filter((clause) => /[=≤∓·√]/.test(clause));
}

/** The numbers of the equation as typed, powers included, in order of size. */
function numbersTyped(equation: string): number[] {
  return calculations(equation)
    .flatMap(numbersIn)
    .sort((a, b) => a - b);
}

test("reads symbols, words and numbers of MathML", () => {
  const { symbols, words, numbers } = saidBy([
    String.raw`\Delta p = 209\,500\ \text{ppm}\cdot C_d\,K_0^2 + \frac{t_{\text{on}}}{x_i}\,\mathrm{d}u + 0.030\,\pi\exp y`,
    String.raw`\max_t\,(360^\circ) + \bar{q} + \mathrm{Re} + k_{\text{316L}} + \text{4 in tube}`,
  ]);
  expect([...symbols].sort()).toEqual(
    ["C_d", "K₀", "Re", "k_316L", "q", "t", "tₒₙ", "u", "xᵢ", "y", "Δp"].sort(),
  );
  expect([...words].filter((word) => word !== "").sort()).toEqual(["4 in tube", "ppm"]);
  expect(numbers).toEqual([0.03, 2, 4, 360, 209500]);
});

test("reads the numbers of an equation as typed", () => {
  expect(numbersTyped("C = 209 500 ppm·q₀²/(4αt)·kθ of 316L; ρ at 20 °C; x ≤ 0.030")).toEqual([
    0.03, 2, 4, 209500,
  ]);
});

test("an equation is typeset, or listed here with the reason", () => {
  expect(
    complaints(({ help, reference: { id, math } }) => [
      ...(help.equation === "" && math.length > 0 ? ["typeset, but there is no equation in one line"] : []),
      ...(help.equation !== "" && math.length === 0 && !(id in NOT_TYPESET) ? ["not typeset"] : []),
      ...(id in NOT_TYPESET && math.length > 0 ? ["listed as not typeset, but it is"] : []),
      ...(id in NOT_TYPESET && help.equation.includes("=") ? ["an equation, but listed as not typeset"] : []),
    ]),
  ).toEqual([]);
});

test("every line is LaTeX that can be typeset", () => {
  expect(
    complaints(({ reference }) =>
      reference.math.flatMap((line) => {
        try {
          return typeset(line).includes("<math") ? [] : [`nothing typeset of ${line}`];
        } catch (problem) {
          return [`${line}: ${String(problem)}`];
        }
      }),
    ),
  ).toEqual([]);
  expect(() => typeset(String.raw`\frac{1}{`)).toThrow();
});

test("every symbol is explained, once, and nothing else is", () => {
  expect(
    complaints(({ reference: { math, symbols } }) => {
      const said = saidBy(math);
      const explained = symbols.map(({ symbol }) => symbol);
      return [
        ...[...said.symbols]
          .filter((symbol) => !explained.includes(symbol))
          .map((one) => `${one} unexplained`),
        ...explained
          .filter((one) => !said.symbols.has(one) && !said.words.has(one))
          .map((one) => `no ${one}`),
        ...explained.filter((one, i) => explained.indexOf(one) !== i).map((one) => `${one} twice`),
        ...symbols.filter(({ meaning }) => meaning === "").map(({ symbol }) => `${symbol} without meaning`),
      ];
    }),
  ).toEqual([]);
});

test("an explanation that ends in an argument's name names one of the formula's own, or a column of its table", () => {
  expect(
    complaints(({ help: { parameters }, reference: { symbols } }) =>
      symbols.flatMap(({ symbol, meaning }) => {
        const argument = /\(([a-zA-Z]+)\)$/.exec(meaning)?.[1];
        if (argument === undefined) return [];
        const known = parameters.some(
          ({ name, range, description }) =>
            name === argument || (range && new RegExp(`\\b${argument}\\b`).test(description)),
        );
        return known ? [] : [`${symbol}: no argument ${argument}`];
      }),
    ),
  ).toEqual([]);
});

test("typed and typeset equation have the same numbers", () => {
  expect(
    complaints(({ help: { equation }, reference: { math } }) => {
      if (math.length === 0) return [];
      const [typed, set] = [numbersTyped(equation).join(" "), saidBy(math).numbers.join(" ")];
      return typed === set ? [] : [`typed ${typed}, typeset ${set}`];
    }),
  ).toEqual([]);
});

test("any number changed in a typeset line is noticed", () => {
  let changed = 0;
  expect(
    complaints(({ help: { equation }, reference: { math } }) => {
      const typed = numbersTyped(equation).join(" ");
      return math.flatMap((line, i) =>
        [...line.replace(NAMES, "____").matchAll(/(?<![_\d.])\d+(?:\.\d+)?/g)].flatMap(
          ({ 0: number, index }) => {
            changed += 1;
            const other =
              line.slice(0, index) + String(Number(number) + 1) + line.slice(index + number.length);
            const set = saidBy(math.map((one, j) => (i === j ? other : one))).numbers.join(" ");
            return set === typed ? [`${other} passes`] : [];
          },
        ),
      );
    }),
  ).toEqual([]);
  expect(changed).toBeGreaterThan(50);
});

test("every formula has two to five others beside it", () => {
  const ids = entries.map(({ reference }) => reference.id);
  expect(
    complaints(({ reference: { id, related } }) => [
      ...(related.length < 2 || related.length > 5 ? [`${String(related.length)} related`] : []),
      ...related.filter((other) => other === id || !ids.includes(other)).map((other) => `no other ${other}`),
      ...related.filter((other, i) => related.indexOf(other) !== i).map((other) => `${other} twice`),
    ]),
  ).toEqual([]);
});

test("a figure is one of those there are, and each of those explains some formula", () => {
  expect(
    complaints(({ reference: { figure } }) =>
      figure === "" || FIGURES.includes(figure) ? [] : [`no figure ${figure}`],
    ),
  ).toEqual([]);
  const used = entries.map(({ reference }) => reference.figure);
  expect(FIGURES.filter((figure) => !used.includes(figure))).toEqual([]);
});
