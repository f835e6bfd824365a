/** The page of how near the amps are, of places made up so that every number of it can be worked out by hand. */

import { nearnessFigure } from "../../tools/docs/nearness-figure";
import { nearnessPage } from "../../tools/docs/nearness";
import type { Compared } from "../nearness";

/** Faces of 4 mm that are 0, 0.1, … 9.9 % too wide, roots of 2 mm that are 0, 0.01, … 0.99 mm too narrow. */
function places(metal: string, od: number, count: number): Compared[] {
  return Array.from({ length: count }, (_, i) => ({
    metal,
    od,
    face: 4,
    modelFace: 4 * (1 + i / 1000),
    root: 2,
    modelRoot: 2 - i / 100,
  }));
}

const ERRORS = Array.from({ length: 100 }, (_, i) => (i % 2 === 0 ? -i : i) / 5000);
const page = (all: readonly Compared[]): string =>
  nearnessPage({ places: all, ringPower: ERRORS, platePower: ERRORS, throughPower: ERRORS });

test("of a hundred errors in order of size the 95th percentile is the one that 95 are smaller than", () => {
  const told = page(places("316L", 25, 100));
  expect(told).toContain("| face width | 316L, 304L | 12 mm or more | 100 | 9.5 % | 5.0 % |");
  expect(told).toContain("| root width | 316L, 304L | 20 mm or more | 100 | 0.95 mm | 0.40 mm |");
  expect(told).toContain("| minimum amps through | 316L | 12.7 to 50.8 mm | 100 | 1.9 % | 6.0 % |");
  expect(told).toContain("| 316L | 20 mm or more | 100 | 9.5 % | 0.95 mm |");
  expect(told).toContain("Counted are 100 places");
});

test("of fewer than twenty places the maximum is told, in brackets; a size or metal without any is not", () => {
  const told = page([...places("304L", 8, 19), ...places("titanium-like", 7.9, 20)]);
  expect(told).toContain("| 304L | 8 to 12 mm | 19 | (1.8 %) | (0.18 mm) |");
  expect(told).toContain("| titanium-like | under 8 mm | 20 | 1.9 % | 0.19 mm |");
  expect(told).not.toContain("| 304L | under 8 mm");
  expect(told).not.toContain("| carbon-steel-like |");
});

test("that no measured weld stands beside the formulas is the first that the page says, and what one needs the last", () => {
  const [heading = "", first = "", ...rest] = page(places("316L", 25, 20)).split("\n\n");
  expect(heading).toBe("# How near the amps are");
  expect(first).toMatch(/^\*\*No measured weld stands beside these formulas yet\.\*\*/);
  for (const word of [
    "metal",
    "outside diameter, wall",
    "amps by sector",
    "volts",
    "travel",
    "electrode and gap",
  ])
    expect(rest.at(-2)).toMatch(new RegExp(`^\\| ${word}`, "m"));
  for (const word of ["pulsed", "face width at four places", "root width", "cold, or how warm"])
    expect(rest.at(-2)).toContain(word);
});

test("the plot has a dot for each place of stainless steel and a ring for each of the others", () => {
  const svg = nearnessFigure([...places("304L", 25, 7), ...places("titanium-like", 50, 3)]);
  const count = (look: string, mark: RegExp): number[] =>
    [...svg.matchAll(new RegExp(`class="${look}" d="([^"]*)"`, "g"))].map(
      ([, way = ""]) => way.match(mark)?.length ?? 0,
    );
  expect(count("dots", /h0/g)).toEqual([7, 7]);
  expect(count("rings", /m-2 0/g)).toEqual([3, 3]);
  // By hand: 56 + 408·ln(25/3)/ln(125/3) = 287.9; face right, 34 + 84; root right, 244 + 84.
  expect(svg.match(/M287\.9 118h0/g)).toHaveLength(1);
  expect(svg.match(/M287\.9 328h0/g)).toHaveLength(1);
});

test.each([
  ["face, error in %", { od: 25, modelFace: 4.7 }],
  ["root, error in mm", { od: 25, modelRoot: 0.4 }],
  ["face, error in %", { od: 130 }],
])("a place that the plot of %s has no room for is an error, and not left out: %p", (plot, place) => {
  const [first] = places("316L", 25, 1);
  expect(() => nearnessFigure([{ ...first, ...place } as Compared])).toThrow(plot);
});
