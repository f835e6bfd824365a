/**
 * Shows and hides the pane; the width it leaves is the sheet's. Remembered on this computer. On a phone it takes the place
 * of sheet and card, and is never there unasked.
 */

import { PHONE } from "./bench-card/views";

const KEPT = "ringbead pane";
/** Under this width, px, the sheet needs all of it: the pane starts hidden. */
const NARROW = 1100;

export function paneToggle(bench: HTMLElement): () => void {
  const show = (isShown: boolean): void => {
    bench.classList.toggle("without-pane", !isShown);
    const toggle = document.getElementById("pane-toggle");
    if (toggle !== null) {
      toggle.textContent = isShown ? "Hide the pane" : "Show the pane";
      toggle.setAttribute("aria-expanded", String(isShown));
    }
    // The grid measures its place when the window says that it changed.
    window.dispatchEvent(new Event("resize"));
  };
  const phone = window.matchMedia(PHONE);
  const start = (): void => {
    show(!phone.matches && (kept() ?? window.innerWidth >= NARROW));
  };
  queueMicrotask(start);
  phone.addEventListener("change", start);
  return () => {
    const isShown = bench.classList.contains("without-pane");
    if (!phone.matches) keep(isShown);
    show(isShown);
  };
}

function kept(): boolean | undefined {
  try {
    const word = localStorage.getItem(KEPT);
    return word === null ? undefined : word === "shown";
  } catch {
    return undefined;
  }
}

function keep(isShown: boolean): void {
  try {
    localStorage.setItem(KEPT, isShown ? "shown" : "hidden");
  } catch {
    // A browser that keeps nothing for the page.
  }
}
