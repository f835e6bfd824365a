/**
 * Enters our formulas on the sheet being shown once more: Excel looks a name up only when a formula is entered, so one
 * that was opened or typed while the add-in was away stays #NAME? until then.
 */

import { addressOf, placeOf } from "../addresses";
import { HostFailure } from "./failure";
import type { Naming } from "./naming";
import { editUnprotected } from "./protection";
import { bareAddress } from "./values";

const MOST_CELLS = 200_000;
const MOST_FORMULAS = 5_000;

/** How many formulas were entered again. */
export async function repairFormulas(context: Excel.RequestContext, naming: Naming): Promise<number> {
  const sheet = context.workbook.worksheets.getActiveWorksheet();
  const used = sheet.getUsedRangeOrNullObject(true);
  used.load("address,cellCount");
  await context.sync();
  if (used.isNullObject) return 0;
  if (used.cellCount > MOST_CELLS) {
    throw new HostFailure(`this sheet uses ${String(used.cellCount)} cells, too many to search`);
  }
  used.load("formulas");
  await context.sync();
  const found = await withoutSpilled(sheet, oursIn(used, naming));
  if (found.length === 0) return 0;
  if (found.length > MOST_FORMULAS) {
    throw new HostFailure(
      `this sheet has ${String(found.length)} Ringbead formulas, too many to re-enter at once`,
    );
  }
  const enter = (spelled: (formula: string) => string): void => {
    for (const { range, formula } of found) range.formulas = [[spelled(formula)]];
  };
  await editUnprotected(
    sheet,
    () => {
      enter((formula) => naming.repaired(formula));
    },
    () => {
      enter((formula) => formula);
    },
  );
  return found.length;
}

interface Found {
  readonly at: string;
  readonly formula: string;
}

function oursIn(used: Excel.Range, naming: Naming): Found[] {
  const corner = placeOf(bareAddress(used.address).replace(/:.*$/, ""));
  return (used.formulas as unknown[][]).flatMap((row, r) =>
    row.flatMap((content, c) =>
      naming.isOurs(content)
        ? [{ at: addressOf({ column: corner.column + c, row: corner.row + r }), formula: content }]
        : [],
    ),
  );
}

/** A cell that only shows part of another's answer must never be written. */
async function withoutSpilled(
  sheet: Excel.Worksheet,
  found: readonly Found[],
): Promise<(Found & { range: Excel.Range })[]> {
  const cells = found.map((one) => ({ ...one, range: sheet.getRange(one.at) }));
  // An Excel without this has no spilling formulas either.
  if (!Office.context.requirements.isSetSupported("ExcelApi", "1.12")) return cells;
  const parents = cells.map(({ range }) => range.getSpillParentOrNullObject());
  for (const parent of parents) parent.load("address");
  await sheet.context.sync();
  return cells.filter(({ at }, i) => {
    const parent = parents[i];
    return parent === undefined || parent.isNullObject || bareAddress(parent.address) === at;
  });
}
