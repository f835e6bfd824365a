/** Ranges of typed numbers in a cell that is kept as text, where no host compares by itself. */

import type { RangePlan, SheetPlan } from "../sheets/sheet";

/** Keeps whatever is typed as text. */
export const TEXT_FORMAT = "@";

/** Whether the first cell of a range is kept as text. */
export function isTextAt({ cells }: SheetPlan, at: string): boolean {
  const [first] = at.split(":");
  return cells.find((cell) => cell.at === first)?.format === TEXT_FORMAT;
}

/**
 * Holds unless the first cell of the range is a plain number out of it. A size such as 1-1/2 or 38.1 mm is no plain number:
 * VALUE would take the first for a date, so all with a slash pass.
 */
export function plainNumberBetween({ at, least, most }: Pick<RangePlan, "at" | "least" | "most">): string {
  const [cell = at] = at.split(":");
  const between = `AND(VALUE(${cell})>=${String(least)},VALUE(${cell})<=${String(most)})`;
  return `=IF(ISNUMBER(SEARCH("/",${cell})),TRUE,IFERROR(${between},TRUE))`;
}

/** What Excel takes in a warning, characters. */
const LONGEST = { title: 32, message: 225 } as const;

/** The range, or an error where its words do not fit. */
export function fitting(range: RangePlan): RangePlan {
  for (const part of ["title", "message"] as const) {
    if (range[part].length > LONGEST[part]) {
      throw new Error(`the ${part} of the range of ${range.at} is too long: ${range[part]}`);
    }
  }
  return range;
}
