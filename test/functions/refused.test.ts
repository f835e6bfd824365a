/** Every refusal that docs/refusals.md shows, word for word. */

import { saidBy } from "../../tools/docs/refused-call";
import { EXAMPLES } from "../refused";

test.each(EXAMPLES.map((example) => [example.call, example] as const))("%s", (_, example) => {
  expect(saidBy(example)).toBe(example.says);
});
