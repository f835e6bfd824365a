/** The browser sheet as a host: writes through the engine's commands, reads through its getters. */

import type { Model } from "@odoo/o-spreadsheet";

import type { Units } from "../../../src/quantity";
import { NAME_MARK } from "../../files/spoken";
import { TEMPLATES } from "../../sheets";
import type { Block, ShownForm } from "../../pictures/cells";
import type { Edit, Form, FormCell } from "../../sheets/convert";
import type { SheetPlan } from "../../sheets/sheet";
import { formName, UNITS_NAME } from "../../sheets/sheet";
import { addressOf, freeName, placeOf } from "../../sheets/addresses";
import type { Host, Inserted, Repaired, SelectedCell } from "../host";
import { TEXT_FORMAT } from "../ranges";
import { boundHistory } from "./bounded-history";
import { command } from "./commands";
import { copyFormNames } from "./duplicate";
import { nextSerial } from "./form-names";
import { namedCells } from "./named-cells";
import { offerGroupBy } from "./group-by";
import { inOneStep, offerSteps } from "./one-step";
import { allowOnly, tellRanges, warnOutside } from "./rules";
import { keepTypedCells } from "./typed-cells";
import { offerChanges } from "./workbook/changes";
import { writeSheet } from "./write-sheet";

keepTypedCells();
offerChanges();
offerSteps();
boundHistory();
copyFormNames();
offerGroupBy();

export class BrowserHost implements Host {
  readonly label = "this browser sheet";
  readonly canProtect = false;
  readonly troubles = {
    repair: "If a Ringbead formula shows #NAME? or #BAD_EXPR, this re-enters it unchanged.",
    recalculate: "If cells show old numbers, this recalculates them.",
  };
  readonly #listeners: (() => void)[] = [];
  #model: Model;

  constructor(model: Model) {
    this.#model = model;
    this.attend(model);
  }

  /** From now on this workbook is the one that is read and written. */
  attend(model: Model): void {
    this.#model = model;
    tellRanges(model);
    model.on("update", this, () => {
      this.#notify();
    });
    this.#notify();
  }

