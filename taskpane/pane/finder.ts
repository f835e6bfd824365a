/** Finds a formula by what it is about, shows its arguments and puts its example into an empty cell. */

import type { Host } from "../hosts/host";
import { button, element, facts, part } from "./dom";
import type { FormulaHelp } from "./help";
import { signature } from "./help";
import { search } from "./search";

export function formulaFinder(
  host: Host,
  attempt: (work: () => Promise<string>) => () => Promise<void>,
): HTMLElement {
  const list = element("div", { class: "found" });
  const count = element("p", { role: "status", class: "count" });
  const told = element("p", { role: "status" });
  const box = element("input", { type: "search", id: "find", autocomplete: "off" });
  const show = (): void => {
    const { formulas, remark } = search(box.value);
    count.textContent = `${String(formulas.length)} formula${formulas.length === 1 ? "" : "s"}`;
    told.textContent = remark;
    list.replaceChildren(...formulas.map((formula) => entry(formula, host, attempt)));
  };
  box.addEventListener("input", show);
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

function entry(
  formula: FormulaHelp,
  host: Host,
  attempt: (work: () => Promise<string>) => () => Promise<void>,
): HTMLElement {
  const put = async (): Promise<string> =>
    (await host.putFormula(formula.example))
      ? `Put ${formula.example} into the selected cell.`
      : "The selected cell is not empty; nothing was overwritten.";
  return element(
    "details",
    {},
    element("summary", {}, element("code", {}, formula.id), ` ${formula.meaning}`),
    element("p", {}, element("code", {}, signature(formula))),
    facts(formula.parameters.map(({ name, description }) => [name, description] as const)),
    facts([
      ["Equation", formula.equation],
      ["Valid for", formula.validity],
      ["Assumes", formula.assumptions],
      ["Source", formula.source],
      ["Not confirmed from outside", formula.unconfirmed],
      ["Example", `${formula.example} → ${formula.result}`],
    ]),
    button("Put the example in the cell", attempt(put)),
  );
}
