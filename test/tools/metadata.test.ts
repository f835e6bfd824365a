import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";

import { readMetadata } from "../../tools/metadata.mjs";

const GOOD = `
/**
 * Twice a length, in | mm.
 * @customfunction TWICE
 * @param length A length, in | mm
 * @param [units] "US" (default) or "SI"
 * @equation 2·L
 * @validity any
 * @source Arithmetic
 * @example =BEAD.TWICE(2) → 4
 */
export function twiceCell(length: unknown, units?: unknown): number { return 2; }
`;

async function errorsOf(...sources: readonly string[]): Promise<string> {
  const folder = mkdtempSync(path.join(os.tmpdir(), "ringbead-"));
  sources.forEach((source, i) => {
    writeFileSync(path.join(folder, `family${String(i)}.ts`), source);
  });
  const { errors } = await readMetadata("https://addins.example/help.html", folder);
  rmSync(folder, { recursive: true });
  return errors.join("\n");
}

test("a comment with everything in it is right, and becomes metadata and help", async () => {
  expect(await errorsOf(GOOD)).toBe("");
});

test.each([
  ["an id used twice", [GOOD, GOOD.replaceAll("twiceCell", "againCell")], "TWICE: the id is used twice"],
  ["a missing source", [GOOD.replace(/.*@source.*\n/, "")], "TWICE: @source is missing"],
  ["a missing example", [GOOD.replace(/.*@example.*\n/, "")], "TWICE: @example is missing"],
  ["an example without a result", [GOOD.replace(" → 4", "")], "TWICE: @example says no result"],
  [
    "an argument without a description",
    [GOOD.replace(" * @param length A length, in | mm\n", "")],
    "the description of length is missing",
  ],
  [
    "a description over 128 characters",
    [GOOD.replace("Twice a length", "x".repeat(130))],
    "the description is over 128 characters",
  ],
  [
    "an argument description over 128",
    [GOOD.replace("A length", "x".repeat(130))],
    "the description of length is over 128",
  ],
  ["an id that reads as a cell", [GOOD.replaceAll("TWICE", "TW1")], "reads as a cell address"],
  ["an id too short", [GOOD.replaceAll("TWICE", "TW")], "too short or too long"],
  [
    "units before the last argument",
    [GOOD.replace("length: unknown, units?: unknown", "units?: unknown, length?: unknown")],
    "units is not the last argument",
  ],
  ["a type the metadata tool cannot read", [GOOD.replace("length: unknown", "length: Date")], "."],
])("finds %s", async (_, sources, expected) => {
  expect(await errorsOf(...sources)).toMatch(new RegExp(expected));
});
