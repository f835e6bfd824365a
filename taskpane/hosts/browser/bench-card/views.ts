/** Card or grid: a phone opens with the card and has the grid behind a tap, any wider page the other way around. */

import { button } from "../../../pane/dom";

/** Under 700 px the grid shows too little of a form to work from. */
export const PHONE = "(max-width: 699.98px)";

export interface Views {
  readonly toggle: HTMLButtonElement;
  readonly showSheet: () => void;
  showsCard(): boolean;
}

export function cardOrSheet(bench: HTMLElement, card: HTMLElement, sheet: HTMLElement): Views {
  const phone = window.matchMedia(PHONE);
  const show = (isCard: boolean): void => {
    bench.dataset.view = isCard ? "card" : "sheet";
    card.hidden = !isCard;
    // The grid keeps its place below the card, since it measures itself; nothing in it is reached from there.
    sheet.inert = isCard;
    toggle.textContent = isCard ? "Show the sheet" : "Show the card";
    const print = document.getElementById("print");
    if (print !== null) print.textContent = isCard ? "Print this card" : "Print this sheet";
    window.dispatchEvent(new Event("resize"));
  };
  const showsCard = (): boolean => bench.dataset.view === "card";
  const toggle = button("", () => {
    show(!showsCard());
  });
  toggle.id = "card-toggle";
  phone.addEventListener("change", () => {
    show(phone.matches);
  });
  show(phone.matches);
  // Once more when the bar is built, for its words.
  queueMicrotask(() => {
    show(showsCard());
  });
  return {
    toggle,
    showSheet: () => {
      show(false);
      toggle.focus();
    },
    showsCard,
  };
}
