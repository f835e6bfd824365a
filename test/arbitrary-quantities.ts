/** Quantities of one kind for property tests, in base SI, and sums of them that stay of that kind. */

import fc from "fast-check";

import type { Of, Quantity } from "../src/quantity";
import { si } from "../src/quantity";
import { decades } from "./arbitrary-cells";

/** Positive, spread over its decades. */
export function decadesOf<Kind extends string>(
  of: Quantity<Kind>,
  min: number,
  max: number,
): fc.Arbitrary<Of<Kind>> {
  return decades(min, max).map((base) => si(base, of));
}

/** Spread evenly. */
export function evenly<Kind extends string>(
  of: Quantity<Kind>,
  min: number,
  max: number,
): fc.Arbitrary<Of<Kind>> {
  return fc.double({ min, max, noNaN: true }).map((base) => si(base, of));
}

/** Whole numbers of it. */
export function wholes<Kind extends string>(
  of: Quantity<Kind>,
  min: number,
  max: number,
): fc.Arbitrary<Of<Kind>> {
  return fc.integer({ min, max }).map((base) => si(base, of));
}

/** So many times a quantity. */
export function times<Kind extends string>(factor: number, value: Of<Kind>): Of<Kind> {
  return (factor * value) as Of<Kind>;
}

/** Two quantities of one kind together. */
export function plus<Kind extends string>(one: Of<Kind>, other: Of<Kind>): Of<Kind> {
  return (one + other) as Of<Kind>;
}
