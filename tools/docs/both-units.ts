/** One sentence out of two that differ in their units only. */

import type { Quantity } from "../../src/quantity";
import * as quantities from "../../src/quantity";

const UNITS = [...new Set(Object.values<unknown>(quantities).filter(isQuantity).flatMap(unitsOf))]
  .filter((unit) => unit !== "")
  .sort((a, b) => b.length - a.length);
/** A number with its unit is one word of a sentence, as far as two sentences are compared. */
const WORD = new RegExp(`-?\\d\\S*(?: (?:${UNITS.join("|")})(?=[ ,;:)]|$))?[,;:)]*|\\S+`, "g");

function isQuantity(one: unknown): one is Quantity {
  return typeof one === "object" && one !== null && "kind" in one;
}

function unitsOf({ US, SI }: Quantity): string[] {
  return [US.unit, SI.unit];
}

/** "must be at most 0.4 in | 10 mm" from the sentences of the two systems; undefined if they tell different things. */
export function inBothUnits(us: string, si: string): string | undefined {
  const [words, others] = [us.match(WORD) ?? [], si.match(WORD) ?? []];
  const differing = words.flatMap((word, i) => (word === others[i] ? [] : [i]));
  const [first, last] = [differing.at(0), differing.at(-1)];
  if (words.length !== others.length) return undefined;
  if (first === undefined || last === undefined) return us;
  if (differing.some((i) => !/\d/.test(words[i] ?? "") || !/\d/.test(others[i] ?? ""))) return undefined;
  const said = (of: readonly string[]): string =>
    of
      .slice(first, last + 1)
      .join(" ")
      .replace(/[,;:)]+$/, "");
  const mark = /[,;:)]+$/.exec(words[last] ?? "")?.[0] ?? "";
  const both = `${said(words)} | ${said(others)}${mark}`;
  return [...words.slice(0, first), both, ...words.slice(last + 1)].join(" ");
}
