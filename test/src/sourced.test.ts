/** No number of a property table stands without its source. */

import { GASES } from "../../src/gas/gas";
import { MATERIALS } from "../../src/metal/material";
import type { Sourced } from "../../src/sourced";

const PROPERTIES = Object.entries({ ...MATERIALS, ...GASES }).flatMap(([of, properties]) =>
  Object.entries(properties as unknown as Record<string, Sourced>).map(
    ([what, property]) => [`${of}: ${what}`, property] as const,
  ),
);

test.each(PROPERTIES)("%s", (_, { value, standing, source }) => {
  expect(value).toBeGreaterThan(0);
  expect(["published", "memory", "estimate"]).toContain(standing);
  expect(source).toMatch(/^[a-z0-9]/i);
  expect(source).not.toContain("()");
  expect(source).toBe(source.trim());
});
