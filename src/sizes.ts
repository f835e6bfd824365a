/** Sizes as people write them: 1/2, 1-1/2, 1 1/2", 1.5 in, 38.1 mm. */

import type { Length, Units } from "./quantity";
import { LENGTH, toBase } from "./quantity";

/** Fractions that have a sign of their own. */
const SIGNS = {
  "½": " 1/2",
  "¼": " 1/4",
  "¾": " 3/4",
  "⅛": " 1/8",
  "⅜": " 3/8",
  "⅝": " 5/8",
  "⅞": " 7/8",
} as const;

/** One spelling for the signs that have several: fractions in one character, dashes, strokes, inch marks. */
export function spelled(typed: string): string {
  return typed
    .replace(/[½¼¾⅛⅜⅝⅞]/g, (sign) => SIGNS[sign as keyof typeof SIGNS])
    .replace(/[‐‑‒–—]/g, "-")
    .replace(/⁄/g, "/")
    .replace(/[“”″]/g, '"')
    .trim();
}

/** The parts of 1/2, 1-1/2 or 1 1/2. */
export function wholeAndFraction(
  plain: string,
): { readonly whole: number; readonly above: number; readonly below: number } | undefined {
  const parts = FRACTION.exec(plain);
  if (parts === null) return undefined;
  const [, whole = "0", above, below] = parts;
  return { whole: Number(whole), above: Number(above), below: Number(below) };
}

/** No size takes more signs to write; a longer text is not searched for one. */
const LONGEST = 40;
/** A larger number would overflow on its way between units. */
export const LARGEST = 1e300;

const DECIMAL = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?$/i;
/** A whole number before it, parted by a hyphen or spaces, may be missing. */
const FRACTION = /^(?:(\d+)(?:\s*-\s*|\s+))?(\d+)\s*\/\s*(\d+)$/;
const MARK = /^(.*?)\s*(in\.?|inch|inches|"|''|mm)$/i;
const COMMA = /^[+-]?[\d.\s]*,[\d.,\s]*$/;
const DATE =
  /^\d{1,4}[-/.]\d{1,2}[-/.]\d{1,4}$|^\d{1,2}[-\s](?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)/i;
/** Inches are cut in halves: a rule or a drill knows no thirds. */
const DENOMINATORS = [2, 4, 8, 16, 32, 64, 128];

/** How to type a number that has a comma: what it separates, decimals or thousands, is nobody's to guess. */
export const COMMA_HINT = "contains a comma (decimal or thousands separator?); type 1.5 or 1500";

/** Whether a text says a number the way a sheet would, without marks or spaces. */
export function isDecimal(text: string): boolean {
  return DECIMAL.test(text);
}

export function hasComma(text: string): boolean {
  return COMMA.test(text);
}

/** The size that a text says, m, or in a sentence why it says none. */
export function sizeOf(text: string, units: Units): Length | { readonly why: string } {
  const typed = spelled(text);
  if (typed.length > LONGEST) return { why: `must be a number or a size such as ${exampleIn(units)}` };
  const marked = MARK.exec(typed);
  const number = (marked?.[1] ?? typed).trim();
  const system = marked === null ? units : /mm/i.test(typed) ? "SI" : "US";
  if (DECIMAL.test(number)) {
    return Math.abs(Number(number)) <= LARGEST
      ? toBase(Number(number), LENGTH, system)
      : { why: "is out of range (limit 1e300)" };
  }
  const fraction = wholeAndFraction(number);
  if (fraction !== undefined) return ofFraction(fraction, typed, marked === null ? "none" : system, units);
  if (COMMA.test(number)) return { why: COMMA_HINT };
  if (DATE.test(number)) return { why: `looks like a date; type a size such as ${exampleIn(units)}` };
  return { why: `must be a number or a size such as ${exampleIn(units)}` };
}

function ofFraction(
  { whole, above, below }: NonNullable<ReturnType<typeof wholeAndFraction>>,
  typed: string,
  mark: "none" | Units,
  units: Units,
): Length | { readonly why: string } {
  if (mark === "SI") return { why: "is a fraction of a millimeter; type it with decimals" };
  if (mark === "none" && units === "SI") {
    return { why: `is a fraction, which is a size in inches; type ${typed} in, or millimeters` };
  }
  if (!DENOMINATORS.includes(below) || above >= below) {
    return { why: "is no fraction of an inch; type it with decimals" };
  }
  return toBase(whole + above / below, LENGTH, "US");
}

function exampleIn(units: Units): string {
  return units === "US" ? "1.5, 1-1/2 or 38.1 mm" : "38.1, 38.1 mm or 1-1/2 in";
}

/** Serial numbers of the days from 2000 to 2099. */
const DAYS_OF_THIS_CENTURY = [36_526, 73_050] as const;

/** Whether a number of inches is a day of this century: what a spreadsheet makes of 1/2 when it is typed. */
export function looksLikeDate(written: number): boolean {
  const [first, last] = DAYS_OF_THIS_CENTURY;
  return Number.isInteger(written) && written >= first && written <= last;
}

/** How to type a size so that it stays one. */
export const DATE_HINT = "looks like a size that the sheet turned into a date; type it as 0 1/2, '1/2 or 0.5";
