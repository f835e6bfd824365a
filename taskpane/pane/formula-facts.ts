/** What the pane tells of a formula, the same for one that is looked for and for one in the selected cell. */

import type { Units } from "../../src/quantity";
import { element, facts } from "./dom";
import type { FormulaHelp } from "./help";
import { inSystem } from "./in-system";

export function argumentFacts({ parameters }: FormulaHelp, units: Units): HTMLElement {
  return facts(parameters.map(({ name, description }) => [name, inSystem(description, units)] as const));
}

/** The columns of a table by number, as INDEX counts them; nothing for a single value. */
export function columnFacts({ id, table: { lead, columns, more } }: FormulaHelp, units: Units): Node[] {
  if (columns.length === 0) return [];
  const items = columns.map(({ heading, ...unit }) =>
    element("li", {}, unit[units] === "" ? heading : `${heading}, ${unit[units]}`),
  );
  const list = element("ol", { "aria-label": `Columns of ${id}` }, ...items);
  return [
    element(
      "dl",
      {},
      element("dt", {}, `Gives a table. ${lead}:`),
      element("dd", {}, list, inSystem(more, units)),
    ),
  ];
}

export function sourceFacts(formula: FormulaHelp): Node[] {
  return [
    facts([
      ["Equation", formula.equation],
      ["Valid for", formula.validity],
      ["Assumes", formula.assumptions],
      ["Source", formula.source],
      ["Not confirmed from outside", formula.unconfirmed],
    ]),
    ...restsOn(formula),
  ];
}

/** The standing of each source in a word, the weakest first. */
function restsOn({ id, restsOn: rests }: FormulaHelp): Node[] {
  if (rests.length === 0) return [];
  const standings = [...new Set(rests.map(({ standing }) => standing))];
  const items = standings.map((standing) => {
    const whats = rests.filter((one) => one.standing === standing).map(({ what }) => what);
    return element("li", {}, element("strong", {}, standing), `: ${whats.join("; ")}`);
  });
  const list = element("ul", { "aria-label": `What ${id} rests on` }, ...items);
  return [element("dl", {}, element("dt", {}, "Rests on, weakest first"), element("dd", {}, list))];
}
