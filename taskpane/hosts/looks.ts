/** How each kind of cell looks, in terms both hosts understand. Colors hold 4.5:1 against their fill. */

import type { Look, SIGNS } from "../sheets/sheet";

export interface Style {
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly size?: number;
  readonly ink?: string;
  readonly fill?: string;
  readonly align?: "left" | "center" | "right";
  readonly wrap?: boolean;
  /** A thin line below the cell. */
  readonly underline?: string;
}

const INK = "#1D2B32";
const FAINT = "#51626B";
const RULE = "#B4C2C9";

export const LOOKS: Record<Look, Style> = {
  title: { bold: true, size: 16, ink: INK },
  subtitle: { italic: true, ink: FAINT },
  section: { bold: true, ink: "#FFFFFF", fill: "#3A5561" },
  label: { ink: INK },
  input: { ink: "#173F73", fill: "#E4EEF9", align: "right", underline: "#5C86B8" },
  inputText: { ink: "#173F73", fill: "#E4EEF9", align: "left", underline: "#5C86B8" },
  result: { bold: true, ink: INK, align: "right", underline: RULE },
  text: { bold: true, ink: INK, align: "left", underline: RULE },
  unit: { ink: FAINT, align: "left" },
  heading: { italic: true, ink: FAINT, underline: RULE },
  columnHead: { italic: true, ink: FAINT, align: "right", underline: RULE },
  listHead: { italic: true, ink: FAINT, align: "right", underline: RULE, wrap: true },
  listHeading: { italic: true, ink: FAINT, align: "left", underline: RULE, wrap: true },
  note: { italic: true, ink: FAINT, align: "left" },
  caution: { ink: "#5A3A00", fill: "#FCF4E3", wrap: true },
  summary: { bold: true, ink: INK, align: "left", wrap: true },
  verdict: { ink: INK, align: "left", underline: RULE, wrap: true },
  // Not wrapped: no host makes a row higher for what a formula elsewhere fills. Beside it there is room.
  remark: { ink: INK, align: "left", underline: RULE },
  line: { underline: "#6E7F88" },
  locked: { bold: true, ink: INK, align: "center", underline: RULE },
};

/** Whether a fill is that of the heading across the sheet with which a block begins. */
export function isBlockFill(fill: string | undefined): boolean {
  return fill?.toUpperCase() === LOOKS.section.fill;
}

/** Over rows that a formula grays; the ink holds its contrast. */
export const GRAYED: Style = { ink: "#5A666C", fill: "#E6EAEC" };

/** The series of a chart: each is far darker or lighter than the one before it, so that a gray print tells them apart. */
export const CHART_INKS = [
  "#1F5F7A",
  "#D98A3D",
  "#7A3E1F",
  "#F0C894",
  "#3A5561",
  "#8FCBE4",
  "#51626B",
] as const;

export function chartInk(series: number): string {
  return CHART_INKS[series % CHART_INKS.length] ?? INK;
}

/** What a verdict's sign adds to the look of its cell. The fill is light enough to print as paper. */
export const SIGN_LOOKS: Record<keyof typeof SIGNS, Style> = {
  holds: { ink: "#1B5E2B" },
  // Not bold: an engine that breaks lines by the cell's own letters would cut wider ones off.
  attention: { ink: "#8A2A0B", fill: "#FDF0E1" },
};
