/** Excel as a host. Formulas go in as `range.formulas`, which take English names, commas and points in every locale. */

import type { Block, ShownForm } from "../../pictures/cells";
import type { Edit, Form } from "../../sheets/convert";
import type { SheetPlan } from "../../sheets/sheet";
import { placeOf } from "../../sheets/addresses";
import { HostFailure, inWords } from "./failure";
import { editForm, readForm, unitsOn } from "./form";
import { insertSheet } from "./insert";
import { namedCells } from "./named-cells";
import { Naming } from "./naming";
import type { Associated } from "./reason";
import { reasonOf } from "./reason";
import type { Pause } from "./registration";
import { repairFormulas } from "./repair";
import { spillParentOf } from "./spill";
import { bareAddress, firstOf, isError } from "./values";
import type { Host, Inserted, InsertOptions, Repaired, SelectedCell } from "../host";

export interface ExcelSettings {
  /** Under which name this Excel knows the formulas; BEAD unless it is an add-in under development. */
  readonly namespace?: string;
  /** The functions that run in this page, by id. */
  readonly functions?: ReadonlyMap<string, Associated>;
  readonly pause?: Pause;
}

const WHEN_NOT_TYPING = { delayForCellEdit: true };

export class ExcelHost implements Host {
  readonly label = "Excel";
  readonly canProtect = true;
  readonly troubles = {
    repair: "If cells show #NAME? or their formulas begin with _xldudf_, this re-enters them unchanged.",
    recalculate:
      "If cells show #BUSY! or old numbers, repair first; if that does not help, this recalculates them.",
  };
  readonly #naming: Naming;
  readonly #functions: ReadonlyMap<string, Associated>;
  readonly #pause: Pause;

  constructor({ namespace, functions = new Map(), pause = sleep }: ExcelSettings = {}) {
    this.#naming = new Naming(namespace);
    this.#functions = functions;
    this.#pause = pause;
  }

  insert(plan: SheetPlan, { protect = false, say = () => undefined }: InsertOptions = {}): Promise<Inserted> {
    return insertSheet(plan, this.#naming, { pause: this.#pause, say }, protect);
  }

  readForm(): Promise<Form | undefined> {
    return inExcel((context) => readForm(context, this.#naming));
  }

  editForm(form: Form, edits: readonly Edit[]): Promise<void> {
    return inExcel((context) => editForm(context, form, edits, this.#naming));
  }

  selectedCell(): Promise<SelectedCell | undefined> {
    return inExcel(async (context) => {
      const cell = context.workbook.getActiveCell();
      cell.load("address,formulas,text,valueTypes");
      const parent = spillParentOf(cell);
      parent?.load("address,formulas");
      await context.sync();
      const address = bareAddress(cell.address);
      const from = parent === undefined || parent.isNullObject ? address : bareAddress(parent.address);
      const filled = from === address ? undefined : placeWithin(from, address);
      const own = filled === undefined || parent === undefined ? cell.formulas : parent.formulas;
      const content = this.#naming.toPlan(String(firstOf(own)));
      const formula = content.startsWith("=") ? content : "";
      return {
        address,
        formula,
        shown: String(firstOf(cell.text)),
        message: isError(cell) ? await reasonOf(formula, cell.worksheet, this.#functions) : "",
        units: formula === "" ? undefined : await unitsOn(cell.worksheet),
        ...(filled === undefined ? {} : { filled }),
      };
    });
  }

  textsAt(addresses: readonly string[]): Promise<string[]> {
    return inExcel(async (context) => {
      const sheet = context.workbook.worksheets.getActiveWorksheet();
      const ranges = addresses.map((at) => {
        const range = sheet.getRange(at);
        range.load("text");
        return range;
      });
      await context.sync();
      return ranges.map(({ text }) => String(firstOf(text)));
    });
  }

  namedCells(blocks: readonly Block[]): Promise<ShownForm | undefined> {
    return inExcel((context) => namedCells(context, blocks));
  }

  putFormula(formula: string): Promise<boolean> {
    return inExcel(async (context) => {
      const cell = context.workbook.getActiveCell();
      cell.load("formulas");
      await context.sync();
      if (firstOf(cell.formulas) !== "") return false;
      cell.formulas = [[this.#naming.toExcel(formula)]];
      await context.sync();
      return true;
    });
  }

  repairFormulas(): Promise<Repaired> {
    return inExcel((context) => repairFormulas(context, this.#naming));
  }

  recalculate(): Promise<void> {
    return inExcel(async (context) => {
      context.workbook.worksheets.getActiveWorksheet().calculate(true);
      await context.sync();
    });
  }

  functionsVersion(): Promise<string | undefined> {
    const version = this.#functions.get("VERSION")?.();
    return Promise.resolve(typeof version === "string" ? version : undefined);
  }

  onChange(listener: () => void): void {
    const notify = (): Promise<void> => {
      listener();
      return Promise.resolve();
    };
    void inExcel(async (context) => {
      context.workbook.onSelectionChanged.add(notify);
      const { worksheets } = context.workbook;
      worksheets.onCalculated.add(notify);
      // A cell that no formula reads is typed, and a sheet shown, without anything being calculated.
      worksheets.onChanged.add(notify);
      worksheets.onActivated.add(notify);
      await context.sync();
    });
  }
}

/** Row and column of a cell, from 1, within the answer that begins at another. */
function placeWithin(from: string, at: string): NonNullable<SelectedCell["filled"]> {
  const [first, here] = [placeOf(from), placeOf(at)];
  return { from, row: here.row - first.row + 1, column: here.column - first.column + 1 };
}

/** Waits while a cell is being edited; a failure comes out in words. */
async function inExcel<Result>(work: (context: Excel.RequestContext) => Promise<Result>): Promise<Result> {
  try {
    return await Excel.run(WHEN_NOT_TYPING, work);
  } catch (problem) {
    throw new HostFailure(inWords(problem), { cause: problem });
  }
}

function sleep(milliseconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, milliseconds));
}
