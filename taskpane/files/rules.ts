/** What a file keeps beside the cells: words that a cell takes, ranges of typed numbers, colors of signs. */

import type { CellStyle, ConditionalRule, DataValidation } from "hucre/xlsx";

import type { Style } from "../hosts/looks";
import { GRAYED, SIGN_LOOKS } from "../hosts/looks";
import { plainNumberBetween } from "../hosts/ranges";
import { beginsWith } from "../hosts/signs";
import { SIGNS } from "../sheets/sheet";
import type { Snapshot, SnapshotRange } from "./sheet-state";
import { storedText } from "./text";

/** Characters that Excel takes; it repairs a file that has more. */
const LONGEST_LIST = 255;
const LONGEST = { title: 32, message: 255 } as const;

export function fileValidations({ lists, ranges }: Snapshot): DataValidation[] {
  return [
    ...lists
      .filter(({ allowed }) => allowed.join(",").length <= LONGEST_LIST)
      .map(({ range, allowed }): DataValidation => ({
        type: "list",
        range,
        values: allowed.map(storedText),
        allowBlank: true,
        showErrorMessage: true,
      })),
    ...ranges.map(fileRange),
  ];
}

function fileRange({ range, least, most, title, message, isText }: SnapshotRange): DataValidation {
  const rule: Pick<DataValidation, "type" | "operator" | "formula1" | "formula2"> = isText
    ? { type: "custom", formula1: plainNumberBetween({ at: range, least, most }).slice(1) }
    : { type: "decimal", operator: "between", formula1: String(least), formula2: String(most) };
  return {
    ...rule,
    range,
    allowBlank: true,
    showErrorMessage: true,
    errorStyle: "warning",
    errorTitle: storedText(title.slice(0, LONGEST.title)),
    errorMessage: storedText(message.slice(0, LONGEST.message)),
  };
}

/** A rule for each range and sign: with several ranges in one rule, readers differ in what its formula starts from. */
export function fileColors({ signs, grayed }: Snapshot): ConditionalRule[] {
  const all = [
    ...signs.flatMap((range) =>
      (["holds", "attention"] as const).map((sign) => ({
        range,
        formula: beginsWith(range, SIGNS[sign]),
        style: ruleStyle(SIGN_LOOKS[sign]),
      })),
    ),
    ...grayed.map(({ at, formula }) => ({
      range: at,
      formula: storedText(formula.slice(1)),
      style: ruleStyle(GRAYED),
    })),
  ];
  return all.map((rule, i) => ({ type: "expression", priority: i + 1, ...rule }));
}

/** In such a style Excel takes the background of a solid fill, other readers its foreground. */
function ruleStyle({ bold, ink, fill }: Style): CellStyle {
  return {
    font: {
      ...(bold === true ? { bold } : {}),
      ...(ink === undefined ? {} : { color: rgb(ink) }),
    },
    ...(fill === undefined
      ? {}
      : { fill: { type: "pattern", pattern: "solid", fgColor: rgb(fill), bgColor: rgb(fill) } }),
  };
}

export function rgb(color: string): { rgb: string } {
  return { rgb: color.replace("#", "").toUpperCase() };
}
