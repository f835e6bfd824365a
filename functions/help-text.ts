/** What help says of a formula, put together from its record: for ABOUT, the pane, the help page and the metadata. */

import { unitPair } from "../src/quantity";
import { described } from "./argument";
import type { ExampleCell, Family, Formula } from "./formula";
import { NAMESPACE } from "./namespace";
import { plainEquation } from "./plain-equation";

export interface ParameterHelp {
  readonly name: string;
  readonly description: string;
  readonly optional: boolean;
  /** Takes a range of cells rather than one. */
  readonly range: boolean;
  /** Takes all arguments from here on. */
  readonly repeating: boolean;
}

export interface FormulaHelp {
  readonly id: string;
  /** The formulas it stands with in the reference. */
  readonly family: string;
  readonly meaning: string;
  readonly parameters: readonly ParameterHelp[];
  readonly returns: string;
  readonly equation: string;
  readonly validity: string;
  readonly assumptions: string;
  readonly source: string;
  readonly unconfirmed: string;
  readonly synonyms: readonly string[];
  /** A formula as typed, and what it gives. */
  readonly example: string;
  readonly result: string;
}

const UNITS: ParameterHelp = {
  name: "units",
  description: '"US" (default) or "SI"',
  optional: true,
  range: false,
  repeating: false,
};

export function helpOf(formula: Formula, { title }: Family): FormulaHelp {
  return {
    id: formula.id,
    family: title,
    meaning: meaningOf(formula),
    parameters: parametersOf(formula),
    returns: formula.gives.told,
    equation: formula.equation ?? plainEquation(formula.tex ?? []),
    validity: formula.validity,
    assumptions: formula.assumptions ?? "",
    source: formula.source,
    unconfirmed: formula.unconfirmed ?? "",
    synonyms: formula.synonyms ?? [],
    example: exampleOf(formula),
    result: formula.example.gives,
  };
}

/** Meaning, unit and detail in one sentence. */
function meaningOf({ meaning, detail = "", gives }: Formula): string {
  const unit = gives.quantity === undefined ? "" : unitPair(gives.quantity);
  return `${meaning}${unit === "" ? "" : `, ${unit}`}${detail === "" ? "" : `: ${detail}`}.`;
}

function parametersOf({ args, takesUnits }: Formula): ParameterHelp[] {
  const own = Object.entries(args).map(([name, argument]) => ({
    name,
    description: described(argument),
    optional: argument.optional,
    range: argument.takes !== "cell",
    repeating: argument.takes === "rest",
  }));
  return takesUnits ? [...own, UNITS] : own;
}

/** The example as typed: nothing between two commas for an omitted argument. */
function exampleOf({ id, example: { args } }: Formula): string {
  return `=${NAMESPACE}.${id}(${args.map(typed).join(", ")})`;
}

function typed(cell: ExampleCell): string {
  if (cell === null) return "";
  if (typeof cell === "object") return `{${cell.map((row) => row.map(typed).join(",")).join(";")}}`;
  if (typeof cell === "string") return `"${cell.replaceAll('"', '""')}"`;
  return typeof cell === "boolean" ? String(cell).toUpperCase() : String(cell);
}
