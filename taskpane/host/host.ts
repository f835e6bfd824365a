/** What the pane asks of the spreadsheet it stands beside, whichever that is. */

import type { Edit, Form } from "../templates/convert";
import type { SheetPlan } from "../templates/sheet";

export interface SelectedCell {
  readonly address: string;
  /** The formula with its =, or "". */
  readonly formula: string;
  /** What the cell shows. */
  readonly shown: string;
  /** The sentence behind an error, where the host keeps it. */
  readonly message: string;
}

export interface Host {
  /** How the pane speaks of the program it stands in. */
  readonly label: string;
  /** Writes a new sheet and shows it; never touches one that is there. Gives the sheet's name. */
  insert(plan: SheetPlan): Promise<string>;
  /** The form on the sheet being shown, or undefined where that sheet is none of ours. */
  readForm(): Promise<Form | undefined>;
  editForm(form: Form, edits: readonly Edit[]): Promise<void>;
  selectedCell(): Promise<SelectedCell | undefined>;
  /** Puts a formula into the selected cell if it is empty; false where it is not. */
  putFormula(formula: string): Promise<boolean>;
  /** Calls back when another cell is selected or a value may have changed. */
  onChange(listener: () => void): void;
}
