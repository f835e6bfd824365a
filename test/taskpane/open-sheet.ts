/** The browser sheet's engine without a page: a template inserted, read and edited as a person would. */

import { Model } from "@odoo/o-spreadsheet";

import functionsJson from "../../generated/functions.json";
import type { Units } from "../../src/quantity";
import type { FunctionDefinition } from "../../taskpane/hosts/browser/functions-host";
import { registerFormulas } from "../../taskpane/hosts/browser/functions-host";
import { placeOf } from "../../taskpane/hosts/addresses";
import { BrowserHost } from "../../taskpane/hosts/browser/browser-host";
import type { Form } from "../../taskpane/sheets/convert";
import { convert } from "../../taskpane/sheets/convert";
import type { Template } from "../../taskpane/sheets/sheet";
import { SIGNS } from "../../taskpane/sheets/sheet";
import { remembered } from "./remembered";

type Value = string | number | boolean;

export interface OpenSheet {
  readonly model: Model;
  readonly host: BrowserHost;
  /** Value of a named cell. */
  value(name: string): Value;
  /** Value of a cell some columns and rows from a named one. */
  beside(name: string, columns: number, rows?: number): Value;
  /** The sentence behind an error in a named cell. */
  message(name: string): string;
  type(name: string, content: string): void;
  typeBeside(name: string, columns: number, rows: number, content: string): void;
  /** Deletes a row by its number, from 1. */
  deleteRow(row: number): void;
  deleteRows(rows: readonly number[]): void;
  undo(): void;
  /** Inserts a row above the one that lies some rows below a named cell. */
  insertRow(name: string, rows?: number): void;
  /** Value of a cell by its address. */
  at(address: string): Value;
  typeAt(address: string, content: string): void;
  /** Looks at the sheet with some named cells typed over, and puts back what was there. */
  having(contents: Readonly<Record<string, string>>, look: () => void): void;
  /** Whether the summary says that all checks hold. */
  holds(): boolean;
  convert(): Promise<string>;
  form(): Promise<Form>;
}

export async function openSheet(template: Template, units: Units): Promise<OpenSheet> {
  silenceEngine();
  const definitions = functionsJson.functions as FunctionDefinition[];
  registerFormulas("BEAD", definitions, remembered);
  const model = new Model({ version: "19.3.0", sheets: [{ id: "scratch", name: "Scratch" }] });
  const host = new BrowserHost(model);
  await host.insert(template.plan(units));
  return wrap(model, host);
}

function wrap(model: Model, host: BrowserHost): OpenSheet {
  const form = async (): Promise<Form> => {
    const found = await host.readForm();
    if (found === undefined) throw new Error("no form on this sheet");
    return found;
  };
  const place = (name: string): { sheetId: string; col: number; row: number } => {
    const sheetId = model.getters.getActiveSheetId();
    const range = model.getters
      .getNamedRanges()
      .find((one) => one.range.sheetId === sheetId && one.name.split("__")[0] === name)?.range;
    if (range === undefined) throw new Error(`no cell is named ${name}`);
    return { sheetId, col: range.zone.left, row: range.zone.top };
  };
  const beside = (name: string, columns: number, rows = 0): Value => {
    const { sheetId, col, row } = place(name);
    return model.getters.getEvaluatedCell({ sheetId, col: col + columns, row: row + rows }).value ?? "";
  };
  const put = (at: { sheetId: string; col: number; row: number }, content: string): void => {
    const { isSuccessful, reasons } = model.dispatch("UPDATE_CELL", { ...at, content });
    const why = reasons.join(", ");
    if (!isSuccessful && why !== "NoChanges") throw new Error(`the sheet refused ${content}: ${why}`);
  };
  const typeBeside = (name: string, columns: number, rows: number, content: string): void => {
    const { sheetId, col, row } = place(name);
    put({ sheetId, col: col + columns, row: row + rows }, content);
  };
  const position = (address: string): { sheetId: string; col: number; row: number } => {
    const { column, row } = placeOf(address);
    return { sheetId: model.getters.getActiveSheetId(), col: column, row };
  };
  const deleteRows = (rows: readonly number[]): void => {
    const sheetId = model.getters.getActiveSheetId();
    const sheetName = model.getters.getSheetName(sheetId);
    const elements = rows.map((row) => row - 1);
    done(
      model.dispatch("REMOVE_COLUMNS_ROWS", { sheetId, sheetName, dimension: "ROW", elements }),
      `the deletion of rows ${rows.join(", ")}`,
    );
  };
  return {
    model,
    host,
    value: (name) => beside(name, 0),
    beside,
    message: (name) => model.getters.getEvaluatedCell(place(name)).message ?? "",
    type: (name, content) => {
      typeBeside(name, 0, 0, content);
    },
    typeBeside,
    deleteRow: (row) => {
      deleteRows([row]);
    },
    deleteRows,
    undo: () => {
      done(model.dispatch("REQUEST_UNDO"), "undo");
    },
    insertRow: (name, rows = 0) => {
      const { sheetId, row } = place(name);
      model.dispatch("ADD_COLUMNS_ROWS", {
        sheetId,
        sheetName: model.getters.getSheetName(sheetId),
        dimension: "ROW",
        base: row + rows,
        quantity: 1,
        position: "before",
      });
    },
    at: (address) => model.getters.getEvaluatedCell(position(address)).value ?? "",
    typeAt: (address, content) => {
      put(position(address), content);
    },
    having: (contents, look) => {
      const all = Object.entries(contents);
      const before = all.map(([name]) => model.getters.getCellText(place(name), { showFormula: true }));
      all.forEach(([name, content]) => {
        typeBeside(name, 0, 0, content);
      });
      try {
        look();
      } finally {
        all.forEach(([name], i) => {
          typeBeside(name, 0, 0, before[i] ?? "");
        });
      }
    },
    holds: () => String(beside("summary", 0)).startsWith(SIGNS.holds),
    convert: async () => {
      const current = await form();
      const conversion = convert(current);
      if ("problem" in conversion) return conversion.problem;
      await host.editForm(current, conversion.edits);
      return "";
    },
    form,
  };
}

function done(
  { isSuccessful, reasons }: { isSuccessful: boolean; reasons: readonly string[] },
  what: string,
): void {
  if (!isSuccessful) throw new Error(`the sheet refused ${what}: ${reasons.join(", ")}`);
}

/** The engine reports every command on the console. */
function silenceEngine(): void {
  jest.spyOn(console, "debug").mockImplementation(() => undefined);
}
