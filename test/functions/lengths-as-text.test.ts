/** Every argument that is a length takes text as people write sizes; it equals the number that it says. */

import fc from "fast-check";

import { FORMULAS } from "../../functions/catalogue";
import type { Formula } from "../../functions/formula";
import type { Units } from "../../src/quantity";
import { LENGTH } from "../../src/quantity";
import { exampleCells } from "../../tools/docs/example-cells";
import { RUNS } from "../arbitrary-cells";
import { bead, refusal } from "../bead";

interface Place {
  readonly formula: Formula;
  readonly name: string;
  readonly index: number;
  readonly units: Units;
}

const PLACES: Place[] = FORMULAS.flatMap((formula) =>
  Object.entries(formula.args).flatMap(([name, { quantity }], index) =>
    quantity === LENGTH
      ? [
          {
            formula,
            name,
            index,
            units: exampleCells(formula).at(-1) === "SI" ? ("SI" as const) : ("US" as const),
          },
        ]
      : [],
  ),
);
const titled = PLACES.map((place) => [`${place.formula.id}, ${place.name}`, place] as const);

/** Inches that some argument of length takes: gaps, walls, beads, diameters, lengths of bore. */
const SIZES = [0.01, 0.03125, 0.0425, 0.0625, 0.125, 0.25, 1.5, 12];

function given({ formula, index }: Place, cell: unknown): unknown[] {
  const range = Object.values(formula.args)[index]?.takes === "range";
  return exampleCells(formula).map((own, i) => (i === index ? (range ? [[cell]] : cell) : own));
}

/** The answer, or the sentence of the refusal. */
function outcome(place: Place, cell: unknown): unknown {
  const cells = given(place, cell);
  const said = refusal(place.formula.id, ...cells);
  return said === "answered" ? bead(place.formula.id, ...cells) : said;
}

/** The same numbers but for the rounding of a change of units. */
function expectSame(result: unknown, expected: unknown): void {
  const [rows, same] = [result, expected].map((one) => [one].flat(2));
  expect(rows?.map((cell) => typeof cell)).toEqual(same?.map((cell) => typeof cell));
  rows?.forEach((cell, i) => {
    const other = same?.[i];
    if (typeof cell === "number" && typeof other === "number") {
      expect(Math.abs(cell - other)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(other)));
    } else expect(cell).toEqual(other);
  });
}

test("there are as many as the records have, and every formula of sizes among them", () => {
  expect(PLACES.length).toBeGreaterThan(50);
  for (const id of [
    "STANDOFF",
    "FEELER_STACK",
    "SCHEDULE",
    "TAKEOFF",
    "PURGE_CEILING",
    "SIZE",
    "HEAT_METERED",
  ]) {
    expect(PLACES.map(({ formula }) => formula.id)).toContain(id);
  }
});

describe("a size as text is the number", () => {
  test.each(titled)("%s", (_, place) => {
    const inches = place.units === "US";
    const answered = SIZES.filter((size) => {
      const number = inches ? size : Number((size * 25.4).toPrecision(12));
      const expected = outcome(place, number);
      // The very number: digits, a blank around them, the mark of its own system.
      for (const text of [
        String(number),
        ` ${String(number)} `,
        `${String(number)}${inches ? " in" : "mm"}`,
      ]) {
        const found = outcome(place, text);
        // Only a plain number may have been meant in the other units, and is told so.
        if (typeof found === "string" && typeof expected === "string") {
          expect(expected.startsWith(found.replace(/\)$/, ""))).toBe(true);
        } else expect([text, found]).toEqual([text, expected]);
      }
      if (typeof expected === "string") return false;
      // The same size in the other system, and as a fraction of an inch.
      expectSame(outcome(place, inches ? `${String(size * 25.4)} mm` : `${String(size)}"`), expected);
      const sixtyFourths = size * 64;
      if (Number.isInteger(sixtyFourths) && size < 1) {
        expectSame(outcome(place, `${String(sixtyFourths)}/64${inches ? "" : " in"}`), expected);
      }
      if (size === 1.5) expectSame(outcome(place, inches ? "1 1/2" : "1-1/2 in"), expected);
      return true;
    });
    expect([place.name, answered.length > 0]).toEqual([place.name, true]);
  });
});

