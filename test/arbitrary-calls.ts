/** Calls of a formula that a property test may make. */

import fc from "fast-check";

import type { FormulaHelp } from "../functions/catalogue";
import { anyArgument, anyRange } from "./arbitrary-cells";
import { exampleCells } from "./bead";

/** Arguments of the example, any of them changed into anything. */
export function argumentsOf(about: FormulaHelp): fc.Arbitrary<unknown[]> {
  const example = exampleCells(about);
  const places = about.parameters.map(({ range, repeating }, i) => {
    const anything = repeating ? fc.array(anyRange, { maxLength: 10 }) : range ? anyRange : anyArgument;
    return fc.oneof({ weight: 2, arbitrary: fc.constant(example[i]) }, { weight: 1, arbitrary: anything });
  });
  return fc.tuple(...places);
}
