/** The search for the melt's edge where Newton's steps go astray. */

import { squareWhere } from "../../../src/heat-flow/widest";

describe("value 1/(1 + u): it is 1/4 at u = 3, by hand", () => {
  /** The slope is told `times` too steep or too flat. */
  const curve =
    (times: number) =>
    (square: number): { value: number; bySquare: number } => ({
      value: 1 / (1 + square),
      bySquare: -times / (1 + square) ** 2,
    });

  test.each([1, 0.2, 0.6, 2])("slope told × %p", (times) => {
    expect(Math.abs(squareWhere(curve(times), 0.25) - 3)).toBeLessThan(1e-6);
  });

  test("nothing melts where even the path stays below", () => {
    expect(squareWhere(curve(1), 1)).toBe(0);
    expect(squareWhere(curve(1), 1.5)).toBe(0);
  });
});
