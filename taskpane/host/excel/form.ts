/** The form on the sheet being shown: read by its names, edited in place. */

import type { Units } from "../../../src/quantity";
import { TEMPLATES } from "../../templates";
import type { Edit, Form } from "../../templates/convert";
import { formName, UNITS_NAME } from "../../templates/sheet";
import { lockUnits } from "./fill";
import type { Naming } from "./naming";
import { editUnprotected } from "./protection";
import type { Content } from "./values";
import { bareAddress, firstOf } from "./values";

export async function readForm(context: Excel.RequestContext, naming: Naming): Promise<Form | undefined> {
  const { names } = context.workbook.worksheets.getActiveWorksheet();
  names.load("items/name");
  await context.sync();
  const cells = names.items.map((item) => {
    const range = item.getRangeOrNullObject();
    range.load("address,formulas");
    return { name: item.name, range };
  });
  await context.sync();
  const there = cells.filter(({ range }) => !range.isNullObject);
  const contents = new Map(there.map(({ name, range }) => [name, planned(firstOf(range.formulas), naming)]));
  const places = new Map(there.map(({ name, range }) => [name, bareAddress(range.address)]));
  const template = TEMPLATES.find(({ id }) => contents.has(formName(id)));
  const units = contents.get(UNITS_NAME);
  if (template === undefined || (units !== "US" && units !== "SI")) return undefined;
  return { template, units: units satisfies Units, contents, places };
}

/** All edits or none: a sheet that is converted by half would read inches as millimetres. */
export async function editForm(
  context: Excel.RequestContext,
  form: Form,
  edits: readonly Edit[],
  naming: Naming,
): Promise<void> {
  const sheet = context.workbook.worksheets.getActiveWorksheet();
  const cells = edits.flatMap((edit) => {
    const at = form.places.get(edit.name);
    if (at === undefined) return [];
    const range = sheet.getRange(at);
    range.load("formulas,numberFormat");
    return [{ edit, range }];
  });
  await context.sync();
  const before = cells.map(({ edit, range }) => ({
    ...edit,
    content: firstOf(range.formulas),
    format: String(firstOf(range.numberFormat)),
  }));
  const carryOut = (all: readonly { name: string; content?: Content; format?: string }[]): void => {
    all.forEach(({ name, content, format }, i) => {
      const range = cells[i]?.range;
      if (range === undefined) return;
      if (name === UNITS_NAME && content !== undefined) lockUnits(range, String(content));
      if (content !== undefined) {
        range.formulas = [[typeof content === "string" ? naming.toExcel(content) : content]];
      }
      if (format !== undefined) range.numberFormat = [[format]];
    });
  };
  await editUnprotected(
    sheet,
    () => {
      carryOut(cells.map(({ edit }) => edit));
    },
    () => {
      carryOut(before);
    },
  );
}

function planned(content: Content, naming: Naming): Content {
  return typeof content === "string" ? naming.toPlan(content) : content;
}
