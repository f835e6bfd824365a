/** Limits of the help in both systems of units, the sentences by hand. */

import { FORMULAS } from "../../functions/catalogue";
import type { Formula } from "../../functions/formula";
import { inBothUnits } from "../../tools/docs/both-units";
import type { Limited } from "../../tools/docs/limits";
import { argumentLimits } from "../../tools/docs/limits";

function formula(id: string): Formula {
  const found = FORMULAS.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no formula ${id}`);
  return found;
}

function limits(id: string): Map<string, string[]> {
  return argumentLimits(formula(id));
}

test.each([
  ["must be above 0", "must be above 0", "must be above 0"],
  ["must be at most 0.4 in", "must be at most 10 mm", "must be at most 0.4 in | 10 mm"],
  [
    "must be between 0 in and 1 in",
    "must be between 0 mm and 25.4 mm",
    "must be between 0 in and 1 in | 0 mm and 25.4 mm",
  ],
  ["must be at most 1 in, or so", "must be at most 25.4 mm, or so", "must be at most 1 in | 25.4 mm, or so"],
  [
    "no such wall (maximum 1 in); give SI",
    "no such wall (maximum 25.4 mm); give SI",
    "no such wall (maximum 1 in | 25.4 mm); give SI",
  ],
  [
    "speed = 5 in/min: must be above 1 in/min",
    "speed = 127 mm/min: must be above 25.4 mm/min",
    "speed = 5 in/min: must be above 1 in/min | 127 mm/min: must be above 25.4 mm/min",
  ],
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
  expect(limits("STANDOFF").get("wall")).toEqual([
    "must be above 0",
    "no tube of this trade has such a wall (maximum 1 in | 25.4 mm)",
    "no tube of this trade has such a wall (minimum 0.00393701 in | 0.1 mm)",
  ]);
  expect(limits("STANDOFF").get("units")).toEqual(["must be one of US, SI"]);
});

describe("systems that refuse differently are an error of the build", () => {
  /** The refusals of ARC_VOLTS by system; its units are the last cell. */
  const uneven = (refusals: Record<string, string>): Limited => ({
    ...formula("ARC_VOLTS"),
    call: (...cells: unknown[]): number => {
      const refusal = refusals[String(cells.at(-1))];
      if (refusal !== undefined) throw new Error(refusal);
      return 1;
    },
  });

  test("where both refuse, in other words", () => {
    const formula = uneven({ US: "standoff = 1: must be below 0", SI: "standoff = 1: must be above 0" });
    expect(() => argumentLimits(formula)).toThrow(
      "ARC_VOLTS refuses otherwise in SI units: must be below 0 | must be above 0",
    );
  });

  test.each([
    ["US", "must be above 0 | "],
    ["SI", " | must be above 0"],
  ])("where only %s refuses", (units, told) => {
    expect(() => argumentLimits(uneven({ [units]: "standoff = 1: must be above 0" }))).toThrow(
      `ARC_VOLTS refuses otherwise in SI units: ${told}`,
    );
  });
});
