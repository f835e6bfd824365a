/** What the pane asks of the spreadsheet it stands beside, whichever that is. */

import type { Units } from "../../src/quantity";
import type { Block, ShownForm } from "../pictures/cells";
import type { Edit, Form } from "../sheets/convert";
import type { SheetPlan } from "../sheets/sheet";

export interface SelectedCell {
  readonly address: string;
  /** The formula with its =, or "": its own, or the one that fills it. */
  readonly formula: string;
  /** What the cell shows. */
  readonly shown: string;
  /** The sentence behind an error, where the host keeps it. */
  readonly message: string;
  /** Where the cell is part of a larger answer: the cell whose formula fills it, and its place in the answer from 1. */
  readonly filled?: { readonly from: string; readonly row: number; readonly column: number } | undefined;
  /** The system of the form on the sheet it stands on; undefined on any other sheet. */
  readonly units?: Units | undefined;
}

export interface InsertOptions {
  /** Guard the computed cells against slips, without a password. */
  readonly protect?: boolean;
  /** Tells the person what is being waited for. */
  readonly say?: (text: string) => void;
}

export interface Inserted {
  readonly name: string;
  /** What else a person should know, in a sentence, or "". */
  readonly remark: string;
}

export interface Repaired {
  /** How many formulas were entered again. */
  readonly count: number;
  /** Addresses of those that the program did not take. */
  readonly refused: readonly string[];
}

export interface Host {
  /** How the pane speaks of the program it stands in. */
  readonly label: string;
  readonly canProtect: boolean;
  /** When cells do not compute, in the words of the program. */
  readonly troubles: { readonly repair: string; readonly recalculate: string };
  /** Writes a new sheet and shows it, or none at all; never touches one that is there. */
  insert(plan: SheetPlan, options?: InsertOptions): Promise<Inserted>;
  /** The form on the sheet being shown, or undefined where that sheet is none of ours. */
  readForm(): Promise<Form | undefined>;
  editForm(form: Form, edits: readonly Edit[]): Promise<void>;
  selectedCell(): Promise<SelectedCell | undefined>;
  /** What cells of the sheet being shown show. */
  textsAt(addresses: readonly string[]): Promise<string[]>;
  /** Named cells of the form being shown; undefined where that sheet is none of ours. */
  namedCells(blocks: readonly Block[]): Promise<ShownForm | undefined>;
  /** Puts a formula into the selected cell if it is empty; false where it is not. */
  putFormula(formula: string): Promise<boolean>;
  /** Enters our formulas on the sheet being shown once more. */
  repairFormulas(): Promise<Repaired>;
  /** Recalculates the sheet being shown. */
  recalculate(): Promise<void>;
  /** Version of the functions that are running, where that can be told. */
  functionsVersion(): Promise<string | undefined>;
  /** Calls back when another cell or sheet is selected or a value may have changed. */
  onChange(listener: () => void): void;
}
