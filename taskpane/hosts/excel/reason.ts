/**
 * The sentence behind an error. Excel's interface does not tell it, but the functions run in the pane's own page: the
 * same function is called with the same arguments and says it once more.
 */

import help from "../../../generated/help.json";
import type { Argument } from "./call";
import { parseCall } from "./call";
import { isError } from "./values";

/** A function as it reported in to the host. */
export type Associated = (...cells: unknown[]) => unknown;

/** The refusal of the one call in a formula, or "" where there is none or it cannot be told. */
export async function reasonOf(
  formula: string,
  sheet: Excel.Worksheet,
  functions: ReadonlyMap<string, Associated>,
): Promise<string> {
  const call = parseCall(formula);
  const about = help.formulas.find(({ id }) => id === call?.id);
  const associated = functions.get(call?.id ?? "");
  if (call === undefined || about === undefined || associated === undefined) return "";
  const args = await valuesOf(call.args, sheet);
  const cells = about.parameters.map(({ range, repeating }, i) => {
    if (repeating) return args.slice(i);
    const rows = args[i];
    if (rows === undefined) return null;
    return range ? rows : single(rows);
  });
  // A range in a single cell's place makes Excel call the function for each of its cells: no one sentence.
  if (cells.includes(undefined)) return "";
  try {
    associated(...cells);
    return "";
  } catch (problem) {
    return (problem as { message?: string }).message ?? "";
  }
}

async function valuesOf(args: readonly Argument[], sheet: Excel.Worksheet): Promise<unknown[][][]> {
  const ranges = args.map((one) => (one.kind === "cells" ? sheet.getRange(one.address) : undefined));
  for (const range of ranges) range?.load("values,valueTypes");
  await sheet.context.sync();
  return args.map((one, i) => {
    const range = ranges[i];
    if (range === undefined) return one.kind === "array" ? one.rows.map((row) => [...row]) : [[valueOf(one)]];
    return (range.values as unknown[][]).map((row, r) =>
      row.map((value, c) => (isError(range, r, c) ? { type: "Error", basicValue: String(value) } : value)),
    );
  });
}

function valueOf(argument: Argument): unknown {
  return argument.kind === "constant" ? argument.value : null;
}

function single(rows: readonly unknown[][]): unknown {
  return rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : undefined;
}
