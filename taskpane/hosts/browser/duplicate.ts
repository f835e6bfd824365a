/**
 * A copy of a form is a form: it has names of its own, by which it converts, prints and is kept in a file. The engine
 * copies cells, charts and rules; names it keeps for the whole workbook.
 */

import { registries, UIPlugin } from "@odoo/o-spreadsheet";

import { NAME_MARK } from "../../files/spoken";
import { isFormName, nextSerial } from "./form-names";

interface Duplicate {
  readonly type: "DUPLICATE_SHEET";
  readonly sheetId: string;
  readonly sheetIdTo: string;
}

class DuplicateForms extends UIPlugin {
  override handle(given: object): void {
    if (!isDuplicate(given)) return;
    const names = this.getters.getNamedRanges();
    const own = names.filter(({ name, range }) => range.sheetId === given.sheetId && isFormName(name));
    const ending = `${NAME_MARK}${String(nextSerial(names.map(({ name }) => name)))}`;
    for (const { name, range } of own) {
      if (range.invalidXc !== undefined) continue;
      this.dispatch("CREATE_NAMED_RANGE", {
        name: (name.split(NAME_MARK)[0] ?? name) + ending,
        ranges: [this.getters.getRangeData(this.getters.getRangeFromZone(given.sheetIdTo, range.zone))],
      });
    }
  }
}

function isDuplicate(given: object): given is Duplicate {
  return "type" in given && given.type === "DUPLICATE_SHEET";
}

const NAME = "ringbead duplicate forms";

/** Before a model is made: it takes its plugins then. */
export function copyFormNames(): void {
  const { featurePluginRegistry } = registries;
  if (!featurePluginRegistry.contains(NAME)) featurePluginRegistry.add(NAME, DuplicateForms);
}
