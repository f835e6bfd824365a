/** Explains the selected cell: which of our formulas it holds, what it gave, and the full sentence behind a refusal. */

import type { Host, SelectedCell } from "../host/host";
import { element, facts, part } from "./dom";
import { formulasIn, signature } from "./help";

export function cellExplainer(host: Host): HTMLElement {
  const body = element("div", { "aria-live": "polite" });
  const show = async (): Promise<void> => {
    const cell = await host.selectedCell();
    body.replaceChildren(...explanation(cell));
  };
  host.onChange(() => void show());
  void show();
  return part("Selected cell", body);
}

function explanation(cell: SelectedCell | undefined): Node[] {
  if (cell === undefined) return [element("p", {}, "Select a cell.")];
  const ours = formulasIn(cell.formula);
  if (ours.length === 0) return [element("p", {}, `${cell.address} holds no Ringbead formula.`)];
  const refused = cell.message !== "" && cell.shown.startsWith("#");
  return [
    refused
      ? element("p", { class: "refusal" }, element("strong", {}, `${cell.address} refuses. `), cell.message)
      : element("p", {}, `${cell.address} = ${cell.shown}`),
    ...ours.flatMap((formula) => [
      element("h3", {}, signature(formula)),
      facts([
        ["Meaning", formula.meaning],
        ["Equation", formula.equation],
        ["Valid for", formula.validity],
        ["Source", formula.source],
      ]),
    ]),
  ];
}
