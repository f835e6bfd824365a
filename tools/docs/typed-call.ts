/** A formula as typed in a page or a test, `=BEAD.PURGE_TIME(2, 12, 20, , , 1, "US")`, as the cells of the call. */

import type { Constant } from "../../taskpane/hosts/excel/call";
import { parseCall } from "../../taskpane/hosts/excel/call";

export interface TypedCall {
  readonly id: string;
  readonly args: readonly (Constant | readonly (readonly Constant[])[])[];
}

/** Id and arguments of a single call of constants; throws where it is more than that. */
export function typedCall(formula: string): TypedCall {
  const call = parseCall(formula);
  if (call === undefined) throw new Error(`not a single call of a formula: ${formula}`);
  const args = call.args.map((argument) => {
    if (argument.kind === "cells") throw new Error(`not a constant: ${argument.address}`);
    return argument.kind === "array" ? argument.rows : argument.value;
  });
  return { id: call.id, args };
}
