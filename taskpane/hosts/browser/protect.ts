/**
 * Labels and formulas of a form are not typed over, and its rows go only where a list is, until a person unlocks the sheet.
 * The engine can only lock a sheet with all its cells. What a person adds beside a form is free.
 */

import type { CommandResult } from "@odoo/o-spreadsheet";
import { CorePlugin, helpers, registries } from "@odoo/o-spreadsheet";

import { NAME_MARK } from "../../files/spoken";
import { isListName } from "../../sheets/pages";
import { isFormName } from "./form-names";
import { isOursToDo } from "./one-step";
import { typedIn } from "./typed-cells";

// The engine's words for it; its list of them is there only for the compiler.
const ALLOWED = "Success" as unknown as CommandResult;
const REFUSED = "Readonly" as unknown as CommandResult;

/** Sheets that a person has unlocked, until the page is closed. */
const unlocked = new Set<string>();
const listeners = new Set<(what: string) => void>();

export function isUnlocked(sheetId: string): boolean {
  return unlocked.has(sheetId);
}

export function setUnlocked(sheetId: string, isFree: boolean): void {
  if (isFree) unlocked.add(sheetId);
  else unlocked.delete(sheetId);
}

/** Calls back with what was refused, in words. */
export function onProtected(listener: (what: string) => void): void {
  listeners.add(listener);
}

interface Zone {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

type Command = Parameters<CorePlugin["allowDispatch"]>[0];

class ProtectForms extends CorePlugin {
  override allowDispatch(command: Command): CommandResult {
    const refused = isOursToDo() || !("sheetId" in command) ? undefined : this.#refused(command);
    if (refused === undefined) return ALLOWED;
    for (const listener of listeners) listener(refused);
    return REFUSED;
  }

  #refused(command: Command & { sheetId: string }): string | undefined {
    const { sheetId } = command;
    if (unlocked.has(sheetId) || !this.#isForm(sheetId)) return undefined;
    if (command.type === "UPDATE_CELL" && command.content === undefined) return undefined;
    if (command.type === "UPDATE_CELL" || command.type === "CLEAR_CELL") {
      return this.#inZones(sheetId, [cellZone(command)]);
    }
    const empties = command.type === "CLEAR_CELLS" || command.type === "DELETE_CONTENT";
    if (empties || command.type === "MOVE_RANGES") return this.#inZones(sheetId, command.target);
    return command.type === "REMOVE_COLUMNS_ROWS" ? this.#removal(command) : undefined;
  }

  #removal(command: {
    sheetId: string;
    dimension: "COL" | "ROW";
    elements: readonly number[];
  }): string | undefined {
    const { sheetId, dimension, elements } = command;
    const list = this.#listOf(sheetId);
    const { numberOfRows, numberOfCols } = this.getters.getSheetSize(sheetId);
    const isInList = (row: number): boolean => list !== undefined && row > list.top && row < list.bottom;
    const isKept = elements.some((one) =>
      dimension === "ROW"
        ? !isInList(one) && this.#holds(sheetId, { left: 0, right: numberOfCols - 1, top: one, bottom: one })
        : this.#holds(sheetId, { left: one, right: one, top: 0, bottom: numberOfRows - 1 }),
    );
    if (!isKept) return undefined;
    return dimension === "ROW"
      ? "Rows of this sheet can be deleted only inside a list: another row would take its neighbors with it"
      : "Columns of this sheet cannot be deleted: formulas stand in them";
  }

  #inZones(sheetId: string, zones: readonly Zone[]): string | undefined {
    const zone = zones.find((one) => this.#holds(sheetId, one));
    if (zone === undefined) return undefined;
    const at = helpers.toXC(zone.left, zone.top);
    return `${at} is a label or a formula of this sheet: type into the tinted cells`;
  }

  /** Whether a cell of the form that is not for typing lies there. */
  #holds(sheetId: string, { left, right, top, bottom }: Zone): boolean {
    for (let row = top; row <= bottom; row += 1) {
      for (let col = left; col <= right; col += 1) {
        const cell = this.getters.getCell({ sheetId, col, row });
        if (cell === undefined || typedIn(cell.style) !== undefined) continue;
        // What a form sets out it sets in the middle; nothing else of a sheet is, unless a person asks for it.
        if (cell.style?.verticalAlign === "middle" && (cell.isFormula || cell.content !== "")) return true;
      }
    }
    return false;
  }

  #isForm(sheetId: string): boolean {
    return this.getters
      .getNamedRanges()
      .some(({ name, range }) => range.sheetId === sheetId && name.startsWith("form_") && isFormName(name));
  }

  /** The column of a list of ours, from its heading to the line that ends it. */
  #listOf(sheetId: string): Zone | undefined {
    return this.getters
      .getNamedRanges()
      .find(({ name, range }) => range.sheetId === sheetId && isListName(name.split(NAME_MARK)[0] ?? name))
      ?.range.zone;
  }
}

function cellZone({ col, row }: { readonly col: number; readonly row: number }): Zone {
  return { left: col, right: col, top: row, bottom: row };
}

const NAME = "ringbead protected forms";

/** Before a model is made: it takes its plugins then. */
export function protectForms(): void {
  if (!registries.corePluginRegistry.contains(NAME)) registries.corePluginRegistry.add(NAME, ProtectForms);
}
