/** Limits of the help in both systems of units: the pairs of units against src/quantity, the sentences by hand. */

import { formulaById } from "../../functions/catalogue";
import { HELP } from "../../functions/help";
import { fromBase, toBase } from "../../src/quantity";
import { argumentLimits } from "../../tools/help/limits.mjs";
import { inBothUnits, inOtherUnits, UNIT_PAIRS } from "../../tools/help/units.mjs";
import { expectNear, TWO_UNITS } from "../bead";

function limits(id: string): Map<string, string[]> {
  const about = HELP.find((one) => one.id === id);
  const call = formulaById(id);
  if (about === undefined || call === undefined) throw new Error(`no formula ${id}`);
  return argumentLimits(about, new Map([[id, call]]));
}

test.each(TWO_UNITS.map((of) => [of.US.unit, of] as const))(
  "%s is converted as src/ converts it",
  (_, of) => {
    const description = `Something, ${of.US.unit} | ${of.SI.unit}`;
    for (const written of [1, 212]) {
      const other = fromBase(toBase(written, of, "US"), of, "SI");
      expectNear(inOtherUnits(written, description, "US") as number, other, 1e-8);
      expectNear(inOtherUnits(other, description, "SI") as number, written, 1e-8);
    }
  },
);

test("no pair is of another quantity than those of src/", () => {
  expect(UNIT_PAIRS.map(({ US }) => US).sort()).toEqual(TWO_UNITS.map((of) => of.US.unit).sort());
});

test("what has no number or no units stays", () => {
  expect(inOtherUnits("316L", "Wall, in | mm", "US")).toBe("316L");
  expect(inOtherUnits(90, "Overlap, °", "US")).toBe(90);
});

test.each([
  ["must be above 0", "must be above 0", "must be above 0"],
  ["must be at most 0.4 in", "must be at most 10 mm", "must be at most 0.4 in | 10 mm"],
  [
    "must be between 0 in and 1 in",
    "must be between 0 mm and 25.4 mm",
    "must be between 0 in and 1 in | 0 mm and 25.4 mm",
  ],
  ["must be at most 1 in, or so", "must be at most 25.4 mm, or so", "must be at most 1 in | 25.4 mm, or so"],
  ["must be above 0", "must be at most 1 mm", undefined],
  ["must be above 0 in", "must be under 0 in", undefined],
])("%s and %s", (us, si, both) => {
  expect(inBothUnits(us, si)).toBe(both);
});

test("an example in US units and one in SI units both tell the limits of both", () => {
  expect(limits("ARC_VOLTS").get("standoff")).toEqual([
    "must be between 0.019685 in and 0.11811 in | 0.5 mm and 3 mm",
  ]);
  expect(limits("GAS_CYLINDER").get("temperature")).toEqual([
    "must be between -22 °F and 140 °F | -30 °C and 60 °C",
  ]);
  expect(limits("STANDOFF").get("units")).toEqual(["must be one of US, SI"]);
});

test("systems that refuse differently are an error of the build", () => {
  const about = HELP.find(({ id }) => id === "ARC_VOLTS");
  if (about === undefined) throw new Error("no ARC_VOLTS");
  const uneven = (_: unknown, units: unknown): never => {
    throw new Error(units === "SI" ? "standoff = 1: must be above 0" : "standoff = 1: must be below 0");
  };
  expect(() => argumentLimits(about, new Map([["ARC_VOLTS", uneven]]))).toThrow(
    "ARC_VOLTS refuses otherwise in SI units: must be below 0 | must be above 0",
  );
});
