/** Counting cells: "B4" and what lies beside it. */

export interface Place {
  readonly column: number;
  readonly row: number;
}

/** Zero-based column and row of an address, dollar signs ignored. */
export function placeOf(address: string): Place {
  const parts = /^\$?([A-Z]+)\$?(\d+)$/.exec(address);
  if (parts === null) throw new Error(`not an address: ${address}`);
  const [, letters = "", digits = ""] = parts;
  let column = 0;
  for (const letter of letters) column = column * 26 + letter.charCodeAt(0) - 64;
  return { column: column - 1, row: Number(digits) - 1 };
}

export function addressOf({ column, row }: Place): string {
  if (!Number.isInteger(column) || !Number.isInteger(row))
    throw new Error(`no cell at column ${String(column)}, row ${String(row)}`);
  let letters = "";
  for (let left = column + 1; left > 0; left = Math.floor((left - 1) / 26)) {
    letters = String.fromCharCode(65 + ((left - 1) % 26)) + letters;
  }
  return `${letters}${String(row + 1)}`;
}

/** The range a cell covers that spreads over some columns and rows. */
export function spread(address: string, columns = 1, rows = 1): string {
  const { column, row } = placeOf(address);
  if (columns === 1 && rows === 1) return address;
  return `${address}:${addressOf({ column: column + columns - 1, row: row + rows - 1 })}`;
}

/** What Excel allows in the name of a sheet. */
const LONGEST_NAME = 31;
const FORBIDDEN = /[:\\/?*[\]]+/g;

/** A sheet's name not in use yet: "Procedure sheet", "Procedure sheet 2", … */
export function freeName(wanted: string, taken: readonly string[]): string {
  const used = new Set(taken.map((name) => name.toLowerCase()));
  const allowed = wanted
    .replace(FORBIDDEN, " ")
    .replace(/\s+/g, " ")
    .replace(/^'+|'+$/g, "");
  for (let n = 1; ; n += 1) {
    const ending = n === 1 ? "" : ` ${String(n)}`;
    const name = allowed.slice(0, LONGEST_NAME - ending.length).trim() + ending;
    if (!used.has(name.toLowerCase())) return name;
  }
}
