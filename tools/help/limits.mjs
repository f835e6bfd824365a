/**
 * The limits of every argument, as the formula itself tells them: each argument of the worked example is replaced by
 * values that are none, too small and too large, and the refusals that name it are kept. Help so says what runs.
 */

import { parseCall } from "../example.mjs";
import { inBothUnits, inOtherUnits } from "./units.mjs";

/** Beyond what any argument takes, a whole number with the rest; and a word that no list has. */
const TRIED = [-1e9, 0, 1e9, 0.5];
const NO_WORD = "?";

/** @typedef {import("../metadata.mjs").FormulaHelp} FormulaHelp */
/** @typedef {(...cells: unknown[]) => unknown} Call */

/**
 * In both systems of units where the formula has them: what is tried in the example's own is tried converted in the other.
 * @param {FormulaHelp} formula
 * @param {Map<string, Call>} functions
 * @returns {Map<string, string[]>} by argument
 */
export function argumentLimits(formula, functions) {
  const { id, parameters, example } = formula;
  const call = functions.get(id);
  if (call === undefined) throw new Error(`${id} is not among the functions`);
  const { args } = parseCall(example);
  const place = parameters.findIndex(({ name }) => name === "units");
  const from = args[place] === "SI" ? "SI" : "US";
  const [us, si] = /** @type {const} */ (["US", "SI"]).map((to) =>
    limitsOf(formula, (index, tried) => {
      const cells = parameters.map(({ description, range }, i) => {
        if (i === place && i !== index) return to;
        const cell = i === index ? tried : args[i];
        const written = to === from ? cell : inOtherUnits(cell, description, from);
        return i === index && range ? [[written]] : written;
      });
      return refusalOf(call, cells);
    }),
  );
  return new Map(parameters.map(({ name }) => [name, together(id, us?.get(name), si?.get(name))]));
}

/** @param {string} id @param {string[]} us @param {string[]} si */
function together(id, us = [], si = []) {
  return us.map((sentence, i) => {
    const both = inBothUnits(sentence, si[i] ?? "");
    if (both === undefined || si.length !== us.length)
      throw new Error(`${id} refuses otherwise in SI units: ${us.join("; ")} | ${si.join("; ")}`);
    return both;
  });
}

/**
 * @param {FormulaHelp} formula
 * @param {(index: number, tried: unknown) => string} ask the refusal when the argument at the index is what is tried
 * @returns {Map<string, string[]>}
 */
function limitsOf({ parameters }, ask) {
  return new Map(
    parameters.map(({ name, repeating }, index) => {
      if (repeating) return [name, []];
      const said = [NO_WORD, ...TRIED].map((tried) => rule(ask(index, tried), name));
      const [ofWord, ...ofNumbers] = said;
      if (ofWord?.startsWith("must be one of")) return [name, [ofWord]];
      const limits = ofNumbers.filter(
        (one) => one !== "" && !/^must be (one of|a number|a finite)/.test(one),
      );
      return [name, [...new Set(limits)]];
    }),
  );
}

/** @param {Call} call @param {unknown[]} cells */
function refusalOf(call, cells) {
  try {
    call(...cells);
    return "";
  } catch (problem) {
    return String(/** @type {{ message?: unknown }} */ (problem).message ?? "");
  }
}

/** The words behind `name = value: `, where the refusal is of this argument. @param {string} sentence @param {string} name */
function rule(sentence, name) {
  return sentence.startsWith(`${name} = `) ? sentence.replace(/^.*?: /, "") : "";
}
