/** Something from outside stands against every formula, or its record says why nothing does. */

import { FORMULAS } from "../../functions/catalogue";
import { COMMON_PRACTICE, MEMORY, PUBLISHED, REFERENCE_LIBRARY, WEB_PAGE } from "../evidence";
import { claims } from "../read-evidence";

/** Input data and arithmetic from the equation alone say nothing of whether the equation is right. */
const OUTSIDE: readonly string[] = [PUBLISHED, REFERENCE_LIBRARY, WEB_PAGE, MEMORY, COMMON_PRACTICE];

const checked = new Set(
  claims().flatMap(({ formulas, standing }) => (OUTSIDE.includes(standing) ? formulas : [])),
);

test.each(FORMULAS.map(({ id, unchecked }) => [id, unchecked] as const))(
  "%s is checked from outside, or says why not",
  (id, unchecked) => {
    // A reason that outlives its cause is as wrong as a missing one.
    expect([id, checked.has(id) ? "checked" : unchecked?.trim()]).toEqual([id, expect.stringMatching(/\w/)]);
    expect([id, checked.has(id) && unchecked !== undefined]).toEqual([id, false]);
  },
);

test("every check names a formula that there is", () => {
  const ids: readonly string[] = FORMULAS.map(({ id }) => id);
  expect(claims().flatMap(({ formulas }) => formulas.filter((id) => !ids.includes(id)))).toEqual([]);
});
