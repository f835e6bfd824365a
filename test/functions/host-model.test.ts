import { formulaById } from "../../functions/catalogue";
import { HELP } from "../../functions/help";
import type { FormulaHelp } from "../../functions/help-text";
import functionsJson from "../../generated/functions.json";
import { disagreement } from "../../tools/docs/stated-result";
import { typedCall } from "../../tools/docs/typed-call";
import type { BlankAs, CalledFunction, Given, Outcome } from "./host-model";
import { BLANK, BLANKS, callAsExcel, ErrorCell } from "./host-model";

const DEFINITIONS = new Map(functionsJson.functions.map((one) => [one.id, one as CalledFunction]));

/** Calls one of ours as Excel would. */
function excel(id: string, given: readonly Given[], blank: BlankAs = 0): Outcome {
  const [called, formula] = [DEFINITIONS.get(id), formulaById(id)];
  if (called === undefined || formula === undefined) throw new Error(`no formula ${id}`);
  return callAsExcel(called, formula, given, blank);
}

describe("the model itself", () => {
  const one: CalledFunction = { id: "ONE", parameters: [{ name: "x", type: "any" }], result: {} };
  const giving = (result: unknown): Outcome => callAsExcel(one, () => result, [1], 0);
  const receiving = (called: CalledFunction, given: readonly Given[], blank: BlankAs = 0): unknown[] => {
    let got: unknown[] = [];
    callAsExcel(called, (...cells) => (got = cells).length, given, blank);
    return got.slice(0, -1);
  };
  const declared = (type: string, more: object = {}): CalledFunction => ({
    id: "ONE",
    parameters: [{ name: "x", type, ...more }],
    result: {},
  });

  test.each<[unknown, Outcome]>([
    [NaN, new ErrorCell("#VALUE!")],
    [Infinity, new ErrorCell("#NUM!")],
    [null, 0],
    [undefined, 0],
    [[[1, NaN, null, -Infinity]], [[1, 0, 0, 0]]],
    [[], new ErrorCell("#CALC!")],
    [[[]], new ErrorCell("#CALC!")],
    [[[1, 2], [3]], new ErrorCell("#CALC!")],
    ["x".repeat(32_768), new ErrorCell("#CALC!")],
    [{ a: 1 }, new ErrorCell("#VALUE!")],
    ["fine", "fine"],
  ])("a result %p", (result, expected) => {
    expect(giving(result)).toEqual(expected);
  });

  test("a thrown error keeps its sentence under two codes; one without a code loses it", () => {
    const throwing = (problem: object): Outcome =>
      callAsExcel(
        one,
        () => {
          throw Object.assign(new Error(), problem);
        },
        [1],
        0,
      );
    expect(throwing({ code: "#N/A", message: "m" })).toEqual(new ErrorCell("#N/A", "m"));
    expect(throwing({ code: "#NUM!", message: "m" })).toEqual(new ErrorCell("#NUM!", ""));
    expect(throwing({ message: "m" })).toEqual(new ErrorCell("#VALUE!", ""));
  });

  test("a blank cell arrives as the host has it, what is omitted as null, and an invocation comes last", () => {
    for (const blank of BLANKS) expect(receiving(one, [BLANK], blank)).toEqual([blank]);
    expect(receiving(one, [undefined])).toEqual([null]);
    expect(receiving(one, [])).toEqual([null]);
    let count = 0;
    callAsExcel(one, (...cells) => (count = cells.length), [1], 0);
    expect(count).toBe(2);
  });

  test("declared types are coerced before the call, or the call never comes", () => {
    expect(receiving(declared("number"), ["12"])).toEqual([12]);
    expect(receiving(declared("number"), [true])).toEqual([1]);
    expect(receiving(declared("number"), [BLANK], "")).toEqual([0]);
    expect(receiving(declared("string"), [true])).toEqual(["TRUE"]);
    expect(callAsExcel(declared("number"), () => 1, ["abc"], 0)).toEqual(new ErrorCell("#VALUE!"));
    expect(receiving(declared("any", { dimensionality: "matrix" }), [3])).toEqual([[[3]]]);
    expect(receiving(declared("any", { repeating: true }), [1, BLANK, 2], "")).toEqual([[1, "", 2]]);
  });

  test("an error in an argument is the answer; a range in one cell's place is taken cell by cell", () => {
    expect(callAsExcel(one, () => 1, [new ErrorCell("#N/A", "why")], 0)).toEqual(new ErrorCell("#N/A"));
    expect(
      callAsExcel(
        one,
        (x) => 2 * Number(x),
        [
          [
            [1, 2],
            [3, 4],
          ],
        ],
        0,
      ),
    ).toEqual([
      [2, 4],
      [6, 8],
    ]);
    const tables = { ...one, result: { dimensionality: "matrix" } };
    expect(callAsExcel(tables, () => [[1]], [[[1, 2]]], 0)).toEqual(new ErrorCell("#CALC!"));
  });
});

