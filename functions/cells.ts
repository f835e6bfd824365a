/**
 * Reads what a host hands over for an argument: any cell content at all. A number comes out in base SI;
 * everything that is not a plain finite number is refused by name. Omitted, null and "" mean "not given".
 */

import type { Of, Quantity, Units } from "../src/quantity";
import { fromBase, LENGTH, si, toBase, unitOf } from "../src/quantity";
import { quotedText, shortText } from "../src/quoted-text";
import { Refusal } from "../src/refusal";
import { COMMA_HINT, DATE_HINT, hasComma, isDecimal, LARGEST, looksLikeDate, sizeOf } from "../src/sizes";

const FIX_THE_CELL = "the referenced cell contains an error; fix it first";

/** A number, and the very one that stands in the cell, where a result gives it back. */
export interface Typed<Kind extends string> {
  readonly base: Of<Kind>;
  /** None where the text has a unit or a fraction, or nobody typed it. */
  readonly typed: number | undefined;
}

export class Reader {
  constructor(readonly units: Units) {}

  /** A required number. */
  number<Kind extends string>(argument: string, cell: unknown, of: Quantity<Kind>): Of<Kind> {
    const content = single(argument, cell);
    if (isBlank(content)) {
      throw new Refusal(argument, "blank", [`needs a number${inUnit(of, this.units)}`]);
    }
    return this.#toBase(argument, content, of);
  }

  /** Whether an optional argument is omitted. */
  isOmitted(argument: string, cell: unknown): boolean {
    return isBlank(single(argument, cell));
  }

  /**
   * A required number of a pasted list, where text that says a plain number is one. What a comma separates, decimals or
   * thousands, is nobody's to guess.
   */
  listed<Kind extends string>(argument: string, cell: unknown, of: Quantity<Kind>): Of<Kind> {
    if (typeof cell !== "string" || isLength(of)) return this.number(argument, cell, of);
    const plain = plainNumber(cell);
    if (plain !== undefined) return this.#toBase(argument, plain, of);
    if (hasComma(cell.trim())) throw new Refusal(argument, quoted(cell), [COMMA_HINT]);
    return this.number(argument, cell, of);
  }

  /** The number that a cell says without a unit, which is the reader's to know. */
  typed(argument: string, cell: unknown): number | undefined {
    return plainNumber(single(argument, cell));
  }

  /** One of a list of words; case and surrounding blanks ignored. A cell turns a word such as 2205 into a number. */
  wordOr<Word extends string, Default>(
    argument: string,
    cell: unknown,
    words: readonly Word[],
    fallback: Default,
    alias: (typed: string) => Word | undefined = () => undefined,
  ): Word | Default {
    const content = single(argument, cell);
    return isBlank(content) ? fallback : oneOf(argument, content, words, alias);
  }

  /** Required text; a number is taken as people would write it. */
  text(argument: string, cell: unknown): string {
    const content = single(argument, cell);
    if (isBlank(content)) throw new Refusal(argument, "blank", ["needs a text"]);
    if (typeof content === "string") return content.trim();
    if (typeof content === "number" && Number.isFinite(content)) return String(content);
    throw new Refusal(argument, quoted(content), ["must be a text"]);
  }

  /** The numbers of a range, blank cells passed over; undefined when the range is omitted or all blank. */
  numbersOr<Kind extends string>(
    argument: string,
    range: unknown,
    of: Quantity<Kind>,
  ): Typed<Kind>[] | undefined {
    const given: Typed<Kind>[] = [];
    // A whole column is mostly blank, and is not copied to find that out.
    for (const row of Array.isArray(range) ? (range as unknown[]) : [range]) {
      for (const content of Array.isArray(row) ? (row as unknown[]) : [row]) {
        if (isBlank(content)) continue;
        given.push({ base: this.#toBase(argument, content, of), typed: plainNumber(content) });
      }
    }
    return given.length === 0 ? undefined : given;
  }

  /** Base SI → the number that goes into the cell. */
  give(base: number, of: Quantity): number {
    return fromBase(base, of, this.units);
  }

  /** A length with a mark or a fraction, as people write sizes; what says a plain number is read as that number. */
  #size(argument: string, content: unknown): { readonly base: number } | { readonly number: unknown } {
    const number = plainNumber(content) ?? content;
    if (typeof number === "number" && this.units === "US" && looksLikeDate(number)) {
      throw new Refusal(argument, quoted(content), [DATE_HINT]);
    }
    if (typeof number !== "string") return { number };
    const size = sizeOf(number, this.units);
    if (typeof size === "number") return { base: size };
    throw new Refusal(argument, quoted(content), [size.why]);
  }

  #toBase<Kind extends string>(argument: string, content: unknown, of: Quantity<Kind>): Of<Kind> {
    const read = isLength(of) ? this.#size(argument, content) : { number: content };
    if ("base" in read) return si(read.base, of);
    const { number } = read;
    if (typeof number === "number" && Math.abs(number) <= LARGEST) return toBase(number, of, this.units);
    throw new Refusal(argument, quoted(content), [whyNoNumber(number, inUnit(of, this.units))]);
  }
}

