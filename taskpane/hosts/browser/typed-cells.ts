/**
 * A cell to type in keeps its number format and look, whatever is typed, pasted or filled into it. The engine alone takes
 * 1/2 for a date and 5 % for a percentage, and every later number of that cell is then shown as one.
 */

import type { Model } from "@odoo/o-spreadsheet";
import { CorePlugin, helpers, registries } from "@odoo/o-spreadsheet";

import { TEXT_FORMAT } from "../ranges";

/** What a cell is typed with; "text" lets a date stay as it was written. */
export type Typed = "number" | "text";

/** Stands in the cell's style, so that it moves with the cell and an inserted row has it too. */
export function typedMark(typed: Typed): object {
  return { typed };
}

export function typedIn(style: unknown): Typed | undefined {
  return (style as { typed?: Typed } | undefined)?.typed;
}

type Command = Parameters<CorePlugin["beforeHandle"]>[0];

class TypedCells extends CorePlugin {
  /** Changes the command itself, so that the cell is written once and undone in one step. */
  override beforeHandle(command: Command): void {
    if (command.type !== "UPDATE_CELL" || command.content === undefined) return;
    const before = this.getters.getCell(command);
    const typed = typedIn(before?.style);
    if (before === undefined || typed === undefined) return;
    const { content } = command;
    delete command.style;
    delete command.format;
    command.content = kept(content, typed, before.format, this.getters.getLocale());
  }
}

type Locale = ReturnType<Model["getters"]["getLocale"]>;

/** The content that the engine will not take for a date, a percentage or an amount of money. */
function kept(content: string, typed: Typed, planned: string | undefined, locale: Locale): string {
  // In a cell of text the engine would keep the apostrophe, which says that a text follows, as part of the text.
  if (planned === TEXT_FORMAT && /^'[^=+']/.test(content)) return content.slice(1);
  if (content.startsWith("=") || planned === TEXT_FORMAT || Number.isFinite(Number(content))) return content;
  // Year first, a date can be nothing else, and its cell shows it as it was typed.
  if (planned?.startsWith("yyyy") === true && /^\d{4}-\d{1,2}-\d{1,2}$/.test(content)) return content;
  const isDate = helpers.isDateTime(content, locale);
  if (!isDate && !helpers.isNumber(content, locale)) return content;
  // As written: a formula reads a size such as 1/2, and the sheet's checks tell 0:30, 1 000 and 0,5 instead of a guess.
  if (isDate || content.includes(locale.thousandsSeparator ?? ",")) return `'${content}`;
  if (planned !== undefined) return content;
  return typed === "text" ? `'${content}` : String(helpers.toNumber(content, locale));
}

const NAME = "ringbead typed cells";

/** Before a model is made: it takes its plugins then. */
export function keepTypedCells(): void {
  if (!registries.corePluginRegistry.contains(NAME)) registries.corePluginRegistry.add(NAME, TypedCells);
}
