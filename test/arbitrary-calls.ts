/** Calls of a formula that a property test may make. */

import fc from "fast-check";

import type { FormulaHelp } from "../functions/help-text";
import { anyArgument, anyRange } from "./arbitrary-cells";
import { exampleCells } from "./bead";

/** Mostly numbers of any size, the words that some formula knows, and what people type for a size of pipe. */
const anyTyped = fc.oneof(
  { weight: 6, arbitrary: fc.double({ noNaN: true, noDefaultInfinity: true }) },
  { weight: 6, arbitrary: fc.double({ min: 0, max: 2000, noNaN: true }) },
  { weight: 2, arbitrary: fc.integer({ min: -1, max: 1001 }) },
  { weight: 2, arbitrary: fc.constantFrom("AR", "HE", "SI", "US", "random", "10S", "1-1/2", "316L", "DN40") },
  {
    weight: 1,
    arbitrary: fc.constantFrom(null, undefined, "", " ", true, false, NaN, Infinity, 5e-324, 1e308),
  },
  { weight: 1, arbitrary: fc.string() },
  { weight: 1, arbitrary: fc.string({ unit: fc.constantFrom("1", "/", "-", " ", ".", "½", '"', "in") }) },
  { weight: 1, arbitrary: fc.array(fc.array(fc.integer(), { maxLength: 2 }), { maxLength: 2 }) },
);

/** Up to as many arguments as the formula has, none of them from its example. */
export function typedArguments({ parameters }: FormulaHelp): fc.Arbitrary<unknown[]> {
  return fc.array(anyTyped, { maxLength: parameters.length });
}

/** Arguments of the example, any of them changed into anything. */
export function argumentsOf(about: FormulaHelp): fc.Arbitrary<unknown[]> {
  const example = exampleCells(about);
  const places = about.parameters.map(({ range, repeating }, i) => {
    const anything = repeating ? fc.array(anyRange, { maxLength: 10 }) : range ? anyRange : anyArgument;
    return fc.oneof({ weight: 2, arbitrary: fc.constant(example[i]) }, { weight: 1, arbitrary: anything });
  });
  return fc.tuple(...places);
}
