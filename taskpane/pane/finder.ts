/** Finds a formula by what it is about, shows its arguments and puts its example into an empty cell. */

import type { Host } from "../hosts/host";
import type { Chosen } from "./chosen";
import type { Attempt } from "./attempt";
import { button, element, facts } from "./dom";
import { part } from "./part";
import { argumentFacts, columnFacts, sourceFacts } from "./formula-facts";
import type { FormulaHelp } from "./help";
import { signature } from "./help";
import { inSystem } from "./in-system";
import { search } from "./search";

export function formulaFinder(host: Host, units: Chosen, attempt: Attempt): HTMLElement {
  const list = element("div", { class: "found" });
  const count = element("p", { role: "status", class: "count" });
  const told = element("p", { role: "status" });
  const box = element("input", { type: "search", id: "find", autocomplete: "off" });
  const show = (): void => {
    const { formulas, remark } = search(box.value);
    count.textContent = `${String(formulas.length)} formula${formulas.length === 1 ? "" : "s"}`;
    told.textContent = remark;
    list.replaceChildren(...formulas.map((formula) => entry(formula, host, units, attempt)));
  };
  box.addEventListener("input", show);
  units.onChange(() => {
    const open = [...list.querySelectorAll("details")].map((one) => one.open);
    show();
    list.querySelectorAll("details").forEach((one, i) => {
      one.open = open[i] ?? false;
    });
  });
  show();
  return part(
    "Find a formula",
    element("label", { for: "find" }, "Words, such as purge, gap or ipm"),
    box,
    count,
    told,
    list,
  );
}

function entry(formula: FormulaHelp, host: Host, units: Chosen, attempt: Attempt): HTMLElement {
  const system = units.now();
  const put = async (): Promise<string> =>
    (await host.putFormula(formula.example))
      ? `Put ${formula.example} into the selected cell.`
      : "The selected cell is not empty; nothing was overwritten.";
  return element(
    "details",
    {},
    element("summary", {}, element("code", {}, formula.id), ` ${inSystem(formula.meaning, system)}`),
    element("p", {}, element("code", {}, signature(formula))),
    argumentFacts(formula, system),
    ...columnFacts(formula, system),
    ...sourceFacts(formula),
    facts([["Example", `${formula.example} → ${formula.result}`]]),
    button("Put the example in the cell", attempt(put)),
  );
}
