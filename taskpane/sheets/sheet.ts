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
  | "listHead"
  | "listHeading"
  | "note"
  | "caution"
  | "summary"
  | "verdict"
  | "remark"
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
  /** Lines of text that its row has room for; as the host has it if omitted: no host counts those of what a formula elsewhere fills. */
  readonly lines?: number;
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

/** Columns, lines over words, curves over a scale of numbers, or one bar across made up of its series. */
export type ChartKind = "bar" | "line" | "curve" | "timeBar";

export interface ChartPlan {
  readonly title: string;
  readonly kind: ChartKind;
  readonly labels: string;
  /** One range a series, its heading first. */
  readonly values: readonly string[];
  readonly axes: AxisTitles;
  /** A curve's values on a scale of powers of ten; on an even one, close to the values, if omitted. */
  readonly logarithmic?: boolean;
  /** Which series of a curve are single points, counted from 0. */
  readonly dots?: readonly number[];
  /** Which of these stand out by another mark. */
  readonly marked?: readonly number[];
  /** Which of these are called by what stands in the column left of the labels. */
  readonly named?: readonly number[];
  /** The corner cells the chart lies between. */
  readonly from: string;
  readonly to: string;
}

/**
 * A form is upright and goes on to another page between its blocks where a host prints it at its own size, a wide one the
 * same across; a page is upright and made small enough for one; a list is as wide as the page lies and as many pages long
 * as it needs.
 */
export type Paper = "form" | "wide" | "page" | "list";

export function liesAcross(paper: Paper): boolean {
  return paper === "list" || paper === "wide";
}

export interface PrintPlan {
  readonly area: string;
  readonly paper: Paper;
}

/**
 * Rows that are grayed: those where a formula, written for the first row of the range, holds. The words in the row say why;
 * the gray only helps.
 */
export interface GrayedPlan {
  readonly at: string;
  readonly formula: string;
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
  /** Columns that stay in sight, none if omitted; no cell lies over their edge. */
  readonly frozenColumns?: number;
  readonly grayed?: readonly GrayedPlan[];
  /** A list whose lines can be filtered, from its heading on. */
  readonly filter?: string;
  readonly print: PrintPlan;
}

export type TemplateId = "procedure" | "sizes" | "gas" | "bid" | "cycle" | "log" | "coupons";

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
/** Blank rows below the printed page that a file has the sheet's pictures in. */
export const PICTURES_NAME = "pictures";
/** The system that the sheet was written or converted in; a units cell that differs was changed by hand. */
export const UNITS_SET_NAME = "units_set";
/** What formulas are handed for units: the cell's word, or a word that they refuse. */
export const UNITS_READ_NAME = "units_read";
