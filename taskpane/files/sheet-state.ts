/** A sheet as it stands, with its values: all that a file of it needs, and nothing of the program it stood in. */

import type { Place } from "../sheets/addresses";
import type { Style } from "../hosts/looks";
import type { Picture } from "../pictures/picture";
import type { AxisTitles, ChartKind, GrayedPlan, PrintPlan } from "../sheets/sheet";

export type Value = string | number | boolean;

/** The block that one formula's answer fills. */
export interface Spill {
  /** The formula, as its first cell holds it. */
  readonly formula: string;
  readonly from: Place;
  readonly columns: number;
  readonly rows: number;
}

export interface SnapshotCell {
  readonly at: string;
  readonly value: Value;
  /** The formula with its =; omitted for a typed cell, and for one that a formula elsewhere fills. */
  readonly formula?: string;
  /** Where the value is part of a larger answer, in its first cell too. */
  readonly spill?: Spill;
  /** The value is part of an answer that a cell elsewhere gives; of a sheet out of a file. */
  readonly isFilled?: boolean;
  readonly style: Style;
  readonly format?: string;
}

export interface SnapshotName {
  readonly name: string;
  /** The name as the sheet's formulas speak of it. */
  readonly spoken: string;
  readonly range: string;
}

/** What a typed number is expected to lie between, and what is said of one that does not. */
export interface SnapshotRange {
  readonly range: string;
  readonly least: number;
  readonly most: number;
  readonly title: string;
  readonly message: string;
  /** The cells are kept as text. */
  readonly isText: boolean;
}

export interface SnapshotChart {
  readonly title: string;
  readonly kind: ChartKind;
  readonly labels: string;
  /** One range a series, its heading first. */
  readonly values: readonly string[];
  readonly axes: AxisTitles;
  readonly logarithmic?: boolean;
  readonly dots?: readonly number[];
  readonly marked?: readonly number[];
  readonly named?: readonly number[];
  readonly from: Place;
  /** The cell whose upper left corner ends the chart. */
  readonly to: Place;
}

export interface Snapshot {
  readonly name: string;
  /** Characters that each column is wide, from A on. */
  readonly widths: readonly number[];
  /** Points that each row is high, from 1 on. */
  readonly heights: readonly number[];
  readonly cells: readonly SnapshotCell[];
  /** Ranges of merged cells. */
  readonly merges: readonly string[];
  readonly names: readonly SnapshotName[];
  readonly lists: readonly { readonly range: string; readonly allowed: readonly string[] }[];
  readonly ranges: readonly SnapshotRange[];
  /** Ranges whose texts are colored by the sign they begin with. */
  readonly signs: readonly string[];
  readonly charts: readonly SnapshotChart[];
  readonly grayed: readonly GrayedPlan[];
  /** A list that can be filtered, from its heading on. */
  readonly filter?: string;
  readonly frozenRows: number;
  readonly frozenColumns: number;
  readonly gridLines: boolean;
  readonly print?: PrintPlan;
  /** What is drawn from the sheet's values; a file holds it, and does not give it back. */
  readonly pictures?: readonly Picture[];
}
