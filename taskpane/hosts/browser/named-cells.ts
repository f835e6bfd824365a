/** Named cells of a form, the one being shown if no other is told, with what they hold and what they show. */

import type { Model } from "@odoo/o-spreadsheet";

import { NAME_MARK } from "../../files/spoken";
import type { Block, ShownCell, ShownForm } from "../../pictures/cells";
import { shownCell } from "../../pictures/cells";
import { TEMPLATES } from "../../sheets";
import { formName } from "../../sheets/sheet";

export function namedCells(
  { getters }: Model,
  blocks: readonly Block[],
  sheetId = getters.getActiveSheetId(),
): ShownForm | undefined {
  const zones = new Map(
    getters
      .getNamedRanges()
      .filter(({ range }) => range.sheetId === sheetId && range.invalidXc === undefined)
      .map(({ name, range }) => [name.split(NAME_MARK)[0] ?? name, range.zone]),
  );
  const template = TEMPLATES.find(({ id }) => zones.has(formName(id)))?.id;
  if (template === undefined) return undefined;
  const cell = (col: number, row: number): ShownCell => {
    const { value, formattedValue, type } = getters.getEvaluatedCell({ sheetId, col, row });
    const kind: string = type;
    return shownCell(value, formattedValue, kind === "error");
  };
  const cells = new Map(
    blocks.flatMap(({ name, from = 0, columns = 1, rows }) => {
      const zone = zones.get(name);
      if (zone === undefined || zone.left + from < 0) return [];
      const count = rows ?? zone.bottom - zone.top + 1;
      const block = Array.from({ length: count }, (_, row) =>
        Array.from({ length: columns }, (_unused, column) => cell(zone.left + from + column, zone.top + row)),
      );
      return [[name, block] as const];
    }),
  );
  return { template, cells };
}
