import fc from "fast-check";

import { fromBase, LENGTH } from "../../src/quantity";
import { DATE_HINT, looksLikeDate, sizeOf } from "../../src/sizes";

function inches(text: string, units: "US" | "SI" = "US"): number | string {
  const size = sizeOf(text, units);
  return typeof size === "number" ? fromBase(size, LENGTH, "US") : size.why;
}

test.each([
  ["1/2", 0.5],
  ["3/4", 0.75],
  ["1-1/2", 1.5],
  ["1 - 1/2", 1.5],
  ["1 1/2", 1.5],
  ["  1   1/2 ", 1.5],
  ['1.5"', 1.5],
  ["1½", 1.5],
  ["¾ in", 0.75],
  ["1 1/2 in", 1.5],
  ['2-1/2"', 2.5],
  ["2 inches", 2],
  ["2 in.", 2],
  ["0.065", 0.065],
  [".065", 0.065],
  ["38.1 mm", 1.5],
  ["25.4MM", 1],
  ["63/64", 0.984375],
  ["127/128", 0.9921875],
])("%s is %d in", (text, expected) => {
  expect(inches(text)).toBeCloseTo(expected, 12);
});

test("a mark overrules the units of the call", () => {
  expect(inches("1-1/2 in", "SI")).toBeCloseTo(1.5, 12);
  expect(inches('1"', "SI")).toBeCloseTo(1, 12);
  expect(inches("25.4", "SI")).toBeCloseTo(1, 12);
});

test.each([
  ["1/2", "SI", "is a fraction, which is a size in inches; type 1/2 in, or millimeters"],
  ["1/2 mm", "US", "is a fraction of a millimeter; type it with decimals"],
  ["1,5", "US", "contains a comma (decimal or thousands separator?); type 1.5 or 1500"],
  ["12,700", "SI", "contains a comma (decimal or thousands separator?); type 1.5 or 1500"],
  ["1/2/2026", "US", "looks like a date; type a size such as 1.5, 1-1/2 or 38.1 mm"],
  ["2-Jan", "US", "looks like a date; type a size such as 1.5, 1-1/2 or 38.1 mm"],
  ["1/3", "US", "is no fraction of an inch; type it with decimals"],
  ["3/2", "US", "is no fraction of an inch; type it with decimals"],
  ["see drawing", "US", "must be a number or a size such as 1.5, 1-1/2 or 38.1 mm"],
  ["2 cm", "SI", "must be a number or a size such as 38.1, 38.1 mm or 1-1/2 in"],
  ["0x10", "US", "must be a number or a size such as 1.5, 1-1/2 or 38.1 mm"],
] as const)("%s in %s units: %s", (text, units, why) => {
  expect(inches(text, units)).toBe(why);
});

test("every fraction of an inch comes back, however it is written", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 40 }),
      fc.constantFrom(2, 4, 8, 16, 32, 64),
      fc.nat(),
      fc.constantFrom("-", " ", " - "),
      fc.constantFrom("", '"', " in", "in.", " inch"),
      (whole, below, seed, between, mark) => {
        const above = 1 + (seed % (below - 1 || 1));
        const text = `${whole === 0 ? "" : `${String(whole)}${between}`}${String(above)}/${String(below)}${mark}`;
        const expected = whole + above / below;
        if (above < below) expect(inches(text)).toBeCloseTo(expected, 12);
      },
    ),
  );
});

test("what a sheet makes of 1/2 in 2026 is told as a date, what a tube may measure is not", () => {
  expect(looksLikeDate(46_024)).toBe(true);
  // 2000-01-01 and 2099-12-31 in the day numbers of spreadsheets.
  for (const day of [36_526, 73_050]) expect(looksLikeDate(day)).toBe(true);
  for (const day of [36_525, 73_051]) expect(looksLikeDate(day)).toBe(false);
  expect(looksLikeDate(46_024.5)).toBe(false);
});

test("what the hint for such a date says to type is half an inch, each way", () => {
  // The apostrophe tells the sheet that a text follows; it does not stand in the cell.
  const ways = DATE_HINT.replace(/^.*type it as /, "").split(/, | or /);
  expect(ways).toEqual(["0 1/2", "'1/2", "0.5"]);
  for (const way of ways) expect(inches(way.replace(/^'/, ""))).toBeCloseTo(0.5, 12);
});
