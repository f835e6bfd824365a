/**
 * Inserts a planned sheet: a new one with a free name, the functions known to Excel before any formula is entered, then
 * everything it cannot be without at once, then what it can. Whatever fails, the half-made sheet is taken away again;
 * nothing of the person's is touched.
 */

import type { SheetPlan } from "../../sheets/sheet";
import { freeName } from "../../sheets/addresses";
import type { Inserted } from "../host";
import { HostFailure, inWords, isPersons, WORKBOOK_PROTECTED } from "./failure";
import { fillSheet } from "./fill";
import type { Naming } from "./naming";
import type { Refused } from "./niceties";
import { addNiceties, nicetiesOf, refusedInWords } from "./niceties";
import { protect } from "./protection";
import type { Waiting } from "./registration";
import { waitForFunctions } from "./registration";

const SCRATCH = "A1";

interface Made {
  readonly sheet: Excel.Worksheet;
  readonly name: string;
}

interface Finished extends Made {
  readonly refused: readonly Refused[];
}

export async function insertSheet(
  plan: SheetPlan,
  naming: Naming,
  waiting: Waiting,
  withProtection: boolean,
): Promise<Inserted> {
  const made = await inOneUndoStep((merged) => makeSheet(plan, naming, waiting, merged));
  const remarks = [refusedInWords(made.refused), withProtection ? await protectAfterwards(made) : ""];
  return { name: made.name, remark: remarks.filter((remark) => remark !== "").join(" ") };
}

/**
 * One step of Undo where Excel has that. It is reported to fail in many ways that the same calls without it do not, so
 * after any failure but a person's, all or what is missing is done once more without.
 */
async function inOneUndoStep(make: (merged: boolean) => Promise<Finished>): Promise<Finished> {
  if (!Office.context.requirements.isSetSupported("ExcelApi", "1.20")) return make(false);
  try {
    const made = await make(true);
    return made.refused.length === 0 ? made : { ...made, refused: await askAgain(made) };
  } catch (problem) {
    const failure = problem as NotMade;
    if (isPersons(failure.cause) || failure.isLeft) throw problem;
    return make(false);
  }
}

/** A sheet that could not be made, and whether a half of it is still there. */
class NotMade extends HostFailure {
  constructor(
    message: string,
    cause: unknown,
    readonly isLeft: boolean,
  ) {
    super(message, { cause });
  }
}

async function makeSheet(
  plan: SheetPlan,
  naming: Naming,
  waiting: Waiting,
  merged: boolean,
): Promise<Finished> {
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
      await waitForFunctions(scratch, naming, waiting);
      scratch.clear();
      fillSheet(sheet, plan, naming);
      await context.sync();
      const refused = await addNiceties(sheet, nicetiesOf(plan));
      return { ...made, refused };
    });
  } catch (problem) {
    const removed = made === undefined || (await takeAway(made));
    const after =
      made === undefined
        ? ""
        : removed
          ? "; the half-made sheet was removed"
          : `; the half-made sheet “${made.name}” could not be removed: delete it yourself`;
    throw new NotMade(`${inWords(problem)}${after}`, problem, !removed);
  }
}

/** Whether a half-made sheet is gone. */
async function takeAway(made: Made): Promise<boolean> {
  try {
    await Excel.run({ delayForCellEdit: true }, async (context) => {
      const sheet = context.workbook.worksheets.getItemOrNullObject(keyOf(made));
      sheet.load("id");
      await context.sync();
      if (!sheet.isNullObject) sheet.delete();
      await context.sync();
    });
    return true;
  } catch {
    return false;
  }
}

/** What was refused inside the undo step, asked for once more outside of it. */
async function askAgain(made: Finished): Promise<readonly Refused[]> {
  try {
    return await Excel.run({ delayForCellEdit: true }, (context) =>
      addNiceties(
        context.workbook.worksheets.getItem(keyOf(made)),
        made.refused.map(({ nicety }) => nicety),
      ),
    );
  } catch {
    return made.refused;
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
