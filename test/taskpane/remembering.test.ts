/** Answers that are not computed twice are still the answers of their own arguments. */

import fc from "fast-check";

import { remembering } from "../../taskpane/hosts/browser/remembered";

/** What a formula is handed: cells and blocks of them. */
const CELL = fc.oneof(
  fc.double(),
  fc.constantFrom(null, undefined, true, false, "", "null", "[", "1", "true", ",", '"', "undefined"),
  fc.string(),
);
const ARGUMENT = fc.oneof(CELL, fc.array(fc.array(CELL, { maxLength: 3 }), { maxLength: 3 }));

test("any arguments: the same answer as without it, the second time too", () => {
  // Tells all kinds of cells apart, as the formulas do.
  const told = (given: unknown): unknown =>
    Array.isArray(given) ? given.map(told) : `${typeof given} ${String(given)}`;
  const plain = (...args: unknown[]): string => JSON.stringify(args.map(told));
  const remembered = remembering(plain);
  fc.assert(
    fc.property(fc.array(fc.array(ARGUMENT, { maxLength: 4 }), { minLength: 1, maxLength: 8 }), (calls) => {
      for (const args of [...calls, ...calls]) expect(remembered(...args)).toBe(plain(...args));
    }),
  );
});

function slow(): { readonly formula: (...args: unknown[]) => unknown; readonly count: () => number } {
  let computed = 0;
  return {
    count: () => computed,
    formula: (...args) => {
      computed += 1;
      const until = performance.now() + 0.3;
      while (performance.now() < until);
      if (args[0] === "bad") throw new Error("refused");
      return args;
    },
  };
}

test("a slow formula is computed once for the same arguments, its refusal too", () => {
  const { formula, count } = slow();
  const remembered = remembering(formula);
  for (let i = 0; i < 3; i += 1) {
    expect(remembered(1, [[2, null]])).toEqual([1, [[2, null]]]);
    expect(() => remembered("bad")).toThrow("refused");
  }
  expect(count()).toBe(2);
});

test("no more answers are kept than it says, and a long list is computed each time", () => {
  const { formula, count } = slow();
  const remembered = remembering(formula);
  for (let i = 0; i < 501; i += 1) remembered(i);
  remembered(500);
  expect(count()).toBe(501);
  // The first was longest not asked for.
  remembered(0);
  expect(count()).toBe(502);
  const list = Array.from({ length: 300 }, (_, i) => [i]);
  remembered(list);
  remembered(list);
  expect(count()).toBe(504);
});
