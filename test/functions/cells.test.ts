/** What a host may hand over for one cell costs and says little, however large it is. */

import { FORMULAS } from "../../functions/catalogue";
import type { Formula } from "../../functions/formula";
import { exampleCells } from "../../tools/docs/example-cells";
import { refusal } from "../bead";

const SHEET = 1_048_576;

interface Place {
  readonly formula: Formula;
  readonly name: string;
  readonly index: number;
}

const SCALARS: Place[] = FORMULAS.flatMap((formula) => {
  const names = Object.entries(formula.args).map(([name, { takes }]) =>
    takes === "cell" ? name : undefined,
  );
  return [...names, ...(formula.takesUnits ? ["units"] : [])].flatMap((name, index) =>
    name === undefined ? [] : [{ formula, name, index }],
  );
});
const titled = SCALARS.map((place) => [`${place.formula.id}, ${place.name}`, place] as const);

function saidOf({ formula, index }: Place, cell: unknown): string {
  return refusal(formula.id, ...exampleCells(formula).map((own, i) => (i === index ? cell : own)));
}

const COLUMN = new Array<unknown>(SHEET);

/** A column of a sheet that tells how many of its rows were looked at. */
function watchedColumn(): { column: unknown; looks: () => number } {
  let looks = 0;
  const column = new Proxy(COLUMN, {
    get: (target, key): unknown => {
      if (typeof key === "string" && /^\d+$/.test(key)) {
        looks += 1;
        return [1];
      }
      return Reflect.get(target, key) as unknown;
    },
  });
  return { column, looks: () => looks };
}

describe("a whole column where one cell is meant is refused by a look at its first row", () => {
  test.each(titled)("%s", (_, place) => {
    const { column, looks } = watchedColumn();
    expect(saidOf(place, column)).toBe(
      `#VALUE! ${place.name} = a range: takes one cell, not 1048576 × 1 cells`,
    );
    expect(looks()).toBeLessThanOrEqual(2);
  });
});

describe("shapes that are no single cell", () => {
  test.each([
    [[[1, 2]], "1 × 2"],
    [[[1], [2]], "2 × 1"],
    [[1, 2, 3], "3 × 1"],
    [[[]], "1 × 0"],
    [[], "0 × 0"],
  ])("%j is %s cells", (range, size) => {
    expect(refusal("STANDOFF", range)).toBe(`#VALUE! wall = a range: takes one cell, not ${size} cells`);
  });

  test("one cell may come as a row of one, or as a list of one", () => {
    expect(refusal("STANDOFF", [[0.065]])).toBe("answered");
    expect(refusal("STANDOFF", [0.065])).toBe("answered");
  });
});

describe("the name of an error is repeated in short, whatever a host calls it", () => {
  const long = `#${"x".repeat(100_000)}`;
  const errors = [
    { type: "Error", basicValue: long },
    { code: long },
    { type: "Error", basicValue: "#line\nbreak" },
  ];

  test.each(titled)("%s", (_, place) => {
    for (const error of errors) {
      const said = saidOf(place, error);
      expect(said).toMatch(
        new RegExp(
          `^#VALUE! ${place.name} = #[ \\w…]{1,41}: the referenced cell contains an error; fix it first$`,
        ),
      );
    }
  });

  test("in a range too", () => {
    expect(refusal("FEELER_STACK", 0.0425, [[0.02], [{ code: long }]])).toBe(
      `#VALUE! leaves = #${"x".repeat(39)}…: the referenced cell contains an error; fix it first`,
    );
  });
});
