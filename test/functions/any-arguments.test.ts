/** Whatever stands in the cells, a formula of bore, bottle, tables and crew answers or says why not. */

import fc from "fast-check";

import { HELP } from "../../functions/catalogue";
import { bead } from "../bead";

const FORMULAS = HELP.filter(({ id }) => /^(PURGE|GAS|PIPE|CREW|ACCEPT)_/.test(id));

const cell = fc.oneof(
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

function isSound(result: unknown): boolean {
  if (Array.isArray(result)) return result.length > 0 && result.flat().every(isSound);
  return typeof result === "number" && Number.isFinite(result);
}

interface Refused {
  code: string;
  message: string;
}

function outcome(id: string, cells: unknown[]): { answer: unknown } | Refused {
  try {
    return { answer: bead(id, ...cells) };
  } catch (problem) {
    return problem as Refused;
  }
}

test.each(FORMULAS.map(({ id, parameters }) => [id, parameters.length] as const))("%s", (id, most) => {
  fc.assert(
    fc.property(fc.array(cell, { maxLength: most, minLength: 1 }), (cells) => {
      const result = outcome(id, cells);
      if ("answer" in result) {
        expect(isSound(result.answer)).toBe(true);
        return;
      }
      expect(`${result.code} ${result.message}`).toMatch(/^#(VALUE!|N\/A) [a-zA-Z]+ = [^]+: [^]+/);
      expect(result.message).not.toMatch(/NaN [a-z]|undefined|Ringbead failed/);
    }),
    { numRuns: 400 },
  );
});

test("the formulas that this covers are there", () => {
  expect(FORMULAS.length).toBeGreaterThanOrEqual(20);
});
