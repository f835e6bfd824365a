/** What a title of evidence may say. */

import { BY_HAND, evidence, MEMORY, PUBLISHED, REFERENCE_LIBRARY, WEB_PAGE } from "../evidence";

test("a title names formulas, standing, work and place, and the key of the work last", () => {
  expect(evidence("PURGE_VENT PURGE_PRESSURE", PUBLISHED, "geankoplis-transport", "example 3.2-2")).toBe(
    "PURGE_VENT PURGE_PRESSURE | published | Geankoplis, example 3.2-2 [geankoplis-transport]",
  );
  expect(evidence("PIPE_OD", MEMORY, "asme-b36.10m")).toBe(
    "PIPE_OD | from memory | ASME B36.10M [asme-b36.10m]",
  );
});

test("what is held against no work is told in words, with the works it speaks of", () => {
  expect(evidence("STANDOFF", BY_HAND, "as [rosenthal-1946] has it")).toBe(
    "STANDOFF | worked out by hand | as Rosenthal 1946 has it",
  );
});

test("no formula, no work and no words are refused", () => {
  expect(() => evidence("STANDOFF NO_SUCH", BY_HAND, "half of 1")).toThrow("no formula NO_SUCH");
  expect(() => evidence("STANDOFF", BY_HAND, "as [no-such-1900] has it")).toThrow("no source [no-such-1900]");
  expect(() => evidence("STANDOFF", BY_HAND, "")).toThrow("no source");
  expect(() => evidence("STANDOFF", BY_HAND, "one | two")).toThrow("no source");
});

test("a work can only stand for what is known of it", () => {
  // Recalled, so not published; a page without an author; a book is no library.
  expect(() => evidence("STANDOFF", PUBLISHED, "aws-a5.12")).toThrow("cannot be published");
  expect(() => evidence("STANDOFF", PUBLISHED, "operator-machine-page")).toThrow("cannot be published");
  expect(() => evidence("STANDOFF", PUBLISHED, "amps-by-wall-chart")).toThrow("cannot be published");
  expect(() => evidence("STANDOFF", REFERENCE_LIBRARY, "de-nevers")).toThrow("cannot be reference library");
  expect(() => evidence("STANDOFF", WEB_PAGE, "de-nevers")).toThrow("cannot be web page");
});
