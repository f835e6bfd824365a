/** Explains the selected cell: which of our formulas it holds, what it gave, and the full sentence behind a refusal. */

import type { Units } from "../../src/quantity";
import type { Host, SelectedCell } from "../hosts/host";
import type { Chosen } from "./chosen";
import { element, facts, part } from "./dom";
import { columnFacts, sourceFacts } from "./formula-facts";
import { formulasIn, signature } from "./help";
import { inSystem } from "./in-system";

export function cellExplainer(host: Host, units: Chosen): HTMLElement {
  const body = element("div", { "aria-live": "polite" });
  let asked = 0;
  const show = async (): Promise<void> => {
    asked += 1;
    const turn = asked;
    // What cannot be read just now is read at the next change.
    const cell = await host.selectedCell().catch(() => undefined);
    if (turn === asked) body.replaceChildren(...explanation(cell, cell?.units ?? units.now(), host));
  };
  host.onChange(() => void show());
  units.onChange(() => void show());
  void show();
  return part("Selected cell", body);
}

function explanation(cell: SelectedCell | undefined, units: Units, host: Host): Node[] {
  if (cell === undefined) return [element("p", {}, "Select a cell.")];
  const ours = formulasIn(cell.formula);
  if (ours.length === 0) return [element("p", {}, `${cell.address} has no Ringbead formula.`)];
  const refused = cell.message !== "" && cell.shown.startsWith("#");
  return [
    refused
      ? element("p", { class: "refusal" }, element("strong", {}, `${cell.address} refuses. `), cell.message)
      : element("p", {}, `${cell.address} = ${cell.shown}${hint(cell, host)}`),
    ...ours.flatMap((formula) => [
      element("h3", {}, signature(formula)),
      facts([["Meaning", inSystem(formula.meaning, units)]]),
      ...columnFacts(formula, units),
      ...sourceFacts(formula),
    ]),
  ];
}

/** What the host's own error means where no refusal explains it. */
function hint({ shown, message }: SelectedCell, host: Host): string {
  if (message !== "") return "";
  if (shown === "#NAME?")
    return `: ${host.label} does not know the formula yet; press “Repair formulas” below.`;
  if (shown === "#BUSY!")
    return ": still calculating; if it stays that way, press “Recalculate this sheet” below.";
  if (shown === "#SPILL!") return ": the cells that the answer has to fill are not empty.";
  return shown.startsWith("#") ? ": BEAD.REASON with the same arguments gives the reason." : "";
}
