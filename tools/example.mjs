/** Reads a formula as typed, `=BEAD.PURGE_TIME(2, 12, 20, , , 1, "US")`, and checks what it is said to give. */

/**
 * @typedef {number | string | boolean | null | (number | string | boolean | null)[][]} Argument
 */

/**
 * Id and arguments of a single call. Numbers, "texts", TRUE, FALSE, nothing between two commas, and {1,2;3,4}.
 * @param {string} formula
 * @returns {{ id: string, args: Argument[] }}
 */
export function parseCall(formula) {
  const call = /^=BEAD\.([A-Z0-9_]+)\((.*)\)$/s.exec(formula.trim());
  if (call === null) throw new Error(`not a single call of a formula: ${formula}`);
  const [, id = "", inside = ""] = call;
  return { id, args: inside.trim() === "" ? [] : split(inside, ",").map(parseArgument) };
}

/** @param {string} text @returns {Argument} */
function parseArgument(text) {
  const typed = text.trim();
  if (typed.startsWith("{") && typed.endsWith("}")) {
    return split(typed.slice(1, -1), ";").map((row) => split(row, ",").map(parseConstant));
  }
  return parseConstant(typed);
}

/** @param {string} text @returns {number | string | boolean | null} */
function parseConstant(text) {
  const typed = text.trim();
  if (typed === "") return null;
  if (typed === "TRUE" || typed === "FALSE") return typed === "TRUE";
  if (typed.startsWith('"') && typed.endsWith('"')) return typed.slice(1, -1).replaceAll('""', '"');
  const value = Number(typed);
  if (Number.isNaN(value)) throw new Error(`not a constant: ${typed}`);
  return value;
}

/**
 * Splits at a mark that stands outside quotes and braces.
 * @param {string} text @param {string} mark
 */
function split(text, mark) {
  const parts = [""];
  let quoted = false;
  let depth = 0;
  for (const letter of text) {
    if (letter === '"') quoted = !quoted;
    else if (!quoted && letter === "{") depth += 1;
    else if (!quoted && letter === "}") depth -= 1;
    if (letter === mark && !quoted && depth === 0) parts.push("");
    else parts[parts.length - 1] += letter;
  }
  return parts;
}

/**
 * What is wrong between a value and the result an example states, or undefined. A number agrees to half a unit of its
 * last printed digit; rows stand apart by ";", cells by ","; an ellipsis at the end leaves the rest open.
 * @param {unknown} value @param {string} stated
 */
export function disagreement(value, stated) {
  const rows = Array.isArray(value) ? value : [[value]];
  const open = /[,;] …$/.test(stated);
  const statedRows = split(stated.replace(/[,;] …$/, ""), ";").map((row) =>
    split(row, ",").map((cell) => cell.trim()),
  );
  if (!open && (statedRows.length !== rows.length || statedRows[0]?.length !== rows[0]?.length)) {
    return `says ${statedRows.length} × ${statedRows[0]?.length} cells, gives ${rows.length} × ${rows[0]?.length}`;
  }
  for (const [r, row] of statedRows.entries()) {
    for (const [c, cell] of row.entries()) {
      const got = rows[r]?.[c];
      if (!agrees(got, cell)) return `says ${cell}, gives ${String(got)}`;
    }
  }
  return undefined;
}

/** @param {unknown} got @param {string} stated */
function agrees(got, stated) {
  const expected = parseConstant(stated);
  if (typeof expected !== "number" || typeof got !== "number") return got === expected;
  const digits = /\.(\d+)/.exec(stated)?.[1]?.length ?? 0;
  return Math.abs(got - expected) <= 0.5 * 10 ** -digits * (1 + 1e-9);
}
