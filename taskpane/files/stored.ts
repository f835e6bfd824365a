/**
 * Formulas in the form a file keeps them. Ours are calls of a name that Excel gives back to the add-in; newer native
 * functions carry a prefix. No array formula holds one of ours: a spreadsheet without the add-in would compute it again
 * and lose the value. So each cell of a table of ours looks up its own place in the table.
 */

import type { Place } from "../sheets/addresses";
import { addressOf, placeOf } from "../sheets/addresses";
import type { SnapshotCell, Spill } from "./sheet-state";

export interface Vocabulary {
  /** Names of the workbook: as formulas speak of them, and as the file does on this sheet. */
  readonly names: ReadonlyMap<string, string>;
  /** The workbook's sheets, and what they are called in the file. */
  readonly sheets: ReadonlyMap<string, string>;
  /** Whether a formula of ours gives a table. */
  readonly givesTable: (id: string) => boolean;
}

export interface Stored {
  /** Without its =. */
  readonly formula: string;
  /** Every range in it is taken cell by cell. */
  readonly array: boolean;
  /** Whether one of our formulas is in it. */
  readonly ours: boolean;
}

const OURS = "BEAD.";
const STORED_OURS = "_xldudf_BEAD_";

const words = (text: string): ReadonlySet<string> => new Set(text.split(" "));
/** Native functions that take a block of cells as one argument. */
const TAKES_BLOCKS = words(
  "AND AVERAGE COLUMNS CONCAT COUNT COUNTA COUNTIF HLOOKUP INDEX LARGE LOOKUP MATCH MAX MAXIFS MEDIAN MIN MINIFS OR PRODUCT ROWS SMALL SUM SUMIF SUMPRODUCT TEXTJOIN VLOOKUP XLOOKUP",
);
const TAKES_VALUES = words(
  "ABS CEILING CHAR COS DATE DAY EXACT EXP FLOOR IF IFERROR IFS INT ISBLANK ISERROR ISFORMULA ISNUMBER ISTEXT LEFT LEN LN LOG LOG10 LOWER MID MOD MONTH NA NOT PI POWER RIGHT ROUND ROUNDDOWN ROUNDUP SIGN SIN SQRT SUBSTITUTE SWITCH TAN TEXT TRIM UPPER VALUE YEAR",
);
/** Functions younger than the file format. */
const PREFIXED = words("CONCAT IFS ISFORMULA MAXIFS MINIFS SWITCH TEXTJOIN XLOOKUP");

/** What the file keeps in a cell, or undefined where only its value can be kept. */
export function storedFormula(cell: SnapshotCell, vocabulary: Vocabulary): Stored | undefined {
  const formula = cell.spill?.formula ?? cell.formula;
  if (formula === undefined) return undefined;
  const read = readFormula(formula, vocabulary);
  if (read === undefined) return undefined;
  const { text, isTable, cellByCell, ours } = read;
  if (cell.spill === undefined) {
    if (cellByCell.length > 0 && ours) return undefined;
    return { formula: text, array: cellByCell.length > 0, ours };
  }
  if (isTable) return { formula: placeInTable(text, placeOf(cell.at), cell.spill), array: false, ours };
  // In a plain formula such a range stands for its cell on the formula's own line.
  const alongside = cellByCell.length > 0 && cellByCell.every((range) => isBeside(range, cell.spill));
  return alongside && !ours ? { formula: text, array: false, ours } : undefined;
}

/** The row is counted over cells, so that it holds when rows are inserted inside the table. */
function placeInTable(table: string, at: Place, { from }: Spill): string {
  const first = addressOf(from).replace(/\d+/, "$$$&");
  const here = addressOf({ column: from.column, row: at.row });
  return `INDEX(${table},ROWS(${first}:${here}),${String(at.column - from.column + 1)})`;
}

/** Whether a range is one column on the same lines as a one-column answer. */
function isBeside(range: string, spill: Spill | undefined): boolean {
  // A table of ours that stands where a single value does has no place on the sheet.
  if (range.startsWith(OURS) || range.includes("!")) return false;
  const [start, end] = range.split(":").map(placeOf);
  if (spill === undefined || start === undefined || end === undefined) return false;
  const sameLines = start.row === spill.from.row && end.row === spill.from.row + spill.rows - 1;
  return sameLines && spill.columns === 1 && start.column === end.column;
}

