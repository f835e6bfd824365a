/** The engine's commands. It does not throw when it refuses one; we do, unless all was already as commanded. */

import type { Model } from "@odoo/o-spreadsheet";

export function command(model: Model, type: string, payload: object): void {
  const dispatch = model.dispatch as (
    type: string,
    payload: object,
  ) => { isSuccessful: boolean; reasons: readonly string[] };
  const { isSuccessful, reasons } = dispatch(type, payload);
  if (isSuccessful || reasons.every((reason) => reason === "NoChanges")) return;
  throw new Error(`the sheet refused ${type}: ${reasons.join(", ")}`);
}
