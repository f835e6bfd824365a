/** Named cells of the form being shown: one look at where the names are, and one at all of their cells. */

import type { Block, ShownCell, ShownForm } from "../../pictures/cells";
import { shownCell } from "../../pictures/cells";
import { TEMPLATES } from "../../sheets";
import { formName } from "../../sheets/sheet";
import { addressOf, placeOf, spread } from "../../sheets/addresses";
import { isError } from "./values";

export async function namedCells(
  context: Excel.RequestContext,
  blocks: readonly Block[],
): Promise<ShownForm | undefined> {
  const sheet = context.workbook.worksheets.getActiveWorksheet();
  const { names } = sheet;
  sheet.load("name");
  names.load("items/name,items/formula");
  await context.sync();
  const places = new Map(
    names.items.flatMap(({ name, formula }) => {
      const at = addressOn(sheet.name, String(formula));
      return at === undefined ? [] : [[name, at] as const];
    }),
  );
  const template = TEMPLATES.find(({ id }) => places.has(formName(id)))?.id;
  if (template === undefined) return undefined;
  const ranges = blocks.flatMap((block) => {
    const at = addressOfBlock(block, places.get(block.name));
    if (at === undefined) return [];
    const range = sheet.getRange(at);
    range.load("values,text,valueTypes");
    return [{ name: block.name, range }];
  });
  await context.sync();
  return { template, cells: new Map(ranges.map(({ name, range }) => [name, cellsOf(range)])) };
}

/** A1 or A1:B2 from ='My sheet'!$A$1:$B$2; undefined where the name's cells are gone or on another sheet. */
function addressOn(sheet: string, formula: string): string | undefined {
  const [, quoted, plain, at] =
    /^=(?:'((?:[^']|'')+)'|([^'!]+))!(\$?[A-Z]+\$?\d+(?::\$?[A-Z]+\$?\d+)?)$/.exec(formula) ?? [];
  const on = quoted?.replaceAll("''", "'") ?? plain;
  return on === sheet ? at?.replaceAll("$", "") : undefined;
}

function addressOfBlock({ from = 0, columns = 1, rows }: Block, at: string | undefined): string | undefined {
  if (at === undefined) return undefined;
  const [first = "", last = first] = at.split(":");
  const [start, end] = [placeOf(first), placeOf(last)];
  if (start.column + from < 0) return undefined;
  const corner = addressOf({ column: start.column + from, row: start.row });
  return spread(corner, columns, rows ?? end.row - start.row + 1);
}

function cellsOf(range: Excel.Range): ShownCell[][] {
  const values = range.values as unknown[][];
  return values.map((row, r) =>
    row.map((value, c) => shownCell(value, range.text[r]?.[c] ?? "", isError(range, r, c))),
  );
}
