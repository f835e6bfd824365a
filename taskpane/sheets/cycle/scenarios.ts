/**
 * Scenarios side by side: the shop as it is, and what-ifs of which only what differs is typed. Beside the typed cells
 * stands what each what-if works with; where its cell is blank that is the first one's.
 */

import { LENGTH } from "../../../src/quantity";
import { problemName, readName } from "../guards";
import type { Layout, Row } from "../layout";
import { words } from "../typed";
import { TYPED, WHAT_IFS } from "./inputs";

/** Columns of the form: results and what is typed, each with its labels first. */
export const LEFT = 0;
export const RIGHT = 6;
export const GRID = { blockColumns: RIGHT, labelColumns: 1, columns: 15 };
const UNITS = { results: 5, typed: 11 } as const;
const IN_USE = 12;

export interface Scenario {
  /** The end of every name of its own. */
  readonly end: "" | "_b" | "_c" | "_d";
  /** As a sentence calls it. */
  readonly called: string;
  readonly place: number;
}
export const AS_IT_IS: Scenario = { end: "", called: "as it is", place: 0 };
const OTHERS: readonly Scenario[] = [
  { end: "_b", called: "what-if B", place: 1 },
  { end: "_c", called: "what-if C", place: 2 },
  { end: "_d", called: "what-if D", place: 3 },
];
export const SCENARIOS: readonly Scenario[] = [AS_IT_IS, ...OTHERS];

/** What a scenario works with, by the name of the typed row: a number, a word, or "" where there is none. */
export function used({ end }: Scenario, name: string): string {
  return `{use_${name}${end}}`;
}

/** A computed cell of a scenario. */
export function of({ end }: Scenario, name: string): string {
  return `{${name}${end}}`;
}

/** A number made of others, or nothing while one of them is missing. */
export function made(parts: readonly string[], formula: string): string {
  return `IF(COUNT(${parts.join(",")})<${String(parts.length)},"",IFERROR(${formula},""))`;
}

/** Whether a what-if has anything typed; the shop as it is always has. */
export function isOn({ end }: Scenario): string {
  return end === "" ? "TRUE" : `{typed_in${end}}>0`;
}

const NAME = words("Scenario", "scenario", "As it is");

/** The block of typed cells, from the current line on. */
export function typedBlock(form: Layout): void {
  form.cell(RIGHT, "Typed: the shop as it is, and only what differs", "section", { columns: 9 });
  form.nextLine();
  form.across(RIGHT + 1, ["as it is", "B", "C", "D"], "columnHead");
  form.across(IN_USE, ["in use: B", "C", "D"], "columnHead");
  form.nextLine();
  typedCells(form, NAME);
  form.nextLine();
  const top = form.nextRow;
  for (const [heading, rows] of TYPED) {
    form.cell(RIGHT, heading, "heading", { columns: 9 });
    form.nextLine();
    for (const row of rows) {
      typedCells(form, row);
      inUse(form, row);
      form.nextLine();
    }
  }
  for (const { end, place } of OTHERS) {
    const column = RIGHT + 1 + place;
    form.rangeOf(`typed_cells${end}`, column, top, column, form.nextRow - 1);
  }
}

function typedCells(form: Layout, row: Row): void {
  form.labelOf(row, RIGHT);
  form.value(row, RIGHT + 1);
  for (const { end, called, place } of OTHERS) {
    const content = WHAT_IFS[place - 1]?.[row.name] ?? "";
    const label = `${row.label}, ${called}`;
    form.value({ ...row, label, name: `${row.name}${end}`, content, mayBeBlank: true }, RIGHT + 1 + place);
  }
  form.unit(row, UNITS.typed);
}

/** What the what-ifs work with; what the shop as it is works with stands behind the page. */
function inUse(form: Layout, { name, label, quantity, format }: Row): void {
  const row = form.nextRow;
  for (const { end, place } of OTHERS) {
    const column = IN_USE + place - 1;
    const typed = `${name}${end}`;
    const own = `IF(LEN({${problemName(typed)}})>0,"",${read(typed, quantity === LENGTH)})`;
    const content = `=IF({typed_in${end}}=0,"",IF(TRIM({${typed}}&"")="",{use_${name}},${own}))`;
    form.cell(column, content, "columnHead", format === undefined ? {} : { format });
    form.rangeOf(`use_${typed}`, column, row, column, row);
  }
  form.guardBlock(`${label}, in use`, `in_use_${name}`, [IN_USE, row], [IN_USE + 2, row]);
}

/** Native formulas take a length as the number that it says. */
function read(name: string, isLength: boolean): string {
  return isLength ? `{${readName(name)}}` : `{${name}}`;
}

/** Behind the page: what the shop as it is works with, and how much is typed for each what-if. */
export function usedTable(form: Layout): void {
  form.cell(0, "As it is, in use", "heading");
  form.nextLine();
  for (const { name, label, quantity } of TYPED.flatMap(([, rows]) => rows)) {
    form.cell(0, label, "label");
    const own = `IF(LEN({${problemName(name)}})>0,"",${read(name, quantity === LENGTH)})`;
    form.cell(1, `=IF(TRIM({${name}}&"")="","",${own})`, "note");
    form.rangeOf(`use_${name}`, 1, form.nextRow, 1, form.nextRow);
    form.nextLine();
  }
  for (const { end, called } of OTHERS) {
    form.cell(0, `Typed in ${called}`, "label");
    form.cell(1, `=SUMPRODUCT(--(LEN({typed_cells${end}})>0))`, "note");
    form.rangeOf(`typed_in${end}`, 1, form.nextRow, 1, form.nextRow);
    form.nextLine();
  }
}

export interface Result {
  readonly label: string;
  readonly name: string;
  /** The formula of a scenario, without its =; undefined where it has none. */
  readonly content: (scenario: Scenario) => string | undefined;
  readonly quantity?: NonNullable<Row["quantity"]>;
  readonly unit?: string;
  readonly format?: string;
  readonly isText?: boolean;
  readonly labelFormula?: string;
}

/** What a scenario that is filled in is called; "" for any other. */
export function headOf(scenario: Scenario): string {
  const named = `IF(TRIM({scenario${scenario.end}}&"")="","${scenario.called}",{scenario${scenario.end}})`;
  return `IF(${isOn(scenario)},${named},"")`;
}

/** The names of the scenarios, as the heads of result columns. */
export function scenarioHeads(form: Layout): void {
  for (const scenario of SCENARIOS) {
    form.cell(1 + scenario.place, `=${headOf(scenario)}`, "columnHead");
    form.name(`head${scenario.end}`, 1 + scenario.place);
  }
  form.nextLine();
}

/** A row of results, a scenario each. */
export function resultRow(form: Layout, { content, isText = false, ...row }: Result): void {
  const look = isText ? "text" : "result";
  form.cell(LEFT, row.labelFormula ?? row.label, "label");
  for (const scenario of SCENARIOS) {
    const formula = content(scenario);
    if (formula === undefined) continue;
    const name = `${row.name}${scenario.end}`;
    form.value(
      { ...row, name, label: `${row.label}, ${scenario.called}`, content: `=${formula}`, look },
      1 + scenario.place,
    );
  }
  form.unit({ ...row, content: "", look }, UNITS.results);
  form.nextLine();
}
