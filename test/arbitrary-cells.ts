/** Anything a host may hand over for an argument, and the settings of every property test. */

import fc from "fast-check";

/** Mutation testing runs the tests some thousand times and takes fewer. */
const numRuns = Number(process.env.RINGBEAD_RUNS ?? 200);

/** New in each run, which test/generate.ts sees to; the same where runs are compared with each other. */
const seed = Number(process.env.RINGBEAD_SEED ?? 130_417);

export const SETTINGS = { seed, numRuns } as const;
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
  1e-300,
  1e300,
  -1e300,
);
/** What every object answers to without having been given it: a table of words asked for one must not find it. */
const PROTOTYPE_NAMES = [
  "__proto__",
  "constructor",
  "prototype",
  "toString",
  "valueOf",
  "hasOwnProperty",
] as const;
const awkwardText = fc.constantFrom(
  ...PROTOTYPE_NAMES,
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
/** As parsed from JSON: `__proto__` is a key of its own here, which an object literal cannot write. */
const prototypeKeyed = fc.constantFrom(
  ...PROTOTYPE_NAMES.flatMap((name): unknown[] => [
    JSON.parse(`{"${name}": 1}`),
    JSON.parse(`{"type": "Error", "basicValue": "${name}", "${name}": {"${name}": null}}`),
    { type: "String", basicValue: name },
    { code: `#${name}` },
  ]),
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
  prototypeKeyed,
);

/** As long as a list that people paste; its rows come again after a while, since making each anew costs the most. */
const longRange = fc
  .array(fc.array(anyCell, { minLength: 3, maxLength: 4 }), { minLength: 5, maxLength: 20 })
  .map((rows) => Array.from({ length: 300 }, (_, i) => rows[i % rows.length] ?? []));

/** A range, now and then of the ragged or empty shapes that a host should never send. */
export const anyRange: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 8, arbitrary: fc.array(fc.array(anyCell, { minLength: 1, maxLength: 3 }), { maxLength: 5 }) },
  { weight: 1, arbitrary: fc.array(anyCell, { maxLength: 4 }) },
  { weight: 1, arbitrary: longRange },
);

/** What may stand in any argument's place. */
export const anyArgument: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 6, arbitrary: anyCell },
  { weight: 1, arbitrary: anyRange },
);
