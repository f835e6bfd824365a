/** A formula gives the same call the same answer, so a sheet that asks again need not wait for it again. */

import { formulaById } from "../../functions/catalogue";
import type { Formula } from "../../taskpane/hosts/browser/functions-host";

type Outcome = { readonly answer: unknown } | { readonly refusal: unknown };

export function remembered(id: string): Formula | undefined {
  const formula = formulaById(id);
  if (formula === undefined) return undefined;
  const outcomes = new Map<string, Outcome>();
  return (...cells) => {
    const call = JSON.stringify(cells, told);
    const outcome = outcomes.get(call) ?? outcomeOf(() => formula(...cells));
    outcomes.set(call, outcome);
    if ("refusal" in outcome) throw outcome.refusal;
    return outcome.answer;
  };
}

/** What is omitted and what JSON has no number for are told apart. */
function told(_: string, cell: unknown): unknown {
  if (cell === undefined) return { omitted: true };
  return typeof cell === "number" && !Number.isFinite(cell) ? { number: String(cell) } : cell;
}

function outcomeOf(run: () => unknown): Outcome {
  try {
    return { answer: run() };
  } catch (refusal) {
    return { refusal };
  }
}
