import type { Quantity, Units } from "./quantity";
import { COUNT, plainNumber, written } from "./quantity";

/** A base SI value that the sentence will show in the reader's units. */
export interface Amount {
  readonly base: number;
  readonly of: Quantity;
}

export function amount(base: number, of: Quantity): Amount {
  return { base, of };
}

/** The words of a limit, with the amounts in it still in base SI. */
export type Rule = readonly (string | Amount)[];

/** Tag for a limit: rule`must be less than half of od, ${amount(od / 2, LENGTH)}`. */
export function rule(words: TemplateStringsArray, ...amounts: readonly Amount[]): Rule {
  return words.flatMap((text, i) => {
    const next = amounts[i];
    return next === undefined ? [text] : [text, next];
  });
}

/**
 * `impossible`: an argument that cannot be; shown as #VALUE!.
 * `unanswerable`: a fair question without an answer (outside a published table, a target out of reach); shown as #N/A.
 */
export type RefusalKind = "impossible" | "unanswerable";

/** Digits of the numbers in a sentence: more where fewer would show a value as the limit it broke, or as a whole number. */
const DIGITS = [6, 12] as const;

/**
 * The only way a calculation says no: which argument, what it was, and the limit it broke. No subclass of `Error`: a
 * list may have a refusal in every line, and the stack, which nobody sees, costs more than all else of it.
 */
export class Refusal implements Error {
  readonly name = "Refusal";

  constructor(
    readonly argument: string,
    readonly value: Amount | string,
    readonly rule: Rule,
    readonly kind: RefusalKind = "impossible",
  ) {}

  get message(): string {
    return `${this.argument} refused`;
  }

  /** The sentence a person reads, in their units: `wall = -0.065 in: must be above 0`. */
  sentence(units: Units): string {
    const digits = digitsOf(this, units);
    return `${this.argument} = ${shown(this.value, units, digits)}: ${limit(this, units, digits)}`;
  }

  /** The same for a place beside the value itself: `wall: must be above 0`. */
  remark(units: Units): string {
    return `${this.argument}: ${limit(this, units, digitsOf(this, units))}`;
  }
}

function digitsOf({ value, rule: parts }: Refusal, units: Units): number {
  const tells = (few: number): boolean => {
    const told = shown(value, units, few);
    return parts.every((part) => shown(part, units, few) !== told) && !hidesFraction(value, few);
  };
  return DIGITS.find(tells) ?? DIGITS[0];
}

/** Whether a count that is not whole would be shown as one that is. */
function hidesFraction(value: Amount | string, digits: number): boolean {
  if (typeof value === "string" || value.of !== COUNT) return false;
  return !Number.isInteger(value.base) && Number.isInteger(Number(plainNumber(value.base, digits)));
}

/** The words of a rule in one system of units. */
export function toldRule(parts: Rule, units: Units): string {
  return parts.map((part) => shown(part, units, DIGITS[0])).join("");
}

function limit({ rule: parts }: Refusal, units: Units, digits: number): string {
  return parts.map((part) => shown(part, units, digits)).join("");
}

/** The result, or the refusal in its place where one no must not end the rest. */
export function orRefusal<Result>(body: () => Result): Result | Refusal {
  try {
    return body();
  } catch (problem) {
    if (problem instanceof Refusal) return problem;
    throw problem;
  }
}

function shown(part: string | Amount, units: Units, digits: number): string {
  return typeof part === "string" ? part : written(part.base, part.of, units, digits);
}
