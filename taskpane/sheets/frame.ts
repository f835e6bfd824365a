/**
 * What every form shares: its head with the summary of the checks and the units cell, its checks, cautions, signatures and
 * mark, and what stands behind the page.
 */

import { CAUTIONS } from "./cautions";
import { formulasIn, guardTables, otherFormulas, quote } from "./guards";
import type { Layout } from "./layout";
import { address } from "./layout";
import type { TemplateId } from "./sheet";
import { SIGNS, UNITS_NAME, UNITS_READ_NAME, UNITS_SET_NAME, formName } from "./sheet";

/** The head stays in sight while the form is scrolled. */
export const FROZEN_ROWS = 4;

/** What a check is called, its name, and a formula that gives a sentence when something is wrong and "" when not. */
export interface Check {
  readonly label: string;
  readonly name: string;
  readonly problem: string;
  /** Rows that its sentences may take; most need one. */
  readonly rows?: number;
}

/** Said where nothing can be judged yet, since something else is wrong. */
const CANNOT_JUDGE = "cannot be judged: fix the checks above first";

/** The first check that does not hold decides; each may rely on those before it. */
export function firstOf(...problems: readonly string[]): string {
  const [first = '""', ...rest] = problems;
  return rest.length === 0 ? first : `IF(LEN(${first})>0,${first},${firstOf(...rest)})`;
}

/** A sentence where a condition does not hold. An error in the condition counts as not judged, never as fine. */
export function unless(condition: string, sentence: string): string {
  return `IF(${condition},"",${sentence.startsWith("=") ? sentence.slice(1) : quote(sentence)})`;
}

/** Said of a table that its formula cannot fill. */
export function spilledOver(table: string): string {
  return `${table} cannot be shown: a cell that its formula fills is not empty`;
}

/** Stands in every sheet as it is stored: a spreadsheet without the add-in shows its numbers and leaves them as they are. */
const NOTICE = "Tinted cells are typed; the rest follows only with Ringbead.";

/** `signs`: single cells that tell what the checks found, which the checks themselves cannot watch. */
export function head(form: Layout, title: string, signs: readonly string[] = []): void {
  form.banner(title, "title");
  form.name("summary", form.bannerColumn);
  form.signs.push(address(form.bannerColumn, form.nextRow));
  form.banner(summary(signs), "summary", 2);
  const { blockColumns } = form.grid;
  form.cell(blockColumns, NOTICE, "note", { columns: blockColumns });
  form.blocks(
    [
      {
        label: "System of units",
        name: UNITS_NAME,
        content: form.units,
        look: "locked",
        unit: "",
      },
    ],
    [],
  );
}

/** Letters of a sentence. A file keeps an empty answer of ours as a space that no line breaks at: that is none. */
function wordsIn(cell: string): string {
  return `LEN(SUBSTITUTE(${cell},"\u00a0",""))`;
}

/**
 * Every check in one line: that all hold, or how many do not, and which. It counts the formulas behind it first: with one
 * of them gone it could not see what it no longer sees.
 */
const WATCHES = ["verdicts", "problems_watch", "typed_watch", "computed_watch"];
const PLANNED = ["checks", "checks", "checks", "typed", "computed"].map((what) => `{${what}_planned}`);
const OPEN = `SUMPRODUCT(--(${wordsIn("{problems}")}>0))`;
/** As many letters as two lines of the form have room for beside the count; the checks further down say all. */
const SHOWN = 190;
const ALL_PROBLEMS = 'TEXTJOIN("; ",TRUE,{problems_short})';
const PROBLEMS = `IF(LEN(${ALL_PROBLEMS})>${String(SHOWN)},LEFT(${ALL_PROBLEMS},${String(SHOWN)})&"… (see Checks)",${ALL_PROBLEMS})`;

/** A condition: every check is there, and none found anything. */
export const ALL_HOLD = `IFERROR(AND(${whole([])},${OPEN}=0),FALSE)`;

/** A condition: no formula of the checks is gone, nor one of some single cells. */
function whole(signs: readonly string[]): string {
  const watched = [...WATCHES, ...signs].map((name) => `{${name}}`);
  return `${formulasIn(watched)}=${[...PLANNED, ...signs.map(() => "1")].join("+")}`;
}

