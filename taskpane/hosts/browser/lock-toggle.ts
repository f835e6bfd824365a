/** The button that frees the labels and formulas of the form being shown, and guards them again. */

import type { BrowserHost } from "./browser-host";
import { isUnlocked, setUnlocked } from "./protect";

/** What the button does; it tells by itself how the sheet is, and is hidden where the sheet is no form. */
export function lockToggle(host: BrowserHost): () => void {
  const show = (): void => {
    const button = document.getElementById("lock");
    if (button === null) return;
    button.hidden = !host.showsForm();
    const isFree = isUnlocked(host.sheetShown());
    button.textContent = isFree ? "Lock this sheet" : "Unlock this sheet";
    button.title = isFree
      ? "Labels and formulas can be typed over"
      : "Labels and formulas are guarded; the tinted cells are for typing";
  };
  host.onChange(show);
  return () => {
    setUnlocked(host.sheetShown(), !isUnlocked(host.sheetShown()));
    show();
  };
}
