/**
 * What ABOUT tells of a formula, a text for each of its rows. In functions.js the texts of all formulas stand here
 * together, written by the build (tools/build/told-loader.ts), and the records have no words.
 */

import { helpOf } from "../help-text";
import type { Entry } from "./find";

export function textsOf({ formula, family }: Entry): readonly string[] {
  const help = helpOf(formula, family);
  return [
    help.meaning,
    help.equation,
    sentences(help.validity, help.assumptions),
    sentences(help.source, help.unconfirmed),
    `${help.example} → ${help.result}`,
  ];
}

/** What belongs in one cell: the parts that there are, each ended by a full stop where another follows. */
function sentences(...parts: readonly string[]): string {
  return parts
    .filter((part) => part !== "")
    .map((part, i, all) => (i < all.length - 1 && !part.endsWith(".") ? `${part}.` : part))
    .join(" ");
}