function summary(signs: readonly string[]): string {
  return (
    `=IFERROR(IF(${whole(signs)},` +
    `IF(${OPEN}=0,"${SIGNS.holds}All "&{checks_planned}&" checks hold. Starting values: prove on a test coupon. The qualified procedure governs.",` +
    `"${SIGNS.attention}"&${OPEN}&" of "&{checks_planned}&" need attention: "&${PROBLEMS}),` +
    `"${SIGNS.attention}A check, or a row behind the page, was typed over or deleted: undo it, or insert the sheet again"),` +
    `"${SIGNS.attention}The checks cannot be read: undo what was deleted, or insert the sheet again")`
  );
}

const UNITS_CHECK: Check = {
  label: "System of units",
  name: "check_units",
  problem: `IF(EXACT({${UNITS_READ_NAME}},{${UNITS_SET_NAME}}),"","the units cell was changed by hand; type "&{${UNITS_SET_NAME}}&" again, then convert the sheet in the pane")`,
};
const TYPED_CHECK: Check = {
  label: "Typed cells",
  name: "check_typed",
  problem: 'TEXTJOIN("; ",TRUE,{typed_problems})',
};
const COMPUTED_CHECK: Check = {
  label: "Computed cells",
  name: "check_computed",
  problem: 'TEXTJOIN("; ",TRUE,{computed_problems})',
};

/** The checks on the page: those of every sheet first, then the sheet's own. */
export function checks(form: Layout, own: readonly Check[]): readonly Check[] {
  const all = [UNITS_CHECK, TYPED_CHECK, COMPUTED_CHECK, ...own];
  form.section("Checks");
  const top = form.nextRow;
  for (const { label, name, rows } of all) {
    form.wide(
      label,
      name,
      `=IF(${wordsIn(`{problem_${name}}`)}=0,"${SIGNS.holds}holds","${SIGNS.attention}"&{problem_${name}})`,
      "verdict",
      rows,
    );
  }
  const column = form.grid.labelColumns;
  form.signs.push(`${address(column, top)}:${address(column, form.nextRow - 1)}`);
  form.rangeOf("verdicts", column, top, column, form.nextRow - 1);
  form.number("checks_planned", all.length);
  return all;
}

/** Behind the page, not printed: what the checks found, cell by cell, and the system of units the sheet was set in. */
export function behindThePage(form: Layout, all: readonly Check[]): void {
  form.nextLine();
  form.banner("Behind the page: what the checks work with. Not printed, not to be typed over", "note");
  form.cell(0, "Units as set", "label");
  form.cell(1, form.units, "note");
  form.name(UNITS_SET_NAME, 1);
  form.nextLine();
  form.cell(0, "Units as read", "label");
  form.cell(1, `=IF(EXACT({${UNITS_NAME}},{${UNITS_SET_NAME}}),{${UNITS_SET_NAME}},"?")`, "note");
  form.name(UNITS_READ_NAME, 1);
  form.nextLine();
  // Before the tables below, which watch and cannot be watched by themselves: the summary counts those.
  const others = otherFormulas(form);
  problemTable(form, all);
  guardTables(form, others);
}

function problemTable(form: Layout, all: readonly Check[]): void {
  form.cell(0, "Checks", "heading");
  form.nextLine();
  const top = form.nextRow;
  for (const { label, name, problem } of all) {
    const row = form.nextRow;
    form.cell(0, label, "label");
    form.cell(1, `=IFERROR(${problem},${quote(CANNOT_JUDGE)})`, "note");
    form.cell(2, `=IF(${wordsIn(address(1, row))}=0,"",${address(0, row)}&": "&${address(1, row)})`, "note");
    form.range(`problem_${name}`, address(1, row), address(1, row));
    form.nextLine();
  }
  form.rangeOf("problems", 1, top, 1, form.nextRow - 1);
  form.rangeOf("problems_short", 2, top, 2, form.nextRow - 1);
  form.rangeOf("problems_watch", 1, top, 2, form.nextRow - 1);
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
