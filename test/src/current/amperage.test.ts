import fc from "fast-check";

import { ampsByWall } from "../../../src/current/amperage";
import { DESIGNATIONS, MATERIALS } from "../../../src/metal/material";
import { decades, RUNS } from "../../arbitrary-cells";
import { expectNear, number, table } from "../../bead";
import { BY_HAND, evidence } from "../../evidence";
import { LENGTH, si } from "../../../src/quantity";

const wall = decades(1e-4, 0.01);

test(`one ampere a thousandth of an inch of 316L, more wall more amps in proportion (${RUNS})`, () => {
  fc.assert(
    fc.property(wall, fc.constantFrom(...DESIGNATIONS), (thickness, designation) => {
      const metal = MATERIALS[designation];
      expectNear(ampsByWall(si(thickness, LENGTH), MATERIALS["316L"]), thickness / 0.0000254);
      expectNear(ampsByWall(si(2 * thickness, LENGTH), metal), 2 * ampsByWall(si(thickness, LENGTH), metal));
    }),
  );
});

describe(
  evidence(
    "AMPS_WALL",
    BY_HAND,
    "1 A per 0.001 in, in proportion to hot k × (liquidus − 20 °C) of MATERIALS",
  ),
  () => {
    test("every metal of the table", () => {
      const power = new Map(
        table("MATERIALS").map(([name, hotK, , liquidus]) => [
          name,
          (hotK as number) * ((liquidus as number) - 20),
        ]),
      );
      for (const name of DESIGNATIONS) {
        const ratio = (power.get(name) ?? NaN) / (power.get("316L") ?? NaN);
        expectNear(number("AMPS_WALL", 0.065, name), 65 * ratio);
      }
    });
  },
);
