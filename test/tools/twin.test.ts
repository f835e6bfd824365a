import { existsSync, mkdtempSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";

import type { ParameterHelp } from "../../functions/help-text";
import functionsJson from "../../generated/functions.json";
import { tellRecords } from "../../tools/build/generate";
import type { Definition, Twin } from "../../tools/build/twin";
import { readTwins, twinErrors } from "../../tools/build/twin";

const CELL: ParameterHelp = {
  name: "length",
  description: "A length, in | mm",
  optional: false,
  range: false,
  repeating: false,
};
const TWIN: Twin = {
  help: {
    id: "TWICE",
    meaning: "Twice a length, in | mm.",
    parameters: [
      CELL,
      { ...CELL, name: "list", range: true, optional: true },
      { ...CELL, name: "rest", range: true, repeating: true },
    ],
    returns: "",
  },
  type: "table",
};

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(path.join(os.tmpdir(), "ringbead-"));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

function read(...twins: Twin[]): Promise<Definition[]> {
  return readTwins(twins, path.join(folder, "twin.ts"));
}

/** As the format of functions.json has it: https://learn.microsoft.com/office/dev/add-ins/excel/custom-functions-json */
const DEFINITION: Definition = {
  id: "TWICE",
  name: "TWICE",
  description: "Twice a length, in | mm.",
  parameters: [
    { name: "length", description: "A length, in | mm", type: "any" },
    { name: "list", description: "A length, in | mm", type: "any", optional: true, dimensionality: "matrix" },
    {
      name: "rest",
      description: "A length, in | mm",
      type: "any",
      repeating: true,
      dimensionality: "matrix",
    },
  ],
  result: { dimensionality: "matrix" },
};

test("Excel's tool reads of the twin what the record says", async () => {
  expect(await read(TWIN)).toEqual([DEFINITION]);
});

test.each<[Twin["type"], Definition["result"]]>([
  ["number", { type: "number" }],
  ["text", { type: "string" }],
  ["numbers", { type: "number", dimensionality: "matrix" }],
  ["table", { dimensionality: "matrix" }],
])("a result that is %s", async (type, result) => {
  expect((await read({ ...TWIN, type })).map((one) => one.result)).toEqual([result]);
});

test("a text that the tool would read otherwise is an error, and leaves no twin behind", async () => {
  const help = { ...TWIN.help, meaning: "Twice a length\n * @volatile" };
  await expect(read({ ...TWIN, help })).rejects.toThrow("TWICE: description is");
  expect(existsSync(path.join(folder, "twin.ts"))).toBe(false);
});

test("an id that the tool refuses is an error", async () => {
  await expect(read({ ...TWIN, help: { ...TWIN.help, id: "TW ICE" } })).rejects.toThrow("metadata tool");
});

test.each<[string, Definition[], string]>([
  ["no definition", [], "TWICE: is read 0 times"],
  ["two definitions", [DEFINITION, DEFINITION], "TWICE: is read 2 times"],
  ["a stranger", [DEFINITION, { ...DEFINITION, id: "THRICE" }], "THRICE: is no record"],
  ["another name", [{ ...DEFINITION, name: "Twice" }], 'TWICE: name is "TWICE", read as "Twice"'],
  ["another result", [{ ...DEFINITION, result: {} }], 'result.dimensionality is "matrix", read as nothing'],
  [
    "an argument fewer",
    [{ ...DEFINITION, parameters: DEFINITION.parameters.slice(0, 2) }],
    'parameters.2.name is "rest", read as nothing',
  ],
])("%s is told", (_, definitions, expected) => {
  expect(twinErrors([TWIN], definitions).join("\n")).toContain(expected);
});

test("functions.json holds every record as the tool read it", () => {
  const twins = tellRecords().map(({ formula, help }): Twin => ({ help, type: formula.gives.type }));
  const read = functionsJson.functions.map(({ helpUrl, ...definition }) => {
    expect(helpUrl).toMatch(new RegExp(`#${definition.id}$`));
    return definition;
  });
  expect(twinErrors(twins, read)).toEqual([]);
});