describe("what says no size is refused by the argument's name", () => {
  test.each(titled)("%s", (_, place) => {
    const start = `#VALUE! ${place.name} = `;
    for (const cell of ["12,700", "1/2/2026", "2-Jan", "about 2", "2 cm", "1/3 in", "1/2 mm", "in", true]) {
      const said = outcome(place, cell);
      expect([cell, String(said).slice(0, start.length)]).toEqual([cell, start]);
    }
    const date = "looks like a size that the sheet turned into a date; type it as 0 1/2, '1/2 or 0.5";
    for (const cell of [46_024, "46024"]) {
      const said = String(outcome(place, cell));
      expect([cell, said.endsWith(date)]).toEqual([cell, place.units === "US"]);
      if (place.units === "SI") expect(said).not.toContain("date");
    }
  });
});

describe(`a wall in any spelling (${RUNS})`, () => {
  const gap = (...cells: unknown[]): unknown => {
    const said = refusal("STANDOFF", ...cells);
    return said === "answered" ? bead("STANDOFF", ...cells) : said;
  };

  test("decimals, as a person or a sheet writes them", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.004, max: 1, noNaN: true }),
        fc.integer({ min: 0, max: 12 }),
        (wall, digits) => {
          expect(gap(String(wall))).toEqual(gap(wall));
          const rounded = wall.toFixed(digits);
          expect(gap(rounded)).toEqual(gap(Number(rounded)));
          expect(gap(`+${rounded} in`)).toEqual(gap(Number(rounded)));
          expect(gap(wall.toExponential())).toEqual(gap(wall));
          expect(gap(`${String(wall * 25.4)} mm`, null, "SI")).toEqual(gap(wall * 25.4, null, "SI"));
        },
      ),
    );
  });

  test("fractions with any mark and stroke, in either system", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(2, 4, 8, 16, 32, 64),
        fc.nat(),
        fc.constantFrom("/", "⁄", " / "),
        fc.constantFrom("", '"', "″", "”", " in", "in.", " inch", " IN"),
        (below, draw, stroke, mark) => {
          const above = 1 + (draw % (below - 1));
          const text = `${String(above)}${stroke}${String(below)}${mark}`;
          expect(gap(text)).toEqual(gap(above / below));
          if (mark !== "") expectSame(gap(text, null, "SI"), gap((above / below) * 25.4, null, "SI"));
        },
      ),
    );
  });
});

test.each([
  ["½", 0.5],
  ["1¼", 1.25],
  ["1 3/4", 1.75],
  ["2-1/2", 2.5],
  ["2–1/2", 2.5],
  ["0 1/2", 0.5],
  [".5", 0.5],
  ["0.10", 0.1],
])("SIZE reads %j as %d, which a sheet finds equal", (text, expected) => {
  expect(bead("SIZE", text)).toBe(expected);
});

describe("SIZE gives numbers back as they are", () => {
  test("every double of the call's own units", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 30_000, noNaN: true }),
        fc.constantFrom("US", "SI"),
        (size, units) => {
          const shown = size === 0 ? 0 : size;
          expect(bead("SIZE", size, units)).toBe(shown);
          expect(bead("SIZE", String(size), units)).toBe(shown);
        },
      ),
    );
  });

  test("a tenth and two tenths stay what they add up to", () => {
    expect(bead("SIZE", 0.1 + 0.2)).toBe(0.1 + 0.2);
  });

  test.each([
    ["38.1 mm", "US", 1.5],
    ["1-1/2 in", "SI", 38.1],
    ["1/8 in", "SI", 3.175],
    ["0.065 in", "SI", 1.651],
    ["1.651 mm", "US", 0.065],
    ["12.7mm", "US", 0.5],
  ])("%s in %s units is the decimal a person would type: %d", (text, units, expected) => {
    // By hand: × or ÷ 25.4.
    expect(bead("SIZE", text, units)).toBe(expected);
  });
});

test("a long text is looked at no further than a size goes", () => {
  // A search for a mark behind every blank would take hours.
  const blanks = `1${" ".repeat(100_000)}x`;
  expect(refusal("STANDOFF", blanks)).toMatch(
    /^#VALUE! wall = "1 {39}…": must be a number or a size such as /,
  );
});
