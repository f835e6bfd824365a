/** The form on the sheet being shown: read by its names, edited in place. */

import type { Units } from "../../../src/quantity";
import { TEMPLATES } from "../../sheets";
import type { Content, Edit, Form, FormCell } from "../../sheets/convert";
import { formName, UNITS_NAME } from "../../sheets/sheet";
import { addressOf, placeOf } from "../../sheets/addresses";
import { TEXT_FORMAT } from "../ranges";
import { entered } from "./fill";
import type { Naming } from "./naming";
import { editUnprotected } from "./protection";
import { Guard, lockUnits, warnOutside } from "./rules";
import { bareAddress, firstOf } from "./values";

export async function readForm(context: Excel.RequestContext, naming: Naming): Promise<Form | undefined> {
  const { names } = context.workbook.worksheets.getActiveWorksheet();
  names.load("items/name");
  await context.sync();
  const named = names.items.map((item) => {
    const range = item.getRangeOrNullObject();
    range.load("address,formulas");
    return { name: item.name, range };
  });
  await context.sync();
  const there = named.filter(({ range }) => !range.isNullObject);
  const cells = new Map(there.map(({ name, range }) => [name, cellsIn(range, naming)]));
  const template = TEMPLATES.find(({ id }) => cells.has(formName(id)));
  const units = cells.get(UNITS_NAME)?.[0]?.content;
  if (template === undefined || (units !== "US" && units !== "SI")) return undefined;
  return { template, units, cells };
}

/** The system of the form on a sheet; undefined where there is none. */
export async function unitsOn({ names, context }: Excel.Worksheet): Promise<Units | undefined> {
  names.load("items/name");
  await context.sync();
  const range = names.items.find(({ name }) => name === UNITS_NAME)?.getRangeOrNullObject();
  if (range === undefined) return undefined;
  range.load("values");
  await context.sync();
  const units = range.isNullObject ? undefined : firstOf(range.values as unknown[][]);
  return units === "US" || units === "SI" ? units : undefined;
}

/** The cells of a name, one or a column of them. */
function cellsIn(range: Excel.Range, naming: Naming): FormCell[] {
  const { column, row } = placeOf(bareAddress(range.address).replace(/:.*$/, ""));
  const formulas = range.formulas as Content[][];
  return formulas.map(([content = ""], i) => ({
    at: addressOf({ column, row: row + i }),
    content: typeof content === "string" ? naming.toPlan(content) : content,
  }));
}

/** All edits or none: a sheet that is converted by half would read inches as millimeters. */
export async function editForm(
  context: Excel.RequestContext,
  form: Form,
  edits: readonly Edit[],
  naming: Naming,
): Promise<void> {
  const sheet = context.workbook.worksheets.getActiveWorksheet();
  const unitsAt = form.cells.get(UNITS_NAME)?.[0]?.at;
  const cells = edits.map((edit) => {
    const range = sheet.getRange(edit.at);
    const guard = new Guard(range);
    range.load("formulas,numberFormat");
    if (edit.range !== undefined) guard.load();
    return { edit, range, guard };
  });
  await context.sync();
  const before = cells.map(({ edit, range, guard }) => ({
    at: edit.at,
    content: firstOf(range.formulas),
    format: String(firstOf(range.numberFormat)),
    putBack: edit.range === undefined ? undefined : guard.putBack(),
  }));
  const write = (range: Excel.Range, edit: Written, kept: string): void => {
    const { at, content, format } = edit;
    if (at === unitsAt && content !== undefined) lockUnits(range, String(content));
    if (content !== undefined) range.formulas = [[entered(content, format ?? kept, naming)]];
    if (format !== undefined) range.numberFormat = [[format]];
  };
  await editUnprotected(
    sheet,
    () => {
      cells.forEach(({ edit, range }, i) => {
        const kept = before[i]?.format ?? "";
        write(range, edit, kept);
        if (edit.range !== undefined) warnOutside(range, edit.range, kept === TEXT_FORMAT);
      });
    },
    () => {
      before.forEach(({ putBack, ...all }, i) => {
        const range = cells[i]?.range;
        if (range !== undefined) write(range, all, all.format);
        putBack?.();
      });
    },
  );
}

interface Written {
  readonly at: string;
  readonly content?: Content;
  readonly format?: string;
}
