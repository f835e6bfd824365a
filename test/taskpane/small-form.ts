/** A form of a few cells with everything that a host carries besides contents, and the engine with it on a sheet. */

import { Model } from "@odoo/o-spreadsheet";

import type { Units } from "../../src/quantity";
import { CURRENT, LENGTH } from "../../src/quantity";
import { placeOf } from "../../taskpane/sheets/addresses";
import { BrowserHost } from "../../taskpane/hosts/browser/browser-host";
import type { CellPlan, RangePlan, SheetPlan, Template } from "../../taskpane/sheets/sheet";

/** The engine groups commands with it when cells are pasted: browsers have it, and Node from 21 on. */
/** Invented limits, a round number in each system. */
const LIMITS = {
  US: { od: [0.25, 12], wall: [0.02, 0.5], unit: "in" },
  SI: { od: [6, 300], wall: [0.5, 12], unit: "mm" },
} as const;

function between(
  at: string,
  [least, most]: readonly [number, number],
  what: string,
  unit: string,
): RangePlan {
  return {
    at,
    least,
    most,
    title: what,
    message: `${what} outside of ${String(least)} to ${String(most)} ${unit}`,
  };
}

export function smallPlan(units: Units): SheetPlan {
  const format = units === "US" ? "0.0000" : "0.000";
  const { od, wall, unit } = LIMITS[units];
  const typed = (row: number): CellPlan[] => [
    { at: `B${String(row)}`, content: "", look: "input", format: "@" },
    { at: `C${String(row)}`, content: "", look: "input", format: "0.0" },
  ];
  const verdict = (at: string, condition: string): CellPlan => ({
    at,
    content: `=IF(${condition},"✓ holds","▲ needs attention")`,
    look: "verdict",
  });
  return {
    template: "procedure",
    title: "Small form",
    units,
    widths: [20, 12, 12, 30],
    cells: [
      { at: "A1", content: "Small form", look: "title" },
      { at: "B2", content: units, look: "locked" },
      { at: "C2", content: units, look: "note" },
      { at: "B4", content: units === "US" ? "1-1/2" : "38.1", look: "input", format: "@" },
      { at: "B5", content: units === "US" ? 0.065 : 1.65, look: "input", format },
      { at: "B6", content: 3, look: "input" },
      { at: "B7", content: "J-12", look: "inputText" },
      verdict("D4", "B5>0"),
      verdict("D5", "B6>10"),
      ...[10, 11, 12].flatMap(typed),
      { at: "A20", content: "Ringbead", look: "note" },
    ],
    names: [
      { name: "sheet_units", at: "B2", input: false },
      { name: "units_set", at: "C2", input: false },
      { name: "od", at: "B4", quantity: LENGTH, input: true },
      { name: "wall", at: "B5", quantity: LENGTH, input: true },
      { name: "count", at: "B6", input: true },
      { name: "job", at: "B7", input: true },
      { name: "list_od", at: "B10:B12", quantity: LENGTH, input: true },
      { name: "list_amps", at: "C10:C12", quantity: CURRENT, input: true },
      { name: "form_procedure", at: "A20", input: false },
    ],
    lists: [],
    ranges: [
      between("B4", od, "Outside diameter", unit),
      between("B5", wall, "Wall", unit),
      between("B10:B12", od, "Outside diameter", unit),
      between("C10:C12", [5, 200], "Current", "A"),
    ],
    signs: ["D4:D5"],
    charts: [],
    frozenRows: 0,
    print: { area: "A1:D20", paper: "form" },
  };
}

export const SMALL: Template = {
  id: "procedure",
  title: "Small form",
  plan: smallPlan,
};

export interface Position {
  readonly sheetId: string;
  readonly col: number;
  readonly row: number;
}

export interface SmallSheet {
  readonly model: Model;
  readonly host: BrowserHost;
  readonly position: (at: string) => Position;
  /** As a person types it: the sheet's editor hands a date's format over with the content. */
  readonly type: (at: string, content: string, format?: string) => void;
  readonly value: (at: string) => unknown;
  readonly shown: (at: string) => string;
  readonly format: (at: string) => string | undefined;
}

export async function openSmall(plan: SheetPlan = smallPlan("US")): Promise<SmallSheet> {
  // The engine reports every command on the console.
  jest.spyOn(console, "debug").mockImplementation(() => undefined);
  const model = new Model({ version: "19.3.0", sheets: [{ id: "scratch", name: "Scratch" }] });
  const host = new BrowserHost(model);
  await host.insert(plan);
  const { getters } = model;
  const position = (at: string): Position => {
    const { column, row } = placeOf(at);
    return { sheetId: getters.getActiveSheetId(), col: column, row };
  };
  return {
    model,
    host,
    position,
    type: (at, content, format) => {
      const given = format === undefined ? {} : { format };
      model.dispatch("UPDATE_CELL", { ...position(at), content, ...given });
    },
    value: (at) => getters.getEvaluatedCell(position(at)).value,
    shown: (at) => getters.getEvaluatedCell(position(at)).formattedValue,
    format: (at) => getters.getCell(position(at))?.format,
  };
}
