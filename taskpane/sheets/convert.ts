/**
 * Converts a form to the other system of units: the typed numbers are rewritten, the units cell follows, the physics
 * stays. Pure: a host reads the form before and carries the edits out after.
 */

import type { Quantity, Units } from "../../src/quantity";
import { fromBase, LENGTH, toBase } from "../../src/quantity";
import { sizeOf } from "../../src/sizes";
import { isNominal, isSchedule } from "../../src/tables/pipe-size";
import type { CellPlan, NamePlan, RangePlan, SheetPlan, Template } from "./sheet";
import { UNITS_NAME, UNITS_SET_NAME } from "./sheet";
import { addressesIn } from "./watched";

export type Content = string | number | boolean;

export interface FormCell {
  readonly at: string;
  /** A formula with its =, a number, a text; "" where the cell is blank. */
  readonly content: Content;
}

/** A form as it stands on a sheet. */
export interface Form {
  readonly template: Template;
  readonly units: Units;
  /** The cells behind each name, one or a column of them. A name whose cells are gone is missing. */
  readonly cells: ReadonlyMap<string, readonly FormCell[]>;
}

export interface Edit {
  readonly at: string;
  readonly content?: string | number;
  readonly format?: string;
  /** What the number is expected to lie between from now on. */
  readonly range?: RangePlan;
}

export type Conversion =
  { readonly to: Units; readonly edits: readonly Edit[] } | { readonly problem: string };

/** A number this near to a short one is meant to be it: what converting there and back leaves of rounding. */
const SHORT_DIGITS = 10;
const ROUNDING = 1e-14;

function tidy(value: number): number {
  const short = Number(value.toPrecision(SHORT_DIGITS));
  return Math.abs(short - value) <= ROUNDING * Math.abs(value) ? short : value;
}

/** A text shows every digit that it has: no more than these parts of a size are worth. */
const OF_A_SIZE = 1e-9;

/** The shortest text of a size; one that was typed with up to nine digits comes back as it was. */
function sizeText(value: number): string {
  for (let digits = 1; digits < SHORT_DIGITS; digits += 1) {
    const short = Number(value.toPrecision(digits));
    if (Math.abs(short - value) <= OF_A_SIZE * Math.abs(value)) return String(short);
  }
  return String(Number(value.toPrecision(SHORT_DIGITS)));
}

/** Keeps whatever is typed as text. */
const TEXT_FORMAT = "@";

export function convert(form: Form): Conversion {
  const to: Units = form.units === "US" ? "SI" : "US";
  const [plan, wanted] = [form.template.plan(form.units), form.template.plan(to)];
  const problem = retyped(form) ?? stuck(form, plan);
  if (problem !== undefined) return { problem: `Nothing was changed. ${problem}` };
  const edits: Edit[] = [UNITS_NAME, UNITS_SET_NAME].flatMap((name) =>
    cellsOf(form, name).map(({ at }) => ({ at, content: to })),
  );
  const ranges = changedRanges(plan, wanted);
  for (const named of plan.names) {
    const planned = plannedIn(plan, named);
    const isText = planned.some((cell) => cell.look === "input" && cell.format === TEXT_FORMAT);
    const format = isText ? {} : newFormat(named, plan, wanted);
    const range = ranges.get(named.name);
    for (const { at, content } of cellsOf(form, named.name)) {
      const written = isPlanned(content, planned) ? undefined : rewritten(content, named, form.units, to);
      edits.push({
        at,
        ...(written === undefined ? {} : { content: isText ? sizeText(written) : tidy(written) }),
        ...format,
        ...(range === undefined ? {} : { range: { ...range, at } }),
      });
    }
  }
  return { to, edits: edits.filter((edit) => Object.keys(edit).length > 1) };
}

/** As a new sheet of the other system has it, where that is another. */
function newFormat({ name }: NamePlan, plan: SheetPlan, wanted: SheetPlan): Pick<Edit, "format"> {
  const format = formatIn(wanted, name);
  return format === undefined || format === formatIn(plan, name) ? {} : { format };
}

/** The number format of a named cell, or of a column of them. */
function formatIn(plan: SheetPlan, name: string): string | undefined {
  const named = plan.names.find((one) => one.name === name);
  const planned = named === undefined ? [] : plannedIn(plan, named);
  return planned.find(({ format }) => format !== undefined)?.format;
}

