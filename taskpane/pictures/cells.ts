/** What pictures ask of the sheet being shown: cells by their names, wherever these have moved. */

import type { TemplateId } from "../sheets/sheet";

/** The rows of a name, or as many as told from its first on; columns counted from its own. */
export interface Block {
  readonly name: string;
  /** The first column, 0 that of the name. */
  readonly from?: number;
  readonly columns?: number;
  readonly rows?: number;
}

export interface ShownCell {
  readonly kind: "blank" | "number" | "text" | "error";
  /** What it shows. */
  readonly text: string;
  /** Of a number, in full. */
  readonly number?: number;
}

export interface ShownForm {
  readonly template: TemplateId;
  /** The rows of every block that is there, by its name. */
  readonly cells: ReadonlyMap<string, readonly (readonly ShownCell[])[]>;
}

export const BLANK: ShownCell = { kind: "blank", text: "" };

/** A cell from what a spreadsheet tells of it; a file keeps an empty answer of ours as a space that no line breaks at. */
export function shownCell(value: unknown, shown: string, isError: boolean): ShownCell {
  const text = shown.replaceAll("\u00a0", " ").trim();
  if (isError) return { kind: "error", text };
  if (typeof value === "number" && Number.isFinite(value)) {
    // Signs in place of digits stand for a column that is too narrow.
    return {
      kind: "number",
      text: /^#*$/.test(text) ? String(Number(value.toPrecision(4))) : text,
      number: value,
    };
  }
  return text === "" ? BLANK : { kind: "text", text };
}