interface Read {
  readonly text: string;
  /** The whole formula is one call of ours that gives a table. */
  readonly isTable: boolean;
  /** Ranges, and tables of ours, that stand where a single value does. */
  readonly cellByCell: readonly string[];
  readonly ours: boolean;
}

interface Call {
  readonly name: string;
  readonly startsArgument: boolean;
}

const ADDRESS = /^\$?[A-Z]{1,3}\$?\d+$/;
const TOKEN =
  /"(?:[^"]|"")*"|(?:'(?:[^']|'')+'|[A-Za-z_][\w.]*)!|\$?[A-Za-z_][\w.$]*:\$?[A-Za-z]+\$?\d+|\$?[A-Za-z_][\w.$]*|[\d.]+(?:[eE][+-]?\d+)?|\s+|./gs;
const SIGNS = words("+ - * / ^ & = < > % , ( )");

/** A sheet's name as formulas speak of it. */
export function quoted(sheet: string): string {
  return `'${sheet.replaceAll("'", "''")}'`;
}

/** The sheet that a token names before its address, as the file calls it, with its !; undefined where there is none such. */
function sheetOf(token: string, sheets: Vocabulary["sheets"]): string | undefined {
  const name = token.slice(0, -1).replace(/^'|'$/g, "").replaceAll("''", "'");
  const inFile = sheets.get(name);
  return inFile === undefined ? undefined : `${quoted(inFile)}!`;
}

/** Undefined where the formula speaks of anything that a file of this workbook does not know. */
function readFormula(formula: string, { names, sheets, givesTable }: Vocabulary): Read | undefined {
  const tokens = (formula.slice(1).match(TOKEN) ?? []).filter((token) => token.trim() !== "");
  const open: Call[] = [];
  const cellByCell: string[] = [];
  let ours = false;
  let isTable = false;
  let text = "";
  const takesBlock = (startsArgument: boolean, next: string | undefined): boolean => {
    const around = open.at(-1)?.name ?? "";
    const whole = startsArgument && (next === "," || next === ")");
    const natively = open.some(({ name }) => name === "SUMPRODUCT");
    return natively || (whole && (TAKES_BLOCKS.has(around) || around.startsWith(OURS)));
  };
  /** Stands before the address that comes next. */
  let sheet = "";
  for (const [i, token] of tokens.entries()) {
    if (token.length > 1 && token.endsWith("!")) {
      const inFile = sheetOf(token, sheets);
      if (inFile === undefined) return undefined;
      sheet = inFile;
      continue;
    }
    const [before, next] = [tokens[sheet === "" ? i - 1 : i - 2], tokens[i + 1]];
    const startsArgument = before === "(" || before === ",";
    const upper = token.toUpperCase();
    if (token.startsWith('"') || /^[\d.]/.test(token)) {
      text += token;
    } else if (token === ")") {
      const call = open.pop();
      if (call === undefined) return undefined;
      text += token;
      if (!call.name.startsWith(OURS) || !givesTable(call.name.slice(OURS.length))) continue;
      if (open.length === 0 && next === undefined && tokens[0]?.toUpperCase() === call.name) isTable = true;
      else if (!takesBlock(call.startsArgument, next)) cellByCell.push(call.name);
    } else if (token === "(") {
      if (before === undefined || !/^[A-Za-z_]/.test(before)) open.push({ name: "", startsArgument });
      text += token;
    } else if (SIGNS.has(token)) {
      text += token;
    } else if (next === "(") {
      open.push({ name: upper, startsArgument });
      if (upper.startsWith(OURS)) {
        ours = true;
        text += STORED_OURS + upper.slice(OURS.length);
      } else if (TAKES_BLOCKS.has(upper) || TAKES_VALUES.has(upper)) {
        text += PREFIXED.has(upper) ? `_xlfn.${upper}` : upper;
      } else {
        return undefined;
      }
    } else if (upper.includes(":")) {
      if (!upper.split(":").every((end) => ADDRESS.test(end))) return undefined;
      if (!takesBlock(startsArgument, next)) cellByCell.push(sheet + upper);
      text += sheet + upper;
    } else if (ADDRESS.test(upper) || (sheet === "" && (upper === "TRUE" || upper === "FALSE"))) {
      text += sheet + upper;
    } else {
      const name = sheet === "" ? names.get(token) : undefined;
      if (name === undefined) return undefined;
      text += name;
    }
    sheet = "";
  }
  return { text, isTable, cellByCell, ours };
}
