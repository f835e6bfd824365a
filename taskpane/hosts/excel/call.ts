/** Reads a cell that holds one call of ours and nothing else, with arguments whose values can be looked up. */

export type Argument =
  | { readonly kind: "constant"; readonly value: string | number | boolean | null }
  /** A cell or a range of the same sheet. */
  | { readonly kind: "cells"; readonly address: string };

export interface Call {
  readonly id: string;
  readonly args: readonly Argument[];
}

const ADDRESS = /^\$?[A-Z]{1,3}\$?[1-9]\d*(?::\$?[A-Z]{1,3}\$?[1-9]\d*)?$/i;
/** What sheets write for a cell that may be blank. */
const OR_BLANK = /^IF\(\s*([^=,]+?)\s*=\s*""\s*,\s*""\s*,\s*([^=,]+?)\s*\)$/i;

/** The call, or undefined for a formula that is more than that. */
export function parseCall(formula: string): Call | undefined {
  const [, id, inside] = /^=\s*BEAD\.(\w+)\((.*)\)\s*$/is.exec(formula) ?? [];
  if (id === undefined || inside === undefined) return undefined;
  const parts = inside.trim() === "" ? [] : splitAtCommas(inside);
  const args = parts?.map(parseArgument);
  if (args === undefined || args.includes(undefined)) return undefined;
  return { id: id.toUpperCase(), args: args.filter((one) => one !== undefined) };
}

function parseArgument(text: string): Argument | undefined {
  const typed = text.trim();
  if (typed === "") return { kind: "constant", value: null };
  if (/^(TRUE|FALSE)$/i.test(typed)) return { kind: "constant", value: typed.toUpperCase() === "TRUE" };
  const quoted = /^"((?:[^"]|"")*)"$/.exec(typed)?.[1];
  if (quoted !== undefined) return { kind: "constant", value: quoted.replaceAll('""', '"') };
  if (Number.isFinite(Number(typed))) return { kind: "constant", value: Number(typed) };
  const [, asked, given] = OR_BLANK.exec(typed) ?? [];
  const address = asked !== undefined && asked === given ? asked : typed;
  return ADDRESS.test(address) ? { kind: "cells", address: address.replaceAll("$", "") } : undefined;
}

/** The arguments as typed; undefined where brackets or quotes do not close within the one call. */
function splitAtCommas(text: string): string[] | undefined {
  const parts: string[] = [];
  let part = "";
  let quoted = false;
  let depth = 0;
  for (const letter of text) {
    if (letter === '"') quoted = !quoted;
    else if (!quoted && "({".includes(letter)) depth += 1;
    else if (!quoted && ")}".includes(letter)) depth -= 1;
    if (depth < 0) return undefined;
    if (letter === "," && !quoted && depth === 0) {
      parts.push(part);
      part = "";
    } else part += letter;
  }
  return quoted || depth > 0 ? undefined : [...parts, part];
}
