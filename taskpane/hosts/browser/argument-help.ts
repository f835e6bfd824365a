/**
 * What the engine shows of our formulas while one is typed: in the units of the form on the sheet being shown, and with
 * the columns of a table by their numbers. Excel has no room for them: it cuts a description off.
 */

import { registries } from "@odoo/o-spreadsheet";

import type { Units } from "../../../src/quantity";
import type { FormulaHelp } from "../../pane/help";
import { inSystem } from "../../pane/in-system";

/** `units`: of the form being shown; undefined where there is none, and both systems are told. */
export function tellInUnits(
  namespace: string,
  formulas: readonly FormulaHelp[],
  units: () => Units | undefined,
): void {
  const told = (text: string): string => {
    const system = units();
    return system === undefined ? text : inSystem(text, system);
  };
  for (const formula of formulas) {
    const shown = registries.functionRegistry.get(`${namespace}.${formula.id}`);
    tellAnew(shown, () => told(formula.meaning) + columnsOf(formula, units()));
    shown.args.forEach((argument, i) => {
      const description = formula.parameters[i]?.description ?? argument.description;
      tellAnew(argument, () => told(description));
    });
  }
}

function tellAnew(shown: { description: string }, description: () => string): void {
  Object.defineProperty(shown, "description", { get: description, configurable: true, enumerable: true });
}

function columnsOf({ table: { columns } }: FormulaHelp, units: Units | undefined): string {
  const told = columns.map(({ heading, US, SI }, i) => {
    const unit = units === undefined ? (US === SI ? US : `${US} | ${SI}`) : { US, SI }[units];
    return `${String(i + 1)} ${heading}${unit === "" ? "" : `, ${unit}`}`;
  });
  return told.length === 0 ? "" : ` Columns: ${told.join("; ")}.`;
}