  insert(plan: SheetPlan): Promise<Inserted> {
    const name = freeName(plan.title, this.#sheetNames());
    const serial = nextSerial(this.#model.getters.getNamedRanges().map(({ name: one }) => one));
    const sheetId = `ringbead-${String(serial)}-${String(Date.now())}`;
    inOneStep(this.#model, () => {
      writeSheet(this.#model, plan, { sheetId, name, serial });
    });
    this.#do("ACTIVATE_SHEET", { sheetIdFrom: this.#activeSheet(), sheetIdTo: sheetId });
    return Promise.resolve({ name, remark: "" });
  }

  readForm(): Promise<Form | undefined> {
    const sheetId = this.#activeSheet();
    const cells = new Map<string, FormCell[]>();
    for (const { name, range } of this.#model.getters.getNamedRanges()) {
      if (range.sheetId !== sheetId || range.invalidXc !== undefined) continue;
      cells.set(name.split(NAME_MARK)[0] ?? name, this.#cellsIn(sheetId, range.zone));
    }
    const template = TEMPLATES.find(({ id }) => cells.has(formName(id)));
    const units = cells.get(UNITS_NAME)?.[0]?.content;
    const isForm = template !== undefined && (units === "US" || units === "SI");
    return Promise.resolve(isForm ? { template, units, cells } : undefined);
  }

  editForm(form: Form, edits: readonly Edit[]): Promise<void> {
    const sheetId = this.#activeSheet();
    const unitsAt = form.cells.get(UNITS_NAME)?.[0]?.at;
    inOneStep(this.#model, () => {
      this.#edit(sheetId, unitsAt, edits);
    });
    return Promise.resolve();
  }

  #edit(sheetId: string, unitsAt: string | undefined, edits: readonly Edit[]): void {
    for (const { at, content, format } of edits) {
      if (at === unitsAt && content !== undefined) allowOnly(this.#model, sheetId, at, [String(content)]);
      const { column, row } = placeOf(at);
      const position = { sheetId, col: column, row };
      // Apart from its content: a format that comes with a content is no reason to change that of a typed cell.
      if (format !== undefined) this.#do("UPDATE_CELL", { ...position, format });
      if (content !== undefined) this.#do("UPDATE_CELL", { ...position, content: String(content) });
    }
    const ranges = edits.flatMap(({ range }) => range ?? []);
    warnOutside(this.#model, sheetId, ranges, (at) => {
      const { column, row } = placeOf(at.replace(/:.*$/, ""));
      return this.#model.getters.getCell({ sheetId, col: column, row })?.format === TEXT_FORMAT;
    });
  }

  selectedCell(): Promise<SelectedCell | undefined> {
    const position = this.#model.getters.getActivePosition();
    const shown = this.#model.getters.getEvaluatedCell(position);
    const own = this.#model.getters.getCell(position)?.isFormula === true ? position : undefined;
    const first = own ?? this.#model.getters.getArrayFormulaSpreadingOn(position);
    return Promise.resolve({
      address: addressOf({ column: position.col, row: position.row }),
      formula: first === undefined ? "" : this.#model.getters.getCellText(first, { showFormula: true }),
      filled:
        first === undefined || own !== undefined
          ? undefined
          : {
              from: addressOf({ column: first.col, row: first.row }),
              row: position.row - first.row + 1,
              column: position.col - first.col + 1,
            },
      shown: shown.formattedValue,
      message: shown.message ?? "",
      units: this.unitsShown(),
    });
  }

  /** The system of the form on the sheet being shown. */
  unitsShown(): Units | undefined {
    const sheetId = this.#activeSheet();
    const found = this.#model.getters
      .getNamedRanges()
      .find(({ name, range }) => range.sheetId === sheetId && name.split(NAME_MARK)[0] === UNITS_NAME);
    if (found === undefined || found.range.invalidXc !== undefined) return undefined;
    const { left: col, top: row } = found.range.zone;
    const { value } = this.#model.getters.getEvaluatedCell({ sheetId, col, row });
    return value === "US" || value === "SI" ? value : undefined;
  }

  textsAt(addresses: readonly string[]): Promise<string[]> {
    const sheetId = this.#activeSheet();
    return Promise.resolve(
      addresses.map((at) => {
        const { column: col, row } = placeOf(at);
        return this.#model.getters.getEvaluatedCell({ sheetId, col, row }).formattedValue;
      }),
    );
  }

  namedCells(blocks: readonly Block[]): Promise<ShownForm | undefined> {
    return Promise.resolve(namedCells(this.#model, blocks));
  }

  putFormula(formula: string): Promise<boolean> {
    const position = this.#model.getters.getActivePosition();
    if (this.#model.getters.getEvaluatedCell(position).formattedValue !== "") return Promise.resolve(false);
    this.#do("UPDATE_CELL", { ...position, content: formula });
    return Promise.resolve(true);
  }

  repairFormulas(): Promise<Repaired> {
    const sheetId = this.#activeSheet();
    const ours = this.#model.getters.getCells(sheetId).flatMap((cell) => {
      const position = this.#model.getters.getCellPosition(cell.id);
      const content = this.#model.getters.getCellText(position, { showFormula: true });
      return cell.isFormula && /\bBEAD\./i.test(content) ? [{ position, content }] : [];
    });
    inOneStep(this.#model, () => {
      for (const { position, content } of ours) this.#do("UPDATE_CELL", { ...position, content });
    });
    this.#do("EVALUATE_CELLS", {});
    return Promise.resolve({ count: ours.length, refused: [] });
  }

  recalculate(): Promise<void> {
    this.#do("EVALUATE_CELLS", {});
    return Promise.resolve();
  }

  functionsVersion(): Promise<string | undefined> {
    const version = this.#model.getters.evaluateFormula(this.#activeSheet(), "=BEAD.VERSION()");
    return Promise.resolve(typeof version === "string" ? version : undefined);
  }

  onChange(listener: () => void): void {
    this.#listeners.push(listener);
  }

  /** The engine's id of the sheet being shown. */
  sheetShown(): string {
    return this.#activeSheet();
  }

  showsForm(): boolean {
    const sheetId = this.#activeSheet();
    return this.#model.getters
      .getNamedRanges()
      .some(({ name, range }) => range.sheetId === sheetId && name.startsWith("form_"));
  }

  #notify(): void {
    for (const listener of this.#listeners) listener();
  }

  #do(type: string, payload: object): void {
    command(this.#model, type, payload);
  }

  #activeSheet(): string {
    return this.#model.getters.getActiveSheetId();
  }

  #sheetNames(): string[] {
    return this.#model.getters.getSheetIds().map((id) => this.#model.getters.getSheetName(id));
  }

  #cellsIn(sheetId: string, zone: { left: number; top: number; bottom: number }): FormCell[] {
    const cells: FormCell[] = [];
    for (let row = zone.top; row <= zone.bottom; row += 1) {
      const position = { sheetId, col: zone.left, row };
      const formula = this.#model.getters.getCell(position)?.isFormula === true;
      const content = formula
        ? this.#model.getters.getCellText(position, { showFormula: true })
        : (this.#model.getters.getEvaluatedCell(position).value ?? "");
      cells.push({ at: addressOf({ column: zone.left, row }), content });
    }
    return cells;
  }
}
