/**
 * Reads what a host hands over for an argument: any cell content at all. A number comes out in base SI;
 * everything that is not a plain finite number is refused by name. Omitted, null and "" mean "not given".
 */

import type { Of, Quantity, Units } from "../src/quantity";
import { fromBase, toBase, unitOf } from "../src/quantity";
import { quotedText } from "../src/quoted-text";
import { Refusal } from "../src/refusal";

const FIX_THE_CELL = "the referenced cell contains an error; fix it first";
const PLAIN_NUMBER = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?$/i;
const NUMBER_WITH_COMMA = /^[+-]?[\d.]*,[\d.,]*$/;
/** A larger number would overflow on its way between units. */
const LARGEST = 1e300;

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

  /** An optional number: the default stands in base SI, so that it is the same physical quantity in both systems. */
  numberOr<Kind extends string, Default>(
    argument: string,
    cell: unknown,
    of: Quantity<Kind>,
    fallback: Default,
  ): Of<Kind> | Default {
    const content = single(argument, cell);
    return isBlank(content) ? fallback : this.#toBase(argument, content, of);
  }

  /**
   * A required number of a pasted list, where text that says a plain number is one. What a comma parts, decimals or
   * thousands, is nobody's to guess.
   */
  listed<Kind extends string>(argument: string, cell: unknown, of: Quantity<Kind>): Of<Kind> {
    if (typeof cell !== "string") return this.number(argument, cell, of);
    if (PLAIN_NUMBER.test(cell.trim())) return this.#toBase(argument, Number(cell), of);
    if (NUMBER_WITH_COMMA.test(cell.trim())) {
      throw new Refusal(argument, quoted(cell), [
        "contains a comma (decimal or thousands separator?); type 1.5 or 1500",
      ]);
    }
    return this.number(argument, cell, of);
  }

  /** One of a list of words; case and surrounding blanks ignored. A cell turns a word such as 2205 into a number. */
  wordOr<Word extends string, Default>(
    argument: string,
    cell: unknown,
    words: readonly Word[],
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

  /** The numbers of a range, blank cells skipped; undefined when the range is not given or all blank. */
  numbersOr<Kind extends string>(
    argument: string,
    range: unknown,
    of: Quantity<Kind>,
  ): Of<Kind>[] | undefined {
    const given = rowsOf(range)
      .flat()
      .filter((content) => !isBlank(content));
    if (given.length === 0) return undefined;
    return given.map((content) => this.#toBase(argument, content, of));
  }

  /** Base SI → the number that goes into the cell. */
  give(base: number, of: Quantity): number {
    return fromBase(base, of, this.units);
  }

  #toBase<Kind extends string>(argument: string, content: unknown, of: Quantity<Kind>): Of<Kind> {
    if (typeof content === "number" && Math.abs(content) <= LARGEST) return toBase(content, of, this.units);
    throw new Refusal(argument, quoted(content), [whyNoNumber(content, inUnit(of, this.units))]);
  }
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
  const rows = rowsOf(cell);
  if (rows.length === 1 && rows[0]?.length === 1) {
    const content = rows[0][0];
    const error = errorName(content);
    if (error === undefined) return content;
    throw new Refusal(argument, error, [FIX_THE_CELL]);
  }
  throw new Refusal(argument, "a range", [
    `takes one cell, not ${String(rows.length)} × ${String(rows[0]?.length ?? 0)} cells`,
  ]);
}

function oneOf<Word extends string>(argument: string, content: unknown, words: readonly Word[]): Word {
  if (typeof content === "string" || typeof content === "number") {
    const typed = String(content).trim().toUpperCase();
    const match = words.find((word) => word.toUpperCase() === typed);
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
  if (shape.type === "Error" && typeof shape.basicValue === "string") return shape.basicValue;
  return typeof shape.code === "string" && shape.code.startsWith("#") ? shape.code : undefined;
}
