/** What the engine keeps beside the cells: words that a cell takes, ranges of typed numbers, colors of signs. */

import type { Model } from "@odoo/o-spreadsheet";
import { helpers } from "@odoo/o-spreadsheet";

import type { GrayedPlan, RangePlan } from "../../sheets/sheet";
import { SIGNS } from "../../sheets/sheet";
import { addressOf, placeOf } from "../../sheets/addresses";
import type { Style } from "../looks";
import { GRAYED, SIGN_LOOKS } from "../looks";
import { fitting, plainNumberBetween } from "../ranges";
import { command } from "./commands";

/** What the engine is told of a cell that takes one of some words. */
export function listCriterion(values: readonly string[]): object {
  return { type: "isValueInList", values, displayStyle: values.length > 1 ? "arrow" : "plainText" };
}

/** What the engine is told of a range of typed numbers. */
export function rangeCriterion(range: Pick<RangePlan, "at" | "least" | "most">, isText: boolean): object {
  return isText
    ? { type: "customFormula", values: [plainNumberBetween(range)] }
    : { type: "isBetween", values: [String(range.least), String(range.most)] };
}

/** What the engine is told of the color of a sign. */
export function signRule(sign: keyof typeof SIGNS): object {
  return {
    type: "CellIsRule",
    operator: "beginsWithText",
    values: [SIGNS[sign]],
    style: signStyle(SIGN_LOOKS[sign]),
  };
}

/** What the engine is told of rows that a formula grays. */
export function grayRule({ formula }: GrayedPlan): object {
  return {
    type: "CellIsRule",
    operator: "customFormula",
    values: [formula],
    style: signStyle(GRAYED),
  };
}

/** A list with a filter beside its headings, and no look of the engine's own. */
export const FILTER = {
  hasFilters: true,
  totalRow: false,
  firstColumn: false,
  lastColumn: false,
  numberOfHeaders: 1,
  bandedRows: false,
  bandedColumns: false,
  automaticAutofill: false,
  styleId: "None",
} as const;

/** A cell that takes one of some words and nothing else. */
export function allowOnly(model: Model, sheetId: string, at: string, values: readonly string[]): void {
  command(model, "ADD_DATA_VALIDATION_RULE", {
    sheetId,
    ranges: [dataOf(model, sheetId, at)],
    rule: {
      id: newId(),
      isBlocking: true,
      criterion: listCriterion(values),
    },
  });
}

/** The words of a range that the engine has no place for; they stay with its rule. */
export interface RangeWords {
  readonly range?: Pick<RangePlan, "least" | "most" | "title" | "message">;
}

/** Marks a number outside of the range, and lets the person go on. */
export function warnOutside(
  model: Model,
  sheetId: string,
  ranges: readonly RangePlan[],
  isText: (at: string) => boolean,
): void {
  for (const range of joined(ranges.map(fitting), isText)) {
    const { at, least, most, title, message } = range;
    command(model, "ADD_DATA_VALIDATION_RULE", {
      sheetId,
      ranges: [dataOf(model, sheetId, at)],
      rule: {
        id: newId(),
        isBlocking: false,
        criterion: rangeCriterion(range, isText(at)),
        range: { least, most, title, message },
      },
    });
  }
}

/** Cells below each other with the same range as one: the engine copies all its rules for each new one. */
function joined(ranges: readonly RangePlan[], isText: (at: string) => boolean): RangePlan[] {
  const columns: RangePlan[] = [];
  const saysOf = ({ at, ...words }: RangePlan): string => JSON.stringify([isText(at), words]);
  for (const range of ranges) {
    const above = columns.at(-1);
    const [first = "", last = first] = range.at.split(":");
    const [top = "", bottom = top] = above?.at.split(":") ?? [];
    const isBelow =
      above !== undefined && addressOf({ ...placeOf(bottom), row: placeOf(bottom).row + 1 }) === first;
    if (above !== undefined && isBelow && saysOf(above) === saysOf(range)) {
      columns.splice(-1, 1, { ...range, at: `${top}:${last}` });
    } else columns.push(range);
  }
  return columns;
}

/** The engine tells of a number out of range in words of its own; a range of ours has better ones. */
export function tellRanges(model: Model): void {
  const { getters } = model;
  const engines = getters.getInvalidDataValidationMessage;
  getters.getInvalidDataValidationMessage = (position) => {
    const said = engines(position);
    const rule = getters.getValidationRuleForCell(position) as RangeWords | undefined;
    return said === undefined ? undefined : (rule?.range?.message ?? said);
  };
}

export function colorSigns(model: Model, sheetId: string, ranges: readonly string[]): void {
  if (ranges.length === 0) return;
  for (const sign of ["holds", "attention"] as const) {
    command(model, "ADD_CONDITIONAL_FORMAT", {
      sheetId,
      ranges: ranges.map((at) => dataOf(model, sheetId, at)),
      cf: {
        id: `sign-${sign}`,
        rule: signRule(sign),
      },
    });
  }
}

export function grayRows(model: Model, sheetId: string, plans: readonly GrayedPlan[]): void {
  for (const plan of plans) {
    command(model, "ADD_CONDITIONAL_FORMAT", {
      sheetId,
      ranges: [dataOf(model, sheetId, plan.at)],
      cf: { id: newId(), rule: grayRule(plan) },
    });
  }
}

export function offerFilter(model: Model, sheetId: string, at: string | undefined): void {
  if (at === undefined) return;
  command(model, "CREATE_TABLE", {
    sheetId,
    ranges: [dataOf(model, sheetId, at)],
    tableType: "static",
    config: FILTER,
  });
}

function signStyle({ bold, ink, fill }: Style): object {
  return {
    ...(bold === true ? { bold } : {}),
    ...(ink === undefined ? {} : { textColor: ink }),
    ...(fill === undefined ? {} : { fillColor: fill }),
  };
}

/** Never one that was in use: a rule moves with its cells, so an address would name two. */
function newId(): string {
  return new helpers.UuidGenerator().uuidv4();
}

function dataOf(model: Model, sheetId: string, at: string): unknown {
  return model.getters.getRangeDataFromXc(sheetId, at);
}
