import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";

import functionsJson from "../../generated/functions.json";
import help from "../../generated/help.json";
import { builtErrors } from "../../tools/built.mjs";
import { disagreement, parseCall } from "../../tools/example.mjs";

/** A build folder with one formula, as far as the check looks at it. */
function build(script: string, ids: readonly string[], example = "=BEAD.TWICE(2) → 4"): string[] {
  const folder = mkdtempSync(path.join(os.tmpdir(), "ringbead-"));
  const [formula = "", result = ""] = example.split(" → ");
  writeFileSync(path.join(folder, "functions.js"), script);
  writeFileSync(
    path.join(folder, "functions.json"),
    JSON.stringify({ functions: ids.map((id) => ({ id })) }),
  );
  writeFileSync(
    path.join(folder, "help.json"),
    JSON.stringify({ formulas: [{ id: "TWICE", parameters: [], example: formula, result }] }),
  );
  try {
    return builtErrors(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const TWICE = 'CustomFunctions.associate("TWICE", (x) => 2 * x);';

describe("the check of the built functions", () => {
  test("is satisfied by a script that associates every id and whose example runs", () => {
    expect(build(TWICE, ["TWICE"])).toEqual([]);
  });

  test.each([
    ["an id nobody associated", TWICE, ["TWICE", "THRICE"], undefined, "THRICE is not associated"],
    ["an id not in functions.json", TWICE, [], undefined, "TWICE is associated but not in functions.json"],
    ["a wrong example", TWICE, ["TWICE"], "=BEAD.TWICE(2) → 5", "TWICE: its example says 5, gives 4"],
    ["another formula's example", TWICE, ["TWICE"], "=BEAD.THRICE(2) → 4", "TWICE: its example calls THRICE"],
    ["text that is run", `${TWICE} eval("1");`, ["TWICE"], undefined, "functions.js runs text: eval"],
    ["an example that is no call", TWICE, ["TWICE"], "=1+1 → 2", "not a single call"],
  ])("finds %s", (_, script, ids, example, expected) => {
    expect(build(script, ids, example).join("\n")).toContain(expected);
  });
});

describe("metadata", () => {
  test("carries no flag that crashes an Office version, and every formula of the help", () => {
    expect(Object.keys(functionsJson)).toEqual(["functions"]);
    expect(functionsJson.functions.map(({ id }) => id)).toEqual(help.formulas.map(({ id }) => id));
  });

  test("keeps to what hosts take: names, lengths, a description for every argument", () => {
    for (const { id, name, description, parameters, helpUrl } of functionsJson.functions) {
      expect(id).toMatch(/^[A-Z][A-Z0-9_]{2,63}$/);
      expect(name).toBe(id);
      expect(description.length).toBeGreaterThan(0);
      expect(description.length).toBeLessThanOrEqual(128);
      expect(helpUrl).toMatch(new RegExp(`^https://.+/help\\.html#${id}$`));
      expect(parameters.map((parameter) => parameter.name).join("").length).toBeLessThanOrEqual(200);
      for (const parameter of parameters) {
        expect([parameter.name, parameter.description.length > 0]).toEqual([parameter.name, true]);
        expect(parameter.description.length).toBeLessThanOrEqual(128);
      }
    }
  });
});

describe("worked examples", () => {
  test("are read as a person types them", () => {
    expect(parseCall('=BEAD.X(1, , "a ""b"", c", TRUE, {1,2;3,4}, -2.5e-3)')).toEqual({
      id: "X",
      args: [
        1,
        null,
        'a "b", c',
        true,
        [
          [1, 2],
          [3, 4],
        ],
        -0.0025,
      ],
    });
    expect(parseCall("=BEAD.X()")).toEqual({ id: "X", args: [] });
  });

  test("agree to half a unit of the last printed digit, and not beyond", () => {
    expect(disagreement(1.2349, "1.235")).toBeUndefined();
    expect(disagreement(1.2356, "1.235")).toBe("says 1.235, gives 1.2356");
    expect(
      disagreement(
        [
          ["a", 1],
          ["b", 2],
        ],
        '"a", 1; …',
      ),
    ).toBeUndefined();
    expect(
      disagreement(
        [
          ["a", 1],
          ["b", 2],
        ],
        '"a", 1',
      ),
    ).toBe("says 1 × 2 cells, gives 2 × 2");
    expect(disagreement([["a", 1]], '"c", 1')).toBe('says "c", gives a');
  });
});
