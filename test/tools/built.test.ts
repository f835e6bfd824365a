import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";

import { number } from "../../functions/argument";
import functionsJson from "../../generated/functions.json";
import help from "../../generated/help.json";
import { SHARE } from "../../src/quantity";
import type { Example } from "../../tools/build/built";
import { builtErrors } from "../../tools/build/built";
import { disagreement } from "../../tools/docs/stated-result";
import { typedCall } from "../../tools/docs/typed-call";

/** A build folder with one formula, as far as the check looks at it. */
function build(script: string, ids: readonly string[], gives = "4"): string[] {
  const folder = mkdtempSync(path.join(os.tmpdir(), "ringbead-"));
  writeFileSync(path.join(folder, "functions.js"), script);
  writeFileSync(
    path.join(folder, "functions.json"),
    JSON.stringify({ functions: ids.map((id) => ({ id })) }),
  );
  const example: Example = { id: "TWICE", args: { x: X }, takesUnits: false, example: { args: [2], gives } };
  try {
    return builtErrors(folder, [example]);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const X = number("A number", SHARE);
const TWICE = 'CustomFunctions.associate("TWICE", (x) => 2 * x);';

describe("the check of the built functions", () => {
  test("is satisfied by a script that associates every id and whose example runs", () => {
    expect(build(TWICE, ["TWICE"])).toEqual([]);
  });

  test.each([
    ["an id nobody associated", TWICE, ["TWICE", "THRICE"], undefined, "THRICE is not associated"],
    ["an id not in functions.json", TWICE, [], undefined, "TWICE is associated but not in functions.json"],
    ["a wrong example", TWICE, ["TWICE"], "5", "TWICE: its example says 5, gives 4"],
    [
      "an example that fails",
      'CustomFunctions.associate("TWICE", () => { throw new Error("no"); });',
      ["TWICE"],
      undefined,
      "TWICE: its example does not run (no)",
    ],
    ["text that is run", `${TWICE} eval("1");`, ["TWICE"], undefined, "functions.js runs text: eval"],
    ["a result that is no constant", TWICE, ["TWICE"], "four", "not a constant: four"],
  ])("finds %s", (_, script, ids, gives, expected) => {
    expect(build(script, ids, gives).join("\n")).toContain(expected);
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
    expect(typedCall('=BEAD.X(1, , "a ""b"", c", TRUE, {1,2;3,4}, -2.5e-3)')).toEqual({
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
    expect(typedCall("=BEAD.X()")).toEqual({ id: "X", args: [] });
    expect(() => typedCall("=1+1")).toThrow("not a single call of a formula: =1+1");
    expect(() => typedCall("=BEAD.X(A1)")).toThrow("not a constant: A1");
    expect(() => typedCall("=BEAD.X({1,A1})")).toThrow("not a single call");
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
