/**
 * An equation of LaTeX in one line of plain text, for cells and plain pages: "g = t/2 + a". Only what the records use
 * is understood; anything else is an error, so that no equation goes out half told.
 */

/** A piece of the line and how it stands beside its neighbors. */
interface Piece {
  readonly text: string;
  readonly kind: "number" | "symbol" | "word" | "group" | "fraction" | "operator" | "name" | "space" | "thin";
}

const GREEK: Readonly<Record<string, string>> = {
  alpha: "α",
  beta: "β",
  eta: "η",
  theta: "θ",
  kappa: "κ",
  lambda: "λ",
  mu: "μ",
  nu: "ν",
  xi: "ξ",
  varphi: "φ",
  pi: "π",
  rho: "ρ",
  sigma: "σ",
  tau: "τ",
  Delta: "Δ",
  infty: "∞",
};
const OPERATORS: Readonly<Record<string, string>> = {
  le: "≤",
  ge: "≥",
  ne: "≠",
  mp: "∓",
  pm: "±",
  cdot: "·",
  "-": "−",
  "+": "+",
  "=": "=",
  "<": "<",
  ">": ">",
};
const NAMES = ["exp", "ln", "cos", "min", "max", "log"];
const BRACKETS: Readonly<Record<string, string>> = {
  lfloor: "⌊",
  rfloor: "⌋",
  lceil: "⌈",
  rceil: "⌉",
};
const RAISED: Readonly<Record<string, string>> = { "0": "⁰", "1": "¹", "2": "²", "3": "³", "4": "⁴" };
/** Letters and digits that stand small below the line, and how: the same place in both. */
const LETTERS = "0123456789aehijklmnoprstuvx";
const LOWERED = "₀₁₂₃₄₅₆₇₈₉ₐₑₕᵢⱼₖₗₘₙₒₚᵣₛₜᵤᵥₓ";

/** The lines of an equation as one, parted by semicolons. */
export function plainEquation(lines: readonly string[]): string {
  return lines.map((line) => joined(new Tex(line).pieces())).join("; ");
}

/** Reads LaTeX from left to right. */
class Tex {
  #at = 0;

  constructor(readonly source: string) {}

