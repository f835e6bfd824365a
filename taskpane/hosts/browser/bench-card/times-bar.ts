/** The phases of one weld as a bar, each as wide as it lasts, and below it what each lasts, in the sheet's own digits. */

import { element } from "../../../pane/dom";
import type { PhaseFact } from "./procedure-facts";

export function timesBar(phases: readonly PhaseFact[]): HTMLElement {
  const bar = element("div", { class: "bar", "aria-hidden": "true" });
  const list = element("ul");
  for (const { label, lasts, seconds, hasArc } of phases) {
    const part = element("span", { class: hasArc ? "arc" : "gas" });
    part.style.flexGrow = String(seconds);
    bar.append(part);
    list.append(
      element("li", { class: hasArc ? "arc" : "gas" }, `${label} `, element("b", {}, `${lasts} s`)),
    );
  }
  return element(
    "figure",
    { class: "times" },
    element("figcaption", {}, "Times at the head, the arc marked"),
    bar,
    list,
  );
}