function plainNumber(content: unknown): number | undefined {
  if (typeof content === "number") return content;
  return typeof content === "string" && isDecimal(content.trim()) ? Number(content) : undefined;
}

function isLength(of: Quantity): boolean {
  return of === LENGTH;
}

/** The units argument, on its own because it decides how everything else is read. */
export function readUnits(cell: unknown): Units {
  const content = single("units", cell);
  return isBlank(content) ? "US" : oneOf("units", content, ["US", "SI"] as const);
}

export function isBlank(content: unknown): boolean {
  return content === null || content === undefined || (typeof content === "string" && content.trim() === "");
}

/** A range argument as rows, whatever shape the host gave it. */
export function rowsOf(range: unknown): unknown[][] {
  if (!Array.isArray(range)) return [[range]];
  return range.map((row: unknown) => (Array.isArray(row) ? (row as unknown[]) : [row]));
}

/** Cell content as it may be quoted in a sentence. */
export function quoted(content: unknown): string {
  if (isBlank(content)) return "blank";
  if (typeof content === "string") return quotedText(content);
  if (typeof content === "boolean") return content ? "TRUE" : "FALSE";
  if (typeof content === "number") return String(content);
  return errorName(content) ?? "a linked data type";
}

/** The content of the one cell an argument takes; refuses a range and a cell that holds an error. */
function single(argument: string, cell: unknown): unknown {
  const [rows, columns] = sizeOfRange(cell);
  if (rows !== 1 || columns !== 1) {
    throw new Refusal(argument, "a range", [
      `takes one cell, not ${String(rows)} × ${String(columns)} cells`,
    ]);
  }
  const content = rowsOf(cell)[0]?.[0];
  const error = errorName(content);
  if (error === undefined) return content;
  throw new Refusal(argument, error, [FIX_THE_CELL]);
}

/** Rows and columns, of however many, by a look at the first. */
function sizeOfRange(cell: unknown): [rows: number, columns: number] {
  if (!Array.isArray(cell)) return [1, 1];
  const [first] = cell as unknown[];
  if (cell.length === 0) return [0, 0];
  return [cell.length, Array.isArray(first) ? first.length : 1];
}

function oneOf<Word extends string>(
  argument: string,
  content: unknown,
  words: readonly Word[],
  alias: (typed: string) => Word | undefined = () => undefined,
): Word {
  if (typeof content === "string" || typeof content === "number") {
    const typed = String(content).trim().toUpperCase();
    const match = words.find((word) => word.toUpperCase() === typed) ?? alias(typed);
    if (match !== undefined) return match;
  }
  throw new Refusal(argument, quoted(content), [`must be one of ${words.join(", ")}`]);
}

function whyNoNumber(content: unknown, unit: string): string {
  if (errorName(content) !== undefined) return FIX_THE_CELL;
  if (typeof content === "string" && Number.isFinite(Number(content))) {
    return `is a number stored as text; turn the cell into a number${unit}`;
  }
  if (typeof content === "number") {
    return Number.isFinite(content) ? "is out of range (limit 1e300)" : `must be a finite number${unit}`;
  }
  return `must be a number${unit}`;
}

function inUnit(of: Quantity, units: Units): string {
  const unit = unitOf(of, units);
  return unit === "" ? "" : ` (${unit})`;
}

/** The name of an error value, in either of the two shapes a host may use. */
function errorName(content: unknown): string | undefined {
  if (typeof content !== "object" || content === null) return undefined;
  const shape = content as { type?: unknown; basicValue?: unknown; code?: unknown };
  if (shape.type === "Error" && typeof shape.basicValue === "string") return shortText(shape.basicValue);
  return typeof shape.code === "string" && shape.code.startsWith("#") ? shortText(shape.code) : undefined;
}
