/**
 * Sets a form out on a grid: sections below each other, each with a left and a right block of rows, every row label,
 * value and unit. Formulas speak of other rows by name, `{wall}`; the addresses are filled in when all rows are placed,
 * so that a row can be added anywhere.
 */

import type { Quantity, Units } from "../../src/quantity";
import { addressOf } from "./addresses";
import { formatOf } from "./formats";
import type { Guarded } from "./guards";
import { rangeText } from "./guards";
import type { CellPlan, ListPlan, Look, NamePlan, RangePlan } from "./sheet";
import { UNITS_NAME } from "./sheet";
import { addressesIn } from "./watched";

export type Side = "left" | "right";

/** How a form divides its columns: two blocks side by side, each with its labels first. */
export interface Grid {
  readonly blockColumns: number;
  /** How many columns a label spreads over. */
  readonly labelColumns: number;
  /** Columns of the whole form, where its right block is wider than its left one. */
  readonly columns?: number;
  /** Columns that stay in sight, as many as labels take: nothing lies over their edge. None if omitted. */
  readonly frozenColumns?: number;
}
/** Left block in columns A to D, right block in E to H. */
const EIGHT_COLUMNS: Grid = { blockColumns: 4, labelColumns: 1 };

export interface Row {
  readonly label: string;
  /** A label that follows the sheet, such as "typed" or "suggested"; `label` then names the row elsewhere. */
  readonly labelFormula?: string;
  readonly name: string;
  /** A constant or a formula; an input may differ between the systems. */
  readonly content: string | number | Record<Units, string | number>;
  readonly look: Extract<Look, "input" | "inputText" | "result" | "text" | "locked">;
  readonly quantity?: Quantity;
  /** Text beside the value instead of the quantity's unit. */
  readonly unit?: string;
  /** Names of the further cells that the answer fills to the right. */
  readonly fills?: readonly string[];
  /** How many columns a single answer spreads over. */
  readonly columns?: number;
  readonly allowed?: readonly string[];
  readonly format?: string;
  /** What a person could mean, in the written units of each system; a typed number has one. */
  readonly range?: Between | Readonly<Record<Units, Between>>;
  /** The smallest number above 0 that a person could mean, where the range begins at 0. */
  readonly above0?: number;
  /** A word outside of `allowed` may still be one: a formula knows other names, and refuses what it does not know. */
  readonly otherNames?: boolean;
  /** A typed cell that may stay blank, since a formula has a default for it. */
  readonly mayBeBlank?: boolean;
}
/** Column and row of a cell. */
export type Corner = readonly [column: number, row: number];
export type Between = readonly [least: number, most: number];

export class Layout {
  readonly cells: CellPlan[] = [];
  readonly names: NamePlan[] = [];
  readonly lists: ListPlan[] = [];
  readonly ranges: RangePlan[] = [];
  /** Where checks show their sign. */
  readonly signs: string[] = [];
  /** Single cells that are watched: what is typed, and what must stay computed. */
  readonly guarded: Guarded[] = [];
  readonly #ranges = new Map<string, string>();
  #row = 1;

  constructor(
    readonly units: Units,
    readonly grid: Grid = EIGHT_COLUMNS,
  ) {}

