/** Every refusal that docs/refusals.md shows, word for word. */

import { formulaById } from "../../functions/catalogue";
import { saidBy } from "../../tools/refused-call.mjs";
import "../bead";
import { EXAMPLES } from "../refused";

test.each(EXAMPLES.map((example) => [example.call, example] as const))("%s", (_, example) => {
  expect(saidBy(example, formulaById)).toBe(example.says);
});
