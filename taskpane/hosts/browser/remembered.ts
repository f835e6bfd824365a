/**
 * The last answers of a formula. The engine computes all formulas again after many a change that concerns none of them
 * (an insert, an undo, a sheet opened); ours depend on their arguments alone, and the heat flow takes milliseconds.
 */

import type { Formula } from "./functions-host";

/** Some twenty procedure sheets' worth of one formula's calls. */
const KEPT = 500;
/** Of a longer list of joints the arguments alone are more to keep than its answer is to compute. */
const MOST_CELLS = 200;

/**
 * A formula that so many computations in a row take no longer than this for, ms, is quicker to compute than to look up.
 * The first ones also wait for their code to be compiled, and any may wait for other work of the machine.
 */
const TRIED = 100;
const QUICK = 2;

type Outcome = { readonly value: unknown } | { readonly problem: unknown };

/** The same formula, which computes nothing twice. */
export function remembering(formula: Formula): Formula {
  const outcomes = new Map<string, Outcome>();
  let [tried, taken] = [0, 0];
  let isQuick = false;
  const timed = (run: () => unknown): Outcome => {
    const start = performance.now();
    const outcome = outcomeOf(run);
    tried += 1;
    taken += performance.now() - start;
    if (tried === TRIED) {
      isQuick = taken < QUICK;
      [tried, taken] = [0, 0];
    }
    return outcome;
  };
  return (...args) => {
    if (isQuick) return formula(...args);
    const key = keyOf(args);
    if (key === undefined) return formula(...args);
    const known = outcomes.get(key);
    const outcome = known ?? timed(() => formula(...args));
    // The newest last, so that the first is the one that was longest not asked for.
    outcomes.delete(key);
    outcomes.set(key, outcome);
    const [oldest = key] = outcomes.size > KEPT ? outcomes.keys() : [];
    if (outcomes.size > KEPT) outcomes.delete(oldest);
    if ("problem" in outcome) throw outcome.problem;
    return outcome.value;
  };
}

function outcomeOf(run: () => unknown): Outcome {
  try {
    return { value: run() };
  } catch (problem) {
    return { problem };
  }
}

/** Arguments as a text in which no two kinds of cell look alike; undefined where there are too many. */
function keyOf(args: readonly unknown[]): string | undefined {
  let cells = 0;
  const worded = (cell: unknown): string => {
    cells += 1;
    return typeof cell === "string" ? JSON.stringify(cell) : String(cell);
  };
  const spoken = (given: unknown): string =>
    Array.isArray(given) ? `[${(given as unknown[]).map(spoken).join()}]` : worded(given);
  const key = spoken(args);
  return cells > MOST_CELLS ? undefined : key;
}
