/** The numbers of the joint that the pictures are drawn from, and what is said of those that are not there. */

import type { Quantity, Units } from "../../src/quantity";
import { fromBase, LENGTH } from "../../src/quantity";
import { sizeOf } from "../../src/sizes";
import { SIGNS, UNITS_NAME } from "../sheets/sheet";
import type { Block, ShownCell, ShownForm } from "./cells";
import { BLANK } from "./cells";

/** As many rows as the sheet has for the oxygen in the bore. */
const LEVELS = 14;
/** The checks whose words tell why a number is missing, the most general first. */
const CHECKS = ["tube", "computed", "units", "typed", "gap", "bead", "sectors", "purge"].map(
  (name) => `check_${name}`,
);
const SINGLE = [
  "wall",
  "standoff",
  "electrode",
  "overlap",
  "rpm",
  "style",
  "purge_time",
  "target_ppm",
  UNITS_NAME,
];

/** What pictures read of a sheet: of a sector its angles, its mean current and the rise ahead of the arc in one row. */
export const BLOCKS: readonly Block[] = [
  ...[...SINGLE, ...CHECKS].map((name) => ({ name })),
  { name: "means", from: -2, columns: 4 },
  ...["peaks", "backs", "faces", "roots"].map((name) => ({ name })),
  { name: "levels", columns: 2, rows: LEVELS },
];

export interface Measure {
  readonly value: number;
  /** In the sheet's own digits, with its unit. */
  readonly shown: string;
}

/** Why a picture is not drawn. */
export interface Missing {
  readonly what: readonly string[];
  /** The words of the sheet's check, or "" where none of them speaks of it. */
  readonly why: string;
}

interface Limits {
  readonly least: number;
  readonly most: number;
}

/** Lengths, inches or millimeters: more than any tube of the trade has, and 0 only where a root may have none. */
export const SIZES: Limits = { least: 1e-6, most: 1e5 };

/** Reads number by number for one picture, and keeps account of those that are not there or cannot be drawn. */
export class Joint {
  readonly #missing: string[] = [];
  readonly units: Units;

  constructor(readonly form: ShownForm) {
    this.units = this.cell(UNITS_NAME).text === "SI" ? "SI" : "US";
  }

  get missing(): Missing | undefined {
    if (this.#missing.length === 0) return undefined;
    const why = CHECKS.map((name) => this.cell(name).text).find((text) => text.startsWith(SIGNS.attention));
    return { what: this.#missing, why: why ?? "" };
  }

  cell(name: string, row = 0, column = 0): ShownCell {
    return this.form.cells.get(name)?.[row]?.[column] ?? BLANK;
  }

  /** The rows of a block, without those that a person inserted and left blank. */
  rows(name: string): readonly (readonly ShownCell[])[] {
    return (this.form.cells.get(name) ?? []).filter((row) => row.some(({ kind }) => kind !== "blank"));
  }

  /** A number of one of the sheet's units. */
  measure(name: string, what: string, quantity: Quantity, limits: Limits): Measure | undefined {
    return this.of(this.cell(name), what, quantity, limits);
  }

  of(cell: ShownCell, what: string, quantity: Quantity, { least, most }: Limits): Measure | undefined {
    const { unit } = quantity[this.units];
    if (cell.number !== undefined && cell.number >= least && cell.number <= most) {
      return { value: cell.number, shown: withUnit(cell.text, unit) };
    }
    const why = { blank: "", error: "", text: " (not a number)", number: ` (${cell.text} is out of range)` };
    this.miss(what + why[cell.kind]);
    return undefined;
  }

  /** A size that a person may have typed as a fraction. */
  size(name: string, what: string): Measure | undefined {
    const cell = this.cell(name);
    const size = cell.kind === "text" ? sizeOf(cell.text, this.units) : undefined;
    if (typeof size !== "number") return this.measure(name, what, LENGTH, SIZES);
    const number = fromBase(size, LENGTH, this.units);
    const read = this.of({ kind: "number", text: cell.text, number }, what, LENGTH, SIZES);
    return read === undefined || /^[\d.\s/-]+$/.test(cell.text) ? read : { ...read, shown: cell.text };
  }

  miss(what: string): void {
    this.#missing.push(what);
  }
}

function withUnit(text: string, unit: string): string {
  return unit === "" ? text : unit === "°" ? `${text}°` : `${text} ${unit}`;
}
