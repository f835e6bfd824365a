/**
 * Enters our formulas on the sheet being shown once more: Excel looks a name up only when a formula is entered, so one
 * that was opened or typed while the add-in was away stays #NAME? until then.
 */

import { addressOf, placeOf } from "../../sheets/addresses";
import type { Repaired } from "../host";
import { HostFailure, isPersons } from "./failure";
import type { Naming } from "./naming";
import { editUnprotected } from "./protection";
import { spillParentOf } from "./spill";
import { bareAddress } from "./values";

const MOST_CELLS = 200_000;
const MOST_FORMULAS = 5_000;
const NOTHING: Repaired = { count: 0, refused: [] };

export async function repairFormulas(context: Excel.RequestContext, naming: Naming): Promise<Repaired> {
  const sheet = context.workbook.worksheets.getActiveWorksheet();
  const used = sheet.getUsedRangeOrNullObject(true);
  used.load("address,cellCount");
  await context.sync();
  if (used.isNullObject) return NOTHING;
  if (used.cellCount > MOST_CELLS) {
    throw new HostFailure(`this sheet uses ${String(used.cellCount)} cells, too many to search`);
  }
  used.load("formulas");
  await context.sync();
  const found = await withoutSpilled(sheet, oursIn(used, naming));
  if (found.length === 0) return NOTHING;
  if (found.length > MOST_FORMULAS) {
    throw new HostFailure(
      `this sheet has ${String(found.length)} Ringbead formulas, too many to re-enter at once`,
    );
  }
  const refused: string[] = [];
  await editUnprotected(
    sheet,
    async () => {
      refused.push(...(await enter(found, naming)));
    },
    // What was entered means what it meant before.
    () => undefined,
  );
  return { count: found.length - refused.length, refused };
}

/**
 * Enters all at once; where Excel refuses one, each half by itself and so on down to the cells that it refuses, which
 * stay as they were. Gives their addresses.
 */
async function enter(found: readonly Place[], naming: Naming): Promise<string[]> {
  const [first] = found;
  if (first === undefined) return [];
  try {
    for (const { range, formula } of found) range.formulas = [[naming.repaired(formula)]];
    await first.range.context.sync();
    return [];
  } catch (problem) {
    if (isPersons(problem)) throw problem;
    if (found.length === 1) return [first.at];
    const middle = Math.ceil(found.length / 2);
    return [...(await enter(found.slice(0, middle), naming)), ...(await enter(found.slice(middle), naming))];
  }
}

interface Found {
  readonly at: string;
  readonly formula: string;
}

type Place = Found & { readonly range: Excel.Range };

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
async function withoutSpilled(sheet: Excel.Worksheet, found: readonly Found[]): Promise<Place[]> {
  const cells = found.map((one) => ({ ...one, range: sheet.getRange(one.at) }));
  const parents = cells.map(({ range }) => spillParentOf(range));
  for (const parent of parents) parent?.load("address");
  await sheet.context.sync();
  return cells.filter(({ at }, i) => {
    const parent = parents[i];
    return parent === undefined || parent.isNullObject || bareAddress(parent.address) === at;
  });
}
