/** Explains the selected cell: which of our formulas it holds, what it gave, and the full sentence behind a refusal. */

import type { Units } from "../../src/quantity";
import type { Host, SelectedCell } from "../hosts/host";
import type { Chosen } from "./chosen";
import { placeOf } from "../sheets/addresses";
import { element, facts } from "./dom";
import { part } from "./part";
import { columnsIn, formCellWords } from "./form-cell";
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
    const form = cell === undefined ? [] : await formFacts(cell, host).catch(() => []);
    if (turn !== asked) return;
    body.replaceChildren(...explanation(cell, cell?.units ?? units.now(), host, form));
  };
  host.onChange(() => void show());
  units.onChange(() => void show());
  void show();
  return part("Selected cell", body);
}

/** What the sheet itself says of the cell: its note, and what a formula without ours reads. */
async function formFacts(cell: SelectedCell, host: Host): Promise<Node[]> {
  if (cell.units === undefined) return [];
  const form = await host.readForm();
  if (form === undefined) return [];
  const { note, kind, reads } = formCellWords(cell, form);
  const { row } = placeOf(cell.address);
  const columns = columnsIn(note);
  const beside = await host.textsAt(columns.map((letter) => `${letter}${String(row + 1)}`));
  const said = columns.reduce((text, letter, i) => text.replaceAll(`{${letter}}`, beside[i] ?? ""), note);
  const texts = await host.textsAt(reads.map(({ at }) => at));
  const list = reads.map(({ at, label }, i) => element("li", {}, `${label} (${at}): ${texts[i] ?? ""}`));
  return [
    ...(kind === "" ? [] : [element("p", {}, `${cell.address} ${kind}.`)]),
    ...(said === "" ? [] : [element("p", { class: "note" }, said)]),
    ...(list.length === 0 ? [] : [element("p", {}, "It reads:"), element("ul", {}, ...list)]),
  ];
}

function explanation(
  cell: SelectedCell | undefined,
  units: Units,
  host: Host,
  form: readonly Node[],
): Node[] {
  if (cell === undefined) return [element("p", {}, "Select a cell.")];
  const ours = formulasIn(cell.formula);
  if (ours.length === 0) {
    if (form.length === 0) return [element("p", {}, `${cell.address} has no Ringbead formula.`)];
    const shown = cell.formula === "" ? [] : [element("p", {}, `${cell.address} = ${cell.shown}`)];
    return [...shown, ...form];
  }
  const refused = cell.message !== "" && cell.shown.startsWith("#");
  return [
    refused
      ? element("p", { class: "refusal" }, element("strong", {}, `${cell.address} refuses. `), cell.message)
      : element("p", {}, `${cell.address} = ${cell.shown}${hint(cell, host.label)}`),
    ...placeInAnswer(cell),
    ...form,
    ...ours.flatMap((formula) => [
      element("h3", {}, signature(formula)),
      facts([["Meaning", inSystem(formula.meaning, units)]]),
      ...columnFacts(formula, units),
      ...sourceFacts(formula),
    ]),
  ];
}

function placeInAnswer({ filled }: SelectedCell): Node[] {
  if (filled === undefined) return [];
  const { from, row, column } = filled;
  const text = `Row ${String(row)}, column ${String(column)} of the answer that the formula in ${from} gives.`;
  return [element("p", {}, text)];
}

/** What the host's own error means where no refusal explains it. */
export function hint({ shown, message }: Pick<SelectedCell, "shown" | "message">, label: string): string {
  if (message !== "") return "";
  if (shown === "#NAME?") return `: ${label} does not know the formula yet; press “Repair formulas” below.`;
  if (shown === "#BUSY!")
    return ": still calculating; if it stays that way, press “Recalculate this sheet” below.";
  if (shown === "#CALC!")
    return `: ${label} cannot calculate it as it stands: a range where the formula takes one cell, too many cells at once, or functions that are not loaded. Where cells beside it show #NAME?, press “Repair formulas” below.`;
  if (shown === "#CONNECT!")
    return `: ${label} has lost touch with the functions: keep this pane open, check the network connection, then press “Recalculate this sheet” below.`;
  if (shown === "#SPILL!") return ": the cells that the answer has to fill are not empty.";
  return shown.startsWith("#") ? ": BEAD.REASON with the same arguments gives the reason." : "";
}
