/** What a formula says when it is called as an example of a refusal states. */

import { parseCall } from "./example.mjs";

/**
 * `says`: the code and sentence of a refusal, or the remark or text of an answer that tells of one.
 * @typedef {{ call: string, cells?: readonly unknown[], says: string }} Example
 * @typedef {(id: string) => ((...cells: unknown[]) => unknown) | undefined} FormulaById
 */

/** The column of a table in which a line tells what is wrong with it. */
const REMARK = 4;

/** @param {Example} example @param {FormulaById} formulaById @returns {string} */
export function saidBy({ call, cells }, formulaById) {
  const id = /^=BEAD\.([A-Z0-9_]+)\(/.exec(call)?.[1] ?? "";
  const formula = formulaById(id);
  if (formula === undefined) return `there is no formula ${id}`;
  try {
    const answer = formula(...(cells ?? asHost(call)));
    return String(Array.isArray(answer) ? answer[0][REMARK] : answer);
  } catch (problem) {
    const { code, message } = /** @type {{ code?: string, message: string }} */ (problem);
    return `${code ?? "broken"} ${message}`;
  }
}

/** The cells of a typed call as a host hands them over: REASON takes all after the first as ranges. @param {string} call */
function asHost(call) {
  const { id, args } = parseCall(call);
  if (id !== "REASON") return args;
  return [args[0], args.slice(1).map((cell) => (Array.isArray(cell) ? cell : [[cell]]))];
}
