/** What stands in an equation: its numbers and its symbols, from LaTeX and from the plain line beside it. */

import { XMLParser } from "fast-xml-parser";
import temml from "temml";

/** One display line as MathML; throws where Temml cannot read it. */
export function mathml(latex: string): string {
  return temml.renderToString(latex, { displayMode: true, throwOnError: true });
}

const SUBSCRIPTS = "₀₁₂₃₄₅₆₇₈₉";
const SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";

/** Raised and lowered digits as plain ones, parted from what they hang on, so that 10⁶ is 10 and 6. */
function plainDigits(text: string): string {
  return text.replace(/[₀-₉]+|[⁰¹²³⁴-⁹]+/g, (run) => {
    const digits = Array.from(run, (digit) =>
      Math.max(SUBSCRIPTS.indexOf(digit), SUPERSCRIPTS.indexOf(digit)).toString(),
    );
    return ` ${digits.join("")} `;
  });
}

function numbers(text: string): string[] {
  return text.match(/\d+(?:\.\d+)?/g) ?? [];
}

/** The numbers of the LaTeX that the plain equation does not have. */
export function strangeNumbers(latex: string, equation: string): string[] {
  const known = numbers(plainDigits(equation.replace(/(?<=\d)\s(?=\d{3}(?!\d))/g, "")));
  const joined = latex.replace(/(?<=\d)(?:\\,|\{,\}|~)(?=\d{3}(?!\d))/g, "");
  return numbers(joined.replace(/\\[A-Za-z]+/g, " ")).filter((number) => !known.includes(number));
}

type Node = Record<string, unknown>;
const PARSER = new XMLParser({
  preserveOrder: true,
  ignoreAttributes: false,
  parseTagValue: false,
  trimValues: false,
});

function tagOf(node: Node): string {
  return Object.keys(node).find((key) => key !== ":@") ?? "";
}

function childrenOf(node: Node): Node[] {
  const inside = node[tagOf(node)];
  return Array.isArray(inside) ? (inside as Node[]) : [];
}

function textOf(node: Node): string {
  const own = node["#text"];
  return typeof own === "string" ? own : childrenOf(node).map(textOf).join("");
}

const IS_LETTER = /^\p{L}$/u;
/** Known to every reader; the d of an integral stands upright. */
const CONSTANTS = ["π"];

/** `base` and `base_subscript` of every single-letter symbol, and every longer name or word. */
export function symbolsOf(latex: string): Set<string> {
  const found = new Set<string>();
  const nodes = PARSER.parse(mathml(latex)) as Node[];
  for (const node of nodes) collect(node, found);
  return found;
}

function collect(node: Node, found: Set<string>): void {
  const tag = tagOf(node);
  const children = childrenOf(node);
  const [base, second, ...more] = children;
  const own = base === undefined ? "" : textOf(base).replace(/\s+/g, " ").trim();
  if ((tag === "msub" || tag === "msubsup") && second !== undefined && IS_LETTER.test(own)) {
    found.add(keyOf(own, textOf(second)));
    for (const child of more) collect(child, found);
  } else if (tag === "msup" && own === "e" && second !== undefined) {
    collect(second, found);
  } else if (tag === "mtext") {
    // A single letter of text is a unit, as V for volt.
    if (!IS_LETTER.test(own)) found.add(own);
  } else if (tag === "mi") {
    const upright = (node[":@"] as Node | undefined)?.["@_mathvariant"] === "normal";
    if (!CONSTANTS.includes(own) && !(upright && own === "d")) found.add(own);
  } else {
    for (const child of children) collect(child, found);
  }
}

function keyOf(base: string, subscript: string): string {
  return `${base}_${subscript.replaceAll("−", "-").replace(/\s/g, "")}`;
}

/** A symbol as the explanation writes it, T₀ or t_p or Δd, as the keys it stands for in the equation. */
export function explainedKeys(symbol: string, inEquation: ReadonlySet<string>): string[] {
  const [base = "", ...subscript] = symbol
    .replace(/[₀-₉]+/, (run) => `_${plainDigits(run).trim()}`)
    .split("_");
  const key = (letters: string): string =>
    subscript.length === 0 ? letters : keyOf(letters, subscript.join("_"));
  if (inEquation.has(key(base))) return [key(base)];
  const letters = Array.from(base);
  return [...letters.slice(0, -1), key(letters.at(-1) ?? "")];
}

/** Symbols of one letter, with or without a subscript: those that need a word of explanation. */
export function needsExplaining(key: string): boolean {
  return IS_LETTER.test(key.split("_")[0] ?? "");
}
