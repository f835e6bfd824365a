/** What hosts and the help ask of a record beyond what the compiler sees. */

import type { Formula } from "../../functions/formula";
import type { FormulaHelp } from "../../functions/help-text";

/** The strictest of the limits that hosts set. */
const LIMITS = { description: 128, parameterNames: 200, name: 64, shortestName: 3 };

export interface Told {
  readonly formula: Pick<Formula, "related">;
  readonly help: FormulaHelp;
}

/** What is wrong with the records, a line each; empty when nothing is. */
export function recordErrors(records: readonly Told[]): string[] {
  const ids = records.map(({ help }) => help.id);
  return records.flatMap(({ formula, help }, place) => {
    const { id } = help;
    const strangers = formula.related.filter((other) => !ids.includes(other) || other === id);
    return [
      ...idErrors(id),
      ...(ids.indexOf(id) === place ? [] : ["the id is used twice"]),
      ...textErrors(help),
      ...strangers.map((other) => `related names ${other}, which is no other formula`),
    ].map((what) => `${id}: ${what}`);
  });
}

function idErrors(id: string): string[] {
  const wrong = [];
  if (!/^[A-Z][A-Z0-9_]*$/.test(id)) wrong.push("an id is upper case letters, digits and underscores");
  if (id.length < LIMITS.shortestName || id.length > LIMITS.name)
    wrong.push("the id is too short or too long");
  if (/^[A-Z]{1,3}\d+$/.test(id) || /^R\d*C\d*$/.test(id)) wrong.push("the id reads as a cell address");
  return wrong;
}

function textErrors({ meaning, parameters, validity, source, result }: FormulaHelp): string[] {
  const wrong = [
    ...described("the description", meaning),
    ...parameters.flatMap(({ name, description }) => described(`the description of ${name}`, description)),
  ];
  const names = parameters.map(({ name }) => name).join("");
  if (names.length > LIMITS.parameterNames) wrong.push("the argument names are too long together");
  const units = parameters.findIndex(({ name }) => name === "units");
  if (units >= 0 && units !== parameters.length - 1) wrong.push("units is not the last argument");
  if (validity === "") wrong.push("validity is missing");
  if (source === "") wrong.push("source is missing");
  if (result === "") wrong.push("the example says no result");
  return wrong;
}

function described(what: string, text: string): string[] {
  if (text === "") return [`${what} is missing`];
  return text.length > LIMITS.description ? [`${what} is over ${String(LIMITS.description)} characters`] : [];
}
