/** Anything a host may hand over for an argument, and the settings of every property test. */

import fc from "fast-check";

/** Mutation testing runs the tests some thousand times and takes fewer. */
const numRuns = Number(process.env.RINGBEAD_RUNS ?? 200);

export const SETTINGS = { seed: 130_417, numRuns } as const;
fc.configureGlobal(SETTINGS);

/** Goes into the name of a property test, so that its report says how much was tried. */
export const RUNS = `${String(SETTINGS.numRuns)} runs, seed ${String(SETTINGS.seed)}`;

/** A positive number of any size that a sheet may hold by reason, spread over its decades. */
export function decades(least: number, most: number): fc.Arbitrary<number> {
  return fc
    .double({ min: Math.log(least), max: Math.log(most), noNaN: true })
    .map((exponent) => Math.min(most, Math.max(least, Math.exp(exponent))));
}

const awkwardNumber = fc.constantFrom(
  0,
  -0,
  NaN,
  Infinity,
  -Infinity,
  Number.MIN_VALUE,
  Number.MAX_VALUE,
  Number.EPSILON,
  -1,
  1e-9,
  1e9,
);
const awkwardText = fc.constantFrom(
  "",
  "  ",
  "12",
  "abc",
  " si ",
  "#N/A",
  "line\nbreak",
  "x".repeat(100_000),
);
const errorObject = fc.constantFrom(
  { type: "Error", basicValue: "#N/A", errorType: "NotAvailable" },
  { type: "Error", basicValue: "#VALUE!" },
  { code: "#DIV/0!" },
);
const richObject = fc.constantFrom(
  {},
  { type: "Entity", text: "tube", basicValue: 3 },
  { type: "Double", basicValue: 3 },
);

/** Text of any code points, halves of a pair among them. */
const anyText = fc
  .array(fc.integer({ min: 0, max: 0x10_ffff }), { maxLength: 12 })
  .map((points) => String.fromCodePoint(...points));

/** The content of one cell. */
export const anyCell: fc.Arbitrary<unknown> = fc.oneof(
  fc.double({ min: -1000, max: 1000, noNaN: true }),
  decades(1e-3, 1e4),
  fc.double(),
  fc.integer({ min: -5, max: 1200 }),
  awkwardNumber,
  fc.boolean(),
  fc.constantFrom(null, undefined),
  awkwardText,
  anyText,
  errorObject,
  richObject,
);

/** A range, now and then of the ragged or empty shapes that a host should never send. */
export const anyRange: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 8, arbitrary: fc.array(fc.array(anyCell, { minLength: 1, maxLength: 3 }), { maxLength: 5 }) },
  { weight: 1, arbitrary: fc.array(anyCell, { maxLength: 4 }) },
);

/** What may stand in any argument's place. */
export const anyArgument: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 6, arbitrary: anyCell },
  { weight: 1, arbitrary: anyRange },
);