describe.each(HELP.map((about) => [about.id, about] as const))("%s", (id, about) => {
  const { args } = typedCall(about.example);
  const given = args.map((one): Given =>
    typeof one === "object" && one !== null
      ? one.map((row) => row.map((cell) => cell ?? BLANK))
      : (one ?? undefined),
  );

  test("gives what its example says, whatever a blank cell arrives as", () => {
    for (const blank of BLANKS) expect(disagreement(excel(id, given, blank), about.result)).toBeUndefined();
  });

  test("a blank cell in an optional place is omitted, or is 0 where the host makes it so", () => {
    optionalPlaces(about).forEach((index) => {
      const omitted = withGiven(given, index, undefined);
      const blank = withGiven(given, index, BLANK);
      for (const host of [null, ""] as const)
        expect(excel(id, blank, host)).toEqual(excel(id, omitted, host));
      expect(isSound(excel(id, blank, 0))).toBe(true);
    });
  });

  test("a blank cell in a required place is refused in words; as 0 it is refused or is the number 0", () => {
    requiredPlaces(about).forEach((index) => {
      const blank = withGiven(given, index, BLANK);
      for (const host of [null, ""] as const) {
        const { code, message } = excel(id, blank, host) as ErrorCell;
        expect([index, code]).toEqual([index, expect.stringMatching(/^#(VALUE!|N\/A)$/)]);
        expect(message).toMatch(/^\w+ = blank: /);
      }
      expect(isSound(excel(id, blank, 0))).toBe(true);
    });
  });

  test("a column in one cell's place gives a column, or Excel refuses it where the answer is a table", () => {
    const [index] = requiredPlaces(about);
    const first = index === undefined ? undefined : given[index];
    if (index === undefined || first === undefined || Array.isArray(first)) {
      expect(about.parameters.every(({ optional, range }) => optional || range)).toBe(true);
      return;
    }
    const cell = first as string | number;
    const outcome = excel(id, withGiven(given, index, [[cell], [cell]]));
    const alone = excel(id, given);
    expect(outcome).toEqual(
      DEFINITIONS.get(id)?.result.dimensionality === "matrix" ? new ErrorCell("#CALC!") : [[alone], [alone]],
    );
  });
});

function withGiven(given: readonly Given[], index: number, cell: Given): Given[] {
  const filled = Array.from({ length: Math.max(given.length, index + 1) }, (_, i) => given[i]);
  filled[index] = cell;
  return filled;
}

function optionalPlaces({ parameters }: FormulaHelp): number[] {
  return parameters.flatMap(({ optional, range, repeating }, i) =>
    optional && !range && !repeating ? [i] : [],
  );
}

function requiredPlaces({ parameters }: FormulaHelp): number[] {
  return parameters.flatMap(({ optional, range, repeating }, i) =>
    optional || range || repeating ? [] : [i],
  );
}

/** An answer without gaps, or a refusal that says why. */
function isSound(outcome: Outcome): boolean {
  if (outcome instanceof ErrorCell) return outcome.message !== "" && !/NaN|undefined/.test(outcome.message);
  if (Array.isArray(outcome)) return outcome.flat().every((cell) => !(cell instanceof ErrorCell));
  return typeof outcome !== "number" || Number.isFinite(outcome);
}
