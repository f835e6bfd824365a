/** The sentence and the code with which every formula refuses every argument that is no proper cell content. */

import type { FormulaHelp, ParameterHelp } from "../../functions/help-text";
import { HELP } from "../../functions/help";
import type { Quantity } from "../../src/quantity";
import { LENGTH, TEMPERATURE, unitOf } from "../../src/quantity";
import { exampleWith, kindOfArgument, refusal } from "../bead";

/** The words an argument may be, by its name: the terms the formulas are known by. */
const WORDS: Readonly<Record<string, string>> = {
  material: "304L, 316L, 2205, CS, TI-2, TI-6-4, 625, C-276, C12200, C70600",
  gas: "AR, N2, HE, AIR",
  scaleGas: "AR, N2, HE, AIR",
  style: "pulsed, steady",
  pattern: "steady, random",
  model: "average, unit",
  spread: "percent, same, growing",
  side: "mean, face, root",
  surface: "none, still air",
  level: "S-1, S-2, S-3, S-4, I, II, III",
  severity: "normal, tightened",
  "COVER_WALL rule": "ASME IX, ISO 15614-1, ISO 9606-1",
  "COVER_OD rule": "ASME IX, ISO 9606-1",
  "COVER_HEAT rule": "ASME IX, ISO 15614-1",
  standard: "A270, A269, A1016",
  method: "WRC-1992, Schaeffler, Hammar-Svensson",
  units: "US, SI",
};
/** Arguments that are names. */
const TEXTS = ["id", "nps", "schedule"];

interface Place {
  readonly about: FormulaHelp;
  readonly parameter: ParameterHelp;
  readonly index: number;
}

const places: Place[] = HELP.flatMap((about) =>
  about.parameters.map((parameter, index) => ({ about, parameter, index })),
).filter(({ parameter }) => !parameter.repeating);
const scalars = places.filter(({ parameter }) => !parameter.range);
const words = scalars.filter((place) => wordsOf(place) !== undefined);
const texts = scalars.filter(({ parameter }) => TEXTS.includes(parameter.name));
const numbers = scalars.filter((place) => !words.includes(place) && !texts.includes(place));

/** The words that an argument takes: those of its name, or of its name in one formula. */
function wordsOf({ about, parameter: { name } }: Place): string | undefined {
  return WORDS[`${about.id} ${name}`] ?? WORDS[name];
}

function titled(some: readonly Place[]): [string, Place][] {
  return some.map((place) => [`${place.about.id}, ${place.parameter.name}`, place]);
}

/** The kind of number it takes. */
function kindOf({ about, parameter }: Place): Quantity | undefined {
  return kindOfArgument(about.id, parameter.name);
}

/** The unit that a refusal of this argument names, in the system of the example. */
function unitNamed(place: Place): string {
  const kind = kindOf(place);
  return kind === undefined ? "" : unitOf(kind, place.about.example.includes('"SI"') ? "SI" : "US");
}

function inUnit(place: Place): string {
  const unit = unitNamed(place);
  return unit === "" ? "" : ` (${unit})`;
}

const ERROR_CELL = { type: "Error", basicValue: "#N/A", errorType: "NotAvailable" };
const FIX_THE_CELL = "the referenced cell contains an error; fix it first";
const RANGE = [
  [1, 2],
  [3, 4],
];
const LONG_TEXT = "x".repeat(100_000);
const SHORTENED = `"${"x".repeat(40)}…"`;

/** Refuses a cell in this place with this value and rule, as an argument that cannot be. */
function expectRefused({ about, parameter, index }: Place, cell: unknown, value: string, rule: string): void {
  const sentence = `#VALUE! ${parameter.name} = ${value}: ${rule}`;
  expect(refusal(about.id, ...exampleWith(about, index, cell))).toBe(sentence);
}

