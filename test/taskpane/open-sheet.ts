/** The browser sheet's engine without a page: a template inserted, read and edited as a person would. */

import type { Model } from "@odoo/o-spreadsheet";

import functionsJson from "../../generated/functions.json";
import type { Units } from "../../src/quantity";
import { command } from "../../taskpane/hosts/browser/commands";
import type { FunctionDefinition } from "../../taskpane/hosts/browser/functions-host";
import { registerFormulas } from "../../taskpane/hosts/browser/functions-host";
import { placeOf } from "../../taskpane/sheets/addresses";
import { BrowserHost } from "../../taskpane/hosts/browser/browser-host";
import { inOneStep, offerSteps } from "../../taskpane/hosts/browser/one-step";
import type { Form } from "../../taskpane/sheets/convert";
import { convert } from "../../taskpane/sheets/convert";
import type { Template } from "../../taskpane/sheets/sheet";
import { SIGNS } from "../../taskpane/sheets/sheet";
import { inserted } from "./inserted";
import { remembered } from "./remembered";

type Value = string | number | boolean;

interface Position {
  readonly sheetId: string;
  readonly col: number;
  readonly row: number;
}

type Content = readonly [at: Position, content: string];

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
  /** Inserts a row above the one of this number. */
  insertRowAt(row: number): void;
  /** Any other command of the engine. */
  command(type: string, payload: object): void;
  undo(): void;
  /** Does something and takes it back, step by step. */
  undone(work: () => void): void;
  /** Inserts a row above the one that lies some rows below a named cell. */
  insertRow(name: string, rows?: number): void;
  /** Value of a cell by its address. */
  at(address: string): Value;
  typeAt(address: string, content: string): void;
  /** Types into some cells, by their addresses, before anything is computed: one step. */
  typeAllAt(contents: readonly (readonly [address: string, content: string])[]): void;
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
  offerSteps();
  const model = await inserted(template, units);
  return wrap(model, new BrowserHost(model));
}

function wrap(model: Model, host: BrowserHost): OpenSheet {
  let steps = 0;
  const form = async (): Promise<Form> => {
    putBack();
    const found = await host.readForm();
    if (found === undefined) throw new Error("no form on this sheet");
    return found;
  };
  // What `having` typed over is put back as soon as anything else looks; the next `having` does so in the step that types
  // its own, so that the sheet is computed once.
  let lent: readonly Content[] = [];
  const putBack = (): void => {
    const contents = lent;
    lent = [];
    putAll(contents);
  };
  const place = (name: string): Position => {
    const sheetId = model.getters.getActiveSheetId();
    const range = model.getters
      .getNamedRanges()
      .find((one) => one.range.sheetId === sheetId && one.name.split("__")[0] === name)?.range;
    if (range === undefined) throw new Error(`no cell is named ${name}`);
    return { sheetId, col: range.zone.left, row: range.zone.top };
  };
  const beside = (name: string, columns: number, rows = 0): Value => {
    putBack();
    const { sheetId, col, row } = place(name);
    return model.getters.getEvaluatedCell({ sheetId, col: col + columns, row: row + rows }).value ?? "";
  };
  const put = (at: Position, content: string): void => {
    const { isSuccessful, reasons } = model.dispatch("UPDATE_CELL", { ...at, content });
    const why = reasons.join(", ");
    if (isSuccessful) steps += 1;
    else if (why !== "NoChanges") throw new Error(`the sheet refused ${content}: ${why}`);
  };
  const putAll = (cells: readonly Content[]): void => {
    if (cells.length === 0) return;
    const before = steps;
    inOneStep(model, () => {
      for (const [at, content] of cells) put(at, content);
    });
    steps = Math.min(steps, before + 1);
  };
  const typeBeside = (name: string, columns: number, rows: number, content: string): void => {
    putBack();
    const { sheetId, col, row } = place(name);
    put({ sheetId, col: col + columns, row: row + rows }, content);
  };
  const position = (address: string): Position => {
    putBack();
    const { column, row } = placeOf(address);
    return { sheetId: model.getters.getActiveSheetId(), col: column, row };
  };
  const rowCommand = (type: string, payload: object): void => {
    putBack();
    const sheetId = model.getters.getActiveSheetId();
    const sheetName = model.getters.getSheetName(sheetId);
    command(model, type, { sheetId, sheetName, dimension: "ROW", ...payload });
    steps += 1;
  };
  const insertRowAt = (row: number): void => {
    rowCommand("ADD_COLUMNS_ROWS", { base: row - 1, quantity: 1, position: "before" });
  };
  const deleteRows = (rows: readonly number[]): void => {
    rowCommand("REMOVE_COLUMNS_ROWS", { elements: rows.map((row) => row - 1) });
  };
  const undo = (): void => {
    putBack();
    command(model, "REQUEST_UNDO", {});
    steps -= 1;
  };
  return {
    get model() {
      putBack();
      return model;
    },
    get host() {
      putBack();
      return host;
    },
    value: (name) => beside(name, 0),
    beside,
    message: (name) => {
      putBack();
      return model.getters.getEvaluatedCell(place(name)).message ?? "";
    },
    type: (name, content) => {
      typeBeside(name, 0, 0, content);
    },
    typeBeside,
    deleteRow: (row) => {
      deleteRows([row]);
    },
    deleteRows,
    command: (type, payload) => {
      putBack();
      command(model, type, { sheetId: model.getters.getActiveSheetId(), ...payload });
      steps += 1;
    },
    undo,
    undone: (work) => {
      putBack();
      const before = steps;
      try {
        work();
      } finally {
        lent = [];
        while (steps > before) undo();
      }
    },
    insertRowAt,
    insertRow: (name, rows = 0) => {
      insertRowAt(place(name).row + rows + 1);
    },
    at: (address) => model.getters.getEvaluatedCell(position(address)).value ?? "",
    typeAt: (address, content) => {
      put(position(address), content);
    },
    typeAllAt: (contents) => {
      putAll(contents.map(([address, content]) => [position(address), content]));
    },
    having: (contents, look) => {
      const typed = Object.entries(contents).map(([name, content]) => [place(name), content] as const);
      const late = lent;
      lent = [];
      const before = typed.map(
        ([at]): Content => contentIn(late, at) ?? [at, model.getters.getCellText(at, { showFormula: true })],
      );
      putAll([...late.filter(([at]) => contentIn(typed, at) === undefined), ...typed]);
      try {
        look();
      } finally {
        lent = [...lent.filter(([at]) => contentIn(before, at) === undefined), ...before];
      }
    },
    holds: () => String(beside("summary", 0)).startsWith(SIGNS.holds),
    convert: async () => {
      putBack();
      const current = await form();
      const conversion = convert(current);
      if ("problem" in conversion) return conversion.problem;
      await host.editForm(current, conversion.edits);
      return "";
    },
    form,
  };
}

/** What is typed into a cell, if it is among those. */
function contentIn(contents: readonly Content[], { col, row }: Position): Content | undefined {
  return contents.find(([at]) => at.col === col && at.row === row);
}

/** The engine reports every command on the console. */
function silenceEngine(): void {
  jest.spyOn(console, "debug").mockImplementation(() => undefined);
}
