/**
 * Inserts a planned sheet: a new one with a free name, the functions known to Excel before any formula is entered, then
 * everything at once. Whatever fails, the half-made sheet is taken away again; nothing of the person's is touched.
 */

import type { SheetPlan } from "../../sheets/sheet";
import { freeName } from "../addresses";
import type { Inserted } from "../host";
import { codeOf, HostFailure, inWords, WORKBOOK_PROTECTED } from "./failure";
import { fillSheet } from "./fill";
import type { Naming } from "./naming";
import { protect } from "./protection";
import type { Pause } from "./registration";
import { waitForFunctions } from "./registration";

const SCRATCH = "A1";

interface Made {
  readonly sheet: Excel.Worksheet;
  readonly name: string;
}

export async function insertSheet(
  plan: SheetPlan,
  naming: Naming,
  pause: Pause,
  withProtection: boolean,
): Promise<Inserted> {
  const made = await inOneUndoStep((merged) => makeSheet(plan, naming, pause, merged));
  const remark = withProtection ? await protectAfterwards(made) : "";
  return { name: made.name, remark };
}

/** One step of Undo where Excel has that; a version that refuses some call in it does without. */
async function inOneUndoStep(make: (merged: boolean) => Promise<Made>): Promise<Made> {
  if (!Office.context.requirements.isSetSupported("ExcelApi", "1.20")) return make(false);
  try {
    return await make(true);
  } catch (problem) {
    if (codeOf((problem as Error).cause) !== "UndoNotSupported") throw problem;
    return make(false);
  }
}

async function makeSheet(plan: SheetPlan, naming: Naming, pause: Pause, merged: boolean): Promise<Made> {
  let made: Made | undefined;
  const options = { delayForCellEdit: true, ...(merged ? { mergeUndoGroup: true } : {}) };
  try {
    return await Excel.run(options, async (context) => {
      const { worksheets, protection } = context.workbook;
      worksheets.load("items/name");
      protection.load("protected");
      await context.sync();
      if (protection.protected) throw new HostFailure(WORKBOOK_PROTECTED);
      const taken = worksheets.items.map(({ name }) => name);
      const name = freeName(plan.title, taken);
      const sheet = worksheets.add(name);
      // A sync with nothing else in it: only a sheet that it made may ever be taken away.
      await context.sync();
      made = { sheet, name };
      sheet.load("id");
      const scratch = sheet.getRange(SCRATCH);
      await waitForFunctions(scratch, naming, pause);
      scratch.clear();
      fillSheet(sheet, plan, naming);
      sheet.activate();
      await context.sync();
      return made;
    });
  } catch (problem) {
    const after = made === undefined ? "" : await takeAway(made);
    throw new HostFailure(`${inWords(problem)}${after}`, { cause: problem });
  }
}

/** Says what became of a half-made sheet. */
async function takeAway(made: Made): Promise<string> {
  try {
    await Excel.run({ delayForCellEdit: true }, async (context) => {
      const sheet = context.workbook.worksheets.getItemOrNullObject(keyOf(made));
      sheet.load("id");
      await context.sync();
      if (!sheet.isNullObject) sheet.delete();
      await context.sync();
    });
    return "; the half-made sheet was removed";
  } catch {
    return `; the half-made sheet “${made.name}” could not be removed: delete it yourself`;
  }
}

/** After the undo step, since protection cannot be undone; without it the sheet is as good. */
async function protectAfterwards(made: Made): Promise<string> {
  try {
    await Excel.run({ delayForCellEdit: true }, async (context) => {
      protect(context.workbook.worksheets.getItem(keyOf(made)));
      await context.sync();
    });
    return "Its computed cells are protected (no password).";
  } catch (problem) {
    return `It could not be protected: ${inWords(problem)}.`;
  }
}

/** How to find the sheet again: by its id, which outlives a new name, or by its name while the id is not known yet. */
function keyOf({ sheet, name }: Made): string {
  try {
    return sheet.id;
  } catch {
    return name;
  }
}
