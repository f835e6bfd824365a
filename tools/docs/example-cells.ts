/** The cells of a record's example as a host hands them over: one a declared argument, null for what is omitted. */

import type { Formula } from "../../functions/formula";

export function exampleCells({
  args,
  example,
  takesUnits,
}: Pick<Formula, "args" | "example" | "takesUnits">): unknown[] {
  const cells: readonly unknown[] = example.args;
  const own = Object.values(args).map(({ takes }, i) =>
    takes === "rest" ? cells.slice(i).map(asRange) : (cells[i] ?? null),
  );
  return takesUnits ? [...own, cells[own.length] ?? null] : own;
}

/** An argument of a repeating place, which a host hands over as rows of cells. */
export function asRange(cell: unknown): unknown {
  return Array.isArray(cell) ? cell : [[cell]];
}
