/**
 * Excel's interface as far as the host uses it, keeping its two rules: nothing happens before a sync, and nothing can
 * be read that was not loaded. A batch stops at the first call that fails; what came before it stays done. It computes
 * nothing: a formula of ours is known or #NAME?, decided when it is entered, as in Excel.
 */

import { workbook } from "./excel-fake-objects";

export class FakeError extends Error {
  constructor(
    readonly code: string,
    message = code,
  ) {
    super(message);
  }
}

export interface FakeCell {
  formula: string | number | boolean;
  value: unknown;
  type: string;
  format: string;
  /** Look, list and lock, by path: "font.bold", "dataValidation.rule", … */
  readonly style: Map<string, unknown>;
}

export interface FakeConditional {
  readonly range: string;
  readonly kind: string;
  readonly settings: Map<string, unknown>;
}

export interface FakeChart {
  readonly kind: string;
  readonly settings: Map<string, unknown>;
  readonly series: { name: string; values: string; labels: string }[];
}

export class FakeSheet {
  readonly cells = new Map<string, FakeCell>();
  readonly names = new Map<string, string>();
  /** What a name stands for where that is no longer its cells. */
  readonly formulas = new Map<string, string>();
  readonly merged: string[] = [];
  readonly charts: FakeChart[] = [];
  readonly conditionals: FakeConditional[] = [];
  readonly settings = new Map<string, unknown>();
  /** Addresses that a formula's answer fills besides its own, and the address of that formula. */
  readonly spilled = new Map<string, string>();
  /** Every cell that content was typed into, in order. */
  readonly typed: string[] = [];
  protection: { options: object; password?: string } | undefined;

  constructor(
    readonly id: string,
    public name: string,
  ) {}

  cell(at: string): FakeCell {
    const there = this.cells.get(at);
    if (there !== undefined) return there;
    const made: FakeCell = { formula: "", value: "", type: "Empty", format: "General", style: new Map() };
    this.cells.set(at, made);
    return made;
  }
}

export interface FakeRun {
  readonly options: { delayForCellEdit?: boolean; mergeUndoGroup?: boolean };
  readonly calls: string[];
  syncs: number;
}

/** Ways in which real ones are reported to fail, on one platform or another, where the documentation has it otherwise. */
export type Unkindness =
  | "no undo group on the web"
  | "no undo group for many formulas"
  | "no undo group for a new sheet"
  | "no frozen rows"
  | "no names after frozen rows"
  | "another workbook in front"
  | "page width not kept";

const UNKIND_CALLS: readonly {
  readonly reported: Unkindness;
  readonly call: string;
  readonly code: string;
  readonly merged?: true;
}[] = [
  { reported: "no undo group on the web", call: "worksheets.load", code: "GeneralException", merged: true },
  {
    reported: "no undo group for many formulas",
    call: "range.formulas",
    code: "UndoNotSupported",
    merged: true,
  },
  { reported: "no undo group for a new sheet", call: "names.add", code: "GeneralException", merged: true },
  { reported: "no frozen rows", call: "freezePanes.freezeRows", code: "GeneralException" },
  { reported: "another workbook in front", call: "worksheet.activate", code: "InvalidSelection" },
  { reported: "another workbook in front", call: "freezePanes.freezeRows", code: "InvalidSelection" },
  { reported: "another workbook in front", call: "worksheet.showGridlines", code: "GeneralException" },
  { reported: "another workbook in front", call: "charts.add", code: "GeneralException" },
];

/** Calls that Excel cannot undo as part of a group. */
const NOT_UNDOABLE = ["protection.protect", "protection.unprotect", "worksheet.delete"];

export class FakeExcel {
  readonly sheets: FakeSheet[] = [new FakeSheet("id-0", "Sheet1")];
  readonly runs: FakeRun[] = [];
  active = this.sheets[0];
  activeAddress = "A1";
  workbookProtected = false;
  /** How often one of our formulas is entered before Excel knows them. */
  enteredBeforeKnown = 0;
  namespace = "BEAD";
  supported = ["1.9", "1.12", "1.20"];
  /** Calls of this kind fail, with this error. */
  failing: { call: string; error: FakeError } | undefined;
  /** Cells whose formula it does not take, since what it refers to is gone. */
  refused: readonly string[] = [];
  readonly unkind = new Set<Unkindness>();
  calculated = 0;
  /** Who listens to what, by the name of the event. */
  readonly listeners = new Map<string, (() => Promise<void>)[]>();
  #serial = 0;

