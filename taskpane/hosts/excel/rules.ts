/** What Excel keeps beside the cells: words that a cell takes, ranges of typed numbers, colors of signs. */

import type { RangePlan } from "../../sheets/sheet";
import { SIGNS } from "../../sheets/sheet";
import type { Style } from "../looks";
import { GRAYED, SIGN_LOOKS } from "../looks";
import { fitting, plainNumberBetween } from "../ranges";
import { beginsWith } from "../signs";

const LONGEST_LIST = 255;

export function allowOnly(range: Excel.Range, values: readonly string[]): void {
  const source = values.join(",");
  if (source.length > LONGEST_LIST || values.some((value) => value.includes(","))) {
    throw new Error(`a list of allowed words does not fit: ${source}`);
  }
  range.dataValidation.rule = { list: { inCellDropDown: values.length > 1, source } };
}

/** The units cell takes no other word: retyping it would read inches as millimeters. */
export function lockUnits(cell: Excel.Range, units: string): void {
  allowOnly(cell, [units]);
  cell.dataValidation.errorAlert = {
    showAlert: true,
    style: "Stop",
    title: "System of units",
    message: "Use “Convert this sheet” in the pane: it rewrites the typed numbers as well.",
  };
}

/** Asks about a number outside of the range, and lets the person go on. */
export function warnOutside(cells: Excel.Range, range: RangePlan, isText: boolean): void {
  const { least, most, title, message } = fitting(range);
  const { dataValidation } = cells;
  dataValidation.rule = isText
    ? { custom: { formula: plainNumberBetween(range) } }
    : { decimal: { formula1: least, formula2: most, operator: "Between" } };
  dataValidation.ignoreBlanks = true;
  dataValidation.errorAlert = { showAlert: true, style: "Warning", title, message };
}

/** What guarded a cell before, once `load` and a sync have told; `putBack` queues it again. */
export class Guard {
  readonly #validation: Excel.DataValidation;

  constructor(cell: Excel.Range) {
    this.#validation = cell.dataValidation;
  }

  load(): void {
    this.#validation.load("type,rule,ignoreBlanks,errorAlert");
  }

  putBack(): () => void {
    const validation = this.#validation;
    const { type, rule, ignoreBlanks, errorAlert } = validation;
    if (type === "None") {
      return () => {
        validation.clear();
      };
    }
    // Excel also tells the kinds of rule that this one is not, as null.
    const own = Object.fromEntries(
      Object.entries(rule).filter(([, one]) => one !== null),
    ) as Excel.DataValidationRule;
    return () => {
      validation.rule = own;
      validation.ignoreBlanks = ignoreBlanks;
      validation.errorAlert = { ...errorAlert };
    };
  }
}

export function colorSigns(cells: Excel.Range, at: string): void {
  for (const sign of ["holds", "attention"] as const) {
    colorWhere(cells, `=${beginsWith(at, SIGNS[sign])}`, SIGN_LOOKS[sign]);
  }
}

/** Rows for which a formula holds that is written for the first of them. */
export function grayRows(cells: Excel.Range, formula: string): void {
  colorWhere(cells, formula, GRAYED);
}

function colorWhere(cells: Excel.Range, formula: string, { bold, ink, fill }: Style): void {
  const { custom } = cells.conditionalFormats.add("Custom");
  custom.rule.formula = formula;
  if (bold !== undefined) custom.format.font.bold = bold;
  if (ink !== undefined) custom.format.font.color = ink;
  if (fill !== undefined) custom.format.fill.color = fill;
}
