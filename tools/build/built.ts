/**
 * Loads the built functions.js as a host would, in a context of its own, tries every formula in it, and looks through
 * the scripts that Excel loads for what none may hold.
 */

import { readFileSync } from "node:fs";
import path from "node:path";
import vm from "node:vm";

import { formulaById } from "../../functions/catalogue";
import type { Formula } from "../../functions/formula";
import { exampleCells } from "../docs/example-cells";
import { disagreement } from "../docs/stated-result";
import type { CellFunction } from "./cell-host";
import { cellHost } from "./cell-host";
import { unsafeScripts } from "./safe-script";

/** As much of a record as its example needs. */
export type Example = Pick<Formula, "id" | "args" | "example" | "takesUnits">;

/** What is wrong with a build of these formulas; empty when nothing is. */
export function builtErrors(dist: string, formulas: readonly Example[]): string[] {
  const associated = loadFunctions(readFileSync(path.join(dist, "functions.js"), "utf8"));
  const { functions } = JSON.parse(readFileSync(path.join(dist, "functions.json"), "utf8")) as {
    functions: { id: string }[];
  };
  const ids = functions.map(({ id }) => id);
  return [
    ...unsafeScripts(dist),
    ...ids.filter((id) => !associated.has(id)).map((id) => `${id} is not associated`),
    ...[...associated.keys()]
      .filter((id) => !ids.includes(id))
      .map((id) => `${id} is associated but not in functions.json`),
    ...formulas.flatMap((formula) => exampleErrors(formula, associated)),
    ...formulas.flatMap(({ id }) => toldErrors(associated, "ABOUT", id)),
    ...toldErrors(associated, "MATERIALS"),
  ];
}

/** What the build takes out of records and numbers is told as if it stood there. */
function toldErrors(
  associated: ReadonlyMap<string, CellFunction>,
  teller: "ABOUT" | "MATERIALS",
  ...cells: readonly string[]
): string[] {
  const tell = associated.get(teller);
  if (tell === undefined) return [];
  const [told, meant] = [tell(...cells), formulaById(teller)?.(...cells)];
  return JSON.stringify(told) === JSON.stringify(meant)
    ? []
    : [`${[teller, ...cells].join(" ")} tells something else than the sources`];
}

/** Runs the script with nothing but a CustomFunctions global, and gives what it associated. */
export function loadFunctions(script: string): ReadonlyMap<string, CellFunction> {
  const { CustomFunctions, associated } = cellHost();
  vm.runInNewContext(script, { CustomFunctions });
  return associated;
}

function exampleErrors(formula: Example, associated: ReadonlyMap<string, CellFunction>): string[] {
  const { id, example } = formula;
  try {
    const value = associated.get(id)?.(...exampleCells(formula));
    const wrong = disagreement(value, example.gives);
    return wrong === undefined ? [] : [`${id}: its example ${wrong}`];
  } catch (problem) {
    return [`${id}: its example does not run (${(problem as Error).message})`];
  }
}
