/**
 * The watch over single cells: each typed cell must hold what a person could mean, each computed cell must still be
 * computed. A sentence a cell, in a table behind the page; the checks on the page gather them.
 */

import type { Quantity, Units } from "../../src/quantity";
import { LENGTH, TIME } from "../../src/quantity";
import { DATE_HINT } from "../../src/sizes";
import { call } from "./call";
import type { Between, Layout } from "./layout";
import { UNITS_NAME } from "./sheet";
import { joined } from "./watched";

interface Named {
  readonly label: string;
  readonly name: string;
}

export interface GuardedNumber extends Named {
  readonly kind: "number";
  readonly quantity: Quantity;
  readonly unit: string | undefined;
  readonly range: Readonly<Record<Units, Between>>;
  /** The smallest number above 0 that a person could mean; undefined where there is no such limit. */
  readonly above0: number | undefined;
  readonly mayBeBlank: boolean;
}

export interface GuardedWord extends Named {
  readonly kind: "word";
  /** Undefined where a formula knows more words than a list can hold, and refuses the others itself. */
  readonly allowed: readonly string[] | undefined;
  readonly mayBeBlank: boolean;
}

export type Guarded =
  | (Named & { readonly kind: "computed" })
  | (Named & { readonly kind: "block"; readonly formulas: number })
  | GuardedWord
  | GuardedNumber;

const OTHER = { US: "SI", SI: "US" } as const;
/** Day numbers of this century: what a spreadsheet makes of a fraction. */
const DATES = [36_526, 73_050] as const;
const CLOCK_HINT = "; type seconds: the sheet turns 0:30 into a fraction of a day";
const TYPED_OVER = "typed over or deleted; undo it, or insert the sheet again";

/** "between 0.05 and 20 in", "0, or between 1 and 600 s". */
export function rangeText(
  { range, quantity, unit, above0 }: Pick<GuardedNumber, "range" | "quantity" | "unit" | "above0">,
  units: Units,
): string {
  const [least, most] = range[units];
  const shown = unit ?? quantity[units].unit;
  const from = above0 ?? least;
  const between = `between ${String(from)} and ${String(most)}${shown === "" ? "" : ` ${shown}`}`;
  return above0 === undefined ? between : `0, or ${between}`;
}

/** The sentence of one cell; "" where nothing is wrong. */
export function problemOf(guarded: Guarded): string {
  switch (guarded.kind) {
    case "computed":
      return `IF(ISFORMULA({${guarded.name}}),"",${quote(`${guarded.label}: ${TYPED_OVER}`)})`;
    case "block":
      return blockProblem(guarded.label, [`{${guarded.name}}`], guarded.formulas);
    case "word":
      return wordProblem(guarded);
    case "number":
      return numberProblem(guarded);
  }
}

/** Rows may be inserted into a block, but no formula of it may go. */
function blockProblem(label: string, blocks: readonly string[], formulas: number): string {
  return `IF(${formulasIn(blocks)}=${String(formulas)},"",${quote(`${label}: a cell was ${TYPED_OVER}`)})`;
}

/** How many cells of some blocks hold a formula. */
export function formulasIn(blocks: readonly string[]): string {
  return blocks.map((block) => `SUMPRODUCT(--ISFORMULA(${block}))`).join("+");
}

function blankProblem({ label, mayBeBlank }: GuardedNumber | GuardedWord): string {
  return mayBeBlank ? '""' : quote(`${label}: is blank`);
}

function wordProblem(guarded: GuardedWord): string {
  const { label, name, allowed } = guarded;
  const cell = `{${name}}`;
  // As the page's own formulas compare: any case, no blanks around it.
  const known = allowed?.map((word) => `${cell}=${quote(word)}`).join(",");
  const strange = `${quote(`${label}: “`)}&${cell}&${quote("” is not one of the words in its list")}`;
  const judged = known === undefined ? '""' : `IF(OR(${known}),"",${strange})`;
  return `IF(TRIM(${cell}&"")="",${blankProblem(guarded)},${judged})`;
}

function numberProblem(guarded: GuardedNumber): string {
  const { label, name, quantity } = guarded;
  const cell = `{${name}}`;
  const value = quantity === LENGTH ? `{${readName(name)}}` : cell;
  const inRange = alike(guarded)
    ? outsideRange(guarded, value, "US")
    : `IF({${UNITS_NAME}}="SI",${outsideRange(guarded, value, "SI")},${outsideRange(guarded, value, "US")})`;
  const why =
    quantity === LENGTH
      ? "” is no size; type a number, or a size such as 1-1/2"
      : "” is text; type the number alone";
  const notNumber = `${quote(`${label}: “`)}&${cell}&${quote(why)}`;
  return `IF(TRIM(${cell}&"")="",${blankProblem(guarded)},IF(ISNUMBER(${value}),${inRange},${notNumber}))`;
}

