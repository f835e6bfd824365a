/**
 * Loads the built functions.js as a host would, in a context of its own, tries every formula in it, and looks through
 * the scripts that Excel loads for what none may hold.
 */

import { readFileSync } from "node:fs";
import path from "node:path";
import vm from "node:vm";

import { disagreement, parseCall } from "./example.mjs";
import { unsafeScripts } from "./safe-script.mjs";

/**
 * @param {string} dist
 * @returns {string[]} what is wrong; empty when nothing is
 */
export function builtErrors(dist) {
  const associated = loadFunctions(readFileSync(path.join(dist, "functions.js"), "utf8"));
  const { functions } = JSON.parse(readFileSync(path.join(dist, "functions.json"), "utf8"));
  const { formulas } = JSON.parse(readFileSync(path.join(dist, "help.json"), "utf8"));
  /** @type {string[]} */
  const ids = functions.map((/** @type {{ id: string }} */ { id }) => id);
  return [
    ...unsafeScripts(dist),
    ...ids.filter((id) => !associated.has(id)).map((id) => `${id} is not associated`),
    ...[...associated.keys()]
      .filter((id) => !ids.includes(id))
      .map((id) => `${id} is associated but not in functions.json`),
    ...formulas.flatMap((/** @type {import("./metadata.mjs").FormulaHelp} */ formula) =>
      exampleErrors(formula, associated),
    ),
  ];
}

/**
 * Runs the script with nothing but a CustomFunctions global, and gives what it associated.
 * @param {string} script
 * @returns {Map<string, (...cells: unknown[]) => unknown>}
 */
export function loadFunctions(script) {
  const associated = new Map();
  class CellError extends Error {
    /** @param {string} code @param {string} [message] */
    constructor(code, message) {
      super(message);
      this.code = code;
    }
  }
  const ErrorCode = { invalidValue: "#VALUE!", notAvailable: "#N/A", invalidNumber: "#NUM!" };
  const associate = (/** @type {string} */ id, /** @type {any} */ formula) => associated.set(id, formula);
  vm.runInNewContext(script, { CustomFunctions: { Error: CellError, ErrorCode, associate } });
  return associated;
}

/**
 * @param {import("./metadata.mjs").FormulaHelp} formula
 * @param {Map<string, (...cells: unknown[]) => unknown>} associated
 */
function exampleErrors({ id, example, result, parameters }, associated) {
  try {
    const call = parseCall(example);
    if (call.id !== id) return [`${id}: its example calls ${call.id}`];
    const repeats = parameters.findIndex(({ repeating }) => repeating);
    const args = repeats < 0 ? call.args : [...call.args.slice(0, repeats), call.args.slice(repeats)];
    // A table made in another context is no Array of this one.
    const value = associated.get(id)?.(...args);
    const wrong = disagreement(Array.isArray(value) ? value.map((row) => [...row]) : value, result);
    return wrong === undefined ? [] : [`${id}: its example ${wrong}`];
  } catch (problem) {
    return [`${id}: its example does not run (${/** @type {Error} */ (problem).message})`];
  }
}
