/**
 * The formulas as one script for an office suite whose macros are JavaScript: it hands functions to the host with
 * `Api.AddCustomFunction`, and the comment right before each tells its arguments and its result, of the types number, string,
 * boolean and any, alone or with [][] for a range. No argument can repeat there, so those that do are written out.
 */

import { FORMULAS, VERSION } from "../../../functions/catalogue";
import type { Formula } from "../../../functions/formula";
import type { ParameterHelp } from "../../../functions/help-text";
import type { Told } from "./google-sheets";
import { comment, license, parameterTag, told } from "./help-tags";
import { callOf, insideOf, scriptName } from "./inside";

const HEAD = `// Ringbead ${VERSION}: formulas for planning orbital TIG (GTAW) tube welds, for an office suite whose macros are JavaScript.
//
// Open its editor of custom functions (View, Macros, Custom functions in some), put all of this file in place of the example
// there, and save. Then =BEAD_STANDOFF(0.065) in a cell gives 0.0425, and BEAD_REASON tells why a formula refuses.
//
// The numbers are starting values. Prove them on a test coupon; the qualified procedure, local codes and licensed
// practice govern. Argon has no smell and displaces air; an oxygen meter, not a formula, tells when a bore is ready.
// MIT license: its text stands at the end.
(function () {`;

export function javascriptMacrosScript(functionsScript: string, records: readonly Told[]): string {
  return `${[HEAD, insideOf(functionsScript), "", ...records.map(registration), "})();", "", license()].join("\n")}\n`;
}

/** As many as the formula with the most takes, for the formula that asks for another's. */
const MOST_ARGUMENTS = Math.max(
  ...FORMULAS.map(({ args, takesUnits }) => Object.keys(args).length + (takesUnits ? 1 : 0)),
);

function registration({ help, formula }: Told): string {
  const parameters = help.parameters.flatMap(writtenOut);
  const names = parameters.map(({ name }) => name);
  return [
    comment([
      told(help.meaning),
      "@customfunction",
      ...parameters.map((one) =>
        parameterTag(one, one.range ? "any[][]" : "any", one.optional ? `[${one.name}]` : one.name),
      ),
      `@returns {${returnType(formula)}} ${told(help.returns)}`.trim(),
    ]),
    `Api.AddCustomFunction(function ${scriptName(help.id)}(${names.join(", ")}) {`,
    `  return ${callOf(formula, `[${names.join(", ")}]`)};`,
    "});",
    "",
  ].join("\n");
}

function writtenOut(one: ParameterHelp): ParameterHelp[] {
  if (!one.repeating) return [one];
  return Array.from({ length: MOST_ARGUMENTS }, (_, i) => ({
    ...one,
    name: `${one.name}${String(i + 1)}`,
    optional: true,
    repeating: false,
  }));
}

function returnType({ gives: { type } }: Formula): string {
  if (type === "text") return "string";
  return type === "number" ? "number" : "any[][]";
}