  /** Puts itself in the place of Excel for the host under test. */
  install(): this {
    const isSetSupported = (_: string, version: string): boolean => this.supported.includes(version);
    const run = (options: FakeRun["options"], work: (context: FakeContext) => Promise<unknown>): unknown => {
      const one: FakeRun = { options, calls: [], syncs: 0 };
      this.runs.push(one);
      return work(new FakeContext(this, one));
    };
    Object.assign(globalThis, { Excel: { run }, Office: { context: { requirements: { isSetSupported } } } });
    return this;
  }

  sheet(name: string): FakeSheet {
    const found = this.sheets.find((one) => one.name === name);
    if (found === undefined) throw new Error(`no sheet ${name}`);
    return found;
  }

  /** By id or by name. */
  find(key: string): FakeSheet | undefined {
    return this.sheets.find(({ id, name }) => id === key || name === key);
  }

  add(name: string): FakeSheet {
    if (this.sheets.some((one) => one.name.toLowerCase() === name.toLowerCase())) {
      throw new FakeError("ItemAlreadyExists");
    }
    if (name.length > 31 || /[:\\/?*[\]]/.test(name)) throw new FakeError("InvalidArgument");
    this.#serial += 1;
    const made = new FakeSheet(`id-${String(this.#serial)}`, name);
    this.sheets.push(made);
    return made;
  }

  enter(sheet: FakeSheet, at: string, content: string | number | boolean): void {
    const cell = sheet.cell(at);
    if (this.refused.includes(at)) throw new FakeError("InvalidArgument");
    sheet.typed.push(at);
    const text = understood(content, cell.format);
    cell.formula = text;
    cell.value = text;
    cell.type = typeof text === "number" ? "Double" : text === "" ? "Empty" : "String";
    const isFormula =
      typeof text === "string" && text === content && text.startsWith("=") && cell.format !== "@";
    if (isFormula && new RegExp(`\\b(${this.namespace}|BEAD)\\.`).test(content)) {
      const known = this.enteredBeforeKnown <= 0 && content.includes(`${this.namespace}.`);
      this.enteredBeforeKnown -= 1;
      cell.value = known ? "0.0.0" : "#NAME?";
      cell.type = known ? "String" : "Error";
    }
  }
}

/** Any date serial: which one does not matter, only that the text is gone. */
const SOME_DAY = 46_024;

/** What Excel makes of an entry: with an apostrophe, or in a cell kept as text, it stays as it is. */
function understood(content: string | number | boolean, format: string): string | number | boolean {
  if (format === "@") return String(content);
  if (typeof content !== "string") return content;
  if (content.startsWith("'")) return content.slice(1);
  if (/^\d+[-/]\d+$/.test(content)) return SOME_DAY;
  return content.trim() !== "" && Number.isFinite(Number(content)) ? Number(content) : content;
}

export class FakeContext {
  readonly workbook: object;
  #queue: (() => void)[] = [];

  constructor(
    readonly excel: FakeExcel,
    readonly run: FakeRun,
  ) {
    this.workbook = workbook(this);
  }

  call(kind: string, work: () => void): void {
    this.#queue.push(() => {
      this.run.calls.push(kind);
      if (this.run.options.mergeUndoGroup === true && NOT_UNDOABLE.includes(kind)) {
        throw new FakeError("UndoNotSupported");
      }
      if (this.excel.failing?.call === kind) throw this.excel.failing.error;
      const unkind = UNKIND_CALLS.find(
        ({ reported, call, merged }) =>
          call === kind &&
          this.excel.unkind.has(reported) &&
          (merged === undefined || this.run.options.mergeUndoGroup === true),
      );
      if (unkind !== undefined) throw new FakeError(unkind.code);
      work();
    });
  }

  sync(): Promise<void> {
    this.run.syncs += 1;
    const queue = this.#queue;
    this.#queue = [];
    return Promise.resolve().then(() => {
      for (const work of queue) work();
    });
  }
}
