import { HELP } from "../../functions/catalogue";
import type { FormulaHelp, FormulaReference } from "../../tools/metadata.mjs";
import { readMetadata } from "../../tools/metadata.mjs";
import { explainedKeys, mathml, needsExplaining, strangeNumbers, symbolsOf } from "./latex";

const FIGURES = [
  "standoff",
  "electrode-length",
  "off-size",
  "sectors",
  "plate",
  "dams",
  "vent",
  "puddle",
  "cells",
  "pulse",
  "cycle",
  "crew",
  "overlap",
];

/** Formulas whose plain equation has an equals sign and yet nothing to display, and why. */
const WITHOUT_MATH = new Map([["SCHEDULE", "each of its values has a formula of its own, displayed there"]]);

let metadata: Awaited<ReturnType<typeof readMetadata>>;
beforeAll(async () => {
  metadata = await readMetadata("https://addins.example/help.html");
});

function tagsOf(id: string): FormulaHelp & FormulaReference {
  const about = metadata.help.formulas.find((formula) => formula.id === id);
  const more = metadata.reference.find((formula) => formula.id === id);
  if (about === undefined || more === undefined) throw new Error(`no formula ${id}`);
  return { ...about, ...more };
}

test("the comments hold the formulas that the help has", () => {
  expect(metadata.errors).toEqual([]);
  expect(metadata.reference.map(({ id }) => id)).toEqual(HELP.map(({ id }) => id));
});

describe.each(HELP.map(({ id }) => id))("%s", (id) => {
  test("every line of the equation can be displayed", () => {
    for (const line of tagsOf(id).math) expect(mathml(line)).toMatch(/^<math[^]*<\/math>$/);
  });

  test("the displayed equation has no number that the plain one has not", () => {
    const { math, equation } = tagsOf(id);
    expect(math.flatMap((line) => strangeNumbers(line, equation))).toEqual([]);
  });

  test("every symbol is explained, and every explained symbol is there", () => {
    const { math, symbols } = tagsOf(id);
    const inEquation = new Set(math.flatMap((line) => [...symbolsOf(line)]));
    const explained = symbols.flatMap(({ symbol }) => explainedKeys(symbol, inEquation));
    expect([...inEquation].filter((key) => needsExplaining(key) && !explained.includes(key))).toEqual([]);
    expect(explained.filter((key) => !inEquation.has(key))).toEqual([]);
    expect(explained.filter((key, i) => explained.indexOf(key) !== i)).toEqual([]);
    expect(symbols.filter(({ meaning }) => meaning === "")).toEqual([]);
  });

  test("an equation with an equals sign is displayed", () => {
    const { math, equation } = tagsOf(id);
    if (equation.includes("=") && !WITHOUT_MATH.has(id)) expect(math).not.toEqual([]);
    if (equation === "") expect(math).toEqual([]);
  });

  test("names two to five related formulas, each once", () => {
    const { related } = tagsOf(id);
    expect(new Set(related).size).toBe(related.length);
    expect(related.length).toBeGreaterThanOrEqual(2);
    expect(related.length).toBeLessThanOrEqual(5);
  });

  test("its figure is one that there is", () => {
    const { figure } = tagsOf(id);
    expect(["", ...FIGURES]).toContain(figure);
  });
});

test("the list of equations without display holds only such", () => {
  const needless = [...WITHOUT_MATH.keys()].filter((id) => tagsOf(id).math.length > 0);
  expect(needless).toEqual([]);
});

describe("what the checks find", () => {
  test.each([
    ["U = 8.6\\,\\text{V} + 0.8\\,g", "U = 8.5 V + 0.8·g", ["8.6"]],
    ["\\frac{t}{3} + a", "g = t/2 + a", ["3"]],
    ["\\frac12 t", "t/2 − 1", ["12"]],
    ["10^6\\,K_0", "10⁶·K₀", []],
    ["x^3", "x²", ["3"]],
    ["10^{16}", "10⁶", ["16"]],
    ["209\\,500\\,q", "209 500 ppm·q", []],
    ["209\\,600\\,q", "209 500 ppm·q", ["209600"]],
  ])("the numbers of %s beside %s", (latex, equation, strange) => {
    expect(strangeNumbers(latex, equation)).toEqual(strange);
  });

  test.each([
    ["t_\\text{p}^2 + \\frac{K_0}{\\alpha}", ["t_p", "K_0", "α"]],
    ["\\int_0^{t} e^{-x}\\,\\mathrm{d}\\tau", ["t", "x", "τ"]],
    ["c_{n-1}\\,\\pi", ["c_n-1"]],
    ["8\\,\\text{V}\\,U \\text{ of load}", ["U", "of load"]],
    ["\\operatorname{ierfc}(\\Delta d)", ["ierfc", "Δ", "d"]],
  ])("the symbols of %s", (latex, symbols) => {
    expect([...symbolsOf(latex)]).toEqual(symbols);
  });

  test.each([
    ["T₀", ["T_0"]],
    ["t_p", ["t_p"]],
    ["Δd", ["Δ", "d"]],
    ["ierfc", ["ierfc"]],
  ])("%s in an explanation", (symbol, keys) => {
    expect(explainedKeys(symbol, new Set(["ierfc"]))).toEqual(keys);
  });
});
