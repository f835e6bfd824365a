/** What can be done with the whole workbook: side by side in a wide bar, behind one button in a narrow one. */

import { button, element } from "../../pane/dom";

/** The button and what it opens, in this order on the bar. */
export function actionsMenu(...actions: readonly HTMLElement[]): HTMLElement[] {
  const list = element("div", { id: "bar-actions" }, ...actions);
  const show = (isOpen: boolean): void => {
    list.classList.toggle("open", isOpen);
    more.setAttribute("aria-expanded", String(isOpen));
  };
  const more = button("More", () => {
    show(!list.classList.contains("open"));
  });
  more.id = "bar-more";
  more.setAttribute("aria-controls", list.id);
  show(false);
  list.addEventListener("click", () => {
    show(false);
  });
  document.addEventListener("pointerdown", ({ target }) => {
    if (target instanceof Node && !list.contains(target) && !more.contains(target)) show(false);
  });
  list.addEventListener("keydown", ({ key }) => {
    if (key !== "Escape") return;
    show(false);
    more.focus();
  });
  return [more, list];
}
