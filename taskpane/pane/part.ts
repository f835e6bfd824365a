/** A titled part of the pane, which folds, and is found as it was left. */

import { element } from "./dom";

const KEY = "ringbead-folded";

export function part(title: string, ...children: readonly (Node | string)[]): HTMLElement {
  const fold = element("details", {}, element("summary", {}, element("h2", {}, title)), ...children);
  fold.open = !folded().includes(title);
  fold.addEventListener("toggle", () => {
    const others = folded().filter((one) => one !== title);
    keep(fold.open ? others : [...others, title]);
  });
  return element("section", {}, fold);
}

/** Titles of the folded parts; none where the browser keeps nothing, or something else. */
function folded(): readonly string[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? "[]");
    return Array.isArray(kept) ? kept.map(String) : [];
  } catch {
    return [];
  }
}

function keep(titles: readonly string[]): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(titles));
  } catch {
    // Folded until the page is left.
  }
}
