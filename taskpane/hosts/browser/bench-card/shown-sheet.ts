/**
 * The sheet being shown as a person reads it: what its named cells show, with the unit that stands beside. Nothing is
 * computed or formatted here, so that card and strip can say nothing that the sheet does not.
 */

import type { Model } from "@odoo/o-spreadsheet";

import { NAME_MARK } from "../../../files/spoken";
import { TEMPLATES } from "../../../sheets";
import type { TemplateId } from "../../../sheets/sheet";
import { formName } from "../../../sheets/sheet";

type Getters = Model["getters"];
type Zone = ReturnType<Getters["getNamedRanges"]>[number]["range"]["zone"];

/** A sheet that holds a form, to choose from. */
export interface FormSheet {
  readonly id: string;
  readonly name: string;
}

export class ShownSheet {
  readonly #getters: Getters;
  readonly #zones: ReadonlyMap<string, Zone>;
  readonly id: string;
  readonly template: TemplateId | undefined;

  constructor({ getters }: Model) {
    this.#getters = getters;
    this.id = getters.getActiveSheetId();
    this.#zones = zonesOf(getters, this.id);
    this.template = TEMPLATES.find(({ id }) => this.#zones.has(formName(id)))?.id;
  }

  /** A number or words as shown; undefined where the cell is blank, gone, or holds an error. */
  text(name: string, columns = 0, rows = 0): string | undefined {
    const cell = this.#cell(name, columns, rows);
    const kind: string | undefined = cell?.type;
    if (cell === undefined || kind === "error") return undefined;
    const shown = plain(cell.formattedValue);
    return shown === "" ? undefined : shown;
  }

  /** A number as shown; undefined where the cell holds none. */
  number(name: string, columns = 0, rows = 0): string | undefined {
    return typeof this.#cell(name, columns, rows)?.value === "number"
      ? this.text(name, columns, rows)
      : undefined;
  }

  /** The same with its unit. */
  withUnit(name: string): string | undefined {
    const number = this.number(name);
    return number === undefined ? undefined : joined(number, this.unit(name));
  }

  /** What stands beside a value; "" where it has no unit. */
  unit(name: string): string {
    return this.text(name, 1) ?? "";
  }

  /** What a cell near a named one holds; a drawing takes its proportions from it. */
  value(name: string, columns: number, rows: number): unknown {
    return this.#cell(name, columns, rows)?.value;
  }

  /** The numbers of a named column of cells as shown, without those between them that a person left blank. */
  column(name: string): string[] {
    const zone = this.#zones.get(name);
    if (zone === undefined) return [];
    return Array.from({ length: zone.bottom - zone.top + 1 }, (_, row) => this.number(name, 0, row)).filter(
      (shown) => shown !== undefined,
    );
  }

  #cell(name: string, columns: number, rows: number): ReturnType<Getters["getEvaluatedCell"]> | undefined {
    const zone = this.#zones.get(name);
    if (zone === undefined) return undefined;
    return this.#getters.getEvaluatedCell({
      sheetId: this.id,
      col: zone.left + columns,
      row: zone.top + rows,
    });
  }
}

/** The sheets of a workbook that hold one kind of form, in the order of their tabs. */
export function sheetsWith({ getters }: Model, template: TemplateId): FormSheet[] {
  const wanted = formName(template);
  return getters
    .getSheetIds()
    .filter((id) => getters.isSheetVisible(id) && zonesOf(getters, id).has(wanted))
    .map((id) => ({ id, name: getters.getSheetName(id) }));
}

export function joined(number: string, unit: string): string {
  return unit === "" ? number : unit === "°" ? `${number}°` : `${number} ${unit}`;
}

function zonesOf(getters: Getters, sheetId: string): Map<string, Zone> {
  return new Map(
    getters
      .getNamedRanges()
      .filter(({ range }) => range.sheetId === sheetId && range.invalidXc === undefined)
      .map(({ name, range }) => [name.split(NAME_MARK)[0] ?? name, range.zone]),
  );
}

/** A file keeps an empty answer of ours as a space that no line breaks at: that is none. */
function plain(shown: string): string {
  return shown.replaceAll("\u00a0", " ").trim();
}
