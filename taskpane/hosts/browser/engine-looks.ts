/** Looks and measures as the engine has them, and how it remembers the paper that it knows nothing of. */

import type { Paper } from "../../sheets/sheet";
import type { Style } from "../looks";

/** Pixels that one character of width takes. */
export const CHARACTER_WIDTH = 7.4;
export const ROW_HEIGHT = 21;
/** Pixels that a line of text takes where a row has room for so many: those of a row in Excel. */
export const LINE_HEIGHT = 20;

/** The engine knows no print area; a name of the sheet's own tells it, and which way the page lies. */
export const PRINT_NAMES: Readonly<Record<Paper, string>> = {
  form: "print_form",
  wide: "print_wide",
  page: "print_page",
  list: "print_list",
};

/** What a name says of the paper; undefined for any other name. */
export function paperOf(name: string): Paper | undefined {
  return (["form", "wide", "page", "list"] as const).find((paper) => PRINT_NAMES[paper] === name);
}

export function engineStyle(look: Style): object {
  return {
    ...(look.bold === true ? { bold: true } : {}),
    ...(look.italic === true ? { italic: true } : {}),
    ...(look.size === undefined ? {} : { fontSize: look.size }),
    ...(look.ink === undefined ? {} : { textColor: look.ink }),
    ...(look.fill === undefined ? {} : { fillColor: look.fill }),
    ...(look.align === undefined ? {} : { align: look.align }),
    ...(look.wrap === true ? { wrapping: "wrap" } : {}),
    verticalAlign: "middle",
  };
}
