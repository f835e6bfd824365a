/** Protection against slips, never with a password: rows may be inserted and cells formatted, and the pane lifts it to edit. */

import { codeOf, HostFailure, inWords } from "./failure";

const ALLOWED: Excel.WorksheetProtectionOptions = {
  allowFormatCells: true,
  allowFormatColumns: true,
  allowFormatRows: true,
  allowInsertRows: true,
};

export function protect(sheet: Excel.Worksheet, options = ALLOWED): void {
  sheet.protection.protect(options);
}

/**
 * Edits a sheet whether it is protected or not, and leaves it protected as it was. The edit queues calls, or waits for
 * its own; when it fails, `undo` queues what takes back what was done.
 */
export async function editUnprotected(
  sheet: Excel.Worksheet,
  edit: () => void | Promise<void>,
  undo: () => void,
): Promise<void> {
  const { context, protection } = sheet;
  protection.load("protected,options");
  await context.sync();
  const options = protection.protected ? optionsOf(protection.options) : undefined;
  if (options !== undefined) {
    protection.unprotect();
    await context.sync().catch((problem: unknown) => {
      if (codeOf(problem) !== "AccessDenied") throw problem;
      throw new HostFailure("this sheet is protected with a password: unprotect it first");
    });
  }
  try {
    await edit();
    await context.sync();
  } catch (problem) {
    undo();
    if (options !== undefined) protect(sheet, options);
    await orSay(context, `${inWords(problem)}; the edits already made could not be undone: use Undo`);
    throw problem;
  }
  if (options === undefined) return;
  protect(sheet, options);
  await orSay(context, "the sheet was edited, but could not be protected again");
}

async function orSay(context: OfficeExtension.ClientRequestContext, words: string): Promise<void> {
  await context.sync().catch(() => {
    throw new HostFailure(words);
  });
}

/** Plain data of what Excel handed over. */
function optionsOf(options: Excel.WorksheetProtectionOptions): Excel.WorksheetProtectionOptions {
  return { ...options };
}
