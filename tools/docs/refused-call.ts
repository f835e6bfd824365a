/** What a formula says when it is called as an example of a refusal states. */

import { formulaById } from "../../functions/catalogue";
import { asRange } from "./example-cells";
import { typedCall } from "./typed-call";

/** `says`: the code and sentence of a refusal, or the remark or text of an answer that tells of one. */
export interface RefusedExample {
  readonly call: string;
  /** The cells, where the call as typed says them in words. */
  readonly cells?: readonly unknown[];
  readonly says: string;
}

export function saidBy({ call, cells }: RefusedExample): string {
  const id = /^=BEAD\.([A-Z0-9_]+)\(/.exec(call)?.[1] ?? "";
  const formula = formulaById(id);
  if (formula === undefined) return `there is no formula ${id}`;
  try {
    const answer = formula(...(cells ?? asHost(call)));
    // The last column of a list is the one in which a line tells what is wrong with it.
    return String(Array.isArray(answer) ? (answer as unknown[][])[0]?.at(-1) : answer);
  } catch (problem) {
    const { code, message } = problem as { code?: string; message: string };
    return `${code ?? "broken"} ${message}`;
  }
}

/** The cells of a typed call as a host hands them over: REASON takes all after the first as ranges. */
function asHost(call: string): readonly unknown[] {
  const { id, args } = typedCall(call);
  if (id !== "REASON") return args;
  return [args[0], args.slice(1).map(asRange)];
}