  pieces(end = ""): Piece[] {
    const found: Piece[] = [];
    while (this.#at < this.source.length && this.source[this.#at] !== end) {
      const piece = this.#piece();
      if (piece !== undefined) found.push(this.#withScripts(piece));
    }
    if (end !== "") this.#at += 1;
    return found;
  }

  #piece(): Piece | undefined {
    const number = this.#match(/^\d+(?:\.\d+)?(?:\\,\d{3})*/);
    if (number !== undefined) return { text: number.replaceAll("\\,", " "), kind: "number" };
    const command = this.#match(/^\\([A-Za-z]+|.)/);
    if (command !== undefined) return this.#command(command.slice(1));
    const letter = this.source[this.#at] ?? "";
    this.#at += 1;
    if (letter === " ") return undefined;
    if (letter === "{") return { text: joined(this.pieces("}")), kind: "symbol" };
    if (letter === "(") return { text: `(${joined(this.pieces(")"))})`, kind: "group" };
    if (letter === ",") return { text: ", ", kind: "space" };
    if (letter in OPERATORS) return { text: OPERATORS[letter] ?? "", kind: "operator" };
    if (/[A-Za-z|!/;&]/.test(letter))
      return { text: letter, kind: /[A-Za-z]/.test(letter) ? "symbol" : "space" };
    throw new Error(`cannot tell ${letter} of ${this.source} in plain text`);
  }

  #command(name: string): Piece | undefined {
    if (name in GREEK) return { text: GREEK[name] ?? "", kind: "symbol" };
    if (name in OPERATORS) return { text: OPERATORS[name] ?? "", kind: "operator" };
    if (name in BRACKETS) return { text: BRACKETS[name] ?? "", kind: "space" };
    if (NAMES.includes(name)) return { text: name, kind: "name" };
    switch (name) {
      case "left":
      case "right":
      case "bigl":
      case "bigr":
        return this.#bracket();
      case "frac":
      case "tfrac":
        return { text: `${grouped(this.#argument())}/${factor(this.#argument())}`, kind: "fraction" };
      case "sqrt":
        return { text: `√${factor(this.#argument())}`, kind: "group" };
      case "text":
        return { text: this.#raw(), kind: "word" };
      case "mathrm":
        return { text: this.#raw(), kind: "symbol" };
      case "operatorname":
        return { text: this.#raw(), kind: "name" };
      case "bar":
        return { text: `${joined(this.#argument())}\u0304`, kind: "symbol" };
      case "sum":
        return { text: "Σ", kind: "name" };
      case "int":
        return { text: "∫", kind: "name" };
      case "circ":
        return { text: "°", kind: "symbol" };
      case "%":
        return { text: " %", kind: "symbol" };
      case ",":
        return { text: "", kind: "thin" };
      case " ":
      case "quad":
        return { text: " ", kind: "space" };
      case "begin":
        return this.#cases();
      default:
        throw new Error(`cannot tell \\${name} of ${this.source} in plain text`);
    }
  }

  /** What stands between a pair of sized brackets. */
  #bracket(): Piece | undefined {
    const open = this.#match(/^(?:[()|]|\\[a-z]+)/) ?? "";
    const shown = BRACKETS[open.slice(1)] ?? open;
    const rest: Piece[] = [];
    while (!/^\\(?:right|bigr)/.test(this.source.slice(this.#at))) {
      const piece = this.#piece();
      if (piece !== undefined) rest.push(this.#withScripts(piece));
    }
    this.#match(/^\\(?:right|bigr)/);
    const close = this.#match(/^(?:[()|]|\\[a-z]+)/) ?? "";
    return { text: `${shown}${joined(rest)}${BRACKETS[close.slice(1)] ?? close}`, kind: "group" };
  }

  #cases(): Piece {
    const inside = this.#match(/^\{cases\}[\s\S]*?\\end\{cases\}/) ?? "";
    const rows = inside.replace(/^\{cases\}|\\end\{cases\}$/g, "").split("\\\\");
    const told = rows.map((row) =>
      row
        .split("&")
        .map((cell) => joined(new Tex(cell.trim()).pieces()))
        .join(" "),
    );
    return { text: told.join(", "), kind: "word" };
  }

  /** Raised and lowered parts; those of a sum, an integral or a maximum are its range. */
  #withScripts(piece: Piece): Piece {
    const range: string[] = [];
    let { text } = piece;
    for (;;) {
      const mark = this.#match(/^[_^]/);
      if (mark === undefined) break;
      const script = joined(this.source[this.#at] === "{" ? this.#argument() : this.#single());
      if (piece.kind === "name") range.push(script);
      else text += mark === "_" ? lowered(script) : raised(script);
    }
    return { ...piece, text: range.length === 0 ? text : `${text}[${range.join(" … ")}]` };
  }

  #single(): Piece[] {
    const piece = this.#piece();
    return piece === undefined ? [] : [piece];
  }

  #argument(): Piece[] {
    this.#at += 1;
    return this.pieces("}");
  }

  #raw(): string {
    return (this.#match(/^\{[^}]*\}/) ?? "").slice(1, -1).replaceAll("\\_", "_");
  }

  #match(pattern: RegExp): string | undefined {
    const found = pattern.exec(this.source.slice(this.#at))?.[0];
    this.#at += found?.length ?? 0;
    return found;
  }
}

/** Pieces in a line: operators with space round them, factors set apart where they would run together. */
function joined(pieces: readonly Piece[]): string {
  let line = "";
  let last: Piece | undefined;
  for (const piece of pieces) {
    if (piece.kind === "thin") continue;
    const first = last === undefined || last.kind === "operator" || last.kind === "space";
    if (piece.text === "·") {
      line += piece.text;
    } else if (piece.kind === "operator") {
      line += first ? piece.text : ` ${piece.text} `;
    } else if (last?.kind === "name") {
      line += applied(piece);
    } else {
      line += first || !apart(last, piece) ? piece.text : `·${piece.text}`;
    }
    last = piece;
  }
  return line.replace(/ +/g, " ").trim();
}

/** What a function is applied to. */
function applied({ kind, text }: Piece): string {
  if (kind === "group") return text;
  return kind === "fraction" ? `(${text})` : ` ${text}`;
}

/** Whether a dot has to part two factors. */
function apart(left: Piece | undefined, right: Piece): boolean {
  if (left === undefined || right.kind === "space" || right.text.startsWith("°")) return false;
  const whole: readonly Piece["kind"][] = ["word", "fraction", "name"];
  return (
    whole.includes(left.kind) ||
    (whole.includes(right.kind) && right.text !== "%") ||
    (left.kind === "group" && right.kind !== "symbol") ||
    right.text.startsWith("√") ||
    right.kind === "number"
  );
}

/** Above the line: in brackets where it is a sum. */
function grouped(pieces: readonly Piece[]): string {
  const text = joined(pieces);
  return pieces.some(({ kind }) => kind === "operator") ? `(${text})` : text;
}

/** Below the line or under a root: in brackets unless it is a single thing. */
function factor(pieces: readonly Piece[]): string {
  const [only, ...more] = pieces.filter(({ kind }) => kind !== "thin");
  const text = joined(pieces);
  return more.length === 0 && only?.kind !== "fraction" ? text : `(${text})`;
}

function lowered(text: string): string {
  const known = new RegExp(`^[${LETTERS}]+$`);
  return known.test(text)
    ? text.replace(/./g, (letter) => LOWERED.charAt(LETTERS.indexOf(letter)))
    : `_${text}`;
}

function raised(text: string): string {
  if (text === "°") return text;
  return RAISED[text] ?? `^${/^\w+$/u.test(text) ? text : `(${text})`}`;
}
