/** Reads out of the engine what it keeps beside the cells, wherever the cells have moved. */

import type { Model } from "@odoo/o-spreadsheet";

import type { Snapshot } from "../../files/sheet-state";
import { SIGNS } from "../../sheets/sheet";
import { GRAYED } from "../looks";
import { TEXT_FORMAT } from "../ranges";
import type { RangeWords } from "./rules";
import { rangeOf } from "./zones";

export function rulesOf(
  { getters }: Model,
  sheetId: string,
): Pick<Snapshot, "lists" | "ranges" | "signs" | "grayed"> {
  const rules = getters.getDataValidationRules(sheetId);
  return {
    lists: rules.flatMap(({ criterion, ranges }) =>
      criterion.type === "isValueInList"
        ? ranges.map(({ zone }) => ({ range: rangeOf(zone), allowed: criterion.values }))
        : [],
    ),
    ranges: rules.flatMap((rule) => {
      const { range } = rule as RangeWords;
      if (range === undefined) return [];
      return rule.ranges.map(({ zone }) => {
        const first = getters.getCell({ sheetId, col: zone.left, row: zone.top });
        return { ...range, range: rangeOf(zone), isText: first?.format === TEXT_FORMAT };
      });
    }),
    signs: getters.getConditionalFormats(sheetId).flatMap(({ rule, ranges }) => {
      const isOurs = rule.type === "CellIsRule" && rule.values[0] === SIGNS.holds;
      return isOurs ? ranges : [];
    }),
    grayed: getters.getConditionalFormats(sheetId).flatMap(({ rule, ranges }) => {
      const isOurs =
        rule.type === "CellIsRule" &&
        rule.operator === "customFormula" &&
        rule.style.fillColor === GRAYED.fill;
      if (!isOurs) return [];
      // The engine calls whole rows by their numbers alone.
      const zones = ranges.map((at) => getters.getRangeFromSheetXC(sheetId, at).zone);
      return zones.map((zone) => ({ at: rangeOf(zone), formula: rule.values[0] ?? "" }));
    }),
  };
}
