/** One change of a source file: what stands from `start` to `end` becomes other code. */

import type { Mutant } from "../../docs/mutation";

/** What sources that tell which change they reach call, with the numbers of the changes. */
export const CALLED = "ringbeadReached";

export interface Edit {
  readonly start: number;
  readonly end: number;
  readonly becomes: string;
}

export function edited(text: string, { start, end, becomes }: Edit): string {
  return text.slice(0, start) + becomes + text.slice(end);
}

/** The change as a report tells it, by lines and columns. */
export function asMutant(
  source: string,
  { start, end, becomes }: Edit,
  told: Pick<Mutant, "status" | "askedAll">,
): Mutant {
  return {
    ...told,
    replacement: becomes,
    location: { start: placeOf(source, start), end: placeOf(source, end) },
  };
}

function placeOf(source: string, at: number): Mutant["location"]["start"] {
  const lines = source.slice(0, at).split("\n");
  return { line: lines.length, column: (lines.at(-1) ?? "").length + 1 };
}
