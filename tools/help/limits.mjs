/**
 * The limits of every argument, as the formula itself tells them: each argument of the worked example is replaced by
 * values that are none, too small and too large, and the refusals that name it are kept. Help so says what runs.
 */

import { parseCall } from "../example.mjs";

/** Beyond what any argument takes, a whole number with the rest; and a word that no list has. */
const TRIED = [-1e9, 0, 1e9, 0.5];
const NO_WORD = "?";

/**
 * @param {import("../metadata.mjs").FormulaHelp} formula
 * @param {Map<string, (...cells: unknown[]) => unknown>} functions
 * @returns {Map<string, string[]>} by argument
 */
export function argumentLimits(formula, functions) {
  const call = functions.get(formula.id);
  if (call === undefined) throw new Error(`${formula.id} is not among the functions`);
  const { args } = parseCall(formula.example);
  return new Map(
    formula.parameters.map(({ name, range, repeating }, index) => {
      if (repeating) return [name, []];
      const said = [NO_WORD, ...TRIED].map((tried) => {
        const cells = formula.parameters.map((_, i) => (i === index ? within(tried, range) : args[i]));
        return refusalOf(call, cells);
      });
      const [ofWord, ...ofNumbers] = said.map((sentence) => rule(sentence, name));
      const wordList = ofWord?.startsWith("must be one of") ? [ofWord] : [];
      const limits = ofNumbers.filter(
        (one) => one !== "" && !/^must be (one of|a number|a finite)/.test(one),
      );
      return [name, [...new Set([...wordList, ...(wordList.length > 0 ? [] : limits)])]];
    }),
  );
}

/** @param {unknown} cell @param {boolean} range */
function within(cell, range) {
  return range ? [[cell]] : cell;
}

/** @param {(...cells: unknown[]) => unknown} call @param {unknown[]} cells */
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
