/**
 * A ready sheet computed by a second, independent spreadsheet engine (HyperFormula), which is never shipped: what is typed is
 * taken over from the browser sheet, everything else is its formulas.
 */

import { HyperFormula } from "hyperformula";

import { placeOf } from "../../taskpane/sheets/addresses";
import type { SheetPlan } from "../../taskpane/sheets/sheet";
import { filledBy, formulasOf } from "./graph";
import type { OpenSheet } from "./open-sheet";
import { around, PLUGINS } from "./second-engine-functions";

export type Value = string | number | boolean;

for (const plugin of PLUGINS) {
  const names = Object.keys(plugin.implementedFunctions);
  HyperFormula.registerFunctionPlugin(plugin, {
    enGB: Object.fromEntries(names.map((name) => [name, name])),
  });
}

/** What the second engine gives for each formula of the plan and each cell that one fills, by address. */
export function computedAgain(plan: SheetPlan, sheet: OpenSheet): Map<string, Value> {
  const formulas = formulasOf(plan);
  around.now = { sizes: sizesIn(sheet, [...formulas.keys()]), formulas: new Set(formulas.keys()) };
  const filled = filledBy(sheet, plan);
  const rows = plan.cells.map((): (Value | null)[] => []);
  for (const { at } of plan.cells) {
    const { column, row } = placeOf(at);
    const line = rows[row] ?? [];
    if (filled.has(at)) continue;
    const typed = sheet.at(at);
    line[column] =
      dialect(formulas.get(at)) ?? (typeof typed === "string" ? (typed === "" ? null : `'${typed}`) : typed);
  }
  const engine = HyperFormula.buildFromArray(
    Array.from(rows, (row) => Array.from(row, (cell) => cell ?? null)),
    { licenseKey: "gpl-v3", useArrayArithmetic: true, smartRounding: false },
  );
  const values = new Map<string, Value>();
  for (const at of [...formulas.keys(), ...filled.keys()]) {
    const { column: col, row } = placeOf(at);
    const value = engine.getCellValue({ sheet: 0, col, row });
    // A formula that points at a blank cell gives 0 in every other spreadsheet.
    values.set(at, value === null ? 0 : typeof value === "object" ? value.value : value);
  }
  engine.destroy();
  return values;
}

/** The engine has TRUE as a function alone, and reads no power of ten in a number. */
function dialect(formula: string | undefined): string | undefined {
  return formula
    ?.split(/("(?:[^"]|"")*")/)
    .map((part, i) =>
      i % 2 === 1
        ? part
        : part
            .replace(/\b(TRUE|FALSE)\b(?!\()/g, "$1()")
            .replace(/\b\d+E-(\d+)\b/g, (number, power: string) => Number(number).toFixed(Number(power))),
    )
    .join("");
}

function sizesIn({ model }: OpenSheet, anchors: readonly string[]): Map<string, readonly [number, number]> {
  const sheetId = model.getters.getActiveSheetId();
  return new Map(
    anchors.flatMap((at) => {
      const { column, row } = placeOf(at);
      const zone = model.getters.getSpreadZone({ sheetId, col: column, row });
      if (zone === undefined) return [];
      return [[at, [zone.bottom - zone.top + 1, zone.right - zone.left + 1] as const] as const];
    }),
  );
}
