/** Eight points of Gauss and Legendre are exact for every polynomial up to degree 15, and for none of degree 16. */

import { logPanels, rootPanel } from "../../../src/heat-flow/gauss";

const DEGREES = Array.from({ length: 16 }, (_, n) => n);

/** ∫ τ^p dτ from a to b. */
function power(p: number, from: number, to: number): number {
  return (to ** (p + 1) - from ** (p + 1)) / (p + 1);
}

test.each(DEGREES)("even in √τ: τ to the power of %p/2 − 1/2, from 0 and from 0.3 to 2", (n) => {
  for (const from of [0, 0.3]) {
    let sum = 0;
    rootPanel(from, 2, (age, weight) => {
      sum += weight * age ** ((n - 1) / 2);
    });
    expect(Math.abs(sum / power((n - 1) / 2, from, 2) - 1)).toBeLessThan(1e-12);
  }
});

test("a degree further there is an error, as there has to be", () => {
  let sum = 0;
  rootPanel(0, 2, (age, weight) => {
    sum += weight * age ** 7.5;
  });
  expect(Math.abs(sum / power(7.5, 0, 2) - 1)).toBeGreaterThan(1e-10);
});

test.each(DEGREES)("even in ln τ: (ln τ)^%p/τ from 1 to e, in one panel and in three", (n) => {
  for (const longest of [1, 0.4]) {
    let [sum, panels] = [0, 0];
    logPanels(1, Math.E, longest, (age, weight) => {
      sum += (weight * Math.log(age) ** n) / age;
      panels += 1 / 8;
    });
    expect(Math.abs(sum * (n + 1) - 1)).toBeLessThan(1e-12);
    expect(panels).toBe(longest === 1 ? 1 : 3);
  }
});
