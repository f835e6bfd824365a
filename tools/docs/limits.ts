/**
 * The limits of every argument, as the formula itself tells them: each argument of the worked example is replaced by
 * values that are none, too small and too large, and the refusals that name it are kept. Help so says what runs.
 */

import type { Argument } from "../../functions/argument";
import type { Formula } from "../../functions/formula";
import type { Quantity, Units } from "../../src/quantity";
import { fromBase, toBase } from "../../src/quantity";
import { inBothUnits } from "./both-units";
import { exampleCells } from "./example-cells";

/** Beyond what any argument takes, too little of it, a whole number with the rest; and a word that no list has. */
const TRIED = [-1e9, 0, 1e9, 0.5, 1e-9];
const NO_WORD = "?";

export type Limited = Pick<Formula, "id" | "args" | "example" | "takesUnits" | "call">;

/** An argument, and how its cell is said in a system of units. */
interface Place {
  readonly name: string;
  readonly takes: Argument["takes"];
  readonly quantity: Quantity | undefined;
}

/**
 * By argument, in both systems of units where the formula has them: what is tried in the example's own is tried
 * converted in the other.
 */
export function argumentLimits(formula: Limited): Map<string, string[]> {
  const { id, args, takesUnits } = formula;
  const own = Object.entries(args).map(([name, { takes, quantity }]): Place => ({ name, takes, quantity }));
  const places: Place[] = takesUnits ? [...own, { name: "units", takes: "cell", quantity: undefined }] : own;
  const example = exampleCells(formula);
  const from: Units = takesUnits && example.at(-1) === "SI" ? "SI" : "US";
  const limitsIn = (to: Units): Map<string, string[]> =>
    limitsOf(places, (index, tried) =>
      refusalOf(
        formula,
        places.map(({ name, takes, quantity }, i) => {
          if (name === "units" && i !== index) return to;
          const cell = inUnits(i === index ? tried : example[i], quantity, from, to);
          return i === index && takes === "range" ? [[cell]] : cell;
        }),
      ),
    );
  const [us, si] = [limitsIn("US"), limitsIn("SI")];
  return new Map(places.map(({ name }) => [name, together(id, us.get(name), si.get(name))]));
}

/** A cell of the example as typed in the other system. */
function inUnits(cell: unknown, quantity: Quantity | undefined, from: Units, to: Units): unknown {
  if (quantity === undefined || from === to) return cell;
  if (Array.isArray(cell)) return cell.map((part: unknown) => inUnits(part, quantity, from, to));
  return typeof cell === "number" ? fromBase(toBase(cell, quantity, from), quantity, to) : cell;
}

function together(id: string, us: readonly string[] = [], si: readonly string[] = []): string[] {
  const both = us.map((sentence, i) => inBothUnits(sentence, si[i] ?? ""));
  if (us.length !== si.length || !both.every((sentence) => sentence !== undefined))
    throw new Error(`${id} refuses otherwise in SI units: ${us.join("; ")} | ${si.join("; ")}`);
  return both;
}

/** `ask`: the refusal when the argument at the index is what is tried. */
function limitsOf(
  places: readonly Place[],
  ask: (index: number, tried: unknown) => string,
): Map<string, string[]> {
  return new Map(
    places.map(({ name, takes }, index) => {
      if (takes === "rest") return [name, []];
      const said = [NO_WORD, ...TRIED].map((tried) => rule(ask(index, tried), name));
      const [ofWord, ...ofNumbers] = said;
      if (ofWord?.startsWith("must be one of") === true) return [name, [ofWord]];
      const limits = ofNumbers.filter(
        (one) => one !== "" && !/^must be (one of|a number|a finite)/.test(one),
      );
      return [name, [...new Set(limits)]];
    }),
  );
}

function refusalOf({ call }: Limited, cells: readonly unknown[]): string {
  try {
    call(...cells);
    return "";
  } catch (problem) {
    return (problem as Error).message;
  }
}

/** The words behind `name = value: `, where the refusal is of this argument. */
function rule(sentence: string, name: string): string {
  return sentence.startsWith(`${name} = `) ? sentence.replace(/^.*?: /, "") : "";
}