  get #allColumns(): number {
    return this.grid.columns ?? 2 * this.grid.blockColumns;
  }

  #firstColumn(side: Side): number {
    return side === "left" ? 0 : this.grid.blockColumns;
  }

  get lastRow(): number {
    return this.#row - 1;
  }

  /** The row that the next line will take. */
  get nextRow(): number {
    return this.#row;
  }

  /** Where a text across the whole form stands: beside the columns that stay in sight. */
  get bannerColumn(): number {
    return this.grid.frozenColumns ?? 0;
  }

  /** One cell across the whole form, in as many rows as it needs. */
  banner(content: string, look: Look, rows = 1): void {
    const beside = this.bannerColumn;
    // A heading begins in the columns that stay in sight, up to its colon.
    const isHeading = look === "title" || look === "section";
    const [, first = "", rest = ""] = (isHeading ? HEADING.exec(content) : undefined) ?? [];
    if (beside > 0) this.#put(0, first, look, { columns: beside, rows });
    this.#put(beside, beside > 0 && isHeading ? rest : content, look, {
      columns: this.#allColumns - beside,
      rows,
    });
    this.#row += rows;
  }

  section(title: string): void {
    this.banner(title, "section");
  }

  /** A left and a right block that start on the same line. */
  blocks(left: readonly Row[], right: readonly Row[]): void {
    const top = this.#row;
    for (const [side, rows] of [["left", left] as const, ["right", right] as const]) {
      this.#row = top;
      for (const row of rows) this.#place(row, side);
    }
    this.#row = top + Math.max(left.length, right.length);
  }

  /** One label and a text across the rest of the form. */
  wide(label: string, name: string, content: string, look: Look, rows = 1): void {
    const { labelColumns } = this.grid;
    this.#label(0, label);
    this.#put(labelColumns, content, look, {
      columns: this.#allColumns - labelColumns,
      ...(rows > 1 ? { rows } : {}),
    });
    this.#name(name, labelColumns, undefined, false);
    this.#row += rows;
  }

  /** A table that one formula fills, under its headings; `rows` is how far it spills. */
  table(
    side: Side,
    name: string,
    headings: readonly string[],
    formula: string,
    formats: readonly string[],
    rows: number,
  ): void {
    const column = this.#firstColumn(side);
    headings.forEach((heading, i) => {
      this.#put(column + i, heading, i === 0 ? "heading" : "columnHead");
    });
    this.#row += 1;
    this.#put(column, formula, "text");
    this.#name(name, column, undefined, false);
    for (let r = 0; r < rows; r += 1) {
      formats.forEach((format, c) => {
        if (r === 0 && c === 0) return;
        this.#put(column + c, "", c === 0 ? "text" : "result", { format });
      });
      this.#row += 1;
    }
  }

  /** Goes back to a line, to fill the other side of it. */
  backTo(row: number): void {
    this.#row = row;
  }

  downTo(row: number): void {
    this.#row = Math.max(this.#row, row);
  }

  /** A cell anywhere on the current line. */
  cell(column: number, content: string | number, look: Look, more: Partial<CellPlan> = {}): void {
    this.#put(column, content, look, more);
  }

  /** A row of cells side by side on the current line. */
  across(
    column: number,
    contents: readonly (string | number)[],
    look: Look,
    formats: readonly string[] = [],
  ): void {
    contents.forEach((content, i) => {
      const format = formats[i];
      this.#put(column + i, content, look, format === undefined ? {} : { format });
    });
  }

  /** Lets formulas speak of a block of cells, `{means}`; the sheet itself gets no such name. */
  range(name: string, from: string, to: string): void {
    this.#ranges.set(name, from === to ? absolute(from) : `${absolute(from)}:${absolute(to)}`);
  }

  /** Lets formulas speak of a number that is known only once all rows are placed. */
  number(name: string, value: number): void {
    this.#ranges.set(name, String(value));
  }

  /** The same for a block of whole columns and rows. */
  rangeOf(name: string, column: number, row: number, lastColumn: number, lastRow: number): void {
    this.range(name, address(column, row), address(lastColumn, lastRow));
  }

  /** Names the cell of a column on the current line, or a block of cells from there on down. */
  name(name: string, column: number, quantity?: Quantity, input = false, rows = 1): void {
    this.#name(name, column, quantity, input, rows);
  }

  /** Room for charts: an empty cell of that many rows in each block, or one across the form. */
  chartSpace(rows: number, sides: readonly Side[]): { readonly from: string; readonly to: string }[] {
    const columns = this.#allColumns / sides.length;
    const spaces = sides.map((_, i) => {
      this.#put(i * columns, "", "note", { columns, rows });
      return {
        from: address(i * columns, this.#row),
        to: address((i + 1) * columns - 1, this.#row + rows - 1),
      };
    });
    this.#row += rows;
    return spaces;
  }

  nextLine(): void {
    this.#row += 1;
  }

  /** One row of a block anywhere: label, value and unit from a column on. */
  row(row: Row, column: number): void {
    this.#placeAt(row, column);
  }

  /** Addresses of the formulas that no guard watches yet, in the order they were placed. */
  unwatched(): readonly string[] {
    const watched = new Set(
      this.guarded.flatMap(({ kind, name }) =>
        kind === "computed" || kind === "block" ? addressesIn(this.#placeOf(name)) : [],
      ),
    );
    return this.cells
      .filter(({ at, content, look }) => {
        const computed = typeof content === "string" && content.startsWith("=");
        return computed && look !== "summary" && look !== "verdict" && !watched.has(at);
      })
      .map(({ at }) => at);
  }

  #placeOf(name: string): string {
    const place = this.#ranges.get(name) ?? this.names.find((one) => one.name === name)?.at;
    if (place === undefined) throw new Error(`the form has no row named ${name}`);
    return place.replaceAll("$", "");
  }

  /** The cells with every {name} replaced by its address, and {name?} by the address or "" where that cell is blank. */
  finished(): CellPlan[] {
    const places = new Map([
      ...this.#ranges,
      ...this.names.map(({ name, at }) => [name, absolute(at)] as const),
    ]);
    const fill = (content: string): string =>
      content.replace(/\{(\w+)(\?)?\}/g, (_, name: string, optional?: string) => {
        const place = places.get(name);
        if (place === undefined) throw new Error(`the form has no row named ${name}`);
        return optional === undefined ? place : `IF(${place}="","",${place})`;
      });
    return this.cells.map((cell) =>
      typeof cell.content === "string" && cell.content.startsWith("=")
        ? { ...cell, content: fill(cell.content) }
        : cell,
    );
  }

  #place(row: Row, side: Side): void {
    this.#placeAt(row, this.#firstColumn(side));
  }

  /** The value of a row alone, in any column of the current line: further columns of the same row. */
  value(row: Row, column: number): void {
    const content = typeof row.content === "object" ? row.content[this.units] : row.content;
    const format =
      row.format ?? (row.quantity === undefined ? undefined : formatOf(row.quantity, this.units));
    const { fills = [], columns = 1 } = row;
    const more = format === undefined ? {} : { format };
    this.#put(column, content, row.look, columns > 1 ? { ...more, columns } : more);
    fills.forEach((name, i) => {
      this.#put(column + 1 + i, "", row.look, more);
      this.#name(name, column + 1 + i, row.quantity, false);
    });
    this.#name(row.name, column, row.quantity, row.look === "input" || row.look === "inputText");
    if (row.allowed !== undefined) this.lists.push({ at: address(column, this.#row), allowed: row.allowed });
    this.#guard(row, column);
  }

  /** The unit of a row, beside its values. */
  unit(row: Row, column: number): void {
    const unit = row.unit ?? unitText(row.quantity);
    if (unit !== "") this.#put(column, unit, "unit");
  }

  /** The label of a row, in any column of the current line. */
  labelOf(row: Row, column: number): void {
    this.#label(column, row.labelFormula ?? row.label);
  }

  #placeAt(row: Row, labelAt: number): void {
    const column = labelAt + this.grid.labelColumns;
    const isText = row.quantity === undefined && row.unit === undefined;
    const columns = row.columns ?? (isText ? this.grid.blockColumns - this.grid.labelColumns : 1);
    this.labelOf(row, labelAt);
    this.value({ ...row, columns }, column);
    this.unit(row, column + Math.max(1 + (row.fills ?? []).length, columns));
    this.#row += 1;
  }

  /** Typed cells are held to their range or words, computed ones to being computed. */
  #guard(row: Row, column: number): void {
    const { label, name, look, quantity, mayBeBlank = false, otherNames = false } = row;
    if (look === "result" || look === "text") this.guardComputed(label, name);
    if (look === "inputText" && row.allowed !== undefined) {
      const allowed = otherNames ? undefined : row.allowed;
      this.guarded.push({ kind: "word", label, name, allowed, mayBeBlank });
    }
    if (look !== "input") return;
    if (row.range === undefined || quantity === undefined) throw new Error(`${name} has no range`);
    const range = "US" in row.range ? row.range : { US: row.range, SI: row.range };
    const guarded = {
      kind: "number",
      label,
      name,
      quantity,
      unit: row.unit,
      range,
      above0: row.above0,
      mayBeBlank,
    } as const;
    this.guarded.push(guarded);
    const [least, most] = range[this.units];
    this.ranges.push({
      at: address(column, this.#row),
      least,
      most,
      title: titleOf(label),
      message: rangeText(guarded, this.units),
    });
  }

  /** A computed cell outside the blocks, which must stay computed too. */
  guardComputed(label: string, name: string): void {
    this.guarded.push({ kind: "computed", label, name });
  }

  /** The same for the formulas of a whole block of cells. */
  guardBlock(label: string, name: string, [column, row]: Corner, [lastColumn, lastRow]: Corner): void {
    this.rangeOf(name, column, row, lastColumn, lastRow);
    const within = new Set(addressesIn(this.#placeOf(name)));
    const formulas = this.cells.filter(
      ({ at, content }) => within.has(at) && String(content).startsWith("="),
    ).length;
    this.guarded.push({ kind: "block", label, name, formulas });
  }

  #label(column: number, text: string): void {
    const { labelColumns } = this.grid;
    this.#put(column, text, "label", labelColumns > 1 ? { columns: labelColumns } : {});
  }

  #put(column: number, content: string | number, look: Look, more: Partial<CellPlan> = {}): void {
    this.cells.push({ at: address(column, this.#row), content, look, ...more });
  }

  #name(name: string, column: number, quantity: Quantity | undefined, input: boolean, rows = 1): void {
    const first = address(column, this.#row);
    const at = rows === 1 ? first : `${first}:${address(column, this.#row + rows - 1)}`;
    this.names.push({ name, at, input, ...(quantity === undefined ? {} : { quantity }) });
  }
}

const HEADING = /^([^:]*)(?:: )?(.*)$/;

/** A label as the heading of a message, for which hosts have little room. */
function titleOf(label: string): string {
  return label.replace(/ \(.*\)$/, "").slice(0, LONGEST_TITLE);
}
const LONGEST_TITLE = 32;

/**
 * The cell in a row no higher than its letters, where it is a label of a column and between two rows: a page takes more of
 * them.
 */
export function closeTogether(
  cell: CellPlan,
  column: string,
  [top, end]: readonly [top: number, end: number],
): CellPlan {
  const row = Number(/\d+/.exec(cell.at)?.[0]);
  const isLabel = cell.at.startsWith(column) && cell.look !== "note";
  return isLabel && row >= top && row < end ? { ...cell, lines: 1 } : cell;
}

/** The unit of a quantity, as text where both systems share it, else as a formula that follows the units cell. */
function unitText(quantity: Quantity | undefined): string {
  if (quantity === undefined) return "";
  const [us, si] = [quantity.US.unit, quantity.SI.unit];
  return us === si ? us : `=IF({${UNITS_NAME}}="SI","${si}","${us}")`;
}

/** Of a column from 0 and a row from 1. */
export function address(column: number, row: number): string {
  return addressOf({ column, row: row - 1 });
}

function absolute(at: string): string {
  return at.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
}