describe("a number", () => {
  test.each(titled(numbers.filter((place) => kindOf(place) !== LENGTH)))("%s: text", (_, place) => {
    const unit = inUnit(place);
    const must = `must be a number${unit}`;
    expectRefused(place, "abc", '"abc"', must);
    expectRefused(place, "12", '"12"', `is a number stored as text; turn the cell into a number${unit}`);
    expectRefused(place, "1/2", '"1/2"', must);
    expectRefused(place, LONG_TEXT, SHORTENED, must);
  });

  // What says a size is read, here and in the test of lengths as text.
  test.each(titled(numbers.filter((place) => kindOf(place) === LENGTH)))("%s: text", (_, place) => {
    const si = unitNamed(place) === "mm";
    const must = `must be a number or a size such as ${si ? "38.1, 38.1 mm or 1-1/2 in" : "1.5, 1-1/2 or 38.1 mm"}`;
    expectRefused(place, "abc", '"abc"', must);
    expectRefused(place, "12 cm", '"12 cm"', must);
    expectRefused(place, LONG_TEXT, SHORTENED, must);
    expectRefused(
      place,
      "0,5",
      '"0,5"',
      "contains a comma (decimal or thousands separator?); type 1.5 or 1500",
    );
    expectRefused(place, "1/3 in", '"1/3 in"', "is no fraction of an inch; type it with decimals");
    if (si) {
      const fraction = "is a fraction, which is a size in inches; type 1/2 in, or millimeters";
      expectRefused(place, "1/2", '"1/2"', fraction);
    } else {
      const date = "looks like a size that the sheet turned into a date; type it as 0 1/2, '1/2 or 0.5";
      expectRefused(place, 46_024, "46024", date);
      expectRefused(place, "46024", '"46024"', date);
    }
  });

  test.each(titled(numbers))("%s", (_, place) => {
    const unit = inUnit(place);
    const must = `must be a number${unit}`;
    expectRefused(place, true, "TRUE", must);
    expectRefused(place, false, "FALSE", must);
    for (const cell of [NaN, Infinity, -Infinity]) {
      expectRefused(place, cell, String(cell), `must be a finite number${unit}`);
    }
    expectRefused(place, ERROR_CELL, "#N/A", FIX_THE_CELL);
    expectRefused(place, { code: "#DIV/0!" }, "#DIV/0!", FIX_THE_CELL);
    expectRefused(place, {}, "a linked data type", must);
    expectRefused(place, RANGE, "a range", "takes one cell, not 2 × 2 cells");
    expectRefused(place, [[1], [2], [3]], "a range", "takes one cell, not 3 × 1 cells");
  });

  const required = numbers.filter(({ parameter }) => !parameter.optional);
  test.each(titled(required))("%s: blank", (_, place) => {
    for (const blank of [null, undefined, "", " ", [[""]]]) {
      expectRefused(place, blank, "blank", `needs a number${inUnit(place)}`);
    }
  });
});

test("a number is what the record has a kind of quantity for, a word or a name what it has none for", () => {
  for (const place of scalars) {
    expect([place.about.id, place.parameter.name, kindOf(place) !== undefined]).toEqual([
      place.about.id,
      place.parameter.name,
      numbers.includes(place),
    ]);
  }
});

describe("one of some words", () => {
  test.each(titled(words))("%s", (_, place) => {
    const must = `must be one of ${wordsOf(place) ?? ""}`;
    expectRefused(place, "metric", '"metric"', must);
    expectRefused(place, LONG_TEXT, SHORTENED, must);
    expectRefused(place, true, "TRUE", must);
    expectRefused(place, 3, "3", must);
    expectRefused(place, NaN, "NaN", must);
    expectRefused(place, Infinity, "Infinity", must);
    expectRefused(place, {}, "a linked data type", must);
    expectRefused(place, RANGE, "a range", "takes one cell, not 2 × 2 cells");
    expectRefused(place, ERROR_CELL, "#N/A", FIX_THE_CELL);
  });
});

describe("a name", () => {
  test.each(titled(texts))("%s", (_, place) => {
    expectRefused(place, true, "TRUE", "must be a text");
    expectRefused(place, NaN, "NaN", "must be a text");
    expectRefused(place, {}, "a linked data type", "must be a text");
    expectRefused(place, RANGE, "a range", "takes one cell, not 2 × 2 cells");
    for (const blank of [null, undefined, "", " ", [[""]]]) {
      expectRefused(place, blank, "blank", "needs a text");
    }
    expectRefused(place, ERROR_CELL, "#N/A", FIX_THE_CELL);
  });
});

describe("units", () => {
  const withUnits = places.filter(({ parameter }) => parameter.name === "units");

  test("is the last argument wherever it stands, and optional", () => {
    for (const { about, parameter, index } of withUnits) {
      expect([about.id, parameter.optional, index]).toEqual([about.id, true, about.parameters.length - 1]);
    }
  });

  test.each(titled(withUnits))("%s: case and surrounding blanks are ignored", (_, { about, index }) => {
    const sentenceIn = (units: unknown): string =>
      refusal(about.id, ...exampleWith(about, index, units).map((cell, i) => (i === 0 ? "abc" : cell)));
    expect(sentenceIn(" si ")).toBe(sentenceIn("SI"));
    expect(sentenceIn("Si")).toBe(sentenceIn("SI"));
    expect(sentenceIn("us")).toBe(sentenceIn("US"));
    expect(sentenceIn(null)).toBe(sentenceIn("US"));
  });
});

describe("below 0", () => {
  const noTemperature = numbers.filter((place) => kindOf(place) !== TEMPERATURE);

  test.each(titled(noTemperature))("%s", (_, place) => {
    const { about, parameter, index } = place;
    const unit = unitNamed(place);
    const value = unit === "" || unit === "°" ? `-1${unit}` : `-1 ${unit}`;
    const sentence = refusal(about.id, ...exampleWith(about, index, -1));
    const start = `#VALUE! ${parameter.name} = ${value}: must `;
    expect(sentence.slice(0, start.length)).toBe(start);
  });
});
