/** What every form shares: its head with the locked units cell, its checks and cautions, its signatures and its mark. */

import { CAUTIONS } from "./cautions";
import type { Layout } from "./layout";
import type { TemplateId } from "./sheet";
import { formName, UNITS_NAME } from "./sheet";

/** The head stays in sight while the form is scrolled. */
export const FROZEN_ROWS = 3;

/** What a check says that has nothing to judge until an earlier one is fine. */
export const WAITS = '"waits for the checks above"';

/** What a check is called, the name of its cell, and a formula that gives a sentence, or "fine". */
export type Check = readonly [label: string, name: string, formula: string];

export function head(form: Layout, title: string, subtitle: string): void {
  form.banner(title, "title");
  form.banner(subtitle, "subtitle");
  const { blockColumns } = form.grid;
  form.cell(blockColumns, "Tinted cells are typed, the rest is computed.", "note", { columns: blockColumns });
  form.blocks(
    [{ label: "System of units", name: UNITS_NAME, content: form.units, look: "locked", unit: "" }],
    [],
  );
}

export function checks(form: Layout, list: readonly Check[]): void {
  form.section("Checks");
  for (const [label, name, formula] of list) form.wide(label, name, formula, "verdict");
}

export function cautions(form: Layout): void {
  form.section("Cautions");
  for (const caution of CAUTIONS) form.banner(caution, "caution", 2);
}

/** A line to sign for each role. */
export function release(form: Layout, roles: readonly string[]): void {
  const { blockColumns, labelColumns } = form.grid;
  const label = labelColumns > 1 ? { columns: labelColumns } : {};
  const line = { columns: blockColumns - labelColumns };
  form.section("Release");
  for (const role of roles) {
    form.cell(0, role, "label", label);
    form.cell(labelColumns, "", "line", line);
    form.cell(blockColumns, "Signature, date", "label", label);
    form.cell(blockColumns + labelColumns, "", "line", line);
    form.nextLine();
  }
}

/** Tells which template the sheet is, and which version computed it: a workbook keeps old results until asked. */
export function mark(form: Layout, template: TemplateId, what: string): void {
  form.wide("Ringbead", formName(template), `="${what}, computed by version "&BEAD.VERSION()`, "note");
}

const OF_INCHES = "look like millimetres; this sheet is in inches.";
const OF_MILLIMETRES = "look like inches; this sheet is in millimetres.";

/** Notices a tube typed in the other system; otherwise gives what `fine` gives. */
export function otherSystem(fine: string): string {
  return (
    `IF(AND({sheet_units}="US",OR(SUM({wall})>=0.3,SUM({od})>16)),"Outside diameter and wall ${OF_INCHES}",` +
    `IF(AND({sheet_units}="SI",OR(AND(SUM({wall})>0,SUM({wall})<0.3),AND(SUM({od})>0,SUM({od})<3))),"Outside diameter and wall ${OF_MILLIMETRES}",` +
    `${fine}))`
  );
}
