/**
 * The watch over single cells: each typed cell must hold what a person could mean, each computed cell must still be
 * computed. A sentence a cell, in a table behind the page; the checks on the page gather them.
 */

import type { Quantity, Units } from "../../src/quantity";
import { LENGTH } from "../../src/quantity";
import { DATE_HINT } from "../../src/sizes";
import { call } from "./call";
import type { Between, Layout } from "./layout";
import { UNITS_NAME } from "./sheet";

export type Guarded =
  | { readonly kind: "computed"; readonly label: string; readonly name: string }
  | {
      readonly kind: "word";
      readonly label: string;
      readonly name: string;
      readonly allowed: readonly string[];
      readonly mayBeBlank: boolean;
    }
  | {
      readonly kind: "number";
      readonly label: string;
      readonly name: string;
      readonly quantity: Quantity;
      readonly unit: string | undefined;
      readonly range: Readonly<Record<Units, Between>>;
      readonly mayBeBlank: boolean;
    };

const OTHER = { US: "SI", SI: "US" } as const;
/** Day numbers of this century: what a spreadsheet makes of a fraction. */
const DATES = [36_526, 73_050] as const;

/** "0.05 to 20 in", and what a number of the other system would be. */
export function rangeText(
  range: Readonly<Record<Units, Between>>,
  quantity: Quantity,
  unit: string | undefined,
  units: Units,
): string {
  const [least, most] = range[units];
  const shown = unit ?? quantity[units].unit;
  return `between ${String(least)} and ${String(most)}${shown === "" ? "" : ` ${shown}`}`;
}

/** The sentence of one cell; "" where nothing is wrong. */
export function problemOf(guarded: Guarded): string {
  const cell = `{${guarded.name}}`;
  const { label } = guarded;
  switch (guarded.kind) {
    case "computed":
      return `IF(ISFORMULA(${cell}),"",${quote(`${label}: typed over; undo it, or insert the sheet anew`)})`;
    case "word": {
      const known = guarded.allowed.map((word) => `UPPER(TRIM(${cell}&""))=${quote(word.toUpperCase())}`);
      const blank = guarded.mayBeBlank ? '""' : quote(`${label}: is blank`);
      return `IF(TRIM(${cell}&"")="",${blank},IF(OR(${known.join(",")}),"",${quote(`${label}: “`)}&${cell}&${quote("” is not one of the words in its list")}))`;
    }
    case "number":
      return numberProblem(guarded);
  }
}

function numberProblem(guarded: Extract<Guarded, { kind: "number" }>): string {
  const { label, name, quantity, mayBeBlank } = guarded;
  const cell = `{${name}}`;
  const blank = mayBeBlank ? '""' : quote(`${label}: is blank`);
  const outside = (units: Units): string => outsideRange(guarded, units);
  const alike = sameRange(guarded);
  const inRange = alike ? outside("US") : `IF({${UNITS_NAME}}="SI",${outside("SI")},${outside("US")})`;
  const text = `${quote(`${label}: “`)}&${cell}&${quote("” is text; type the number alone")}`;
  // A length may be typed as people write sizes: its own formula reads it, and what it cannot read is no number.
  const notNumber =
    quantity === LENGTH
      ? `IF(ISNUMBER(${call("SIZE", { text: cell })}),"",${quote(`${label}: “`)}&${cell}&${quote("” is no size; type a number, or a size such as 1-1/2")})`
      : text;
  return `IF(TRIM(${cell}&"")="",${blank},IF(ISNUMBER(${cell}),${inRange},${notNumber}))`;
}

function sameRange({ quantity, range, unit }: Extract<Guarded, { kind: "number" }>): boolean {
  return (
    (unit !== undefined || quantity.US.unit === quantity.SI.unit) &&
    range.US[0] === range.SI[0] &&
    range.US[1] === range.SI[1]
  );
}

/** What is said of a number outside its range, with a hint of what it may have been meant as. */
function outsideRange(guarded: Extract<Guarded, { kind: "number" }>, units: Units): string {
  const { label, name, quantity, range, unit } = guarded;
  const cell = `{${name}}`;
  const [least, most] = range[units];
  const said = ` is not ${rangeText(range, quantity, unit, units)}`;
  const hints = [
    ...(quantity === LENGTH && units === "US"
      ? [`IF(AND(${cell}>=${String(DATES[0])},${cell}<=${String(DATES[1])}),${quote(`; ${DATE_HINT}`)},"")`]
      : []),
    ...(sameRange(guarded) ? [] : [otherHint(cell, range, quantity, units)]),
  ];
  return `IF(AND(${cell}>=${String(least)},${cell}<=${String(most)}),"",${quote(`${label}: `)}&${cell}&${quote(said)}${hints.map((hint) => `&${hint}`).join("")})`;
}

function otherHint(
  cell: string,
  range: Readonly<Record<Units, Between>>,
  quantity: Quantity,
  units: Units,
): string {
  const other = OTHER[units];
  const [least, most] = range[other];
  return `IF(AND(${cell}>=${String(least)},${cell}<=${String(most)}),${quote(`; it may be ${quantity[other].unit}`)},"")`;
}

/** A text as a formula has it. */
export function quote(text: string): string {
  return `"${text.replaceAll('"', '""')}"`;
}

/** The table behind the page: a line for each watched cell, and one range over the sentences of each kind. */
export function guardTable(form: Layout): void {
  for (const [kind, name] of [
    ["typed", "typed_problems"],
    ["computed", "computed_problems"],
  ] as const) {
    const cells = form.guarded.filter((one) => (one.kind === "computed") === (kind === "computed"));
    form.cell(0, kind === "typed" ? "Typed cells" : "Computed cells", "heading");
    form.nextLine();
    const top = form.nextRow;
    for (const guarded of cells) {
      form.cell(0, guarded.label, "label");
      form.cell(1, `=IFERROR(${problemOf(guarded)},${quote(`${guarded.label}: holds an error`)})`, "note");
      form.nextLine();
    }
    form.rangeOf(name, 1, top, 1, form.nextRow - 1);
  }
}
