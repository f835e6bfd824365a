/** All cells of the sheet being shown, with their values and what they show. */

import { addressOf } from "../../taskpane/sheets/addresses";
import type { OpenSheet } from "./open-sheet";

export interface Computed {
  readonly at: string;
  readonly value: string | number | boolean;
  readonly text: string;
}

export function computed({ model }: OpenSheet): Computed[] {
  const sheetId = model.getters.getActiveSheetId();
  const { numberOfRows, numberOfCols } = model.getters.getSheetSize(sheetId);
  return Array.from({ length: numberOfRows * numberOfCols }, (_, i) => {
    const [row, col] = [Math.floor(i / numberOfCols), i % numberOfCols];
    const { value, formattedValue } = model.getters.getEvaluatedCell({ sheetId, col, row });
    return { at: addressOf({ column: col, row }), value: value ?? "", text: formattedValue };
  });
}

/** 1-1/2 comes back as 1.5: the same size. */
export function sizeless(content: unknown): unknown {
  const [, whole = "0", above = "0", below = "1"] = /^(?:(\d+)-)?(\d+)\/(\d+)$/.exec(String(content)) ?? [];
  return String(content).includes("/") && above !== "0"
    ? String(Number(whole) + Number(above) / Number(below))
    : content;
}