/** The number of a typed cell in the other units; undefined for a cell that follows by itself. */
function rewritten(
  content: Content,
  { input, quantity }: NamePlan,
  from: Units,
  to: Units,
): number | undefined {
  const base = input && quantity !== undefined ? baseOf(content, quantity, from) : undefined;
  return base === undefined || quantity === undefined ? undefined : fromBase(base, quantity, to);
}

/** Where the units cell was retyped, the typed numbers are still in the other system: no conversion can be right. */
function retyped(form: Form): string | undefined {
  const [set] = cellsOf(form, UNITS_SET_NAME);
  if (set === undefined || set.content === form.units) return undefined;
  const at = cellsOf(form, UNITS_NAME)[0]?.at ?? UNITS_NAME;
  return `The system of units in ${at} was retyped: the typed numbers are in ${String(set.content)}. Type ${String(set.content)} there, then convert.`;
}

function stuck(form: Form, plan: SheetPlan): string | undefined {
  const where = plan.names.flatMap((named) =>
    cellsOf(form, named.name)
      .filter(({ content }) => !isConvertible(content, plan, named, form.units))
      .map(({ at }) => `${at} (${named.name})`),
  );
  if (where.length === 0) return undefined;
  return `These typed cells hold a formula or text, which has no unit to convert: ${where.join(", ")}. Type the number itself first.`;
}

function cellsOf(form: Form, name: string): readonly FormCell[] {
  return form.cells.get(name) ?? [];
}

/** The cells of a name as planned; that of a list's column begins with its heading and ends with the line that ends it. */
function plannedIn(plan: SheetPlan, { at }: NamePlan): readonly CellPlan[] {
  const within = new Set(addressesIn(at));
  return plan.cells.filter((cell) => within.has(cell.at));
}

/** A heading, or a formula that the template itself put there, which follows the other cells. */
function isPlanned(content: Content, planned: readonly CellPlan[]): boolean {
  return planned.some(
    (cell) =>
      (cell.look !== "input" || String(cell.content).startsWith("=")) &&
      cell.content !== "" &&
      shape(cell.content) === shape(content),
  );
}

/** A blank, what can be read as a number, the name of a pipe, which is the same in both systems, or what the template put there. */
function isConvertible(content: Content, plan: SheetPlan, named: NamePlan, units: Units): boolean {
  const { input, quantity } = named;
  if (!input || quantity === undefined || String(content).trim() === "") return true;
  if (baseOf(content, quantity, units) !== undefined) return true;
  if (quantity === LENGTH && typeof content === "string" && (isNominal(content) || isSchedule(content)))
    return true;
  return isPlanned(content, plannedIn(plan, named));
}

/** What a typed cell stands for, base SI: a number, or a size written as text such as 1-1/2; undefined for anything else. */
function baseOf(content: Content, quantity: Quantity, units: Units): number | undefined {
  if (typeof content === "number") return toBase(content, quantity, units);
  if (quantity !== LENGTH || typeof content !== "string") return undefined;
  if (content.trim() === "" || content.startsWith("=")) return undefined;
  const size = sizeOf(content, units);
  return typeof size === "number" ? size : undefined;
}

/** The ranges that read otherwise in the other system, by the name of their cells. */
function changedRanges(plan: SheetPlan, wanted: SheetPlan): Map<string, RangePlan> {
  const nameOf = ({ names }: SheetPlan, { at }: RangePlan): string => {
    const name = names.find((one) => one.at === at)?.name;
    if (name === undefined)
      throw new Error(`the range of ${at} has no name, so conversion would not find it`);
    return name;
  };
  const now = new Map(plan.ranges.map((range) => [nameOf(plan, range), range]));
  return new Map(
    wanted.ranges
      .map((range) => [nameOf(wanted, range), range] as const)
      .filter(([name, range]) => !saysTheSame(now.get(name), range)),
  );
}

function saysTheSame(one: RangePlan | undefined, other: RangePlan): boolean {
  return (["least", "most", "title", "message"] as const).every((part) => one?.[part] === other[part]);
}

/** A formula without its addresses, which move when rows are inserted. */
function shape(content: Content): string {
  return String(content)
    .replace(/\$?[A-Z]{1,3}\$?\d+/g, "@")
    .replace(/\s/g, "");
}
