/**
 * The formulas as one script for the script editor of Google Sheets: each function at the top of the file whose comment has
 * `@customfunction` is a formula there. It is handed one cell as itself, a range as rows, a blank cell as "", a date as a Date
 * and an error as its name; what it throws is shown as text beside #ERROR!.
 */

import { VERSION } from "../../../functions/catalogue";
import type { Formula } from "../../../functions/formula";
import type { ParameterHelp } from "../../../functions/help-text";
import type { Tagged } from "./help-tags";
import { comment, license, parameterTag, told } from "./help-tags";
import { callOf, insideOf, scriptName } from "./inside";

export interface Told {
  readonly help: Tagged;
  readonly formula: Formula;
}

const HEAD = `// Ringbead ${VERSION}: formulas for planning orbital TIG (GTAW) tube welds, for Google Sheets.
//
// Open Extensions, Apps Script in your spreadsheet, put all of this file in place of what stands in the editor, and save.
// Then =BEAD_STANDOFF(0.065) in a cell gives 0.0425, and BEAD_ABOUT("STANDOFF") tells what a formula means.
//
// The numbers are starting values. Prove them on a test coupon; the qualified procedure, local codes and licensed
// practice govern. Argon has no smell and displaces air; an oxygen meter, not a formula, tells when a bore is ready.
// MIT license: its text stands at the end.
`;

export function googleSheetsScript(functionsScript: string, records: readonly Told[]): string {
  return `${[HEAD, ...records.map(stub), insideOf(functionsScript), "", license()].join("\n")}\n`;
}

function stub({ help, formula }: Told): string {
  const { id, meaning, parameters, returns } = help;
  const names = parameters.map(({ name, repeating }) => (repeating ? `...${name}` : name));
  return [
    comment([
      told(meaning),
      "",
      ...parameters.map((one) => optionalTold(one, parameterTag(one, typeOf(one, formula)))),
      `@return {${returnType(formula)}} ${told(returns)}`.trim(),
      "@customfunction",
    ]),
    `function ${scriptName(id)}(${names.join(", ")}) {`,
    // The very arguments, so that one too many is refused and not lost.
    `  return ${callOf(formula, "arguments")};`,
    "}",
    "",
  ].join("\n");
}

/** The editor has no sign for what may be omitted. */
function optionalTold({ optional, description }: ParameterHelp, tag: string): string {
  return optional && !/if omitted|default/.test(description) ? `${tag} (optional)` : tag;
}

const RANGE = "Array<Array<any>>";

/** A length may be text too, which its help leaves to the reference. */
function typeOf({ name, range }: ParameterHelp, { args }: Formula): string {
  if (range) return RANGE;
  return args[name]?.quantity === undefined ? "string" : "number";
}

function returnType({ gives: { type } }: Formula): string {
  if (type === "text") return "string";
  return type === "number" ? "number" : RANGE;
}
