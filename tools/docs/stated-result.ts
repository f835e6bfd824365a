/** Compares what a formula gives with what an example states. */

import type { Constant } from "../../taskpane/hosts/excel/call";
import { constantIn, splitOutside } from "../../taskpane/hosts/excel/call";

/**
 * What is wrong between a value and the result an example states, or undefined. A number agrees to half a unit of its
 * last printed digit; rows stand apart by ";", cells by ","; an ellipsis at the end leaves the rest open.
 */
export function disagreement(value: unknown, stated: string): string | undefined {
  const rows = rowsIn(value);
  const open = /[,;] …$/.test(stated);
  const statedRows = parts(stated.replace(/[,;] …$/, ""), ";").map((row) => parts(row, ","));
  const [wanted, given] = [sizeOf(statedRows), sizeOf(rows)];
  if (!open && wanted !== given) return `says ${wanted} cells, gives ${given}`;
  for (const [r, row] of statedRows.entries()) {
    for (const [c, cell] of row.entries()) {
      const got = rows[r]?.[c];
      if (!agrees(got, cell)) return `says ${cell}, gives ${String(got)}`;
    }
  }
  return undefined;
}

/** A table made in another context is no Array of this one, but it can be gone through. */
function rowsIn(value: unknown): unknown[][] {
  return Array.isArray(value) ? Array.from(value as unknown[][], (row) => Array.from(row)) : [[value]];
}

function parts(text: string, mark: string): string[] {
  return (splitOutside(text, mark) ?? [text]).map((part) => part.trim());
}

function sizeOf(rows: readonly (readonly unknown[])[]): string {
  return `${String(rows.length)} × ${String(rows[0]?.length)}`;
}

function agrees(got: unknown, stated: string): boolean {
  const expected: Constant | undefined = constantIn(stated);
  if (expected === undefined) throw new Error(`not a constant: ${stated}`);
  if (typeof expected !== "number" || typeof got !== "number") return got === expected;
  const digits = /\.(\d+)/.exec(stated)?.[1]?.length ?? 0;
  return Math.abs(got - expected) <= 0.5 * 10 ** -digits * (1 + 1e-9);
}
