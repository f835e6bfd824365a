/**
 * A sheet as data: what a host needs to write it, and nothing about how. Addresses are A1; formulas are in English with
 * commas and points, as both hosts take them.
 */

import type { Quantity, Units } from "../../src/quantity";

/** What a cell is for, which decides how it looks. */
export type Look =
  | "title"
  | "subtitle"
  | "section"
  | "label"
  | "input"
  | "inputText"
  | "result"
  | "text"
  | "unit"
  | "heading"
  | "columnHead"
  | "note"
  | "caution"
  | "summary"
  | "verdict"
  | "line"
  | "locked";

export interface CellPlan {
  readonly at: string;
  readonly content: string | number;
  readonly look: Look;
  /** Number format; omitted for text. "@" keeps whatever is typed as text, so that 1/2 is no date. */
  readonly format?: string;
  /** How many columns the cell spreads over, 1 if omitted. */
  readonly columns?: number;
  /** How many rows the cell spreads over, 1 if omitted. */
  readonly rows?: number;
}

/**
 * A name of the sheet: a person's own formulas may use it, and conversion finds the cells by it wherever they have moved,
 * also those of rows a person inserted.
 */
export interface NamePlan {
  readonly name: string;
  /** A cell, or a column of cells such as B12:B27. */
  readonly at: string;
  /** The quantity in the cell, so that conversion can rewrite number and format; omitted for text. */
  readonly quantity?: Quantity;
  readonly input: boolean;
}

export interface ListPlan {
  readonly at: string;
  readonly allowed: readonly string[];
}

/**
 * What a typed number is expected to lie between, in the plan's own units. Only a warning: the person may go on. In a cell
 * kept as text (format "@") only a plain number is judged; 1-1/2 is left to the formula that reads it.
 */
export interface RangePlan {
  /** A cell or a column of cells that has a name: conversion finds it by that name. */
  readonly at: string;
  readonly least: number;
  readonly most: number;
  readonly title: string;
  readonly message: string;
}

/** What stands along the axes, with its unit. */
export interface AxisTitles {
  readonly x: string;
  readonly y: string;
}

export interface ChartPlan {
  readonly title: string;
  readonly kind: "bar" | "line";
  readonly labels: string;
  /** One range a series, its heading first. */
  readonly values: readonly string[];
  readonly axes: AxisTitles;
  /** The corner cells the chart lies between. */
  readonly from: string;
  readonly to: string;
}

/** A form is one upright page; a list is as wide as the page lies and as many pages long as it needs. */
export type Paper = "form" | "list";

export interface PrintPlan {
  readonly area: string;
  readonly paper: Paper;
}

export interface SheetPlan {
  readonly template: TemplateId;
  readonly title: string;
  readonly units: Units;
  /** Column widths in characters, from A on. */
  readonly widths: readonly number[];
  readonly cells: readonly CellPlan[];
  readonly names: readonly NamePlan[];
  readonly lists: readonly ListPlan[];
  readonly ranges: readonly RangePlan[];
  /** Ranges whose texts begin with a sign of SIGNS; the hosts color them, the words carry the meaning. */
  readonly signs: readonly string[];
  readonly charts: readonly ChartPlan[];
  readonly frozenRows: number;
  readonly print: PrintPlan;
}

export type TemplateId = "procedure" | "gas" | "cycle";

export interface Template {
  readonly id: TemplateId;
  /** Name of the new sheet, and of the choice in the pane. */
  readonly title: string;
  plan(units: Units): SheetPlan;
}

/** What a verdict begins with. */
export const SIGNS = { holds: "✓ ", attention: "▲ " } as const;

/** Two names that every sheet carries: the one that tells which template it is, and that of its system of units. */
export function formName(template: TemplateId): string {
  return `form_${template}`;
}
export const UNITS_NAME = "sheet_units";
/** The system that the sheet was written or converted in; a units cell that differs was changed by hand. */
export const UNITS_SET_NAME = "units_set";
/** What formulas are handed for units: the cell's word, or a word that they refuse. */
export const UNITS_READ_NAME = "units_read";
