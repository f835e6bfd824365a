/** Names of a form's cells: the engine keeps names for the whole workbook, so a form's end in a number of its own. */

import { NAME_MARK } from "../../files/spoken";

const FORM_NAME = new RegExp(`^\\w+${NAME_MARK}(\\d+)$`);

export function isFormName(name: string): boolean {
  return FORM_NAME.test(name);
}

/** After those of all forms that there are, also of an earlier visit. */
export function nextSerial(names: readonly string[]): number {
  return 1 + names.reduce((most, name) => Math.max(most, Number(FORM_NAME.exec(name)?.[1] ?? 0)), 0);
}
