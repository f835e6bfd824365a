/** Keys of the whole page. The grid keeps every other key for itself, Tab too, so F6 is the way out of it. */

import type { BarActions } from "./bar";

/** In the order of F6. */
const PLACES = ["bar", "card", "sheet", "pane"] as const;
const FOCUSABLE = "button:not([hidden]), summary, a[href], input, select, textarea, [tabindex='0']";

export function listenToKeys(actions: Pick<BarActions, "save" | "openFile" | "print">): void {
  // In the capture phase: the grid stops what it takes for its own.
  window.addEventListener(
    "keydown",
    (event) => {
      const letter = event.ctrlKey || event.metaKey ? event.key.toLowerCase() : "";
      if (event.key === "F6") moveOn(event.shiftKey ? -1 : 1);
      else if (letter === "s" && !event.shiftKey) void actions.save();
      else if (letter === "o" && !event.shiftKey) actions.openFile();
      else if (letter === "p" && !event.shiftKey) actions.print();
      else return;
      event.preventDefault();
      event.stopPropagation();
    },
    { capture: true },
  );
}

function moveOn(step: 1 | -1): void {
  const places = PLACES.map((id) => document.getElementById(id)).filter(
    (place) => place?.checkVisibility({ visibilityProperty: true }) === true,
  );
  const here = places.findIndex((place) => place?.contains(document.activeElement) === true);
  const next = places[(here + step + places.length) % places.length];
  if (next?.id === "sheet") focusGrid(next);
  else if (next) firstOf(next)?.focus();
}

/** The engine hears keys through a field of its own that nobody sees. */
function focusGrid(sheet: HTMLElement): void {
  const field =
    sheet.querySelector<HTMLElement>(".o-grid .o-composer") ??
    sheet.querySelector<HTMLElement>(".o-grid [contenteditable], .o-grid input, .o-grid");
  field?.focus();
}

/** What Tab would come to first; the pane is a page of its own inside the page. */
function firstOf(place: HTMLElement): HTMLElement | undefined {
  const inside: ParentNode = place.shadowRoot ?? place;
  return [...inside.querySelectorAll<HTMLElement>(FOCUSABLE)].find((one) => one.checkVisibility());
}
