/** Keeps card and strip at what the sheet shows: once a frame at most, however many changes come at once. */

import type { Model } from "@odoo/o-spreadsheet";

import type { BrowserHost } from "../browser-host";

export function followSheet(
  host: BrowserHost,
  modelNow: () => Model,
  readers: readonly ((model: Model) => void)[],
): void {
  let isWaiting = false;
  const read = (): void => {
    isWaiting = false;
    const model = modelNow();
    for (const reader of readers) reader(model);
  };
  host.onChange(() => {
    if (isWaiting) return;
    isWaiting = true;
    requestAnimationFrame(read);
  });
  read();
}
