/** The remark on a small tube at its limit, 80 % of the rise to melting. */

import { remarksOn } from "../../../src/current/remarks";
import { LENGTH, si } from "../../../src/quantity";

test.each([
  [0.7999, undefined],
  [0.8, "80"],
  [0.8001, "80"],
  [0.8049, "80"],
  [0.8951, "90"],
  [0.99, "99"],
])("the coldest place at %d of the rise: %s %%", (coldest, percent) => {
  const told = remarksOn(si(0.001, LENGTH), coldest, true).map(([text]) => text);
  expect(told).toEqual(
    percent === undefined
      ? []
      : [`Small tube: the coldest place of the whole ring reaches ${percent} % of the rise to melting.`],
  );
});
