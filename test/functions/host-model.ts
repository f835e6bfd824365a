/**
 * A small model of an Excel that calls a custom function: what it makes of the arguments before and of the result after.
 * Hosts differ in what a blank cell arrives as, so that is a parameter. Each rule that was read and not tried in an
 * Excel stands in one place here, so that a later trial changes one line.
 */

/** What a blank cell arrives as in an argument that takes anything. */
export type BlankAs = 0 | null | "";
export const BLANKS: readonly BlankAs[] = [0, null, ""];

export interface CalledParameter {
  readonly name: string;
  readonly type?: string;
  readonly optional?: boolean;
  readonly repeating?: boolean;
  readonly dimensionality?: string;
}

export interface CalledFunction {
  readonly id: string;
  readonly parameters: readonly CalledParameter[];
  readonly result: { readonly dimensionality?: string };
}

type Scalar = string | number | boolean | ErrorCell | typeof BLANK;
/** One argument as it stands in a formula: undefined where nothing stands between two commas. */
export type Given = Scalar | readonly (readonly Scalar[])[] | undefined;
export type Shown = string | number | boolean | ErrorCell;
/** What the cell, or the cells it spills over, show. */
export type Outcome = Shown | Shown[][];

/** A cell with nothing in it. */
export const BLANK: unique symbol = Symbol("blank cell");

export class ErrorCell {
  constructor(
    readonly code: string,
    readonly message = "",
  ) {}
}

/** Codes that become the error of the same name; every other one becomes #VALUE!. */
const CODES = ["#N/A", "#DIV/0!", "#VALUE!", "#NUM!", "#NULL!"];
/** Codes whose sentence Excel keeps. */
const WITH_SENTENCE = ["#VALUE!", "#N/A"];
const LONGEST_TEXT = 32_767;

export function callAsExcel(
  called: CalledFunction,
  formula: (...cells: unknown[]) => unknown,
  given: readonly Given[],
  blank: BlankAs,
): Outcome {
  const error = given.flatMap(cellsOf).find((cell) => cell instanceof ErrorCell);
  if (error !== undefined) return new ErrorCell(error.code);
  const repeats = called.parameters.findIndex(({ repeating }) => repeating === true);
  if (repeats < 0 && given.length > called.parameters.length)
    throw new Error(`${called.id}: too many arguments`);
  const lifted = given.find((one, i) => isRange(one) && !takesRange(called, i) && !isOneCell(one));
  if (lifted === undefined) return once(called, formula, given, blank);
  if (called.result.dimensionality === "matrix") return new ErrorCell("#CALC!");
  // A range in one cell's place: the function is called for each of its cells.
  return (lifted as readonly (readonly Scalar[])[]).map((row, r) =>
    row.map((_, c) => {
      const cells = given.map((one, i) => (isRange(one) && !takesRange(called, i) ? picked(one, r, c) : one));
      return once(called, formula, cells, blank) as Shown;
    }),
  );
}

function once(
  called: CalledFunction,
  formula: (...cells: unknown[]) => unknown,
  given: readonly Given[],
  blank: BlankAs,
): Outcome {
  const args: unknown[] = [];
  for (const [i, parameter] of called.parameters.entries()) {
    if (parameter.repeating === true) {
      args.push(given.slice(i).map((one) => received(one, parameter, blank)));
      continue;
    }
    const cell = received(given[i], parameter, blank);
    // Text where a number is declared: Excel answers itself, the function never runs.
    if (cell instanceof ErrorCell) return cell;
    args.push(cell);
  }
  args.push({ address: "Sheet1!A1", functionName: called.id });
  return shown(() => formula(...args));
}

/** An argument as the function gets it; what is omitted is null, so that a default in the code never applies. */
function received(given: Given, parameter: CalledParameter, blank: BlankAs): unknown {
  if (given === undefined) return null;
  const rows: readonly (readonly Scalar[])[] = isRange(given) ? given : [[given]];
  const cells = rows.map((row) => row.map((cell) => coerced(cell, parameter.type, blank)));
  const refused = cells.flat().find((cell) => cell instanceof ErrorCell);
  if (refused !== undefined) return refused;
  return parameter.dimensionality === "matrix" ? cells : cells[0]?.[0];
}

function coerced(cell: Scalar, type: string | undefined, blank: BlankAs): unknown {
  if (type === "number") {
    if (cell === BLANK) return 0;
    if (typeof cell === "boolean") return cell ? 1 : 0;
    if (typeof cell !== "string") return cell;
    return cell.trim() !== "" && Number.isFinite(Number(cell)) ? Number(cell) : new ErrorCell("#VALUE!");
  }
  if (type === "string") {
    if (cell === BLANK) return "";
    if (cell instanceof ErrorCell) return cell;
    return typeof cell === "boolean" ? String(cell).toUpperCase() : String(cell);
  }
  return cell === BLANK ? blank : cell;
}

/** What becomes of a result on its way to the cell. */
function shown(run: () => unknown): Outcome {
  let result: unknown;
  try {
    result = run();
  } catch (problem) {
    const { code = "", message = "" } = problem as { code?: string; message?: string };
    const named = CODES.includes(code) ? code : "#VALUE!";
    return new ErrorCell(named, code !== "" && WITH_SENTENCE.includes(named) ? message : "");
  }
  if (typeof result === "number" && Number.isNaN(result)) return new ErrorCell("#VALUE!");
  if (result === Infinity || result === -Infinity) return new ErrorCell("#NUM!");
  // Numbers inside a table are not looked at: what JSON does not know becomes null, and null shows as 0.
  const sent = JSON.parse(JSON.stringify(result ?? null)) as unknown;
  if (!Array.isArray(sent)) return cellShown(sent);
  const rows = sent as unknown[];
  const width = Array.isArray(rows[0]) ? rows[0].length : 0;
  if (width === 0 || rows.some((row) => !Array.isArray(row) || row.length !== width))
    return new ErrorCell("#CALC!");
  return (rows as unknown[][]).map((row) => row.map(cellShown));
}

function cellShown(value: unknown): Shown {
  if (value === null) return 0;
  if (typeof value === "string" && value.length > LONGEST_TEXT) return new ErrorCell("#CALC!");
  if (typeof value === "number" || typeof value === "string" || typeof value === "boolean") return value;
  return new ErrorCell("#VALUE!");
}

function isRange(given: Given): given is readonly (readonly Scalar[])[] {
  return Array.isArray(given);
}

function isOneCell(rows: readonly (readonly Scalar[])[]): boolean {
  return rows.length === 1 && rows[0]?.length === 1;
}

function cellsOf(given: Given): Scalar[] {
  if (given === undefined) return [];
  return isRange(given) ? given.flat() : [given];
}

function takesRange({ parameters }: CalledFunction, index: number): boolean {
  const parameter = parameters[Math.min(index, parameters.length - 1)];
  return parameter?.dimensionality === "matrix";
}

/** A row or a column goes along with a larger block. */
function picked(rows: readonly (readonly Scalar[])[], r: number, c: number): Scalar {
  const row = rows.length === 1 ? rows[0] : rows[r];
  return (row?.length === 1 ? row[0] : row?.[c]) ?? new ErrorCell("#N/A");
}
