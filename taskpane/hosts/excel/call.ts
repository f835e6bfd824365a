/** Reads a formula that holds one call of ours and nothing else, with arguments whose values can be looked up. */

export type Constant = string | number | boolean | null;

export type Argument =
  | { readonly kind: "constant"; readonly value: Constant }
  /** Constants in braces, rows apart by ";". */
  | { readonly kind: "array"; readonly rows: readonly (readonly Constant[])[] }
  /** A cell or a range of the same sheet. */
  | { readonly kind: "cells"; readonly address: string };

export interface Call {
  readonly id: string;
  readonly args: readonly Argument[];
}

const ADDRESS = /^\$?[A-Z]{1,3}\$?[1-9]\d*(?::\$?[A-Z]{1,3}\$?[1-9]\d*)?$/i;
/** What sheets write for a cell that may be blank. */
const OR_BLANK = /^IF\(\s*([^=,]+?)\s*=\s*""\s*,\s*""\s*,\s*([^=,]+?)\s*\)$/i;

/** The call, or undefined for a formula that is more than that. Excel puts an @ before some calls that it has stored. */
export function parseCall(formula: string): Call | undefined {
  const [, id, inside] = /^=\s*@?\s*BEAD\.(\w+)\((.*)\)\s*$/is.exec(formula.trim()) ?? [];
  if (id === undefined || inside === undefined) return undefined;
  const parts = inside.trim() === "" ? [] : splitOutside(inside, ",");
  const args = parts?.map(parseArgument);
  if (args === undefined || args.includes(undefined)) return undefined;
  return { id: id.toUpperCase(), args: args.filter((one) => one !== undefined) };
}

function parseArgument(text: string): Argument | undefined {
  const typed = text.trim();
  const value = constantIn(typed);
  if (value !== undefined) return { kind: "constant", value };
  const braced = /^\{(.*)\}$/s.exec(typed)?.[1];
  if (braced !== undefined) return arrayOf(braced);
  const [, asked, given] = OR_BLANK.exec(typed) ?? [];
  const address = asked !== undefined && asked === given ? asked : typed;
  return ADDRESS.test(address) ? { kind: "cells", address: address.replaceAll("$", "") } : undefined;
}

function arrayOf(braced: string): Argument | undefined {
  const rows = splitOutside(braced, ";")?.map(
    (row) => splitOutside(row, ",")?.map(constantIn) ?? [undefined],
  );
  if (rows === undefined || rows.some((row) => row.includes(undefined))) return undefined;
  return { kind: "array", rows: rows.map((row) => row.filter((one) => one !== undefined)) };
}

/** A number, a "text", TRUE or FALSE, null for nothing; undefined for what is none of these. */
export function constantIn(text: string): Constant | undefined {
  const typed = text.trim();
  if (typed === "") return null;
  if (/^(TRUE|FALSE)$/i.test(typed)) return typed.toUpperCase() === "TRUE";
  const quoted = /^"((?:[^"]|"")*)"$/.exec(typed)?.[1];
  if (quoted !== undefined) return quoted.replaceAll('""', '"');
  return Number.isFinite(Number(typed)) ? Number(typed) : undefined;
}

/** The parts between a mark that stands outside quotes and brackets; undefined where these do not close. */
export function splitOutside(text: string, mark: string): string[] | undefined {
  const parts: string[] = [];
  let part = "";
  let quoted = false;
  let depth = 0;
  for (const letter of text) {
    if (letter === '"') quoted = !quoted;
    else if (!quoted && "({".includes(letter)) depth += 1;
    else if (!quoted && ")}".includes(letter)) depth -= 1;
    if (depth < 0) return undefined;
    if (letter === mark && !quoted && depth === 0) {
      parts.push(part);
      part = "";
    } else part += letter;
  }
  return quoted || depth > 0 ? undefined : [...parts, part];
}
