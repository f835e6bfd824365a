/** What the MathML of an equation says: its symbols, words and numbers. */

import { XMLParser } from "fast-xml-parser";

interface Element {
  readonly name: string;
  readonly upright: boolean;
  readonly children: readonly Element[];
  readonly text: string;
}

export interface Said {
  /** Each symbol with its subscript, as a reader would type it: `K₀`, `V_b`, `Δp`, `Re`. */
  readonly symbols: ReadonlySet<string>;
  /** Text set upright as a word: `load`, `°C`. */
  readonly words: ReadonlySet<string>;
  /** Every number outside a subscript, as often as it stands there. */
  readonly numbers: readonly number[];
}

/** Names that everyone who reads an equation knows. */
const KNOWN = new Set(["π", "∞", "exp", "ln", "cos", "max", "min", "%", "/"]);
/** Letters that are no symbol where they stand upright: d of an integral, e of a power. */
const UPRIGHT = new Set(["d", "e"]);
const PLAIN = "0123456789aehijklmnoprstuvx";
const LOWERED = "₀₁₂₃₄₅₆₇₈₉ₐₑₕᵢⱼₖₗₘₙₒₚᵣₛₜᵤᵥₓ";

const parser = new XMLParser({
  preserveOrder: true,
  ignoreAttributes: false,
  attributeNamePrefix: "",
  trimValues: false,
  parseTagValue: false,
});

export function read(mathml: string): Said {
  const symbols = new Set<string>();
  const words = new Set<string>();
  const numbers: number[] = [];
  /** Δ belongs to the symbol after it. */
  let delta = "";

  function visit(element: Element): void {
    const [base, sub] = element.children;
    if (element.name === "mi") symbol(element, "");
    else if (element.name === "mn") numbers.push(Number(element.text));
    else if (element.name === "mtext") {
      words.add(element.text.replace(/\s+/g, " ").trim());
      numbers.push(...numbersIn(element.text));
    } else if (
      (element.name === "msub" || element.name === "msubsup") &&
      base !== undefined &&
      sub !== undefined
    ) {
      if (base.name === "mi") symbol(base, textOf(sub));
      else [base, sub].forEach(visit);
      element.children.slice(2).forEach(visit);
    } else joined(element.children).forEach(visit);
  }

  function symbol({ text, upright }: Element, subscript: string): void {
    if (text === "Δ") delta = text;
    else if (!KNOWN.has(text) && !(upright && UPRIGHT.has(text))) {
      symbols.add(delta + text + lowered(subscript));
      delta = "";
    }
  }

  elements(parser.parse(mathml)).forEach(visit);
  return { symbols, words, numbers };
}

/** Numbers of plain text; thousands may stand apart by a blank, powers be raised. */
export function numbersIn(text: string): number[] {
  const raised = text.replace(/[²³]/g, (sign) => (sign === "²" ? " ^2" : " ^3"));
  return [...raised.matchAll(/\d{1,3}(?: \d{3})+(?!\d)|\d+(?:\.\d+)?/g)].map(([number]) =>
    Number(number.replaceAll(" ", "")),
  );
}

function lowered(subscript: string): string {
  if (subscript === "") return "";
  const places = Array.from(subscript, (sign) => PLAIN.indexOf(sign));
  return places.includes(-1) ? `_${subscript}` : places.map((place) => LOWERED.charAt(place)).join("");
}

/** Thousands that a thin space sets apart are one number. */
function joined(children: readonly Element[]): Element[] {
  const result: Element[] = [];
  for (const child of children) {
    const [number, space] = [result.at(-2), result.at(-1)];
    if (
      child.name === "mn" &&
      /^\d{3}$/.test(child.text) &&
      space?.name === "mspace" &&
      number?.name === "mn"
    ) {
      result.splice(-2, 2, { ...number, text: number.text + child.text });
    } else result.push(child);
  }
  return result;
}

function textOf({ text, children }: Element): string {
  return text + children.map(textOf).join("");
}

/** The parser's own shape, an object with the tag's name as its key, made plain. */
function elements(parsed: unknown): Element[] {
  return (parsed as Record<string, unknown>[]).flatMap((node) => {
    const name = Object.keys(node).find((key) => key !== ":@" && key !== "#text");
    if (name === undefined) return [];
    const inside = node[name] as Record<string, unknown>[];
    const attributes = (node[":@"] ?? {}) as { mathvariant?: unknown };
    return [
      {
        name,
        upright: attributes.mathvariant === "normal",
        children: elements(inside),
        text: inside.map((part) => (typeof part["#text"] === "string" ? part["#text"] : "")).join(""),
      },
    ];
  });
}
