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

/** Words that a cell may say, made ready when the record is loaded: no call goes through the list. */
export interface Words<Word extends string> {
  readonly list: readonly Word[];
  readonly byCapitals: ReadonlyMap<string, Word>;
  /** What else they are called. */
  readonly alias: (typed: string) => Word | undefined;
}

export function wordsOf<Word extends string>(
  list: readonly Word[],
  alias: (typed: string) => NoInfer<Word> | undefined = () => undefined,
): Words<Word> {
  return { list, byCapitals: new Map(list.map((word) => [word.toUpperCase(), word])), alias };
}

export class Reader {
  constructor(readonly units: Units) {}

  /** A required number. */
  number<Kind extends string>(argument: string, cell: unknown, of: Quantity<Kind>): Of<Kind> {
    const content = single(argument, cell);
    if (isBlank(content)) {
      throw new Refusal(argument, "blank", [`needs a number${inUnit(of, this.units)}`]);
    }
    return baseOf(argument, content, of, this.units);
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
    if (plain !== undefined) return baseOf(argument, plain, of, this.units);
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
    words: Words<Word>,
    fallback: Default,
  ): Word | Default {
    const content = single(argument, cell);
    return isBlank(content) ? fallback : oneOf(argument, content, words);
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
        given.push({ base: baseOf(argument, content, of, this.units), typed: plainNumber(content) });
      }
    }
    return given.length === 0 ? undefined : given;
  }

  /** Base SI → the number that goes into the cell. */
  give(base: number, of: Quantity): number {
    return fromBase(base, of, this.units);
  }
}

/** Base SI of what a cell holds. */
function baseOf<Kind extends string>(
  argument: string,
  content: unknown,
  of: Quantity<Kind>,
  units: Units,
): Of<Kind> {
  if (isLength(of) && typeof content === "string") return sizeIn(argument, content, of, units);
  return numberIn(argument, content, content, of, units);
}

/** A length with a mark or a fraction, as people write sizes; what says a plain number is read as that number. */
function sizeIn<Kind extends string>(
  argument: string,
  content: string,
  of: Quantity<Kind>,
  units: Units,
): Of<Kind> {
  const number = plainNumber(content);
  if (number !== undefined) return numberIn(argument, content, number, of, units);
  const size = sizeOf(content, units);
  if (typeof size === "number") return si(size, of);
  throw new Refusal(argument, quoted(content), [size.why]);
}

/** What a cell holds, or the number that its text says. */
function numberIn<Kind extends string>(
  argument: string,
  content: unknown,
  number: unknown,
  of: Quantity<Kind>,
  units: Units,
): Of<Kind> {
  if (typeof number === "number" && Math.abs(number) <= LARGEST) {
    if (!isLength(of) || units !== "US" || !looksLikeDate(number)) return toBase(number, of, units);
    throw new Refusal(argument, quoted(content), [DATE_HINT]);
  }
  const why = isLength(of) && isDate(number) ? DATE_HINT : whyNoNumber(number, inUnit(of, units));
  throw new Refusal(argument, quoted(content), [why]);
}

function plainNumber(content: unknown): number | undefined {
  if (typeof content === "number") return content;
  return typeof content === "string" && isDecimal(content.trim()) ? Number(content) : undefined;
}

/** Some hosts hand a date over as an object, which may be of another page. */
function isDate(content: unknown): boolean {
  return Object.prototype.toString.call(content) === "[object Date]";
}

function isLength(of: Quantity): boolean {
  return of === LENGTH;
}

const UNITS = wordsOf(["US", "SI"] as const);

/** The units argument, on its own because it decides how everything else is read. */
export function readUnits(cell: unknown): Units {
  const content = single("units", cell);
  return isBlank(content) ? "US" : oneOf("units", content, UNITS);
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
  return isDate(content) ? "a date" : (errorName(content) ?? "a linked data type");
}

/** The content of the one cell an argument takes; refuses a range and a cell that holds an error. */
function single(argument: string, cell: unknown): unknown {
  // What most calls have: nothing of it needs a look at a range or an error.
  if (typeof cell !== "object" || cell === null) return cell;
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
  { list, byCapitals, alias }: Words<Word>,
): Word {
  // Most cells have the word as the list has it, which needs no text made of it.
  const asListed = typeof content === "string" ? byCapitals.get(content) : undefined;
  if (asListed !== undefined) return asListed;
  if (typeof content === "string" || typeof content === "number") {
    const typed = String(content).trim().toUpperCase();
    const match = byCapitals.get(typed) ?? alias(typed);
    if (match !== undefined) return match;
  }
  throw new Refusal(argument, quoted(content), [`must be one of ${list.join(", ")}`]);
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
