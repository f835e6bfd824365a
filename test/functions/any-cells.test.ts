/** Every formula with every kind of cell content: it answers in full or refuses in a sentence, whatever comes. */

import fc from "fast-check";

import { HELP } from "../../functions/help";
import { argumentsOf, typedArguments } from "../arbitrary-calls";
import { RUNS, SETTINGS } from "../arbitrary-cells";
import { bead, exampleCells, said } from "../bead";

const SENTENCE = /^\w+ = .+: .+$/;
const HALF_A_SIGN = /\p{Cs}/u;
/** A refusal is of one of the formula's own arguments, or of a result that no cell could hold. */
const NAMES = new Map(
  HELP.map(({ id, parameters }) => [id, [...parameters.map(({ name }) => name), "result"]]),
);
const CODES = ["#VALUE!", "#N/A"];

function isValue(value: unknown): boolean {
  if (typeof value === "number") return Number.isFinite(value) && !Object.is(value, -0);
  if (typeof value === "string") return value.length <= 32_767 && !HALF_A_SIGN.test(value);
  return typeof value === "boolean";
}

function isAnswer(result: unknown): boolean {
  if (!Array.isArray(result)) return isValue(result);
  const rows = result as unknown[][];
  const width = rows[0]?.length ?? 0;
  return width > 0 && rows.every((row) => row.length === width && row.every(isValue));
}

/** A sheet of 361 sectors is the longest table; a list comes back with its sums and a header beside its own rows. */
const MOST_ROWS = 400;
const MORE_ROWS_THAN_GIVEN = 3;
const MOST_COLUMNS = 21;

function expectBounded(result: unknown, cells: readonly unknown[]): void {
  if (!Array.isArray(result)) return;
  const given = Math.max(...cells.map((cell) => (Array.isArray(cell) ? cell.length : 1)), 0);
  expect(result.length).toBeLessThanOrEqual(Math.max(MOST_ROWS, given + MORE_ROWS_THAN_GIVEN));
  expect((result[0] as unknown[]).length).toBeLessThanOrEqual(MOST_COLUMNS);
}

/** The answer, or code and sentence of the refusal; anything else a formula does fails the test. */
function outcome(id: string, cells: readonly unknown[]): unknown {
  try {
    const result = bead(id, ...cells);
    expect(isAnswer(result)).toBe(true);
    expectBounded(result, cells);
    return result;
  } catch (problem) {
    if (!(problem instanceof CustomFunctions.Error)) throw problem;
    const { code, message = "" } = problem;
    expect(CODES).toContain(code);
    expect(message).toMatch(SENTENCE);
    expect(NAMES.get(id)).toContain(/^\w+/.exec(message)?.[0]);
    expect(message).not.toContain("Ringbead failed");
    expect(message).not.toMatch(/NaN [a-z]|undefined/);
    expect(message.length).toBeLessThan(500);
    expect(message).not.toMatch(HALF_A_SIGN);
    return `${code} ${message}`;
  }
}

const everyFormula = HELP.map((about) => [about.id, about] as const);

describe(`any cell content is answered in full or refused in a sentence (${RUNS})`, () => {
  test.each(everyFormula)("%s", (id, about) => {
    const before = bead(id, ...exampleCells(about));
    fc.assert(
      fc.property(argumentsOf(about), (cells) => {
        const given = structuredClone(cells);
        const first = outcome(id, cells);
        // The host's cells stay as they were, and the same question gets the same answer.
        expect(cells).toEqual(given);
        expect(outcome(id, cells)).toEqual(first);
      }),
    );
    expect(bead(id, ...exampleCells(about))).toEqual(before);
  });
});

const TYPED_RUNS = 2 * SETTINGS.numRuns;

describe(`any arguments at all are answered in full or refused in a sentence (${String(TYPED_RUNS)} runs)`, () => {
  test.each(everyFormula)("%s", (id, about) => {
    fc.assert(
      fc.property(typedArguments(about), (cells) => {
        outcome(id, cells);
      }),
      { numRuns: TYPED_RUNS },
    );
  });
});

describe(`REASON says of any cell content what the formula itself says (${RUNS})`, () => {
  test.each(everyFormula.filter(([, { parameters }]) => !parameters.some(({ repeating }) => repeating)))(
    "%s",
    (id, about) => {
      fc.assert(
        fc.property(argumentsOf(about), (cells) => {
          const direct = outcome(id, cells);
          const ranges = cells.map((cell) => (Array.isArray(cell) ? (cell as unknown[]) : [[cell]]));
          const reason = bead("REASON", id, ranges);
          const refused = typeof direct === "string" && /^#(VALUE!|N\/A) /.test(direct);
          expect(reason).toBe(refused ? direct.replace(/^#\S+ /, "") : "fine");
        }),
      );
    },
  );
});

describe("the invocation object that a host appends changes nothing", () => {
  const invocation = { address: "Sheet!A1", functionName: "BEAD", isInValuePreview: false };

  test.each(everyFormula)("%s", (id, about) => {
    const cells = exampleCells(about);
    expect(bead(id, ...cells, invocation)).toEqual(bead(id, ...cells));
  });
});

describe("an optional argument omitted is null, undefined, blank text or not there at all", () => {
  const optional = HELP.flatMap((about) =>
    about.parameters.flatMap(({ name, optional: may }, i) =>
      may ? [[about.id, name, about, i] as const] : [],
    ),
  );

  test.each(optional)("%s, %s", (id, _, about, index) => {
    const cells = exampleCells(about);
    // Without its units an example of the other system may be refused: then each blank is refused alike.
    const left = (blank: unknown): unknown =>
      said(id, ...cells.map((cell, i) => (i === index ? blank : i > index ? null : cell)));
    const omitted = said(id, ...cells.slice(0, index));
    for (const blank of [null, undefined, "", "  ", [[null]], [[""]]]) expect(left(blank)).toEqual(omitted);
  });
});