/** The sentence of a typed cell, behind the page. */
export function problemName(name: string): string {
  return `${name}_problem`;
}

/** A length may be typed as people write sizes; native formulas take the number that it says. */
export function readName(name: string): string {
  return `${name}_read`;
}

function reading(name: string): string {
  const cell = `{${name}}`;
  return `IF(TRIM(${cell}&"")="","",IF(ISNUMBER(${cell}),${cell},IFERROR(${call("SIZE", { text: cell })},"")))`;
}

function alike({ quantity, range, unit }: GuardedNumber): boolean {
  return (
    (unit !== undefined || quantity.US.unit === quantity.SI.unit) &&
    range.US[0] === range.SI[0] &&
    range.US[1] === range.SI[1]
  );
}

/** What is said of a number outside its range, with a hint of what it may have been meant as. */
function outsideRange(guarded: GuardedNumber, value: string, units: Units): string {
  const { label, name, quantity, range, above0 } = guarded;
  const [least, most] = range[units];
  const hints = [
    ...(quantity === LENGTH && units === "US" ? [dateHint(value)] : []),
    ...(quantity === TIME && above0 !== undefined
      ? [`IF(AND(${value}>0,${value}<1),${quote(CLOCK_HINT)},"")`]
      : []),
    ...(alike(guarded) ? [] : [otherHint(value, range, quantity, units)]),
  ];
  const inside = `AND(${value}>=${String(above0 ?? least)},${value}<=${String(most)})`;
  const fine = above0 === undefined ? inside : `OR(${value}=0,${inside})`;
  const said = [quote(`${label}: `), `{${name}}`, quote(` is not ${rangeText(guarded, units)}`), ...hints];
  return `IF(${fine},"",${said.join("&")})`;
}

function dateHint(value: string): string {
  const [first, last] = DATES;
  return `IF(AND(${value}>=${String(first)},${value}<=${String(last)}),${quote(`; ${DATE_HINT}`)},"")`;
}

function otherHint(
  value: string,
  range: Readonly<Record<Units, Between>>,
  quantity: Quantity,
  units: Units,
): string {
  const other = OTHER[units];
  const [least, most] = range[other];
  return `IF(AND(${value}>=${String(least)},${value}<=${String(most)}),${quote(`; it may be ${quantity[other].unit}`)},"")`;
}

/** A text as a formula has it. */
export function quote(text: string): string {
  return `"${text.replaceAll('"', '""')}"`;
}

/** The formulas of a form that have no guard of their own: units, headings, labels that follow a cell. */
export function otherFormulas(form: Layout): string {
  const others = form.unwatched();
  return blockProblem("Labels and units", joined(others), others.length);
}

/**
 * The tables behind the page: a line for each watched cell, one range over the sentences of each kind, one over the sizes
 * as they are read.
 */
export function guardTables(form: Layout, others: string): void {
  const typed = form.guarded.filter(({ kind }) => kind === "number" || kind === "word");
  const computed = form.guarded.filter((one) => !typed.includes(one));
  guardTable(
    form,
    "typed",
    typed.map((one) => [one.label, problemOf(one), one]),
  );
  guardTable(form, "computed", [
    ...computed.map((one) => [one.label, problemOf(one), one] as const),
    ["Labels and units", others, undefined],
  ]);
}

type Line = readonly [label: string, problem: string, guarded: Guarded | undefined];

function guardTable(form: Layout, kind: "typed" | "computed", lines: readonly Line[]): void {
  form.cell(0, kind === "typed" ? "Typed cells" : "Computed cells", "heading");
  if (kind === "typed") form.cell(2, "Size as read", "heading");
  form.nextLine();
  const top = form.nextRow;
  let formulas = 0;
  for (const [label, problem, guarded] of lines) {
    form.cell(0, label, "label");
    form.cell(1, `=IFERROR(${problem},${quote(`${label}: holds an error`)})`, "note");
    formulas += 1;
    if (kind === "typed" && guarded !== undefined) {
      form.rangeOf(problemName(guarded.name), 1, form.nextRow, 1, form.nextRow);
    }
    if (guarded?.kind === "number" && guarded.quantity === LENGTH) {
      form.cell(2, `=${reading(guarded.name)}`, "note");
      form.rangeOf(readName(guarded.name), 2, form.nextRow, 2, form.nextRow);
      formulas += 1;
    }
    form.nextLine();
  }
  form.rangeOf(`${kind}_problems`, 1, top, 1, form.nextRow - 1);
  form.rangeOf(`${kind}_watch`, 1, top, 2, form.nextRow - 1);
  form.number(`${kind}_planned`, formulas);
}
