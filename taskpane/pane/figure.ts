/** A picture of the joint as part of a page: its finding, how to read it, the drawing or what is missing for it. */

import type { Picture } from "../pictures/picture";
import { missingWords } from "../pictures/picture";
import type { Shape } from "../pictures/shape";
import { element } from "./dom";

const SVG = "http://www.w3.org/2000/svg";

export function figure({ id, title, notes, drawing, missing }: Picture): HTMLElement {
  return element(
    "figure",
    { class: "picture", "data-picture": id },
    element(
      "figcaption",
      {},
      element("strong", {}, title),
      ...notes.map((note) => element("span", {}, note)),
    ),
    ...(drawing === undefined ? [] : [svg(drawing)]),
    ...(missing === undefined ? [] : missingWords(missing).map((words) => element("p", {}, words))),
  );
}

function svg({ tag, attributes, children }: Shape): SVGElement {
  const made = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
  made.append(...children.map((child) => (typeof child === "string" ? child : svg(child))));
  return made;
}
