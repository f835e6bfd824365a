/** Tells when a workbook is no longer what was stored: the engine's own event also comes with each click on a cell. */

import type { Model } from "@odoo/o-spreadsheet";
import { coreTypes, CoreViewPlugin, registries } from "@odoo/o-spreadsheet";

const NAME = "ringbead changes";
const listeners = new Set<(of: Model["getters"]) => void>();

class Changes extends CoreViewPlugin {
  override handle(given: { readonly type: string }): void {
    const isChange = (coreTypes as ReadonlySet<string>).has(given.type) || /^(?:UN|RE)DO$/.test(given.type);
    if (isChange) for (const listener of listeners) listener(this.getters);
  }
}

/** Before a model is made: it takes its plugins then. */
export function offerChanges(): void {
  const { coreViewsPluginRegistry } = registries;
  if (!coreViewsPluginRegistry.contains(NAME)) coreViewsPluginRegistry.add(NAME, Changes);
}

/** Calls back with each change of any workbook of this page, undone and redone ones too, and with its getters. */
export function onWorkbookChange(listener: (of: Model["getters"]) => void): void {
  listeners.add(listener);
}
