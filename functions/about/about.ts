import { Refusal } from "../../src/refusal";
import { answerAlike } from "../answer";
import type { FormulaHelp } from "../catalogue";
import { formulaById, HELP, NAMESPACE, VERSION } from "../catalogue";
import type { Reader } from "../cells";
import { isBlank, quoted, rowsOf } from "../cells";

/**
 * What a formula means: meaning, equation, validity, source and a worked example, one row each.
 * @customfunction ABOUT
 * @param id Formula name, with or without BEAD.
 * @returns Five rows of label and text
 * @validity #N/A for a name that is not one of these formulas
 * @source The same help text that the pane and the help page show
 * @related REASON, VERSION
 * @example =BEAD.ABOUT("STANDOFF") → "meaning", "Arc gap between electrode tip and tube, in | mm: half the wall plus an allowance."; "equation", "g = t/2 + a"; …
 */
export function aboutCells(id: unknown): unknown[][] {
  return answerAlike((read) => {
    const about = readFormula(read, id);
    return [
      ["meaning", about.meaning],
      ["equation", about.equation],
      ["validity", sentences(about.validity, about.assumptions)],
      ["source", sentences(about.source, about.unconfirmed)],
      ["example", `${about.example} → ${about.result}`],
    ];
  });
}

/**
 * Why a formula refuses its arguments, in full; "fine" if it answers.
 * @customfunction REASON
 * @param id Formula name, with or without BEAD.
 * @param argument The arguments as that formula has them, cells or ranges
 * @validity For hosts that hide the sentence behind an error. An argument that holds an error shows that error.
 * @source The refusal sentence of the formula itself
 * @related ABOUT, VERSION
 * @example =BEAD.REASON("STANDOFF", -0.065) → "wall = -0.065 in: must be above 0"
 */
export function reasonCell(id: unknown, argument: unknown[][][]): string {
  return answerAlike((read) => {
    const about = readFormula(read, id);
    const formula = formulaById(about.id);
    if (formula === undefined) throw new Error(`${about.id} is not loaded`);
    const refusal = refusalOf(about, readArguments(argument), formula);
    return refusal ?? "fine";
  });
}

/**
 * Version of the functions that are running; the pane compares it with its own.
 * @customfunction VERSION
 * @validity Text such as 0.1.0
 * @source The project's change log
 * @related ABOUT, REASON
 * @example =BEAD.VERSION() → "0.1.0"
 */
export function versionCell(): string {
  return answerAlike(() => VERSION);
}

/** What belongs in one cell: the parts that there are, each ended by a full stop where another follows. */
function sentences(...parts: readonly string[]): string {
  return parts
    .filter((part) => part !== "")
    .map((part, i, all) => (i < all.length - 1 && !part.endsWith(".") ? `${part}.` : part))
    .join(" ");
}

function readFormula(read: Reader, id: unknown): FormulaHelp {
  const typed = read.text("id", id);
  const bare = typed.toUpperCase().replace(new RegExp(`^=?${NAMESPACE}[._]`), "");
  const found = HELP.find((formula) => formula.id === bare);
  if (found !== undefined) return found;
  const family = HELP.filter((formula) => formula.id.startsWith(bare.slice(0, 4))).map(
    (formula) => formula.id,
  );
  const hint = family.length > 0 ? `; did you mean ${family.join(", ")}?` : "";
  throw new Refusal("id", quoted(typed), [`no formula has this name${hint}`], "unanswerable");
}

/** Each argument of a repeating range parameter arrives as rows of cells. */
function readArguments(given: unknown): unknown[][][] {
  return Array.isArray(given) ? given.map(rowsOf) : [];
}

function refusalOf(
  about: FormulaHelp,
  given: readonly unknown[][][],
  formula: (...cells: unknown[]) => unknown,
): string | undefined {
  const [repeating] = about.parameters.filter((parameter) => parameter.repeating);
  if (repeating === undefined && given.length > about.parameters.length) {
    const most = about.parameters.length;
    return `${about.id} takes ${String(most)} argument${most === 1 ? "" : "s"}, not ${String(given.length)}`;
  }
  const cells = about.parameters.map(({ range, repeating: takesRest }, i) => {
    if (takesRest) return given.slice(i);
    const rows = given[i];
    return range || rows === undefined ? rows : asCell(rows);
  });
  try {
    formula(...cells);
    return undefined;
  } catch (problem) {
    return (problem as CustomFunctions.Error).message;
  }
}

/** One cell for itself; more stay rows, which the formula then refuses as a range. */
function asCell(rows: unknown[][]): unknown {
  const cell = rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : rows;
  return isBlank(cell) ? undefined : cell;
}
