/** One slim line between bar and grid: the key numbers of the form being shown, in sight however far one scrolls. */

import type { Model } from "@odoo/o-spreadsheet";

import { element } from "../../../pane/dom";
import { ShownSheet } from "./shown-sheet";
import { stripFacts } from "./strip-facts";

export function resultStrip(place: HTMLElement): (model: Model) => void {
  let last = "";
  return (model) => {
    const facts = stripFacts(new ShownSheet(model));
    const key = JSON.stringify(facts);
    if (key === last) return;
    last = key;
    const wasHidden = place.hidden;
    place.hidden = facts === undefined;
    place.replaceChildren();
    if (facts !== undefined) {
      const list = element("dl");
      for (const { label, text } of facts.items) {
        list.append(element("div", {}, element("dt", {}, label), element("dd", {}, text)));
      }
      const state = facts.holds ? "holds" : "attention";
      place.append(list, element("p", { class: state }, facts.summary));
    }
    // The grid measures its place when the window says that it changed.
    if (wasHidden !== place.hidden) window.dispatchEvent(new Event("resize"));
  };
}
